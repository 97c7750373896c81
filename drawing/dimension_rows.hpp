// Dimension lines beside one side of a view, in rows going outwards. Used inside this room only.
#pragma once

#include <vector>

namespace sparewright::drawing {

// What one dimension takes along its row, in mm on paper. from <= to.
struct RowSpan {
  double from = 0.0;
  double to = 0.0;
  double text_mm = 0.0;  // what its words take along the row
};

struct RowPlace {
  int row = 0;               // 0 is next to the view
  double text_middle = 0.0;  // along the row; may lie beyond the span
};

// In the order of the spans. The shorter lie nearer the view unless that crosses more lines; no two in a row overlap, words
// included, and no words lie on an extension line that runs through their row.
[[nodiscard]] std::vector<RowPlace> rows_of(const std::vector<RowSpan>& spans);

}  // namespace sparewright::drawing
