#include "core/survey/draws.hpp"

#include <cmath>

#include <gtest/gtest.h>

namespace sparewright {
namespace {

using survey::Distribution;

struct Shape {
  Distribution distribution;
  double degrees_of_freedom;
  double deviation;
  double fourth;  // mean of the fourth power over the square of the variance
};

class ShapesOfDraws : public testing::TestWithParam<Shape> {};

// Moments as the textbooks have them: normal 3, rectangle 9/5, triangle 12/5, arcsine 3/2; Student's t of v degrees has the
// variance v/(v - 2) and, at v = 12, the fourth moment 3 + 6/(v - 4) = 3.75.
TEST_P(ShapesOfDraws, HaveTheirMoments) {
  constexpr std::size_t kDraws = 400'000;
  survey::Draws draws(3);
  std::vector<double> out(kDraws);
  draws.fill(out, GetParam().distribution, GetParam().degrees_of_freedom);
  double mean = 0.0;
  double square = 0.0;
  double fourth = 0.0;
  for (const double one : out) {
    mean += one / kDraws;
    square += one * one / kDraws;
    fourth += std::pow(one, 4) / kDraws;
  }
  EXPECT_NEAR(mean, 0.0, 5.0 * GetParam().deviation / std::sqrt(double{kDraws}));
  EXPECT_NEAR(std::sqrt(square), GetParam().deviation, 0.008);
  EXPECT_NEAR(fourth / (square * square), GetParam().fourth, 0.12);
}

INSTANTIATE_TEST_SUITE_P(All, ShapesOfDraws,
                         testing::Values(Shape{Distribution::kNormal, 0, 1.0, 3.0},
                                         Shape{Distribution::kRectangular, 0, 1.0, 1.8},
                                         Shape{Distribution::kTriangular, 0, 1.0, 2.4},
                                         Shape{Distribution::kArcsine, 0, 1.0, 1.5},
                                         Shape{Distribution::kStudent, 12, std::sqrt(1.2), 3.75}));

// 1 to 100: 95 of them lie between the third and the ninety-eighth, with as many left out at either end as can be.
TEST(SpreadOfDraws, CountsAsTheSupplementDoes) {
  std::vector<double> draws;
  for (int i = 100; i >= 1; --i)
    draws.push_back(i);
  const survey::Spread spread = survey::spread_of(draws, 0.95);
  EXPECT_DOUBLE_EQ(spread.mean, 50.5);
  EXPECT_DOUBLE_EQ(spread.deviation, std::sqrt(100.0 * 101.0 / 12.0));
  EXPECT_DOUBLE_EQ(spread.low, 3.0);
  EXPECT_DOUBLE_EQ(spread.high, 98.0);
}

}  // namespace
}  // namespace sparewright
