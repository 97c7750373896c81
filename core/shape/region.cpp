#include "core/shape/region.hpp"

#include <limits>
#include <vector>

#include "core/shape/clearance.hpp"
#include "core/shape/ellipsoid.hpp"

namespace sparewright::shape {
namespace {

constexpr int kMostCuts = 20000;  // far above what the accuracy takes from a ball of 1 m
constexpr double kProven_mm = kRegionAccuracy_mm / 10;  // the rest is for rounding

// The surface a point is furthest outside of.
Clearance worst(Region region, const Point& p) {
  Clearance most{-std::numeric_limits<double>::infinity(), {}};
  for (const Primitive* body : region) {
    const Clearance one = clearance(*body, p);
    if (one.distance_mm > most.distance_mm) most = one;
  }
  return most;
}

using Pair = std::array<double, 6>;
Point first(const Pair& c) {
  return {c[0], c[1], c[2]};
}
Point second(const Pair& c) {
  return {c[3], c[4], c[5]};
}

// One question put to the pair at the centre: which half holds nothing better, and how deep the cut goes.
struct Answer {
  Pair slope{};
  double depth_mm = 0.0;
};

}  // namespace

Deepest deepest(Region region, const Ball& ball) {
  Ellipsoid<3> left({ball.centre.x, ball.centre.y, ball.centre.z}, ball.radius_mm);
  Deepest best{ball.centre, -std::numeric_limits<double>::infinity()};
  for (int i = 0; i < kMostCuts; ++i) {
    const Point at{left.centre()[0], left.centre()[1], left.centre()[2]};
    const Clearance here = worst(region, at);
    if (-here.distance_mm > best.depth_mm) best = {at, -here.distance_mm};
    const std::array<double, 3> slope{here.normal.x, here.normal.y, here.normal.z};
    if (left.reach(slope) <= kProven_mm || !left.cut(slope, here.distance_mm + best.depth_mm)) break;
  }
  return best;
}

std::optional<NearestPair> nearest_pair(Region a, Region b, const Ball& ball) {
  std::vector<const Primitive*> both(a.begin(), a.end());
  both.insert(both.end(), b.begin(), b.end());
  const Deepest meeting = deepest(both, ball);
  if (meeting.depth_mm >= -kRegionAccuracy_mm) return NearestPair{meeting.point, meeting.point, 0.0};
  const Point& c = ball.centre;
  Ellipsoid<6> left({c.x, c.y, c.z, c.x, c.y, c.z}, std::numbers::sqrt2 * ball.radius_mm);
  std::optional<NearestPair> best;
  for (int i = 0; i < kMostCuts; ++i) {
    const Point p = first(left.centre());
    const Point q = second(left.centre());
    const Clearance of_p = worst(a, p);
    const Clearance of_q = worst(b, q);
    Answer answer;
    if (of_p.distance_mm > kProven_mm && of_p.distance_mm >= of_q.distance_mm) {
      answer = {{of_p.normal.x, of_p.normal.y, of_p.normal.z, 0.0, 0.0, 0.0}, of_p.distance_mm};
    } else if (of_q.distance_mm > kProven_mm) {
      answer = {{0.0, 0.0, 0.0, of_q.normal.x, of_q.normal.y, of_q.normal.z}, of_q.distance_mm};
    } else {
      const double d = distance_mm(p, q);
      if (!best || d < best->distance_mm) best = NearestPair{p, q, d};
      if (d <= kProven_mm) break;
      const Vector n = (1.0 / d) * (p - q);
      answer = {{n.x, n.y, n.z, -n.x, -n.y, -n.z}, d - best->distance_mm};
      if (left.reach(answer.slope) <= kProven_mm) break;
    }
    if (!left.cut(answer.slope, answer.depth_mm)) break;
  }
  return best;
}

}  // namespace sparewright::shape
