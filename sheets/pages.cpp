#include "sheets/pages.hpp"

#include <algorithm>
#include <array>
#include <functional>
#include <optional>

#include <fmt/format.h>

#include "sheets/drawing_sheet.hpp"
#include "sheets/front_sheet.hpp"
#include "sheets/head.hpp"
#include "sheets/layout.hpp"
#include "sheets/list_sheet.hpp"
#include "sheets/paper.hpp"
#include "sheets/printable.hpp"
#include "sheets/setup_sheet.hpp"

namespace sparewright::sheets {
namespace {

// Makes a part of a sheet with one size of type.
using MakeFlow = std::function<Flow(const Setting&, double width_mm)>;

// Pages of a part of a sheet, without head and foot.
struct Bodies {
  Type type;
  std::vector<drawing::DisplayList> pages;
};

class SheetMaker {
 public:
  SheetMaker(const drawing::Ruler& ruler, PaperSize paper, const SheetHead& head)
      : ruler_(ruler), paper_(paper), head_(head), width_mm_(paper.width_mm - kLeft_mm - kRight_mm) {}

  // The whole on one page with the largest type that allows it; else each part on pages of its own with the largest type
  // it allows, unless the parts one after the other take fewer. Nothing where a block does not fit on a page.
  [[nodiscard]] std::optional<std::vector<Page>> make(const std::vector<MakeFlow>& make_parts) const {
    std::array<std::vector<Flow>, kTypes.size()>
        made;  // the parts in each type, made when they are first wanted
    const auto parts_in = [&](std::size_t type) -> const std::vector<Flow>& {
      if (made.at(type).empty()) {
        for (const MakeFlow& make : make_parts)
          made.at(type).push_back(make({ruler_, kTypes.at(type)}, width_mm_));
      }
      return made.at(type);
    };
    const auto whole = fewest([&](std::size_t type) { return joined(parts_in(type)); });
    if (!whole) return std::nullopt;
    if (whole->pages.size() == 1) return with_heads({*whole});
    std::vector<Bodies> apart;
    std::size_t count = 0;
    for (std::size_t part = 0; part < make_parts.size(); ++part) {
      auto bodies = fewest([&](std::size_t type) { return parts_in(type)[part]; });
      if (!bodies) return std::nullopt;
      count += bodies->pages.size();
      apart.push_back(std::move(*bodies));
    }
    return with_heads(count <= whole->pages.size() ? apart : std::vector<Bodies>{*whole});
  }

 private:
  // As few pages as any type allows, with the largest that does.
  [[nodiscard]] std::optional<Bodies> fewest(const std::function<Flow(std::size_t type)>& flow_in) const {
    std::optional<Bodies> best;
    for (std::size_t i = 0; i < kTypes.size(); ++i) {
      auto pages = divided(flow_in(i), room_mm({ruler_, kTypes.at(i)}));
      if (pages && (!best || pages->size() < best->pages.size()))
        best = Bodies{kTypes.at(i), std::move(*pages)};
      if (best && best->pages.size() == 1) break;
    }
    return best;
  }

  // Between head and foot.
  [[nodiscard]] double room_mm(const Setting& setting) const {
    return paper_.height_mm - kTop_mm - kBottom_mm - head_block(setting, head_, 1, 1, width_mm_).height_mm -
           foot_block(setting, head_, width_mm_).height_mm;
  }

  [[nodiscard]] std::vector<Page> with_heads(const std::vector<Bodies>& parts) const {
    std::size_t of = 0;
    for (const Bodies& part : parts)
      of += part.pages.size();
    std::vector<Page> pages;
    for (const Bodies& part : parts) {
      for (const drawing::DisplayList& body : part.pages) {
        pages.push_back(
            page({ruler_, part.type}, body, static_cast<int>(pages.size()) + 1, static_cast<int>(of)));
      }
    }
    return pages;
  }

  [[nodiscard]] Page page(const Setting& setting, const drawing::DisplayList& body, int number,
                          int of) const {
    const Block head = head_block(setting, head_, number, of, width_mm_);
    const Block foot = foot_block(setting, head_, width_mm_);
    Page page{paper_.width_mm, paper_.height_mm, {}};
    drawing::append(page.list, head.list, {kLeft_mm, kTop_mm});
    drawing::append(page.list, body, {kLeft_mm, kTop_mm + head.height_mm});
    drawing::append(page.list, foot.list, {kLeft_mm, paper_.height_mm - kBottom_mm - foot.height_mm});
    return page;
  }

  const drawing::Ruler& ruler_;
  PaperSize paper_;
  SheetHead head_;
  double width_mm_;
};

tl::unexpected<base::Failure> does_not_fit(int sheet) {
  return base::fail(base::Code::kTooMany, "one text is higher than a page", "a shorter text",
                    fmt::format("sheet {}", sheet));
}

// One sheet of the packet before it is laid out.
struct Wanted {
  std::string tab;
  std::string name;
  bool letters_replaced = false;
  std::vector<MakeFlow> parts;
};

// In the order of the packet. Refers to the packet and the drawings.
std::vector<Wanted> wanted(const PrintablePacket& prepared,
                           const std::vector<drawing::PartDrawing>& drawings) {
  const Packet& packet = prepared.packet;
  std::vector<Wanted> all;
  all.push_back({"THE JOB",
                 counted(packet.first.checks),
                 prepared.first_replaced,
                 {[&](const Setting& s, double width) {
                   return front_flow(s, packet, width, static_cast<int>(drawings.size()));
                 }}});
  for (const drawing::PartDrawing& sheet : drawings) {
    const std::string count =
        drawings.size() > 1 ? fmt::format(", {} of {}", all.size(), drawings.size()) : "";
    all.push_back({"DRAWING",
                   "the finished part" + count,
                   prepared.drawing_replaced,
                   {[&](const Setting& s, double width) { return drawing_flow(s, packet, sheet, width); }}});
  }
  const auto add_lists = [&](const std::vector<route::ListSheet>& lists, const std::vector<bool>& replaced) {
    for (std::size_t i = 0; i < lists.size(); ++i) {
      const route::ListSheet& list = lists[i];
      all.push_back({list.tab, list.name, replaced[i], {[&list](const Setting& s, double width) {
                       return list_flow(s, list, width);
                     }}});
    }
  };
  add_lists(packet.before, prepared.before_replaced);
  for (std::size_t i = 0; i < packet.setups.size(); ++i) {
    const route::SetupSheet& setup = packet.setups[i];
    const drawing::HeldViews* held = i < packet.held.size() && packet.held[i] ? &*packet.held[i] : nullptr;
    all.push_back(
        {fmt::format("OP {}", setup.op),
         setup.name,
         prepared.setups_replaced[i],
         {[&setup, held](const Setting& s, double width) { return before_the_lines(s, setup, held, width); },
          [&setup](const Setting& s, double width) { return lines_and_after(s, setup, width); }}});
  }
  add_lists(packet.after, prepared.after_replaced);
  return all;
}

}  // namespace

base::Result<std::vector<Page>> laid_out(const Packet& given, const PaperOptions& options, const Press& press,
                                         std::optional<int> only) {
  if (given.first.queries.size() > kMostQueries) {
    return base::fail(base::Code::kTooMany, fmt::format("{} are given", given.first.queries.size()),
                      fmt::format("{} at most", kMostQueries), "queries on the first sheet");
  }
  const PrintablePacket prepared = printable(given, options.dialect, press);
  const Packet& packet = prepared.packet;
  const std::vector<drawing::PartDrawing> drawings =
      packet.drawing ? drawing::draw_part(*packet.drawing, drawing_room(options.paper), press)
                     : std::vector<drawing::PartDrawing>{};
  const std::vector<Wanted> sheets = wanted(prepared, drawings);
  std::vector<Page> all;
  for (std::size_t i = 0; i < sheets.size(); ++i) {
    const Wanted& sheet = sheets[i];
    if (only && sheet.tab != fmt::format("OP {}", *only)) continue;
    const int number = static_cast<int>(i) + 1;
    const SheetHead head{packet.title,
                         packet.revision,
                         number,
                         static_cast<int>(sheets.size()),
                         sheet.tab,
                         sheet.name,
                         prepared.head_replaced || sheet.letters_replaced};
    auto made = SheetMaker(press, size_of(options.paper), head).make(sheet.parts);
    if (!made) return does_not_fit(number);
    std::move(made->begin(), made->end(), std::back_inserter(all));
  }
  return all;
}

base::Result<std::vector<Page>> pages(const Packet& packet, const PaperOptions& options) {
  const auto press = Press::open();
  if (!press) return base::fail(press.error());
  return laid_out(packet, options, **press);
}

}  // namespace sparewright::sheets
