#include "sheets/list_sheet.hpp"

#include <algorithm>

#include "sheets/grid.hpp"
#include "sheets/head.hpp"
#include "sheets/setup_sheet.hpp"
#include "sheets/table.hpp"

namespace sparewright::sheets {
namespace {

using drawing::Weight;

constexpr double kUnderBlank_mm = 1.8;
constexpr double kAfterWords_mm = 2.0;
constexpr double kRoomier_mm = 2.0;
constexpr double kShare = 0.7;    // of an even share of the table: the widest a column is that gives way
constexpr double kWellSet = 0.3;  // of the table: enough for the column with most to say
constexpr double kLeastRule_mm = 60.0;
constexpr int kTickColumns = 3;

Block heading(const Setting& setting, const std::string& says) {
  Block block = setting.line(says, setting.type.label);
  block.keeps_next = true;
  return block;
}

double mark_mm(const route::ListTable& table) {
  if (table.to_fill) return kBlank_mm + kColumnGap_mm;
  return table.ticks ? kTickBox_mm + kColumnGap_mm : 0.0;
}

std::vector<std::vector<Cell>> cells_of(const Setting& setting, const route::ListTable& table) {
  std::vector<std::vector<Cell>> rows;
  for (const auto& row : table.rows) {
    std::vector<Cell> cells;
    for (std::size_t c = 0; c < table.headings.size(); ++c) {
      const bool is_figure = table.figures == c;
      cells.push_back(
          {c < row.size() ? row[c] : std::string(), is_figure ? setting.type.size : setting.type.body});
    }
    rows.push_back(std::move(cells));
  }
  return rows;
}

// The column with most to say takes what the others leave.
std::size_t most_to_say(const Setting& setting, const std::vector<std::vector<Cell>>& rows,
                        std::size_t columns) {
  std::size_t most = 0;
  double widest = -1.0;
  for (std::size_t c = 0; c < columns; ++c) {
    double width = 0.0;
    for (const auto& row : rows)
      width = std::max(width, setting.width(row[c].says, row[c].style));
    if (width > widest) {
      widest = width;
      most = c;
    }
  }
  return most;
}

// Columns to write in stand evenly; others are as wide as their words, where that leaves enough for the one with most to
// say, else all give way.
std::vector<Column> columns_of(const Setting& setting, const route::ListTable& table,
                               const std::vector<std::vector<Cell>>& rows, double width_mm) {
  const std::size_t count = table.headings.size();
  const bool is_empty = std::all_of(table.rows.begin(), table.rows.end(), [](const auto& row) {
    return std::all_of(row.begin(), row.end(), [](const std::string& cell) { return cell.empty(); });
  });
  std::vector<Column> columns;
  for (const std::string& heading : table.headings)
    columns.push_back({heading, width_mm});
  if (!is_empty) {
    const std::size_t rest = most_to_say(setting, rows, count);
    std::vector<Column> unbroken = fitted(setting, columns, rows, rest, width_mm, kRoomier_mm);
    if (unbroken[rest].width_mm >= kWellSet * width_mm) return unbroken;
    for (Column& column : columns)
      column.width_mm = kShare * width_mm / static_cast<double>(count);
    return fitted(setting, columns, rows, rest, width_mm, kRoomier_mm);
  }
  const double gaps = kColumnGap_mm * static_cast<double>(count - 1);
  for (Column& column : columns) {
    column.width_mm = (width_mm - gaps) / static_cast<double>(count);
    column.ruled = &column != &columns.front() && &column != &columns.back();
  }
  return columns;
}

void add_table(Flow& flow, const Setting& setting, const route::ListTable& table, double width_mm) {
  if (table.rows.empty() || table.headings.empty()) return;
  const double words_mm = width_mm - mark_mm(table);
  const auto rows = cells_of(setting, table);
  const std::vector<Column> columns = columns_of(setting, table, rows, words_mm);
  std::vector<Column> headed = columns;
  if (table.to_fill) headed.push_back({"FOUND", kBlank_mm});
  const std::size_t head = flow.add_head(table_head(setting, headed, width_mm));
  for (const auto& cells : rows) {
    Block row = table_row(setting, columns, cells, width_mm, setting.type.pencil_row_mm);
    if (table.to_fill) {
      add_rule(row.list, width_mm - kBlank_mm, width_mm, row.height_mm - kUnderBlank_mm, Weight::kThin);
    } else if (table.ticks) {
      add_tick_box(row.list, width_mm - kTickBox_mm - 0.3, row.height_mm / 2.0);
    }
    row.table = head;
    flow.add(std::move(row));
  }
}

// Words with a line behind them, or under them where they are long.
Block blank_line(const Setting& setting, const std::string& says, double width_mm) {
  const double words_mm = setting.width(says, setting.type.body);
  Block block;
  if (words_mm + kAfterWords_mm + kLeastRule_mm > width_mm) {
    block = setting.paragraph(says, setting.type.body, width_mm);
    block.height_mm += setting.type.pencil_row_mm;
    add_rule(block.list, 0.0, width_mm, block.height_mm - kUnderBlank_mm, Weight::kThin);
    return block;
  }
  block.height_mm = setting.type.pencil_row_mm + kUnderBlank_mm;
  const double line_y = block.height_mm - kUnderBlank_mm;
  block.list.emplace_back(drawing::text(setting.ruler, says, {0.0, line_y - 0.6}, setting.type.body));
  add_rule(block.list, words_mm + kAfterWords_mm, width_mm, line_y, Weight::kThin);
  return block;
}

void add_section(Flow& flow, const Setting& setting, const route::ListSection& section, double width_mm) {
  if (!section.heading.empty()) flow.add(heading(setting, section.heading));
  for (const std::string& says : section.says)
    flow.add(setting.lines(says, setting.type.body, width_mm));
  if (!section.says.empty()) flow.add(space(setting.type.gap_mm));
  add_table(flow, setting, section.table, width_mm);
  std::vector<Entry> entries;
  for (const std::string& says : section.ticks)
    entries.push_back({says, "", true, false});
  flow.add(grid(setting, entries, setting.type.body, width_mm, kTickColumns));
  for (const std::string& says : section.blanks)
    flow.add(blank_line(setting, says, width_mm));
  flow.add(space(2.0 * setting.type.gap_mm));
}

}  // namespace

Flow list_flow(const Setting& setting, const route::ListSheet& sheet, double width_mm) {
  Flow flow;
  auto cautions = caution_blocks(setting, sheet.cautions, width_mm);
  if (!cautions.empty()) {
    flow.add(std::move(cautions));
    flow.add(space(setting.type.gap_mm));
  }
  for (const route::ListSection& section : sheet.sections)
    add_section(flow, setting, section, width_mm);
  if (sheet.is_signed) flow.add(signature_block(setting, width_mm));
  return flow;
}

}  // namespace sparewright::sheets
