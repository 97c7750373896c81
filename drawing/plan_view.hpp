// The setup picture: the work in the vise, seen from above as the operator stands.
#pragma once

#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/route/sheet.hpp"
#include "drawing/display_list.hpp"
#include "drawing/held_views.hpp"
#include "drawing/plan_frame.hpp"

namespace sparewright::drawing {

struct Picture {
  DisplayList list;  // from (0, 0), as wide as its room
  double height_mm = 0.0;
  struct Letter {
    std::string letter;
    std::string name;
  };
  std::vector<Letter> key;             // names with no room for more than a letter
  std::vector<std::string> not_named;  // of what is drawn: no room for these names
  std::vector<std::string> not_shown;  // lies outside the picture, or its place is not known
};

// The work as this setup leaves it between the jaws (hatched, the fixed one away from the operator, each with the side that
// lies against it), the parallels dashed, what is cut here thick, holes with centre lines, flats hatched, the rest thin,
// holes, flats and forms with their names, the zero (a diamond with a white eye), the names of the ends; below it the same seen
// from the right (end_view.hpp), what the lines mean and which way +X and +Y run. It fills the width as far as the height
// allows; nothing overlaps.
//
// view  route/sheet.hpp: mm, x to the right, y away, from the zero; names of valid UTF-8.
// held  the work itself; nullptr where it cannot be made: its outline, holes, flats and forms by their sizes, and no end view.
// room  what there is; the picture may be lower.
// Degenerate: no jaws where jaw_right_mm <= jaw_left_mm; no parallels where they have no thickness or would meet.
// Fails with kSizeNotPositive where the work has no length or width, or is not known.
[[nodiscard]] base::Result<Picture> plan_view(const route::PlanView& view, const HeldViews* held,
                                              const PictureRoom& room, const Ruler& ruler);

}  // namespace sparewright::drawing
