// The drawing of the part: its views in third-angle or first-angle order, with lengths in rows beside them and notes on
// leaders.
#pragma once

#include <string>
#include <vector>

#include "drawing/display_list.hpp"
#include "drawing/part_marks.hpp"
#include "drawing/part_views.hpp"

namespace sparewright::drawing {

// ISO 128-3 and ASME Y14.3 know both; the symbol beside the scale says which (ISO 5456-2; all named from memory).
enum class Projection { kThirdAngle, kFirstAngle };

// What is drawn.
struct PartContent {
  PartViews views;
  Marks marks;
  Projection projection = Projection::kThirdAngle;
};

struct DrawingRoom {
  double width_mm = 0.0;
  double height_mm = 0.0;
};

// One sheet of it.
struct PartDrawing {
  DisplayList list;  // from (0, 0)
  double height_mm = 0.0;
  std::string scale;            // "1:2"; empty where the views fit at none
  std::vector<NoteMark> below;  // notes that found no place: to be printed as a list
  bool is_broken = false;       // a stretch of a long bar is left out
};

// As many sheets as it takes for the views not to shrink below half of the size they have without words, each with the same
// views and a share of the lengths and notes; four at most. What is too small in them, and holes that lean, have partial views of
// their own in a row under the others or on a sheet of their own (extra_views.hpp). The largest usual scale at which a sheet fits. Lines
// for visible edges, hidden edges and centres as in ISO 128-2 (from memory). No words overlap others or lie on a line; a length stands
// outside the view that shows it; what fits or locates is framed. Deterministic.
[[nodiscard]] std::vector<PartDrawing> draw_part(const PartContent& content, const DrawingRoom& room,
                                                 const Ruler& ruler);

// The symbol of the projection, its left end at `at` in the middle of its height.
void add_symbol(DisplayList& list, Projection projection, Point at, double high_mm);
[[nodiscard]] constexpr double symbol_width_mm(double high_mm) {
  return 2.5 * high_mm;
}

}  // namespace sparewright::drawing
