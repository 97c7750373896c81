#include "sheets/pages.hpp"

#include <algorithm>
#include <optional>

#include <fmt/format.h>

#include "sheets/drawing_sheet.hpp"
#include "sheets/front_sheet.hpp"
#include "sheets/layout.hpp"
#include "sheets/list_sheet.hpp"
#include "sheets/paper.hpp"
#include "sheets/printable.hpp"
#include "sheets/setup_sheet.hpp"
#include "sheets/sheet_maker.hpp"

namespace sparewright::sheets {
namespace {

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
    auto made = make_sheet(press, size_of(options.paper), head, sheet.parts);
    if (!made) return base::fail(made.error());
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
