#include "core/shape/outline.hpp"

#include <cmath>
#include <limits>

namespace sparewright::shape {
namespace {

double cross(const FlatPoint& a, const FlatPoint& b) {
  return a.u * b.v - a.v * b.u;
}
FlatPoint minus(const FlatPoint& a, const FlatPoint& b) {
  return {a.u - b.u, a.v - b.v};
}

// Seen from one edge: how far outside its line, and how far from the edge itself and which way.
struct EdgeView {
  double out_mm = 0.0;  // from the line, positive to the right of it
  FlatPoint out;        // unit normal to the right
  FlatClearance edge;   // for a point outside the line
};

EdgeView view(const FlatPoint& a, const FlatPoint& b, const FlatPoint& p) {
  const FlatPoint along = minus(b, a);
  const double length = std::hypot(along.u, along.v);
  const FlatPoint unit{along.u / length, along.v / length};
  const FlatPoint from_a = minus(p, a);
  const double t = from_a.u * unit.u + from_a.v * unit.v;
  EdgeView seen;
  seen.out = {unit.v, -unit.u};
  seen.out_mm = from_a.u * seen.out.u + from_a.v * seen.out.v;
  seen.edge = {seen.out_mm, seen.out.u, seen.out.v};
  if (seen.out_mm > 0.0 && (t < 0.0 || t > length)) {
    const FlatPoint away = minus(p, t < 0.0 ? a : b);
    const double distance = std::hypot(away.u, away.v);
    seen.edge = {distance, away.u / distance, away.v / distance};
  }
  return seen;
}

}  // namespace

FlatClearance clearance(std::span<const FlatPoint> corners, bool closed, const FlatPoint& point) {
  FlatClearance inside{-std::numeric_limits<double>::infinity(), 0.0, 0.0};
  FlatClearance outside{std::numeric_limits<double>::infinity(), 0.0, 0.0};
  const std::size_t edges = closed ? corners.size() : corners.size() - 1;
  for (std::size_t i = 0; i < edges; ++i) {
    const EdgeView seen = view(corners[i], corners[i + 1 == corners.size() ? 0 : i + 1], point);
    if (seen.out_mm > inside.distance_mm) inside = {seen.out_mm, seen.out.u, seen.out.v};
    if (seen.out_mm > 0.0 && seen.edge.distance_mm < outside.distance_mm) outside = seen.edge;
  }
  return inside.distance_mm <= 0.0 ? inside : outside;
}

double area_mm2(std::span<const FlatPoint> corners) {
  double twice = 0.0;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    twice += cross(corners[i], corners[i + 1 == corners.size() ? 0 : i + 1]);
  }
  return twice / 2;
}

bool is_convex(std::span<const FlatPoint> corners, double shortest_mm) {
  const std::size_t n = corners.size();
  if (n < 3) return false;
  double turned_rad = 0.0;
  for (std::size_t i = 0; i < n; ++i) {
    const FlatPoint before = minus(corners[(i + 1) % n], corners[i]);
    const FlatPoint after = minus(corners[(i + 2) % n], corners[(i + 1) % n]);
    if (!(std::hypot(before.u, before.v) >= shortest_mm)) return false;
    const double turn = std::atan2(cross(before, after), before.u * after.u + before.v * after.v);
    if (!(turn > 0.0)) return false;
    turned_rad += turn;
  }
  constexpr double kOnceRound = 6.283185307179586;
  return std::abs(turned_rad - kOnceRound) < 1e-6;  // a star goes round twice
}

}  // namespace sparewright::shape
