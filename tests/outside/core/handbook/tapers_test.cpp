// Standard tapers recomputed (tapers.csv), other lengths a forum list prints, printed angles, and tapers from
// two discs.
#include "core/handbook/tapers.hpp"

#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "core/handbook/taper_formulas.hpp"
#include "published.hpp"

namespace sparewright::handbook {
namespace {

using published::Row;
using quantity::Length;
namespace unit = quantity::unit;

double degrees(double radians) {
  return radians * 180.0 / std::numbers::pi;
}

// The taper per foot printed, that of the printed ends and length (the worst lie 0.0004 in per foot apart),
// and the included angle.
class OutsideTaper : public testing::TestWithParam<Row> {};
TEST_P(OutsideTaper, EndsLengthTaperAndAngleAgree) {
  const Row& row = GetParam();
  const Taper taper = find_taper(row["source"] + " " + row["number"]).value();
  constexpr double kPrinted = 1e-9;
  EXPECT_NEAR(taper.taper_per_foot.in(unit::inch), row.number("taper_per_foot"), kPrinted);
  EXPECT_NEAR(taper.large_end->in(unit::inch), row.number("large_end"), kPrinted);
  EXPECT_NEAR(taper.small_end->in(unit::inch), row.number("small_end"), kPrinted);
  const double of_ends =
      12.0 * taper_between(row.number("large_end"), row.number("small_end"), row.number("length"));
  EXPECT_NEAR(of_ends, row.number("taper_recomputed"), 5.1e-6);
  EXPECT_NEAR(of_ends, taper.taper_per_foot.in(unit::inch), 0.0004);
  EXPECT_NEAR(taper.included_angle().in(unit::degree), row.number("included_angle"), 5.1e-5);
}
std::vector<Row> of(std::string_view family) {
  return published::rows_of("tapers.csv", family);
}
INSTANTIATE_TEST_SUITE_P(OutsideMorse, OutsideTaper, testing::ValuesIn(of("Morse")));
INSTANTIATE_TEST_SUITE_P(OutsideJacobs, OutsideTaper, testing::ValuesIn(of("Jacobs")));
INSTANTIATE_TEST_SUITE_P(OutsideBrownAndSharpe, OutsideTaper, testing::ValuesIn(of("Brown and Sharpe")));

// The printed rule: small end = large end - 0.02083 x length; the taper of all is 1/4 in per foot.
class OutsideTaperPin : public testing::TestWithParam<Row> {};
TEST_P(OutsideTaperPin, LosesAFortyEighthOfItsLength) {
  const Row& row = GetParam();
  const TaperPin pin = find_taper_pin(row["number"]).value();
  EXPECT_NEAR(pin.large_end.in(unit::inch), row.number("large_end"), 1e-9);
  const double small = pin.small_end(Length::of(1.0, unit::inch)).in(unit::inch);
  EXPECT_NEAR(small, row.number("large_end") - 0.02083, 5e-6);
  EXPECT_NEAR(degrees(2.0 * half_angle_rad(row.number("taper_per_foot") / 12.0)),
              row.number("included_angle"), 5.1e-5);
}
INSTANTIATE_TEST_SUITE_P(OutsidePins, OutsideTaperPin, testing::ValuesIn(of("taper pin")));

TEST(TaperFile, IsWhole) {
  EXPECT_EQ(of("Morse").size() + of("Jacobs").size() + of("Brown and Sharpe").size(),
            tapers().size() - 1U);  // no R8
  EXPECT_EQ(of("taper pin").size(), taper_pins().size());
}

// Brown & Sharpe in other lengths, hobby machinist forum list: the large end follows from the small end and
// the taper. The list keeps a digit more of the small end than the table.
struct OtherLength {
  std::string_view number;
  double length_in;
  double large_end_in;
};
class OutsideOtherLength : public testing::TestWithParam<OtherLength> {};
TEST_P(OutsideOtherLength, HasTheLargeEndOfTheTaper) {
  const Taper taper = find_taper("B&S " + std::string(GetParam().number)).value();
  constexpr double kSmallEndDigit = 0.00006;
  EXPECT_NEAR(taper.small_end->in(unit::inch) + taper.ratio() * GetParam().length_in, GetParam().large_end_in,
              kSmallEndDigit);
}
INSTANTIATE_TEST_SUITE_P(OutsideForum, OutsideOtherLength,
                         testing::Values(OtherLength{"4", 1.25, 0.40233}, OtherLength{"5", 1.75, 0.52315},
                                         OtherLength{"7", 3.0, 0.72537}, OtherLength{"9", 4.0, 1.06705},
                                         OtherLength{"10", 5.6875, 1.28927},
                                         OtherLength{"11", 6.75, 1.53176}));

// Morse 0 is 1.4908 deg from the centre line (littlemachineshop.com); the 7/24 taper of machine spindles
// 8.2971 deg, and not half of atan(7/24) = 8.1301 deg (forum.linuxcnc.org 43183).
TEST(OutsideTaperAngle, Morse0) {
  EXPECT_NEAR(find_taper("MT0")->included_angle().in(unit::degree) / 2.0, 1.4908, 5e-5);
}
TEST(OutsideTaperAngle, SevenTwentyFourths) {
  EXPECT_NEAR(degrees(half_angle_rad(7.0 / 24.0)), 8.2971, 5e-5);
}
// R8: 16 deg 51 min included (frets.com).
TEST(OutsideTaperAngle, R8) {
  EXPECT_NEAR(find_taper("R8")->included_angle().in(unit::degree), 16.0 + 51.0 / 60.0, 0.0005);
}

// Machinery's Handbook 31st ed., p. 701 (online.flippingbook.com/view/954192180/791).
TEST(OutsideTwoDiscs, TaperOfDiscsFiveInchesApart) {
  EXPECT_NEAR(12.0 * taper_of_two_discs(1.5, 1.0, 5.0), 1.2015, 5e-5);
}
TEST(OutsideTwoDiscs, CentresForATaperPerFoot) {
  EXPECT_NEAR(12.0 * taper_of_two_discs(1.5, 1.25, 4.002), 0.75, 5e-5);
}
TEST(OutsideTwoDiscs, CentresForAnAngle) {
  EXPECT_NEAR(degrees(2.0 * half_angle_rad(taper_of_two_discs(3.0, 1.0, 5.759))), 20.0, 5e-3);
}

}  // namespace
}  // namespace sparewright::handbook
