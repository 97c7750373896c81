#include "sheets/line_columns.hpp"

#include <algorithm>
#include <array>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

#include <fmt/format.h>

namespace sparewright::sheets {
namespace {

using drawing::Anchor;
using route::Line;

constexpr double kNumber_mm = 9.0;
constexpr double kDialStep_mm = 0.25;

// How the columns give way so that there is room for words, one after the other. Wider cells are broken into lines; a
// reading of two figures and three fits the last of them.
struct Widths {
  bool do_above = false;
  double dial_least_mm = kDialLeast_mm;  // height of the figures
  double dial_mm = 40.0;                 // width of their column
  double feed_mm = 19.0;
  double expect_mm = 27.0;
  double least_rest_mm = 0.0;  // for DO, or for the last column where DO stands above
};
constexpr std::array kWidths{
    Widths{false, 4.0, 40.0, 19.0, 27.0, 38.0}, Widths{false, 3.5, 40.0, 13.0, 18.0, 30.0},
    Widths{true, 4.0, 40.0, 17.0, 26.0, 26.0}, Widths{true, 3.5, 26.0, 12.0, 16.0, 0.0}};
constexpr double kSpeed_mm = 14.0;

constexpr std::string_view kDo = "DO";

// One column and what it takes of a line.
struct Part {
  Column column;
  TextStyle style;
  std::function<std::string(const Line&)> says;
};

std::vector<Part> all_parts(const Type& type, const Dials& dials, double dial_cap_mm, const Widths& w) {
  const TextStyle dial{dial_cap_mm, Face::kBold};
  return {{{"#", kNumber_mm, Anchor::kRight},
           type.number,
           [](const Line& l) { return fmt::format("{}", l.number); }},
          {{std::string(kDo), 0.0}, type.body, [](const Line& l) { return l.says; }},
          {{dials[0], w.dial_mm, Anchor::kRight, true}, dial, [](const Line& l) { return l.x_reads; }},
          {{dials[1], w.dial_mm, Anchor::kRight, true}, dial, [](const Line& l) { return l.y_reads; }},
          {{dials[2], w.dial_mm, Anchor::kRight, true}, dial, [](const Line& l) { return l.z_reads; }},
          {{"RPM", kSpeed_mm, Anchor::kRight}, type.speed, [](const Line& l) { return l.rpm; }},
          {{"FEED", w.feed_mm}, type.body, [](const Line& l) { return l.feed; }},
          {{"EXPECT", w.expect_mm}, type.strong, [](const Line& l) { return l.expect; }}};
}

constexpr std::string_view kNoBreakSpace = "\u00A0";

// How many figures the division has in "5t + 62", set with no-break spaces; 0 where it is not such a reading.
std::size_t division_figures(const std::string& reads) {
  const std::size_t space = reads.rfind(kNoBreakSpace);
  if (space == std::string::npos) return 0;
  const std::size_t from = space + kNoBreakSpace.size();
  const bool is_reading = reads.find(fmt::format("t{}", kNoBreakSpace)) != std::string::npos &&
                          reads.find_first_not_of("0123456789", from) == std::string::npos;
  return is_reading ? reads.size() - from : 0;
}

// "5t + 62" over "16t + 112": the divisions padded to one width with figure spaces (U+2007), so that turns, sign and
// divisions stand below each other.
void align_readings(std::vector<std::vector<Cell>>& rows, std::size_t column) {
  constexpr std::string_view kFigureSpace = "\u2007";
  std::size_t longest = 0;
  for (const auto& row : rows)
    longest = std::max(longest, division_figures(row[column].says));
  for (auto& row : rows) {
    std::string& reads = row[column].says;
    const std::size_t figures = division_figures(reads);
    if (figures == 0) continue;
    for (std::size_t i = figures; i < longest; ++i)
      reads.insert(reads.rfind(kNoBreakSpace) + kNoBreakSpace.size(), kFigureSpace);
  }
}

// With figures to dial of that height; nothing where that leaves too little room.
std::optional<LineColumns> with(const Setting& setting, const std::vector<const Line*>& lines,
                                const Dials& dials, double width_mm, double dial_cap_mm,
                                const Widths& widths) {
  LineColumns result;
  result.rows.resize(lines.size());
  for (const Part& part : all_parts(setting.type, dials, dial_cap_mm, widths)) {
    const bool is_do = part.column.heading == kDo;
    const bool is_used =
        std::any_of(lines.begin(), lines.end(), [&](const Line* l) { return !part.says(*l).empty(); });
    if (is_do && widths.do_above) {
      for (const Line* line : lines)
        result.above.push_back({part.says(*line), part.style});
      continue;
    }
    if (!is_used && !is_do && !result.columns.empty()) continue;
    result.columns.push_back(part.column);
    for (std::size_t i = 0; i < lines.size(); ++i)
      result.rows[i].push_back({part.says(*lines[i]), part.style});
    if (part.column.ruled) align_readings(result.rows, result.columns.size() - 1);
  }
  result.found_left_mm = width_mm - kBlank_mm;
  const std::size_t takes_rest = widths.do_above ? result.columns.size() - 1 : 1;
  result.columns = fitted(setting, std::move(result.columns), result.rows, takes_rest,
                          result.found_left_mm - kColumnGap_mm);
  if (result.columns[takes_rest].width_mm < widths.least_rest_mm) return std::nullopt;
  return result;
}

}  // namespace

LineColumns line_columns(const Setting& setting, const std::vector<route::Item>& items, const Dials& dials,
                         double width_mm) {
  std::vector<const Line*> lines;
  for (const route::Item& item : items) {
    if (const auto* line = std::get_if<Line>(&item)) lines.push_back(line);
  }
  for (const Widths& widths : kWidths) {
    for (double dial = setting.type.dial_mm; dial >= widths.dial_least_mm; dial -= kDialStep_mm) {
      if (auto result = with(setting, lines, dials, width_mm, dial, widths)) return *std::move(result);
    }
  }
  return {};
}

}  // namespace sparewright::sheets
