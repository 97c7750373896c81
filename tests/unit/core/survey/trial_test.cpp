// A plug that goes and one that will not.
#include "core/survey/trial.hpp"

#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/survey/stage.hpp"
#include "surveys.hpp"

namespace sparewright::survey {
namespace {

using ledger::Bound;
using ledger::Ledger;
using testing::ElementsAre;
using testing::HasSubstr;
using tests::reading;

constexpr double kInch = 25.4;

Reading tried(std::string name, Way way, std::string of, Trial trial, std::string_view size) {
  Reading one = reading(std::move(name), way, {std::move(of)}, "micrometer 0-1", {size});
  one.trial = trial;
  return one;
}

Survey bore(std::vector<Reading> readings) {
  Survey survey = tests::lever();
  survey.dimensions = {{"bore", quantity::Kind::kDiameter}};
  survey.readings = std::move(readings);
  return survey;
}

Ledger worked(const Survey& survey) {
  auto stages = survey_stages(survey);
  if (!stages) throw std::runtime_error(base::report(stages.error().front()));
  Ledger ledger;
  ledger.declare(std::move(*stages));
  return ledger;
}

TEST(TrialsEncloseASize, AHoleBetweenADrillThatGoesAndOneThatWillNot) {
  Ledger ledger = worked(bore({tried("drill", Way::kInside, "bore", Trial::kGoes, "0.3740"),
                               tried("plug", Way::kInside, "bore", Trial::kWillNotGo, "0.3752")}));
  const auto middle = ledger.get("trial/bore");
  ASSERT_TRUE(middle.known());
  EXPECT_NEAR(middle.value, 0.3746 * kInch, 1e-12);
  EXPECT_EQ(middle.bound, Bound::kExact);
  // By hand, in 1e-8 in2: a plug has 1/3 + 0.25/3 + 0.25/3 (error, half a step, zero), the zero common to both. The middle
  // a quarter of both and half of what is common: 0.25 + 0.25/6; the gap of 12e-4 in (144 + 2*(1 + 0.25)/3)/12.
  const double squares = 0.25 + 0.25 / 6.0 + (144.0 + 2.5 / 3.0) / 12.0;
  EXPECT_NEAR(middle.u(), std::sqrt(squares) * 1e-4 * kInch, 1e-12);
  EXPECT_THAT(middle.formula, HasSubstr("'drill' goes, 'plug' will not go"));
  EXPECT_THAT(middle.inputs, ElementsAre("reading/drill", "reading/plug", "trial/bore/between"));

  const auto size = ledger.get("survey/bore");
  EXPECT_NEAR(size.value, middle.value, 1e-12);
  EXPECT_NEAR(size.u(), middle.u(), 1e-12);
  EXPECT_EQ(size.bound, Bound::kExact);
  EXPECT_TRUE(ledger.queries().empty());
}

TEST(TrialsEncloseASize, AShaftBetweenTwoRings) {
  Ledger ledger = worked(bore({tried("ring", Way::kOutside, "bore", Trial::kGoes, "0.3752"),
                               tried("tight ring", Way::kOutside, "bore", Trial::kWillNotGo, "0.3740")}));
  EXPECT_NEAR(ledger.get("survey/bore").value, 0.3746 * kInch, 1e-12);
  EXPECT_EQ(ledger.get("survey/bore").bound, Bound::kExact);
}

TEST(TrialsEncloseASize, TheTightestOfSeveralCount) {
  Ledger ledger = worked(bore({tried("a", Way::kInside, "bore", Trial::kGoes, "0.3700"),
                               tried("b", Way::kInside, "bore", Trial::kGoes, "0.3740"),
                               tried("c", Way::kInside, "bore", Trial::kWillNotGo, "0.3800"),
                               tried("d", Way::kInside, "bore", Trial::kWillNotGo, "0.3752")}));
  EXPECT_THAT(ledger.get("trial/bore").inputs, ElementsAre("reading/b", "reading/d", "trial/bore/between"));
}

TEST(TrialsEncloseASize, OneSideAloneStillBounds) {
  Ledger ledger = worked(bore({tried("a", Way::kInside, "bore", Trial::kGoes, "0.3700"),
                               tried("b", Way::kInside, "bore", Trial::kGoes, "0.3740")}));
  EXPECT_FALSE(ledger.get("trial/bore").known());
  EXPECT_EQ(ledger.get("survey/bore").bound, Bound::kAtLeast);
  EXPECT_NEAR(ledger.get("survey/bore").value, 0.3740 * kInch, 1e-12);
}

TEST(TrialsEncloseASize, TogetherWithAReading) {
  Survey survey = bore({tried("drill", Way::kInside, "bore", Trial::kGoes, "0.3740"),
                        tried("plug", Way::kInside, "bore", Trial::kWillNotGo, "0.3752")});
  survey.readings.push_back(reading("caliper", Way::kInside, {"bore"}, "caliper 8", {"0.374"}));
  Ledger ledger = worked(survey);
  EXPECT_THAT(ledger.get("survey/bore").inputs, ElementsAre("reading/caliper", "trial/bore"));
  EXPECT_LT(ledger.get("survey/bore").u(), ledger.get("trial/bore").u());
  EXPECT_TRUE(ledger.queries().empty());
}

TEST(TrialsThatContradict, AreAskedAboutAndFixNothing) {
  Ledger ledger = worked(bore({tried("drill", Way::kInside, "bore", Trial::kGoes, "0.3780"),
                               tried("plug", Way::kInside, "bore", Trial::kWillNotGo, "0.3752")}));
  EXPECT_FALSE(ledger.get("survey/bore").known());
  const auto queries = ledger.queries();
  const auto found = std::find_if(queries.begin(), queries.end(),
                                  [](const auto& q) { return q.id == "trials contradict/bore"; });
  ASSERT_NE(found, queries.end());
  EXPECT_EQ(found->says, "'drill' goes, yet 'plug', 0.0028 in smaller, will not");
  EXPECT_TRUE(found->serious);
  EXPECT_THAT(found->happens, HasSubstr("Nothing is taken from the trials of bore"));
}

TEST(TrialsThatContradict, RingsAreToldTheOtherWayRound) {
  Ledger ledger = worked(bore({tried("ring", Way::kOutside, "bore", Trial::kGoes, "0.3752"),
                               tried("big ring", Way::kOutside, "bore", Trial::kWillNotGo, "0.3780")}));
  const auto queries = ledger.queries();
  ASSERT_FALSE(queries.empty());
  EXPECT_TRUE(std::any_of(queries.begin(), queries.end(), [](const auto& q) {
    return q.says == "'ring' goes, yet 'big ring', 0.0028 in larger, will not";
  }));
}

// The difference of two plugs is known to sqrt(2*(1 + 0.25)/3) of 1e-4 in, 0.91e-4; 1.96 times that is 1.79e-4.
TEST(TrialsThatContradict, WithinTheirDoubtTheyMeetInTheMiddle) {
  const auto with = [](std::string_view size) {
    return worked(bore({tried("drill", Way::kInside, "bore", Trial::kGoes, size),
                        tried("plug", Way::kInside, "bore", Trial::kWillNotGo, "0.3752")}));
  };
  Ledger within = with("0.3753");
  EXPECT_NEAR(within.get("survey/bore").value, 0.37525 * kInch, 1e-12);
  EXPECT_TRUE(within.queries().empty());
  Ledger beyond = with("0.3754");
  EXPECT_FALSE(beyond.get("survey/bore").known());
}

TEST(TrialsAgainstReadings, AreNamed) {
  Survey survey = bore({tried("drill", Way::kInside, "bore", Trial::kGoes, "0.3800")});
  survey.readings.push_back(reading("caliper", Way::kInside, {"bore"}, "caliper 8", {"0.374"}));
  Ledger ledger = worked(survey);
  const auto queries = ledger.queries();
  ASSERT_EQ(queries.size(), 1U);
  EXPECT_EQ(queries[0].id, "trial against the readings/drill");
  EXPECT_EQ(queries[0].says, "'drill' goes, yet the readings make bore 0.0060 in smaller than that");
  survey.readings[0].repeats = tests::typed_all({"0.3745"});
  EXPECT_TRUE(worked(survey).queries().empty());
}

TEST(TrialsOfARadius, EncloseWhatIsAcross) {
  Survey survey = bore({tried("a", Way::kInside, "bore", Trial::kGoes, "0.3740"),
                        tried("b", Way::kInside, "bore", Trial::kWillNotGo, "0.3752")});
  survey.dimensions[0].kind = quantity::Kind::kRadius;
  Ledger ledger = worked(survey);
  EXPECT_NEAR(ledger.get("survey/bore").value, 0.1873 * kInch, 1e-12);
}

TEST(TrialsAtAWornPlace, SayOfTheOriginalOnlyWhatWearLeaves) {
  const auto bound = [](Way way, Trial trial) {
    return bound_of(tests::in_condition(tried("t", way, "bore", trial, "0.3740"), Condition::kWorn));
  };
  EXPECT_EQ(bound(Way::kInside, Trial::kGoes), Bound::kNeither);
  EXPECT_EQ(bound(Way::kInside, Trial::kWillNotGo), Bound::kAtMost);
  EXPECT_EQ(bound(Way::kInside, Trial::kGoesWithAPush), Bound::kAtMost);
  EXPECT_EQ(bound(Way::kOutside, Trial::kGoes), Bound::kNeither);
  EXPECT_EQ(bound(Way::kOutside, Trial::kWillNotGo), Bound::kAtLeast);
}

}  // namespace
}  // namespace sparewright::survey
