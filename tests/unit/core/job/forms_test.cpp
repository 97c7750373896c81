// The forms of features, from the text to the cutter, against plain geometry worked by hand; and what is refused.
#include <numbers>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "judged_job.hpp"
#include "part_text.hpp"

namespace sparewright {
namespace {

using ledger::State;
using testing::HasSubstr;
using tests::bar;
using tests::blank;
using tests::bore;
using tests::cutter_mm3;
using tests::expect_volume;
using tests::form;
using tests::judged;
using tests::plate;
using tests::troubles_of;

constexpr double kPi = std::numbers::pi;

// --- blanks ------------------------------------------------------------------------------------------------------
TEST(Blanks, HaveTheVolumeOfPlainGeometry) {
  expect_volume(plate(), 120000.0);
  expect_volume(bar(), kPi * 400.0 * 100.0);
  expect_volume(blank("square bar", "length = \"50\", across = \"20\""), 20000.0);
  expect_volume(blank("hex bar", "length = \"50\", across = \"20\""), 2.0 * std::sqrt(3.0) * 100.0 * 50.0);
  expect_volume(blank("tube", "length = \"50\", diameter = \"40\", bore = \"30\""),
                kPi * (400.0 - 225.0) * 50.0);
}

TEST(Blanks, RefuseATubeWithoutAWall) {
  EXPECT_THAT(troubles_of(blank("tube", "length = \"50\", diameter = \"40\", bore = \"40\"")),
              HasSubstr("less than the diameter"));
  EXPECT_THAT(troubles_of(blank("tube", "length = \"50\", diameter = \"40\"")), HasSubstr("bore"));
  EXPECT_THAT(troubles_of(blank("hex bar", "length = \"50\", diameter = \"40\"")), HasSubstr("across"));
}

// --- milled ------------------------------------------------------------------------------------------------------
TEST(Forms, ASlotIsTwoHalfCirclesAndAStraight) {
  const std::string slot =
      plate() +
      form("slot",
           "along = \"x\"\nat.x = \"50\"\nat.y = \"30\"\nlength = \"40\"\nwidth = \"8\"\ndepth = \"5\"");
  EXPECT_NEAR(cutter_mm3(slot), 5.0 * (32.0 * 8.0 + 16.0 * kPi), 1e-6);
  expect_volume(slot, 120000.0 - 5.0 * (32.0 * 8.0 + 16.0 * kPi));
}

TEST(Forms, AnOpenSlotGoesFromSideToSide) {
  expect_volume(
      plate() + form("slot",
                     "side = \"underside\"\nalong = \"y\"\nat.x = \"50\"\nat.y = \"30\"\nwidth = \"8\"\n"
                     "depth = \"5\""),
      120000.0 - 60.0 * 8.0 * 5.0);
}

TEST(Forms, APocketHasRoundCorners) {
  const std::string pocket = form("pocket",
                                  "along = \"y\"\nat.x = \"50\"\nat.y = \"30\"\nlength = \"40\"\nwidth = "
                                  "\"30\"\ndepth = \"8\"\ncorner_radius = \"5\"");
  expect_volume(plate() + pocket, 120000.0 - 8.0 * (1200.0 - (4.0 - kPi) * 25.0));
}

TEST(Forms, EdgesComeOffStraightAndRound) {
  expect_volume(plate() + form("chamfer", "side = \"top\"\nedge = \"front\"\nsize = \"3\""),
                120000.0 - 4.5 * 100.0);
  expect_volume(plate() + form("chamfer", "side = \"right end\"\nedge = \"back\"\nsize = \"3\""),
                120000.0 - 4.5 * 20.0);
  expect_volume(plate() + form("rounded edge", "side = \"underside\"\nedge = \"left end\"\nradius = \"4\""),
                120000.0 - (1.0 - kPi / 4.0) * 16.0 * 60.0);
}

TEST(Forms, WhatIsCutInAHole) {
  const double bored = kPi * 100.0 * 20.0;
  expect_volume(
      plate() + bore() + form("recess", "in = \"bore\"\ndiameter = \"24\"\nfrom_end = \"6\"\nwidth = \"4\""),
      120000.0 - bored - kPi * (144.0 - 100.0) * 4.0);
  // 6 wide, 22.8 over: outside the bore it is a strip from the circle out to 12.8 from its middle.
  const double half = std::asin(3.0 / 10.0);
  const double strip = 6.0 * 12.8 - (3.0 * std::sqrt(91.0) + 100.0 * half);
  expect_volume(
      plate() + bore() + form("keyway", "in = \"bore\"\nside = \"back\"\nwidth = \"6\"\nover = \"22.8\""),
      120000.0 - bored - strip * 20.0);
  // From the left end to the bore, 2 wide.
  const double thin = std::asin(1.0 / 10.0);
  const double slit = 2.0 * 30.0 - (1.0 * std::sqrt(99.0) + 100.0 * thin);
  expect_volume(plate() + bore() + form("slit", "in = \"bore\"\nside = \"left end\"\nwidth = \"2\""),
                120000.0 - bored - slit * 20.0);
}

// --- turned ------------------------------------------------------------------------------------------------------
TEST(Forms, TurnedOffABar) {
  const double all = kPi * 400.0 * 100.0;
  for (const std::string end : {"left end", "right end"}) {
    const std::string side = "side = \"" + end + "\"\n";
    expect_volume(bar() + form("turned", side + "diameter = \"30\"\nlength = \"40\""),
                  all - kPi * 175.0 * 40.0);
    expect_volume(bar() + form("groove", side + "diameter = \"34\"\nfrom_end = \"20\"\nwidth = \"3\""),
                  all - kPi * (400.0 - 289.0) * 3.0);
    expect_volume(
        bar() + form("taper", side + "small_diameter = \"20\"\nlarge_diameter = \"40\"\nlength = \"30\""),
        all - kPi * 400.0 * 30.0 + kPi / 3.0 * 30.0 * (100.0 + 200.0 + 400.0));
    expect_volume(bar() + form("chamfer", side + "size = \"2\""),
                  all - kPi * (400.0 * 2.0 - 2.0 / 3.0 * (400.0 + 360.0 + 324.0)));
  }
  expect_volume(
      bar() + form("thread", "side = \"left end\"\nthread = \"M24x3\"\ndiameter = \"24\"\nlength = \"25\""),
      all - kPi * (400.0 - 144.0) * 25.0);
}

// A rim rounded with radius 4: a square of 4 less a quarter disc, carried round; the disc's centroid lies 4r/3pi from
// its middle, which is 4 inside the rim.
TEST(Forms, ARimRoundedOver) {
  const double square = 16.0 * 18.0;
  const double quarter = 4.0 * kPi * (16.0 + 16.0 / (3.0 * kPi));
  expect_volume(bar() + form("rounded edge", "side = \"right end\"\nradius = \"4\""),
                kPi * 400.0 * 100.0 - 2.0 * kPi * (square - quarter));
}

// Fillet 3 at the shoulder: what it leaves is a square of 3 less a quarter disc, its middle 3 outside the seat.
TEST(Forms, AShoulderKeepsItsFillet) {
  const double square = 9.0 * 16.5;
  const double quarter = 9.0 * kPi / 4.0 * (18.0 - 4.0 / kPi);
  expect_volume(
      bar() + form("turned", "side = \"left end\"\ndiameter = \"30\"\nlength = \"40\"\nfillet = \"3\""),
      kPi * 400.0 * 100.0 - kPi * 175.0 * 40.0 + 2.0 * kPi * (square - quarter));
}

TEST(Forms, ACentreHoleIsAConeOfSixtyDegrees) {
  EXPECT_NEAR(cutter_mm3(bar() + form("centre hole", "side = \"left end\"\ndiameter = \"6\"\npilot = \"2\"")),
              kPi / 3.0 * 9.0 * 3.0 * std::sqrt(3.0) + kPi * 3.0 * std::sqrt(3.0) +
                  kPi / 3.0 / std::tan(59.0 * kPi / 180.0),
              1e-4);
}

// --- walls beside them -------------------------------------------------------------------------------------------
TEST(Forms, ThinWallsBesideAPocketAreFound) {
  const auto near_the_back = [](const std::string& y) {
    return plate() + form("pocket", "at.x = \"50\"\nat.y = \"" + y +
                                        "\"\nlength = \"40\"\nwidth = \"30\"\ndepth = \"8\"\n"
                                        "corner_radius = \"5\"");
  };
  auto inside = judged(near_the_back("43.3"));  // 60 - 43.3 - 15 = 1.7, 1.5875 is wanted
  EXPECT_EQ(inside.state("least wall", "it"), State::kOk);
  auto outside = judged(near_the_back("43.5"));
  EXPECT_EQ(outside.state("least wall", "it"), State::kNo);
  auto through = judged(near_the_back("46"));
  EXPECT_THAT(through.verdict("least wall", "it").reason, HasSubstr("breaks out at back"));
}

// --- what cannot be ----------------------------------------------------------------------------------------------
TEST(Forms, GeometryThatCannotBeIsNoAndNamesTheFeature) {
  auto job = judged(plate() + form("pocket",
                                   "at.x = \"50\"\nat.y = \"30\"\nlength = \"40\"\nwidth = \"30\"\ndepth = "
                                   "\"8\"\ncorner_radius = \"16\""));
  const auto verdict = job.verdict("geometry", "it");
  EXPECT_EQ(verdict.state, State::kNo);
  EXPECT_THAT(verdict.reason, HasSubstr("crosses itself"));
  EXPECT_FALSE(verdict.todo.empty());
}

TEST(Forms, OffTheBlankIsNo) {
  auto job = judged(
      plate() + form("slot", "at.x = \"150\"\nat.y = \"30\"\nlength = \"20\"\nwidth = \"8\"\ndepth = \"5\""));
  EXPECT_EQ(job.state("it cuts metal", "it"), State::kNo);
}

TEST(Forms, AreRefusedWhereTheyCannotStand) {
  EXPECT_THAT(troubles_of(plate() + form("turned", "side = \"left end\"\ndiameter = \"10\"\nlength = \"5\"")),
              HasSubstr("bar or tube"));
  EXPECT_THAT(troubles_of(bar() + form("turned", "side = \"top\"\ndiameter = \"10\"\nlength = \"5\"")),
              HasSubstr("left end or right end"));
  EXPECT_THAT(troubles_of(plate() + form("chamfer", "side = \"top\"\nedge = \"underside\"\nsize = \"1\"")),
              HasSubstr("a side that meets the top"));
  EXPECT_THAT(troubles_of(plate() + form("slot", "along = \"z\"\nat.x = \"1\"\nat.y = \"1\"\nwidth = \"2\"")),
              HasSubstr("an axis that lies in the side"));
  EXPECT_THAT(
      troubles_of(plate() + bore() + form("slit", "in = \"boer\"\nside = \"left end\"\nwidth = \"2\"")),
      HasSubstr("bore"));
  EXPECT_THAT(troubles_of(plate() + bore() + form("slit", "in = \"bore\"\nside = \"top\"\nwidth = \"2\"")),
              HasSubstr("along the hole"));
  EXPECT_THAT(
      troubles_of(bar() + form("thread",
                               "side = \"left end\"\nthread = \"M24q3\"\ndiameter = \"24\"\nlength = \"9\"")),
      HasSubstr("M24q3"));
  const auto trouble_of_thread = [](const std::string& written) {
    return troubles_of(bar() + form("thread", "side = \"left end\"\nthread = \"" + written +
                                                  "\"\ndiameter = \"24\"\nlength = \"9\""));
  };
  EXPECT_THAT(trouble_of_thread("3/4-11 UNC"), HasSubstr("3/4-10 UNC"));
  EXPECT_THAT(trouble_of_thread("1-5 ACME"), HasSubstr("Unified and metric threads"));
  EXPECT_THAT(troubles_of(plate() + form("slot", "at.x = \"1\"\nat.y = \"1\"\nwidth = \"0\"")),
              HasSubstr("more than 0"));
}

}  // namespace
}  // namespace sparewright
