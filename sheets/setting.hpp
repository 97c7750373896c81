// Lines of type, boxes to tick and blanks to fill, as blocks.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "sheets/block.hpp"
#include "sheets/type.hpp"

namespace sparewright::sheets {

// What every block of a sheet is set with. Refers to the ruler, which outlives it.
struct Setting {
  const drawing::Ruler& ruler;
  Type type;

  // From one line to the next of the same style.
  [[nodiscard]] static double pitch(const TextStyle& style) { return 1.66 * style.cap_mm; }

  // One line, no wider than it is; its text stands in the middle of the height.
  [[nodiscard]] Block line(std::string_view says, const TextStyle& style) const;
  [[nodiscard]] std::vector<Block> lines(std::string_view says, const TextStyle& style,
                                         double width_mm) const;
  [[nodiscard]] Block paragraph(std::string_view says, const TextStyle& style, double width_mm) const;
  [[nodiscard]] double width(std::string_view says, const TextStyle& style) const {
    return ruler.measure(says, style).width_mm;
  }
};

// Lines of text of which the block of capitals, from the top of the first to the foot of the last, stands in the middle
// of a height: so that cells of different type align along a row.
struct Centred {
  std::vector<std::string> lines;
  TextStyle style;

  [[nodiscard]] double needed_mm(
      const Setting& setting) const;  // height that holds them and what reaches below
  void lay(drawing::DisplayList& list, const Setting& setting, double x_mm, double top_mm, double height_mm,
           drawing::Anchor anchor = drawing::Anchor::kLeft, drawing::Ink ink = drawing::Ink::kBlack) const;
};

void add_rule(drawing::DisplayList& list, double left_mm, double right_mm, double y_mm,
              drawing::Weight weight);
void add_tick_box(drawing::DisplayList& list, double left_mm, double middle_y_mm);

// White on black, the words in the middle. Returns its width.
[[nodiscard]] double tab_width(const Setting& setting, std::string_view says, const TextStyle& style);
void add_tab(drawing::DisplayList& list, const Setting& setting, std::string_view says,
             const TextStyle& style, const drawing::Box& box);

// A strong frame round `words`, which were set to tabbed_inner_mm, with a black tab at its left.
[[nodiscard]] double tabbed_inner_mm(const Setting& setting, std::string_view tab, double width_mm);
[[nodiscard]] Block tabbed(const Setting& setting, std::string_view tab, const Block& words, double width_mm);

// A frame of that weight, as wide as width_mm, round blocks that were set inset_mm narrower on both sides. A frame that
// runs over the end of a page stays open there; a low one stays on one page. A tab runs down the left side, white words
// on black, and takes tab.width_mm of the width. Nothing for no blocks.
struct SideTab {
  std::vector<std::string> lines;
  double width_mm = 0.0;
};
[[nodiscard]] SideTab side_tab(const Setting& setting, std::vector<std::string> lines);
[[nodiscard]] std::vector<Block> framed(const Setting& setting, const std::vector<Block>& rows,
                                        double width_mm, double inset_mm, drawing::Weight weight,
                                        const SideTab& tab = {});

// A label in the left column, texts beside it, one below the other. Every line is a block, the label goes with the first
// two lines. Nothing where there are no texts.
[[nodiscard]] double label_column_mm(const Type& type);
[[nodiscard]] std::vector<Block> field(const Setting& setting, std::string_view label,
                                       const std::vector<std::string>& texts, double width_mm);
// The same for blocks that are set already, label_column_mm narrower.
[[nodiscard]] std::vector<Block> labelled(const Setting& setting, std::string_view label,
                                          std::vector<Block> blocks);

}  // namespace sparewright::sheets
