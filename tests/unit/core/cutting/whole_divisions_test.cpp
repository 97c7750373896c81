#include "core/cutting/whole_divisions.hpp"

#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/cutting/compound.hpp"

namespace sparewright::cutting {
namespace {

using testing::DoubleNear;
using testing::Pointwise;

constexpr double kTiny = 1e-9;
auto sizes(std::vector<double> wanted) {
  return Pointwise(DoubleNear(kTiny), wanted);
}

TEST(WholeDivisions, TwoLikeCutsAndWhatTheyLeave) {
  // 0.559 to come off; 0.04 a division: 12 of them leave 0.079, which is more than the least 0.05.
  const auto shared = whole_divisions(25.57, 25.011, {2.0, 0.24, 0.05, 0.04});
  EXPECT_THAT(shared.sizes_mm, sizes({25.33, 25.09}));
  EXPECT_TRUE(shared.two_like_last);
  EXPECT_NEAR(shared.left_mm, 0.079, kTiny);
}

TEST(WholeDivisions, RoughingBeforeInWholeDivisions) {
  // 5.05 to come off, at least 0.05 left: 125 divisions; 12 of them like cuts, 113 roughing in three: 38, 38, 37.
  const auto shared = whole_divisions(30.05, 25.0, {2.0, 0.24, 0.05, 0.04});
  EXPECT_THAT(shared.sizes_mm, sizes({30.05 - 1.52, 30.05 - 3.04, 30.05 - 4.52, 30.05 - 4.76, 30.05 - 5.0}));
  EXPECT_NEAR(shared.left_mm, 0.05, kTiny);
}

TEST(WholeDivisions, AnOddDivisionIsNoCutOfItsOwn) {
  // 13 divisions: twice six, the odd one goes into what is left.
  const auto shared = whole_divisions(10.57, 10.0, {2.0, 0.24, 0.05, 0.04});
  EXPECT_EQ(shared.sizes_mm.size(), 2U);
  EXPECT_NEAR(shared.left_mm, 0.09, kTiny);
}

TEST(WholeDivisions, TooLittleForADivisionIsLeftWhole) {
  const auto shared = whole_divisions(10.06, 10.0, {2.0, 0.24, 0.05, 0.04});
  EXPECT_TRUE(shared.sizes_mm.empty());
  EXPECT_NEAR(shared.left_mm, 0.06, kTiny);
}

TEST(Compound, TenOfItsDivisionsAreOneOfTheCrossSlide) {
  const double angle = tenth_angle_rad();
  EXPECT_NEAR(angle * 180.0 / M_PI, 5.739, 0.001);
  EXPECT_NEAR(diameter_of_slide_mm(10 * 0.02, angle), 0.04, kTiny);
  EXPECT_NEAR(along_of_slide_mm(21 * 0.02, angle), 0.42 * std::sqrt(0.99), kTiny);
}

}  // namespace
}  // namespace sparewright::cutting
