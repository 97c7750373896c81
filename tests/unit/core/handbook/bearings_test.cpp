#include "core/handbook/bearings.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/bearing_seats.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using testing::HasSubstr;
namespace unit = quantity::unit;

Diameter mm(double size) {
  return Diameter::of(size, unit::millimetre);
}

TEST(Bearings, SuffixesAreReadPast) {
  for (const char* text : {"6204", " 6204 ", "6204-2RS", "62042RS", "6204 C3", "6204ZZ", "6204 2z"}) {
    const auto found = find_bearing(text);
    ASSERT_TRUE(found) << text;
    EXPECT_EQ(found->bearing.number, "6204") << text;
  }
  EXPECT_EQ(find_bearing("6204")->assumed, "");
  EXPECT_EQ(find_bearing("6204-2RS")->assumed, "'-2RS' behind the number changes no fit");
  EXPECT_EQ(find_bearing("608zz")->bearing.number, "608");
}

TEST(Bearings, OthersAreNotGuessed) {
  for (const char* text : {"", "62", "62040", "6211", "abc", "6204\n7", "16004", "6204 -"})
    EXPECT_FALSE(find_bearing(text)) << text;
  EXPECT_THAT(base::report(find_bearing("63O8").error()), HasSubstr("did you mean '6308'?"));
}

TEST(Bearings, BoreCodes) {
  EXPECT_NEAR(bore_of_code(0)->in(unit::millimetre), 10, 1e-9);
  EXPECT_NEAR(bore_of_code(3)->in(unit::millimetre), 17, 1e-9);
  EXPECT_NEAR(bore_of_code(96)->in(unit::millimetre), 480, 1e-9);
  EXPECT_FALSE(bore_of_code(-1));
  EXPECT_FALSE(bore_of_code(97));
}

TEST(BearingSeats, ATurningRingSitsTighterThanAStandingOne) {
  const auto turning =
      bearing_seats(FitSide::kShaft, mm(20), RingTurning::kInner, BearingLoad::kNormal).value();
  const auto standing =
      bearing_seats(FitSide::kShaft, mm(20), RingTurning::kOuter, BearingLoad::kNormal).value();
  for (const BearingSeat& tight : turning) {
    for (const BearingSeat& loose : standing)
      EXPECT_LT(tight.most_clearance, loose.most_clearance);
  }
}

TEST(BearingSeats, SeatAndRingTogether) {
  // 6204 on k5: shaft +2 to +11, bore 0 to -10: 2 to 21 um tight.
  const auto seats =
      bearing_seats(FitSide::kShaft, mm(20), RingTurning::kInner, BearingLoad::kNormal).value();
  ASSERT_EQ(to_string(seats.front().zone), "k5");
  EXPECT_NEAR(seats.front().least_clearance.in(unit::micrometre), -21, 1e-6);
  EXPECT_NEAR(seats.front().most_clearance.in(unit::micrometre), -2, 1e-6);
  // in H6 (0 to +19), outside 47 (0 to -11): 0 to 27 um loose
  const auto housing =
      bearing_seats(FitSide::kHole, mm(47), RingTurning::kInner, BearingLoad::kNormal).value();
  ASSERT_EQ(to_string(housing.front().zone), "H6");
  EXPECT_NEAR(housing.front().least_clearance.in(unit::micrometre), 0, 1e-6);
  EXPECT_NEAR(housing.front().most_clearance.in(unit::micrometre), 16 + 11, 1e-6);
}

TEST(BearingSeats, EveryCaseIsAnsweredOrSaysWhatIs) {
  int answered = 0;
  for (const FitSide side : {FitSide::kHole, FitSide::kShaft}) {
    for (const RingTurning turning : {RingTurning::kInner, RingTurning::kOuter, RingTurning::kEither}) {
      for (const BearingLoad load : {BearingLoad::kLight, BearingLoad::kNormal, BearingLoad::kHeavy}) {
        for (const double size : {3.0, 18.0, 30.0, 50.0, 100.0, 110.0, 180.0}) {
          const auto seats = bearing_seats(side, mm(size), turning, load);
          answered += seats ? 1 : 0;
          if (!seats) {
            EXPECT_EQ(seats.error().code, base::Code::kNotTabled);
          }
        }
      }
    }
  }
  EXPECT_GT(answered, 90);
  EXPECT_FALSE(bearing_seats(FitSide::kShaft, mm(300), RingTurning::kInner, BearingLoad::kLight));
  EXPECT_FALSE(bearing_seats(FitSide::kShaft, mm(-3), RingTurning::kOuter, BearingLoad::kLight));
}

}  // namespace
}  // namespace sparewright::handbook
