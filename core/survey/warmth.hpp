// Temperature: what work and instrument expand by against 20 degC, where sizes hold.
#pragma once

#include <string>

#include "core/quantity/typed.hpp"

namespace sparewright::survey {

// ISO 1: sizes hold at 20 degC (from memory).
inline constexpr double kReferenceKelvin = 293.15;

// A temperature, and how far off it may be.
struct Warmth {
  quantity::Typed at;      // a temperature
  quantity::Typed within;  // a difference of temperatures, either way
};

// What a material expands by.
struct Expansion {
  std::string material;            // "steel 1018"; readings of one name share what is not known of it
  double per_kelvin = 0.0;         // 11.5e-6 of a steel
  double within_per_kelvin = 0.0;  // how far off that may be, either way
  std::string source;
};

// The size at 20 degC of what an instrument shows `shown`, with the expansion and the temperature less 20 degC of each.
//   size (1 + work theta_work) = shown (1 + instrument theta_instrument)
// Source: JCGM 100:2008, H.1.2 (equation H.1, the comparison of two lengths).
template <typename Scalar>
[[nodiscard]] Scalar at_twenty(const Scalar& shown, const Scalar& instrument, const Scalar& theta_instrument,
                               const Scalar& work, const Scalar& theta_work) {
  return shown * (1.0 + instrument * theta_instrument) / (1.0 + work * theta_work);
}

}  // namespace sparewright::survey
