#include "sheets/drawing_file.hpp"

#include <algorithm>

#include "drawing/json.hpp"
#include "sheets/drawing_sheet.hpp"
#include "sheets/layout.hpp"
#include "sheets/printable.hpp"

namespace sparewright::sheets {

namespace {

// The views, and below them what found no place beside its feature.
Page page_of(const Press& press, const drawing::PartDrawing& sheet, double width_mm) {
  const Setting setting{press, kTypes.front()};
  Block below;
  for (const Block& line : notes_below(setting, sheet, width_mm))
    stack(below, line);
  Page page{width_mm, std::max(sheet.height_mm + below.height_mm, 1.0), sheet.list};
  drawing::append(page.list, below.list, {0.0, sheet.height_mm});
  return page;
}

}  // namespace

base::Result<std::vector<std::string>> render_drawing(const Packet& packet, const PaperOptions& options,
                                                      Picture kind) {
  constexpr double kDotsPerInch = 150.0;
  const auto press = Press::open();
  if (!press) return base::fail(press.error());
  const PrintablePacket prepared = printable(packet, options.dialect, **press);
  const drawing::DrawingRoom room = drawing_room(options.paper);
  std::vector<std::string> files;
  for (const drawing::PartDrawing& sheet : drawing::draw_part(*prepared.packet.drawing, room, **press)) {
    const Page page = page_of(**press, sheet, room.width_mm);
    files.push_back(kind == Picture::kJson  ? drawing::to_json(page.list)
                    : kind == Picture::kSvg ? (*press)->print_svg(page)
                                            : (*press)->print_png(page, kDotsPerInch));
  }
  return files;
}

}  // namespace sparewright::sheets
