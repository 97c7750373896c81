// A ray in a primitive's own frame, and as it passes the frame's z axis. Used by the files that cross rays with primitives.
#pragma once

#include <cmath>

#include "core/shape/outline.hpp"
#include "core/shape/ray.hpp"

namespace sparewright::shape {

// A direction this near to square to a normal counts as parallel to the face: over 1 m it strays 1e-10 mm.
inline constexpr double kParallel = 1e-13;

struct LocalRay {
  Point o;
  Vector d;

  [[nodiscard]] Point at(double t_mm) const { return o + t_mm * d; }
};

inline LocalRay in_frame(const Ray& ray, const Frame& frame) {
  return {frame.to_local(ray.origin), frame.to_local(ray.direction)};
}

// With s = t - nearest, the ray's distance from the axis squared is flat * s^2 + least2 and its height z + s * dz.
struct AboutAxis {
  double flat = 0.0;
  double nearest = 0.0;
  double least2 = 0.0;
  double z = 0.0;
  double dz = 0.0;

  // Radius and height.
  [[nodiscard]] FlatPoint at(double s) const { return {std::sqrt(flat * s * s + least2), z + s * dz}; }
};

inline AboutAxis about_axis(const LocalRay& r) {
  AboutAxis a;
  a.flat = r.d.x * r.d.x + r.d.y * r.d.y;
  if (a.flat < kParallel * kParallel) {
    a.flat = 0.0;
  } else {
    a.nearest = -(r.o.x * r.d.x + r.o.y * r.d.y) / a.flat;
  }
  const Point foot = r.at(a.nearest);
  a.least2 = foot.x * foot.x + foot.y * foot.y;
  a.z = foot.z;
  a.dz = r.d.z;
  return a;
}

}  // namespace sparewright::shape
