// pages() with a press that is open already.
#pragma once

#include <vector>

#include "core/base/result.hpp"
#include "sheets/pages.hpp"
#include "sheets/press.hpp"

namespace sparewright::sheets {

[[nodiscard]] base::Result<std::vector<Page>> laid_out(const Packet& packet, const PaperOptions& options,
                                                       const Press& press);

}  // namespace sparewright::sheets
