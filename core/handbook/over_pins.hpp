// Measuring what no caliper reaches, over pins and balls: dovetails, vees, cones, countersinks, holes under a ball.
// All geometry, generic in its scalar; angles in radians.
#pragma once

#include <cmath>
#include <numbers>

#include "core/handbook/source.hpp"

namespace sparewright::handbook {

inline constexpr Source kDovetailOverPins{
    "a pin in the corner touches base and flank: D / (2 tan(angle / 2)) from the corner, "
    "geometry",
    "", Basis::kDerived};
inline constexpr Source kVeeOverPins{"groove over two pins, Machinery's Handbook 31st ed., p. 703",
                                     "https://online.flippingbook.com/view/954192180/793", Basis::kPublished};
inline constexpr Source kBallGeometry{"a ball on a hole or in a cone, geometry", "", Basis::kDerived};

// --- dovetails; the angle is that of the flank to the base, 60 degrees or 55 --------------------------------------

// From the sharp corner to the outside of the pin along the base: D/2 (1 + 1 / tan(angle/2)).
template <class Scalar>
[[nodiscard]] Scalar pin_reach_mm(const Scalar& pin_mm, const Scalar& flank_rad) {
  using std::tan;
  return pin_mm / 2.0 * (1.0 + 1.0 / tan(flank_rad / 2.0));
}

// A slide (male): over two pins outside, from the width at its narrow line, where flank and base meet in a sharp corner.
template <class Scalar>
[[nodiscard]] Scalar male_dovetail_over_pins_mm(const Scalar& narrow_mm, const Scalar& pin_mm,
                                                const Scalar& flank_rad) {
  return narrow_mm + 2.0 * pin_reach_mm(pin_mm, flank_rad);
}
template <class Scalar>
[[nodiscard]] Scalar male_dovetail_narrow_mm(const Scalar& over_pins_mm, const Scalar& pin_mm,
                                             const Scalar& flank_rad) {
  return over_pins_mm - 2.0 * pin_reach_mm(pin_mm, flank_rad);
}

// A way (female): between two pins, from the width at its wide line, at the bottom.
template <class Scalar>
[[nodiscard]] Scalar female_dovetail_between_pins_mm(const Scalar& wide_mm, const Scalar& pin_mm,
                                                     const Scalar& flank_rad) {
  return wide_mm - 2.0 * pin_reach_mm(pin_mm, flank_rad);
}
template <class Scalar>
[[nodiscard]] Scalar female_dovetail_wide_mm(const Scalar& between_pins_mm, const Scalar& pin_mm,
                                             const Scalar& flank_rad) {
  return between_pins_mm + 2.0 * pin_reach_mm(pin_mm, flank_rad);
}

// How much wider a dovetail is at its other line: 2 height / tan(angle).
template <class Scalar>
[[nodiscard]] Scalar dovetail_widening_mm(const Scalar& height_mm, const Scalar& flank_rad) {
  using std::tan;
  return 2.0 * height_mm / tan(flank_rad);
}

// --- vees; the angle is the included one --------------------------------------------------------------------------

// Top of a pin over the plane through the vee's edges, `mouth` apart: R (1 + 1 / sin(A/2)) - mouth / (2 tan(A/2)). Below 0
// the pin lies under the plane.
template <class Scalar>
[[nodiscard]] Scalar pin_over_vee_mm(const Scalar& mouth_mm, const Scalar& pin_mm,
                                     const Scalar& included_rad) {
  using std::sin;
  using std::tan;
  return pin_mm / 2.0 * (1.0 + 1.0 / sin(included_rad / 2.0)) - mouth_mm / (2.0 * tan(included_rad / 2.0));
}
// The inverse: the mouth of a vee, or the diameter of a countersink with a ball in it.
template <class Scalar>
[[nodiscard]] Scalar vee_mouth_mm(const Scalar& pin_over_mm, const Scalar& pin_mm,
                                  const Scalar& included_rad) {
  using std::sin;
  using std::tan;
  return 2.0 * tan(included_rad / 2.0) * (pin_mm / 2.0 * (1.0 + 1.0 / sin(included_rad / 2.0)) - pin_over_mm);
}
// The included angle from two pins laid in one after the other: sin(A/2) = (R - r) / ((H - h) - (R - r)), H and h being
// the heights of their tops over anything.
template <class Scalar>
[[nodiscard]] Scalar vee_angle_rad(const Scalar& large_pin_mm, const Scalar& small_pin_mm,
                                   const Scalar& large_top_mm, const Scalar& small_top_mm) {
  using std::asin;
  const Scalar radii = (large_pin_mm - small_pin_mm) / 2.0;
  return 2.0 * asin(radii / ((large_top_mm - small_top_mm) - radii));
}
// The same of a tapered hole with two balls, the tops of both measured from the face, up being positive.
template <class Scalar>
[[nodiscard]] Scalar taper_ring_angle_rad(const Scalar& large_ball_mm, const Scalar& small_ball_mm,
                                          const Scalar& large_top_mm, const Scalar& small_top_mm) {
  return vee_angle_rad(large_ball_mm, small_ball_mm, large_top_mm, small_top_mm);
}

// Over two equal pins, one in each corner of a trapezoidal tongue or groove of unlike flanks (a, b to the base) and
// width Z between the corners: Z + 2 R (1 + cos((a - b)/2) / sin((a + b)/2)). Source: kVeeOverPins (R 0.500, Z 1.824,
// 45 and 35 degrees: 4.374).
template <class Scalar>
[[nodiscard]] Scalar over_two_pins_mm(const Scalar& corners_mm, const Scalar& pin_mm, const Scalar& first_rad,
                                      const Scalar& second_rad) {
  using std::cos;
  using std::sin;
  return corners_mm +
         pin_mm * (1.0 + cos((first_rad - second_rad) / 2.0) / sin((first_rad + second_rad) / 2.0));
}

// --- cones and balls ----------------------------------------------------------------------------------------------

// How far a countersink of that included angle goes down from where it touches the edge of the hole: (D - hole) / (2
// tan(A/2)). hole 0: from where its sharp point touches the face. 60, 82, 90 and 120 degrees are in use.
template <class Scalar>
[[nodiscard]] Scalar countersink_travel_mm(const Scalar& diameter_mm, const Scalar& hole_mm,
                                           const Scalar& included_rad) {
  using std::tan;
  return (diameter_mm - hole_mm) / (2.0 * tan(included_rad / 2.0));
}
// The inverse.
template <class Scalar>
[[nodiscard]] Scalar countersink_diameter_mm(const Scalar& travel_mm, const Scalar& hole_mm,
                                             const Scalar& included_rad) {
  using std::tan;
  return hole_mm + 2.0 * travel_mm * tan(included_rad / 2.0);
}

// Top of a ball over the face of a sharp-edged hole smaller than the ball: R + sqrt(R^2 - hole^2/4).
template <class Scalar>
[[nodiscard]] Scalar ball_over_hole_mm(const Scalar& ball_mm, const Scalar& hole_mm) {
  using std::sqrt;
  return ball_mm / 2.0 + sqrt(ball_mm * ball_mm - hole_mm * hole_mm) / 2.0;
}
// The inverse: the hole's diameter at its edge, 2 sqrt(H (2 R - H)) for a top H over the face. A chamfer makes it read
// large.
template <class Scalar>
[[nodiscard]] Scalar hole_under_ball_mm(const Scalar& ball_mm, const Scalar& top_mm) {
  using std::sqrt;
  return 2.0 * sqrt(top_mm * (ball_mm - top_mm));
}

// Centre distance of two holes from over and between the webs or pins: outside reading less half of both diameters; the
// mean of outside and inside reading needs no diameter.
template <class Scalar>
[[nodiscard]] Scalar centres_from_outside_mm(const Scalar& outside_mm, const Scalar& first_mm,
                                             const Scalar& second_mm) {
  return outside_mm - (first_mm + second_mm) / 2.0;
}
template <class Scalar>
[[nodiscard]] Scalar centres_from_both_mm(const Scalar& outside_mm, const Scalar& inside_mm) {
  return (outside_mm + inside_mm) / 2.0;
}

// --- two disks ----------------------------------------------------------------------------------------------------

// Centre distance of two touched disks whose common tangents enclose an angle: (D - d) / (2 sin(A/2)). Machinery's
// Handbook 31st ed., p. 701.
template <class Scalar>
[[nodiscard]] Scalar disks_for_angle_mm(const Scalar& large_mm, const Scalar& small_mm,
                                        const Scalar& included_rad) {
  using std::sin;
  return (large_mm - small_mm) / (2.0 * sin(included_rad / 2.0));
}
template <class Scalar>
[[nodiscard]] Scalar angle_of_disks_rad(const Scalar& large_mm, const Scalar& small_mm,
                                        const Scalar& centres_mm) {
  using std::asin;
  return 2.0 * asin((large_mm - small_mm) / (2.0 * centres_mm));
}

}  // namespace sparewright::handbook
