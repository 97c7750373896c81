// Arcs and flats on rounds: chord, height and radius; how deep a flat or a keyseat is; a hole's centre from three touches.
//
// Notation: R radius, c chord, h height of the arc over its chord (sagitta), always the smaller part: h <= R.
#pragma once

#include <array>
#include <cmath>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

inline constexpr Source kRadiusFromChord{
    "R = (c^2 + 4 h^2) / (8 h), question QQ.09.06 of a university's mathematics help",
    "https://mathcentral.uregina.ca", Basis::kPublished};
inline constexpr Source kArcGeometry{"chord and height of an arc, geometry", "", Basis::kDerived};

// (c^2 + 4 h^2) / (8 h). A shallow arc multiplies an error of h by c^2 / (8 h^2) - 1/2: chord 24, height 3 gives 25.5,
// and 7.5 times the error.
template <class Scalar>
[[nodiscard]] Scalar radius_from_chord_mm(const Scalar& chord_mm, const Scalar& height_mm) {
  return (chord_mm * chord_mm + 4.0 * height_mm * height_mm) / (8.0 * height_mm);
}

// Height of the arc over a chord: R - sqrt(R^2 - c^2/4). Written so that shallow arcs lose no digits. The depth of a
// flat of width c on a round, and how much lower the corner of a keyseat of width c lies than the crest.
// chord from 0 to 2 R.
template <class Scalar>
[[nodiscard]] Scalar sagitta_mm(const Scalar& radius_mm, const Scalar& chord_mm) {
  using std::sqrt;
  const Scalar quarter = chord_mm * chord_mm / 4.0;
  return quarter / (radius_mm + sqrt(radius_mm * radius_mm - quarter));
}

// The inverse: width of a flat of that depth, 2 sqrt(h (2 R - h)).
template <class Scalar>
[[nodiscard]] Scalar chord_from_sagitta_mm(const Scalar& radius_mm, const Scalar& height_mm) {
  using std::sqrt;
  return 2.0 * sqrt(height_mm * (2.0 * radius_mm - height_mm));
}

// A keyseat that is `at_the_side` deep where its wall meets the round: depth from the crest, which is what the cutter goes
// down after touching off.
template <class Scalar>
[[nodiscard]] Scalar keyseat_from_crest_mm(const Scalar& radius_mm, const Scalar& width_mm,
                                           const Scalar& at_the_side_mm) {
  return at_the_side_mm + sagitta_mm(radius_mm, width_mm);
}

// What a micrometer reads from the bottom of a keyseat or flat over the back of the round: 2 R - depth from the crest.
template <class Scalar>
[[nodiscard]] Scalar over_the_back_mm(const Scalar& radius_mm, const Scalar& from_crest_mm) {
  return 2.0 * radius_mm - from_crest_mm;
}

// Two rolls of that diameter on a plate, one on each side of a convex gauge standing on the plate, both touching it:
// R = (L - D)^2 / (8 D) with L over the rolls.
template <class Scalar>
[[nodiscard]] Scalar radius_between_rolls_mm(const Scalar& over_rolls_mm, const Scalar& roll_mm) {
  return (over_rolls_mm - roll_mm) * (over_rolls_mm - roll_mm) / (8.0 * roll_mm);
}

// The centre of a tip or finder when it touches.
struct Touch {
  quantity::Coordinate x;
  quantity::Coordinate y;
};

enum class TouchedSide { kHole, kBoss };

struct CircleFromTouches {
  quantity::Coordinate x;
  quantity::Coordinate y;
  quantity::Diameter diameter;  // of the hole or boss itself
  // How far the centre, and the diameter, may be out for each unit that every touch may be out along its radius, all the
  // worst way. Touches 120 degrees apart: 4/3 and 2.
  double centre_per_touch = 0.0;
  double diameter_per_touch = 0.0;
};

// Touches spread so little that an error comes out more than this many times as large are refused.
inline constexpr double kMostTouchMagnified = 1000.0;

// The circle through three touches, the tip's radius added for a hole and taken off for a boss. Fails with
// kReadingsTooFew where the touches lie on a line, on one another or all on a short arc; with kValueNotAccepted for a
// negative tip, or one not smaller than a boss's path.
[[nodiscard]] base::Result<CircleFromTouches> circle_from_touches(const std::array<Touch, 3>& touches,
                                                                  quantity::Diameter tip, TouchedSide side);

}  // namespace sparewright::handbook
