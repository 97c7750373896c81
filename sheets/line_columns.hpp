// The columns of a setup's numbered lines, and what each line says in them.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "core/route/sheet.hpp"
#include "sheets/table.hpp"

namespace sparewright::sheets {

// The headings of what is dialled: X READS, Y READS, Z READS on a mill.
using Dials = std::array<std::string, 3>;

// Columns #, DO, the dials ... EXPECT; those in which no line says anything are left out, except # and DO. FOUND stands at
// the right, kBlank_mm wide. The figures to dial are as large as the room for DO allows; where three are dialled and that
// leaves too little, DO stands above the figures, as wide as the table.
struct LineColumns {
  std::vector<Column> columns;          // without DO where it stands above
  std::vector<std::vector<Cell>> rows;  // one a line, in their order
  std::vector<Cell> above;              // DO of each line, where it stands above
  double found_left_mm = 0.0;

  // Where the words begin: after the numbers.
  [[nodiscard]] double indent_mm() const { return columns.front().width_mm + kColumnGap_mm; }
};

[[nodiscard]] LineColumns line_columns(const Setting& setting, const std::vector<route::Item>& items,
                                       const Dials& dials, double width_mm);

}  // namespace sparewright::sheets
