#include "core/shape/profile.hpp"

#include <algorithm>

namespace sparewright::shape {

Profile::Profile(const Cylinder& cylinder) {
  add(0.0, 0.0);
  add(cylinder.radius_mm, 0.0);
  add(cylinder.radius_mm, cylinder.height_mm);
  add(0.0, cylinder.height_mm);
}

Profile::Profile(const Cone& cone) {
  add(0.0, 0.0);
  add(cone.start_radius_mm, 0.0);
  add(cone.end_radius_mm, cone.height_mm);
  add(0.0, cone.height_mm);
}

Profile::Profile(const DrilledHole& hole) {
  add(0.0, 0.0);
  add(hole.radius_mm, 0.0);
  add(hole.radius_mm, hole.depth_mm);
  add(0.0, hole.depth_mm + point_length_mm(hole.radius_mm, hole.point_rad));
}

double Profile::greatest_radius_mm() const {
  double greatest = 0.0;
  for (const FlatPoint& corner : corners())
    greatest = std::max(greatest, corner.u);
  return greatest;
}

void Profile::add(double radius_mm, double z_mm) {
  const FlatPoint corner{radius_mm, z_mm};
  if (count_ > 0 && corners_[count_ - 1] == corner) return;
  corners_[count_] = corner;
  ++count_;
}

}  // namespace sparewright::shape
