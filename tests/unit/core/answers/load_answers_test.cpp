// Loads of cuts, grips, polygons and dovetails: worked by hand, and what is refused.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "bench_questions.hpp"
#include "core/handbook/cutting_forces.hpp"

namespace sparewright::answers {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::StartsWith;
using tests::quick;
using tests::refusal;
using tests::row;
using Entries = std::map<std::string, std::string>;

double number(const Answer& answer, std::string_view what) {
  return row(answer, what).numbers.at(0);
}
double most(const Answer& answer, std::string_view what) {
  return row(answer, what).numbers.at(1);
}

// 1 mm by 0.25 mm is 0.25 mm2 of chip; on 40 mm the arm is 20 mm, at 300 rpm 31.416 rad/s.
TEST(QuickCutForce, IsTheSpecificForceTimesTheChip) {
  const auto answer = quick(
      "cut-force",
      {{"depth", "1 mm"}, {"feed", "0.25 mm"}, {"material", "1018"}, {"diameter", "40 mm"}, {"rpm", "300"}});
  ASSERT_TRUE(answer) << refusal(answer);
  const auto specific =
      handbook::turning_force({handbook::WorkGroup::kLowCarbonSteel, handbook::BrinellRange{126.0, 126.0}},
                              {quantity::Length::of(0.25, quantity::unit::millimetre), std::nullopt});
  ASSERT_TRUE(specific);
  const double high_n = specific->figures.high.in(quantity::unit::megapascal)*0.25;
  EXPECT_NEAR(most(*answer, "force, down on the tool"), high_n, 0.5);
  EXPECT_NEAR(most(*answer, "torque on the work"), high_n * 0.020, 0.05);
  EXPECT_GT(high_n, 300.0);
  EXPECT_LT(high_n, 1500.0);
  EXPECT_GE(most(*answer, "power at the tool"), number(*answer, "power at the tool"));
  EXPECT_THAT(refusal(quick("cut-force", {{"depth", "1 mm"}, {"feed", "0.25 mm"}, {"rpm", "300"}})),
              HasSubstr("--rpm"));
}

TEST(QuickDrillLoad, GrowsWithTheDrill) {
  const auto thrust = [](const char* drill) {
    const auto answer = quick("drill-load", {{"drill", drill}, {"feed", "0.006 in"}, {"rpm", "500"}});
    return answer ? most(*answer, "thrust") : 0.0;
  };
  EXPECT_GT(thrust("1/4 in"), 50.0);
  EXPECT_GT(thrust("1/2 in"), 1.5 * thrust("1/4 in"));
  EXPECT_THAT(refusal(quick("drill-load", {{"drill", "1/4 in"}, {"feed", "0.006 in"}, {"point", "blunt"}})),
              HasSubstr("--point"));
}

// A 6 in vise presses with 20 to 40 kN; oily steel 0.08 to 0.12, two faces: 3.2 to 9.6 kN. Never OK.
TEST(QuickGrip, SaysNoAndNeverYes) {
  Entries entries{{"holder", "6 in machine vise"},
                  {"tightened", "tightened as usual"},
                  {"pair", "ground steel on steel, oily"},
                  {"force", "10 kN"}};
  const auto answer = quick("grip", entries);
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "it holds"), 3200.0, 1e-6);
  EXPECT_NEAR(most(*answer, "it holds"), 9600.0, 1e-6);
  EXPECT_THAT(answer->says, StartsWith("NO: it slips"));
  entries["force"] = "9.5 kN";
  EXPECT_THAT(quick("grip", entries)->says, StartsWith("NOT KNOWN: it may slip"));
  entries["force"] = "1.5 kN";  // under half of the least
  EXPECT_THAT(quick("grip", entries)->says, HasSubstr("shows nothing"));
  entries["force"] = "1.7 kN";
  EXPECT_THAT(quick("grip", entries)->says, HasSubstr("may slip"));
}

// All jaws of a scroll chuck of 160 mm 19 to 28 kN, serrated jaws on machined steel 0.35: 6650 to 9800 N.
TEST(QuickGrip, OfAChuckGoesByItsJaws) {
  Entries entries{{"holder", "3-jaw scroll chuck 160 mm"}, {"jaw", "serrated"}, {"force", "11 kN"}};
  const auto answer = quick("grip", entries);
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "it holds"), 6650.0, 1e-6);
  EXPECT_NEAR(most(*answer, "it holds"), 9800.0, 1e-6);
  EXPECT_THAT(answer->says, StartsWith("NO"));
  entries["holder"] = "bench vise";
  EXPECT_THAT(refusal(quick("grip", entries)), HasSubstr("--holder"));
  entries["holder"] = "6 in machine vise";
  entries["tightened"] = "hard";
  EXPECT_THAT(refusal(quick("grip", entries)), HasSubstr("--tightened"));
}

// 3/4 across flats: 0.75 / cos 30 = 0.8660; from 0.850: 0.050 a flat; width 0.75 tan 30 = 0.4330.
TEST(QuickPolygon, IsMilledFromARound) {
  const auto answer = quick("polygon", {{"sides", "6"}, {"flats", "3/4 in"}, {"round", "0.850 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "across corners"), 0.8660, 1e-9);
  EXPECT_NEAR(number(*answer, "off the round, each flat"), 0.050, 1e-9);
  EXPECT_NEAR(number(*answer, "width of a flat, sharp corners"), 0.4330, 1e-9);
  EXPECT_EQ(row(*answer, "off the round, each flat").note, "the corners stay round");
  const auto square = quick("polygon", {{"sides", "4"}, {"corners", "20 mm"}});
  EXPECT_NEAR(number(*square, "across flats"), 14.142, 1e-9);
  EXPECT_THAT(refusal(quick("polygon", {{"sides", "6"}, {"flats", "20 mm"}, {"round", "20 mm"}})),
              HasSubstr("--round"));
  EXPECT_THAT(refusal(quick("polygon", {{"sides", "2"}, {"flats", "20 mm"}})), HasSubstr("--sides"));
}

// 60 degrees, pins of 1/2: each reaches 0.25 (1 + 1/tan 30) = 0.6830. Slide of 2: 3.3660 over, back to 2.
TEST(QuickDovetail, OverPinsAndBack) {
  const auto over = quick("dovetail", {{"pin", "1/2 in"}, {"width", "2 in"}, {"height", "3/4 in"}});
  ASSERT_TRUE(over) << refusal(over);
  EXPECT_NEAR(number(*over, "over two pins"), 3.3660, 1e-9);
  EXPECT_NEAR(number(*over, "width at its wide line"), 2.8660, 1e-9);
  const auto back = quick("dovetail", {{"pin", "1/2 in"}, {"measured", "3.3660 in"}});
  EXPECT_NEAR(number(*back, "width at its narrow line"), 2.0, 0.0001);
  const auto way = quick("dovetail", {{"pin", "1/2 in"}, {"width", "2.8660 in"}, {"side", "way"}});
  EXPECT_NEAR(number(*way, "between two pins"), 1.5, 0.0001);
  EXPECT_THAT(refusal(quick("dovetail", {{"pin", "1/2 in"}})), HasSubstr("--width"));
  EXPECT_THAT(refusal(quick("dovetail", {{"pin", "2 in"}, {"width", "2 in"}, {"side", "way"}})),
              HasSubstr("--pin"));
}

}  // namespace
}  // namespace sparewright::answers
