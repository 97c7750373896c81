// Turning tapers: taper per foot, the angle to the axis, the set-over of a tailstock, the swivel of a compound slide.
//
// Taper is the difference of diameters over a length along the axis: a plain number here, 1/24 for 1/2 in per foot.
// Formulas are generic in their scalar.
#pragma once

#include <cmath>

#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

inline constexpr Source kTaperRules{
    "rules for figuring tapers, Turning and Boring (1914)",
    "https://bitlit.ru/page/en/franklin-day-jones/turning-and-boring-a-specialized-"
    "treatise-for-machinists-students-in-the-industrial-and-engineering-schools-and-"
    "apprentices-on-turning-and-boring-meth/93",
    Basis::kPublished};
inline constexpr Source kTailstockSetOver{
    "set-over of the tailstock = taper per foot x whole length between centres / 24, Modern Machine-Shop "
    "Practice",
    "https://bitlit.ru/page/en/joshua-rose/modern-machine-shop-practice-volumes-i-and-ii/614",
    Basis::kPublished};

// (D - d) / length.
template <class Scalar>
[[nodiscard]] Scalar taper_of(const Scalar& large_mm, const Scalar& small_mm, const Scalar& length_mm) {
  return (large_mm - small_mm) / length_mm;
}

// In inches of diameter per foot: 12 times the taper.
template <class Scalar>
[[nodiscard]] Scalar taper_per_foot(const Scalar& taper) {
  return 12.0 * taper;
}

// The diameter `length` from the small end.
template <class Scalar>
[[nodiscard]] Scalar diameter_along_mm(const Scalar& small_mm, const Scalar& taper, const Scalar& length_mm) {
  return small_mm + taper * length_mm;
}

// Angle of the side to the axis, half the included angle: atan(taper / 2). Not half of atan(taper).
template <class Scalar>
[[nodiscard]] Scalar angle_to_axis_rad(const Scalar& taper) {
  using std::atan;
  return atan(taper / 2.0);
}

// The inverse: 2 tan(angle).
template <class Scalar>
[[nodiscard]] Scalar taper_from_angle(const Scalar& angle_to_axis) {
  using std::tan;
  return 2.0 * tan(angle_to_axis);
}

// Set-over of the tailstock: half the taper over the whole length of the work between centres, wherever the
// taper lies. The rule takes that length along the bed; along the work it is 0.09 % too much at 1 in per foot.
// Centres in the work no longer lie true on the points: small tapers alone, and the last of it by trial.
template <class Scalar>
[[nodiscard]] Scalar tailstock_set_over_mm(const Scalar& taper, const Scalar& between_centres_mm) {
  return taper * between_centres_mm / 2.0;
}

// The set-over that makes the angle true on work whose length between its own centre holes is given: length times the
// sine of the angle to the axis. Never more than the rule.
template <class Scalar>
[[nodiscard]] Scalar exact_set_over_mm(const Scalar& taper, const Scalar& between_centres_mm) {
  using std::sqrt;
  const Scalar tangent = taper / 2.0;
  return between_centres_mm * tangent / sqrt(1.0 + tangent * tangent);
}

// Where the compound slide's zero stands: square to the bed (it reads 0 with the slide pointing across), or along it.
enum class CompoundZero { kSquareToTheBed, kAlongTheBed };

// What its base is set to for an angle to the axis: 90 degrees less the angle, or the angle. 30 degrees to the axis, zero
// square to the bed: 60. Source: kTaperRules.
[[nodiscard]] inline quantity::Angle compound_setting(quantity::Angle angle_to_axis, CompoundZero zero) {
  return zero == CompoundZero::kAlongTheBed
             ? angle_to_axis
             : quantity::Angle::of(90.0, quantity::unit::degree) - angle_to_axis;
}

// A dial indicator drawn along the axis over a taper shows half the taper times the travel; a test bar of known taper or
// this sets a slide truer than its scale.
template <class Scalar>
[[nodiscard]] Scalar indicator_change_mm(const Scalar& taper, const Scalar& travel_mm) {
  return taper * travel_mm / 2.0;
}

}  // namespace sparewright::handbook
