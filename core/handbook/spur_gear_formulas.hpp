// The spur gear as formulas, generic in their scalar.
//
// Notation: m module (pitch diameter / teeth; 25.4 mm / diametral pitch), N teeth, alpha pressure angle.
// Tooth thickness without backlash: half the circular pitch on the pitch circle, no profile shift. Sources:
// Machinery's Handbook, spur gearing, and ISO 21771 (both from memory); geometry of the involute.
#pragma once

#include <cmath>
#include <numbers>

#include "core/handbook/source.hpp"

namespace sparewright::handbook {

inline constexpr Source kSpurGearFormulas{
    "formulas of spur gears: outside diameter, chordal thickness and addendum, Machinery's Handbook", "",
    Basis::kFromMemory};
inline constexpr Source kSpanMeasurement{
    "span over teeth and base pitch, geometry of the involute (ISO 21771)", "", Basis::kFromMemory};

// Outside diameter: m (N + 2 a), a being the addendum in modules (1 for full-depth teeth).
template <class Scalar>
[[nodiscard]] Scalar outside_diameter_mm(const Scalar& module_mm, double teeth, double addendum) {
  return module_mm * (teeth + 2.0 * addendum);
}

// The inverse: module from an outside diameter.
template <class Scalar>
[[nodiscard]] Scalar module_from_outside_mm(const Scalar& outside_mm, double teeth, double addendum) {
  return outside_mm / (teeth + 2.0 * addendum);
}

// Module from the centre distance of two gears in mesh: 2 C / (N1 + N2). Does not depend on the addendum.
template <class Scalar>
[[nodiscard]] Scalar module_from_centres_mm(const Scalar& centres_mm, double teeth, double mate_teeth) {
  return 2.0 * centres_mm / (teeth + mate_teeth);
}

// What a tooth caliper reads across a tooth at the chordal addendum: m N sin(90 deg / N).
template <class Scalar>
[[nodiscard]] Scalar chordal_thickness_mm(const Scalar& module_mm, double teeth) {
  return module_mm * (teeth * std::sin(std::numbers::pi / 2.0 / teeth));
}

// Where it reads it, from the top of the tooth: a m + m N/2 (1 - cos(90 deg / N)).
template <class Scalar>
[[nodiscard]] Scalar chordal_addendum_mm(const Scalar& module_mm, double teeth, double addendum) {
  return module_mm * (addendum + teeth / 2.0 * (1.0 - std::cos(std::numbers::pi / 2.0 / teeth)));
}

// tan(alpha) - alpha.
template <class Scalar>
[[nodiscard]] Scalar involute(const Scalar& angle_rad) {
  using std::tan;
  return tan(angle_rad) - angle_rad;
}

// Distance from one tooth to the next along the base circle: pi m cos(alpha).
template <class Scalar>
[[nodiscard]] Scalar base_pitch_mm(const Scalar& module_mm, const Scalar& pressure_angle_rad) {
  using std::cos;
  return std::numbers::pi * module_mm * cos(pressure_angle_rad);
}

// Over k teeth with the anvils of a disk micrometer on the flanks: m cos(alpha) (pi (k - 1/2) + N
// inv(alpha)).
template <class Scalar>
[[nodiscard]] Scalar span_mm(const Scalar& module_mm, double teeth, double spanned,
                             const Scalar& pressure_angle_rad) {
  using std::cos;
  return module_mm * cos(pressure_angle_rad) *
         (std::numbers::pi * (spanned - 0.5) + teeth * involute(pressure_angle_rad));
}

}  // namespace sparewright::handbook
