#include "core/shop/collar.hpp"

#include <gtest/gtest.h>

namespace sparewright::shop {
namespace {

using quantity::Length;
namespace unit = quantity::unit;

// 0.200 in a turn, 200 divisions, numbers rising clockwise.
Collar mill_collar(WorkMoves clockwise_moves_work) {
  Collar c;
  c.per_turn = Length::of(0.200, unit::inch);
  c.divisions = 200;
  c.numbers_rise = Turning::kClockwise;
  c.clockwise_moves_work = clockwise_moves_work;
  c.slack = Length::of(0.014, unit::inch);
  c.repeats = c.division();
  return c;
}

Length inches(double count) {
  return Length::of(count, unit::inch);
}

TEST(Collar, WorkThatGoesLeftPutsTheToolFurtherRight) {
  EXPECT_EQ(increases_coordinate(mill_collar(WorkMoves::kLeft)), Turning::kClockwise);
  EXPECT_EQ(increases_coordinate(mill_collar(WorkMoves::kRight)), Turning::kCounterclockwise);
  EXPECT_EQ(increases_coordinate(mill_collar(WorkMoves::kTowards)), Turning::kClockwise);
  EXPECT_EQ(increases_coordinate(mill_collar(WorkMoves::kAway)), Turning::kCounterclockwise);
}

TEST(Collar, WorkThatGoesUpMakesTheCutDeeper) {
  EXPECT_EQ(deepens(mill_collar(WorkMoves::kUp)), Turning::kClockwise);
  EXPECT_EQ(deepens(mill_collar(WorkMoves::kDown)), Turning::kCounterclockwise);
}

TEST(Collar, WholeTurnsThenTheDivision) {
  const auto reading = collar_reading(mill_collar(WorkMoves::kLeft), inches(1.062), Turning::kClockwise);
  EXPECT_EQ(reading.turns, 5);
  EXPECT_DOUBLE_EQ(reading.division, 62.0);
  EXPECT_EQ(printed(reading), "5t + 62");
  EXPECT_EQ(said(reading), "5 turns, to 62");
  EXPECT_EQ(reading.finish, Turning::kClockwise);
  EXPECT_NEAR(reading.rounding.in(unit::inch), 0.0, 1e-12);
}

TEST(Collar, LessThanATurnIsTheDivisionAlone) {
  const auto reading = collar_reading(mill_collar(WorkMoves::kLeft), inches(0.062), Turning::kClockwise);
  EXPECT_EQ(printed(reading), "62");
  EXPECT_EQ(said(reading), "to 62");
}

TEST(Collar, AWholeTurnEndsAtZero) {
  EXPECT_EQ(printed(collar_reading(mill_collar(WorkMoves::kLeft), inches(0.400), Turning::kClockwise)),
            "2t + 0");
}

TEST(Collar, BehindTheZeroGoesBackPastItAndComesUp) {
  // 0.300 back: two turns back is 0.400, then up to 100 divisions.
  const auto reading = collar_reading(mill_collar(WorkMoves::kLeft), inches(-0.300), Turning::kClockwise);
  EXPECT_EQ(reading.turns, -2);
  EXPECT_DOUBLE_EQ(reading.division, 100.0);
  EXPECT_EQ(printed(reading), "-2t + 100");
  EXPECT_EQ(said(reading), "2 turns back, to 100");
  EXPECT_NEAR(reading.lands_at.in(unit::inch), -0.300, 1e-12);
}

TEST(Collar, NumbersThatFallOnTheWayShowWhatIsLeftOfTheTurn) {
  // Numbers rise clockwise; going counterclockwise they fall: 0.062 on shows 200 - 62.
  const auto reading =
      collar_reading(mill_collar(WorkMoves::kAway), inches(1.062), Turning::kCounterclockwise);
  EXPECT_EQ(printed(reading), "5t + 138");
  EXPECT_EQ(reading.finish, Turning::kCounterclockwise);
  EXPECT_NEAR(reading.lands_at.in(unit::inch), 1.062, 1e-12);
  EXPECT_EQ(printed(collar_reading(mill_collar(WorkMoves::kAway), inches(0.200), Turning::kCounterclockwise)),
            "1t + 0");
}

TEST(Collar, RoundsToTheNearestDivisionAndSaysWhatItCosts) {
  const auto reading = collar_reading(mill_collar(WorkMoves::kLeft), inches(1.0624), Turning::kClockwise);
  EXPECT_EQ(printed(reading), "5t + 62");
  EXPECT_NEAR(reading.rounding.in(unit::inch), -0.0004, 1e-12);
  const auto half = collar_reading(mill_collar(WorkMoves::kLeft), inches(1.0625), Turning::kClockwise, 0.5);
  EXPECT_EQ(printed(half), "5t + 62.5");
  EXPECT_NEAR(half.rounding.in(unit::inch), 0.0, 1e-12);
}

TEST(Collar, AHalfDivisionIsRoundedAwayFromZeroInInchesToo) {
  EXPECT_EQ(printed(collar_reading(mill_collar(WorkMoves::kLeft), inches(0.0625), Turning::kClockwise)),
            "63");
}

TEST(Collar, AMetricPlaceOnAnInchCollarCostsLessThanHalfADivision) {
  const auto reading =
      collar_reading(mill_collar(WorkMoves::kLeft), Length::of(30.0, unit::millimetre), Turning::kClockwise);
  EXPECT_EQ(printed(reading), "5t + 181");  // 1.18110 in
  EXPECT_NEAR(reading.rounding.in(unit::inch), 1.181 - 30.0 / 25.4, 1e-12);
}

}  // namespace
}  // namespace sparewright::shop
