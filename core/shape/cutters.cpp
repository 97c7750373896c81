#include "core/shape/cutters.hpp"

#include <algorithm>
#include <utility>

namespace sparewright::shape {
namespace {

double radius_mm(quantity::Diameter diameter) {
  return half(diameter).in(quantity::unit::millimetre);
}
double mm(quantity::Length length) {
  return length.in(quantity::unit::millimetre);
}

}  // namespace

Cutter through_hole(std::string feature, const Point& entry, const Vector& into, quantity::Diameter diameter,
                    quantity::Length length) {
  return {std::move(feature), Cylinder{Frame::along(entry, into), radius_mm(diameter), mm(length)},
          Open::kThrough};
}

Cutter drilled_hole(std::string feature, const Point& entry, const Vector& into, quantity::Diameter diameter,
                    quantity::Length depth, quantity::Angle point) {
  return {std::move(feature),
          DrilledHole{Frame::along(entry, into), radius_mm(diameter), mm(depth),
                      point.in(quantity::unit::radian)},
          Open::kStart};
}

Cutter flat_bottomed_hole(std::string feature, const Point& entry, const Vector& into,
                          quantity::Diameter diameter, quantity::Length depth) {
  return {std::move(feature), Cylinder{Frame::along(entry, into), radius_mm(diameter), mm(depth)},
          Open::kStart};
}

Cutter countersink(std::string feature, const Point& entry, const Vector& into, quantity::Diameter diameter,
                   quantity::Angle angle) {
  const double r = radius_mm(diameter);
  const double depth = point_length_mm(r, angle.in(quantity::unit::radian));
  return {std::move(feature), Cone{Frame::along(entry, into), r, 0.0, depth}, Open::kStart};
}

Cutter milled_box(std::string feature, const Frame& frame, const Point& corner, const Point& opposite,
                  Open open) {
  const Vector low{std::min(corner.x, opposite.x), std::min(corner.y, opposite.y),
                   std::min(corner.z, opposite.z)};
  const Vector high{std::max(corner.x, opposite.x), std::max(corner.y, opposite.y),
                    std::max(corner.z, opposite.z)};
  return {std::move(feature), Box{frame.shifted(low), high - low}, open};
}

}  // namespace sparewright::shape
