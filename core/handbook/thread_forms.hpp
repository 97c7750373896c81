// The profiles of threads: the angle between the flanks, how deep the groove is, how wide the tool's nose.
#pragma once

#include <cmath>
#include <string_view>

#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

enum class ThreadForm {
  kSharpV,              // 60 degrees to a point at crest and root
  kAmericanNational,    // 60 degrees, flats of P/8: American screws before 1949
  kUnified,             // 60 degrees, ASME B1.1
  kMetric,              // 60 degrees, ISO 68-1
  kAmericanPipe,        // 60 degrees, ASME B1.20.1
  kWhitworth,           // 55 degrees, rounded; also British pipe threads
  kBritishAssociation,  // 47.5 degrees, rounded
  kBritishCycle,        // 60 degrees, rounded
  kAcme,                // 29 degrees
  kTrapezoidal,         // 30 degrees, ISO 2901
};

// The groove of a screw or of a hole as multiples of the pitch, measured square to the axis on one side.
struct ThreadGroove {
  double addendum = 0.0;     // crest to pitch line
  double depth = 0.0;        // crest to root
  double root_radius = 0.0;  // 0 where the root is flat or sharp
};

// A form without the clearance that Acme and trapezoidal roots are given by size (PowerThreadLimits have it).
struct ThreadProfile {
  ThreadForm form = ThreadForm::kSharpV;
  std::string_view name;        // "Whitworth"
  quantity::Angle flank_angle;  // between the flanks
  ThreadGroove screw;
  ThreadGroove hole;
  Source source;
};
[[nodiscard]] const ThreadProfile& profile_of(ThreadForm form);

// Width of the groove at a depth, which is the flat a tool may have that goes that deep: P/2 - 2 (depth -
// addendum) tan(A/2), the groove being half the pitch wide at the pitch line. flank_angle_rad is A, over 0
// and under pi. Source: geometry (ISO trapezoidal of 3 mm pitch at depth 1.75 mm: 0.964 mm).
template <class Scalar>
[[nodiscard]] Scalar groove_width_mm(const Scalar& depth_mm, const Scalar& addendum_mm,
                                     const Scalar& pitch_mm, const Scalar& flank_angle_rad) {
  using std::tan;
  return pitch_mm / 2.0 - 2.0 * (depth_mm - addendum_mm) * tan(flank_angle_rad / 2.0);
}

// How deep a tool with that flat goes until the groove is half the pitch wide at the pitch line: the inverse
// of groove_width_mm. A tool ground sharper must go deeper.
template <class Scalar>
[[nodiscard]] Scalar depth_for_nose_mm(const Scalar& nose_mm, const Scalar& addendum_mm,
                                       const Scalar& pitch_mm, const Scalar& flank_angle_rad) {
  using std::tan;
  return addendum_mm + (pitch_mm / 2.0 - nose_mm) / 2.0 / tan(flank_angle_rad / 2.0);
}

}  // namespace sparewright::handbook
