// A way to look at the work: what is to the right, what is up, and where the eye is.
#pragma once

#include "core/shape/outline.hpp"
#include "core/shape/vector.hpp"

namespace sparewright::drawing {

// Length 1 each, at right angles, right x up = towards the eye. Views are in the plane of right (u) and up (v), in mm of
// the part.
struct Sight {
  shape::Vector right{1.0, 0.0, 0.0};
  shape::Vector up{0.0, 0.0, 1.0};
  shape::Vector towards{0.0, -1.0, 0.0};

  [[nodiscard]] shape::FlatPoint seen(const shape::Point& p) const {
    const shape::Vector v = p - shape::Point{};
    return {shape::dot(v, right), shape::dot(v, up)};
  }
  [[nodiscard]] double depth(const shape::Point& p) const { return shape::dot(p - shape::Point{}, towards); }
  [[nodiscard]] shape::Point at(const shape::FlatPoint& p, double depth_mm) const {
    return shape::Point{} + p.u * right + p.v * up + depth_mm * towards;
  }
};

}  // namespace sparewright::drawing
