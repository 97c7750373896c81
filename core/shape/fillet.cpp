#include "core/shape/fillet.hpp"

#include <cmath>
#include <limits>
#include <numbers>
#include <vector>

#include "core/shape/flat_vector.hpp"

namespace sparewright::shape {
namespace {

FlatPoint left_of(const FlatPoint& along) {
  return {-along.v, along.u};
}
FlatPoint unit(const FlatPoint& a) {
  return (1.0 / length(a)) * a;
}
FlatPoint nowhere() {
  return {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::quiet_NaN()};
}

// +1 where an arc runs counterclockwise about its centre.
double way_round(const ContourEdge& e) {
  return e.bow > 0.0 ? 1.0 : -1.0;
}

// The way along at a point of the edge, length 1.
FlatPoint way_at(const ContourEdge& e, const FlatPoint& at) {
  if (!e.is_arc()) return unit(e.to - e.from);
  return unit(way_round(e) * left_of(at - e.centre));
}

// The edge shifted to its left: a line through a point, or a circle.
struct Shifted {
  bool is_circle = false;
  FlatPoint at;     // on the line, or the centre
  FlatPoint along;  // of the line, length 1
  double radius = 0.0;
};

Shifted shifted(const ContourEdge& e, double left) {
  if (e.is_arc()) return {true, e.centre, {}, e.radius_mm - way_round(e) * left};
  const FlatPoint along = unit(e.to - e.from);
  return {false, e.from + left * left_of(along), along, 0.0};
}

FlatPoint nearer(const FlatPoint& corner, const FlatPoint& a, const FlatPoint& b) {
  return length(a - corner) <= length(b - corner) ? a : b;
}

FlatPoint meet(const Shifted& line, const FlatPoint& centre, double radius, const FlatPoint& corner) {
  const double foot = dot(centre - line.at, line.along);
  const FlatPoint nearest = line.at + foot * line.along;
  const double half2 = radius * radius - dot(nearest - centre, nearest - centre);
  if (!(half2 >= 0.0)) return nowhere();
  const double half = std::sqrt(half2);
  return nearer(corner, nearest + half * line.along, nearest - half * line.along);
}

FlatPoint meet(const Shifted& a, const Shifted& b, const FlatPoint& corner) {
  if ((a.is_circle && a.radius <= 0.0) || (b.is_circle && b.radius <= 0.0)) return nowhere();
  if (!a.is_circle && !b.is_circle) {
    const double bend = cross(a.along, b.along);
    if (bend == 0.0) return nowhere();
    return a.at + (cross(b.at - a.at, b.along) / bend) * a.along;
  }
  if (!a.is_circle) return meet(a, b.at, b.radius, corner);
  if (!b.is_circle) return meet(b, a.at, a.radius, corner);
  const FlatPoint between = b.at - a.at;
  const double d = length(between);
  if (d == 0.0) return nowhere();
  // Where two circles meet: on their common chord, square to the line through the centres.
  const double along = (d * d + a.radius * a.radius - b.radius * b.radius) / (2.0 * d);
  const FlatPoint towards = unit(between);
  return meet({false, a.at + along * towards, left_of(towards), 0.0}, a.at, a.radius, corner);
}

// Where a circle about `centre` touches the edge.
FlatPoint touch(const ContourEdge& e, const FlatPoint& centre) {
  if (e.is_arc()) return e.centre + e.radius_mm * unit(centre - e.centre);
  const FlatPoint along = unit(e.to - e.from);
  return e.from + dot(centre - e.from, along) * along;
}

// A corner as it comes out: two points and the arc between them, or one.
struct Rounded {
  FlatPoint in;
  FlatPoint out;
  double bow = 0.0;
  bool is_sharp = true;
};

Rounded rounded(const ContourEdge& in, const ContourEdge& out, double radius) {
  const FlatPoint corner = in.to;
  const FlatPoint before = way_at(in, corner);
  const FlatPoint after = way_at(out, corner);
  const double turn = std::atan2(cross(before, after), dot(before, after));
  if (radius == 0.0 || turn == 0.0) return {corner, corner, 0.0, true};
  const double left = turn > 0.0 ? radius : -radius;
  const FlatPoint centre = meet(shifted(in, left), shifted(out, left), corner);
  const FlatPoint from = touch(in, centre);
  const FlatPoint to = touch(out, centre);
  const FlatPoint a = from - centre;
  const FlatPoint b = to - centre;
  return {from, to, std::tan(std::atan2(cross(a, b), dot(a, b)) / 4.0), false};
}

// What is left of an edge's bow between two of its points.
double bow_between(const ContourEdge& e, const FlatPoint& from, const FlatPoint& to) {
  if (!e.is_arc()) return 0.0;
  const FlatPoint a = from - e.centre;
  const FlatPoint b = to - e.centre;
  double turn = way_round(e) * std::atan2(cross(a, b), dot(a, b));
  if (turn < 0.0) turn += 2.0 * std::numbers::pi;
  return way_round(e) * std::tan(turn / 4.0);
}

}  // namespace

Contour filleted_contour(std::span<const FilletedCorner> corners) {
  Contour sharp;
  for (const FilletedCorner& corner : corners)
    sharp.push_back({corner.at, corner.bow});
  const std::size_t n = sharp.size();
  std::vector<Rounded> all;
  for (std::size_t i = 0; i < n; ++i)
    all.push_back(rounded(edge(sharp, (i + n - 1) % n), edge(sharp, i), corners[i].radius_mm));
  Contour contour;
  for (std::size_t i = 0; i < n; ++i) {
    if (!all[i].is_sharp) contour.push_back({all[i].in, all[i].bow});
    contour.push_back({all[i].out, bow_between(edge(sharp, i), all[i].out, all[(i + 1) % n].in)});
  }
  return contour;
}

double bow_of(const FlatPoint& from, const FlatPoint& to, double radius_mm) {
  const double half = length(to - from) / 2.0;
  return (radius_mm - std::sqrt(radius_mm * radius_mm - half * half)) / half;
}

}  // namespace sparewright::shape
