// What of a view lies in a circle. Used inside this room only.
#pragma once

#include "drawing/view.hpp"

namespace sparewright::drawing {

// Arcs that run out of it become paths. Bounds are those of the circle; waves are left out.
[[nodiscard]] View within(const View& view, const shape::FlatPoint& centre, double radius_mm);

}  // namespace sparewright::drawing
