#include "sheets/measuring.hpp"

#include <algorithm>
#include <iterator>

#include <fmt/format.h>

#include "drawing/measured_view.hpp"
#include "sheets/list_sheet.hpp"
#include "sheets/press.hpp"
#include "sheets/printable.hpp"
#include "sheets/sheet_maker.hpp"

namespace sparewright::sheets {
namespace {

using drawing::Anchor;
using drawing::Weight;

constexpr double kPicture_mm = 88.0;  // width of a picture
constexpr double kBeside_mm = 5.0;    // from it to the words
constexpr double kAfterRule_mm = 1.2;

// The name, the value at the right of it, a rule below.
Block size_head(const Setting& setting, const MeasuredSize& size, double width_mm) {
  const TextStyle& value = setting.type.size;
  const double beside = width_mm - setting.width(size.value, value) - kBeside_mm;
  Block block = setting.paragraph(size.name, setting.type.strong, beside);
  block.height_mm = std::max(block.height_mm, Setting::pitch(value));
  Centred{{size.value}, value}.lay(block.list, setting, width_mm, 0.0, Setting::pitch(value), Anchor::kRight);
  add_rule(block.list, 0.0, width_mm, block.height_mm + kAfterRule_mm, Weight::kVisible);
  block.height_mm += 2.0 * kAfterRule_mm;
  return block;
}

Block words_of(const Setting& setting, const MeasuredSize& size, double width_mm) {
  std::vector<Block> rows;
  if (!size.good_to.empty())
    rows.push_back(setting.paragraph("good to " + size.good_to, setting.type.strong, width_mm));
  for (const std::string& says : size.says)
    rows.push_back(setting.paragraph(says, setting.type.body, width_mm));
  return stacked(rows, setting.type.gap_mm / 2.0);
}

// The picture at the left where there is one, the words beside it. Never divided.
Block size_block(const Setting& setting, const MeasuredSize& size, double width_mm) {
  Block block = size_head(setting, size, width_mm);
  const double top = block.height_mm;
  if (!size.sketch) {
    stack(block, words_of(setting, size, width_mm));
    return block;
  }
  const auto picture = drawing::measured_view(*size.sketch, size.on_sketch, kPicture_mm, setting.ruler);
  const double indent = kPicture_mm + kBeside_mm;
  Block words = words_of(setting, size, width_mm - indent);
  stack(words, setting.paragraph("picture " + picture.scale, setting.type.fine, width_mm - indent),
        setting.type.gap_mm);
  drawing::append(block.list, picture.list, {0.0, top});
  drawing::append(block.list, words.list, {indent, top});
  block.height_mm = top + std::max(picture.height_mm, words.height_mm);
  return block;
}

Flow as_measured(const Setting& setting, const MeasuringPacket& packet, double width_mm) {
  Flow flow;
  for (const MeasuredSize& size : packet.sizes) {
    flow.add(size_block(setting, size, width_mm));
    flow.add(space(2.0 * setting.type.gap_mm));
  }
  flow.add(field(setting, "READINGS", packet.agreement, width_mm));
  return flow;
}

struct Wanted {
  std::string tab;
  std::string name;
  MakeFlow flow;
};

base::Result<std::vector<Page>> lay_out(const MeasuringPacket& given, const PaperOptions& options,
                                        const Press& press) {
  const PrintableMeasuring prepared = printable(given, options.dialect, press);
  const MeasuringPacket& packet = prepared.packet;
  std::vector<Wanted> wanted;
  for (const route::ListSheet& list : packet.lists) {
    wanted.push_back(
        {list.tab, list.name, [&list](const Setting& s, double width) { return list_flow(s, list, width); }});
  }
  if (!packet.sizes.empty()) {
    wanted.push_back({"AS MEASURED", "what the readings make of the old part",
                      [&packet](const Setting& s, double width) { return as_measured(s, packet, width); }});
  }
  std::vector<Page> all;
  for (std::size_t i = 0; i < wanted.size(); ++i) {
    const SheetHead head{
        packet.title,  packet.revision, static_cast<int>(i) + 1, static_cast<int>(wanted.size()),
        wanted[i].tab, wanted[i].name,  prepared.replaced};
    auto made = make_sheet(press, size_of(options.paper), head, {wanted[i].flow});
    if (!made) return base::fail(made.error());
    std::move(made->begin(), made->end(), std::back_inserter(all));
  }
  return all;
}

}  // namespace

base::Result<std::vector<Page>> measuring_pages(const MeasuringPacket& packet, const PaperOptions& options) {
  const auto press = Press::open();
  if (!press) return base::fail(press.error());
  return lay_out(packet, options, **press);
}

base::Result<std::string> render_measuring(const MeasuringPacket& packet, const PaperOptions& options) {
  const auto press = Press::open();
  if (!press) return base::fail(press.error());
  const auto pages = lay_out(packet, options, **press);
  if (!pages) return base::fail(pages.error());
  bool replaced = false;
  return (*press)->print(*pages, printable(packet.title, **press, replaced));
}

}  // namespace sparewright::sheets
