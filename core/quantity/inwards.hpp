// Limits printed with fewer places than they have, never wider than they are.
#pragma once

#include <cmath>

namespace sparewright::quantity {

// A value within a millionth of a last place of a printed one is that one.
inline constexpr double kSamePlace = 1e-6;

// For a lower limit: up to the next multiple of 10^-places.
[[nodiscard]] inline double rounded_up(double value, int places) {
  const double scale = std::pow(10.0, places);
  return std::ceil(value * scale - kSamePlace) / scale;
}

// For an upper limit: down to it.
[[nodiscard]] inline double rounded_down(double value, int places) {
  const double scale = std::pow(10.0, places);
  return std::floor(value * scale + kSamePlace) / scale;
}

}  // namespace sparewright::quantity
