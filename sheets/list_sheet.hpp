// A sheet of lists, as blocks.
#pragma once

#include "core/route/list_sheet.hpp"
#include "sheets/setting.hpp"

namespace sparewright::sheets {

// Without head and foot. Rows with a blank or a box to tick are as high as a pencil wants.
[[nodiscard]] Flow list_flow(const Setting& setting, const route::ListSheet& sheet, double width_mm);

}  // namespace sparewright::sheets
