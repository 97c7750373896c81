// The setup picture of a lathe: the work as it is held, seen by the operator, headstock to the left.
#pragma once

#include "core/base/result.hpp"
#include "core/route/sheet.hpp"
#include "drawing/plan_frame.hpp"
#include "drawing/plan_view.hpp"

namespace sparewright::drawing {

// The outline of the work, what is cut here thick, the rest thin (the free end thick where a step of no length says so); holes on the axis dashed, thick where they are cut here;
// the jaws hatched, the axis as a centre line, the centre in the tail; steps and holes with their names, the zero (a
// diamond with a white eye) below the free end; below it what the lines mean and which way the readings rise. Nothing
// overlaps.
//
// view  route/sheet.hpp: mm along the axis from the zero, more to the left.
// Fails with kSizeNotPositive where the work has no length or no diameter, or is not known.
[[nodiscard]] base::Result<Picture> turned_view(const route::TurnedView& view, const PictureRoom& room,
                                                const Ruler& ruler);

}  // namespace sparewright::drawing
