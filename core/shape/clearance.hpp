// How far a point is from the surface of a primitive.
#pragma once

#include "core/shape/primitive.hpp"

namespace sparewright::shape {

// distance_mm  from the nearest point of the surface: positive outside, negative inside. Exact to rounding; a
//              convex function of the point where the primitive is convex.
// normal       unit, leads from inside outwards at that nearest point; nearest = point - distance_mm *
// normal.
//              Where several points are equally near (on an axis, at a corner's bisector) always the same one
//              of them.
struct Clearance {
  double distance_mm = 0.0;
  Vector normal;
};

[[nodiscard]] Clearance clearance(const Primitive& primitive, const Point& point);

// On the surface counts as inside.
[[nodiscard]] bool contains(const Primitive& primitive, const Point& point);

}  // namespace sparewright::shape
