// Friction that holds work: coefficients in print, with their ranges, and what they can decide. A calculation
// of friction may say that work slips; it can never say that it holds, so there is no such answer here.
#pragma once

#include <cmath>
#include <numbers>
#include <span>
#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/handbook/work.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

struct FrictionRange {
  double low = 0.0;
  double high = 0.0;
  Source source;
};

// Chuck jaws on the surface they grip: smooth means finish machined or ground, rough not machined.
enum class JawFace { kSmoothJaw, kDiamondSerratedJaw, kSerratedJaw };
enum class GrippedSurface { kSmooth, kMachined, kRough };

// For steel as the norm prints it; aluminium, brass and grey iron by its factors 0.95, 0.90 and 0.80. Fails
// with kNotTabled for other work.
[[nodiscard]] base::Result<FrictionRange> jaw_friction(JawFace face, GrippedSurface surface, WorkGroup work);

// Vise jaws and clamps, for each face of contact.
struct ClampFriction {
  std::string_view pair;  // "ground steel on steel, oily"
  double low = 0.0;
  double high = 0.0;
  Source source;
};
[[nodiscard]] std::span<const ClampFriction> clamp_frictions();
[[nodiscard]] base::Result<FrictionRange> clamp_friction(std::string_view pair);  // or kNameUnknown

// What vises and chucks press with: usual figures, the spread of two between makes.
struct ClampingForce {
  std::string_view holder;     // "6 in machine vise"
  std::string_view tightened;  // "handle 80 N m"
  quantity::Force low;
  quantity::Force high;
  Source source;
};
[[nodiscard]] std::span<const ClampingForce> clamping_forces();

// There is no answer that work holds.
enum class FrictionAnswer {
  kSlips,     // even the highest friction and force do not hold what is needed
  kMaySlip,   // the lowest do not hold it with the margin: take another hold, or prove it by a test cut
  kNotShown,  // the calculation has nothing against it, which shows nothing
};

// The least margin a chuck's norm asks for, with everything known and the work against a stop; overhung work
// asks for 4 (chuck_margins in chuck_grip.hpp).
inline constexpr double kLeastGripMargin = 2.0;

struct FrictionHold {
  quantity::Force low;   // held at the lowest coefficient and force
  quantity::Force high;  // and at the highest
  FrictionAnswer answer = FrictionAnswer::kNotShown;
};

// press_low and press_high: the force on each face; faces: how many rub (2 in a vise). Fails with
// kSizeNotPositive for forces or faces that are not more than zero, and with kOutsideDomain for a margin
// under 1.
[[nodiscard]] base::Result<FrictionHold> friction_hold(quantity::Force press_low, quantity::Force press_high,
                                                       int faces, const FrictionRange& friction,
                                                       quantity::Force needed,
                                                       double margin = kLeastGripMargin);

// Torque that a split hub or strap clamp holds on a shaft by the tension of its screws. Books do not agree how
// pressure spreads: a rigid hub as mu F D, by some mu F D/2, a flexible strap as (pi/2) mu F D (textbook
// forms, from memory). The range is from the least of them at the lowest friction to the greatest at the
// highest; all screws on one side of the shaft together press with `tension`.
struct ClampTorque {
  quantity::Torque low;
  quantity::Torque high;
};
[[nodiscard]] ClampTorque clamp_torque(const FrictionRange& friction, quantity::Force tension,
                                       quantity::Diameter shaft);

// Force of a screw turned with a torque: F = T/(r tan(phi + lead angle)), phi = atan(mu), r the mean radius of
// the thread. Friction of its collar is left out, so a vise presses less. Source: Engineering Mechanics:
// Statics (textbook), problem 8-76: 8.75 N m, r 6 mm, lead 8 mm, mu 0.27: 2.85 kN.
template <class Scalar>
[[nodiscard]] Scalar clamp_screw_force_n(const Scalar& torque_nmm, const Scalar& mean_radius_mm,
                                         const Scalar& lead_mm, const Scalar& friction) {
  using std::atan;
  using std::tan;
  const Scalar lead_angle_rad = atan(lead_mm / (2.0 * std::numbers::pi * mean_radius_mm));
  return torque_nmm / (mean_radius_mm * tan(atan(friction) + lead_angle_rad));
}

}  // namespace sparewright::handbook
