#include "core/survey/mirror_pattern.hpp"

#include <cmath>
#include <numbers>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sparewright::survey {
namespace {

using base::Code;
using testing::ElementsAre;

constexpr double kSpread = 0.05;

// A trapezium with a hole on its centre line, drawn with the line along y at x = 30, then turned.
std::vector<Point2> trapezium(double turn_rad) {
  std::vector<Point2> out;
  for (const auto& [x, y] : {Point2{0, 0}, Point2{60, 0}, Point2{15, 40}, Point2{45, 40}, Point2{30, 70}})
    out.push_back(
        {std::cos(turn_rad) * x - std::sin(turn_rad) * y, std::sin(turn_rad) * x + std::cos(turn_rad) * y});
  return out;
}

TEST(MirrorPattern, ATrapeziumHasOneCentreLine) {
  for (const double turn : {0.0, 0.3, -0.7}) {
    const auto found = mirror_pattern(trapezium(turn), kSpread);
    ASSERT_TRUE(found.has_value());
    EXPECT_THAT(found->mate, ElementsAre(1, 0, 3, 2, 4));
    EXPECT_EQ(found->lines, 1);
    // The line is square to the turned x axis: 90 degrees and the turn, over -90 up to 90.
    const double angle = std::numbers::pi / 2.0 + turn;
    EXPECT_NEAR(std::remainder(found->angle.value - angle, std::numbers::pi), 0.0, 1e-12);
    for (std::size_t i = 0; i < 5; ++i) {
      EXPECT_NEAR(found->along[i].value, 0.0, 1e-9);
      EXPECT_NEAR(found->across[i].value, 0.0, 1e-9);
    }
  }
}

TEST(MirrorPattern, ARectangleHasTwoAndASquareFour) {
  EXPECT_EQ(mirror_pattern(std::vector<Point2>{{0, 0}, {60, 0}, {60, 40}, {0, 40}}, kSpread)->lines, 2);
  const auto square = mirror_pattern(std::vector<Point2>{{0, 0}, {60, 0}, {60, 60}, {0, 60}}, kSpread);
  EXPECT_EQ(square->lines, 4);
  EXPECT_NEAR(square->angle.value, 0.0, 1e-12);  // the one nearest to x
}

TEST(MirrorPattern, AHoleThatIsOffIsHalfOfThatOffItsImage) {
  auto holes = trapezium(0.0);
  holes[3].y += 0.08;  // along the line, which turns a little with it
  const auto found = mirror_pattern(holes, kSpread);
  ASSERT_TRUE(found.has_value());
  EXPECT_NEAR(std::abs(found->along[3].value), 0.04, 0.01);
  EXPECT_NEAR(found->along[2].value, -found->along[3].value, 1e-12);
  // Nothing mirrors them where the hole is nowhere near its place.
  holes[3].y += 5.0;
  EXPECT_EQ(mirror_pattern(holes, kSpread).error().code, Code::kReadingsDisagree);
  EXPECT_EQ(mirror_pattern(std::vector<Point2>{{0, 0}, {1, 1}}, kSpread).error().code, Code::kReadingsTooFew);
}

// Slopes against moving one middle by a little.
TEST(MirrorPattern, NumbersFollowTheMiddles) {
  const auto holes = trapezium(0.4);
  const auto before = mirror_pattern(holes, kSpread);
  ASSERT_TRUE(before.has_value());
  const double by = 1e-5;
  for (std::size_t c = 0; c < 2 * holes.size(); ++c) {
    auto moved = holes;
    (c % 2 == 0 ? moved[c / 2].x : moved[c / 2].y) += by;
    const auto after = mirror_pattern(moved, kSpread);
    ASSERT_TRUE(after.has_value());
    EXPECT_NEAR((after->angle.value - before->angle.value) / by, before->angle.slopes[c], 1e-5);
    EXPECT_NEAR((after->x.value - before->x.value) / by, before->x.slopes[c], 1e-5);
    for (std::size_t i = 0; i < holes.size(); ++i) {
      EXPECT_NEAR((after->along[i].value - before->along[i].value) / by, before->along[i].slopes[c], 1e-4);
      EXPECT_NEAR((after->across[i].value - before->across[i].value) / by, before->across[i].slopes[c], 1e-4);
    }
  }
}

}  // namespace
}  // namespace sparewright::survey
