#include "sheets/drawing_file.hpp"

#include <fmt/format.h>

#include "drawing/json.hpp"
#include "sheets/drawing_sheet.hpp"
#include "sheets/layout.hpp"
#include "sheets/printable.hpp"

namespace sparewright::sheets {

base::Result<std::string> render_drawing(const Packet& packet, const PaperOptions& options, int sheet,
                                         Picture kind) {
  constexpr double kDotsPerInch = 150.0;
  const auto press = Press::open();
  if (!press) return base::fail(press.error());
  const PrintablePacket prepared = printable(packet, options.dialect, **press);
  const drawing::DrawingRoom room = drawing_room(options.paper);
  const auto sheets = drawing::draw_part(*prepared.packet.drawing, room, **press);
  if (sheet < 1 || static_cast<std::size_t>(sheet) > sheets.size())
    return base::fail(base::Code::kNotInTheJob, fmt::format("{}", sheet),
                      fmt::format("1 to {}", sheets.size()), "sheet of the drawing");
  const drawing::PartDrawing& one = sheets[static_cast<std::size_t>(sheet) - 1];
  if (kind == Picture::kJson) return drawing::to_json(one.list);
  const Page page{room.width_mm, std::max(one.height_mm, 1.0), one.list};
  return kind == Picture::kSvg ? (*press)->print_svg(page) : (*press)->print_png(page, kDotsPerInch);
}

}  // namespace sparewright::sheets
