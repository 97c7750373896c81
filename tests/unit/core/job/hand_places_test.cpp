// Places found by marks or through the mate: what the sheet says, and each check just inside and just outside.
#include <cmath>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "hand_work.hpp"
#include "part_text.hpp"

namespace sparewright {
namespace {

using ledger::State;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;
using tests::hand_setup;
using tests::hand_shop;
using tests::items_of;
using tests::judged;
using tests::line_with;
using tests::plate;
using tests::sheet_of;
using tests::step;

std::string drilled(const std::string& name, const std::string& x, const std::string& rest) {
  return fmt::format("[[feature]]\nname = \"{}\"\nkind = \"hole\"\nat.x = {}\nat.y = \"30\"\n{}\n", name, x,
                     rest);
}
std::string tapped(const std::string& name, const std::string& x, const std::string& rest) {
  return drilled(name, x, "how = \"tapped\"\nthread = \"M8x1.25-6H\"\n" + rest);
}
const std::string kTapIt = "\"drill 6.8\", \"tap M8\"";

// --- the sheet ---------------------------------------------------------------------------------------------------
// The plate is 100 x 60 x 20.
TEST(DrillPress, MarksFromTheSideThePlaceIsMeasuredFrom) {
  auto job = judged(
      plate() +
          drilled("hole", "{ size = \"30\", from = \"right end\" }", "how = \"drilled\"\ndiameter = \"5\"") +
          hand_setup(10, "drill press", "top", step("hole", "\"spot\", \"drill 5\"")),
      hand_shop());
  const auto sheet = sheet_of(job, 10);
  const route::Line marked = line_with(sheet, "mark and punch hole: from the right end, then from the front");
  EXPECT_EQ(marked.x_reads, "30.00");
  EXPECT_EQ(marked.y_reads, "30.00");
  EXPECT_NEAR(job.ledger.get("op 10/hole/x mark").value, 30.0, 1e-9);
  EXPECT_NEAR(job.ledger.get("op 10/hole/place good to").value, 0.375, 1e-9);
  EXPECT_THAT(items_of(sheet), Contains(HasSubstr("comes out within 0.25 to 0.50")));
  EXPECT_THAT(items_of(sheet), Contains(HasSubstr("edges of the dimples")));
}

// 5 through 20: three diameters, 15, then one at a time. 118 degrees, HSS in 1018: the machine's own speeds.
TEST(DrillPress, ADeepHoleIsPecked) {
  auto job = judged(
      plate() + drilled("hole", "\"30\"", "how = \"drilled\"\ndiameter = \"5\"") +
          drilled("short", "\"60\"", "how = \"drilled\"\ndiameter = \"8.5\"") +
          hand_setup(10, "drill press", "top", step("hole", "\"drill 5\"") + step("short", "\"drill 8.5\"")),
      hand_shop());
  const auto sheet = sheet_of(job, 10);
  EXPECT_THAT(line_with(sheet, "hole, drill 5").says,
              HasSubstr("out to clear at 15.00, then after every 5.00"));
  EXPECT_THAT(line_with(sheet, "short, drill 8.5").says,
              Not(HasSubstr("clear")));  // 25.5 is past the far side
  EXPECT_NEAR(job.ledger.get("op 10/hole/drill 5 first peck").value, 15.0, 1e-9);
  EXPECT_THAT(items_of(sheet), Contains(HasSubstr("hole: half the point in, lift, look.")));
}

TEST(DrillPress, ABlindHoleStopsByItsPoint) {  // 10 deep and (8.5 / 2) / tan 59 degrees = 2.55 of point
  auto job =
      judged(plate() + drilled("hole", "\"30\"", "how = \"drilled\"\ndiameter = \"8.5\"\ndepth = \"10\"") +
                 hand_setup(10, "drill press", "top", step("hole", "\"drill 8.5\"")),
             hand_shop());
  const auto sheet = sheet_of(job, 10);
  EXPECT_EQ(line_with(sheet, "10.00 deep at full diameter").z_reads, "12.55");
  EXPECT_EQ(job.state("drill point stays in the metal", "hole"), State::kOk);
}

TEST(DrillPress, ABoltCircleIsProvedByItsChords) {  // six on 40: chord 20; dividers at 20
  auto job = judged(plate() + tests::bore() +
                        "[[feature]]\nname = \"screws\"\nkind = \"hole\"\nhow = \"drilled\"\ndiameter = "
                        "\"5\"\nbolt_circle = { around = \"bore\", diameter = \"40\", count = 6 }\n" +
                        hand_setup(10, "drill press", "top", step("screws", "\"drill 5\"")),
                    hand_shop());
  const auto items = items_of(sheet_of(job, 10));
  EXPECT_THAT(items, Contains(HasSubstr("Dividers at 20.00 from a plug in bore")));
  EXPECT_THAT(items, Contains(HasSubstr("screws 1 to screws 2 20.00")));
  EXPECT_THAT(items, Contains(HasSubstr("screws 1 to screws 6 20.00")));
}

TEST(DrillPress, ACountersinkIsAsDeepAsItsConeIsWide) {  // (16.4 - 8.5) / 2 / tan 45 degrees = 3.95
  auto job =
      judged(plate() +
                 drilled("hole", "\"30\"",
                         "how = \"countersunk\"\ndiameter = \"8.5\"\ncountersink = { diameter = \"16.4\", "
                         "angle = \"90\" }") +
                 hand_setup(10, "drill press", "top", step("hole", "\"drill 8.5\", \"countersink\"")),
             hand_shop());
  EXPECT_EQ(line_with(sheet_of(job, 10), "hole, countersink").z_reads, "3.95");
  EXPECT_EQ(job.worse_than_close(), 0U);
}

TEST(DrillPress, WhatAsksForABoringHeadIsNotKnown) {
  auto job =
      judged(plate() + tests::bore() + hand_setup(10, "drill press", "top", step("bore", "\"drill 20\"")),
             hand_shop());
  EXPECT_EQ(job.state("how it is cut", "bore"), State::kNotKnown);
}

// --- marks against a tolerance -----------------------------------------------------------------------------------
// Punched and drilled by hand: 0.25 to 0.5, so 0.375, not known to 0.14 (a half-width of 0.125, 19 times in 20).
TEST(MarkedPlaceCheck, ATolerance) {
  const auto with = [](const std::string& room) {
    return plate() +
           drilled("hole",
                   "{ size = \"30\", tol = \"±" + room + "\", duty = \"locates\", with = \"caliper\" }",
                   "how = \"drilled\"\ndiameter = \"5\"") +
           hand_setup(10, "drill press", "top", step("hole", "\"drill 5\""));
  };
  auto inside = judged(with("0.6"), hand_shop());
  EXPECT_EQ(inside.state("marks hold its place in x", "hole"), State::kOk);
  auto barely = judged(with("0.4"), hand_shop());
  EXPECT_EQ(barely.state("marks hold its place in x", "hole"), State::kClose);
  auto outside = judged(with("0.3"), hand_shop());
  EXPECT_EQ(outside.state("marks hold its place in x", "hole"), State::kNo);
}

// --- two screws into a mate's holes ------------------------------------------------------------------------------
// M8 in 8.5: 0.25 each, 0.5 between; two marks at 0.375 are 0.53.
TEST(MateFloatCheck, MarksAgainstTheFloat) {
  const auto with = [](const std::string& mate) {
    const std::string hole = "mate_hole = \"" + mate + "\"";
    return plate() + tapped("hole 1", "\"20\"", hole) + tapped("hole 2", "\"80\"", hole) +
           hand_setup(10, "drill press", "top", step("hole 1", kTapIt) + step("hole 2", kTapIt));
  };
  auto outside = judged(with("8.5"), hand_shop());
  const auto verdict = outside.verdict("float takes up the marks", "hole 2");
  EXPECT_EQ(verdict.state, State::kNo);
  EXPECT_NEAR(outside.ledger.get(verdict.margin).value, 0.5 - 0.375 * std::sqrt(2.0), 1e-9);
  EXPECT_THAT(verdict.reason, HasSubstr("float 0.50 between hole 1 and it; marks give 0.35 to 0.71"));
  EXPECT_THAT(verdict.todo, HasSubstr("spot hole 2 through the mate"));
  auto barely = judged(with("8.55"), hand_shop());
  EXPECT_EQ(barely.state("float takes up the marks", "hole 2"), State::kClose);
  auto inside = judged(with("9"), hand_shop());
  EXPECT_EQ(inside.state("float takes up the marks", "hole 2"), State::kOk);
}

// Half of what the drill is smaller than the mate's hole, against half of what the screw is: (8.5 - 6.8) / 2 = 0.85.
TEST(MateFloatCheck, ADrillThroughTheMatesHoleFillsIt) {
  const auto with = [](const std::string& drill) {
    const std::string hole = "mate_hole = \"8.5\"";
    return plate() + tapped("hole 1", "\"20\"", hole) +
           tapped("hole 2", "\"80\"", hole + "\nplaced_by = \"the mate\"") +
           hand_setup(10, "drill press", "top",
                      step("hole 1", kTapIt) + step("hole 2", "\"drill " + drill + "\", \"tap M8\""));
  };
  auto right = judged(with("8.5\", \"drill 6.8"), hand_shop());
  EXPECT_EQ(right.state("the drill fills the mate's hole", "hole 2"), State::kOk);
  EXPECT_EQ(right.worse_than_close(), 0U);
  auto inside = judged(with("8.02\", \"drill 6.8"), hand_shop());  // 0.24 of 0.25
  EXPECT_EQ(inside.state("the drill fills the mate's hole", "hole 2"), State::kOk);
  auto outside = judged(with("7.9\", \"drill 6.8"), hand_shop());  // 0.30
  EXPECT_EQ(outside.state("the drill fills the mate's hole", "hole 2"), State::kNo);
  auto tap_drill = judged(with("6.8"), hand_shop());
  const auto verdict = tap_drill.verdict("the drill fills the mate's hole", "hole 2");
  EXPECT_EQ(verdict.state, State::kNo);
  EXPECT_THAT(verdict.reason, HasSubstr("can lie 0.85 off"));
  auto too_big = judged(with("9.6\", \"drill 6.8"), hand_shop());
  EXPECT_THAT(too_big.verdict("the drill fills the mate's hole", "hole 2").reason, HasSubstr("does not go"));
}

TEST(MateFloatCheck, TheMatesHoleHasToBeSaid) {
  auto job = judged(
      plate() + tapped("hole 2", "\"80\"", "placed_by = \"the mate\"") +
          hand_setup(10, "drill press", "top", step("hole 2", "\"drill 8.5\", \"drill 6.8\", \"tap M8\"")),
      hand_shop());
  const auto verdict = job.verdict("the drill fills the mate's hole", "hole 2");
  EXPECT_EQ(verdict.state, State::kNotKnown);
  EXPECT_THAT(verdict.missing, Contains("mate_hole of hole 2"));
}

// Spotted through the mate in the right order, and nothing of its place in print.
TEST(ThroughTheMate, TheLinesAreInOrder) {
  const std::string hole = "mate_hole = \"8.5\"";
  auto job = judged(
      plate() + tapped("hole 1", "\"20\"", hole) +
          tapped("hole 2", "{ size = \"62.3\", from = \"hole 1\" }", hole + "\nplaced_by = \"the mate\"") +
          hand_setup(10, "drill press", "top",
                     step("hole 1", kTapIt) + step("hole 2", "\"drill 8.5\", \"drill 6.8\", \"tap M8\"")),
      hand_shop());
  const auto sheet = sheet_of(job, 10);
  const auto items = items_of(sheet);
  const auto at = [&](const std::string& words) {
    for (std::size_t i = 0; i < items.size(); ++i) {
      if (items[i].find(words) != std::string::npos) return i;
    }
    ADD_FAILURE() << words;
    return items.size();
  };
  EXPECT_LT(at("mark and punch hole 1"), at("hole 1, drill 6.8"));
  EXPECT_LT(at("hole 1, drill 6.8"), at("hole 1, tap M8"));
  EXPECT_LT(at("hole 1, tap M8"), at("bolt it to its mate by hole 1"));
  EXPECT_LT(at("bolt it to its mate"),
            at("spot hole 2 through the mate's hole with drill 8.5: to a full cone"));
  EXPECT_LT(at("to a full cone"), at("match-mark it and its mate, then take it off"));
  EXPECT_LT(at("match-mark"), at("hole 2, drill 6.8"));
  EXPECT_LT(at("hole 2, drill 6.8"), at("hole 2, tap M8"));
  EXPECT_LT(at("hole 2, tap M8"), at("hole 2: put it to its mate by the marks"));
  EXPECT_THAT(items, Not(Contains(HasSubstr("62.3"))));
  for (const auto& line : sheet.before_unclamp)
    EXPECT_THAT(line, Not(HasSubstr("62.3")));
}

// The end of a bar has no sides: six on 40 round a bore in its middle are stepped off at 20, the first towards +y, the back.
TEST(DrillPress, OnTheEndOfABarPlacesAreStruckFromItsMiddle) {
  const std::string bar = tests::bar() +
                          "[[feature]]\nname = \"bore\"\nkind = \"hole\"\nhow = \"drilled\"\ninto = \"right "
                          "end\"\ndiameter = \"20\"\n";
  auto job = judged(
      bar +
          "[[feature]]\nname = \"screws\"\nkind = \"hole\"\nhow = \"drilled\"\ninto = \"right "
          "end\"\ndiameter = \"5\"\nbolt_circle = { around = \"bore\", diameter = \"30\", count = 6 }\n" +
          hand_setup(10, "drill press", "right end", step("screws", "\"drill 5\"")),
      hand_shop());
  const auto sheet = sheet_of(job, 10);
  EXPECT_THAT(items_of(sheet), Contains(HasSubstr("Step round it before punching")));
  EXPECT_THAT(line_with(sheet, "mark and punch screws 1").says,
              HasSubstr("on the circle, 15.00 towards the back of the middle"));
  EXPECT_THAT(line_with(sheet, "mark and punch screws 2").says,
              HasSubstr("on the circle, dividers at 15.00 from screws 1"));
  EXPECT_THAT(items_of(sheet), Contains(HasSubstr("screws 1 to screws 6 15.00")));
  EXPECT_THAT(items_of(sheet), Not(Contains(HasSubstr("crest"))));
}

// A circle to 0.25 (two places, general) puts its first hole within 0.125: no punch keeps that.
TEST(DrillPress, AGeneralToleranceThatNoPunchKeepsIsSaid) {
  const auto circle = [](const std::string& diameter) {
    return judged(plate() + tests::bore() +
                      "[[feature]]\nname = \"screws\"\nkind = \"hole\"\nhow = \"drilled\"\ndiameter = "
                      "\"5\"\nbolt_circle = { around = \"bore\", diameter = \"" +
                      diameter + "\", count = 6 }\n" +
                      hand_setup(10, "drill press", "top", step("screws", "\"drill 5\"")),
                  hand_shop());
  };
  auto tight = circle("40 ±0.25");
  EXPECT_EQ(tight.state("marks hold its place in x", "screws 1"), ledger::State::kClose);
  EXPECT_THAT(tight.verdict("marks hold its place in x", "screws 1").reason, HasSubstr("it may be 0.12 off"));
  auto wide = circle("40 ±1");
  for (const ledger::Verdict& verdict : wide.ledger.verdicts())
    EXPECT_THAT(verdict.check, Not(HasSubstr("marks hold")));
}

}  // namespace
}  // namespace sparewright
