// The point of a twist drill: how far it reaches past the full diameter.
#pragma once

#include <cmath>

#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// Usual included angle of the point: 118 degrees (common practice for steel).
inline constexpr quantity::Angle kUsualPointAngle = quantity::Angle::of(118.0, quantity::unit::degree);

inline constexpr Source kPointLength{"length of a drill's point: (D/2) / tan of half its angle, geometry", "",
                                     Basis::kDerived};

// Length of the cone: (D/2) / tan(A/2). With 118 degrees 0.3004 D, in shops 0.3 D.
// point_angle_rad is the included angle, over 0 and under pi. The chisel edge, which shortens the cone a
// little, is left out. Source: geometry; a solved drilling problem prints A = 0.5 D tan(90 - theta/2), 3 mm
// for 10 mm and 118 degrees.
template <class Scalar>
[[nodiscard]] Scalar point_length_mm(const Scalar& diameter_mm, const Scalar& point_angle_rad) {
  using std::tan;
  return diameter_mm / 2.0 / tan(point_angle_rad / 2.0);
}

[[nodiscard]] inline quantity::Length point_length(quantity::Diameter drill,
                                                   quantity::Angle point_angle = kUsualPointAngle) {
  return quantity::Length::of(point_length_mm(drill.in(quantity::unit::millimetre), point_angle.base()),
                              quantity::unit::millimetre);
}

}  // namespace sparewright::handbook
