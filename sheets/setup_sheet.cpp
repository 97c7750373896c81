#include "sheets/setup_sheet.hpp"

#include <algorithm>

#include "core/base/messages.hpp"
#include "drawing/plan_view.hpp"
#include "drawing/turned_view.hpp"
#include "sheets/grid.hpp"
#include "sheets/head.hpp"
#include "sheets/line_table.hpp"

namespace sparewright::sheets {
namespace {

using drawing::Weight;

constexpr double kBesidePicture_mm = 4.0;
constexpr double kBetweenFields_mm = 8.0;
constexpr double kAfterLabel_mm = 3.0;
constexpr double kHighestBelow_mm = 92.0;
constexpr double kLargerBelow = 1.35;        // words and marks of a picture as wide as the sheet
constexpr double kHighestBeside_mm = 120.0;  // more words than that do not stand beside the picture
constexpr double kInset_mm = 2.2;

// A size: a blank is given to what states one.
bool states_a_decimal(const std::string& says) {
  for (std::size_t i = 1; i + 1 < says.size(); ++i) {
    const auto is_figure = [](char c) { return c >= '0' && c <= '9'; };
    if (says[i] == '.' && is_figure(says[i - 1]) && is_figure(says[i + 1])) return true;
  }
  return false;
}

std::vector<Entry> entries(const std::vector<std::string>& texts, bool always_fills) {
  std::vector<Entry> result;
  for (const std::string& says : texts) {
    result.push_back({says, "", true, always_fills || states_a_decimal(says)});
  }
  return result;
}

// A box to tick when all of it is done, at the right end of the last line; it reaches up, where other lines leave room.
void add_done_box(std::vector<Block>& blocks, double width_mm) {
  if (blocks.empty()) return;
  Block& last = blocks.back();
  if (blocks.size() == 1) last.height_mm = std::max(last.height_mm, kTickBox_mm);
  add_tick_box(last.list, width_mm - kTickBox_mm - 0.3, last.height_mm - kTickBox_mm / 2.0);
}

std::vector<Block> done_field(const Setting& setting, std::string_view label,
                              const std::vector<std::string>& texts, double width_mm) {
  std::vector<Block> blocks = field(setting, label, texts, width_mm - kTickBox_mm - 2.0);
  add_done_box(blocks, width_mm);
  return blocks;
}

void add(std::vector<Block>& all, std::vector<Block> more, double gap_mm) {
  if (more.empty()) return;
  if (!all.empty()) all.push_back(space(gap_mm));
  for (Block& block : more)
    all.push_back(std::move(block));
}

// MACHINE, CHECK, HOLD, PICK UP: those there are, each as blocks of that width.
using Fields = std::vector<std::vector<Block>>;

Fields fields_before(const Setting& setting, const route::SetupSheet& sheet, double width_mm) {
  Fields fields{field(setting, "MACHINE", sheet.machine, width_mm),
                labelled(setting, "CHECK",
                         grid(setting, entries(sheet.check, true), setting.type.body,
                              width_mm - label_column_mm(setting.type), 2)),
                done_field(setting, "HOLD", sheet.hold, width_mm),
                done_field(setting, "PICK UP", sheet.pick_up, width_mm)};
  fields.erase(
      std::remove_if(fields.begin(), fields.end(), [](const auto& blocks) { return blocks.empty(); }),
      fields.end());
  return fields;
}

std::string listed(const std::vector<std::string>& names) {
  std::string all;
  for (const std::string& name : names)
    all += (all.empty() ? "" : ", ") + name;
  return all;
}

Block picture_block(const Setting& setting, const route::SetupSheet& sheet, const drawing::HeldViews* held,
                    const drawing::PictureRoom& room) {
  if (std::holds_alternative<std::monostate>(sheet.view)) return {};
  const auto* turned = std::get_if<route::TurnedView>(&sheet.view);
  const auto picture = turned != nullptr ? drawing::turned_view(*turned, room, setting.ruler)
                                         : drawing::plan_view(std::get<route::PlanView>(sheet.view), held,
                                                              room, setting.ruler);
  if (!picture) {
    return setting.paragraph("No picture: " + base::sentence(picture.error()) + ".", setting.type.body,
                             room.width_mm);
  }
  Block block;
  block.list = picture->list;
  block.height_mm = picture->height_mm;
  const auto add_note = [&](const std::string& what, const std::vector<std::string>& names) {
    if (names.empty()) return;
    for (const Block& line : setting.lines(what + listed(names) + ".", setting.type.fine, room.width_mm))
      stack(block, line);
  };
  std::vector<std::string> key;
  for (const auto& one : picture->key)
    key.push_back(one.letter + " " + one.name);
  add_note("", key);
  add_note("No room in the picture for: ", picture->not_named);
  add_note("Not in the picture: ", picture->not_shown);
  return block;
}

// Fields beside the picture, then fields as wide as the sheet.
struct Holding {
  std::vector<Block> blocks;
  double height_mm = 0.0;
};

Holding holding_of(const Block& picture, const std::vector<Block>& beside, const Fields& below,
                   double picture_left_mm, double gap_mm) {
  Block both = stacked(beside, gap_mm);
  drawing::append(both.list, picture.list, {picture_left_mm, 0.0});
  both.height_mm = std::max(both.height_mm, picture.height_mm);
  Holding holding;
  holding.blocks.push_back(std::move(both));
  for (const std::vector<Block>& field : below)
    add(holding.blocks, field, gap_mm);
  for (const Block& block : holding.blocks)
    holding.height_mm += block.height_mm;
  return holding;
}

// With as many fields beside the picture as take the least height.
std::vector<Block> picture_beside(const Setting& setting, const route::SetupSheet& sheet,
                                  const drawing::HeldViews* held, double width_mm) {
  const double picture_mm = setting.type.picture_mm;
  const double words_mm = width_mm - picture_mm - kBesidePicture_mm;
  const Block picture = picture_block(setting, sheet, held, {picture_mm, setting.type.picture_high_mm});
  Fields below = fields_before(setting, sheet, width_mm);
  std::vector<Block> beside;
  const auto now = [&] {
    return holding_of(picture, beside, below, words_mm + kBesidePicture_mm, setting.type.gap_mm);
  };
  Holding best = now();
  for (const std::vector<Block>& field : fields_before(setting, sheet, words_mm)) {
    beside.push_back(stacked(field));
    below.erase(below.begin());
    Holding holding = now();
    if (holding.blocks.front().height_mm <= kHighestBeside_mm && holding.height_mm <= best.height_mm) {
      best = std::move(holding);
    }
  }
  return std::move(best.blocks);
}

std::vector<Block> picture_below(const Setting& setting, const route::SetupSheet& sheet,
                                 const drawing::HeldViews* held, double width_mm) {
  std::vector<Block> blocks;
  for (auto& field : fields_before(setting, sheet, width_mm))
    add(blocks, std::move(field), setting.type.gap_mm);
  add(blocks, {picture_block(setting, sheet, held, {width_mm, kHighestBelow_mm, kLargerBelow})},
      2.0 * setting.type.gap_mm);
  return blocks;
}

bool has_picture(const route::SetupSheet& sheet) {
  return !std::holds_alternative<std::monostate>(sheet.view);
}

std::vector<Block> no_picture(const Setting& setting, const route::SetupSheet& sheet, double width_mm) {
  std::vector<Block> blocks;
  for (auto& field : fields_before(setting, sheet, width_mm))
    add(blocks, std::move(field), setting.type.gap_mm);
  return blocks;
}

void add_with_gap(Flow& flow, const Setting& setting, std::vector<Block> blocks) {
  if (blocks.empty()) return;
  flow.add(std::move(blocks));
  flow.add(space(setting.type.gap_mm));
}

// On one line where that has room for both.
std::vector<Block> stock_and_done(const Setting& setting, const std::string& stock, const std::string& done,
                                  double width_mm) {
  std::vector<Block> left;
  std::vector<Block> right;
  if (!stock.empty()) left = field(setting, "STOCK", {stock}, width_mm);
  if (!done.empty()) right = field(setting, "DONE", {done}, width_mm);
  if (left.size() == 1 && right.size() == 1) {
    const Type& type = setting.type;
    const double second = label_column_mm(type) + setting.width(stock, type.body) + kBetweenFields_mm;
    const double words = second + setting.width("DONE", type.label) + kAfterLabel_mm;
    if (words + setting.width(done, type.body) <= width_mm) {
      const double y = std::get<drawing::Text>(left.front().list.front()).at.y_mm;  // of its label
      left.front().list.emplace_back(drawing::text(setting.ruler, "DONE", {second, y}, type.label));
      left.front().list.emplace_back(drawing::text(setting.ruler, done, {words, y}, type.body));
      return left;
    }
  }
  std::move(right.begin(), right.end(), std::back_inserter(left));
  return left;
}

std::vector<Block> before_unclamp(const Setting& setting, const std::vector<std::string>& texts,
                                  double width_mm) {
  const SideTab tab = side_tab(setting, {"BEFORE YOU", "UNCLAMP"});
  const double inner = width_mm - tab.width_mm - 2.0 * kInset_mm;
  return framed(setting, grid(setting, entries(texts, false), setting.type.body, inner, 2), width_mm,
                kInset_mm, Weight::kFrame, tab);
}

}  // namespace

std::vector<Block> sizes_blocks(const Setting& setting, const std::vector<std::string>& sizes,
                                const std::string& the_rest, double width_mm) {
  std::vector<Block> rows;
  const double inner = width_mm - 2.0 * kInset_mm;
  if (!sizes.empty()) {
    rows.push_back(setting.line("SIZES THAT MATTER", setting.type.label));
    rows.back().keeps_next = true;
    for (Block& row : sizes_in_rows(setting, sizes, inner))
      rows.push_back(std::move(row));
  }
  for (Block& line : setting.lines(the_rest, setting.type.body, inner))
    rows.push_back(std::move(line));
  return framed(setting, rows, width_mm, kInset_mm, Weight::kVisible);
}

std::vector<Block> caution_blocks(const Setting& setting, const std::vector<std::string>& cautions,
                                  double width_mm) {
  std::vector<Block> blocks;
  for (const std::string& says : cautions) {
    for (Block& line : setting.lines(says, setting.type.strong, width_mm - label_column_mm(setting.type))) {
      blocks.push_back(std::move(line));
    }
  }
  return labelled(setting, "CAUTION", std::move(blocks));
}

std::vector<Block> not_cleared_blocks(const Setting& setting, const std::vector<std::string>& lines,
                                      double width_mm) {
  if (lines.empty()) return {};
  const double inner = width_mm - 2.0 * kInset_mm;
  std::vector<Block> rows{setting.line("NOT CLEARED TO CUT", setting.type.strong)};
  rows.back().keeps_next = true;
  for (const std::string& says : lines) {
    for (Block& line : setting.lines(says, setting.type.body, inner))
      rows.push_back(std::move(line));
  }
  return framed(setting, rows, width_mm, kInset_mm, Weight::kFrame);
}

Flow before_the_lines(const Setting& setting, const route::SetupSheet& sheet, const drawing::HeldViews* held,
                      double width_mm) {
  Flow flow;
  add_with_gap(flow, setting, not_cleared_blocks(setting, sheet.not_cleared, width_mm));
  add_with_gap(flow, setting, stock_and_done(setting, sheet.stock, sheet.done_before, width_mm));
  add_with_gap(flow, setting, sizes_blocks(setting, sheet.sizes_that_matter, sheet.the_rest, width_mm));
  add_with_gap(flow, setting,
               !has_picture(sheet)          ? no_picture(setting, sheet, width_mm)
               : setting.type.picture_below ? picture_below(setting, sheet, held, width_mm)
                                            : picture_beside(setting, sheet, held, width_mm));
  add_with_gap(flow, setting, caution_blocks(setting, sheet.cautions, width_mm));
  return flow;
}

Flow lines_and_after(const Setting& setting, const route::SetupSheet& sheet, double width_mm) {
  Flow flow;
  if (!sheet.items.empty()) {
    add_line_table(flow, setting, sheet.items, sheet.dials, width_mm);
    flow.add(space(setting.type.gap_mm));
  }
  add_with_gap(flow, setting, before_unclamp(setting, sheet.before_unclamp, width_mm));
  add_with_gap(flow, setting, field(setting, "IF WRONG", sheet.if_wrong, width_mm));
  flow.add(signature_block(setting, width_mm));
  return flow;
}

}  // namespace sparewright::sheets
