#include "sheets/head.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "drawing/wrap.hpp"

namespace sparewright::sheets {
namespace {

using drawing::Anchor;
using drawing::Weight;

constexpr std::array kTitleCaps_mm{4.6, 3.8, 3.0,
                                   2.4};  // a long title is set smaller before it takes a third line
constexpr std::size_t kTitleLines = 2;
constexpr double kRoundTitle_mm = 1.2;
constexpr double kTabHeight_mm = 8.0;
constexpr double kAfterTab_mm = 3.0;
constexpr TextStyle kCount{4.0, Face::kBold};
constexpr double kFootRoom_mm = 1.4;

struct Title {
  std::vector<std::string> lines;
  TextStyle style;
};

Title title_within(const Setting& setting, const std::string& title, double width_mm) {
  Title result;
  for (const double cap : kTitleCaps_mm) {
    result.style = {cap, Face::kBold};
    result.lines = drawing::wrap(setting.ruler, title, result.style, width_mm);
    if (result.lines.size() <= kTitleLines) break;
  }
  return result;
}

// "SHEET 2 of 5" over "Rev C   one off   page 1 of 2".
Block count_block(const Setting& setting, const SheetHead& head, int page, int pages) {
  std::string below = head.revision.empty() ? "" : fmt::format("Rev {}   ", head.revision);
  below += "one off";
  if (pages > 1) below += fmt::format("   page {} of {}", page, pages);
  const std::string above = fmt::format("SHEET {} of {}", head.sheet, head.of);
  return stacked({setting.line(above, kCount), setting.line(below, setting.type.body)});
}

// Its own width, so that the title takes the rest whatever the page.
double count_width(const Setting& setting, const SheetHead& head) {
  double width = 0.0;
  for (const drawing::Element& element : count_block(setting, head, 99, 99).list) {
    width = std::max(width, std::get<drawing::Text>(element).box.width());
  }
  return width;
}

void align_right(Block& block, double right_mm) {
  for (drawing::Element& element : block.list) {
    element = drawing::moved(element, {right_mm - std::get<drawing::Text>(element).box.right_mm, 0.0});
  }
}

Block op_band(const Setting& setting, const SheetHead& head, double width_mm) {
  const TextStyle& style = setting.type.op;
  const double tab = tab_width(setting, head.tab, style);
  const Centred name{drawing::wrap(setting.ruler, head.name, style, width_mm - tab - kAfterTab_mm), style};
  Block band;
  band.height_mm = std::max(kTabHeight_mm, name.needed_mm(setting));
  add_tab(band.list, setting, head.tab, style, {0.0, 0.0, tab, band.height_mm});
  name.lay(band.list, setting, tab + kAfterTab_mm, 0.0, band.height_mm);
  return band;
}

}  // namespace

Block head_block(const Setting& setting, const SheetHead& head, int page, int pages, double width_mm) {
  Block count = count_block(setting, head, page, pages);
  align_right(count, width_mm);
  const double left = std::min(count_width(setting, head), width_mm / 2.0) + kAfterTab_mm;
  const Title title = title_within(setting, head.title, width_mm - left);
  const Centred words{title.lines, title.style};

  Block block;
  block.height_mm = std::max(count.height_mm, words.needed_mm(setting)) + kRoundTitle_mm;
  words.lay(block.list, setting, 0.0, 0.0, block.height_mm - kRoundTitle_mm);
  drawing::append(block.list, count.list);
  add_rule(block.list, 0.0, width_mm, block.height_mm, Weight::kFrame);
  block.height_mm += kRoundTitle_mm;
  stack(block, op_band(setting, head, width_mm), kRoundTitle_mm);
  block.height_mm += setting.type.gap_mm;
  return block;
}

Block foot_block(const Setting& setting, const SheetHead& head, double width_mm) {
  Block block;
  block.height_mm = kFootRoom_mm;
  add_rule(block.list, 0.0, width_mm, block.height_mm, Weight::kVisible);
  stack(block,
        setting.paragraph("NOT CHECKED FOR STRENGTH by a qualified person; local codes come first.",
                          setting.type.strong, width_mm),
        0.6);
  if (head.letters_replaced) {
    stack(block, setting.paragraph("Numbers like U+2603 stand for letters that this type does not have.",
                                   setting.type.fine, width_mm));
  }
  return block;
}

Block signature_block(const Setting& setting, double width_mm) {
  Block block;
  block.height_mm = setting.type.pencil_row_mm + 1.0;
  const double line_y = block.height_mm - 1.6;
  const double before = 1.6;
  const auto lay = [&](const std::string& words, double left, double right) {
    const auto text = drawing::text(setting.ruler, words, {left, line_y}, setting.type.body);
    add_rule(block.list, text.box.right_mm + before, right, line_y, Weight::kThin);
    block.list.emplace_back(text);
  };
  lay("By", 0.0, 0.22 * width_mm);
  lay("date", 0.24 * width_mm, 0.44 * width_mm);
  lay("overruled, and why:", 0.46 * width_mm, width_mm);
  block.sinks = true;
  return block;
}

}  // namespace sparewright::sheets
