// Oil grooves, pin holes, splits, chucking pieces, knurls, eccentrics, crowned ends, dovetails, profiles and bushes: from
// the text to the metal left, against plain geometry worked by hand; and what is refused.
#include <cmath>
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
using tests::bore;
using tests::cutter_mm3;
using tests::expect_volume;
using tests::form;
using tests::judged;
using tests::plate;
using tests::troubles_of;

constexpr double kPi = std::numbers::pi;
constexpr double kPlate = 120000.0;            // 100 x 60 x 20
constexpr double kBar = 400.0 * 100.0 * kPi;   // 40 x 100
constexpr double kBored = kPi * 100.0 * 20.0;  // 20 through the plate

// --- in a hole ---------------------------------------------------------------------------------------------------
// Of the round groove only the part outside the bore is new: the circle less its overlap with the bore, the sum of two
// circular segments.
double outside_bore(double bore_r, double groove_r, double apart) {
  const double a =
      std::acos((apart * apart + groove_r * groove_r - bore_r * bore_r) / (2 * apart * groove_r));
  const double b = std::acos((apart * apart + bore_r * bore_r - groove_r * groove_r) / (2 * apart * bore_r));
  const double lens =
      groove_r * groove_r * (a - std::sin(2 * a) / 2) + bore_r * bore_r * (b - std::sin(2 * b) / 2);
  return kPi * groove_r * groove_r - lens;
}

TEST(MoreForms, AnOilGrooveLiesInTheWallOfItsHole) {
  // Radius 2, 1 below the wall: its middle 9 from the bore's.
  const double section = outside_bore(10.0, 2.0, 9.0);
  const std::string groove = "in = \"bore\"\nside = \"left end\"\nradius = \"2\"\ndepth = \"1\"\n";
  expect_volume(plate() + bore() + form("oil groove", groove), kPlate - kBored - section * 20.0);
  expect_volume(plate() + bore() + form("oil groove", groove + "from_end = \"5\"\nlength = \"10\""),
                kPlate - kBored - section * 10.0);
}

// --- pins and points ---------------------------------------------------------------------------------------------
TEST(MoreForms, ADimpleIsACone) {
  expect_volume(plate() + form("dimple", "at.x = \"50\"\nat.y = \"30\"\ndepth = \"3\"\nangle = \"90\""),
                kPlate - kPi / 3.0 * 27.0);
}

TEST(MoreForms, ATaperPinHoleNarrowsByItsTaper) {
  // 1 in 50 over 20: 8 at its side, 7.6 at the far one.
  expect_volume(
      plate() + form("taper pin hole", "at.x = \"50\"\nat.y = \"30\"\ndiameter = \"8\"\ntaper = \"1/50\""),
      kPlate - kPi / 3.0 * 20.0 * (16.0 + 4.0 * 3.8 + 3.8 * 3.8));
}

TEST(MoreForms, ASpringPinHoleTakesH12) {
  const std::string text =
      plate() + form("spring pin hole", "at.x = \"50\"\nat.y = \"30\"\ndiameter = \"4\"");
  expect_volume(text, kPlate - kPi * 4.0 * 20.0);
  auto job = judged(text);
  // IT12 over 3 to 6 mm is 0.12 mm (ISO 286-1, table 1).
  EXPECT_NEAR(job.ledger.get("feature/it/diameter/most").value, 4.12, 1e-9);
  EXPECT_NEAR(job.ledger.get("feature/it/diameter/least").value, 4.0, 1e-9);
}

// --- sawn and left on --------------------------------------------------------------------------------------------
TEST(MoreForms, ASplitTakesItsKerfAllTheWay) {
  expect_volume(plate() + form("split", "side = \"left end\"\nfrom_side = \"40\"\nwidth = \"2\""),
                kPlate - 2.0 * 60.0 * 20.0);
}

TEST(MoreForms, ASplitThatLeavesOnePieceIsNo) {
  const auto split = [](const std::string& from) {
    return judged(plate() +
                  form("split", "side = \"left end\"\nfrom_side = \"" + from + "\"\nwidth = \"2\""));
  };
  auto inside = split("97");  // 1 is left beyond it
  for (const auto& verdict : inside.ledger.verdicts())
    EXPECT_NE(verdict.check, "split leaves two pieces");
  EXPECT_NEAR(inside.ledger.get("check/split/it/piece towards right end").value, 1200.0, 1.0);
  EXPECT_NEAR(inside.ledger.get("check/split/it/piece towards left end").value, 97.0 * 1200.0, 100.0);
  auto outside = split("98");
  EXPECT_EQ(outside.state("split leaves two pieces", "it"), State::kNo);
}

TEST(MoreForms, AChuckingPieceIsCutOffAndTheEndLiesBehindIt) {
  const std::string piece =
      "[[feature]]\nname = \"piece\"\nkind = \"chucking piece\"\nside = \"right end\"\nlength = \"15\"\n";
  const std::string turned = form("turned", "side = \"right end\"\ndiameter = \"30\"\nlength = \"40\"");
  expect_volume(bar() + piece + turned, kPi * 400.0 * 45.0 + kPi * 225.0 * 40.0);
  // The tool starts behind the piece: 40 long, out to 1 past the corners of a square round the bar.
  const double out = std::hypot(40.0, 40.0) / 2.0 + 1.0;
  EXPECT_NEAR(cutter_mm3(bar() + piece + turned), kPi * (out * out - 225.0) * 40.0, 1e-2);
  auto job = judged(bar() + piece +
                    "[[feature]]\nname = \"hole\"\nkind = \"hole\"\nhow = \"drilled\"\ndiameter = \"4\"\n"
                    "at.x = { size = \"10\", from = \"right end\" }\nat.y = \"20\"\n");
  EXPECT_NEAR(job.ledger.get("feature/hole/at x").value, 75.0, 1e-9);
}

TEST(MoreForms, WhatIsCutIntoABarIsMeasuredFromWhatIsTurnedThere) {
  const std::string seat =
      "[[feature]]\nname = \"seat\"\nkind = \"turned\"\nside = \"right end\"\ndiameter = \"30\"\nlength = "
      "\"40\"\n";
  const auto keyseat = [](const std::string& side, const std::string& x) {
    const std::string across = side == "top" || side == "underside" ? "y" : "z";
    return form("keyseat", "side = \"" + side + "\"\nalong = \"x\"\nat.x = \"" + x + "\"\nat." + across +
                               " = \"20\"\nlength = \"20\"\nwidth = \"6\"\ndepth = \"4\"");
  };
  const auto start = [&](const std::string& side, const std::string& x) {
    return judged(bar() + seat + keyseat(side, x)).ledger.get("feature/it/starts at").value;
  };
  EXPECT_NEAR(start("top", "80"), 35.0, 1e-9);
  EXPECT_NEAR(start("underside", "80"), 5.0, 1e-9);
  EXPECT_NEAR(start("front", "80"), 5.0, 1e-9);
  EXPECT_NEAR(start("top", "30"), 40.0, 1e-9) << "beyond the shoulder the bar is as it was";
  // From 20 at the end to 40 in 40: at 30 from the end it is 35 across.
  const std::string taper =
      "[[feature]]\nname = \"cone\"\nkind = \"taper\"\nside = \"right end\"\nsmall_diameter = "
      "\"20\"\nlarge_diameter = "
      "\"40\"\nlength = \"40\"\n";
  EXPECT_NEAR(judged(bar() + taper + keyseat("top", "70")).ledger.get("feature/it/starts at").value, 37.5,
              1e-9);
  // 4 deep below the crest of the seat: the cutter's floor lies 11 above the middle, 9 below the blank's crest.
  const auto job = judged(bar() + seat + keyseat("top", "80")).ledger.value<shape::Recipe>(part::kRecipe);
  ASSERT_TRUE(job);
  EXPECT_NEAR(std::get<shape::ProfiledBody>(job->cuts().back().nominal).height_mm, 9.0, 1e-6);
}

TEST(MoreForms, AHoleRoundATurnedSeatIsAsDeepAsItSays) {
  auto job = judged(
      bar() +
      "[[feature]]\nname = \"seat\"\nkind = \"turned\"\nside = \"right end\"\ndiameter = \"30\"\nlength "
      "= \"40\"\n[[feature]]\nname = \"it\"\nkind = \"hole\"\nhow = \"drilled\"\ndiameter = \"4\"\n"
      "depth = \"3\"\nat.x = \"80\"\naround_bar = { angle = \"120\" }\n");
  const auto recipe = job.ledger.value<shape::Recipe>(part::kRecipe);
  ASSERT_TRUE(recipe);
  EXPECT_NEAR(std::get<shape::DrilledHole>(recipe->cuts().back().nominal).depth_mm, 8.0, 1e-6);
}

// Radius 4 at the top, 3.8 at the bottom of the plate: 4 from the middle to the metal's end is too little.
TEST(MoreForms, APinHoleAtTheEdgeIsNo) {
  const auto pin = [](const std::string& y) {
    return judged(plate() + form("taper pin hole",
                                 "at.x = \"50\"\nat.y = \"" + y + "\"\ndiameter = \"8\"\ntaper = \"1/50\""));
  };
  EXPECT_EQ(pin("5.7").state("least wall", "it"), State::kOk);  // 1.7; 1.5875 is wanted
  EXPECT_EQ(pin("5.5").state("least wall", "it"), State::kNo);
  EXPECT_EQ(pin("0").state("least wall", "it"), State::kNo);
}

TEST(MoreForms, AChuckingPieceLeavesTheFinishedLength) {
  auto job = judged(bar() +
                    "[[feature]]\nname = \"piece\"\nkind = \"chucking piece\"\nside = \"left end\"\nlength = "
                    "\"15\"\n");
  EXPECT_NEAR(job.ledger.get("feature/piece/over all").value, 85.0, 1e-9);
}

// --- turned ------------------------------------------------------------------------------------------------------
TEST(MoreForms, AKnurlIsWhatIsTurnedForIt) {
  const auto knurl = [](const std::string& d) {
    return bar() + form("knurl", "side = \"left end\"\ndiameter = \"" + d +
                                     "\"\npitch = \"1\"\nfrom_end = \"10\"\nlength = \"20\"");
  };
  expect_volume(knurl("38"), kBar - kPi * (400.0 - 361.0) * 20.0);
  expect_volume(knurl("40"), kBar);
}

TEST(MoreForms, AnEccentricStandsBesideTheAxis) {
  const std::string text =
      bar() +
      form("eccentric",
           "side = \"right end\"\ntowards = \"back\"\ndiameter = \"30\"\nlength = \"20\"\nthrow = \"4\"");
  expect_volume(text, kBar - kPi * (400.0 - 225.0) * 20.0);
  auto job = judged(text);
  const auto recipe = job.ledger.value<shape::Recipe>(part::kRecipe);
  ASSERT_TRUE(recipe);
  EXPECT_NEAR(shape::frame_of(recipe->cuts().front().nominal).origin.y, 24.0, 1e-6);
}

// What a ball leaves of the last h of a bar of radius r is a cap, pi h (3 r^2 + h^2) / 6.
TEST(MoreForms, ACrownedEndIsPartOfABall) {
  const double h = 50.0 - std::sqrt(2500.0 - 400.0);
  expect_volume(bar() + form("crowned end", "side = \"left end\"\nradius = \"50\""),
                kBar - kPi * 400.0 * h + kPi * h * (1200.0 + h * h) / 6.0);
  expect_volume(bar() + form("crowned end", "side = \"right end\"\nradius = \"20\""),
                kBar - kPi * 400.0 * 20.0 + 2.0 / 3.0 * kPi * 8000.0);
}

// --- milled ------------------------------------------------------------------------------------------------------
TEST(MoreForms, ADovetailIsWiderAtItsBottom) {
  const double section = 8.0 * (20.0 + 8.0 / std::tan(kPi / 3.0));
  const std::string way = "at.x = \"50\"\nat.y = \"30\"\nwidth = \"20\"\ndepth = \"8\"\nangle = \"60\"\n";
  expect_volume(plate() + form("dovetail", way + "along = \"x\""), kPlate - section * 100.0);
  expect_volume(plate() + form("dovetail", way + "along = \"y\"\nside = \"top\""), kPlate - section * 60.0);
  expect_volume(plate() + form("dovetail", way + "along = \"y\"\nside = \"underside\""),
                kPlate - section * 60.0);
}

std::string corners(const std::string& list) {
  return "corner = [" + list + "]\n";
}
const char* const kStadium =
    "{ x = \"20\", y = \"15\" }, { x = \"80\", y = \"15\", arc = \"15\" }, { x = \"80\", y = \"45\" }, "
    "{ x = \"20\", y = \"45\", arc = \"15\" }";

TEST(MoreForms, AProfileIsMilledOut) {
  const double stadium = 60.0 * 30.0 + kPi * 225.0;
  expect_volume(plate() + form("profile", "takes = \"inside\"\ndepth = \"5\"\n" + corners(kStadium)),
                kPlate - stadium * 5.0);
  // The same written the other way round.
  expect_volume(
      plate() +
          form("profile", "takes = \"inside\"\ndepth = \"5\"\n" +
                              corners("{ x = \"20\", y = \"45\" }, { x = \"80\", y = \"45\", arc = \"15\" "
                                      "}, { x = \"80\", y = \"15\" }, { x = \"20\", y = \"15\", arc = "
                                      "\"15\" }")),
      kPlate - stadium * 5.0);
}

TEST(MoreForms, AProfileIsMilledRound) {
  const double stadium = 60.0 * 30.0 + kPi * 225.0;
  expect_volume(plate() + form("profile", "takes = \"outside\"\n" + corners(kStadium)), stadium * 20.0);
  expect_volume(plate() + form("profile", "takes = \"outside\"\nside = \"underside\"\ndepth = \"5\"\n" +
                                              corners(kStadium)),
                kPlate - (6000.0 - stadium) * 5.0);
}

TEST(MoreForms, AProfileHasFillets) {
  // A triangle 60 by 40 with a fillet of 5 in its right angle: a square of 5 less a quarter disc is missing.
  expect_volume(
      plate() +
          form("profile", "takes = \"inside\"\n" +
                              corners("{ x = \"20\", y = \"10\", fillet = \"5\" }, { x = \"80\", y = \"10\" "
                                      "}, { x = \"20\", y = \"50\" }")),
      kPlate - (1200.0 - 25.0 * (1.0 - kPi / 4.0)) * 20.0);
}

TEST(MoreForms, AProfileThatCannotBeIsNoAndNamesTheFeature) {
  const auto verdict_of = [](const std::string& list) {
    return judged(plate() + form("profile", "takes = \"inside\"\n" + corners(list)))
        .verdict("geometry", "it");
  };
  const auto crossed = verdict_of(
      "{ x = \"20\", y = \"10\" }, { x = \"80\", y = \"50\" }, { x = \"80\", y = \"10\" }, { x = "
      "\"20\", y = \"50\" }");
  EXPECT_EQ(crossed.state, State::kNo);
  const auto wide = verdict_of(
      "{ x = \"20\", y = \"10\", fillet = \"70\" }, { x = \"80\", y = \"10\" }, { x = \"20\", y = "
      "\"50\" }");
  EXPECT_EQ(wide.state, State::kNo);
  const auto short_arc = verdict_of(
      "{ x = \"20\", y = \"10\", arc = \"20\" }, { x = \"80\", y = \"10\" }, { x = \"20\", y = "
      "\"50\" }");
  EXPECT_EQ(short_arc.state, State::kNo);
}

// --- bushes ------------------------------------------------------------------------------------------------------
std::string bushed(const std::string& diameter, const std::string& how = "pressed in") {
  return plate() +
         "[[feature]]\nname = \"bore\"\nkind = \"hole\"\nhow = \"bored\"\nat.x = \"30\"\nat.y = "
         "\"30\"\ndiameter = "
         "\"20 +0.021/-0.000\"\n" +
         form("bush", "in = \"bore\"\nhow = \"" + how + "\"\ndiameter = \"" + diameter +
                          "\"\nbore = \"14 +0.02/-0.00\"\nlength = \"20\"");
}

TEST(Bushes, StayInTheirHoleOrDoNot) {
  auto inside = judged(bushed("20.03 +0.00/-0.008"));  // 20.022 in 20.021
  EXPECT_EQ(inside.state("bush stays in its hole", "it"), State::kOk);
  EXPECT_NEAR(inside.ledger.get("feature/it/interference/least").value, 0.001, 1e-9);
  EXPECT_NEAR(inside.ledger.get("feature/it/interference/most").value, 0.030, 1e-9);
  auto outside = judged(bushed("20.03 +0.00/-0.010"));  // 20.020 in 20.021
  EXPECT_EQ(outside.state("bush stays in its hole", "it"), State::kNo);
}

TEST(Bushes, BondedOnesLeaveRoom) {
  EXPECT_EQ(judged(bushed("19.95 +0.04/-0.00", "bonded")).state("bush leaves room for the compound", "it"),
            State::kOk);
  EXPECT_EQ(judged(bushed("19.95 +0.06/-0.00", "bonded")).state("bush leaves room for the compound", "it"),
            State::kNo);
}

TEST(Bushes, AreNotPressedIntoASlitBoss) {
  const std::string slit =
      "[[feature]]\nname = \"slit\"\nkind = \"slit\"\nin = \"bore\"\nside = \"left end\"\nwidth = \"2\"\n";
  EXPECT_EQ(judged(bushed("20.03 +0.00/-0.008") + slit).state("no press in a slit boss", "it"), State::kNo);
  auto bonded = judged(bushed("19.95 +0.04/-0.00", "bonded") + slit);
  for (const auto& verdict : bonded.ledger.verdicts())
    EXPECT_NE(verdict.check, "no press in a slit boss");
}

TEST(Bushes, AreAPieceOfTheirOwn) {
  auto job = judged(bushed("20.03 +0.00/-0.008"));
  const auto recipe = job.ledger.value<shape::Recipe>("feature/it/recipe");
  ASSERT_TRUE(recipe);
  const auto metal = shape::metal_volume(recipe->work());
  EXPECT_NEAR(metal.volume_mm3, kPi / 4.0 * (20.03 * 20.03 - 14.0 * 14.0) * 20.0, metal.error_mm3);
}

// --- threads -----------------------------------------------------------------------------------------------------
// M24x3-6g: the allowance of g at a pitch of 3 is 0.048, the tolerance of the major diameter in grade 6 is 0.375 (ISO 965-1,
// from memory): 24 - 0.048 = 23.952 and 0.375 less, 23.577.
TEST(Threads, WhatIsTurnedForThemLiesInTheirLimits) {
  const auto thread = [](const std::string& diameter) {
    return judged(bar() +
                  form("thread", "side = \"left end\"\nthread = \"M24x3\"\nlength = \"25\"\ndiameter = \"" +
                                     diameter + "\""));
  };
  auto inside = thread("23.9 +0.05/-0.30");
  EXPECT_EQ(inside.state("thread goes into its nut", "it"), State::kOk);
  EXPECT_EQ(inside.state("thread is full enough", "it"), State::kOk);
  EXPECT_EQ(thread("23.9 +0.06/-0.30").state("thread goes into its nut", "it"), State::kNo);
  EXPECT_EQ(thread("23.9 +0.05/-0.33").state("thread is full enough", "it"), State::kNo);
}

// --- measuring ---------------------------------------------------------------------------------------------------
// The caliper is good to 0.001 in either way, reads in steps of 0.001, and its zero is left within half a step, each
// rectangular: u = sqrt(0.001^2 + 0.0005^2 + 0.0005^2) / sqrt(3) = 0.000707 in, and 1.96 u = 0.00139 in = 0.0352 mm at each
// limit. A tolerance of 0.070 mm leaves nothing, one of 0.071 something; from 4 times 0.0352, 0.1408, on nothing is said.
TEST(Measuring, AnInstrumentHasToLeaveSomeOfTheTolerance) {
  const auto hole = [](const std::string& tolerance) {
    return judged(plate() +
                  "[[feature]]\nname = \"it\"\nkind = \"hole\"\nhow = \"bored\"\nat.x = \"30\"\nat.y = "
                  "\"30\"\ndiameter "
                  "= { size = \"20\", tol = \"" +
                  tolerance + "\", duty = \"fits\", with = \"caliper\" }\n");
  };
  EXPECT_EQ(hole("+0.070/-0.000").state("instrument proves diameter", "it"), State::kNo);
  EXPECT_EQ(hole("+0.071/-0.000").state("instrument proves diameter", "it"), State::kClose);
  EXPECT_EQ(hole("+0.140/-0.000").state("instrument proves diameter", "it"), State::kClose);
  auto wide = hole("+0.142/-0.000");
  for (const auto& verdict : wide.ledger.verdicts())
    EXPECT_NE(verdict.check, "instrument proves diameter");
}

// --- refused -----------------------------------------------------------------------------------------------------
TEST(MoreForms, AreRefusedWhereTheyCannotStand) {
  EXPECT_THAT(
      troubles_of(bar() + form("eccentric",
                               "side = \"left end\"\ntowards = \"right end\"\ndiameter = \"9\"\nlength "
                               "= \"9\"\nthrow = \"1\"")),
      HasSubstr("a side that meets the left end"));
  EXPECT_THAT(
      troubles_of(plate() + form("dimple", "at.x = \"1\"\nat.y = \"1\"\ndepth = \"1\"\nangle = \"180\"")),
      HasSubstr("less than 180"));
  EXPECT_THAT(troubles_of(plate() + form("profile", "takes = \"inside\"\n" +
                                                        corners("{ x = \"1\" }, { x = \"2\", y = \"1\" }"))),
              HasSubstr("y"));
  EXPECT_THAT(troubles_of(plate() + bore() +
                          form("bush", "in = \"bore\"\ndiameter = \"20\"\nbore = \"10\"\nlength = \"9\"")),
              HasSubstr("how"));
}

}  // namespace
}  // namespace sparewright
