// Preferred numbers: the Renard series R5, R10, R20 and R40.
#pragma once

#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"

namespace sparewright::handbook {

enum class RenardSeries { kR5 = 5, kR10 = 10, kR20 = 20, kR40 = 40 };

inline constexpr Source kPreferredNumbers{"ISO 3, preferred numbers, basic series", "", Basis::kFromMemory};

// The numbers of one decade as the standard rounds them: 1 <= number < 10, ascending.
[[nodiscard]] std::vector<double> preferred_numbers(RenardSeries series);

// The preferred numbers on either side of a number, in any decade; equal where it is one (to a part in 10^9).
// Guarantees: at_or_below <= value <= at_or_above. Fails with kSizeNotPositive, and with kNumberTooLarge
// outside 10^-9 to 10^9.
struct PreferredAround {
  double at_or_below = 0.0;
  double at_or_above = 0.0;
};
[[nodiscard]] base::Result<PreferredAround> preferred_around(double value, RenardSeries series);

}  // namespace sparewright::handbook
