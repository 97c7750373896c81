// What is said to be known, against what the readings say.
#pragma once

#include <optional>

#include "core/ledger/verdict.hpp"
#include "core/quantity/unit.hpp"
#include "core/survey/asked.hpp"
#include "core/survey/measure_up.hpp"

namespace sparewright::survey {

// The query "known against the readings/<name>" where something known is furthest at odds, or one of those that cannot be
// told apart in that: by how much its two sides differ by the readings, and which readings are in it. None otherwise.
[[nodiscard]] std::optional<ledger::Query> known_clashes(const Asked& asked, const MeasuredUp& measured,
                                                         quantity::UnitSystem system);

}  // namespace sparewright::survey
