// The outline of round work from its steps: what is left where later ones are cut into earlier ones. Used inside this room
// only.
#pragma once

#include <vector>

#include "core/route/sheet.hpp"

namespace sparewright::drawing {

// A piece of the outside, rising along the axis from the free end.
struct TurnedPiece {
  double from_mm = 0.0;
  double to_mm = 0.0;
  double from_radius_mm = 0.0;  // a taper where they differ
  double to_radius_mm = 0.0;
  bool cut_here = false;
};

// The outsides of the view, within the work; steps with sizes that are not known or cut nothing are left out.
[[nodiscard]] std::vector<TurnedPiece> turned_outline(const route::TurnedView& view);

}  // namespace sparewright::drawing
