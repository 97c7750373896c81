// The compound slide set at a small angle to the axis as a fine feed. Formulas are generic in their scalar.
//
// The slide's travel s at the angle a to the axis brings the tool s sin(a) nearer to the axis, and s cos(a) along it.
// Set so that sin(a) is one tenth, ten of its divisions are one of a cross slide with the same collar. Source: plain
// geometry; the setting is common practice.
#pragma once

#include <cmath>

namespace sparewright::cutting {

// asin(1/10) is 5.74 degrees.
[[nodiscard]] inline double tenth_angle_rad() {
  return std::asin(0.1);
}

// What the turned diameter changes by; travel along the slide.
template <class Scalar>
[[nodiscard]] Scalar diameter_of_slide_mm(const Scalar& travel_mm, const Scalar& angle_to_axis_rad) {
  using std::sin;
  return 2.0 * travel_mm * sin(angle_to_axis_rad);
}

// How far the tool goes along the axis with it.
template <class Scalar>
[[nodiscard]] Scalar along_of_slide_mm(const Scalar& travel_mm, const Scalar& angle_to_axis_rad) {
  using std::cos;
  return travel_mm * cos(angle_to_axis_rad);
}

}  // namespace sparewright::cutting
