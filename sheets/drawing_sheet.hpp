// The sheets with the drawing of the part, as blocks.
#pragma once

#include <vector>

#include "drawing/part_drawing.hpp"
#include "sheets/pages.hpp"
#include "sheets/setting.hpp"

namespace sparewright::sheets {

// Without head and foot. Above the views: scale, projection with its symbol, unit and general tolerance; below them the
// notes that found no place beside their features. NOT CHECKED FOR STRENGTH stands at the foot of every sheet.
[[nodiscard]] Flow drawing_flow(const Setting& setting, const Packet& packet,
                                const drawing::PartDrawing& sheet, double width_mm);

// The notes that found no place, line by line.
[[nodiscard]] std::vector<Block> notes_below(const Setting& setting, const drawing::PartDrawing& sheet,
                                             double width_mm);

// What a sheet leaves for the views.
[[nodiscard]] drawing::DrawingRoom drawing_room(Paper paper);

}  // namespace sparewright::sheets
