#include "sheets/setting.hpp"

#include <algorithm>

#include "drawing/wrap.hpp"

namespace sparewright::sheets {
namespace {

using drawing::Anchor;
using drawing::Box;
using drawing::Ink;
using drawing::TextSize;
using drawing::Weight;

constexpr double kTabRoom_mm = 2.4;        // black left and right of the words
constexpr double kOutsideTabbed_mm = 1.0;  // above and below the frame

// Baselines of lines, from the middle of the block of capitals.
struct Baselines {
  std::vector<double> at_mm;
  double reach_mm = 0.0;  // farthest any line takes room from the middle
};

Baselines baselines(const Centred& text, const Setting& setting) {
  Baselines result;
  double y = 0.0;
  double below = 0.0;
  std::vector<TextSize> sizes;
  for (const std::string& line : text.lines) {
    sizes.push_back(setting.ruler.measure(line, text.style));
    const TextSize& size = sizes.back();
    y += result.at_mm.empty() ? 0.0 : std::max(Setting::pitch(text.style), below + size.above_mm);
    below = size.below_mm;
    result.at_mm.push_back(y);
  }
  const double middle = (y - text.style.cap_mm) / 2.0;
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    result.at_mm[i] -= middle;
    result.reach_mm =
        std::max({result.reach_mm, sizes[i].above_mm - result.at_mm[i], result.at_mm[i] + sizes[i].below_mm});
  }
  return result;
}

// On the line of the text beside it, beside a higher block in its middle.
void add_label(Block& row, const Setting& setting, std::string_view label, const Block& beside) {
  const TextStyle& style = setting.type.label;
  const auto* text = beside.list.empty() ? nullptr : std::get_if<drawing::Text>(&beside.list.front());
  if (text != nullptr && beside.height_mm < 1.5 * Setting::pitch(text->style)) {
    row.list.emplace_back(drawing::text(setting.ruler, std::string(label), {0.0, text->at.y_mm}, style));
  } else {
    Centred{{std::string(label)}, style}.lay(row.list, setting, 0.0, 0.0, beside.height_mm);
  }
}

}  // namespace

Block Setting::line(std::string_view says, const TextStyle& style) const {
  const Centred words{{std::string(says)}, style};
  Block block;
  block.height_mm = std::max(pitch(style), words.needed_mm(*this));
  words.lay(block.list, *this, 0.0, 0.0, block.height_mm);
  return block;
}

std::vector<Block> Setting::lines(std::string_view says, const TextStyle& style, double width_mm) const {
  std::vector<Block> blocks;
  for (const std::string& words : drawing::wrap(ruler, says, style, width_mm))
    blocks.push_back(line(words, style));
  return blocks;
}

Block Setting::paragraph(std::string_view says, const TextStyle& style, double width_mm) const {
  return stacked(lines(says, style, width_mm));
}

double Centred::needed_mm(const Setting& setting) const {
  return 2.0 * baselines(*this, setting).reach_mm;
}

void Centred::lay(drawing::DisplayList& list, const Setting& setting, double x_mm, double top_mm,
                  double height_mm, Anchor anchor, Ink ink) const {
  const Baselines where = baselines(*this, setting);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const double y = top_mm + height_mm / 2.0 + where.at_mm[i];
    list.emplace_back(drawing::text(setting.ruler, lines[i], {x_mm, y}, style, anchor, ink));
  }
}

void add_rule(drawing::DisplayList& list, double left_mm, double right_mm, double y_mm, Weight weight) {
  list.emplace_back(drawing::Line{{left_mm, y_mm}, {right_mm, y_mm}, weight});
}

void add_tick_box(drawing::DisplayList& list, double left_mm, double middle_y_mm) {
  const double half = kTickBox_mm / 2.0;
  drawing::add_outline(list, {left_mm, middle_y_mm - half, left_mm + kTickBox_mm, middle_y_mm + half},
                       Weight::kVisible);
}

double tab_width(const Setting& setting, std::string_view says, const TextStyle& style) {
  return setting.width(says, style) + 2.0 * kTabRoom_mm;
}

void add_tab(drawing::DisplayList& list, const Setting& setting, std::string_view says,
             const TextStyle& style, const Box& box) {
  drawing::add_filled(list, box);
  Centred{{std::string(says)}, style}.lay(list, setting, box.middle().x_mm, box.top_mm, box.height(),
                                          Anchor::kMiddle, Ink::kWhite);
}

double tabbed_inner_mm(const Setting& setting, std::string_view tab, double width_mm) {
  return width_mm - tab_width(setting, tab, setting.type.stop) - 2.0 * setting.type.around_mm -
         drawing::stroke_of(Weight::kFrame).width_mm;
}

Block tabbed(const Setting& setting, std::string_view tab, const Block& words, double width_mm) {
  const double tab_mm = tab_width(setting, tab, setting.type.stop);
  Block block;
  stack(block, words, setting.type.around_mm + kOutsideTabbed_mm, tab_mm + setting.type.around_mm);
  block.height_mm += setting.type.around_mm + kOutsideTabbed_mm;
  const Box frame{0.0, kOutsideTabbed_mm, width_mm, block.height_mm - kOutsideTabbed_mm};
  add_tab(block.list, setting, tab, setting.type.stop,
          {frame.left_mm, frame.top_mm, tab_mm, frame.bottom_mm});
  drawing::add_outline(block.list, drawing::grown(frame, -drawing::stroke_of(Weight::kFrame).width_mm / 2.0),
                       Weight::kFrame);
  return block;
}

SideTab side_tab(const Setting& setting, std::vector<std::string> lines) {
  const double words = drawing::widest(setting.ruler, lines, setting.type.label);
  return {std::move(lines), words + 2.0 * kTabRoom_mm};
}

std::vector<Block> framed(const Setting& setting, const std::vector<Block>& rows, double width_mm,
                          double inset_mm, Weight weight, const SideTab& tab) {
  constexpr double kLow_mm = 80.0;
  const Centred words{tab.lines, setting.type.label};
  const double half_line = drawing::stroke_of(weight).width_mm / 2.0;
  const double right = width_mm - half_line;
  double height = 0.0;
  for (const Block& row : rows)
    height += row.height_mm;
  std::vector<Block> result;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const bool first = i == 0;
    const bool last = i + 1 == rows.size();
    Block block;
    stack(block, rows[i], first ? setting.type.around_mm : 0.0, tab.width_mm + inset_mm);
    block.height_mm += last ? setting.type.around_mm : 0.0;
    if (first) block.height_mm = std::max(block.height_mm, words.needed_mm(setting) + 4.0 * half_line);
    const double top = first ? half_line : 0.0;
    const double bottom = last ? block.height_mm - half_line : block.height_mm;
    for (const double x : {half_line, right})
      block.list.emplace_back(drawing::Line{{x, top}, {x, bottom}, weight});
    if (first) add_rule(block.list, half_line, right, top, weight);
    if (last) add_rule(block.list, half_line, right, bottom, weight);
    if (tab.width_mm > 0.0) drawing::add_filled(block.list, {0.0, 0.0, tab.width_mm, block.height_mm});
    if (first && !tab.lines.empty()) {
      words.lay(block.list, setting, tab.width_mm / 2.0, 0.0, block.height_mm, Anchor::kMiddle, Ink::kWhite);
    }
    block.keeps_next = !last && (rows[i].keeps_next || height <= kLow_mm);
    result.push_back(std::move(block));
  }
  return result;
}

double label_column_mm(const Type& type) {
  return 9.4 * type.label.cap_mm;
}

std::vector<Block> field(const Setting& setting, std::string_view label,
                         const std::vector<std::string>& texts, double width_mm) {
  std::vector<Block> blocks;
  for (const std::string& says : texts) {
    for (Block& line : setting.lines(says, setting.type.body, width_mm - label_column_mm(setting.type))) {
      blocks.push_back(std::move(line));
    }
  }
  return labelled(setting, label, std::move(blocks));
}

std::vector<Block> labelled(const Setting& setting, std::string_view label, std::vector<Block> blocks) {
  std::vector<Block> result;
  for (Block& block : blocks) {
    Block row;
    if (result.empty()) add_label(row, setting, label, block);
    stack(row, block, 0.0, label_column_mm(setting.type));
    row.keeps_next = block.keeps_next || (result.empty() && blocks.size() > 1);
    result.push_back(std::move(row));
  }
  return result;
}

}  // namespace sparewright::sheets
