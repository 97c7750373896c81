// Lame's thick cylinders, the formulas of a press fit, generic in their scalar.
//
// Notation: D diameter of the joint, Di bore of the shaft (0 where solid), Do outside of the hub, all in one
// unit; E moduli and p pressures in one unit; nu Poisson's ratio; interference on the DIAMETER, of the parts
// before assembly. Both parts are elastic, of one length, at rest, plane stress; more than about a diameter
// from an end. 0 <= Di < D < Do.
// Source: Mechanical Engineering Design (textbook), eq. 3-56 and 3-57; the stresses are Lame's (from memory
// of the same chapter).
#pragma once

#include <cmath>
#include <numbers>

#include "core/handbook/source.hpp"

namespace sparewright::handbook {

inline constexpr Source kLamePressure{
    "Lame's thick cylinders: Mechanical Engineering Design (textbook), eq. 3-56 and 3-57", "",
    Basis::kPublished};
inline constexpr Source kLameStress{
    "Lame's thick cylinders, stresses at the joint; equivalent stress of von Mises", "", Basis::kFromMemory};
inline constexpr Source kThermalExpansion{"thermal expansion, change = alpha D dT", "", Basis::kFromMemory};

// How much a hub of modulus 1 opens at its bore, per diameter and unit of pressure:
// (Do^2 + D^2) / (Do^2 - D^2) + nu.
template <class Scalar>
[[nodiscard]] Scalar hub_opening(const Scalar& joint, const Scalar& outside, const Scalar& poisson) {
  return (outside * outside + joint * joint) / (outside * outside - joint * joint) + poisson;
}

// How much a shaft of modulus 1 shrinks at its surface, per diameter and unit of pressure:
// (D^2 + Di^2) / (D^2 - Di^2) - nu.
template <class Scalar>
[[nodiscard]] Scalar shaft_shrinking(const Scalar& joint, const Scalar& bore, const Scalar& poisson) {
  return (joint * joint + bore * bore) / (joint * joint - bore * bore) - poisson;
}

// Pressure between shaft and hub (eq. 3-56): interference / (D (hub_opening / E_hub + shaft_shrinking /
// E_shaft)).
template <class Scalar>
[[nodiscard]] Scalar press_pressure(const Scalar& interference, const Scalar& joint,
                                    const Scalar& opening_per_modulus, const Scalar& shrinking_per_modulus) {
  return interference / (joint * (opening_per_modulus + shrinking_per_modulus));
}

// The same for one material (eq. 3-57): E delta (Do^2 - D^2)(D^2 - Di^2) / (2 D^3 (Do^2 - Di^2)).
template <class Scalar>
[[nodiscard]] Scalar press_pressure_of_one_material(const Scalar& interference, const Scalar& joint,
                                                    const Scalar& bore, const Scalar& outside,
                                                    const Scalar& modulus) {
  const Scalar inner = joint * joint - bore * bore;
  const Scalar outer = outside * outside - joint * joint;
  return modulus * interference * outer * inner /
         (2.0 * joint * joint * joint * (outside * outside - bore * bore));
}

// Hoop stress at the bore of the hub, tension: p (Do^2 + D^2) / (Do^2 - D^2).
template <class Scalar>
[[nodiscard]] Scalar hub_hoop_stress(const Scalar& pressure, const Scalar& joint, const Scalar& outside) {
  return pressure * (outside * outside + joint * joint) / (outside * outside - joint * joint);
}

// Equivalent stress (von Mises, plane stress) at the bore of the hub, from hoop s and radial -p:
// sqrt(s^2 + s p + p^2).
template <class Scalar>
[[nodiscard]] Scalar hub_equivalent_stress(const Scalar& hoop, const Scalar& pressure) {
  using std::sqrt;
  return sqrt(hoop * hoop + hoop * pressure + pressure * pressure);
}

// Largest equivalent stress of the shaft: p where solid; at the bore of a hollow one 2 p D^2 / (D^2 - Di^2),
// which does not become p as the bore goes to nothing: a small hole doubles it.
template <class Scalar>
[[nodiscard]] Scalar shaft_equivalent_stress(const Scalar& pressure, const Scalar& joint,
                                             const Scalar& bore) {
  if (bore <= 0.0) return pressure;
  return 2.0 * pressure * joint * joint / (joint * joint - bore * bore);
}

// How much the bore of a hollow shaft, such as a bush pressed into its hole, closes on the diameter:
// 2 p D^2 Di / (E (D^2 - Di^2)), the hoop stress there over the modulus times the bore.
template <class Scalar>
[[nodiscard]] Scalar bore_closing(const Scalar& pressure, const Scalar& joint, const Scalar& bore,
                                  const Scalar& modulus) {
  return 2.0 * pressure * joint * joint * bore / (modulus * (joint * joint - bore * bore));
}

// The most it can close, whatever its modulus and though it yields: interference D / Di, of metal that keeps its volume, none
// of it squeezed out at the ends, in a boss that does not give. Source: geometry.
template <class Scalar>
[[nodiscard]] Scalar most_bore_closing(const Scalar& interference, const Scalar& joint, const Scalar& bore) {
  return interference * joint / bore;
}

// Axial force that slides the joint: pi f D L p; the torque that turns it is that times D / 2.
template <class Scalar>
[[nodiscard]] Scalar sliding_force(const Scalar& friction, const Scalar& joint, const Scalar& length,
                                   const Scalar& pressure) {
  return std::numbers::pi * friction * joint * length * pressure;
}

// Change of temperature that changes a diameter by `change`: change / (alpha D), alpha per kelvin.
// Source: kThermalExpansion (a 2.002 cm rod cooled into a 2.000 cm hole: 83 K).
template <class Scalar>
[[nodiscard]] Scalar temperature_change_k(const Scalar& change, const Scalar& diameter,
                                          const Scalar& expansion_per_kelvin) {
  return change / (expansion_per_kelvin * diameter);
}

}  // namespace sparewright::handbook
