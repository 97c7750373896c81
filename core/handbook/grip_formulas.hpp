// Force of a vise's screw and grip of a turning chuck, as formulas generic in their scalar.
#pragma once

#include <cmath>
#include <numbers>

#include "core/handbook/source.hpp"

namespace sparewright::handbook {

inline constexpr Source kScrewForce{
    "square thread, F = T / (r tan(phi + lead angle)), Statics (textbook), problem 8-76",
    "https://www.prepscholar.com/solutions/"
    "engineering-mechanics-statics-and-dynamics-14th-edition-chapter-8-problem-76P/",
    Basis::kPublished};
inline constexpr Source kGripAtSpeed{"lathe chuck assembly and operating manual, p. 25 (VDI 3106)", "",
                                     Basis::kPublished};

// Force of a square-thread screw: torque on the handle over r tan(phi + lead angle), tan phi = friction, lead
// angle = atan(lead / (2 pi r)). Friction of the collar is not in it: about 0.6 of this with a plain one.
template <class Scalar>
[[nodiscard]] Scalar screw_force(const Scalar& torque, const Scalar& mean_radius, const Scalar& lead,
                                 const Scalar& friction) {
  using std::atan;
  using std::tan;
  const Scalar lead_angle = atan(lead / (2.0 * std::numbers::pi * mean_radius));
  return torque / (mean_radius * tan(atan(friction) + lead_angle));
}

// Grip left of an outside grip when the chuck turns, N: standing grip less sum of (jaw mass x radius of its
// centre of gravity, kg m) times (pi n / 30)^2. An inside grip gains as much.
template <class Scalar>
[[nodiscard]] Scalar grip_at_speed_n(const Scalar& standing_n, const Scalar& jaws_kg_m, const Scalar& rpm) {
  const Scalar omega = std::numbers::pi * rpm / 30.0;
  return standing_n - jaws_kg_m * omega * omega;
}

// The speed at which grip_at_speed_n times clamping_factor comes down to what is needed: (30 / pi)
// sqrt((standing / clamping_factor - machining_factor x cutting) / jaws). The square root of less than
// nothing, no number, where the grip is too small standing still. Never above the maximum engraved on the
// chuck.
template <class Scalar>
[[nodiscard]] Scalar permitted_rpm(const Scalar& standing_n, const Scalar& clamping_factor,
                                   const Scalar& cutting_n, const Scalar& machining_factor,
                                   const Scalar& jaws_kg_m) {
  using std::sqrt;
  return 30.0 / std::numbers::pi *
         sqrt((standing_n / clamping_factor - machining_factor * cutting_n) / jaws_kg_m);
}

}  // namespace sparewright::handbook
