// Questions of the bench that need no job: worked by hand, the ways told in words, what is refused.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "bench_questions.hpp"

namespace sparewright::answers {
namespace {

using testing::HasSubstr;
using tests::quick;
using tests::refusal;
using tests::row;
using Entries = std::map<std::string, std::string>;

double inches(const Answer& answer, std::string_view what, std::string_view table = {}) {
  return row(answer, what, table).numbers.at(0);
}

// --- holes

// 4 holes on 2 in about (1, 1): at 0, 90, 180, 270 degrees.
TEST(QuickHoles, StandWhereGeometryPutsThem) {
  const auto answer = quick("holes", {{"count", "4"}, {"circle", "2 in"}, {"x", "0.5 in"}, {"y", "-2 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_DOUBLE_EQ(inches(*answer, "hole 1 x"), 1.5);
  EXPECT_EQ(row(*answer, "hole 1 x").note, "right");
  EXPECT_DOUBLE_EQ(inches(*answer, "hole 3 x"), -0.5);
  EXPECT_EQ(row(*answer, "hole 3 x").note, "left");
  EXPECT_EQ(row(*answer, "hole 2 y").note, "towards the operator");
  EXPECT_DOUBLE_EQ(inches(*answer, "hole to the next"), 1.4142);
  EXPECT_DOUBLE_EQ(inches(*answer, "hole 1 to hole 3"), 2.0);
}

// 0.2 in a turn, 200 divisions: 1.3131 in is 6 turns and 113.1 divisions. Clockwise moves the work left, the tool right.
// y: clockwise moves the work away, so the tool comes nearer: away is counterclockwise, and the numbers fall.
TEST(QuickHoles, AreDialledOnTheMachineGiven) {
  const shop::Shop shop = tests::quick_shop();
  const auto answer = quick(
      "holes", {{"count", "1"}, {"circle", "1 in"}, {"x", "0.8131 in"}, {"y", "0.5 in"}, {"on", "knee mill"}},
      "", &shop);
  ASSERT_TRUE(answer) << refusal(answer);
  const Row& x = row(*answer, "hole 1 x", "dial on the knee mill");
  EXPECT_EQ(x.value, "6 turns, to 113");
  EXPECT_THAT(x.note, HasSubstr("clockwise; lands 0.0001 in (0.003 mm) too far left"));
  const Row& y = row(*answer, "hole 1 y", "dial on the knee mill");
  EXPECT_EQ(y.value, "2 turns, to 100");
  EXPECT_THAT(y.note, HasSubstr("counterclockwise; lands exactly"));
  EXPECT_DOUBLE_EQ(inches(*answer, "a hole is out by, at most"), 0.0001);
}

TEST(QuickHoles, BeyondTheTravelAreACaution) {
  const shop::Shop shop = tests::quick_shop();
  const auto answer =
      quick("holes", {{"count", "2"}, {"circle", "20 in"}, {"x", "15 in"}, {"on", "knee mill"}}, "", &shop);
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_THAT(answer->cautions, testing::Contains(HasSubstr("x needs 25.0000 in")));
}

TEST(QuickHoles, RefuseWhatCannotBe) {
  EXPECT_THAT(refusal(quick("holes", {{"count", "0"}, {"circle", "2 in"}})), HasSubstr("--count"));
  EXPECT_THAT(refusal(quick("holes", {{"count", "6"}, {"circle", "2"}})), HasSubstr("--circle"));
  EXPECT_THAT(refusal(quick("holes", {{"count", "6"}, {"circle", "2 in"}, {"on", "knee mill"}})),
              HasSubstr("--shop"));
  const shop::Shop shop = tests::quick_shop();
  const Entries fine{{"count", "6"}, {"circle", "2 in"}, {"on", "knee mill"}, {"step", "0"}};
  EXPECT_THAT(refusal(quick("holes", fine, "", &shop)), HasSubstr("--step"));
}

// --- the lathe

// e = 5 mm on 50 mm: 7.5 wide, 7.12 narrow (eccentric_packing.hpp).
TEST(QuickPacking, TellsBothKindsOfJawsAndTheProof) {
  const auto answer = quick("packing", {{"diameter", "50 mm"}, {"throw", "5 mm"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(inches(*answer, "wide flat jaws"), 7.5, 1e-9);
  EXPECT_NEAR(inches(*answer, "jaws that touch on a narrow line"), 7.12, 0.005);
  EXPECT_NEAR(inches(*answer, "an indicator shows in one turn"), 10.0, 1e-9);
  EXPECT_THAT(answer->cautions, testing::Contains(HasSubstr("out of balance")));
  EXPECT_THAT(answer->cautions, testing::Contains(HasSubstr("key out")));
  EXPECT_FALSE(quick("packing", {{"diameter", "50 mm"}, {"throw", "20 mm"}}));
}

// 3 thou in 8 in over 10 in between centres: (0.003 / 8) 10 / 2 = 0.001875. The tool stands on the operator's side, so a
// thick tailstock end has its centre too far away.
TEST(QuickTailstock, TakesATaperOut) {
  Entries entries{{"large", "1.503 in"},
                  {"small", "1.5 in"},
                  {"over", "8 in"},
                  {"between", "10 in"},
                  {"thick-end", "tailstock"}};
  const auto towards = quick("tailstock", entries);
  ASSERT_TRUE(towards) << refusal(towards);
  EXPECT_NEAR(inches(*towards, "move it"), 0.0019, 1e-9);
  EXPECT_THAT(towards->says, testing::EndsWith("towards the operator"));
  entries["thick-end"] = "headstock";
  EXPECT_THAT(quick("tailstock", entries)->says, testing::EndsWith("away from the operator"));
}

// 0.6 in per foot over 10 in: 0.6 / 12 * 10 / 2 = 0.25 in, which is more than a fiftieth.
TEST(QuickTailstock, CutsATaper) {
  Entries entries{{"taper", "0.6 in/ft"}, {"between", "10 in"}, {"thick-end", "headstock"}};
  const auto answer = quick("tailstock", entries);
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(inches(*answer, "move it"), 0.25, 1e-9);
  EXPECT_THAT(answer->says, testing::EndsWith("towards the operator"));
  EXPECT_THAT(answer->cautions, testing::Contains(HasSubstr("fiftieth")));
  entries["taper"] = "1:20";
  EXPECT_NEAR(inches(*quick("tailstock", entries), "move it"), 0.25, 1e-9);
  entries["thick-end"] = "tailstock";
  EXPECT_THAT(quick("tailstock", entries)->says, testing::EndsWith("away from the operator"));
}

TEST(QuickTailstock, RefusesWhatCannotBe) {
  const Entries good{{"taper", "1:20"}, {"between", "10 in"}, {"thick-end", "headstock"}};
  for (const auto& [name, wrong] : Entries{{"taper", "1:1"}, {"between", "0 in"}, {"thick-end", "left"}}) {
    Entries entries = good;
    entries[name] = wrong;
    EXPECT_THAT(refusal(quick("tailstock", entries)), HasSubstr("--" + name));
  }
  EXPECT_THAT(refusal(quick("tailstock", {{"large", "1 in"},
                                          {"small", "1.1 in"},
                                          {"over", "8 in"},
                                          {"between", "10 in"},
                                          {"thick-end", "headstock"}})),
              HasSubstr("--small"));
}

TEST(QuickJaw, MovesHalfTheRunOut) {
  const auto answer = quick("jaw", {{"tir", "0.012 in"}, {"diameter", "2 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(inches(*answer, "four-jaw chuck"), 0.006, 1e-9);
  EXPECT_NEAR(inches(*answer, "three-jaw chuck, shim"), 0.009, 1e-9);
  EXPECT_THAT(answer->says, HasSubstr("high reading"));
}

// Jaws read 10, 0, 2, 4 thou: pair 1-3 by 4, jaw 1 in; pair 2-4 by 2, jaw 4 in. Axis off sqrt(4^2 + 2^2) = 4.472 thou; one
// pair sums to 12, the other to 4: 4 thou out of round.
TEST(QuickJaw, ReadsEachJaw) {
  const auto answer =
      quick("jaw", {{"jaw1", "0.010 in"}, {"jaw2", "0 in"}, {"jaw3", "0.002 in"}, {"jaw4", "0.004 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(inches(*answer, "jaws 1 and 3"), 0.004, 1e-9);
  EXPECT_EQ(row(*answer, "jaws 1 and 3").note, "slacken jaw 3, then push in jaw 1");
  EXPECT_NEAR(inches(*answer, "jaws 2 and 4"), 0.002, 1e-9);
  EXPECT_EQ(row(*answer, "jaws 2 and 4").note, "slacken jaw 2, then push in jaw 4");
  EXPECT_NEAR(inches(*answer, "axis of the work off the spindle's"), 0.0045, 1e-9);
  EXPECT_NEAR(inches(*answer, "out of round"), 0.004, 1e-9);
  EXPECT_THAT(refusal(quick("jaw", {{"jaw1", "0.010 in"}})), HasSubstr("--jaw2"));
}

// --- circles

// A tip of 0.2 inside a hole of 2.2 goes round on 2.0.
TEST(QuickHoleCentre, AddsTheTip) {
  Entries entries{{"x1", "2 in"}, {"y1", "0.5 in"}, {"x2", "1 in"},   {"y2", "1.5 in"},
                  {"x3", "0 in"}, {"y3", "0.5 in"}, {"tip", "0.2 in"}};
  const auto hole = quick("hole-centre", entries);
  ASSERT_TRUE(hole) << refusal(hole);
  EXPECT_NEAR(inches(*hole, "centre x"), 1.0, 1e-9);
  EXPECT_NEAR(inches(*hole, "centre y"), 0.5, 1e-9);
  EXPECT_NEAR(inches(*hole, "diameter"), 2.2, 1e-9);
  entries["side"] = "boss";
  EXPECT_NEAR(inches(*quick("hole-centre", entries), "diameter"), 1.8, 1e-9);
  entries["side"] = "shaft";
  EXPECT_THAT(refusal(quick("hole-centre", entries)), HasSubstr("--side"));
}

TEST(QuickChord, GivesTheRadiusAndWhatItIsWorth) {
  const auto answer = quick("chord", {{"chord", "24 in"}, {"height", "3 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(inches(*answer, "radius"), 25.5, 1e-9);
  EXPECT_NEAR(inches(*answer, "0.001 in more of height changes the radius"), 0.0075, 1e-9);
  EXPECT_THAT(refusal(quick("chord", {{"chord", "2 in"}, {"height", "3 in"}})), HasSubstr("--height"));
}

}  // namespace
}  // namespace sparewright::answers
