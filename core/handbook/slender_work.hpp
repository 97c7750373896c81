// How far slender round work gives under the tool, as formulas generic in their scalar.
//
// Coherent units: force, length, modulus = force over length squared. The work is one bar of one diameter, elastic; chuck,
// centres and tool give nothing, so that real work gives more. Source of all: beams of one section, Mechanical Engineering
// Design (textbook), appendix of beam deflections (from memory).
#pragma once

#include <numbers>

#include "core/handbook/source.hpp"

namespace sparewright::handbook {

inline constexpr Source kBeams{
    "deflection of a bar of one section, Mechanical Engineering Design (textbook), table of beams", "",
    Basis::kFromMemory};
// A hand's worth of published advice, no page of its own: free in the chuck about 4, with a centre about 12.
inline constexpr Source kSlenderRule{"length over diameter that is turned without a rest", "",
                                     Basis::kCommonPractice};
inline constexpr double kMostDiametersFree = 4.0;
inline constexpr double kMostDiametersWithCentre = 12.0;

// Second moment of a round: pi d^4 / 64.
template <class Scalar>
[[nodiscard]] Scalar second_moment_of_round(const Scalar& diameter) {
  return std::numbers::pi / 64.0 * diameter * diameter * diameter * diameter;
}

// Free at one end, the force there: F L^3 / (3 E I).
template <class Scalar>
[[nodiscard]] Scalar bend_free(const Scalar& force, const Scalar& length, const Scalar& modulus,
                               const Scalar& second_moment) {
  return force * length * length * length / (3.0 * modulus * second_moment);
}

// Between centres, the force in the middle: F L^3 / (48 E I).
template <class Scalar>
[[nodiscard]] Scalar bend_between_centres(const Scalar& force, const Scalar& length, const Scalar& modulus,
                                          const Scalar& second_moment) {
  return force * length * length * length / (48.0 * modulus * second_moment);
}

// Chuck and centre, the force in the middle: 7 F L^3 / (768 E I). The most is a little nearer to the centre and 2 %
// more; a chuck that grips short is nearer to bend_between_centres.
template <class Scalar>
[[nodiscard]] Scalar bend_chuck_and_centre(const Scalar& force, const Scalar& length, const Scalar& modulus,
                                           const Scalar& second_moment) {
  return 7.0 * force * length * length * length / (768.0 * modulus * second_moment);
}

}  // namespace sparewright::handbook
