#include "core/shape/distance.hpp"

#include <algorithm>
#include <array>
#include <limits>

#include "core/shape/clearance.hpp"
#include "core/shape/support.hpp"

namespace sparewright::shape {
namespace {

// A corner of the difference a - b, with the points it comes from.
struct Corner {
  Vector w;
  Point on_a;
  Point on_b;
};

// A few corners and the weights that make the point of their hull nearest to the origin.
struct Simplex {
  std::array<Corner, 4> corners{};
  std::array<double, 4> weights{};
  std::size_t count = 0;

  void add(const Corner& corner, double weight) {
    corners.at(count) = corner;
    weights.at(count) = weight;
    ++count;
  }
};

struct Nearest {
  Simplex simplex;
  Vector v;
  double v2 = std::numeric_limits<double>::infinity();

  void keep_better(const Simplex& other, const Vector& at) {
    const double d2 = dot(at, at);
    if (d2 < v2) *this = {other, at, d2};
  }
};

void try_point(Nearest& best, const Corner& a) {
  Simplex s;
  s.add(a, 1.0);
  best.keep_better(s, a.w);
}

void try_edge(Nearest& best, const Corner& a, const Corner& b) {
  const Vector along = b.w - a.w;
  const double length2 = dot(along, along);
  const double t = -dot(a.w, along);
  if (!(t > 0.0 && t < length2)) return;
  Simplex s;
  s.add(a, 1.0 - t / length2);
  s.add(b, t / length2);
  // Square to the edge by construction: keeps its direction when the edge passes close by the origin.
  const Vector n = cross(along, cross(a.w, along));
  best.keep_better(s, (1.0 / length2) * n);
}

void try_face(Nearest& best, const Corner& a, const Corner& b, const Corner& c) {
  const Vector n = cross(b.w - a.w, c.w - a.w);
  const double n2 = dot(n, n);
  if (n2 == 0.0) return;
  const Vector v = (dot(n, a.w) / n2) * n;
  const double to_a = dot(n, cross(b.w - v, c.w - v));
  const double to_b = dot(n, cross(c.w - v, a.w - v));
  const double to_c = dot(n, cross(a.w - v, b.w - v));
  if (!(to_a > 0.0 && to_b > 0.0 && to_c > 0.0)) return;
  Simplex s;
  s.add(a, to_a / n2);
  s.add(b, to_b / n2);
  s.add(c, to_c / n2);
  best.keep_better(s, v);
}

double volume6(const Vector& a, const Vector& b, const Vector& c) {
  return dot(a, cross(b, c));
}

// The origin is in the tetrahedron (or on it): the bodies meet.
bool try_tetrahedron(Nearest& best, const Simplex& s) {
  const auto& [a, b, c, d] = s.corners;
  const std::array<double, 4> parts{volume6(b.w, d.w, c.w), volume6(a.w, c.w, d.w), volume6(a.w, d.w, b.w),
                                    volume6(a.w, b.w, c.w)};
  const double whole = parts[0] + parts[1] + parts[2] + parts[3];
  if (whole == 0.0) return false;
  if (!std::all_of(parts.begin(), parts.end(), [&](double part) { return part / whole >= 0.0; }))
    return false;
  best.simplex = s;
  for (std::size_t i = 0; i < parts.size(); ++i)
    best.simplex.weights.at(i) = parts.at(i) / whole;
  best.v = {};
  best.v2 = 0.0;
  return true;
}

// All faces of the simplex are tried: slower than walking Johnson's recursion, and never lost in rounding.
Nearest nearest_to_origin(const Simplex& s) {
  Nearest best;
  if (s.count == 4 && try_tetrahedron(best, s)) return best;
  for (std::size_t i = 0; i < s.count; ++i) {
    const Corner& a = s.corners.at(i);
    try_point(best, a);
    for (std::size_t j = i + 1; j < s.count; ++j) {
      try_edge(best, a, s.corners.at(j));
      for (std::size_t k = j + 1; k < s.count; ++k)
        try_face(best, a, s.corners.at(j), s.corners.at(k));
    }
  }
  return best;
}

Point weighted(const Simplex& s, Point Corner::*which) {
  const Point& first = s.corners.front().*which;
  Vector sum;
  for (std::size_t i = 0; i < s.count; ++i)
    sum = sum + s.weights.at(i) * (s.corners.at(i).*which - first);
  return first + sum;
}

Corner corner_towards(const Primitive& a, const Primitive& b, const Vector& d) {
  Corner corner;
  corner.on_a = farthest(a, d);
  corner.on_b = farthest(b, -d);
  corner.w = corner.on_a - corner.on_b;
  return corner;
}

constexpr double kAimed_mm = kDistanceAccuracy_mm / 20;
constexpr double kMeet_mm = 1e-13;  // rounding of coordinates up to 1 m

// The plane square to a - b, pushed as far as both bodies let it go.
double proven_mm(const Primitive& a, const Primitive& b, const Vector& v, double v_mm) {
  return dot(v, corner_towards(a, b, -v).w) / v_mm;
}

// Where a simplex has shrunk so far on curved bodies that rounding hides the last step, dropping from body to
// body is exact at each drop and never lets the distance grow.
void polish(Distance& found, const Primitive& a, const Primitive& b) {
  constexpr int kMostDrops = 100;
  Point on_b = found.on_b;
  for (int drop = 0; drop < kMostDrops && found.distance_mm - found.at_least_mm > kAimed_mm; ++drop) {
    const Clearance from_a = clearance(a, on_b);
    const Point on_a = on_b - from_a.distance_mm * from_a.normal;
    const Clearance from_b = clearance(b, on_a);
    if (!(from_a.distance_mm > kMeet_mm && from_b.distance_mm > kMeet_mm)) return;
    on_b = on_a - from_b.distance_mm * from_b.normal;
    if (from_b.distance_mm < found.distance_mm) {
      found.distance_mm = from_b.distance_mm;
      found.on_a = on_a;
      found.on_b = on_b;
    }
    found.at_least_mm = std::max(found.at_least_mm, proven_mm(a, b, from_b.normal, 1.0));
  }
  found.at_least_mm = std::min(found.at_least_mm, found.distance_mm);
}

Distance finite_distance(const Primitive& a, const Primitive& b) {
  constexpr int kMostSteps = 200;
  Nearest now;
  try_point(now, corner_towards(a, b, bounds(b).middle() - bounds(a).middle()));
  double at_least = 0.0;
  for (int step = 0; step < kMostSteps; ++step) {
    const double v = std::sqrt(now.v2);
    if (v <= kMeet_mm) break;
    const Corner next = corner_towards(a, b, -now.v);
    at_least = std::max(at_least, dot(now.v, next.w) / v);
    if (v - at_least <= kAimed_mm || now.simplex.count == 4) break;
    Simplex grown = now.simplex;
    grown.add(next, 0.0);
    const Nearest better = nearest_to_origin(grown);
    if (!(better.v2 < now.v2)) break;  // rounding: no nearer point can be told apart
    now = better;
  }
  Distance found;
  found.on_a = weighted(now.simplex, &Corner::on_a);
  found.on_b = weighted(now.simplex, &Corner::on_b);
  found.distance_mm = now.v2 <= kMeet_mm * kMeet_mm ? 0.0 : distance_mm(found.on_a, found.on_b);
  found.at_least_mm = std::min(at_least, found.distance_mm);
  polish(found, a, b);
  return found;
}

Distance from_half_space(const HalfSpace& a, const Primitive& b) {
  Distance found;
  found.on_b = farthest(b, -a.frame.z);
  const double out_mm = clearance(a, found.on_b).distance_mm;
  found.distance_mm = found.at_least_mm = std::max(out_mm, 0.0);
  found.on_a = found.on_b - found.distance_mm * a.frame.z;
  return found;
}

// Two half-spaces are apart only where they face each other squarely.
Distance between_half_spaces(const HalfSpace& a, const HalfSpace& b) {
  constexpr double kSquarely = 1e-12;
  Distance found;
  found.on_a = found.on_b = a.frame.origin;
  const double gap = clearance(a, b.frame.origin).distance_mm;
  if (length_mm(a.frame.z + b.frame.z) > kSquarely || gap <= 0.0) return found;
  found.distance_mm = found.at_least_mm = gap;
  found.on_b = a.frame.origin + gap * a.frame.z;
  return found;
}

Distance swapped(Distance d) {
  std::swap(d.on_a, d.on_b);
  return d;
}

}  // namespace

Distance distance(const Primitive& a, const Primitive& b) {
  const auto* half_a = std::get_if<HalfSpace>(&a);
  const auto* half_b = std::get_if<HalfSpace>(&b);
  if (half_a != nullptr && half_b != nullptr) return between_half_spaces(*half_a, *half_b);
  if (half_a != nullptr) return from_half_space(*half_a, b);
  if (half_b != nullptr) return swapped(from_half_space(*half_b, a));
  return finite_distance(a, b);
}

}  // namespace sparewright::shape
