// The 60 degree thread of the Unified and ISO metric systems as formulas, generic in their scalar.
//
// Notation: D major diameter, P pitch (mm per thread), H = P sqrt(3)/2 height of the sharp triangle. The
// profile takes H/8 off the crest and H/4 off the root of the internal thread. Source: ISO 68-1 and ASME B1.1
// (from memory of the profile; the multiples of P agree with Machinery's Handbook 31st ed., Tables 3 to 6,
// pp. 2010-2017).
#pragma once

#include <cmath>
#include <numbers>

#include "core/handbook/source.hpp"

namespace sparewright::handbook {

inline constexpr double kPitchLinePerPitch = 0.64951905;  // 3/4 H / P: D less the pitch diameter
inline constexpr double kInternalMinorPerPitch =
    1.08253175;                                           // 5/4 H / P: D less the minor diameter of the hole
inline constexpr double kRoundRootPerPitch = 1.19078493;  // 11/8 H / P: D less a rounded root (UNR)
inline constexpr double kFullThreadPerPitch = 1.299038;   // 3/2 H / P: twice the height of a 100 % thread

inline constexpr Source kThreadProfile{"basic profile of the 60 degree thread, ISO 68-1 and ASME B1.1", "",
                                       Basis::kFromMemory};
inline constexpr Source kPercentOfThread{
    "percentage of thread 100 (D - hole) / (1.299 P), Machinery's Handbook 31st ed., Table 2, p. 2155",
    "https://online.flippingbook.com/view/954046886/800", Basis::kPublished};
inline constexpr Source kUnifiedStressArea{
    "tensile stress area (pi/4) (D - 0.9743 P)^2, FED-STD-H28/2",
    "https://engineersedge.com/thread_strength/thread_minimum_length_engagement_fed-std-h28.htm",
    Basis::kPublished};
inline constexpr Source kMetricStressArea{"tensile stress area (pi/4) (d - 0.9382 P)^2, ISO 898-1",
                                          "https://www.slsbearings.com/slsbnn/tensile-strength.html",
                                          Basis::kPublished};

template <class Scalar>
[[nodiscard]] Scalar pitch_diameter_mm(const Scalar& major_mm, const Scalar& pitch_mm) {
  return major_mm - kPitchLinePerPitch * pitch_mm;
}

template <class Scalar>
[[nodiscard]] Scalar internal_minor_mm(const Scalar& major_mm, const Scalar& pitch_mm) {
  return major_mm - kInternalMinorPerPitch * pitch_mm;
}

// Height of thread left in a hole of that diameter, in per cent of 3/4 H: 100 (D - hole) / (1.299038 P).
// Source: kPercentOfThread (4-40 with #42: 57 %).
template <class Scalar>
[[nodiscard]] Scalar percent_of_thread(const Scalar& major_mm, const Scalar& hole_mm,
                                       const Scalar& pitch_mm) {
  return 100.0 * (major_mm - hole_mm) / (kFullThreadPerPitch * pitch_mm);
}

// The hole that leaves that percentage: the inverse of percent_of_thread.
template <class Scalar>
[[nodiscard]] Scalar hole_for_percent_mm(const Scalar& major_mm, const Scalar& percent,
                                         const Scalar& pitch_mm) {
  return major_mm - percent / 100.0 * (kFullThreadPerPitch * pitch_mm);
}

// Tensile stress area of a screw up to 100 ksi: (pi/4) (D - 0.9743 P)^2.
// Source: kUnifiedStressArea, also the ASME B1.1 appendix (1/4-20: 0.0318 in2).
template <class Scalar>
[[nodiscard]] Scalar unified_stress_area_mm2(const Scalar& major_mm, const Scalar& pitch_mm) {
  const Scalar across = major_mm - 0.9743 * pitch_mm;
  return std::numbers::pi / 4.0 * across * across;
}

// The same above 100 ksi, from the least pitch diameter: pi (E/2 - 0.16238 P)^2. Source: FED-STD-H28/2.
template <class Scalar>
[[nodiscard]] Scalar strong_unified_stress_area_mm2(const Scalar& least_pitch_diameter_mm,
                                                    const Scalar& pitch_mm) {
  const Scalar radius = least_pitch_diameter_mm / 2.0 - 0.16238 * pitch_mm;
  return std::numbers::pi * radius * radius;
}

// Tensile stress area of a metric screw: (pi/4) (d - 0.9382 P)^2. Source: kMetricStressArea (M10: 58.0 mm2).
template <class Scalar>
[[nodiscard]] Scalar metric_stress_area_mm2(const Scalar& major_mm, const Scalar& pitch_mm) {
  const Scalar across = major_mm - 0.9382 * pitch_mm;
  return std::numbers::pi / 4.0 * across * across;
}

}  // namespace sparewright::handbook
