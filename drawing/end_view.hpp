// The small picture of a setup: the work between the jaws, seen from the operator's right. Used inside this room only.
#pragma once

#include "core/route/sheet.hpp"
#include "drawing/display_list.hpp"
#include "drawing/held_views.hpp"
#include "drawing/plan_frame.hpp"

namespace sparewright::drawing {

// In frame.end_view, which has some width: the jaws hatched, the moving one to the left, with their names over them; the
// parallels and the bed under the work; what is cut here thick, and dashed where it lies inside; an arrow where the tool
// comes down.
void add_end_view(DisplayList& list, const PlanFrame& frame, const route::PlanView& view,
                  const HeldViews& held, const Ruler& ruler);

}  // namespace sparewright::drawing
