#include "core/shape/ray_field.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/shape/profile.hpp"

namespace sparewright::shape {
namespace {

struct Lattice {
  std::size_t points = 0;
  std::size_t step = 0;  // the Fibonacci number before
};

Lattice lattice(Effort effort) {
  switch (effort) {
    case Effort::kQuick:
      return {89, 55};
    case Effort::kUsual:
      return {377, 233};
    case Effort::kCareful:
      return {1597, 987};
    case Effort::kPainstaking:
      return {6765, 4181};
  }
  return {};
}

double fraction(double x) {
  return x - std::floor(x);
}

double greatest_radius_mm(const Primitive& body) {
  return std::visit(
      [](const auto& p) {
        if constexpr (Turned<std::decay_t<decltype(p)>>) {
          return Profile(p).greatest_radius_mm();
        } else if constexpr (std::is_same_v<std::decay_t<decltype(p)>, TurnedBody>) {
          return farthest(p.half_section, 1.0, 0.0).u;
        } else {
          return 0.0;
        }
      },
      body);
}

}  // namespace

std::size_t rays_of_pattern(Effort effort) {
  return lattice(effort).points;
}

double RayField::area_mm2() const {
  return radius_mm > 0.0 ? std::numbers::pi * radius_mm * radius_mm : size.u * size.v;
}

Ray RayField::ray(double s, double t) const {
  if (radius_mm > 0.0) {
    const double r = radius_mm * std::sqrt(s);
    const double angle = 2 * std::numbers::pi * t;
    return {frame.to_world(Point{r * std::cos(angle), r * std::sin(angle), 0.0}), frame.z};
  }
  return {frame.to_world(Point{low.u + s * size.u, low.v + t * size.v, 0.0}), frame.z};
}

std::array<RayField, 3> fields_over(const Primitive& body, const Bounds& here) {
  const Frame& f = frame_of(body);
  const Vector size = here.size();
  std::array<RayField, 3> all{
      RayField{f, {here.low.x, here.low.y}, {size.x, size.y}},
      RayField{{f.origin, f.y, f.z, f.x}, {here.low.y, here.low.z}, {size.y, size.z}},
      RayField{{f.origin, f.z, f.x, f.y}, {here.low.z, here.low.x}, {size.z, size.x}}};
  const double radius = greatest_radius_mm(body);
  if (radius > 0.0 && std::min(size.x, size.y) >= 2 * radius * (1.0 - 1e-9)) all[0].radius_mm = radius;
  return all;
}

SquarePoint lattice_point(Effort effort, std::size_t pattern, std::size_t ray) {
  // Shifts spread evenly by the plastic number's powers (1/p and 1/p^2, p^3 = p + 1).
  constexpr double kShiftS = 0.7548776662466927;
  constexpr double kShiftT = 0.5698402909980532;
  const Lattice points = lattice(effort);
  const auto n = static_cast<double>(points.points);
  const double shift = static_cast<double>(pattern) + 0.5;
  return {fraction(static_cast<double>(ray) / n + fraction(shift * kShiftS)),
          fraction(static_cast<double>(ray * points.step % points.points) / n + fraction(shift * kShiftT))};
}

double error_of_mean(const std::array<double, kPatterns>& found) {
  double mean = 0.0;
  for (const double one : found)
    mean += one / kPatterns;
  double scatter2 = 0.0;
  for (const double one : found)
    scatter2 += (one - mean) * (one - mean);
  // Student's t for 3 degrees of freedom, 99 % two-sided: 5.841 (any table of the t distribution).
  constexpr double kStudent = 5.841;
  return kStudent * std::sqrt(scatter2 / (kPatterns * (kPatterns - 1)));
}

}  // namespace sparewright::shape
