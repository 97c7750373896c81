#include "core/shape/flat_faces.hpp"

#include "core/shape/profile.hpp"

namespace sparewright::shape {
namespace {

using Planes = std::vector<HalfSpace>;

// A plane through a point with a way out, both given in the body's own frame.
void add(Planes& planes, const Frame& frame, const Point& on, const Vector& out) {
  planes.push_back({Frame::along(frame.to_world(on), frame.to_world(out))});
}

// The planes of a section's straight side, carried along local z.
void add_side(Planes& planes, const Frame& frame, const FlatPoint& from, const FlatPoint& to) {
  add(planes, frame, {from.u, from.v, 0.0}, direction(Vector{to.v - from.v, from.u - to.u, 0.0}));
}

void add_ends(Planes& planes, const Frame& frame, double height_mm) {
  add(planes, frame, {}, {0.0, 0.0, -1.0});
  add(planes, frame, {0.0, 0.0, height_mm}, {0.0, 0.0, 1.0});
}

// An edge of a half section that runs square to the axis sweeps a flat ring or disc.
void add_swept(Planes& planes, const Frame& frame, const FlatPoint& from, const FlatPoint& to) {
  if (from.v == to.v && from.u != to.u)
    add(planes, frame, {0.0, 0.0, from.v}, {0.0, 0.0, to.u > from.u ? -1.0 : 1.0});
}

Planes planes_of(const HalfSpace& h) {
  return {h};
}

Planes planes_of(const Box& b) {
  Planes planes;
  const Point far{b.size.x, b.size.y, b.size.z};
  for (const Vector& axis : {Vector{1.0, 0.0, 0.0}, Vector{0.0, 1.0, 0.0}, Vector{0.0, 0.0, 1.0}}) {
    add(planes, b.frame, {}, -axis);
    add(planes, b.frame, far, axis);
  }
  return planes;
}

Planes planes_of(const Prism& p) {
  Planes planes;
  for (std::size_t i = 0; i < p.section.size(); ++i)
    add_side(planes, p.frame, p.section[i], p.section[i + 1 == p.section.size() ? 0 : i + 1]);
  add_ends(planes, p.frame, p.height_mm);
  return planes;
}

Planes planes_of(const ProfiledBody& p) {
  Planes planes;
  for (std::size_t i = 0; i < p.contour.size(); ++i) {
    const ContourEdge e = edge(p.contour, i);
    if (!e.is_arc()) add_side(planes, p.frame, e.from, e.to);
  }
  add_ends(planes, p.frame, p.height_mm);
  return planes;
}

Planes planes_of(const TurnedBody& t) {
  Planes planes;
  for (std::size_t i = 0; i < t.half_section.size(); ++i) {
    const ContourEdge e = edge(t.half_section, i);
    if (!e.is_arc()) add_swept(planes, t.frame, e.from, e.to);
  }
  return planes;
}

template <Turned Shape>
Planes planes_of(const Shape& shape) {
  Planes planes;
  const Profile profile(shape);
  const auto corners = profile.corners();
  for (std::size_t i = 0; i + 1 < corners.size(); ++i)
    add_swept(planes, shape.frame, corners[i], corners[i + 1]);
  return planes;
}

}  // namespace

std::vector<HalfSpace> flat_faces(const Primitive& primitive) {
  return std::visit([](const auto& p) { return planes_of(p); }, primitive);
}

}  // namespace sparewright::shape
