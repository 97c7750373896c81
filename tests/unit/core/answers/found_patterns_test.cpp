// Patterns found from distances, and materials found from weights: the inverse of laying out and of weighing.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "bench_questions.hpp"

namespace sparewright::answers {
namespace {

using testing::HasSubstr;
using testing::StartsWith;
using tests::number;
using tests::quick;
using tests::refusal;
using tests::row;

// 2.5 in circle, six holes: 1.250 to the next, 2.165 to the second, 2.500 across.
TEST(FoundBoltCircle, SixHolesFromThreeKindsOfDistances) {
  const auto answer = quick("bolt-circle", {{"distances", "1.250, 1.251, 2.165, 2.500 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_THAT(answer->says, StartsWith("6 holes on a circle of 2.500"));
  EXPECT_EQ(number(*answer, "holes"), 6.0);
  EXPECT_NEAR(number(*answer, "diameter of the circle"), 2.5, 0.001);
  EXPECT_THAT(row(*answer, "equally spaced").value, HasSubstr("as far as the distances tell"));
  EXPECT_THAT(row(*answer, "distance 3").note, StartsWith("a hole to the 2nd on"));
  EXPECT_THAT(row(*answer, "distance 4").note, StartsWith("straight across"));
}

// The same by what a caliper reads over the holes, 0.250 more each; and laid out again it is the same circle.
TEST(FoundBoltCircle, ReadOverTheHolesAndLaidOutAgain) {
  const auto answer =
      quick("bolt-circle",
            {{"distances", "1.500, 1.501, 2.415, 2.750 in"}, {"measured", "over"}, {"hole", "0.250 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "diameter of the circle"), 2.5, 0.001);
  const auto out = quick("holes", {{"count", "6"}, {"circle", "2.5 in"}});
  ASSERT_TRUE(out) << refusal(out);
  EXPECT_NEAR(number(*out, "hole to the next"), 1.25, 1e-9);
}

TEST(FoundBoltCircle, SaysWhatDecidesWhereOneDistanceDoesNot) {
  const auto answer = quick("bolt-circle", {{"distances", "2.000 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  ASSERT_FALSE(answer->cautions.empty());
  EXPECT_THAT(answer->cautions.front(), HasSubstr("What decides"));
  EXPECT_EQ(row(*answer, "equally spaced").value, "NOT KNOWN");
}

// A hole 0.020 in along the circle: adjacent distances 1.250, 1.270 and 1.230 of a circle that is 2.5 across.
TEST(FoundBoltCircle, AHoleThatIsOffIsSeen) {
  const auto answer = quick("bolt-circle", {{"distances", "1.250, 1.270, 1.230, 1.250, 2.500, 2.165 in"},
                                            {"count", "6"},
                                            {"good-to", "0.001 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_EQ(row(*answer, "equally spaced").value, "NO");
  EXPECT_THAT(answer->says, HasSubstr("NOT equally spaced"));
  EXPECT_THAT(row(*answer, "distance 2").note, HasSubstr("long, more than its doubt"));
  EXPECT_THAT(row(*answer, "distance 3").note, HasSubstr("short, more than its doubt"));
}

TEST(FoundBoltCircle, RefusesWhatItCannotUse) {
  EXPECT_THAT(refusal(quick("bolt-circle", {{"distances", "-1 in"}})), HasSubstr("must be more than zero"));
  EXPECT_THAT(refusal(quick("bolt-circle", {{"distances", "1.5 in"}, {"measured", "over"}})),
              HasSubstr("--hole"));
  EXPECT_THAT(refusal(quick("bolt-circle", {{"distances", "1.5 in"}, {"count", "1"}})), HasSubstr("--count"));
}

TEST(FoundHoleRow, ThePitchOfARow) {
  const auto answer = quick("hole-row", {{"distances", "1.500, 3.001, 4.500, 1.499 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "pitch"), 1.5, 0.001);
  EXPECT_EQ(number(*answer, "places, at least"), 4.0);
}

// A trapezium 3 in wide at the foot and 2 in at the top; the fourth hole 0.003 in high, then as it should be.
TEST(CentreLine, OfFourHoles) {
  const auto answer = quick("centre-line", {{"x", "0, 3, 0.5, 2.5 in"}, {"y", "0, 0, 2, 2.003 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_THAT(answer->says, HasSubstr("not as far as the coordinates tell"));
  EXPECT_NEAR(number(*answer, "through x"), 1.5, 1e-4);
  EXPECT_EQ(number(*answer, "lines that do as well"), 1.0);
  EXPECT_THAT(row(*answer, "holes 3 and 4 off each other's image").note, HasSubstr("more than its doubt"));
  const auto true_one = quick("centre-line", {{"x", "0, 3, 0.5, 2.5 in"}, {"y", "0, 0, 2, 2 in"}});
  ASSERT_TRUE(true_one) << refusal(true_one);
  EXPECT_EQ(true_one->says, "symmetric, as far as the coordinates tell");
  EXPECT_THAT(refusal(quick("centre-line", {{"x", "0, 1, 2 in"}, {"y", "0, 1, 0, 3 in"}})), HasSubstr("--y"));
}

// 786 g and 100 cm3 are 7.86 g/cm3: steel; 271 g are aluminium.
TEST(Density, TellsTheMaterialAsFarAsItCan) {
  const auto steel =
      quick("density", {{"weight", "786 g"}, {"volume", "100 cm3"}, {"volume-good-to", "1 cm3"}});
  ASSERT_TRUE(steel) << refusal(steel);
  EXPECT_THAT(steel->says, HasSubstr("7.86 g/cm3"));
  EXPECT_THAT(steel->says, HasSubstr("which material is NOT KNOWN"));
  EXPECT_THAT(steel->says, HasSubstr("steel"));
  EXPECT_FALSE(steel->cautions.empty());  // one steel from another it cannot tell
  const auto light =
      quick("density", {{"weight", "271 g"}, {"volume", "100 cm3"}, {"volume-good-to", "0.5 cm3"}});
  ASSERT_TRUE(light) << refusal(light);
  EXPECT_THAT(light->says, HasSubstr("aluminium"));
}

// Hung in water it loses what the water weighs: 850 g of brass is 100 cm3, and hangs at 850 - 99.82 = 750.18 g.
TEST(Density, ByHangingInWater) {
  const auto brass = quick("density", {{"weight", "850.0 g"}, {"in-water", "750.2 g"}});
  ASSERT_TRUE(brass) << refusal(brass);
  EXPECT_THAT(brass->says, HasSubstr("8.50 g/cm3"));
  EXPECT_THAT(brass->says, HasSubstr("brass"));
}

TEST(Density, WhatIsNoMaterialIsSaid) {
  const auto hollow =
      quick("density", {{"weight", "500 g"}, {"volume", "100 cm3"}, {"volume-good-to", "0.5 cm3"}});
  ASSERT_TRUE(hollow) << refusal(hollow);
  EXPECT_THAT(hollow->says, HasSubstr("no material of the handbook"));
  EXPECT_THAT(refusal(quick("density", {{"weight", "500 g"}})), HasSubstr("--volume"));
  EXPECT_THAT(refusal(quick("density", {{"weight", "500 g"}, {"in-water", "500 g"}})),
              HasSubstr("--in-water"));
}

}  // namespace
}  // namespace sparewright::answers
