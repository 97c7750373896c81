// The least distance between two primitives.
#pragma once

#include "core/shape/primitive.hpp"

namespace sparewright::shape {

// distance_mm  0 where the two meet.
// at_least_mm  proven by a plane that keeps the two apart: at_least_mm <= true distance <= distance_mm (to
// rounding). on_a, on_b   the points that are distance_mm apart, each on its own body; where they meet, a
// point near both. Where
//              many pairs are equally near (parallel faces, parallel cylinders) always the same one of them.
struct Distance {
  double distance_mm = 0.0;
  double at_least_mm = 0.0;
  Point on_a;
  Point on_b;
};

// Accuracy: distance_mm - at_least_mm <= kDistanceAccuracy_mm for bodies within 1 m of each other.
// Of a body that is not convex the smallest convex body around it counts: at_least_mm is good for it too, distance_mm and
// the points are not. Half-spaces may stand on either side or both; two that are not parallel meet.
// Source, named from memory: E. Gilbert, D. Johnson, S. Keerthi, IEEE J. Robotics and Automation 4 (1988)
// 193-203: walk towards the origin over simplices of the difference of the two bodies. The faces of the simplex are all tried, and
// the walk ends on the bound of its separating plane, so the answer carries its own proof.
[[nodiscard]] Distance distance(const Primitive& a, const Primitive& b);

inline constexpr double kDistanceAccuracy_mm = 1e-9;

}  // namespace sparewright::shape
