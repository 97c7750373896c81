// Facts of the trade, common practice; no source of their own.
#include <gtest/gtest.h>

#include "core/shop/collar.hpp"

namespace sparewright::shop {
namespace {

using quantity::Length;
namespace unit = quantity::unit;

Collar tenth_a_turn() {
  Collar c;
  c.per_turn = Length::of(0.100, unit::inch);
  c.divisions = 100;
  return c;
}

// 3.000 down to a height 0.316 less is 0.158 off each of two sides.
TEST(OutsideCollar, TwoSidesShareWhatComesOff) {
  const Length off = Length::of(3.000, unit::inch) - Length::of(3.000 - 0.316, unit::inch);
  EXPECT_NEAR((off / 2.0).in(unit::inch), 0.158, 1e-12);
}

// In cuts of 0.100 and 0.058 that is one full turn ...
TEST(OutsideCollar, ACutOfATenthIsOneFullTurn) {
  EXPECT_EQ(printed(collar_reading(tenth_a_turn(), Length::of(0.100, unit::inch), Turning::kClockwise)),
            "1t + 0");
}

// ... then 58 divisions, of a collar that moves 0.100 a turn.
TEST(OutsideCollar, TheSecondCutGoesOnToFiftyEight) {
  EXPECT_EQ(printed(collar_reading(tenth_a_turn(), Length::of(0.158, unit::inch), Turning::kClockwise)),
            "1t + 58");
  EXPECT_EQ(said(collar_reading(tenth_a_turn(), Length::of(0.158, unit::inch), Turning::kClockwise)),
            "1 turn, to 58");
}

// A 2 mm screw with 100 divisions: 40.45 back is 20 turns and 22.5 divisions; half a turn past and up again.
// Arithmetic of the trade (worked by hand: 40.45 / 2 = 20.225).
TEST(OutsideCollar, BackOnATwoMillimetreScrew) {
  Collar c;
  c.per_turn = Length::of(2.0, unit::millimetre);
  c.divisions = 100;
  const auto reading = collar_reading(c, Length::of(-40.45, unit::millimetre), Turning::kClockwise, 0.5);
  EXPECT_EQ(reading.turns, -21);
  EXPECT_DOUBLE_EQ(reading.division,
                   77.5);  // 21 turns back, then up to 77.5 is 20 turns and 22.5 divisions back
  EXPECT_NEAR(reading.lands_at.in(unit::millimetre), -40.45, 1e-12);
}

}  // namespace
}  // namespace sparewright::shop
