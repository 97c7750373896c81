// Chips, cutting force and power as formulas, generic in their scalar.
//
// Lengths in mm, stresses in N/mm2, forces in N, powers in W with speeds in mm/s and rates in mm3/s, unless
// named otherwise. kc1.1 specific cutting force at a chip of 1 mm by 1 mm, mc its exponent (Kienzle).
#pragma once

#include <cmath>
#include <numbers>

#include "core/handbook/source.hpp"

namespace sparewright::handbook {

inline constexpr Source kKienzle{
    "Kienzle: kc = kc1.1 h^-mc, force kc b h, h = f sin(kappa), b = ap / sin(kappa)", "", Basis::kFromMemory};
inline constexpr Source kMilledChip{
    "mean chip thickness 2 ae fz / (D phi), cos phi = 1 - 2 ae / D: insert makers' catalogues", "",
    Basis::kPublished};
inline constexpr Source kDrillingForces{"drilling thrust and torque, Machinery's Handbook 31st ed., p. 1152",
                                        "https://online.flippingbook.com/view/954192180/1303",
                                        Basis::kPublished};
inline constexpr Source kKienzleDrill{
    "torque of a drill by Kienzle, kc D^2 f / 8, h = f / 2 sin(point angle / 2)", "", Basis::kFromMemory};

// Source: kKienzle.
template <class Scalar>
[[nodiscard]] Scalar kienzle_pressure(const Scalar& kc11, const Scalar& exponent,
                                      const Scalar& thickness_mm) {
  using std::pow;
  return kc11 * pow(thickness_mm, -exponent);
}

// Thickness of a turned chip: feed per turn times the sine of the setting angle (edge to feed).
template <class Scalar>
[[nodiscard]] Scalar turned_chip_mm(const Scalar& feed_mm, const Scalar& setting_rad) {
  using std::sin;
  return feed_mm * sin(setting_rad);
}

// Mean thickness of a milled chip: width of cut ae, cutter D, feed per tooth; 0 < ae <= D. Full slot: 2 fz /
// pi.
// Source: kMilledChip.
template <class Scalar>
[[nodiscard]] Scalar milled_chip_mm(const Scalar& width_mm, const Scalar& cutter_mm, const Scalar& feed_mm) {
  using std::acos;
  return 2.0 * width_mm * feed_mm / (cutter_mm * acos(1.0 - 2.0 * width_mm / cutter_mm));
}

// Metal removed per time, in the units the speeds are given in.
template <class Scalar>
[[nodiscard]] Scalar turning_rate(const Scalar& depth, const Scalar& feed_per_turn, const Scalar& speed) {
  return depth * feed_per_turn * speed;
}
template <class Scalar>
[[nodiscard]] Scalar milling_rate(const Scalar& depth, const Scalar& width, const Scalar& table_feed) {
  return depth * width * table_feed;
}
template <class Scalar>
[[nodiscard]] Scalar drilling_rate(const Scalar& drill, const Scalar& feed_rate) {
  return std::numbers::pi / 4.0 * drill * drill * feed_rate;
}

// Drilling by the general machinery handbook, inch units: Kd work material factor; A, B, J of the chisel
// edge; W wear (1 sharp, 1.3 worn); drill D and feed f per turn in inches. Thrust in lbf: 2 Kd f^0.8 D^0.8 B
// W + Kd D^2 J W. Torque in inch lbf: Kd f^0.8 D^1.8 A W. Source: kDrillingForces.
template <class Scalar>
[[nodiscard]] Scalar drill_thrust_lbf(const Scalar& material_factor, const Scalar& feed_in,
                                      const Scalar& drill_in, const Scalar& b, const Scalar& j,
                                      const Scalar& wear) {
  using std::pow;
  return material_factor * wear *
         (2.0 * pow(feed_in, 0.8) * pow(drill_in, 0.8) * b + drill_in * drill_in * j);
}
template <class Scalar>
[[nodiscard]] Scalar drill_torque_inch_lbf(const Scalar& material_factor, const Scalar& feed_in,
                                           const Scalar& drill_in, const Scalar& a, const Scalar& wear) {
  using std::pow;
  return material_factor * wear * pow(feed_in, 0.8) * pow(drill_in, 1.8) * a;
}

// Torque of a drill in N mm from the specific cutting force at the chip of each lip. Source: kKienzleDrill.
template <class Scalar>
[[nodiscard]] Scalar drill_torque_nmm(const Scalar& pressure, const Scalar& drill_mm, const Scalar& feed_mm) {
  return pressure * drill_mm * drill_mm * feed_mm / 8.0;
}

}  // namespace sparewright::handbook
