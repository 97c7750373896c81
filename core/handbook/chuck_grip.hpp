// Grip of a lathe chuck, still and turning, and the factors it is asked to exceed the cut by. What comes of
// these formulas may rule a cut out and never allows one: the engraved speed and a test cut do.
#pragma once

#include <cmath>
#include <numbers>
#include <span>
#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

inline constexpr Source kChuckGrip{
    "grip of jaws at speed, Fsp = Fsp0 - sum(m rs) (pi n/30)^2, lathe chuck assembly and operating manual, "
    "clamping force section (VDI 3106)",
    "", Basis::kPublished};

// Grip left at a speed of jaws that grip from outside: Fsp0 - sum(m rs) (pi n/30)^2, the sum over the jaws of
// mass times radius of its centre. Jaws that grip from inside gain as much. Source: kChuckGrip.
template <class Scalar>
[[nodiscard]] Scalar grip_at_speed_n(const Scalar& still_n, const Scalar& jaw_moment_kgm,
                                     const Scalar& speed_rpm) {
  const Scalar turning = speed_rpm * (std::numbers::pi / 30.0);
  return still_n - jaw_moment_kgm * turning * turning;
}

// Grip a still chuck needs: Ssp (Sz F + Fc), F what the cut asks of the jaws, Fc what the speed takes.
// Source: kChuckGrip.
template <class Scalar>
[[nodiscard]] Scalar still_grip_needed_n(const Scalar& cut_n, const Scalar& lost_n, const Scalar& cut_margin,
                                         const Scalar& clamp_margin) {
  return clamp_margin * (cut_margin * cut_n + lost_n);
}

// The speed at which the margins are used up: (30/pi) sqrt((Fsp0/Ssp - Sz F)/sum(m rs)); what is under the
// root must not be negative. Source: kChuckGrip (17,723 N, 3000 N, 2.668 kg m, both margins 1.5: 500 rpm; the
// manual prints 1495, which its own formula does not give).
template <class Scalar>
[[nodiscard]] Scalar speed_of_grip_rpm(const Scalar& still_n, const Scalar& cut_n,
                                       const Scalar& jaw_moment_kgm, const Scalar& cut_margin,
                                       const Scalar& clamp_margin) {
  using std::sqrt;
  return 30.0 / std::numbers::pi * sqrt((still_n / clamp_margin - cut_margin * cut_n) / jaw_moment_kgm);
}

// Torque that friction holds, the grip being that of all jaws together: mu Fsp D/2. Source: kChuckGrip.
template <class Scalar>
[[nodiscard]] Scalar torque_held_nmm(const Scalar& friction, const Scalar& grip_n,
                                     const Scalar& diameter_mm) {
  return friction * grip_n * diameter_mm / 2.0;
}

struct ChuckMargin {
  std::string_view held;  // "axial seat or tailstock, all influences known"
  double new_chuck = 0.0;
  double older_chuck = 0.0;  // kept in order
  Source source;
};
[[nodiscard]] std::span<const ChuckMargin> chuck_margins();

// Speeds usually engraved on scroll chucks by size. From memory: the engraved figure rules.
struct ChuckSpeed {
  quantity::Diameter chuck;
  double iron_rpm = 0.0;   // grey-iron body
  double steel_rpm = 0.0;  // steel body
  Source source;
};
[[nodiscard]] std::span<const ChuckSpeed> chuck_speeds();

// The row of the next larger chuck, which is the slower. Fails with kNotTabled over the largest.
[[nodiscard]] base::Result<ChuckSpeed> chuck_speed(quantity::Diameter chuck);

}  // namespace sparewright::handbook
