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

// Of a section carried straight up, the section's own clearance known.
Clearance upright(const Frame& frame, const FlatClearance& flat, double z_mm, double height_mm) {
  const Vector sideways{flat.u, flat.v, 0.0};
  const SlabView end = slab(z_mm, height_mm);
  const Vector endways{0.0, 0.0, end.way};
  if (flat.distance_mm > 0.0 && end.out_mm > 0.0) {
    const Vector away = flat.distance_mm * sideways + end.out_mm * endways;
    const double distance = length_mm(away);
    return {distance, frame.to_world((1.0 / distance) * away)};
  }
  if (flat.distance_mm >= end.out_mm) return {flat.distance_mm, frame.to_world(sideways)};
  return {end.out_mm, frame.to_world(endways)};
}

Clearance measure(const Prism& prism, const Point& p) {
  const Point l = prism.frame.to_local(p);
  return upright(prism.frame, clearance(prism.section, true, {l.x, l.y}), l.z, prism.height_mm);
}

Clearance measure(const ProfiledBody& body, const Point& p) {
  const Point l = body.frame.to_local(p);
  return upright(body.frame, clearance(body.contour, false, {l.x, l.y}), l.z, body.height_mm);
}

// Of a half section carried round local z; `flat_at` gives its clearance in radius and height.
template <typename FlatAt>
Clearance carried_round(const Frame& frame, const Point& p, const FlatAt& flat_at) {
  const Point l = frame.to_local(p);
  const double radius = std::sqrt(l.x * l.x + l.y * l.y);
  const FlatClearance flat = flat_at(FlatPoint{radius, l.z});
  const Vector outwards = radius > 0.0 ? Vector{l.x / radius, l.y / radius, 0.0} : Vector{1.0, 0.0, 0.0};
  return {flat.distance_mm, frame.to_world(flat.u * outwards + Vector{0.0, 0.0, flat.v})};
}

Clearance measure(const TurnedBody& body, const Point& p) {
  return carried_round(body.frame, p,
                       [&](const FlatPoint& at) { return clearance(body.half_section, true, at); });
}

// As its profile would have it, without going round the profile: most bodies are cylinders.
Clearance measure(const Cylinder& cylinder, const Point& p) {
  const Point l = cylinder.frame.to_local(p);
  const double radius = std::sqrt(l.x * l.x + l.y * l.y);
  const FlatClearance flat = radius > 0.0
                                 ? FlatClearance{radius - cylinder.radius_mm, l.x / radius, l.y / radius}
                                 : FlatClearance{-cylinder.radius_mm, 1.0, 0.0};
  return upright(cylinder.frame, flat, l.z, cylinder.height_mm);
}

template <Turned Shape>
Clearance measure(const Shape& shape, const Point& p) {
  const Profile profile(shape);
  return carried_round(shape.frame, p,
                       [&](const FlatPoint& at) { return clearance(profile.corners(), false, at); });
}

}  // namespace

Clearance clearance(const Primitive& primitive, const Point& point) {
  return std::visit([&](const auto& p) { return measure(p, point); }, primitive);
}

bool contains(const Primitive& primitive, const Point& point) {
  return clearance(primitive, point).distance_mm <= 0.0;
}

}  // namespace sparewright::shape
