// A turn of the collar in one coordinate of one touch. The right value is kept: after the turn is put right the result has to
// be that of the touches as they are without it.
#include <cmath>
#include <numbers>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/survey/stage.hpp"
#include "core/survey/touched_queries.hpp"
#include "touches.hpp"

namespace sparewright::survey {
namespace {

using testing::AllOf;
using testing::EndsWith;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;
using tests::touched_circle;
using tests::typed;

using Places = std::vector<std::vector<std::string>>;

constexpr double kInch = 25.4;

// The query of the one form touched with collars of 0.1 in a turn; an empty one where nothing is asked.
ledger::Query asked_of(Touched touched, std::string_view turn = "0.100") {
  Survey survey = tests::readout_survey();
  survey.instruments[0].kind = "collar of the mill";
  survey.instruments[0].zero_found = typed("0.0000");
  if (!turn.empty()) survey.instruments[0].turn = typed(turn);
  survey.touched = {std::move(touched)};
  ledger::Ledger ledger;
  auto stages = survey_stages(survey);
  if (!stages) return {};
  ledger.declare(std::move(*stages));
  const auto queries = ledger.queries();
  EXPECT_LE(queries.size(), 1U);
  return queries.empty() ? ledger::Query{} : queries.front();
}

Touched face(TipSide side, const Places& touches) {
  Touched out = touched_circle("face", touches, side);
  out.form = touches.front().size() == 3 ? TouchedForm::kPlane : TouchedForm::kLine;
  return out;
}

// A bore of 1.2000: the tip's middle goes 0.5000 round (2, 1).
const Places kBore{{"2.5000", "1.0000"},
                   {"2.3000", "1.4000"},
                   {"2.0000", "1.5000"},
                   {"1.5000", "1.0000"},
                   {"2.0000", "0.5000"}};

TEST(TouchedTurns, FiveTouchesOfACircleNameTheTouchTheCoordinateAndTheTurn) {
  EXPECT_EQ(asked_of(touched_circle("bore", kBore)).says, "");
  Places out = kBore;
  out[1][1] = "1.5000";  // should be 1.4000
  const ledger::Query query = asked_of(touched_circle("bore", out));
  EXPECT_EQ(query.id, "misread touch/bore");
  EXPECT_TRUE(query.serious);
  EXPECT_THAT(query.says,
              AllOf(StartsWith("misread? the touches of 'bore' lie "),
                    EndsWith("they agree to 0.0000 in with y of touch 2 at 1.4000 in, one turn of the "
                             "collar (0.1 in) less; the diameter then 1.2000 in")));
  out = kBore;
  out[3][0] = "1.6000";  // should be 1.5000
  EXPECT_THAT(
      asked_of(touched_circle("bore", out)).says,
      HasSubstr(
          "with x of touch 4 at 1.5000 in, one turn of the collar (0.1 in) less; the diameter then 1.2000"));
}

// Four touches have one to spare. Touch 2 a turn too far: it may be that, or touch 1 or 3 a turn short, which moves the middle
// and makes it a circle too (radius sqrt(0.45^2 + 0.05^2) with touch 2 out by 0.1: 0.55, 0.05 from a middle at (2.05, 1.05)).
TEST(TouchedTurns, FourTouchesOfACircleNameAllThatWouldDo) {
  const Places four{{"2.5000", "1.0000"}, {"2.0000", "1.6000"}, {"1.5000", "1.0000"}, {"2.0000", "0.5000"}};
  const ledger::Query query = asked_of(touched_circle("bore", four));
  EXPECT_EQ(query.id, "misread touch/bore");
  EXPECT_TRUE(query.serious);
  EXPECT_THAT(
      query.says,
      AllOf(
          HasSubstr("one turn of the collar (0.1 in) out in one of them explains it, which they cannot tell"),
          HasSubstr("y of touch 2 at 1.5000 in (the diameter then 1.2000 in)"),
          HasSubstr("x of touch 1 at 2.6000 in (the diameter then 1.3045 in)"),
          HasSubstr("x of touch 3 at 1.4000 in (the diameter then 1.3045 in)")));
  EXPECT_THAT(query.todo, HasSubstr("one more place"));
  // 2 sqrt(0.55^2 + 0.05^2) + 0.2 of the tip.
  EXPECT_NEAR(2.0 * std::hypot(0.55, 0.05) + 0.2, 1.3045, 5e-5);
}

TEST(TouchedTurns, ALineAndAPlane) {
  const ledger::Query line = asked_of(
      face(TipSide::kLeft,
           {{"0.8000", "0.0"}, {"0.8002", "1.0"}, {"0.8998", "2.0"}, {"0.8001", "3.0"}, {"0.8", "4.5"}}));
  EXPECT_TRUE(line.serious);
  // The middle of the others with it put right, and half the tip: 0.80002 + 0.1.
  EXPECT_THAT(line.says, AllOf(HasSubstr("x of touch 3 at 0.7998 in, one turn of the collar (0.1 in) less"),
                               EndsWith("the face then at 0.9000 in")));
  const ledger::Query plane = asked_of(face(TipSide::kAbove, {{"0", "0", "1.1000"},
                                                              {"3", "0", "1.2000"},
                                                              {"3", "2", "1.1000"},
                                                              {"0", "2", "1.1000"},
                                                              {"1.2", "0.7", "1.1000"}}));
  EXPECT_THAT(plane.says,
              AllOf(HasSubstr("z of touch 2 at 1.1000 in"), EndsWith("the face then at 1.0000 in")));
  // Four corners of a plane: each may be it.
  const ledger::Query corners = asked_of(
      face(TipSide::kAbove,
           {{"0", "0", "1.1000"}, {"3", "0", "1.2000"}, {"3", "2", "1.1000"}, {"0", "2", "1.1000"}}));
  EXPECT_TRUE(corners.serious);
  for (const char* one : {"touch 1", "touch 2", "touch 3", "touch 4"})
    EXPECT_THAT(corners.says, HasSubstr(one));
}

// 0.012 in of lobes in a hole of 1.2: no turn comes to it, and all scatter.
TEST(TouchedTurns, ALobedHoleIsAskedAboutMildly) {
  for (const int lobes : {2, 3}) {
    Places out;
    for (int i = 0; i < 7; ++i) {
      const double angle = 2.0 * std::numbers::pi * i / 7.0 + 0.3;
      const double from = 0.5 + 0.006 * std::cos(lobes * angle + 0.2);
      out.push_back({std::to_string(from * std::cos(angle)), std::to_string(from * std::sin(angle))});
    }
    const ledger::Query query = asked_of(touched_circle("bore", out));
    EXPECT_EQ(query.id, "touches scatter/bore") << lobes;
    EXPECT_FALSE(query.serious) << lobes;
    EXPECT_THAT(query.says, HasSubstr("the furthest")) << lobes;
  }
}

// Nothing counts turns on a readout: what is past the roughest work is serious all the same, what is not is not.
TEST(TouchedTurns, WhatIsPastTheRoughestWorkIsSerious) {
  const auto bore = [](const std::string& y) {
    return touched_circle("bore", {{"0.5000", "0"}, {"0", y}, {"-0.5000", "0"}, {"0", "-0.5000"}});
  };
  // Four touches, one out by a: each lies a/4 off, and a/2 is most less least. IT16 of 1.2 + a/2 in is 0.056 in.
  EXPECT_NEAR(rough_mm(1.25 * kInch) / kInch, 0.0573, 0.0001);  // 0.45 cbrt(31.75) + 0.0318 = 1.457 mm
  const ledger::Query past = asked_of(bore("0.6240"), "0.700");
  EXPECT_EQ(past.id, "touches scatter/bore");
  EXPECT_TRUE(past.serious);
  EXPECT_THAT(past.says, HasSubstr("more than the roughest work is out"));
  const ledger::Query within = asked_of(bore("0.6000"), "0.700");
  EXPECT_EQ(within.id, "touches scatter/bore");
  EXPECT_FALSE(within.serious);
}

// A touch that stands out of others that agree is named where no turn explains it too.
TEST(TouchedTurns, AnyAmountInOneTouch) {
  Places out = kBore;
  out[1] = {"2.3120", "1.4160"};  // 0.02 outwards
  const ledger::Query query = asked_of(touched_circle("bore", out));
  EXPECT_TRUE(query.serious);
  EXPECT_EQ(query.says, "misread? touch 2 of 'bore' is 0.0200 in off the circle that the others make");
}

TEST(TouchedTurns, TurnsOfACollarThatNobodyStatedAreTheUsual) {
  Places out = kBore;
  out[1][1] = "1.5250";  // 0.125 too many
  const ledger::Query query = asked_of(touched_circle("bore", out), "");
  EXPECT_THAT(query.says, HasSubstr("y of touch 2 at 1.4000 in, one turn of the collar (0.125 in) less"));
}

TEST(TouchedTurns, ATurnThatTheDoubtCoversExplainsNothing) {
  Places out = kBore;
  out[1] = {"2.3018", "1.4024"};  // 0.003 outwards; a "turn" of 0.003
  const ledger::Query query = asked_of(touched_circle("bore", out), "0.0015");
  EXPECT_THAT(query.says, Not(HasSubstr("turn")));
}

}  // namespace
}  // namespace sparewright::survey
