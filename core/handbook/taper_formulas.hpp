// Cones and how they are measured over rollers and balls, as formulas generic in their scalar.
//
// Notation: a half angle (axis to side); k = 2 tan a the taper, difference of diameters per length along the
// axis (taper per foot / 12); all lengths in one unit. The taper's half angle is atan(k / 2), not half of
// atan(k).
// Source: geometry; taper per foot = 12 (D - d) / l, Turning and Boring (1914), rules for figuring tapers.
#pragma once

#include <cmath>

#include "core/handbook/source.hpp"

namespace sparewright::handbook {

inline constexpr Source kTaperRule{
    "taper per foot = 12 (D - d) / length, half angle atan(taper per foot / 24): Turning and Boring (1914)",
    "", Basis::kPublished};
inline constexpr Source kTaperGauging{
    "taper over rollers and balls: geometry of a circle touching a straight side", "", Basis::kDerived};

// Half angle of a taper (0.6246 in per foot: 1.4908 deg).
template <class Scalar>
[[nodiscard]] Scalar half_angle_rad(const Scalar& taper) {
  using std::atan;
  return atan(taper / 2.0);
}

// Taper of a cone from two diameters `apart` along its axis.
template <class Scalar>
[[nodiscard]] Scalar taper_between(const Scalar& large, const Scalar& small, const Scalar& apart) {
  return (large - small) / apart;
}

// Over two rollers of one diameter that touch a plug standing on its small end, their centres `height` above
// that end (a roller on the plate: half its diameter): small end + 2 height tan a + roller (1 + sec a).
template <class Scalar>
[[nodiscard]] Scalar over_rollers(const Scalar& small_end, const Scalar& taper, const Scalar& roller,
                                  const Scalar& height) {
  using std::cos;
  return small_end + taper * height + roller * (1.0 + 1.0 / cos(half_angle_rad(taper)));
}

// The small end of a plug from one measurement over rollers: the inverse of over_rollers.
template <class Scalar>
[[nodiscard]] Scalar small_end_from_rollers(const Scalar& over, const Scalar& taper, const Scalar& roller,
                                            const Scalar& height) {
  using std::cos;
  return over - taper * height - roller * (1.0 + 1.0 / cos(half_angle_rad(taper)));
}

// How far the top of a ball lies below the face of a tapered hole that is `large_end` wide at the face;
// negative where it stands out: (large end / 2 - r / cos a) / tan a - r.
template <class Scalar>
[[nodiscard]] Scalar ball_depth(const Scalar& large_end, const Scalar& taper, const Scalar& ball) {
  using std::cos;
  const Scalar radius = ball / 2.0;
  return (large_end / 2.0 - radius / cos(half_angle_rad(taper))) / (taper / 2.0) - radius;
}

// Where that ball touches, below the face.
template <class Scalar>
[[nodiscard]] Scalar ball_contact_depth(const Scalar& large_end, const Scalar& taper, const Scalar& ball) {
  using std::sin;
  return ball_depth(large_end, taper, ball) + ball / 2.0 * (1.0 + sin(half_angle_rad(taper)));
}

// The width of a tapered hole at its face from one ball: the inverse of ball_depth.
template <class Scalar>
[[nodiscard]] Scalar large_end_from_ball(const Scalar& depth, const Scalar& taper, const Scalar& ball) {
  using std::cos;
  const Scalar radius = ball / 2.0;
  return 2.0 * ((depth + radius) * (taper / 2.0) + radius / cos(half_angle_rad(taper)));
}

// Taper of a straight-sided wedge or cone that two discs, rollers or balls touch, their centres `apart` along
// its centre line: 2 tan asin((D - d) / (2 apart)).
// Source: Machinery's Handbook 31st ed., p. 701 (discs of 1 and 1-1/2 in 5 in apart: 1.2015 in per foot).
template <class Scalar>
[[nodiscard]] Scalar taper_of_two_discs(const Scalar& large, const Scalar& small, const Scalar& apart) {
  using std::sqrt;
  const Scalar sine = (large - small) / (2.0 * apart);
  return 2.0 * sine / sqrt(1.0 - sine * sine);
}

}  // namespace sparewright::handbook
