// pages() with a press that is open already.
#pragma once

#include <optional>
#include <vector>

#include "core/base/result.hpp"
#include "sheets/pages.hpp"
#include "sheets/press.hpp"

namespace sparewright::sheets {

// only: the sheet of that setup alone, numbered as in the whole.
[[nodiscard]] base::Result<std::vector<Page>> laid_out(const Packet& packet, const PaperOptions& options,
                                                       const Press& press,
                                                       std::optional<int> only = std::nullopt);

}  // namespace sparewright::sheets
