// Closed lines of straights and arcs in a plane: what a cutter follows when it mills a profile, and the half section of
// a turned body.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/base/hash.hpp"
#include "core/shape/outline.hpp"

namespace sparewright::shape {

// A corner and the edge that leads on to the next one.
// bow  0: straight. Else an arc: its height over half its chord, positive where it bulges to the right of the way
//      along, which is outwards on a contour that runs counterclockwise. 1 is half a circle; an arc is no longer than
//      that, a longer one has a corner in its middle.
struct Corner {
  FlatPoint at;
  double bow = 0.0;

  friend bool operator==(const Corner&, const Corner&) = default;
};

// Corners in order, counterclockwise, closed from the last to the first.
using Contour = std::vector<Corner>;

// One edge of a contour. centre and radius only where it is an arc.
struct ContourEdge {
  FlatPoint from;
  FlatPoint to;
  double bow = 0.0;
  FlatPoint centre;
  double radius_mm = 0.0;

  [[nodiscard]] bool is_arc() const { return bow != 0.0; }
  // The point a fraction of the edge's length from its start, 0 to 1.
  [[nodiscard]] FlatPoint at(double fraction) const;
  // Of a point on the circle: whether it lies on the arc and not on the rest of the circle.
  [[nodiscard]] bool spans(const FlatPoint& on_circle) const;
  [[nodiscard]] FlatPoint nearest(const FlatPoint& point) const;
};
[[nodiscard]] ContourEdge edge(const Contour& contour, std::size_t index);

// --- making one --------------------------------------------------------------------------------------------------

[[nodiscard]] Contour straight_contour(std::span<const FlatPoint> corners);
// Sides along u and v.
[[nodiscard]] Contour rectangle(const FlatPoint& low, const FlatPoint& high);
[[nodiscard]] Contour circle(const FlatPoint& centre, double radius_mm);
// The way of a round cutter from one point to another: two straights and two half circles.
[[nodiscard]] Contour slot_contour(const FlatPoint& from, const FlatPoint& to, double width_mm);

// Corners with a radius each (0: sharp), in order, counterclockwise; the arcs touch the straights. The caller sees to
// it that they find room: where they do not, the contour crosses itself and fault_of() says so.
struct RoundedCorner {
  FlatPoint at;
  double radius_mm = 0.0;
};
[[nodiscard]] Contour rounded_contour(std::span<const RoundedCorner> corners);

// --- asking it ---------------------------------------------------------------------------------------------------

// Empty where the contour is sound: two or more edges, none shorter than shortest_mm, no arc of more than half a
// circle, counterclockwise, and no two edges that meet but where they follow each other. Else what is wrong, in words.
[[nodiscard]] std::string fault_of(const Contour& contour, double shortest_mm);

[[nodiscard]] double area_mm2(const Contour& contour);  // positive where counterclockwise
[[nodiscard]] FlatPoint centroid(const Contour& contour);
[[nodiscard]] bool is_convex(const Contour& contour);
// On the line counts as either.
[[nodiscard]] bool contains(const Contour& contour, const FlatPoint& point);

// As clearance() of an outline. With half_section the edges that lie on the axis u = 0 are no edges.
[[nodiscard]] FlatClearance clearance(const Contour& contour, bool half_section, const FlatPoint& point);

// The point farthest in a direction of any length but zero; of several the same one always.
[[nodiscard]] FlatPoint farthest(const Contour& contour, double du, double dv);

// Points spread evenly over the inside: those of a grid, so many across each way, that lie in it.
[[nodiscard]] std::vector<FlatPoint> points_inside(const Contour& contour, int across);

[[nodiscard]] Contour snapped(const Contour& contour);
void add_to(base::Hasher& hasher, const Contour& contour);

}  // namespace sparewright::shape
