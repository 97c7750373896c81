#include "sheets/table.hpp"

#include <algorithm>

#include "drawing/wrap.hpp"

namespace sparewright::sheets {
namespace {

using drawing::Anchor;
using drawing::Weight;

constexpr double kForAWord = 1.3;       // so much wider at most, so that no word is broken
constexpr double kBesideRule_mm = 1.6;  // more room before what stands beside a rule
constexpr double kRoomInRow_mm = 0.5;   // above and below what is written

double anchor_x(const Column& column, double start_mm) {
  if (column.anchor == Anchor::kLeft) return start_mm;
  return column.anchor == Anchor::kRight ? start_mm + column.width_mm : start_mm + column.width_mm / 2.0;
}

}  // namespace

std::vector<double> starts(const std::vector<Column>& columns) {
  std::vector<double> at;
  double x = 0.0;
  for (const Column& column : columns) {
    at.push_back(x);
    x += column.width_mm + kColumnGap_mm;
  }
  return at;
}

std::vector<Column> fitted(const Setting& setting, std::vector<Column> columns,
                           const std::vector<std::vector<Cell>>& rows, std::size_t takes_rest,
                           double width_mm, double roomier_mm) {
  double used = 0.0;
  for (std::size_t c = 0; c < columns.size(); ++c) {
    if (c == takes_rest) continue;
    double widest = setting.width(columns[c].heading, setting.type.label);
    double word = 0.0;
    for (const auto& row : rows) {
      widest = std::max(widest, setting.width(row[c].says, row[c].style));
      word = std::max(word, drawing::longest_word(setting.ruler, row[c].says, row[c].style));
    }
    const double wanted = std::max(columns[c].width_mm, std::min(word, kForAWord * columns[c].width_mm));
    columns[c].width_mm = std::min(wanted, widest) + drawing::kTouch_mm + roomier_mm;
    if (columns[c].ruled || (c > 0 && columns[c - 1].ruled)) columns[c].width_mm += kBesideRule_mm;
    used += columns[c].width_mm;
  }
  columns[takes_rest].width_mm = width_mm - used - kColumnGap_mm * static_cast<double>(columns.size() - 1);
  return columns;
}

Block table_head(const Setting& setting, const std::vector<Column>& columns, double width_mm) {
  Block block;
  block.height_mm = setting.pitch(setting.type.label) + 1.4;
  const auto at = starts(columns);
  for (std::size_t c = 0; c < columns.size(); ++c) {
    if (columns[c].heading.empty()) continue;
    Centred{{columns[c].heading}, setting.type.label}.lay(block.list, setting, anchor_x(columns[c], at[c]),
                                                          0.0, block.height_mm, columns[c].anchor);
  }
  add_rule(block.list, 0.0, width_mm, block.height_mm, Weight::kVisible);
  return block;
}

Block table_row(const Setting& setting, const std::vector<Column>& columns, const std::vector<Cell>& cells,
                double width_mm, double least_mm) {
  Block block;
  block.height_mm = least_mm;
  std::vector<Centred> texts;
  for (std::size_t c = 0; c < columns.size(); ++c) {
    texts.push_back({drawing::wrap_even(setting.ruler, cells[c].says, cells[c].style, columns[c].width_mm),
                     cells[c].style});
    block.height_mm = std::max(block.height_mm, texts.back().needed_mm(setting) + 2.0 * kRoomInRow_mm);
  }
  const auto at = starts(columns);
  for (std::size_t c = 0; c < columns.size(); ++c) {
    texts[c].lay(block.list, setting, anchor_x(columns[c], at[c]), 0.0, block.height_mm, columns[c].anchor);
  }
  add_rule(block.list, 0.0, width_mm, block.height_mm, Weight::kThin);
  for (std::size_t c = 0; c < columns.size(); ++c) {
    if (!columns[c].ruled) continue;
    for (const double x : {at[c], at[c] + columns[c].width_mm + kColumnGap_mm}) {
      const double between = x - kColumnGap_mm / 2.0;
      block.list.emplace_back(drawing::Line{{between, 0.0}, {between, block.height_mm}, Weight::kThin});
    }
  }
  return block;
}

}  // namespace sparewright::sheets
