// Parts worked out at the bench: bushes, tapped holes, keyseats, countersinks, gears and divisions.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "bench_questions.hpp"
#include "core/handbook/fits.hpp"

namespace sparewright::answers {
namespace {

using testing::HasSubstr;
using tests::number;
using tests::quick;
using tests::refusal;
using tests::row;
using Entries = std::map<std::string, std::string>;

// --- bush

TEST(QuickBush, TakesTheFitsFromTheSizesMeasured) {
  const auto answer = quick("bush", {{"hole", "1.2512 in"}, {"shaft", "0.9985 in"}, {"length", "1.5 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  const auto seat = handbook::fit_at("FN1", quantity::Diameter::of(1.2512, quantity::unit::inch));
  const auto run = handbook::fit_at("RC4", quantity::Diameter::of(0.9985, quantity::unit::inch));
  ASSERT_TRUE(seat && run);
  const auto inch = [](quantity::Length length) { return length.in(quantity::unit::inch); };
  EXPECT_NEAR(row(*answer, "outside").numbers.at(0), 1.2512 - inch(seat->most_clearance()), 1e-9);
  EXPECT_NEAR(row(*answer, "outside").numbers.at(1), 1.2512 - inch(seat->least_clearance()), 1e-9);
  EXPECT_NEAR(row(*answer, "bore, in its place").numbers.at(0), 0.9985 + inch(run->least_clearance()), 1e-9);
  EXPECT_GT(number(*answer, "tighter than its hole"), 0.0);
  const double closes = number(*answer, "the bore closes by, at most");
  EXPECT_GT(closes, 0.0);
  EXPECT_LT(closes, row(*answer, "tighter than its hole").numbers.at(1));
  EXPECT_LT(row(*answer, "bore before, to ream after").numbers.at(1),
            row(*answer, "bore, in its place").numbers.at(0));
  EXPECT_THAT(answer->cautions, testing::Contains(HasSubstr("stand out of line")));
}

TEST(QuickBush, AMetricOneTakesIsoFits) {
  const auto answer = quick("bush", {{"hole", "32 mm"}, {"shaft", "25 mm"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_THAT(row(*answer, "outside").note, HasSubstr("H7/s6"));
  EXPECT_THAT(row(*answer, "bore, in its place").note, HasSubstr("H8/f7"));
}

TEST(QuickBush, SlippedInLeavesRoomAndClosesNothing) {
  const auto answer = quick("bush", {{"hole", "32 mm"}, {"shaft", "25 mm"}, {"how", "slip"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_LE(row(*answer, "outside").numbers.at(1), 32.0);
  EXPECT_ANY_THROW(row(*answer, "the bore closes by, at most"));
}

// A plastic has no Poisson's ratio here: the most that geometry allows, interference x hole / bore.
TEST(QuickBush, BoundsTheClosingWhereTheMetalIsNotKnown) {
  const auto answer = quick("bush", {{"hole", "32 mm"}, {"shaft", "25 mm"}, {"material", "nylon"}});
  ASSERT_TRUE(answer) << refusal(answer);
  const double most = row(*answer, "tighter than its hole").numbers.at(1);
  const double bore = number(*answer, "bore, in its place");
  EXPECT_NEAR(number(*answer, "the bore closes by, at most"), most * 32.0 / bore, 0.0006);
  EXPECT_EQ(row(*answer, "force").value, "NOT KNOWN");
}

TEST(QuickBush, SaysThatItYields) {
  const auto answer = quick("bush", {{"hole", "32 mm"}, {"shaft", "25 mm"}, {"seat", "H7/u6"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_EQ(row(*answer, "the bore closes by, at most").note, "it yields");
  EXPECT_THAT(answer->cautions, testing::Contains(HasSubstr("yields")));
}

TEST(QuickBush, RefusesWhatCannotBe) {
  const Entries good{{"hole", "32 mm"}, {"shaft", "25 mm"}};
  for (const auto& [name, wrong] : Entries{{"hole", "25 mm"},
                                           {"shaft", "-1 mm"},
                                           {"how", "hammered"},
                                           {"seat", "H7/g6"},
                                           {"run", "H7/s6"},
                                           {"good-to", "1 mm"}}) {
    Entries entries = good;
    entries[name] = wrong;
    EXPECT_THAT(refusal(quick("bush", entries)), HasSubstr("--" + name)) << name;
  }
  EXPECT_THAT(refusal(quick("bush", {{"hole", "25.01 mm"}, {"shaft", "25 mm"}})), HasSubstr("no wall"));
  const auto thin = quick("bush", {{"hole", "25.8 mm"}, {"shaft", "25 mm"}});
  ASSERT_TRUE(thin) << refusal(thin);
  EXPECT_THAT(thin->cautions, testing::Contains(HasSubstr("thin")));
}

// --- tap

// 1/4-20 with #7: (0.25 - 0.201) / (1.299038 / 20) = 75 %; 13/64: 72 %.
TEST(QuickTap, ChoosesAmongTheDrillsOfTheShop) {
  const shop::Shop shop = tests::quick_shop();
  const auto answer = quick("tap", {}, "1/4-20 UNC", &shop);
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_EQ(answer->says, "drill 13/64, 72 %");
  EXPECT_NEAR(number(*answer, "drill #7", "drills you have, and the thread they leave"), 75.0, 0.5);
  EXPECT_EQ(row(*answer, "tap 1/4-20", "taps you have").value, "1/4-20 UNC");
  EXPECT_ANY_THROW(row(*answer, "drill 1/4"));
  EXPECT_THAT(quick("tap", {{"percent", "75"}}, "1/4-20 UNC", &shop)->says, HasSubstr("#7"));
}

TEST(QuickTap, NamesAStandardDrillWhereTheShopHasNone) {
  const shop::Shop shop = tests::quick_shop();
  const auto answer = quick("tap", {}, "M8", &shop);
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_THAT(answer->assumed, testing::Contains(HasSubstr("none of your drills")));
  EXPECT_THAT(row(*answer, "M8x1.25", "taps you have").value, HasSubstr("none"));
}

// Bottoming: 2 threads of lead, one pitch of room: 0.75 + 3 x 0.05 = 0.9 in.
TEST(QuickTap, SaysHowDeepABlindHoleIsDrilled) {
  const auto answer = quick("tap", {{"blind", "3/4 in"}, {"tap", "bottoming"}}, "1/4-20 UNC");
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "drill at full diameter"), 0.9, 1e-9);
  EXPECT_GT(number(*answer, "deepest, drill point"), 0.9);
  EXPECT_THAT(refusal(quick("tap", {{"blind", "3/4 in"}, {"tap", "blunt"}}, "1/4-20 UNC")),
              HasSubstr("--tap"));
  EXPECT_EQ(quick("tap", {}, "1/4-20 UNC")->says, "#4, 63 %");
  EXPECT_EQ(quick("tap", {}, "M8")->says, "6.9 mm, 68 %");
  EXPECT_FALSE(quick("tap", {{"percent", "0"}}, "1/4-20 UNC"));
  EXPECT_FALSE(quick("tap", {}, "1/4-20 NPT"));
}

// --- keyseat

// 1 in shaft, 1/4 in square key: over the back 0.859 in, edges (1 - sqrt(1 - 1/16)) / 2 = 0.0159 in below the crest, down
// 0.1409 in.
TEST(QuickKeyseat, OfASquareKey) {
  const auto answer = quick("keyseat", {{"shaft", "1 in"}, {"width", "1/4 in"}, {"height", "1/4 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "depth from the crest"), 0.1409, 1e-9);
  const auto standard = quick("keyseat", {{"shaft", "1 in"}});
  ASSERT_TRUE(standard) << refusal(standard);
  EXPECT_NEAR(number(*standard, "depth from the crest"), 0.1409, 1e-9);
}

TEST(QuickKeyseat, OfAKeyOfNoStandardHasHalfOfIt) {
  const auto answer = quick("keyseat", {{"shaft", "1 in"}, {"width", "0.24 in"}, {"height", "0.26 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "depth at the side"), 0.13, 1e-9);
  EXPECT_THAT(answer->asked, HasSubstr("no standard"));
}

TEST(QuickKeyseat, IsDialledDown) {
  const shop::Shop shop = tests::quick_shop();
  const auto answer = quick("keyseat", {{"shaft", "1 in"}, {"on", "knee mill"}}, "", &shop);
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_EQ(row(*answer, "z, from touching").value, "1 turn, to 41");
}

TEST(QuickKeyseat, OfAWoodruffKey) {
  const auto answer = quick("keyseat", {{"shaft", "1 in"}, {"woodruff", "606"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "cutter diameter"), 0.75, 1e-9);
  EXPECT_FALSE(quick("keyseat", {{"shaft", "1 in"}, {"woodruff", "9999"}}));
  EXPECT_THAT(refusal(quick("keyseat", {{"shaft", "1 in"}, {"width", "0.6 in"}, {"height", "0.1 in"}})),
              HasSubstr("--width"));
  EXPECT_THAT(refusal(quick("keyseat", {{"shaft", "1 in"}, {"width", "0.25 in"}})), HasSubstr("--height"));
}

// --- sink

// 90 degrees: as deep as half the difference of the diameters.
TEST(QuickSink, GoesDownFromTouchingTheHole) {
  const auto answer = quick("sink", {{"diameter", "0.5 in"}, {"hole", "0.3 in"}, {"angle", "90 deg"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "down from touching"), 0.1, 1e-9);
  EXPECT_NEAR(number(*answer, "0.001 in deeper widens it by"), 0.002, 1e-9);
  const auto screw = quick("sink", {{"screw", "1/4"}});
  ASSERT_TRUE(screw) << refusal(screw);
  EXPECT_THAT(screw->asked, HasSubstr("82 degree"));
  EXPECT_THAT(refusal(quick("sink", {{"diameter", "0.5 in"}, {"angle", "180 deg"}})), HasSubstr("--angle"));
  EXPECT_THAT(refusal(quick("sink", {{"diameter", "0.5 in"}, {"hole", "0.6 in"}, {"angle", "90 deg"}})),
              HasSubstr("--hole"));
}

// --- pitch

// 16 threads on a screw of 8: 1 to 2, exact.
TEST(QuickPitch, FindsExactGears) {
  const auto answer = quick("pitch", {{"screw", "8 tpi"}, {"gears", "20, 30, 40"}}, "16 tpi");
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_EQ(answer->says, "20 : 40, exact");
  EXPECT_THAT(answer->cautions, testing::Contains(HasSubstr("off at the wall")));
}

// 1.5 mm on 8 tpi without a 127: 1.5 / 3.175 = 60/127; 52 : 110 cuts 1.500909 mm, long by 0.0006 in an inch.
TEST(QuickPitch, TellsTheErrorOverTheLength) {
  const auto answer =
      quick("pitch", {{"screw", "8 tpi"}, {"gears", "52,110"}, {"most", "2"}, {"over", "2 in"}}, "1.5 mm");
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_THAT(answer->says, HasSubstr("52 : 110, long by 0.00121 in"));
  EXPECT_THAT(answer->says, HasSubstr("in 2 in"));
}

TEST(QuickPitch, RefusesWhatCannotBe) {
  EXPECT_THAT(refusal(quick("pitch", {{"screw", "8 tpi"}, {"gears", "20,thirty"}}, "16 tpi")),
              HasSubstr("--gears"));
  EXPECT_THAT(refusal(quick("pitch", {{"screw", "8"}, {"gears", "20,30"}}, "16 tpi")), HasSubstr("--screw"));
  EXPECT_THAT(refusal(quick("pitch", {{"screw", "8 tpi"}, {"gears", "20,30"}, {"most", "3"}}, "16 tpi")),
              HasSubstr("--most"));
  EXPECT_FALSE(quick("pitch", {{"screw", "8 tpi"}, {"gears", "20,30"}}, "fine"));
}

// --- divide

// 40 / 7 = 5 and 15/21.
TEST(QuickDivide, OnOneCircle) {
  const auto answer = quick("divide", {{"divisions", "7"}, {"circles", "15,16,17,18,19,20,21"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_EQ(answer->says, "5 turns and 15 holes on 21");
  EXPECT_THAT(row(*answer, "circle 21").note, HasSubstr("enclose 16 holes"));
  EXPECT_EQ(quick("divide", {{"divisions", "8"}, {"circles", "15"}})->says, "5 turns");
}

// 77 divisions: 9/21 + 3/33 of a turn (40/77 = 9/21 + 1/11), which two plates do not give.
TEST(QuickDivide, OnTwoCirclesOfOnePlateAlone) {
  const auto one = quick("divide", {{"divisions", "77"}, {"circles", "21,23,27,29,31,33"}});
  ASSERT_TRUE(one) << refusal(one);
  EXPECT_EQ(one->says, "9 holes on 21 forward, then 3 holes on 33 forward");
  const auto two =
      quick("divide", {{"divisions", "77"}, {"circles", "15,16,17,18,19,21 / 20,23,27,29,31,33"}});
  ASSERT_TRUE(two) << refusal(two);
  EXPECT_THAT(two->says, HasSubstr("arc seconds"));
  EXPECT_THAT(refusal(quick("divide", {{"divisions", "77"}, {"circles", "15,16 /"}})),
              HasSubstr("--circles"));
}

TEST(QuickDivide, SaysWhatIsLeftWhereNoCircleIsExact) {
  const auto answer = quick("divide", {{"divisions", "127"}, {"circles", "15,16,17,18,19,20"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_THAT(answer->says, HasSubstr("arc seconds"));
  EXPECT_THAT(answer->cautions, testing::Contains(HasSubstr("the last space is out")));
  EXPECT_THAT(refusal(quick("divide", {{"divisions", "1"}, {"circles", "15"}})), HasSubstr("--divisions"));
  EXPECT_THAT(refusal(quick("divide", {{"divisions", "7"}, {"circles", ""}})), HasSubstr("--circles"));
}

}  // namespace
}  // namespace sparewright::answers
