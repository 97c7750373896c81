// Out of round found in a V-block: what an indicator over the work shows for work with so many lobes.
//
// Work of radius r + a cos(n phi) is turned in a V of the included angle A, the indicator upright over the V. Its two
// contacts lie b = 90 - A/2 degrees to either side of straight down. As the work is turned its middle rises and falls by
// a cos(n b)/cos b, and the top of it goes by another a, with it or against it: the swing is |(-1)^n + cos(n b)/cos b|
// times what the work is out of round (2 a, greatest radius less least). 3 lobes at 90 degrees: 2; 5: 2; 7: 0, nothing
// to see. Source: geometry; the factors are those of ISO 4292 (from memory). One kind of lobe, evenly spaced.
#pragma once

#include <cmath>
#include <numbers>

#include "core/handbook/source.hpp"

namespace sparewright::handbook {

inline constexpr Source kVBlock{
    "swing over a V-block for so many lobes: geometry, as ISO 4292 has it (from memory)", "",
    Basis::kDerived};

// swing / out of round. lobes >= 2; included angle over 0 and under pi.
[[nodiscard]] inline double v_block_factor(int lobes, double included_rad) {
  const double contact = std::numbers::pi / 2.0 - included_rad / 2.0;
  const double against = lobes % 2 == 0 ? 1.0 : -1.0;
  return std::abs(against + std::cos(lobes * contact) / std::cos(contact));
}

}  // namespace sparewright::handbook
