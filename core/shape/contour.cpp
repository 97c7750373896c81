#include "core/shape/contour.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "core/shape/flat_vector.hpp"
#include "core/shape/frame.hpp"

namespace sparewright::shape {
namespace {

// A quick look that leaves out what is clearly elsewhere errs to the safe side by this much.
constexpr double kBarelyMore = 1.0 + 1e-6;

ContourEdge edge_between(const FlatPoint& from, const FlatPoint& to, double bow) {
  ContourEdge e{from, to, bow, {}, 0.0};
  if (bow == 0.0) return e;
  // Half chord c and height h = bow * c: the radius is (c^2 + h^2) / 2h, and the centre lies that less h to the left.
  const FlatPoint half = 0.5 * (to - from);
  const FlatPoint left{-half.v, half.u};
  e.centre = from + half + ((1.0 - bow * bow) / (2.0 * bow)) * left;
  e.radius_mm = length(half) * (1.0 + bow * bow) / (2.0 * std::abs(bow));
  return e;
}

// The angle the arc turns through, counterclockwise positive.
double turn_rad(double bow) {
  return 4.0 * std::atan(bow);
}

// Of the circular segment between chord and arc, positive where it adds to a counterclockwise contour.
double segment_area(const ContourEdge& e) {
  const double turn = turn_rad(e.bow);
  return 0.5 * e.radius_mm * e.radius_mm * (turn - std::sin(turn));
}

// Where a point stands to the way from a to b: left of it or not. A point on the line counts as moved by next to nothing
// along u, and by less still along v, so that every test of contains() sees it on the same side.
bool is_left(const FlatPoint& a, const FlatPoint& b, const FlatPoint& p) {
  const double side = cross(b - a, p - a);
  if (side != 0.0) return side > 0.0;
  return a.v != b.v ? b.v < a.v : b.u > a.u;
}

bool in_segment(const ContourEdge& e, const FlatPoint& p) {
  const FlatPoint out = p - e.centre;
  return dot(out, out) < e.radius_mm * e.radius_mm && is_left(e.from, e.to, p) == (e.bow < 0.0);
}

// No arc is longer than half a circle, so its segment lies in the circle on its chord.
bool may_be_in_segment(const FlatPoint& from, const FlatPoint& to, const FlatPoint& p) {
  const FlatPoint half = 0.5 * (to - from);
  const FlatPoint away = p - (from + half);
  return dot(away, away) <= kBarelyMore * dot(half, half);
}

// Of the edge at a point of it, away from the inside of the contour; length 1.
FlatPoint outward_at(const ContourEdge& e, const FlatPoint& on_edge) {
  if (e.is_arc()) return ((e.bow > 0.0 ? 1.0 : -1.0) / e.radius_mm) * (on_edge - e.centre);
  const FlatPoint along = e.to - e.from;
  return (1.0 / length(along)) * FlatPoint{along.v, -along.u};
}

bool on_axis(const ContourEdge& e) {
  return e.from.u == 0.0 && e.to.u == 0.0 && !e.is_arc();
}

}  // namespace

FlatPoint ContourEdge::at(double fraction) const {
  if (!is_arc()) return from + fraction * (to - from);
  const double angle = fraction * turn_rad(bow);
  const FlatPoint r = from - centre;
  return centre + FlatPoint{r.u * std::cos(angle) - r.v * std::sin(angle),
                            r.u * std::sin(angle) + r.v * std::cos(angle)};
}

bool ContourEdge::spans(const FlatPoint& on_circle) const {
  const double side = cross(to - from, on_circle - from);
  return bow > 0.0 ? side <= 0.0 : side >= 0.0;
}

FlatPoint ContourEdge::nearest(const FlatPoint& point) const {
  if (!is_arc()) {
    const FlatPoint along = to - from;
    return from + std::clamp(dot(point - from, along) / dot(along, along), 0.0, 1.0) * along;
  }
  const double away = length(point - centre);
  const FlatPoint out = away > 0.0 ? (1.0 / away) * (point - centre) : (1.0 / radius_mm) * (at(0.5) - centre);
  const FlatPoint on_circle = centre + radius_mm * out;
  if (spans(on_circle)) return on_circle;
  return length(point - from) <= length(point - to) ? from : to;
}

ContourEdge edge(const Contour& contour, std::size_t index) {
  const Corner& corner = contour[index];
  return edge_between(corner.at, contour[index + 1 == contour.size() ? 0 : index + 1].at, corner.bow);
}

Contour straight_contour(std::span<const FlatPoint> corners) {
  Contour contour;
  for (const FlatPoint& corner : corners)
    contour.push_back({corner, 0.0});
  return contour;
}

Contour rectangle(const FlatPoint& low, const FlatPoint& high) {
  return {{low, 0.0}, {{high.u, low.v}, 0.0}, {high, 0.0}, {{low.u, high.v}, 0.0}};
}

Contour circle(const FlatPoint& centre, double radius_mm) {
  return {{{centre.u + radius_mm, centre.v}, 1.0}, {{centre.u - radius_mm, centre.v}, 1.0}};
}

Contour slot_contour(const FlatPoint& from, const FlatPoint& to, double width_mm) {
  const FlatPoint along = (1.0 / length(to - from)) * (to - from);
  const FlatPoint right = (width_mm / 2.0) * FlatPoint{along.v, -along.u};
  return {{from + right, 0.0}, {to + right, 1.0}, {to - right, 0.0}, {from - right, 1.0}};
}

Contour rounded_contour(std::span<const RoundedCorner> corners) {
  Contour contour;
  const std::size_t n = corners.size();
  for (std::size_t i = 0; i < n; ++i) {
    const RoundedCorner& corner = corners[i];
    const FlatPoint in = corner.at - corners[(i + n - 1) % n].at;
    const FlatPoint out = corners[(i + 1) % n].at - corner.at;
    const double turn = std::atan2(cross(in, out), dot(in, out));
    if (corner.radius_mm == 0.0 || turn == 0.0) {
      contour.push_back({corner.at, 0.0});
      continue;
    }
    const double back = corner.radius_mm * std::abs(std::tan(turn / 2.0));
    contour.push_back({corner.at - (back / length(in)) * in, std::tan(turn / 4.0)});
    contour.push_back({corner.at + (back / length(out)) * out, 0.0});
  }
  return contour;
}

double area_mm2(const Contour& contour) {
  double area = 0.0;
  for (std::size_t i = 0; i < contour.size(); ++i) {
    const ContourEdge e = edge(contour, i);
    area += 0.5 * cross(e.from, e.to) + (e.is_arc() ? segment_area(e) : 0.0);
  }
  return area;
}

FlatPoint centroid(const Contour& contour) {
  FlatPoint moment;
  for (std::size_t i = 0; i < contour.size(); ++i) {
    const ContourEdge e = edge(contour, i);
    moment = moment + (cross(e.from, e.to) / 6.0) * (e.from + e.to);
    if (!e.is_arc()) continue;
    // The centroid of a circular segment lies 4 r sin^3(turn/2) / 3 (turn - sin turn) from the centre.
    const double turn = std::abs(turn_rad(e.bow));
    const double sine = std::sin(turn / 2.0);
    const double away = 4.0 * e.radius_mm * sine * sine * sine / (3.0 * (turn - std::sin(turn)));
    moment = moment + segment_area(e) * (e.centre + (away / e.radius_mm) * (e.at(0.5) - e.centre));
  }
  return (1.0 / area_mm2(contour)) * moment;
}

bool is_convex(const Contour& contour) {
  constexpr double kStraight_rad = 1e-9;
  for (std::size_t i = 0; i < contour.size(); ++i) {
    const ContourEdge before = edge(contour, i);
    const ContourEdge after = edge(contour, (i + 1) % contour.size());
    if (before.bow < 0.0) return false;
    const FlatPoint in = before.to - before.from;
    const FlatPoint out = after.to - after.from;
    // From the tangent at the end of one edge to the tangent at the start of the next.
    const double chords = std::atan2(cross(in, out), dot(in, out));
    const double turn = chords - turn_rad(before.bow) / 2.0 - turn_rad(after.bow) / 2.0;
    if (std::remainder(turn, 2.0 * std::numbers::pi) < -kStraight_rad) return false;
  }
  return true;
}

bool contains(const Contour& contour, const FlatPoint& point) {
  bool inside = false;
  for (std::size_t i = 0; i < contour.size(); ++i) {
    const FlatPoint& from = contour[i].at;
    const FlatPoint& to = contour[i + 1 == contour.size() ? 0 : i + 1].at;
    if ((from.v <= point.v) != (to.v <= point.v)) {
      const bool upwards = to.v > from.v;
      if (is_left(from, to, point) == upwards) inside = !inside;
    }
    if (contour[i].bow != 0.0 && may_be_in_segment(from, to, point) && in_segment(edge(contour, i), point))
      inside = !inside;
  }
  return inside;
}

FlatClearance clearance(const Contour& contour, bool half_section, const FlatPoint& point) {
  constexpr double kOnTheLine_mm = 1e-12;
  double nearest_mm = std::numeric_limits<double>::infinity();
  FlatPoint nearest;
  FlatPoint out;
  for (std::size_t i = 0; i < contour.size(); ++i) {
    const ContourEdge e = edge(contour, i);
    if (half_section && on_axis(e)) continue;
    const FlatPoint on_edge = e.nearest(point);
    if (length(point - on_edge) >= nearest_mm) continue;
    nearest_mm = length(point - on_edge);
    nearest = on_edge;
    out = outward_at(e, on_edge);
  }
  if (nearest_mm <= kOnTheLine_mm) return {0.0, out.u, out.v};
  const double sign = contains(contour, point) ? -1.0 : 1.0;
  out = (sign / nearest_mm) * (point - nearest);
  return {sign * nearest_mm, out.u, out.v};
}

FlatPoint farthest(const Contour& contour, double du, double dv) {
  const FlatPoint way = (1.0 / std::hypot(du, dv)) * FlatPoint{du, dv};
  FlatPoint best;
  double most = -std::numeric_limits<double>::infinity();
  const auto offer = [&](const FlatPoint& p) {
    if (dot(p, way) > most) {
      most = dot(p, way);
      best = p;
    }
  };
  for (std::size_t i = 0; i < contour.size(); ++i) {
    const ContourEdge e = edge(contour, i);
    offer(e.from);
    if (e.bow > 0.0 && e.spans(e.centre + e.radius_mm * way)) offer(e.centre + e.radius_mm * way);
  }
  return best;
}

std::vector<FlatPoint> points_inside(const Contour& contour, int across) {
  const FlatPoint low{farthest(contour, -1.0, 0.0).u, farthest(contour, 0.0, -1.0).v};
  const FlatPoint high{farthest(contour, 1.0, 0.0).u, farthest(contour, 0.0, 1.0).v};
  std::vector<FlatPoint> all;
  for (int i = 0; i < across; ++i) {
    for (int j = 0; j < across; ++j) {
      const FlatPoint at{low.u + (i + 0.5) / across * (high.u - low.u),
                         low.v + (j + 0.5) / across * (high.v - low.v)};
      if (contains(contour, at)) all.push_back(at);
    }
  }
  return all;
}

Contour snapped(const Contour& contour) {
  constexpr double kPerOne = 1e12;
  Contour on_grid = contour;
  for (Corner& corner : on_grid) {
    corner.at = {snapped(corner.at.u), snapped(corner.at.v)};
    corner.bow = std::round(corner.bow * kPerOne) / kPerOne + 0.0;
  }
  return on_grid;
}

void add_to(base::Hasher& hasher, const Contour& contour) {
  hasher.add(static_cast<std::uint64_t>(contour.size()));
  for (const Corner& corner : contour)
    hasher.add(corner.at.u).add(corner.at.v).add(corner.bow);
}

}  // namespace sparewright::shape
