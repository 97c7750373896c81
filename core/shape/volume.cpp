#include "core/shape/volume.hpp"

#include <algorithm>
#include <array>
#include <limits>
#include <numbers>
#include <utility>

#include "core/shape/material.hpp"
#include "core/shape/profile.hpp"

namespace sparewright::shape {
namespace {

// A field of parallel rays: the unit square carried over a rectangle, or over a disc about the local z axis.
struct Field {
  Frame frame;     // the rays run along its z
  FlatPoint low;   // of the rectangle
  FlatPoint size;  // of the rectangle; u = 0 for a disc
  double radius_mm = 0.0;

  [[nodiscard]] double area_mm2() const {
    return radius_mm > 0.0 ? std::numbers::pi * radius_mm * radius_mm : size.u * size.v;
  }
  [[nodiscard]] Ray ray(double s, double t) const {
    if (radius_mm > 0.0) {  // equal areas to equal areas
      const double r = radius_mm * std::sqrt(s);
      const double angle = 2 * std::numbers::pi * t;
      return {frame.to_world(Point{r * std::cos(angle), r * std::sin(angle), 0.0}), frame.z};
    }
    return {frame.to_world(Point{low.u + s * size.u, low.v + t * size.v, 0.0}), frame.z};
  }
};

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

// What is measured: the blank, the bodies of air that can matter, and the body to stay inside of.
struct Subject {
  const Primitive& blank;
  std::vector<const Primitive*> air;
  const Primitive& body;
};

// Metal along one ray, inside the body.
double length_mm(const Subject& subject, const Ray& ray, std::vector<Interval>& scratch) {
  bool asked = false;  // what the blank and the air leave, only where the ray meets the body
  double sum = 0.0;
  for_each_inside(subject.body, ray, [&](const Interval& here) {
    if (!std::exchange(asked, true)) metal_along(subject.blank, subject.air, ray, scratch);
    for (const Interval& metal : scratch)
      sum += std::max(0.0, std::min(metal.exit_mm, here.exit_mm) - std::max(metal.enter_mm, here.enter_mm));
  });
  return sum;
}

double fraction(double x) {
  return x - std::floor(x);
}

RayVolume measure(const Subject& subject, const Field& field, const Lattice& lattice) {
  constexpr std::size_t kPatterns = 4;
  // Shifts spread evenly by the plastic number's powers (1/p and 1/p^2, p^3 = p + 1), so that no pattern has
  // a ray on an edge, a middle line or another's ray.
  constexpr double kShiftS = 0.7548776662466927;
  constexpr double kShiftT = 0.5698402909980532;
  std::array<double, kPatterns> means{};
  double shortest = std::numeric_limits<double>::infinity();
  double longest = 0.0;
  std::vector<Interval> scratch;
  const auto n = static_cast<double>(lattice.points);
  for (std::size_t pattern = 0; pattern < kPatterns; ++pattern) {
    const double shift_s = fraction((static_cast<double>(pattern) + 0.5) * kShiftS);
    const double shift_t = fraction((static_cast<double>(pattern) + 0.5) * kShiftT);
    double sum = 0.0;
    for (std::size_t i = 0; i < lattice.points; ++i) {
      const double s = fraction(static_cast<double>(i) / n + shift_s);
      const double t = fraction(static_cast<double>(i * lattice.step % lattice.points) / n + shift_t);
      const double one = length_mm(subject, field.ray(s, t), scratch);
      shortest = std::min(shortest, one);
      longest = std::max(longest, one);
      sum += one;
    }
    means.at(pattern) = sum / n;
  }
  const double mean = (means[0] + means[1] + means[2] + means[3]) / 4;
  double scatter2 = 0.0;
  for (const double one : means)
    scatter2 += (one - mean) * (one - mean);
  // Student's t for 3 degrees of freedom, 99 % two-sided: 5.841 (any table of the t distribution).
  constexpr double kStudent = 5.841;
  const double scatter = kStudent * std::sqrt(scatter2 / (kPatterns * (kPatterns - 1)));
  // Along an edge square to the field every pattern may miss by the same ray: that does not show in their scatter.
  const double edge = (longest - shortest) / n;
  const double error = scatter + edge;
  return {mean * field.area_mm2(), (error + kSliver_mm) * field.area_mm2(), kPatterns * lattice.points};
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

// One field along each axis, local z first; a body of revolution that is not cut short by the blank gets a
// disc there.
std::array<Field, 3> fields(const Primitive& body, const Bounds& here) {
  const Frame& f = frame_of(body);
  const Vector size = here.size();
  std::array<Field, 3> all{Field{f, {here.low.x, here.low.y}, {size.x, size.y}},
                           Field{{f.origin, f.y, f.z, f.x}, {here.low.y, here.low.z}, {size.y, size.z}},
                           Field{{f.origin, f.z, f.x, f.y}, {here.low.z, here.low.x}, {size.z, size.x}}};
  const double radius = greatest_radius_mm(body);
  if (radius > 0.0 && std::min(size.x, size.y) >= 2 * radius * (1.0 - 1e-9)) all[0].radius_mm = radius;
  return all;
}

// The one with the least error; not less than by how much it lies outside the others' errors.
RayVolume best_of(const std::vector<RayVolume>& all) {
  RayVolume best = *std::min_element(all.begin(), all.end(),
                                     [](const auto& a, const auto& b) { return a.error_mm3 < b.error_mm3; });
  best.rays = 0;
  for (const RayVolume& one : all) {
    best.error_mm3 = std::max(best.error_mm3, std::abs(one.volume_mm3 - best.volume_mm3) - one.error_mm3);
    best.rays += one.rays;
  }
  return best;
}

}  // namespace

RayVolume metal_within(const Work& work, const Primitive& body, Effort effort) {
  constexpr double kNearEnough = 1e-3;
  const Frame& frame = frame_of(body);
  const Bounds here = common(bounds(body, frame), bounds(work.blank, frame));
  if (here.empty()) return {};
  const Subject subject{work.blank, bodies(work.cuts, common(bounds(body), bounds(work.blank))), body};
  std::vector<RayVolume> all;
  for (const Field& field : fields(body, here)) {
    all.push_back(measure(subject, field, lattice(effort)));
    if (all.back().error_mm3 <= kNearEnough * all.back().volume_mm3) break;
  }
  return best_of(all);
}

RayVolume metal_volume(const Work& work, Effort effort) {
  return metal_within(work, work.blank, effort);
}

}  // namespace sparewright::shape
