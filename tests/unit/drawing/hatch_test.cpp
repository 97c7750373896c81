#include "drawing/hatch.hpp"

#include <cmath>

#include <gtest/gtest.h>

namespace sparewright::drawing {
namespace {

constexpr Box kArea{10.0, 20.0, 40.0, 32.0};
constexpr Hatching kRising{Slant::kRising, 2.0};

double length(const std::vector<Segment>& lines) {
  double sum = 0.0;
  for (const Segment& s : lines)
    sum += distance(s.from, s.to);
  return sum;
}

TEST(Hatch, RunsAt45DegreesTheWayItIsAsked) {
  for (const Segment& s : hatch(kArea, kRising, {})) {
    EXPECT_NEAR(s.to.y_mm - s.from.y_mm, -(s.to.x_mm - s.from.x_mm), 1e-9);
  }
  for (const Segment& s : hatch(kArea, {Slant::kFalling, 2.0}, {})) {
    EXPECT_NEAR(s.to.y_mm - s.from.y_mm, s.to.x_mm - s.from.x_mm, 1e-9);
  }
}

// Lines that stand 2 mm apart have half a mm of length for each square mm, less what is too short at the corners.
TEST(Hatch, FillsTheAreaEvenly) {
  const double expected = kArea.width() * kArea.height() / 2.0;
  EXPECT_NEAR(length(hatch(kArea, kRising, {})), expected, 0.03 * expected);
}

TEST(Hatch, StaysWithinAndLeavesOut) {
  const Box words{15.0, 23.0, 25.0, 27.0};
  const Disc hole{{33.0, 26.0}, 4.0};
  const auto lines = hatch(kArea, kRising, {words}, {hole});
  ASSERT_GT(lines.size(), 10U);
  for (const Segment& s : lines) {
    EXPECT_TRUE(holds(kArea, {s.from.x_mm, s.to.y_mm, s.to.x_mm, s.from.y_mm}));
    EXPECT_FALSE(crosses(s, words));
    EXPECT_GE(distance(s, hole.centre), hole.radius_mm - 1e-9);
    EXPECT_GE(distance(s.from, s.to), kShortestHatch_mm - 1e-9);
  }
  EXPECT_LT(length(lines), length(hatch(kArea, kRising, {})));
}

TEST(Hatch, RunsOnFromOneAreaIntoTheNext) {
  const Box left{10.0, 20.0, 25.0, 32.0};
  const Box right{25.0, 20.0, 40.0, 32.0};
  const double apart = length(hatch(left, kRising, {})) + length(hatch(right, kRising, {}));
  EXPECT_NEAR(apart, length(hatch(kArea, kRising, {})), 3.0 * kShortestHatch_mm);
}

TEST(Hatch, GivesNothingWhereEverythingIsLeftOut) {
  EXPECT_TRUE(hatch(kArea, kRising, {kArea}).empty());
}

}  // namespace
}  // namespace sparewright::drawing
