#include "core/shape/frame.hpp"

#include "core/base/hash.hpp"

namespace sparewright::shape {
namespace {

Vector as_vector(const Point& p) {
  return {p.x, p.y, p.z};
}
Point as_point(const Vector& v) {
  return {v.x, v.y, v.z};
}

Vector least_leaning_axis(const Vector& z) {
  const double x_lean = std::abs(z.x);
  const double y_lean = std::abs(z.y);
  const double z_lean = std::abs(z.z);
  if (x_lean <= y_lean && x_lean <= z_lean) return {1.0, 0.0, 0.0};
  return y_lean <= z_lean ? Vector{0.0, 1.0, 0.0} : Vector{0.0, 0.0, 1.0};
}

// A grid of 10^-n is no double; dividing by the whole number gives the nearest double of each multiple.
double on_grid(double value, double per_unit) {
  return base::canonical(std::round(value * per_unit) / per_unit);
}

Vector on_direction_grid(const Vector& v) {
  constexpr double kPerUnit = 1.0 / kDirectionGrid;
  return {on_grid(v.x, kPerUnit), on_grid(v.y, kPerUnit), on_grid(v.z, kPerUnit)};
}

}  // namespace

Frame Frame::at(const Point& origin) {
  Frame frame;
  frame.origin = origin;
  return frame;
}

Frame Frame::along(const Point& origin, const Vector& z) {
  return along(origin, z, least_leaning_axis(direction(z)));
}

Frame Frame::along(const Point& origin, const Vector& z, const Vector& x) {
  Frame frame;
  frame.origin = origin;
  frame.z = direction(z);
  frame.x = direction(x - dot(x, frame.z) * frame.z);
  frame.y = cross(frame.z, frame.x);
  return frame;
}

Point Frame::to_world(const Point& local) const {
  return origin + to_world(as_vector(local));
}
Vector Frame::to_world(const Vector& local) const {
  return local.x * x + local.y * y + local.z * z;
}
Point Frame::to_local(const Point& world) const {
  return as_point(to_local(world - origin));
}
Vector Frame::to_local(const Vector& world) const {
  return {dot(world, x), dot(world, y), dot(world, z)};
}

Frame Frame::in(const Frame& outer) const {
  return {outer.to_world(origin), outer.to_world(x), outer.to_world(y), outer.to_world(z)};
}

Frame Frame::inverse() const {
  Frame frame;
  frame.x = {x.x, y.x, z.x};
  frame.y = {x.y, y.y, z.y};
  frame.z = {x.z, y.z, z.z};
  frame.origin = as_point(-frame.to_world(as_vector(origin)));
  return frame;
}

Frame Frame::turned(double angle_rad) const {
  const double c = std::cos(angle_rad);
  const double s = std::sin(angle_rad);
  return {origin, c * x + s * y, c * y - s * x, z};
}

Frame Frame::shifted(const Vector& local) const {
  return {origin + to_world(local), x, y, z};
}

double snapped(double value_mm) {
  return on_grid(value_mm, 1.0 / kGrid_mm);
}

Point snapped(const Point& point) {
  return {snapped(point.x), snapped(point.y), snapped(point.z)};
}

Frame snapped(const Frame& frame) {
  return Frame::along(snapped(frame.origin), on_direction_grid(frame.z), on_direction_grid(frame.x));
}

}  // namespace sparewright::shape
