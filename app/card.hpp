// A number with its trail as a bench card.
#pragma once

#include "app/rows.hpp"
#include "sheets/card.hpp"

namespace sparewright::app {

// What went in directly, then the readings, standards and choices farther back; each once.
[[nodiscard]] sheets::Card card_of(const TrailRow& trail);

}  // namespace sparewright::app
