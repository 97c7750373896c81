// Measuring as accounts of the trade have it: the figures of each worked by hand, or as its account prints them.
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

// A journal reads 0.025 in over what it was made to; it can only wear smaller. A thimble's turn is 0.025 in.
// https://forcbodiesonly.com/mopar-forum/threads/nick-in-crank-journal-machine-shop-or.91082/post-1289113
TEST(AccountsOfMeasuring, AJournalThatReadsAThimbleTurnOver) {
  const auto answer =
      quick("reading", {{"read", "2.150 in"}, {"expected", "2.125 in"}, {"can-only", "smaller"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "reading less expected"), 0.025, 1e-9);
  EXPECT_THAT(answer->says, HasSubstr("can only be smaller"));
  EXPECT_THAT(answer->says, HasSubstr("likely one turn of an inch thimble"));
}

// Ground from 2.500: 2.522 cannot be; the second reading was 2.496, 0.026 away, a thimble's turn and a graduation.
TEST(AccountsOfMeasuring, ASizeThatGrewWhileItWasGround) {
  const auto grew =
      quick("reading", {{"read", "2.522 in"}, {"expected", "2.500 in"}, {"can-only", "smaller"}});
  ASSERT_TRUE(grew) << refusal(grew);
  EXPECT_THAT(grew->says, HasSubstr("can only be smaller: read it again"));
  const auto again = quick("reading", {{"read", "2.522 in"}, {"expected", "2.496 in"}});
  ASSERT_TRUE(again) << refusal(again);
  EXPECT_NEAR(number(*again, "one turn of an inch thimble, a line of its sleeve"), 0.025, 1e-9);
}

// 2.500 hole, 0.001 clear, 0.002 of plating a side: 2.499 finished, 2.495 before. 2.496 plated is 2.500: no clearance.
TEST(AccountsOfMeasuring, APlatedRodKeepsItsChain) {
  const auto answer = quick(
      "plating",
      {{"mate", "2.500 in"}, {"leave", "0.001 in"}, {"thickness", "0.002 in"}, {"measured", "2.4960 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "finished"), 2.4990, 1e-9);
  EXPECT_NEAR(number(*answer, "before plating"), 2.4950, 1e-9);
  EXPECT_NEAR(number(*answer, "still to take off, on the diameter"), 0.0010, 1e-9);
  EXPECT_NEAR(number(*answer, "plated as it is"), 2.5000, 1e-9);
  EXPECT_NEAR(number(*answer, "clearance it would have"), 0.0, 1e-9);
}

// 3 numbers, 2 lines, 17 divisions: 0.300 + 0.050 + 0.017. A division is 0.001 in, whatever a manual says.
TEST(AccountsOfMeasuring, AMicrometerIsAddedUpFromItsMarks) {
  const auto answer = quick("micrometer", {{"numbers", "3"}, {"lines", "2"}, {"thimble", "17"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "it reads"), 0.367, 1e-9);
  EXPECT_NEAR(number(*answer, "17 divisions of the thimble"), 0.017, 1e-9);
  EXPECT_THAT(refusal(quick("micrometer", {{"thimble", "25"}})), HasSubstr("another line of the sleeve"));
}

// 3 in of steel, 20 K over the micrometer: 3 x 11.5e-6 x 20 = 0.0007 in, not the 0.001 of the rule.
// https://yarchive.net/metal/coeffs_of_expansion.html
TEST(AccountsOfMeasuring, WarmSteelReadsLarge) {
  const auto warm = quick("warm", {{"size", "3.000 in"}, {"at", "40 degC"}, {"material", "mild steel"}});
  ASSERT_TRUE(warm) << refusal(warm);
  EXPECT_NEAR(number(*warm, "it reads large by"), 0.0007, 1e-9);
  const auto both = quick("warm", {{"size", "3.000 in"}, {"at", "40 degC"}, {"gauge-at", "40 degC"}});
  ASSERT_TRUE(both) << refusal(both);
  EXPECT_EQ(both->says, "no correction needed");
  // Aluminium under a steel micrometer as warm: only the difference counts, 3 x (24 - 11.7)e-6 x 20 = 0.00074.
  const auto light = quick(
      "warm", {{"size", "3.000 in"}, {"at", "40 degC"}, {"gauge-at", "40 degC"}, {"material", "6061 T6"}});
  ASSERT_TRUE(light) << refusal(light);
  EXPECT_NEAR(number(*light, "it reads large by"), 0.0007, 1e-9);
}

// 0.15 mm out in front, 0.25 behind and another way; 0.015 mm may be; a home-made gauge is good to 0.02 mm. It can reject,
// and never pass.
TEST(AccountsOfMeasuring, AnOvalBoreIsRejectedByAPoorGauge) {
  const std::map<std::string, std::string> oval{{"front", "100.00, 100.15, 100.07 mm"},
                                                {"back", "100.20, 100.05, 99.95 mm"},
                                                {"limit", "0.015 mm"},
                                                {"good-to", "0.02 mm"}};
  const auto answer = quick("round", oval);
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "front"), 0.15, 1e-9);
  EXPECT_NEAR(number(*answer, "back"), 0.25, 1e-9);
  EXPECT_THAT(answer->says, StartsWith("NO"));
  EXPECT_EQ(row(*answer, "the long axis").value, "turns from front to back");
  EXPECT_THAT(answer->cautions, Contains(HasSubstr("never that it is good enough")));
  const auto fine =
      quick("round", {{"front", "100.00, 100.01 mm"}, {"limit", "0.015 mm"}, {"good-to", "0.02 mm"}});
  ASSERT_TRUE(fine) << refusal(fine);
  EXPECT_THAT(fine->says, StartsWith("NOT KNOWN"));
}

// Three heights, two ways: 0.003 to 0.005 in out.
TEST(AccountsOfMeasuring, ABoreIsReadAtThreeHeights) {
  const auto answer = quick(
      "round", {{"front", "3.505, 3.502 in"}, {"middle", "3.504, 3.500 in"}, {"back", "3.503, 3.498 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "front"), 0.003, 1e-9);
  EXPECT_NEAR(number(*answer, "middle"), 0.004, 1e-9);
  EXPECT_NEAR(number(*answer, "back"), 0.005, 1e-9);
  EXPECT_NEAR(number(*answer, "taper, on the diameter"), 3.5035 - 3.5005, 1e-9);
}

// A vee of 90 degrees shows three lobes twice over; a micrometer shows nothing.
TEST(AccountsOfMeasuring, LobedBarIsSeenInAVee) {
  const auto answer = quick("lobes", {{"swing", "0.0010 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "on the radius, lowest to highest"), 0.0005, 1e-9);
  EXPECT_NEAR(number(*answer, "a micrometer shows"), 0.0, 1e-9);
  // Seven lobes do not show in that vee at all.
  EXPECT_THAT(refusal(quick("lobes", {{"swing", "0.0010 in"}, {"lobes", "7"}})), HasSubstr("another angle"));
}

// Bearing 1.500, journal 0.007 worn.
TEST(AccountsOfMeasuring, AWornShaftInItsBearing) {
  const auto answer = quick("play", {{"hole", "1.500 in"}, {"shaft", "1.493 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "clearance on the diameter"), 0.007, 1e-9);
}

// 0.745 and 0.620 over blocks 1 in apart: 0.125 in an inch, 1 in 8; 3.5763 degrees a side, 7.153 in all, 1.5 in a foot.
// Called 1:16, it is twice that.
TEST(AccountsOfMeasuring, ATaperByTwoHeightsIsNotHalved) {
  const auto answer = quick(
      "taper", {{"large", "0.745 in"}, {"small", "0.620 in"}, {"over", "1.000 in"}, {"called", "1:16"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "1 in"), 8.0, 1e-9);
  EXPECT_NEAR(number(*answer, "in a foot"), 1.5, 1e-9);
  EXPECT_NEAR(number(*answer, "angle to the axis"), 3.5763, 1e-9);
  EXPECT_NEAR(number(*answer, "included angle"), 7.1527, 0.0002);
  EXPECT_THAT(answer->says, HasSubstr("twice 1:16.000: side and diameter confused?"));
}

// B + C - 0.95 = 0 + 1.11 - 0.95 = 0.16 mm; the thinnest shim is 0.60: 0.44 is missing.
TEST(AccountsOfMeasuring, AShimThinnerThanAreMade) {
  const auto answer = quick("sum", {{"plus", "0, 1.11 mm"}, {"minus", "0.95 mm"}, {"least", "0.60 mm"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "nominal"), 0.16, 1e-9);
  EXPECT_NEAR(number(*answer, "missing to the least, at worst"), 0.44, 1e-9);
  EXPECT_THAT(answer->says, HasSubstr("NO: 0.440 mm"));
  EXPECT_THAT(row(*answer, "plus 1").note, HasSubstr("right face?"));
  EXPECT_THAT(answer->cautions, Contains(HasSubstr("missing from the readings")));
}

// Centre height 2.0625 less 5/16 of packing leaves 1.750; measured 1.744 it wants 0.3185.
TEST(AccountsOfMeasuring, PackingThatPutsABoreOnCentre) {
  const auto meant = quick("sum", {{"plus", "2.0625 in"}, {"minus", "5/16 in"}});
  ASSERT_TRUE(meant) << refusal(meant);
  EXPECT_NEAR(number(*meant, "nominal"), 1.750, 1e-9);
  const auto packing = quick("sum", {{"plus", "2.0625 in"}, {"minus", "1.744 in"}});
  ASSERT_TRUE(packing) << refusal(packing);
  EXPECT_NEAR(number(*packing, "nominal"), 0.3185, 1e-9);
}

// 1.125 +- 0.005: measured before the second end is cut, so that the cut has a basis.
TEST(AccountsOfMeasuring, TheSecondEndIsCutByWhatWasMeasured) {
  const auto left = quick("sum", {{"plus", "1.188 in"}, {"minus", "1.125 in"}});
  ASSERT_TRUE(left) << refusal(left);
  EXPECT_NEAR(number(*left, "nominal"), 0.063, 1e-9);
  const auto inside = quick("sum", {{"plus", "1.1250 in"}, {"least", "1.120 in"}, {"most", "1.130 in"}});
  ASSERT_TRUE(inside) << refusal(inside);
  EXPECT_THAT(inside->says, HasSubstr("OK"));
  const auto outside = quick("sum", {{"plus", "1.1310 in"}, {"least", "1.120 in"}, {"most", "1.130 in"}});
  ASSERT_TRUE(outside) << refusal(outside);
  EXPECT_THAT(outside->says, HasSubstr("NO: 0.0010 in"));
}

// 3.000 with 0.005 either way is 2.995 to 3.005, told in full.
TEST(AccountsOfMeasuring, AToleranceIsToldAsItsLimits) {
  const auto answer = quick("sum", {{"plus", "3.000 +- 0.005 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(row(*answer, "at worst").numbers.at(0), 2.995, 1e-9);
  EXPECT_NEAR(row(*answer, "at worst").numbers.at(1), 3.005, 1e-9);
}

// A gap of 0.012 with tolerances that add up to 0.020 may be 0.008 less than nothing; 1/32 longer it clears.
TEST(AccountsOfMeasuring, AWheelThatMayFoulItsBase) {
  std::map<std::string, std::string> entries{
      {"plus", "2.512 +- 0.010 in"}, {"minus", "1.250 +- 0.006, 1.250 +- 0.004 in"}, {"least", "0 in"}};
  const auto answer = quick("sum", entries);
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "nominal"), 0.012, 1e-9);
  EXPECT_NEAR(number(*answer, "tolerances together, each way"), 0.020, 1e-9);
  EXPECT_THAT(answer->says, HasSubstr("may not do, at worst: 0.0080 in"));
  entries["plus"] = "2.512 +- 0.010, 1/32 in";
  EXPECT_THAT(quick("sum", entries)->says, HasSubstr("OK"));
}

// A shaft of 0.982 in: 25 mm is 0.98425, so 0.0023 under it.
TEST(AccountsOfMeasuring, AShaftThatIsNoInch) {
  const auto answer = tests::handbook("size", "0.982 in");
  ASSERT_TRUE(answer) << refusal(answer);
  bool named = false;
  for (const Row& one : answer->tables.front().rows) {
    if (one.value.find("25.000 mm") == std::string::npos) continue;
    named = true;
    EXPECT_THAT(one.note, HasSubstr("0.0023 in"));
    EXPECT_THAT(one.note, HasSubstr("under"));
  }
  EXPECT_TRUE(named);
}

TEST(AccountsOfMeasuring, WhatCannotBeIsRefusedByItsEntry) {
  EXPECT_THAT(refusal(quick("reading", {{"read", "2 in"}, {"expected", "2 in"}, {"can-only", "odd"}})),
              HasSubstr("--can-only"));
  EXPECT_THAT(refusal(quick("warm", {{"size", "3 in"}, {"at", "40"}})), HasSubstr("--at"));
  EXPECT_THAT(refusal(quick("round", {{"front", "3 in"}})), HasSubstr("--front"));
  EXPECT_THAT(refusal(quick("round", {{"front", "3, three in"}})), HasSubstr("--front"));
  EXPECT_THAT(refusal(quick("lobes", {{"swing", "0.001 in"}, {"vee", "10 deg"}})), HasSubstr("--vee"));
  EXPECT_THAT(refusal(quick("sum", {{"plus", "1, 2"}})), HasSubstr("unit"));
  EXPECT_THAT(refusal(quick("sum", {{"plus", "1 in"}, {"least", "2 in"}, {"most", "1 in"}})),
              HasSubstr("--most"));
  EXPECT_THAT(refusal(quick("taper", {{"large", "1 in"}, {"small", "2 in"}, {"over", "1 in"}})),
              HasSubstr("--small"));
  EXPECT_THAT(refusal(quick("plating", {{"thickness", "1 in"}, {"finish", "1 in"}})),
              HasSubstr("--thickness"));
}

}  // namespace
}  // namespace sparewright::answers
