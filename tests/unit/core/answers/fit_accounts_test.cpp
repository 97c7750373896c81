// Fits and what is left of the metal, as accounts of the trade have it: the figures of each worked by hand.
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

// 0.315 in 0.3125: 0.0025, 8 thou to the inch; a 1/8 bore closes by about 0.002.
TEST(AccountsOfFits, ABushThatWillNotEnter) {
  const auto answer = quick("press", {{"outside", "0.315 in"}, {"hole", "0.3125 in"}, {"bore", "0.125 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "on the diameter"), 0.0025, 1e-9);
  EXPECT_NEAR(number(*answer, "for 1000 of diameter"), 8.0, 1e-9);
  EXPECT_NEAR(number(*answer, "closes by about, rule"), 0.002, 0.0006);
  const auto lighter = quick("press", {{"outside", "0.313 in"}, {"hole", "0.3125 in"}});
  EXPECT_NEAR(number(*lighter, "on the diameter"), 0.0005, 1e-9);
}

// 0.002 tight, bore 0.0035 under the shaft before: 0.0055 under after; 0.0015 clearance: 0.007 to take once it is in.
TEST(AccountsOfFits, ABushIsBoredAfterItIsIn) {
  const auto answer =
      quick("press",
            {{"outside", "1.502 in"}, {"hole", "1.500 in"}, {"bore", "1.2465 in"}, {"finish", "1.2515 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "bore left, by the rule"), 1.2500 - 0.0055, 1e-9);
  EXPECT_NEAR(number(*answer, "to open it then to the size wanted"), 0.007, 1e-9);
}

// 0.012 of interference leaves 0.863 of 0.875.
TEST(AccountsOfFits, ABushThatClosedTooFarIsForetold) {
  const auto answer = quick(
      "press", {{"outside", "1.262 in"}, {"hole", "1.250 in"}, {"bore", "0.875 in"}, {"length", "1 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "bore left, by the rule"), 0.863, 1e-9);
  EXPECT_THAT(answer->cautions, Contains(HasSubstr("yields")));
  EXPECT_EQ(row(*answer, "slides out at, turns at").value, "NOT KNOWN");
  // Half a thou in a thick bush stays elastic.
  const auto light = quick(
      "press", {{"outside", "1.2505 in"}, {"hole", "1.250 in"}, {"bore", "0.500 in"}, {"length", "1 in"}});
  EXPECT_GT(number(*light, "slides out at, at least"), 0.0);
  EXPECT_LT(number(*light, "slides out at, at least"), number(*light, "force to press it in, at most"));
}

// Bore 6 mm, 0 to -4 um; shaft 6.000, 1 um either way: from 5 um tight to 1 um loose.
TEST(AccountsOfFits, ASeatThatIsLeftAlone) {
  const auto answer = quick("play", {{"hole", "5.996 to 6.000 mm"}, {"shaft", "6.000 +- 0.001 mm"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(row(*answer, "clearance on the diameter").numbers.at(0), -0.005, 1e-9);
  EXPECT_NEAR(row(*answer, "clearance on the diameter").numbers.at(1), 0.001, 1e-9);
  // The next micrometre off the shaft: 2 um loose at worst.
  const auto next = quick("play", {{"hole", "5.996 to 6.000 mm"}, {"shaft", "5.999 +- 0.001 mm"}});
  EXPECT_NEAR(row(*next, "clearance on the diameter").numbers.at(1), 0.002, 1e-9);
}

// Places good to 0.015 on both sides: 2 x 0.030 of play; 5.000 in 5.000 has none.
TEST(AccountsOfFits, PostsAllOfOneSizeWithTheirHoles) {
  std::map<std::string, std::string> entries{
      {"hole-place", "0.015 in"}, {"post-place", "0.015 in"}, {"hole", "5.000 in"}, {"post", "5.000 in"}};
  const auto answer = quick("pattern", entries);
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "play on the diameter, at least"), 0.060, 1e-9);
  EXPECT_NEAR(number(*answer, "missing"), 0.060, 1e-9);
  EXPECT_THAT(answer->says, StartsWith("may not go on"));
  entries["hole"] = "5.060 in";
  EXPECT_THAT(quick("pattern", entries)->says, StartsWith("OK"));
  entries["hole"] = "4.999 in";
  EXPECT_THAT(quick("pattern", entries)->says, StartsWith("NO"));
}

// 0.375 bore: over 0.352 a shim of 0.010, over 0.342 one of 0.015: both leave 0.003. Bare 0.364 and 0.363: 0.011 to 0.012.
TEST(AccountsOfFits, AShimWrappedInARecess) {
  const auto wide = quick("play", {{"hole", "0.375 in"}, {"shaft", "0.352 in"}, {"shim", "0.010 in"}});
  ASSERT_TRUE(wide) << refusal(wide);
  EXPECT_NEAR(number(*wide, "leaves, on the diameter"), 0.003, 1e-9);
  EXPECT_NEAR(number(*wide, "on each side, shaft in the middle"), 0.0115, 1e-9);
  const auto deep = quick("play", {{"hole", "0.375 in"}, {"shaft", "0.342 in"}, {"shim", "0.015 in"}});
  EXPECT_NEAR(number(*deep, "leaves, on the diameter"), 0.003, 1e-9);
  const auto bare = quick("play", {{"hole", "0.375 in"}, {"shaft", "0.363 to 0.364 in"}});
  EXPECT_NEAR(row(*bare, "clearance on the diameter").numbers.at(0), 0.011, 1e-9);
  EXPECT_NEAR(row(*bare, "clearance on the diameter").numbers.at(1), 0.012, 1e-9);
}

// 1.375 worn 0.010 on one side comes clean at 1.355, worn evenly at 1.365; walls 0.0675, 0.0725 and 0.125.
TEST(AccountsOfFits, AScoredShaftGetsASleeve) {
  const auto one_side = quick("clean-up", {{"size", "1-3/8 in"}, {"deep", "0.010 in"}});
  ASSERT_TRUE(one_side) << refusal(one_side);
  EXPECT_NEAR(number(*one_side, "comes clean at"), 1.355, 1e-9);
  const auto even = quick("clean-up", {{"size", "1-3/8 in"}, {"deep", "0.005 in"}});
  EXPECT_NEAR(number(*even, "comes clean at"), 1.365, 1e-9);
  const auto wall = [](const char* outside, const char* inside) {
    return number(*quick("wall", {{"outside", outside}, {"inside", inside}}), "all round, where it is true");
  };
  EXPECT_NEAR(wall("1.5 in", "1.365 in"), 0.0675, 1e-9);
  EXPECT_NEAR(wall("1.5 in", "1.355 in"), 0.0725, 1e-9);
  EXPECT_NEAR(wall("1.75 in", "1.5 in"), 0.125, 1e-9);
}

// 7/8 cleaned up to 0.850: 0.0125 a side.
TEST(AccountsOfFits, AHardPinIsTurnedClean) {
  const auto answer = quick("clean-up", {{"size", "7/8 in"}, {"deep", "0.0125 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "comes clean at"), 0.850, 1e-9);
}

// Key 0.010 higher than the room there is: it stretches the hub.
TEST(AccountsOfFits, AKeyThatIsTooTall) {
  const auto tall = quick("key-room", {{"hub", "2.230 in"}, {"back", "1.740 in"}, {"key", "0.500 in"}});
  ASSERT_TRUE(tall) << refusal(tall);
  EXPECT_NEAR(number(*tall, "room"), -0.010, 1e-9);
  EXPECT_THAT(tall->says, StartsWith("NO"));
  EXPECT_THAT(tall->cautions, Contains(HasSubstr("oval")));
  const auto fits = quick("key-room", {{"hub", "2.230 in"}, {"back", "1.740 in"}, {"key", "0.485 in"}});
  EXPECT_THAT(fits->says, StartsWith("OK"));
  const auto close = quick("key-room", {{"hub", "2.230 in"}, {"back", "1.740 in"}, {"key", "0.488 in"}});
  EXPECT_THAT(close->says, StartsWith("CLOSE"));
}

// 1/2 shaft, 1/8 key: arc 0.0079, 0.0704 from the crest, 0.4296 over the back. Hub 0.560: 0.005 over the key.
TEST(AccountsOfFits, AKeyseatIsMeasuredOverTheBack) {
  const auto seat = quick("keyseat", {{"shaft", "1/2 in"}, {"width", "1/8 in"}, {"height", "1/8 in"}});
  ASSERT_TRUE(seat) << refusal(seat);
  EXPECT_THAT(seat->says, HasSubstr("0.0704 in"));
  EXPECT_NEAR(row(*seat, "over the back").numbers.at(1), 0.4296, 0.00011);
  EXPECT_NEAR(row(*seat, "over the back, hub").numbers.at(0), 0.5596, 1e-9);
  EXPECT_NEAR(number(*seat, "crest to the edges"), 0.0079, 1e-9);
  const auto room = quick("key-room", {{"hub", "0.5596 in"}, {"back", "0.4296 in"}, {"key", "0.125 in"}});
  EXPECT_NEAR(number(*room, "room"), 0.005, 1e-9);
}

// 0.012 deep and the centre 0.002 out: 0.028, so 0.030 and not 0.020. From a wall worn 0.0025: 0.033, and 0.030 fails.
TEST(AccountsOfFits, TheOversizeThatComesClean) {
  std::map<std::string, std::string> entries{{"size", "3.500 in"},
                                             {"deep", "0.012 in"},
                                             {"off-centre", "0.002 in"},
                                             {"side", "hole"},
                                             {"steps", "0.020, 0.030 in"}};
  const auto answer = quick("clean-up", entries);
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "oversize needed"), 0.028, 1e-9);
  EXPECT_NEAR(number(*answer, "step to take"), 0.030, 1e-9);
  EXPECT_NEAR(number(*answer, "size it makes"), 3.530, 1e-9);
  entries["deep"] = "0.0145 in";
  EXPECT_NEAR(number(*quick("clean-up", entries), "oversize needed"), 0.033, 1e-9);
  EXPECT_THAT(quick("clean-up", entries)->says, HasSubstr("none of the steps"));
  entries["deep"] = "0.013 in";  // exactly 0.030
  EXPECT_NEAR(number(*quick("clean-up", entries), "step to take"), 0.030, 1e-9);
}

// A bore on a trued outside, a little off it: the wall thins by what it is off.
TEST(AccountsOfFits, TheThinSideOfABoredCasting) {
  const auto answer =
      quick("wall", {{"outside", "2.000 in"}, {"inside", "1.500 in"}, {"off-centre", "0.006 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "at its thinnest"), 0.244, 1e-9);
}

// A groove root of 0.610 round a bore of 0.625: nothing is left. A plug 0.001 tight in aluminium of 0.624: 125 degF warmer,
// 250 with 0.001 to slide on, by 12.8 millionths for 1 degF; the handbook's 24 millionths for 1 degC are 13.3.
TEST(AccountsOfFits, APulleyOnALargerShaft) {
  const auto none = quick("wall", {{"outside", "0.610 in"}, {"inside", "0.625 in"}});
  ASSERT_TRUE(none) << refusal(none);
  EXPECT_THAT(none->says, StartsWith("NO: no wall is left"));
  const auto warm = quick(
      "heat",
      {{"size", "0.624 in"}, {"interference", "0.001 in"}, {"slip", "0.001 in"}, {"material", "6061 T6"}});
  ASSERT_TRUE(warm) << refusal(warm);
  EXPECT_NEAR(number(*warm, "until it just goes"), 125.0 * 12.8 / 13.33, 1.0);
  EXPECT_NEAR(number(*warm, "with room to slide on"), 250.0 * 12.8 / 13.33, 1.0);
}

// Steel, 0.006 tight: 264 degF at 3.5 in, 205 at 4.5, 168 at 5.5 to touch; 4.5 with 0.0045 of room: 360.
TEST(AccountsOfFits, AGearIsShrunkOn) {
  for (const auto& [size, touch] : {std::pair("3.5 in", 264.0), {"4.5 in", 205.0}, {"5.5 in", 168.0}}) {
    const auto answer = quick("heat", {{"size", size}, {"interference", "0.006 in"}, {"material", "1018"}});
    ASSERT_TRUE(answer) << refusal(answer);
    EXPECT_NEAR(number(*answer, "until it just goes"), touch, 1.0);
  }
  const auto slides = quick("heat", {{"size", "4.5 in"}, {"interference", "0.006 in"}, {"material", "1018"}});
  EXPECT_NEAR(number(*slides, "with room to slide on"), 360.0, 2.0);
  EXPECT_NEAR(number(*slides, "a gauge over the shaft by"), 0.0045, 1e-9);
}

// 7/24: 8.2971 degrees, not 8.1301; a slide rises 0.1443 an inch, 0.1458 an inch of bar; 0.5833 over 2 in.
TEST(AccountsOfFits, ASteepTaperIsSetByHalfTheRatio) {
  const auto answer = quick("taper", {{"taper", "7:24"}, {"over", "2.000 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "angle to the axis"), 8.2971, 1e-9);
  EXPECT_NEAR(number(*answer, "NOT half the angle of the whole taper"), 8.1301, 1e-9);
  EXPECT_NEAR(number(*answer, "indicator on the slide, 1 in of its travel"), 0.1443, 1e-9);
  EXPECT_NEAR(number(*answer, "the same, 1 in along the bar"), 0.1458, 1e-9);
  EXPECT_NEAR(number(*answer, "the diameter changes over 2.0000 in (50.800 mm)"), 0.5833, 1e-9);
}

// 1:12 on 1:16, 6 in: 0.125 off the small end, 2 in back, 0.0625 a side; 4.5 in: 0.094. 1.790 degrees.
TEST(AccountsOfFits, AHubOfAnotherTaper) {
  const auto answer = quick("taper-pair", {{"shaft", "1:16"}, {"hole", "1:12"}, {"length", "6 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_THAT(answer->says, HasSubstr("small end alone"));
  EXPECT_NEAR(number(*answer, "off the small end, on the diameter"), 0.125, 1e-9);
  EXPECT_NEAR(number(*answer, "off the large end, on the diameter"), 0.0, 1e-9);
  EXPECT_NEAR(number(*answer, "the hub stands back by"), 2.0, 1e-9);
  EXPECT_NEAR(number(*answer, "gap at the large end, each side"), 0.0625, 1e-9);
  EXPECT_NEAR(number(*answer, "angle to the axis"), 1.790, 0.0005);
  const auto shorter =
      quick("taper-pair", {{"shaft", "0.75 in/ft"}, {"hole", "1 in/ft"}, {"length", "4.5 in"}});
  EXPECT_NEAR(number(*shorter, "off the small end, on the diameter"), 0.094, 0.0005);
  // The other way round it bears at the large end, and boring takes metal there.
  const auto other = quick("taper-pair", {{"shaft", "1:12"}, {"hole", "1:16"}, {"length", "6 in"}});
  EXPECT_THAT(other->says, HasSubstr("large end alone"));
  EXPECT_NEAR(number(*other, "off the large end, on the diameter"), 0.125, 1e-9);
}

// A saw cut that closes takes its width over pi off a bore; halves come nearer by the whole of it.
TEST(AccountsOfFits, ASplitCollarCloses) {
  const auto one = quick("slit", {{"bore", "3.000 in"}, {"slit", "0.0625 in"}});
  ASSERT_TRUE(one) << refusal(one);
  EXPECT_NEAR(number(*one, "the bore loses"), 0.0199, 1e-9);
  const auto halves = quick("slit", {{"bore", "3.000 in"}, {"slit", "0.0625 in"}, {"kind", "halves"}});
  EXPECT_NEAR(number(*halves, "the bore loses"), 0.0625, 1e-9);
  EXPECT_THAT(one->cautions, Contains(HasSubstr("web")));
}

// 5.250 grooved to 5-3/16: 0.031 of land.
TEST(AccountsOfFits, TheLandOverAClampingGroove) {
  const auto answer = quick("wall", {{"outside", "5.250 in"}, {"inside", "5-3/16 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "all round, where it is true"), 0.0313, 1e-9);
}

// 3/4 across the flats, 1/2 bore: 0.125, four threads of 10-32.
TEST(AccountsOfFits, ASetScrewInABoss) {
  const auto answer =
      quick("wall", {{"outside", "0.750 in"}, {"inside", "0.500 in"}, {"cross-thread", "10-32"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "all round, where it is true"), 0.125, 1e-9);
  EXPECT_NEAR(number(*answer, "threads of 10-32 through it"), 4.0, 1e-9);
  const auto mesh = quick("engage", {{"length", "0.125 in"}}, "10-32");
  ASSERT_TRUE(mesh) << refusal(mesh);
  EXPECT_NEAR(number(*mesh, "threads"), 4.0, 1e-9);
}

// 4 x 7/16 on 4.125: 0.2185 to a register of 4.9995, 0.469 to 5.500.
TEST(AccountsOfFits, HolesNearARegister) {
  const auto answer = quick("webs", {{"count", "4"},
                                     {"circle", "4.125 in"},
                                     {"hole", "7/16 in"},
                                     {"outside", "5.500 in"},
                                     {"inside", "4.9995 in"},
                                     {"least", "0.200 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "hole to the inner circle"), 0.2185, 1e-9);
  EXPECT_NEAR(number(*answer, "hole to outside"), 0.4688, 1e-9);
  EXPECT_NEAR(number(*answer, "hole to hole"), 2.9168 - 0.4375, 0.0001);
  EXPECT_THAT(answer->says, StartsWith("OK"));
}

// A spigot 0.003 under: a ring of 1/16 wall wants 0.125 off; bored 0.001 over the spigot to bond, 0.001 an inch under to
// shrink on.
TEST(AccountsOfFits, ASpigotThatWentUnder) {
  const auto answer = quick("sleeve", {{"size", "2.000 in"}, {"wall", "0.0625 in"}, {"clean", "1.997 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "shaft turned to"), 1.875, 1e-9);
  EXPECT_NEAR(number(*answer, "sleeve bored, to be bonded"), 1.876, 1e-9);
  EXPECT_NEAR(number(*answer, "sleeve bored, to be shrunk on"), 1.8731, 0.00006);
  const auto deep = quick("sleeve", {{"size", "1.500 in"}, {"clean", "1.355 in"}});
  EXPECT_NEAR(number(*deep, "shaft turned to"), 1.355, 1e-9);
  EXPECT_NEAR(number(*deep, "wall of the sleeve, finished"), 0.0725, 1e-9);
}

// Cold-drawn 1 in steel is 1.000 to 0.998 (ASTM A108): no seat of 0.9995 to 1.0000 to rely on, never one over 1 in.
TEST(AccountsOfFits, ADrawnBarAsABearingSeat) {
  const auto answer =
      quick("bar", {{"size", "1 in"}, {"seat", "0.9995 to 1.0000 in"}, {"hole", "0.9996 to 1.0000 in"}});
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(row(*answer, "it may measure").numbers.at(0), 0.998, 1e-9);
  EXPECT_NEAR(row(*answer, "it may measure").numbers.at(1), 1.000, 1e-9);
  EXPECT_THAT(answer->says, StartsWith("NOT KNOWN"));
  EXPECT_NEAR(row(*answer, "clearance in the hole").numbers.at(1), 0.002, 1e-9);
  EXPECT_THAT(quick("bar", {{"size", "1 in"}, {"seat", "1.0001 to 1.0005 in"}})->says, StartsWith("NO:"));
  EXPECT_THAT(quick("bar", {{"size", "1 in"}, {"seat", "0.997 to 1.001 in"}})->says, StartsWith("OK"));
  // h9 at 25 mm: 0 to -52 um.
  const auto metric = quick("bar", {{"size", "25 mm"}});
  ASSERT_TRUE(metric) << refusal(metric);
  EXPECT_NEAR(row(*metric, "it may measure").numbers.at(0), 24.948, 1e-9);
  EXPECT_FALSE(quick("bar", {{"size", "1 in"}, {"material", "grey iron class 30"}}));
}

// A drilled hole asked to 0.0005: finer than a drill keeps.
TEST(AccountsOfFits, AToleranceFinerThanTheDrill) {
  const auto fine = quick("ream", {{"size", "1/2 in"}, {"tolerance", "0.0005 in"}});
  ASSERT_TRUE(fine) << refusal(fine);
  EXPECT_THAT(fine->says, StartsWith("NO, not by a drill"));
  EXPECT_LT(row(*fine, "hole").numbers.at(1), 0.5);
  const auto coarse = quick("ream", {{"size", "1/2 in"}, {"tolerance", "0.020 in"}});
  EXPECT_THAT(coarse->says, StartsWith("a drill keeps it"));
}

// Screws through two parts float in both holes: 1/4 screws in 9/32 holes have 2 x 0.031 for 2 x 0.030.
TEST(AccountsOfFits, ScrewsThroughTwoPartsFloat) {
  std::map<std::string, std::string> entries{{"hole-place", "0.015 in"},
                                             {"post-place", "0.015 in"},
                                             {"hole", "9/32 in"},
                                             {"second-hole", "9/32 in"},
                                             {"post", "1/4 in"}};
  const auto answer = quick("pattern", entries);
  ASSERT_TRUE(answer) << refusal(answer);
  EXPECT_NEAR(number(*answer, "play there is, at least"), 0.0625, 1e-9);
  EXPECT_THAT(answer->says, StartsWith("OK"));
  entries["second-hole"] = "0.270 in";
  EXPECT_THAT(quick("pattern", entries)->says, StartsWith("may not go on"));
}

TEST(AccountsOfFits, WhatCannotBeIsRefusedByItsEntry) {
  EXPECT_THAT(refusal(quick("play", {{"hole", "6.1 to 6.0 mm"}, {"shaft", "6 mm"}})), HasSubstr("--hole"));
  EXPECT_THAT(refusal(quick("play", {{"hole", "6, 7 mm"}, {"shaft", "6 mm"}})), HasSubstr("--hole"));
  EXPECT_THAT(refusal(quick("press", {{"outside", "1 in"}, {"hole", "1 in"}})), HasSubstr("--outside"));
  EXPECT_THAT(refusal(quick("press", {{"outside", "1.001 in"}, {"hole", "1 in"}, {"bore", "1 in"}})),
              HasSubstr("--bore"));
  EXPECT_THAT(refusal(quick("press", {{"outside", "1.001 in"}, {"hole", "1 in"}, {"finish", "0.5 in"}})),
              HasSubstr("--finish"));
  EXPECT_THAT(refusal(quick("heat", {{"size", "1 in"}, {"interference", "0.2 in"}})),
              HasSubstr("--interference"));
  EXPECT_THAT(refusal(quick("clean-up", {{"size", "1 in"}, {"deep", "0.5 in"}})), HasSubstr("--deep"));
  EXPECT_THAT(refusal(quick("wall", {{"outside", "1 in"}, {"inside", "big"}})), HasSubstr("--inside"));
  EXPECT_THAT(refusal(quick("webs", {{"count", "1"}, {"circle", "2 in"}, {"hole", "1/4 in"}})),
              HasSubstr("--outside"));
  EXPECT_THAT(refusal(quick("taper-pair", {{"shaft", "1:1"}, {"hole", "1:12"}, {"length", "1 in"}})),
              HasSubstr("--shaft"));
  EXPECT_THAT(refusal(quick("slit", {{"bore", "1 in"}, {"slit", "1/8 in"}, {"closes", "1/4 in"}})),
              HasSubstr("--closes"));
  EXPECT_THAT(refusal(quick("key-room", {{"hub", "1 in"}, {"back", "1.1 in"}, {"key", "1/4 in"}})),
              HasSubstr("--back"));
}

}  // namespace
}  // namespace sparewright::answers
