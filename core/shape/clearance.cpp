#include "core/shape/clearance.hpp"

#include "core/shape/profile.hpp"

namespace sparewright::shape {
namespace {

// A distance along one axis from the middle of a slab: how far outside, and which way is out.
struct SlabView {
  double out_mm = 0.0;
  double way = 1.0;
};

SlabView slab(double x, double size) {
  const double below = -x;
  const double above = x - size;
  return above >= below ? SlabView{above, 1.0} : SlabView{below, -1.0};
}

Clearance measure(const HalfSpace& h, const Point& p) {
  return {dot(p - h.frame.origin, h.frame.z), h.frame.z};
}

Clearance measure(const Box& b, const Point& p) {
  const Point l = b.frame.to_local(p);
  const SlabView x = slab(l.x, b.size.x);
  const SlabView y = slab(l.y, b.size.y);
  const SlabView z = slab(l.z, b.size.z);
  if (x.out_mm > 0.0 || y.out_mm > 0.0 || z.out_mm > 0.0) {
    const Vector away{std::max(x.out_mm, 0.0) * x.way, std::max(y.out_mm, 0.0) * y.way,
                      std::max(z.out_mm, 0.0) * z.way};
    const double distance = length_mm(away);
    return {distance, b.frame.to_world((1.0 / distance) * away)};
  }
  if (x.out_mm >= y.out_mm && x.out_mm >= z.out_mm) return {x.out_mm, x.way * b.frame.x};
  if (y.out_mm >= z.out_mm) return {y.out_mm, y.way * b.frame.y};
  return {z.out_mm, z.way * b.frame.z};
}

Clearance measure(const Prism& prism, const Point& p) {
  const Point l = prism.frame.to_local(p);
  const FlatClearance flat = clearance(prism.section, true, {l.x, l.y});
  const Vector sideways{flat.u, flat.v, 0.0};
  const SlabView end = slab(l.z, prism.height_mm);
  const Vector endways{0.0, 0.0, end.way};
  if (flat.distance_mm > 0.0 && end.out_mm > 0.0) {
    const Vector away = flat.distance_mm * sideways + end.out_mm * endways;
    const double distance = length_mm(away);
    return {distance, prism.frame.to_world((1.0 / distance) * away)};
  }
  if (flat.distance_mm >= end.out_mm) return {flat.distance_mm, prism.frame.to_world(sideways)};
  return {end.out_mm, prism.frame.to_world(endways)};
}

template <Turned Shape>
Clearance measure(const Shape& shape, const Point& p) {
  const Point l = shape.frame.to_local(p);
  const double radius = std::sqrt(l.x * l.x + l.y * l.y);
  const FlatClearance flat = clearance(Profile(shape).corners(), false, {radius, l.z});
  const Vector outwards = radius > 0.0 ? Vector{l.x / radius, l.y / radius, 0.0} : Vector{1.0, 0.0, 0.0};
  return {flat.distance_mm, shape.frame.to_world(flat.u * outwards + Vector{0.0, 0.0, flat.v})};
}

}  // namespace

Clearance clearance(const Primitive& primitive, const Point& point) {
  return std::visit([&](const auto& p) { return measure(p, point); }, primitive);
}

bool contains(const Primitive& primitive, const Point& point) {
  return clearance(primitive, point).distance_mm <= 0.0;
}

}  // namespace sparewright::shape
