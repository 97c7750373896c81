// Ruled tables: a head, then rows of cells that align along their middle.
#pragma once

#include <string>
#include <vector>

#include "sheets/setting.hpp"

namespace sparewright::sheets {

struct Column {
  std::string heading;
  double width_mm = 0.0;
  drawing::Anchor anchor = drawing::Anchor::kLeft;
  bool ruled = false;  // thin rules at both sides
};

struct Cell {
  std::string says;
  TextStyle style;
};

inline constexpr double kColumnGap_mm = 2.4;

// Where columns begin, one after the other, kColumnGap_mm between them.
[[nodiscard]] std::vector<double> starts(const std::vector<Column>& columns);

// Columns as wide as the widest of their cells (and headings) where that is less than their width;
// each of them roomier_mm wider, if that is asked for; what is left goes to column `takes_rest`.
[[nodiscard]] std::vector<Column> fitted(const Setting& setting, std::vector<Column> columns,
                                         const std::vector<std::vector<Cell>>& rows, std::size_t takes_rest,
                                         double width_mm, double roomier_mm = 0.0);

[[nodiscard]] Block table_head(const Setting& setting, const std::vector<Column>& columns, double width_mm);

// As high as its cells need, at least least_mm; a thin rule at its foot.
[[nodiscard]] Block table_row(const Setting& setting, const std::vector<Column>& columns,
                              const std::vector<Cell>& cells, double width_mm, double least_mm);

}  // namespace sparewright::sheets
