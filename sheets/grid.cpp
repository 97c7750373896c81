#include "sheets/grid.hpp"

#include <algorithm>

#include "drawing/wrap.hpp"

namespace sparewright::sheets {
namespace {

constexpr double kBetweenColumns_mm = 4.0;
constexpr double kBetweenTexts_mm = 8.0;
constexpr double kAfterBox_mm = 1.8;
constexpr double kAroundFigure_mm = 2.0;
constexpr double kWidestFigure = 0.4;  // of a column
constexpr double kLeastText_mm = 12.0;
constexpr double kWellSet_mm = 17.0;    // words in two lines are given that much
constexpr double kUnderBlank_mm = 1.6;  // from a blank to the foot of its row

double box_mm(const Entry& entry) {
  return entry.ticks ? kTickBox_mm + kAfterBox_mm : 0.0;
}

double blank_mm(const Entry& entry) {
  return entry.fills ? kShortBlank_mm + kAroundFigure_mm : 0.0;
}

double figure_mm(const Setting& setting, const Entry& entry) {
  return entry.figure.empty() ? 0.0 : setting.width(entry.figure, setting.type.size) + kAroundFigure_mm;
}

double natural_width(const Setting& setting, const Entry& entry, const TextStyle& style) {
  return box_mm(entry) + setting.width(entry.says, style) + figure_mm(setting, entry) + blank_mm(entry);
}

// One entry's parts, broken to its column.
struct Cell {
  Centred says;
  Centred figure;
};

Cell cell(const Setting& setting, const Entry& entry, const TextStyle& style, double width_mm) {
  Cell cell{{{}, style}, {{}, setting.type.size}};
  double rest = width_mm - box_mm(entry) - blank_mm(entry);
  if (!entry.figure.empty()) {
    cell.figure.lines = drawing::wrap(setting.ruler, entry.figure, setting.type.size,
                                      std::max(kLeastText_mm, kWidestFigure * width_mm));
    rest -= drawing::widest(setting.ruler, cell.figure.lines, setting.type.size) + kAroundFigure_mm;
  }
  cell.says.lines = drawing::wrap_even(setting.ruler, entry.says, style, std::max(rest, kLeastText_mm));
  return cell;
}

double share_mm(double width_mm, int count) {
  return (width_mm - (count - 1) * kBetweenColumns_mm) / count;
}

// Whether the entry stands well in a column: its words in two lines at most, its figure in one.
bool stands_well(const Setting& setting, const Entry& entry, const TextStyle& style, double width_mm) {
  const Cell parts = cell(setting, entry, style, width_mm);
  const double rest = width_mm - box_mm(entry) - blank_mm(entry) - figure_mm(setting, entry);
  return parts.says.lines.size() <= 2 && parts.figure.lines.size() <= 1 &&
         (rest >= kWellSet_mm || natural_width(setting, entry, style) <= width_mm);
}

struct Columns {
  int count = 1;
  double width_mm = 0.0;
};

Columns columns(const Setting& setting, const std::vector<Entry>& entries, const TextStyle& style,
                double width_mm, int most_columns) {
  double widest = kLeastText_mm;
  for (const Entry& entry : entries)
    widest = std::max(widest, natural_width(setting, entry, style));
  int count = std::min(most_columns, static_cast<int>(entries.size()));
  const auto all_stand_well = [&](double column_mm) {
    return std::all_of(entries.begin(), entries.end(),
                       [&](const Entry& entry) { return stands_well(setting, entry, style, column_mm); });
  };
  while (count > 1 && !all_stand_well(share_mm(width_mm, count)))
    --count;
  return {count, std::min(share_mm(width_mm, count), widest + drawing::kTouch_mm)};
}

void lay(Block& row, const Setting& setting, const Entry& entry, const Cell& cell, double left_mm,
         double width_mm) {
  const double height = row.height_mm;
  if (entry.ticks) add_tick_box(row.list, left_mm, height / 2.0);
  cell.says.lay(row.list, setting, left_mm + box_mm(entry), 0.0, height);
  const double blank_left = left_mm + width_mm - blank_mm(entry);
  cell.figure.lay(row.list, setting, blank_left, 0.0, height, drawing::Anchor::kRight);
  if (entry.fills) {
    add_rule(row.list, blank_left + kAroundFigure_mm, left_mm + width_mm, height - kUnderBlank_mm,
             drawing::Weight::kThin);
  }
}

}  // namespace

std::vector<Block> grid(const Setting& setting, const std::vector<Entry>& entries, const TextStyle& style,
                        double width_mm, int most_columns) {
  std::vector<Block> rows;
  const Columns shape = columns(setting, entries, style, width_mm, most_columns);
  const auto count = static_cast<std::size_t>(shape.count);
  for (std::size_t first = 0; first < entries.size(); first += count) {
    const std::size_t end = std::min(entries.size(), first + count);
    std::vector<Cell> cells;
    Block row;
    row.height_mm = setting.pitch(style);
    for (std::size_t i = first; i < end; ++i) {
      cells.push_back(cell(setting, entries[i], style, shape.width_mm));
      const double pencil = entries[i].fills   ? setting.type.pencil_row_mm
                            : entries[i].ticks ? kTickBox_mm + 1.6
                                               : 0.0;
      row.height_mm = std::max({row.height_mm, pencil, cells.back().says.needed_mm(setting) + 0.4,
                                cells.back().figure.needed_mm(setting) + 0.4});
    }
    for (std::size_t i = first; i < end; ++i) {
      const double left = static_cast<double>(i - first) * (shape.width_mm + kBetweenColumns_mm);
      lay(row, setting, entries[i], cells[i - first], left, shape.width_mm);
    }
    rows.push_back(std::move(row));
  }
  return rows;
}

std::size_t size_begins(std::string_view says) {
  const auto is_figure = [&](std::size_t i) { return i < says.size() && says[i] >= '0' && says[i] <= '9'; };
  const std::size_t space = says.rfind(' ');
  const std::size_t start = space == std::string_view::npos ? 0 : space + 1;
  for (std::size_t i = start; i < says.size(); ++i) {
    if (says[i] == '.' && is_figure(i + 1))
      return is_figure(start) || says[start] == '.' ? start : says.size();
  }
  return says.size();
}

namespace {

Block size_block(const Setting& setting, std::string_view says, double width_mm) {
  const TextStyle& bold = setting.type.size;
  const TextStyle plain{bold.cap_mm, Face::kRegular};
  const std::size_t at = size_begins(says);
  const std::string_view words = says.substr(0, at);
  const double words_width = setting.width(words, plain);
  if (at == says.size() || words_width + setting.width(says.substr(at), bold) > width_mm) {
    return setting.paragraph(says, bold, width_mm);
  }
  Block block = setting.line(says.substr(at), bold);
  if (words.empty()) return block;
  Block whole = setting.line(words, plain);
  drawing::append(whole.list, block.list, {words_width, 0.0});
  return whole;
}

double width_of(const Block& block) {
  double width = 0.0;
  for (const drawing::Element& element : block.list) {
    if (const auto* text = std::get_if<drawing::Text>(&element)) width = std::max(width, text->box.right_mm);
  }
  return width;
}

}  // namespace

std::vector<Block> sizes_in_rows(const Setting& setting, const std::vector<std::string>& texts,
                                 double width_mm) {
  std::vector<Block> rows;
  double used = 0.0;
  for (const std::string& says : texts) {
    Block one = size_block(setting, says, width_mm);
    const double width = width_of(one);
    if (rows.empty() || used + kBetweenTexts_mm + width > width_mm) {
      rows.push_back(std::move(one));
      used = width;
      continue;
    }
    drawing::append(rows.back().list, one.list, {used + kBetweenTexts_mm, 0.0});
    rows.back().height_mm = std::max(rows.back().height_mm, one.height_mm);
    used += kBetweenTexts_mm + width;
  }
  return rows;
}

}  // namespace sparewright::sheets
