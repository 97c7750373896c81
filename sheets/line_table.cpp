#include "sheets/line_table.hpp"

#include <algorithm>
#include <string_view>

#include "sheets/grid.hpp"

namespace sparewright::sheets {
namespace {

using drawing::Weight;

constexpr double kUnderBlank_mm = 1.8;

// Number and words of a line, above its figures.
Block words_above(const Setting& setting, const LineColumns& all, const Cell& number, const Cell& words,
                  double width_mm) {
  const double indent = all.indent_mm();
  Block block;
  stack(block, setting.paragraph(words.says, words.style, width_mm - indent), 0.4 * setting.type.around_mm,
        indent);
  block.height_mm = std::max(block.height_mm, setting.pitch(number.style));
  const double first_line = setting.pitch(words.style) + 0.8 * setting.type.around_mm;
  Centred{{number.says}, number.style}.lay(block.list, setting, all.columns.front().width_mm, 0.0, first_line,
                                           drawing::Anchor::kRight);
  return block;
}

Block line_row(const Setting& setting, const LineColumns& all, std::size_t line, bool to_fill,
               double width_mm) {
  std::vector<Cell> cells = all.rows[line];
  Block above;
  if (!all.above.empty()) {
    above = words_above(setting, all, cells.front(), all.above[line], width_mm);
    cells.front().says.clear();
  }
  Block row = table_row(setting, all.columns, cells, width_mm, setting.type.row_mm);
  if (to_fill) {
    add_rule(row.list, all.found_left_mm, width_mm, row.height_mm - kUnderBlank_mm, Weight::kThin);
  } else {
    add_tick_box(row.list, all.found_left_mm, row.height_mm / 2.0);
  }
  return stacked({above, row});
}

Block head_row(const Setting& setting, const LineColumns& all, double width_mm) {
  std::vector<Column> columns = all.columns;
  columns.push_back({"FOUND", kBlank_mm});
  if (all.above.empty()) return table_head(setting, columns, width_mm);
  columns.front().heading.clear();
  Block block;
  block.height_mm = setting.pitch(setting.type.label);
  Centred{{all.columns.front().heading}, setting.type.label}.lay(
      block.list, setting, all.columns.front().width_mm, 0.0, block.height_mm, drawing::Anchor::kRight);
  Centred{{"DO"}, setting.type.label}.lay(block.list, setting, all.indent_mm(), 0.0, block.height_mm);
  stack(block, table_head(setting, columns, width_mm));
  return block;
}

Block note_row(const Setting& setting, const std::string& says, double indent_mm, double width_mm) {
  const double around = 0.8 * setting.type.around_mm;
  Block row;
  stack(row, setting.paragraph(says, setting.type.strong, width_mm - indent_mm), around, indent_mm);
  row.height_mm += around;
  add_rule(row.list, 0.0, width_mm, row.height_mm, Weight::kThin);
  row.keeps_next = true;
  return row;
}

}  // namespace

void add_line_table(Flow& flow, const Setting& setting, const std::vector<route::Item>& items,
                    const Dials& dials, double width_mm) {
  if (items.empty()) return;
  const LineColumns all = line_columns(setting, items, dials, width_mm);
  const std::size_t table = flow.add_head(head_row(setting, all, width_mm));
  std::size_t lines = 0;
  for (const route::Item& item : items) {
    Block block;
    if (const auto* line = std::get_if<route::Line>(&item)) {
      block = line_row(setting, all, lines++, line->to_fill, width_mm);
    } else if (const auto* note = std::get_if<route::Note>(&item)) {
      block = note_row(setting, note->says, all.indent_mm(), width_mm);
    } else {
      block = stop_block(setting, std::get<route::Stop>(item), width_mm);
    }
    block.table = table;
    flow.add(std::move(block));
  }
  flow.blocks.back().keeps_next = false;  // a note that ends the table has nothing to stay with
}

Block stop_block(const Setting& setting, const route::Stop& stop, double width_mm) {
  constexpr std::string_view kStop = "STOP";
  std::string_view says = stop.says;
  if (says.substr(0, kStop.size()) == kStop) {
    says.remove_prefix(std::min(says.find_first_not_of(". ", kStop.size()), says.size()));
  }
  const double inner = tabbed_inner_mm(setting, kStop, width_mm);
  std::vector<Entry> readings;
  for (const route::ProofReading& reading : stop.readings)
    readings.push_back({reading.what, reading.expect, false, true});
  Block words;
  stack(words, setting.paragraph(says, setting.type.strong, inner));
  for (const Block& row : grid(setting, readings, setting.type.body, inner, 3))
    stack(words, row);
  stack(words, setting.paragraph(stop.rule, setting.type.strong, inner), 0.4 * setting.type.around_mm);
  return tabbed(setting, kStop, words, width_mm);
}

}  // namespace sparewright::sheets
