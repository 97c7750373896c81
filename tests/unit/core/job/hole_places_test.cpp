// Holes written once and made several times, holes that lean, holes round a bar, and their makes: against plain geometry
// worked by hand; and what is refused.
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
using tests::expect_volume;
using tests::judged;
using tests::plate;
using tests::troubles_of;

constexpr double kPi = std::numbers::pi;
constexpr double kPlate = 120000.0;  // mm3

std::string holes(const std::string& rest) {
  return "[[feature]]\nname = \"holes\"\nkind = \"hole\"\nhow = \"drilled\"\n" + rest + "\n";
}
std::string circle(const std::string& rest) {
  return plate() + bore() + holes("diameter = \"4\"\nbolt_circle = { around = \"bore\", " + rest + " }");
}
double place(tests::Judged& job, const std::string& feature, const std::string& axis) {
  return job.ledger.get("feature/" + feature + "/at " + axis).value;
}

// --- bolt circles and angles -------------------------------------------------------------------------------------
TEST(HolePlaces, ABoltCircleIsSpreadEvenlyRoundItsHole) {
  auto job = judged(circle("diameter = \"40\", count = 4, first_angle = \"30\""));
  // The bore is at 30, 30: 20 from it at 30, 120, 210 and 300 degrees.
  const double c = 20.0 * std::sqrt(3.0) / 2.0;
  const double places[4][2] = {{30.0 + c, 40.0}, {20.0, 30.0 + c}, {30.0 - c, 20.0}, {40.0, 30.0 - c}};
  for (int i = 0; i < 4; ++i) {
    const std::string name = "holes " + std::to_string(i + 1);
    EXPECT_NEAR(place(job, name, "x"), places[i][0], 1e-9) << name;
    EXPECT_NEAR(place(job, name, "y"), places[i][1], 1e-9) << name;
  }
  EXPECT_FALSE(job.ledger.get("feature/holes 5/at x").known());
  expect_volume(circle("diameter = \"40\", count = 4, first_angle = \"30\""),
                kPlate - kPi * (100.0 + 4.0 * 4.0) * 20.0);
}

// At 30 degrees on a radius of 20, 0.1 more radius is 0.0866 more x and one degree more is 20 sin 30 (pi / 180) less of
// it: limits at the corners, worked here to the fourth place.
TEST(HolePlaces, LimitsComeOfThoseOfRadiusAndAngle) {
  auto job = judged(plate() + bore() +
                    holes("diameter = \"4\"\nat = { around = \"bore\", radius = { size = \"20\", tol = "
                          "\"±0.1\" }, angle = { size = \"30\", tol = \"±1 deg\" } }"));
  const auto x = [&](const std::string& which) { return job.ledger.get("feature/holes/x" + which).value; };
  EXPECT_NEAR(x(""), 20.0 * std::cos(kPi / 6.0), 1e-9);
  EXPECT_NEAR(x("/least"), 19.9 * std::cos(31.0 * kPi / 180.0), 1e-9);
  EXPECT_NEAR(x("/most"), 20.1 * std::cos(29.0 * kPi / 180.0), 1e-9);
}

TEST(HolePlaces, AFirstAngleOfNothingIsAlongTheFirstAxis) {
  auto job = judged(circle("diameter = \"30\", count = 2"));
  EXPECT_NEAR(place(job, "holes 1", "x"), 45.0, 1e-9);
  EXPECT_NEAR(place(job, "holes 2", "x"), 15.0, 1e-9);
  EXPECT_NEAR(place(job, "holes 2", "y"), 30.0, 1e-9);
}

// --- rows and grids ----------------------------------------------------------------------------------------------
TEST(HolePlaces, ARowGoesByItsPitchFromTheFirst) {
  auto job =
      judged(plate() + holes("diameter = \"4\"\nat.x = \"80\"\nat.y = \"10\"\nrow = { count = 3, pitch = "
                             "\"25 ±0.2\", towards = \"left end\" }"));
  EXPECT_NEAR(place(job, "holes 2", "x"), 55.0, 1e-9);
  EXPECT_NEAR(place(job, "holes 3", "x"), 30.0, 1e-9);
  EXPECT_NEAR(place(job, "holes 3", "y"), 10.0, 1e-9);
  // The pitch is not a chain: the third is twice the pitch from the first, within one tolerance.
  EXPECT_NEAR(job.ledger.get("feature/holes 3/x/least").value, 49.8, 1e-9);
  EXPECT_NEAR(job.ledger.get("feature/holes 3/x/most").value, 50.2, 1e-9);
}

TEST(HolePlaces, TwoRowsAreAGrid) {
  const std::string grid =
      plate() + holes(
                    "diameter = \"4\"\nat.x = \"10\"\nat.y = \"10\"\nrow = [{ count = 3, pitch = \"40\", "
                    "towards = \"right end\" }, { count = 2, pitch = \"35\", towards = \"back\" }]");
  auto job = judged(grid);
  EXPECT_NEAR(place(job, "holes 6", "x"), 90.0, 1e-9);
  EXPECT_NEAR(place(job, "holes 6", "y"), 45.0, 1e-9);
  EXPECT_NEAR(place(job, "holes 4", "x"), 10.0, 1e-9);
  expect_volume(grid, kPlate - 6.0 * kPi * 4.0 * 20.0);
}

// --- leaning, and round a bar --------------------------------------------------------------------------------------
// A drill of radius r through a plate of thickness t, leaning by an angle, takes pi r^2 t / cos(angle).
TEST(HolePlaces, ALeaningHoleIsLonger) {
  for (const double angle : {10.0, 30.0, 45.0}) {
    expect_volume(
        plate() + holes("diameter = \"6\"\nat.x = \"50\"\nat.y = \"30\"\nleans = { towards = \"right end\", "
                        "angle = \"" +
                        std::to_string(angle) + "\" }"),
        kPlate - kPi * 9.0 * 20.0 / std::cos(angle * kPi / 180.0));
  }
}

TEST(HolePlaces, ALeaningHoleMayComeOutWhereItMeansTo) {
  const auto leaning = [](const std::string& x) {
    return plate() + holes("diameter = \"6\"\nat.x = \"" + x +
                           "\"\nat.y = \"30\"\nleans = { towards = \"left end\", angle = \"45\" }");
  };
  // Down 20 it has come 20 to the left; its side lies 3 / cos 45 from its middle: 4.243 + 20 + 1.6 is enough.
  auto inside = judged(leaning("26"));
  EXPECT_EQ(inside.state("least wall", "holes"), State::kOk);
  auto outside = judged(leaning("3"));  // its own mouth breaks the edge
  EXPECT_EQ(outside.state("least wall", "holes"), State::kNo);
}

TEST(HolePlaces, RoundABarTheyAllTakeTheSame) {
  const auto around = [](const std::string& angle) {
    return bar() + holes("diameter = \"6\"\ndepth = \"8\"\nat.x = \"50\"\naround_bar = { angle = \"" + angle +
                         "\" }");
  };
  auto job = judged(around("0"));
  const auto top = shape::metal_volume(job.ledger.value<shape::Recipe>(part::kRecipe)->work());
  for (const char* angle : {"90", "37", "200"})
    expect_volume(around(angle), top.volume_mm3);
  EXPECT_EQ(job.state("least wall", "holes"), State::kOk);
}

TEST(HolePlaces, RoundABarTheAngleCountsFromTheTopTowardsTheBack) {
  auto job = judged(bar() +
                    holes("diameter = \"6\"\ndepth = \"8\"\nat.x = \"50\"\naround_bar = { angle = \"90\" }"));
  const auto recipe = job.ledger.value<shape::Recipe>(part::kRecipe);
  ASSERT_TRUE(recipe);
  const shape::Frame& frame = shape::frame_of(recipe->cuts().front().nominal);
  EXPECT_NEAR(frame.origin.y, 40.0, 1e-6);
  EXPECT_NEAR(frame.origin.z, 20.0, 1e-6);
  EXPECT_NEAR(frame.z.y, -1.0, 1e-9);
}

TEST(HolePlaces, AHoleAcrossABarKeepsItsWall) {
  const auto across = [](const std::string& y) {
    return bar() + holes("diameter = \"6\"\nat.x = \"50\"\nat.y = \"" + y + "\"");
  };
  // Its far side lies 3 beyond its middle; half way down the bar is 20 to the side: 20 - 14.9 - 3 leaves 2.1 of metal at
  // nominal, 1.719 with the place and the size at their limits of 0.254 and 0.127; 1.5875 is wanted.
  auto inside = judged(across("34.9"));
  EXPECT_EQ(inside.state("least wall", "holes"), State::kOk);
  auto outside = judged(across("36"));
  EXPECT_EQ(outside.state("least wall", "holes"), State::kNo);
}

// --- makes -------------------------------------------------------------------------------------------------------
TEST(HolePlaces, ACountersinkIsAConeUnderTheFace) {
  const std::string text =
      plate() +
      "[[feature]]\nname = \"holes\"\nkind = \"hole\"\nhow = \"countersunk\"\ndiameter = \"6\"\nat.x = "
      "\"50\"\nat.y = \"30\"\ncountersink = { diameter = \"12\", angle = \"90\" }\n";
  // 3 deep, from radius 6 to 3.
  const double frustum = kPi / 3.0 * 3.0 * (36.0 + 18.0 + 9.0);
  expect_volume(text, kPlate - kPi * 9.0 * 17.0 - frustum);
}

TEST(HolePlaces, ASpotfaceIsASeatRoundTheHole) {
  expect_volume(
      plate() +
          "[[feature]]\nname = \"holes\"\nkind = \"hole\"\nhow = \"spotfaced\"\ndiameter = \"6\"\nat.x = "
          "\"50\"\nat.y = \"30\"\nspotface = { diameter = \"14\", depth = \"1\" }\n",
      kPlate - kPi * 9.0 * 19.0 - kPi * 49.0);
}

// --- what is refused ---------------------------------------------------------------------------------------------
TEST(HolePlaces, AreRefusedWhereTheyCannotBe) {
  const std::string at = "diameter = \"4\"\nat.x = \"10\"\nat.y = \"10\"\n";
  EXPECT_THAT(troubles_of(plate() + holes(at + "row = { count = 1, pitch = \"9\", towards = \"back\" }")),
              HasSubstr("from 2 to 200"));
  EXPECT_THAT(troubles_of(plate() + holes(at + "row = { count = 2, pitch = \"9\", towards = \"top\" }")),
              HasSubstr("a side that meets the top"));
  EXPECT_THAT(troubles_of(plate() + holes(at + "row = { count = 2, pitch = \"-9\", towards = \"back\" }")),
              HasSubstr("more than 0"));
  EXPECT_THAT(troubles_of(plate() +
                          holes(at + "row = [{ count = 2, pitch = \"9\", towards = \"back\" }, { count = 2, "
                                     "pitch = \"9\", towards = \"front\" }]")),
              HasSubstr("two different axes"));
  EXPECT_THAT(troubles_of(plate() + bore() +
                          holes(at + "bolt_circle = { around = \"bore\", diameter = \"9\", count = 2 }")),
              HasSubstr("one of at"));
  EXPECT_THAT(troubles_of(circle("diameter = \"40\", count = 4, first_angle = \"30 mm\"")),
              HasSubstr("angle"));
  EXPECT_THAT(
      troubles_of(
          plate() +
          holes("diameter = \"4\"\nbolt_circle = { around = \"boer\", diameter = \"9\", count = 2 }")),
      HasSubstr("boer"));
  EXPECT_THAT(troubles_of(plate() + holes(at + "leans = { towards = \"back\", angle = \"0\" }")),
              HasSubstr("more than 0 and less than 75"));
  EXPECT_THAT(troubles_of(plate() + holes("diameter = \"4\"\n")), HasSubstr("at"));
  EXPECT_THAT(troubles_of(plate() + holes("diameter = \"4\"\nat.x = \"9\"\naround_bar = { angle = \"4\" }")),
              HasSubstr("bar or tube"));
  EXPECT_THAT(
      troubles_of(plate() + holes("diameter = \"4\"\nplaced_by = \"the mate\"\nat.y = \"9\"\nat.x = { size = "
                                  "\"9\", duty = \"locates\", with = \"caliper\" }")),
      HasSubstr("the mate locates it"));
}

TEST(HolePlaces, ARowThatReachesOffThePlateIsNo) {
  auto job =
      judged(plate() + holes("diameter = \"4\"\nat.x = \"80\"\nat.y = \"10\"\nrow = { count = 3, pitch = "
                             "\"25\", towards = \"right end\" }"));
  EXPECT_EQ(job.state("it cuts metal", "holes 2"), State::kNo);
}

}  // namespace
}  // namespace sparewright
