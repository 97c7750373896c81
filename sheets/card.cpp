#include "sheets/card.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "drawing/wrap.hpp"
#include "sheets/head.hpp"
#include "sheets/paper.hpp"
#include "sheets/press.hpp"
#include "sheets/printable.hpp"

namespace sparewright::sheets {
namespace {

using drawing::Anchor;
using drawing::Weight;

constexpr double kMargin_mm = 6.0;
constexpr double kGap_mm = 1.6;
constexpr double kBesideName_mm = 3.0;
constexpr double kIndent_mm = 3.0;
constexpr TextStyle kTitle{2.6, Face::kBold};
constexpr TextStyle kAnswerRest{2.4, Face::kRegular};
constexpr std::array kAnswerCaps_mm{9.0, 7.5, 6.0, 4.8, 3.8};  // the first that takes one line

PaperSize quarter_of(Paper paper) {
  const PaperSize whole = size_of(paper);
  return {whole.width_mm / 2.0, whole.height_mm / 2.0};
}

// Lays one card out, with the texts as they go to the press.
class CardMaker {
 public:
  CardMaker(const Press& press, PaperSize paper)
      : setting_{press, kUsual}, paper_(paper), width_mm_(paper.width_mm - 2.0 * kMargin_mm) {}

  [[nodiscard]] base::Result<std::vector<Page>> make(const Card& card, bool letters_replaced) const {
    const Block foot = foot_of(letters_replaced);
    const double head_mm = head_of(card, 1, 1).height_mm;
    const auto bodies =
        divided(body_of(card), paper_.height_mm - 2.0 * kMargin_mm - head_mm - foot.height_mm);
    if (!bodies)
      return base::fail(base::Code::kTooMany, "one text is higher than a card", "a shorter text", card.asked);
    std::vector<Page> pages;
    for (const drawing::DisplayList& body : *bodies) {
      Page page{paper_.width_mm, paper_.height_mm, {}};
      drawing::append(page.list, head_of(card, pages.size() + 1, bodies->size()).list,
                      {kMargin_mm, kMargin_mm});
      drawing::append(page.list, body, {kMargin_mm, kMargin_mm + head_mm});
      drawing::append(page.list, foot.list, {kMargin_mm, paper_.height_mm - kMargin_mm - foot.height_mm});
      pages.push_back(std::move(page));
    }
    return pages;
  }

 private:
  // The title, "Rev C  card 1 of 2" at its right, a rule. Its height does not depend on the count.
  [[nodiscard]] Block head_of(const Card& card, std::size_t number, std::size_t of) const {
    std::string count = card.revision.empty() ? "" : fmt::format("Rev {}", card.revision);
    if (of > 1) count += fmt::format("{}card {} of {}", count.empty() ? "" : "   ", number, of);
    const double room_for_count = setting_.width("Rev XX   card 99 of 99", setting_.type.body);
    Block block = setting_.paragraph(card.title, kTitle, width_mm_ - room_for_count - kBesideName_mm);
    Centred{{count}, setting_.type.body}.lay(block.list, setting_, width_mm_, 0.0, Setting::pitch(kTitle),
                                             Anchor::kRight);
    add_rule(block.list, 0.0, width_mm_, block.height_mm + 0.8, Weight::kFrame);
    block.height_mm += 0.8 + kGap_mm;
    return block;
  }

  [[nodiscard]] Block foot_of(bool letters_replaced) const {
    SheetHead said;
    said.letters_replaced = letters_replaced;
    return foot_block(setting_, said, width_mm_);
  }

  // The answer in a strong frame, as large as fits.
  [[nodiscard]] std::vector<Block> answer_of(const Card& card) const {
    const double inset = 2.0;
    const double inner = width_mm_ - 2.0 * inset;
    TextStyle style;
    std::vector<std::string> lines;
    for (const double cap : kAnswerCaps_mm) {
      style = {cap, Face::kBold};
      lines = drawing::wrap(setting_.ruler, card.answer, style, inner);
      if (lines.size() == 1) break;
    }
    std::vector<Block> rows;
    for (const std::string& line : lines)
      rows.push_back(setting_.line(line, style));
    if (!card.good_to.empty()) {
      for (Block& line : setting_.lines("good to " + card.good_to, kAnswerRest, inner))
        rows.push_back(std::move(line));
    }
    for (const std::string& missing : card.missing) {
      for (Block& line : setting_.lines("not known: " + missing, setting_.type.strong, inner))
        rows.push_back(std::move(line));
    }
    return framed(setting_, rows, width_mm_, inset, Weight::kFrame);
  }

  // Name and value on one line where the name has a third of it left, else the value below; below them, indented, where
  // it is from.
  [[nodiscard]] Block row_of(const CardRow& row) const {
    const TextStyle& size = setting_.type.size;
    const double beside = width_mm_ - setting_.width(row.value, size) - kBesideName_mm;
    const bool is_beside = beside >= width_mm_ / 3.0;
    Block block = setting_.paragraph(row.name, setting_.type.body, is_beside ? beside : width_mm_);
    const double top = is_beside ? 0.0 : block.height_mm;
    const std::vector<std::string> lines = drawing::wrap(setting_.ruler, row.value, size, width_mm_);
    const double high = static_cast<double>(lines.size()) * Setting::pitch(size);
    Centred{lines, size}.lay(block.list, setting_, width_mm_, top, high, Anchor::kRight);
    block.height_mm = std::max(block.height_mm, top + high);
    if (!row.from.empty())
      stack(block, setting_.paragraph(row.from, setting_.type.fine, width_mm_ - kIndent_mm), 0.0, kIndent_mm);
    block.height_mm += 0.8;
    add_rule(block.list, 0.0, width_mm_, block.height_mm, Weight::kThin);
    block.height_mm += 0.8;
    return block;
  }

  [[nodiscard]] Block heading_of(const CardRow& row) const {
    Block block = setting_.paragraph(row.name, setting_.type.strong, width_mm_);
    block.height_mm += 0.8;
    block.keeps_next = true;
    return block;
  }

  [[nodiscard]] Flow body_of(const Card& card) const {
    Flow flow;
    if (card.asked != card.title) flow.add(setting_.lines(card.asked, setting_.type.strong, width_mm_));
    if (!card.answer.empty()) flow.add(answer_of(card));
    for (const std::string& caution : card.cautions)
      flow.add(setting_.lines(caution, setting_.type.strong, width_mm_));
    flow.add(found());
    flow.add(space(kGap_mm));
    if (!card.how.empty()) flow.add(setting_.lines(card.how, setting_.type.body, width_mm_));
    if (!card.source.empty()) flow.add(setting_.lines(card.source, setting_.type.fine, width_mm_));
    if (!card.rows.empty()) flow.add(space(kGap_mm));
    if (!card.rows.empty() && !card.rows_label.empty()) {
      Block label = setting_.line(card.rows_label, setting_.type.label);
      label.keeps_next = true;
      flow.add(std::move(label));
    }
    for (const CardRow& row : card.rows)
      flow.add(row.value.empty() && row.from.empty() ? heading_of(row) : row_of(row));
    if (!card.notes.empty()) flow.add(space(kGap_mm));
    for (const std::string& note : card.notes)
      flow.add(setting_.lines(note, setting_.type.fine, width_mm_));
    return flow;
  }

  // For the pencil.
  [[nodiscard]] Block found() const {
    Block block;
    block.height_mm = setting_.type.pencil_row_mm + 1.0;
    const double line_y = block.height_mm - 1.6;
    const auto lay = [&](const std::string& words, double left, double right) {
      const auto text = drawing::text(setting_.ruler, words, {left, line_y}, setting_.type.body);
      add_rule(block.list, text.box.right_mm + 1.6, right, line_y, Weight::kThin);
      block.list.emplace_back(text);
    };
    lay("found", 0.0, 0.5 * width_mm_);
    lay("date", 0.53 * width_mm_, width_mm_);
    return block;
  }

  Setting setting_;
  PaperSize paper_;
  double width_mm_;
};

base::Result<std::vector<Page>> laid_out(const Card& card, const PaperOptions& options, const Press& press) {
  const PrintableCard prepared = printable(card, options.dialect, press);
  return CardMaker(press, quarter_of(options.paper)).make(prepared.card, prepared.replaced);
}

}  // namespace

base::Result<std::vector<Page>> card_pages(const Card& card, const PaperOptions& options) {
  const auto press = Press::open();
  if (!press) return base::fail(press.error());
  return laid_out(card, options, **press);
}

base::Result<std::string> render_card(const Card& card, const PaperOptions& options) {
  const auto press = Press::open();
  if (!press) return base::fail(press.error());
  const auto pages = laid_out(card, options, **press);
  if (!pages) return base::fail(pages.error());
  bool replaced = false;
  return (*press)->print(*pages, printable(card.title, **press, replaced));
}

}  // namespace sparewright::sheets
