// What an indicator shows of lobed work turned in a vee block, as a formula generic in its scalar.
//
// The work has n equal lobes round it, each standing out e and back e from a circle; the indicator stands in the middle of
// the vee, pointing at its bottom. Small e. Source: geometry of the two contacts.
#pragma once

#include <cmath>
#include <numbers>

#include "core/handbook/source.hpp"

namespace sparewright::handbook {

inline constexpr Source kVeeBlock{"two contacts in a vee and an indicator in its middle, geometry", "",
                                  Basis::kDerived};

// The swing of the indicator in one turn over 2 e, the out of round on the radius from lowest to highest:
// |1 + (-1)^n cos(n g) / cos(g)|, g = 90 degrees less half the vee. Three lobes: 2 in a vee of 90 degrees, 3 in one of 60;
// two (oval): 1 in 90. Zero where that vee shows nothing (seven lobes in 90 degrees: 0). Vee from 1 to 179 degrees.
template <class Scalar>
[[nodiscard]] Scalar vee_swing_factor(int lobes, const Scalar& vee_rad) {
  using std::abs;
  using std::cos;
  const Scalar to_contact = (std::numbers::pi - vee_rad) / 2.0;
  const double sign = lobes % 2 == 0 ? 1.0 : -1.0;
  return abs(1.0 + sign * cos(static_cast<double>(lobes) * to_contact) / cos(to_contact));
}

}  // namespace sparewright::handbook
