// Work at the machine as accounts of the trade have it: the figures of each worked by hand.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "bench_questions.hpp"

namespace sparewright::answers {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::StartsWith;
using tests::number;
using tests::quick;
using tests::refusal;
using tests::row;

// 1/2 x 16 between centres, 20 lbf: 20 x 16^3 / (48 x 30e6 x pi/1024 ... 0.00307) = 0.0185; 1 in bar a sixteenth, 0.0012.
// The handbook's steel has 29.7e6.
TEST(AccountsOfMachines, ASlenderBarChatters) {
  const auto answer = quick("bend", {{"diameter", "1/2 in"}, {"length", "16 in"}, {"force", "20 lbf"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "it gives"), 0.0185, 0.0185 * 0.012);
  EXPECT_NEAR(number(*answer, "twice as thick a bar"), 0.0012, 1e-9);
  EXPECT_NEAR(number(*answer, "length over diameter"), 32.0, 1e-9);
  EXPECT_THAT(answer->cautions, Contains(HasSubstr("Over 12 diameters")));
  // Free it gives 0.001 at 4.8 diameters: 20 x 2.4^3 / (3 x 30e6 x 0.00307).
  const auto free =
      quick("bend", {{"diameter", "1/2 in"}, {"length", "2.4 in"}, {"force", "20 lbf"}, {"held", "free"}});
  EXPECT_NEAR(number(*free, "it gives"), 0.0010, 1e-9);
  const auto limited = quick(
      "bend", {{"diameter", "1/2 in"}, {"length", "16 in"}, {"force", "20 lbf"}, {"limit", "0.0012 in"}});
  EXPECT_THAT(limited->says, StartsWith("NO"));
  EXPECT_NEAR(number(*limited, "thinnest that keeps to the limit"), 1.0, 0.01);
}

// pi x 9/32 x 1800 / 12 = 133 ft/min; steel and high-speed steel want 80 to 100: 1090 to 1360 rpm.
TEST(AccountsOfMachines, ADrillThatTurnsTooFast) {
  const auto answer = quick("surface-speed", {{"diameter", "9/32 in"}, {"rpm", "1800"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "at the diameter"), 133.0, 1e-9);
  const auto wanted = tests::handbook("speed", "1018 drilling hss", {{"diameter", "9/32 in"}});
  ASSERT_TRUE(wanted) << refusal(wanted);
  EXPECT_LT(number(*wanted, "highest in print"), 1800.0);
  EXPECT_LE(number(*wanted, "start at", "spindle"), 1090.0);
  EXPECT_GE(number(*wanted, "highest in print"), 1360.0);
}

// pi x 5.25 x 50 / 12 = 69 ft/min.
TEST(AccountsOfMachines, ASplitBearingTurnsSlowly) {
  const auto answer = quick("surface-speed", {{"diameter", "5.25 in"}, {"rpm", "50"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "at the diameter"), 69.0, 1e-9);
}

// 0.040 through 0.3125: 7.8 diameters, 13 % of the shaft; 1 deg of tilt 0.0055; 0.005 off stays 0.005.
TEST(AccountsOfMachines, ASmallCrossHole) {
  std::map<std::string, std::string> entries{{"drill", "0.040 in"},
                                             {"depth", "0.3125 in"},
                                             {"shaft", "0.3125 in"},
                                             {"off-centre", "0.005 in"},
                                             {"tilt", "1 deg"}};
  const auto answer = quick("deep-hole", entries);
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "depth over diameter"), 7.8, 1e-9);
  EXPECT_NEAR(number(*answer, "drill over the shaft"), 13.0, 1e-9);
  EXPECT_NEAR(number(*answer, "comes out further off by"), 0.0055, 1e-9);
  EXPECT_NEAR(number(*answer, "pecks of, at most"), 0.040, 1e-9);
  entries["tilt"] = "0 deg";
  EXPECT_NEAR(number(*quick("deep-hole", entries), "comes out off by, all told"), 0.005, 1e-9);
}

// 0.020 off the middle of 3/16: arcsin(0.020 / 0.09375) = 12.3 degrees.
TEST(AccountsOfMachines, ADrillStartsOnASlope) {
  const auto answer =
      quick("deep-hole",
            {{"drill", "1/16 in"}, {"depth", "3/16 in"}, {"shaft", "3/16 in"}, {"off-centre", "0.020 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "slope it starts on"), 12.3, 1e-9);
  EXPECT_THAT(answer->cautions, Contains(HasSubstr("start with an end mill")));
}

// A taper pin, 1:48: its small end is large less length / 48; 1/16 deeper opens the hole 0.0013.
TEST(AccountsOfMachines, ATaperPinInANewShaft) {
  const auto pin = tests::handbook("pin", "taper pin 4", {{"length", "1 in"}});
  ASSERT_TRUE(pin) << refusal(pin);
  EXPECT_NEAR(number(*pin, "small end"), 0.2500 - 1.0 / 48.0, 0.00005);
  const auto deeper = quick("taper", {{"taper", "1:48"}, {"over", "1/16 in"}});
  ASSERT_TRUE(deeper) << refusal(deeper);
  EXPECT_NEAR(number(*deeper, "the diameter changes over 0.0625 in (1.588 mm)"), 0.0013, 1e-9);
}

// 7/64, 1.1 in: 10 diameters; 3/16, 6 in: 32, half a diameter a peck.
TEST(AccountsOfMachines, TheDeepHoleComesBeforeTheTaper) {
  const auto first = quick("deep-hole", {{"drill", "7/64 in"}, {"depth", "1.1 in"}});
  ASSERT_TRUE(first) << refusal(first);
  EXPECT_NEAR(number(*first, "depth over diameter"), 10.1, 1e-9);
  EXPECT_THAT(first->cautions, Contains(HasSubstr("before the difficult work")));
  const auto second = quick("deep-hole", {{"drill", "3/16 in"}, {"depth", "6 in"}});
  EXPECT_NEAR(number(*second, "depth over diameter"), 32.0, 1e-9);
  EXPECT_NEAR(number(*second, "pecks of, at most"), 0.0938, 1e-9);
  EXPECT_THAT(second->cautions, Contains(HasSubstr("wanders in the metal: NOT KNOWN")));
}

// A disc of 2 in, a finder of 0.2, 0.1 off: move 1.100; 1.1 - sqrt(1.1^2 - 0.1^2) = 0.0046, then 0.00001.
TEST(AccountsOfMachines, TheMiddleOfARoundByItsEdge) {
  const auto answer = quick("edge-find", {{"diameter", "2 in"}, {"finder", "0.2 in"}, {"off", "0.1 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "to the centre"), 1.100, 1e-9);
  EXPECT_NEAR(number(*answer, "x, after the first touch"), 0.0046, 1e-9);
  EXPECT_NEAR(number(*answer, "y, after the second"), 0.0, 1e-9);
}

// 0.355 to 0.213 in 12.25: 0.01159; 0.001 moves it 0.086, 0.002 lasts 0.17; 3 in are worth 0.035: blank 15.25 x 0.39.
TEST(AccountsOfMachines, ATaperedGibIsLeftLong) {
  std::map<std::string, std::string> entries{
      {"thick", "0.355 in"}, {"thin", "0.213 in"}, {"length", "12.25 in"}, {"longer", "3 in"}};
  const auto answer = quick("gib", entries);
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "for 1 of length"), 0.01159, 1e-9);
  EXPECT_NEAR(number(*answer, "0.0010 in (0.025 mm) scraped off moves it in by"), 0.0863, 1e-9);
  EXPECT_NEAR(number(*answer, "the length left on is worth"), 0.0348, 1e-9);
  EXPECT_NEAR(number(*answer, "blank, length"), 15.25, 1e-9);
  EXPECT_NEAR(number(*answer, "blank, thick end"), 0.390, 0.0005);
  entries["allowance"] = "0.002 in";
  EXPECT_NEAR(number(*quick("gib", entries), "the thickness left on lasts for"), 0.1725, 0.0001);
}

// 0.030 in one turn, jaw screws 20 to the inch: 0.015, 0.30 turn. At 45 degrees between jaws 0.0106 a pair.
TEST(AccountsOfMachines, HowFarAJawScrewTurns) {
  const auto answer = quick("jaw", {{"tir", "0.030 in"}, {"screw", "20 tpi"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "four-jaw chuck"), 0.015, 1e-9);
  EXPECT_NEAR(number(*answer, "four-jaw chuck, screw"), 0.30, 1e-9);
  // Axis 0.015 off, half way between jaws 1 and 2: 0.0106 towards each, read as 0.0106 over and under the mean.
  const auto between = quick("jaw", {{"jaw1", "0.0106 in"},
                                     {"jaw2", "0.0106 in"},
                                     {"jaw3", "-0.0106 in"},
                                     {"jaw4", "-0.0106 in"},
                                     {"screw", "20 tpi"}});
  ASSERT_TRUE(between) << refusal(between);
  EXPECT_NEAR(number(*between, "jaws 1 and 3"), 0.0106, 1e-9);
  EXPECT_NEAR(number(*between, "jaws 1 and 3, screw"), 0.21, 1e-9);
  EXPECT_EQ(row(*between, "jaws 1 and 3").note, "slacken jaw 3, then push in jaw 1");
  EXPECT_NEAR(number(*between, "axis of the work off the spindle's"), 0.015, 0.0001);
}

// 4 on 4.125, the first at 45 degrees: 1.4584 each way, 2.9168 apart. 7/16-14: letter U 75 %, 3/8 67 %.
TEST(AccountsOfMachines, FourHolesOnABackplate) {
  const auto answer = quick("holes", {{"count", "4"}, {"circle", "4.125 in"}, {"start", "45 deg"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "hole 1 x"), 1.4584, 1e-9);
  EXPECT_NEAR(number(*answer, "hole 3 y"), -1.4584, 1e-9);
  EXPECT_NEAR(number(*answer, "hole to the next"), 2.9168, 1e-9);
  const auto percent = [](const char* drill) {
    const auto tap = quick("tap", {{"drill", drill}}, "7/16-14 UNC");
    return row(*tap, drill == std::string("U") ? "letter U" : "3/8", "the drill asked about").numbers.at(0);
  };
  EXPECT_NEAR(percent("U"), 75.0, 1e-9);
  EXPECT_NEAR(percent("3/8"), 67.0, 1e-9);
}

// 12 holes: 12 gaps of 30 degrees; 13 would be 27.7; 32.7 would be 11.
TEST(AccountsOfMachines, AsManyGapsAsHoles) {
  for (const auto& [count, angle] : {std::pair("12", 30.0), {"13", 27.6923}, {"11", 32.7273}}) {
    const auto answer = quick("holes", {{"count", count}, {"circle", "3 in"}});
    ASSERT_TRUE(answer) << refusal(answer);
    EXPECT_NEAR(number(*answer, "angle from hole to hole"), angle, 1e-9);
  }
}

// 17 on whole degrees: 8/17 of a degree at worst, 0.0062 at a radius of 0.75 (half a degree would be 0.0065); 21 stepped
// on leaves 3. 18 teeth for 17: 5.9 % faster.
TEST(AccountsOfMachines, SeventeenTeethOnWholeDegrees) {
  const auto answer = quick("steps", {{"divisions", "17"}, {"step", "1 deg"}, {"radius", "0.75 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "one division"), 21.1765, 1e-9);
  EXPECT_NEAR(number(*answer, "a place is off by, at most"), 0.471, 1e-9);
  EXPECT_NEAR(number(*answer, "at that radius"), 0.0062, 1e-9);
  EXPECT_NEAR(number(*answer, "stepped on instead, the last is off by"), 3.0, 1e-9);
  EXPECT_NEAR(number(*answer, "place 2"), 21.0, 1e-9);
  EXPECT_NEAR(number(*answer, "place 4"), 64.0, 1e-9);  // 63.53
  const auto even = quick("steps", {{"divisions", "18"}, {"step", "1 deg"}});
  EXPECT_EQ(even->says, "exact");
  const auto pulley =
      quick("pulley",
            {{"driver-teeth", "18"}, {"driven-teeth", "36"}, {"driver-was", "17"}, {"pitch", "0.200 in"}});
  ASSERT_TRUE(pulley) << refusal(pulley);
  EXPECT_NEAR(number(*pulley, "faster than before, per cent"), 5.9, 1e-9);
  EXPECT_NEAR(number(*pulley, "driver, pitch diameter"), 1.1459, 1e-9);  // 18 x 0.2 / pi
  EXPECT_NEAR(number(*pulley, "the belt comes round shorter by"), 0.1, 1e-9);
}

TEST(AccountsOfMachines, PulleysTurnTheOtherWayRound) {
  const auto answer = quick("pulley", {{"driver", "2.5 in"}, {"driven", "5 in"}, {"rpm", "1725"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "driven for 1 of the driver"), 0.5, 1e-9);
  EXPECT_NEAR(number(*answer, "driven pulley"), 863.0, 1e-9);
}

constexpr const char* kCircles = "24,25,28,30,34,37,38,39,41,42,43,46,47,49,51,53,54,57,58,59,62,66";

// 6 and 42 on a 40:1 head: only circles that are there; 16 holes are 17 counted.
TEST(AccountsOfMachines, OnlyTheCirclesOfThePlate) {
  const auto hexagon = quick("divide", {{"divisions", "6"}, {"circles", kCircles}});
  ASSERT_TRUE(hexagon) << refusal(hexagon);
  const std::map<std::string, std::string> exact{
      {"circle 24", "6 turns and 16 holes on 24"}, {"circle 30", "6 turns and 20 holes on 30"},
      {"circle 39", "6 turns and 26 holes on 39"}, {"circle 42", "6 turns and 28 holes on 42"},
      {"circle 51", "6 turns and 34 holes on 51"}, {"circle 54", "6 turns and 36 holes on 54"},
      {"circle 57", "6 turns and 38 holes on 57"}, {"circle 66", "6 turns and 44 holes on 66"}};
  for (const auto& [circle, move] : exact)
    EXPECT_EQ(row(*hexagon, circle).value, move);
  EXPECT_ANY_THROW(row(*hexagon, "circle 18"));
  EXPECT_THAT(row(*hexagon, "circle 24").note, HasSubstr("enclose 17 holes"));
  const auto many = quick("divide", {{"divisions", "42"}, {"circles", kCircles}});
  ASSERT_TRUE(many) << refusal(many);
  EXPECT_EQ(many->tables.back().rows.size(), 1U);
  EXPECT_EQ(row(*many, "circle 42").value, "40 holes on 42");
}

// 104 teeth, 10.6 over: (104 + 2) / 10; 40/104 = 5/13: 15 in 39; cutter 2, 0.2157 deep.
TEST(AccountsOfMachines, AnOldGearOfManyTeeth) {
  const auto gear = tests::handbook("gear", "", {{"teeth", "104"}, {"outside", "10.6 in"}});
  ASSERT_TRUE(gear) << refusal(gear);
  EXPECT_THAT(gear->says, StartsWith("10 DP"));
  EXPECT_NEAR(number(*gear, "depth of cut"), 0.2157, 1e-9);
  EXPECT_EQ(row(*gear, "cutter of the set of eight").value, "No. 2");
  const auto move = quick("divide", {{"divisions", "104"}, {"circles", kCircles}});
  EXPECT_EQ(move->says, "15 holes on 39");
}

// 30 teeth, 2.065 over: 15.5 DP. No worn 16 DP, which was 2.000 new; 15 DP (2.133) or module 1.75 (2.205).
TEST(AccountsOfMachines, AWornGearWasNeverSmaller) {
  const auto answer = quick("gear-pitch", {{"teeth", "30"}, {"outside", "2.065 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "diametral pitch"), 15.5, 0.005);
  EXPECT_NEAR(number(*answer, "15 DP, of no standard"), 0.068, 0.0005);
  EXPECT_NEAR(number(*answer, "module 1.75"), 2.205 - 2.065, 0.0005);
  EXPECT_ANY_THROW(row(*answer, "16 DP"));
  // 16 DP is module 1.5875 and a circular pitch of 4.987 mm.
  const auto same = quick("gear-pitch", {{"dp", "16"}});
  ASSERT_TRUE(same) << refusal(same);
  EXPECT_NEAR(number(*same, "module, mm"), 1.5875, 1e-9);
  EXPECT_THAT(row(*same, "circular pitch").value, HasSubstr("4.987 mm"));
  EXPECT_NEAR(number(*quick("gear-pitch", {{"module", "1.5 mm"}}), "diametral pitch"), 16.933, 1e-9);
}

// Circular pitch 0.1245 in: 25.23 DP, module 1.0066: module 1; 50 teeth 52.00 mm, 60 teeth 62.00.
TEST(AccountsOfMachines, AChangeGearByItsCircularPitch) {
  const auto answer = quick("gear-pitch", {{"circular", "0.1245 in"}, {"teeth", "50"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "module, mm"), 1.0066, 1e-9);
  EXPECT_NEAR(number(*answer, "diametral pitch"), 25.23, 0.005);
  EXPECT_THAT(answer->says, HasSubstr("nearest module 1"));
  EXPECT_THAT(row(*answer, "module 1").note, HasSubstr("52.000 mm"));
  const auto sixty = quick("gear-pitch", {{"module", "1 mm"}, {"teeth", "60"}});
  EXPECT_NEAR(number(*sixty, "outside of 60 teeth"), 62.0, 1e-9);
}

// 5 holes on 100 mm; hole 3 at x -40.45 on a screw of 2 mm, 100 divisions: 20 turns and 22.5 divisions back.
TEST(AccountsOfMachines, ACircleOfHolesByTheDials) {
  shop::Shop shop = tests::quick_shop();
  for (const char* axis : {"x", "y"}) {
    shop::Collar& collar = shop.machines.front().collars[axis];
    collar.per_turn = quantity::Length::of(2.0, quantity::unit::millimetre);
    collar.divisions = 100;
  }
  const auto answer =
      quick("holes", {{"count", "5"}, {"circle", "100 mm"}, {"on", "knee mill"}, {"step", "0.5"}}, "", &shop);
  ASSERT_TRUE(answer) << refusal(answer);
  const std::string from = "coordinates from the zero";
  EXPECT_NEAR(number(*answer, "hole 1 x", from), 50.0, 1e-9);
  EXPECT_NEAR(number(*answer, "hole 2 x", from), 15.451, 1e-9);
  EXPECT_NEAR(number(*answer, "hole 2 y", from), 47.553, 1e-9);
  EXPECT_NEAR(number(*answer, "hole 3 x", from), -40.451, 1e-9);
  EXPECT_NEAR(number(*answer, "hole 3 y", from), 29.389, 1e-9);
  EXPECT_NEAR(number(*answer, "hole 4 y", from), -29.389, 1e-9);
  // 20 full turns and 22.5 divisions the other way: 20 turns and 77.5 up the dial from there.
  EXPECT_THAT(row(*answer, "hole 3 x", "dial on the knee mill").value, HasSubstr("77.5"));
  EXPECT_THAT(answer->assumed, Contains(HasSubstr("half a turn")));
}

TEST(AccountsOfMachines, WhatCannotBeIsRefusedByItsEntry) {
  const auto bend = [](const char* name, const char* value) {
    std::map<std::string, std::string> entries{
        {"diameter", "1 in"}, {"length", "10 in"}, {"force", "20 lbf"}};
    entries[name] = value;
    return refusal(quick("bend", entries));
  };
  EXPECT_THAT(bend("force", "20"), HasSubstr("--force"));
  EXPECT_THAT(bend("held", "loosely"), HasSubstr("--held"));
  EXPECT_THAT(bend("length", "1/2 in"), HasSubstr("--length"));
  EXPECT_THAT(refusal(quick("deep-hole", {{"drill", "1 in"}, {"depth", "1 in"}, {"shaft", "1 in"}})),
              HasSubstr("--drill"));
  EXPECT_THAT(refusal(quick("deep-hole", {{"drill", "1 mm"}, {"depth", "9 mm"}, {"tilt", "30 deg"}})),
              HasSubstr("--tilt"));
  EXPECT_THAT(refusal(quick("surface-speed", {{"diameter", "1 in"}, {"rpm", "0"}})), HasSubstr("--rpm"));
  EXPECT_THAT(refusal(quick("pulley", {{"driver-teeth", "18"}})), HasSubstr("--driven-teeth"));
  EXPECT_THAT(refusal(quick("edge-find", {{"diameter", "1 in"}, {"finder", "0.2 in"}, {"off", "0.5 in"}})),
              HasSubstr("--off"));
  EXPECT_THAT(refusal(quick("steps", {{"divisions", "12"}, {"step", "45 deg"}})), HasSubstr("--step"));
  EXPECT_THAT(refusal(quick("gib", {{"thick", "1 mm"}, {"thin", "2 mm"}, {"length", "9 mm"}})),
              HasSubstr("--thin"));
  EXPECT_THAT(refusal(quick("gear-pitch", {{"outside", "2 in"}})), HasSubstr("--teeth"));
  EXPECT_THAT(refusal(quick("jaw", {{"tir", "0.01 in"}, {"screw", "twenty"}})), HasSubstr("--screw"));
}

}  // namespace
}  // namespace sparewright::answers
