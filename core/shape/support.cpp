#include "core/shape/support.hpp"

#include <algorithm>
#include <cassert>
#include <limits>

#include "core/shape/profile.hpp"

namespace sparewright::shape {
namespace {

// All in local coordinates.
Point far_corner(const HalfSpace& /*endless*/, const Vector& d) {
  assert(!"a half-space has no farthest point");
  return {d.x, d.y, d.z};
}

Point far_corner(const Box& b, const Vector& d) {
  return {d.x >= 0.0 ? b.size.x : 0.0, d.y >= 0.0 ? b.size.y : 0.0, d.z >= 0.0 ? b.size.z : 0.0};
}

Point far_corner(const Prism& p, const Vector& d) {
  const auto along = [&](const FlatPoint& c) { return c.u * d.x + c.v * d.y; };
  const auto farthest_corner = std::max_element(
      p.section.begin(), p.section.end(), [&](const auto& a, const auto& b) { return along(a) < along(b); });
  return {farthest_corner->u, farthest_corner->v, d.z >= 0.0 ? p.height_mm : 0.0};
}

template <Turned Shape>
Point far_corner(const Shape& shape, const Vector& d) {
  const double flat = std::sqrt(d.x * d.x + d.y * d.y);
  double most = -std::numeric_limits<double>::infinity();
  FlatPoint best;
  const Profile profile(shape);  // named, so that its corners outlive the loop's head
  for (const FlatPoint& corner : profile.corners()) {
    const double along = corner.u * flat + corner.v * d.z;
    if (along > most) {
      most = along;
      best = corner;
    }
  }
  if (flat == 0.0) return {best.u, 0.0, best.v};
  return {best.u * d.x / flat, best.u * d.y / flat, best.v};
}

FlatPoint far_flat(const Contour& contour, double du, double dv) {
  return du == 0.0 && dv == 0.0 ? contour.front().at : farthest(contour, du, dv);
}

Point far_corner(const ProfiledBody& p, const Vector& d) {
  const FlatPoint far = far_flat(p.contour, d.x, d.y);
  return {far.u, far.v, d.z >= 0.0 ? p.height_mm : 0.0};
}

Point far_corner(const TurnedBody& t, const Vector& d) {
  const double flat = std::sqrt(d.x * d.x + d.y * d.y);
  const FlatPoint far = far_flat(t.half_section, flat, d.z);
  if (flat == 0.0) return {far.u, 0.0, far.v};
  return {far.u * d.x / flat, far.u * d.y / flat, far.v};
}

}  // namespace

Point farthest(const Primitive& primitive, const Vector& direction) {
  return std::visit(
      [&](const auto& p) { return p.frame.to_world(far_corner(p, p.frame.to_local(direction))); }, primitive);
}

Bounds bounds(const Primitive& primitive, const Frame& frame) {
  if (std::holds_alternative<HalfSpace>(primitive)) {
    constexpr double kEndless = std::numeric_limits<double>::infinity();
    return {{-kEndless, -kEndless, -kEndless}, {kEndless, kEndless, kEndless}};
  }
  const auto reach = [&](const Vector& axis) { return dot(farthest(primitive, axis) - frame.origin, axis); };
  return {{-reach(-frame.x), -reach(-frame.y), -reach(-frame.z)},
          {reach(frame.x), reach(frame.y), reach(frame.z)}};
}

Bounds common(const Bounds& a, const Bounds& b) {
  return {{std::max(a.low.x, b.low.x), std::max(a.low.y, b.low.y), std::max(a.low.z, b.low.z)},
          {std::min(a.high.x, b.high.x), std::min(a.high.y, b.high.y), std::min(a.high.z, b.high.z)}};
}

}  // namespace sparewright::shape
