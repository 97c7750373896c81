// ISO 3: every preferred number is its place in the geometric series, rounded; the standard says how far
// (from memory: from -1.01 % at 1.32 to +1.26 % at 1.70).
#include "core/handbook/preferred_numbers.hpp"

#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

namespace sparewright::handbook {
namespace {

double off_percent(RenardSeries series, std::size_t index) {
  const double exact = std::pow(10.0, static_cast<double>(index) / static_cast<int>(series));
  return 100.0 * (preferred_numbers(series)[index] / exact - 1.0);
}

TEST(RememberedPreferredNumbers, AllFollowAndTheWorstAreTheStatedOnes) {
  double least = 0.0;
  double most = 0.0;
  for (std::size_t i = 0; i < 40; ++i) {
    least = std::min(least, off_percent(RenardSeries::kR40, i));
    most = std::max(most, off_percent(RenardSeries::kR40, i));
  }
  EXPECT_NEAR(least, -1.01, 0.005);
  EXPECT_NEAR(most, 1.26, 0.005);
}

}  // namespace
}  // namespace sparewright::handbook
