// Straight lines through single primitives.
#pragma once

#include <optional>
#include <vector>

#include "core/shape/primitive.hpp"

namespace sparewright::shape {

// The points origin + t * direction. direction has length 1, so t is in mm.
struct Ray {
  Point origin;
  Vector direction{0.0, 0.0, 1.0};

  [[nodiscard]] Point at(double t_mm) const { return origin + t_mm * direction; }
};

// The ray from a towards b. Precondition: they differ.
[[nodiscard]] inline Ray ray_through(const Point& a, const Point& b) {
  return {a, direction(b - a)};
}

struct Interval {
  double enter_mm = 0.0;
  double exit_mm = 0.0;

  [[nodiscard]] double length_mm() const { return exit_mm - enter_mm; }
  friend bool operator==(const Interval&, const Interval&) = default;
};

// Where a ray is inside a convex primitive; t may be negative (a ray is a whole line). Half-spaces give infinite
// ends.
//
// Degenerate: a ray that touches in a point (tangent to a cylinder, through a corner) misses. A ray that runs
// in a plane face belongs to the body on one side only: of a box that with the face at its low end, of a
// half-space, a prism side or an end face the body it leaves behind has it not. A ray along the mantle of a
// cylinder misses. Accuracy: kRayAccuracy_mm along the ray within 1 m, where it crosses the surface at more
// than 1 degree.
//
// Precondition: the primitive is neither profiled nor turned.
[[nodiscard]] std::optional<Interval> inside(const Primitive& primitive, const Ray& ray);

// The same for bodies a ray can go through several times, in order and apart. Accuracy as above; where the ray runs along
// a face or touches it, that face may count as either.
[[nodiscard]] std::vector<Interval> stretches_inside(const ProfiledBody& body, const Ray& ray);
[[nodiscard]] std::vector<Interval> stretches_inside(const TurnedBody& body, const Ray& ray);

// Hands over every stretch of the ray inside a primitive of any kind, in order.
template <typename Use>
void for_each_inside(const Primitive& primitive, const Ray& ray, Use use) {
  const auto use_all = [&](const std::vector<Interval>& all) {
    for (const Interval& one : all)
      use(one);
  };
  if (const auto* profiled = std::get_if<ProfiledBody>(&primitive)) {
    use_all(stretches_inside(*profiled, ray));
  } else if (const auto* turned = std::get_if<TurnedBody>(&primitive)) {
    use_all(stretches_inside(*turned, ray));
  } else if (const auto one = inside(primitive, ray)) {
    use(*one);
  }
}

inline constexpr double kRayAccuracy_mm = 1e-9;

}  // namespace sparewright::shape
