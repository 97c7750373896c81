// Stripping of threads as formulas, generic in their scalar.
//
// Notation: P pitch, Le length of engagement, Kn minor and En pitch diameter of the hole, Ds major and Es
// pitch diameter of the screw. The least metal is in mesh with Kn and En at their greatest, Ds and Es at
// their least.
#pragma once

#include <numbers>

#include "core/handbook/source.hpp"

namespace sparewright::handbook {

inline constexpr Source kShearAreas{
    "shear areas of threads, FED-STD-H28/2 and the appendix of ASME B1.1 (Machinery's Handbook 24th ed. as "
    "quoted)",
    "https://engineersedge.com/thread_strength/thread_minimum_length_engagement_fed-std-h28.htm",
    Basis::kPublished};

// tan 30 degrees, as the standard rounds it.
inline constexpr double kTan30 = 0.57735;

// What strips when the screw's thread goes, a cylinder at the hole's minor diameter:
// pi Le Kn (1/2 + 0.57735 (Es - Kn)/P). Source: kShearAreas (1/4-20, 2A in 2B: 0.3680 in2 an inch).
template <class Scalar>
[[nodiscard]] Scalar screw_shear_area_mm2(const Scalar& engagement_mm, const Scalar& pitch_mm,
                                          const Scalar& hole_minor_max_mm, const Scalar& screw_pitch_min_mm) {
  return std::numbers::pi * engagement_mm * hole_minor_max_mm *
         (0.5 + kTan30 * (screw_pitch_min_mm - hole_minor_max_mm) / pitch_mm);
}

// What strips when the hole's thread goes, a cylinder at the screw's major diameter:
// pi Le Ds (1/2 + 0.57735 (Ds - En)/P). Source: kShearAreas (1/4-20, 2A in 2B: 0.5390 in2 an inch).
// Published example: M10x1.5 in aluminium, 69,600 N at 130 MPa, Ds 9.968, En 9.206: 21.6 mm. That Ds is the
// greatest of 6g; with the least, 9.732, it is 24.9 mm.
template <class Scalar>
[[nodiscard]] Scalar hole_shear_area_mm2(const Scalar& engagement_mm, const Scalar& pitch_mm,
                                         const Scalar& screw_major_min_mm, const Scalar& hole_pitch_max_mm) {
  return std::numbers::pi * engagement_mm * screw_major_min_mm *
         (0.5 + kTan30 * (screw_major_min_mm - hole_pitch_max_mm) / pitch_mm);
}

}  // namespace sparewright::handbook
