#include "sheets/drawing_sheet.hpp"

#include <fmt/format.h>

#include "sheets/paper.hpp"

namespace sparewright::sheets {
namespace {

using drawing::Projection;

// Head, foot, the line above the views and a few notes below them.
constexpr double kAllElse_mm = 72.0;

Block scale_line(const Setting& setting, const Packet& packet, const drawing::PartDrawing& sheet,
                 double width_mm) {
  const Projection projection = packet.drawing->projection;
  std::string words =
      fmt::format("scale {}   sizes in {}   {} projection", sheet.scale, packet.first.sizes_in,
                  projection == Projection::kThirdAngle ? "third-angle" : "first-angle");
  if (packet.drawing->views.section_y_mm) words += "   front: section along the chain line with arrows";
  if (sheet.is_broken) words += "   bar drawn broken: lengths are true";
  Block block = setting.line(words, setting.type.body);
  const double height = setting.type.body.cap_mm * 1.4;
  drawing::add_symbol(block.list, projection,
                      {width_mm - drawing::symbol_width_mm(height), block.height_mm / 2.0}, height);
  return block;
}

}  // namespace

drawing::DrawingRoom drawing_room(Paper paper) {
  const PaperSize size = size_of(paper);
  return {text_width_mm(paper), size.height_mm - kAllElse_mm};
}

std::vector<Block> notes_below(const Setting& setting, const drawing::PartDrawing& sheet, double width_mm) {
  std::vector<Block> lines;
  for (const drawing::NoteMark& note : sheet.below) {
    std::string words;
    for (const std::string& line : note.lines)
      words += (words.empty() ? "" : words.back() == ':' ? " " : "; ") + line;
    // Bold what fits or locates, as beside the views.
    for (Block& line : setting.lines(words, note.strong ? setting.type.strong : setting.type.body, width_mm))
      lines.push_back(std::move(line));
  }
  return lines;
}

Flow drawing_flow(const Setting& setting, const Packet& packet, const drawing::PartDrawing& sheet,
                  double width_mm) {
  Flow flow;
  if (sheet.scale.empty()) {
    flow.add(setting.lines("The views do not fit on a sheet: look at the part by `solid`.", setting.type.body,
                           width_mm));
  } else {
    flow.add(scale_line(setting, packet, sheet, width_mm));
    flow.add(setting.lines("framed or bold: fits or locates. " + packet.first.the_rest, setting.type.body,
                           width_mm));
    Block views;
    views.list = sheet.list;
    views.height_mm = sheet.height_mm;
    flow.add(std::move(views));
  }
  flow.add(notes_below(setting, sheet, width_mm));
  return flow;
}

}  // namespace sparewright::sheets
