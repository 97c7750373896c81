// The numbered lines of a setup: what to do, what to dial, how fast, what to expect, what was found.
#pragma once

#include <vector>

#include "core/route/sheet.hpp"
#include "sheets/line_columns.hpp"
#include "sheets/setting.hpp"

namespace sparewright::sheets {

// The table's head goes to flow.heads and first among its blocks; then one block a line, note and STOP. A note stays with
// what follows it. Columns in which no line says anything are left out, except #, DO and FOUND. Nothing for no items.
void add_line_table(Flow& flow, const Setting& setting, const std::vector<route::Item>& items,
                    const Dials& dials, double width_mm);

// A STOP in its frame: what to do, what each reading must show with a blank, when not to go on.
[[nodiscard]] Block stop_block(const Setting& setting, const route::Stop& stop, double width_mm);

}  // namespace sparewright::sheets
