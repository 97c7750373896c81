// What the sizes of a part were made to by going through every combination of them: the slow twin of together.hpp, with the
// same sizes to choose from.
#pragma once

#include <vector>

#include "core/intent/together.hpp"

namespace sparewright::tests {

struct Weighed {
  double size_mm = 0.0;
  double chance = 0.0;
};
// Of each size of the part, the likeliest first. Combinations less likely than kPassedOver of the likeliest are passed over.
// spreads: of each size; sizes say which go together. At most two go together.
[[nodiscard]] std::vector<std::vector<Weighed>> by_exhaustion(const std::vector<intent::Sized>& sizes,
                                                              const std::vector<intent::Spread>& spreads,
                                                              double chance_of_inch);
[[nodiscard]] std::vector<intent::Spread> spreads_of(const std::vector<intent::Sized>& sizes);

inline constexpr double kPassedOver = 1e-6;

}  // namespace sparewright::tests
