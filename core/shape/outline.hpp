// Flat convex outlines: the section of a prism, and the half section of a body of revolution.
#pragma once

#include <span>
#include <vector>

namespace sparewright::shape {

// A point of a plane, mm.
struct FlatPoint {
  double u = 0.0;
  double v = 0.0;

  friend bool operator==(const FlatPoint&, const FlatPoint&) = default;
};

// Corners in order, counterclockwise, closed from the last to the first.
using Outline = std::vector<FlatPoint>;

// How far a point is from the edge of an outline: negative inside. The direction leads from the nearest point
// of the edge outwards and has length 1; where two points of the edge are equally near, that of the earlier
// edge.
struct FlatClearance {
  double distance_mm = 0.0;
  double u = 0.0;
  double v = 0.0;
};

// corners  a convex chain, counterclockwise; with closed also the edge from the last corner to the first.
// Open chains are half sections: what lies left of every edge is inside, and only their edges count as edge.
[[nodiscard]] FlatClearance clearance(std::span<const FlatPoint> corners, bool closed,
                                      const FlatPoint& point);

[[nodiscard]] double area_mm2(std::span<const FlatPoint> corners);

// Convex, counterclockwise, at least three corners, no side shorter than shortest_mm and no angle that is
// straight.
[[nodiscard]] bool is_convex(std::span<const FlatPoint> corners, double shortest_mm);

}  // namespace sparewright::shape
