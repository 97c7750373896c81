// Polygons milled on rounds: across flats and across corners, and how deep to go.
#pragma once

#include <cmath>
#include <numbers>

#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

inline constexpr Source kPolygon{"across flats = across corners x cos(180 deg / sides), geometry", "",
                                 Basis::kDerived};

// Across corners is the diameter of the circle through the corners for any number of sides, which is the round it comes
// from; across flats twice the distance from the middle to a flat. A micrometer reads both on an even number of sides
// alone; on an odd one it reads flat to corner. sides from 3.
template <class Scalar>
[[nodiscard]] Scalar across_flats_mm(const Scalar& across_corners_mm, int sides) {
  return across_corners_mm * std::cos(std::numbers::pi / sides);
}
template <class Scalar>
[[nodiscard]] Scalar across_corners_mm(const Scalar& across_flats_mm, int sides) {
  return across_flats_mm / std::cos(std::numbers::pi / sides);
}

// From a flat to the corner opposite, on an odd number of sides.
template <class Scalar>
[[nodiscard]] Scalar flat_to_corner_mm(const Scalar& across_flats_mm, int sides) {
  return (across_flats_mm + across_corners_mm(across_flats_mm, sides)) / 2.0;
}

// Width of one flat: across flats times tan(180 deg / sides).
template <class Scalar>
[[nodiscard]] Scalar flat_width_mm(const Scalar& across_flats_mm, int sides) {
  return across_flats_mm * std::tan(std::numbers::pi / sides);
}

// What is taken off a round for each flat: (D - across flats) / 2. The corners stay rounded where the round is smaller
// than across corners.
template <class Scalar>
[[nodiscard]] Scalar flat_depth_mm(const Scalar& round_mm, const Scalar& across_flats_mm) {
  return (round_mm - across_flats_mm) / 2.0;
}

}  // namespace sparewright::handbook
