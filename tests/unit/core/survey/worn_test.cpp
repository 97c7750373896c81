// Worn places: the size now and the metal gone.
#include "core/survey/worn.hpp"

#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/survey/stage.hpp"
#include "surveys.hpp"

namespace sparewright::survey {
namespace {

using ledger::Bound;
using ledger::Ledger;
using testing::HasSubstr;
using tests::in_condition;
using tests::reading;

constexpr double kInch = 25.4;

Survey with(Way way, quantity::Kind kind, std::initializer_list<std::string_view> worn) {
  Survey survey = tests::lever();
  survey.dimensions = {{"pin", kind}};
  survey.readings = {reading("sound end", way, {"pin"}, "caliper 8", {"0.7500"})};
  int number = 0;
  for (const std::string_view size : worn) {
    survey.readings.push_back(in_condition(
        reading("band " + std::to_string(++number), way, {"pin"}, "caliper 8", {size}), Condition::kWorn));
  }
  return survey;
}

Ledger worked(const Survey& survey) {
  auto stages = survey_stages(survey);
  if (!stages) throw std::runtime_error(base::report(stages.error().front()));
  Ledger ledger;
  ledger.declare(std::move(*stages));
  return ledger;
}

TEST(Worn, APinIsSmallerWhereItIsWornMost) {
  Ledger ledger = worked(with(Way::kOutside, quantity::Kind::kDiameter, {"0.7460", "0.7430", "0.7480"}));
  const auto now = ledger.get("worn/pin/now");
  EXPECT_NEAR(now.value, 0.7430 * kInch, 1e-12);
  EXPECT_EQ(now.bound, Bound::kExact);
  EXPECT_EQ(now.formula, "as it is now, at 'band 2'");
  const auto wear = ledger.get("worn/pin/wear");
  EXPECT_NEAR(wear.value, 0.0070 * kInch, 1e-12);
  EXPECT_EQ(wear.formula, "metal gone at 'band 2'; sound at 'sound end'");
  EXPECT_NEAR(ledger.get("worn/pin/wear at/band 1").value, 0.0040 * kInch, 1e-12);
  EXPECT_NEAR(ledger.get("worn/pin/wear at/band 3").value, 0.0020 * kInch, 1e-12);
}

// Two readings of one caliper: good to 0.001 and half a step 0.0005 each, over sqrt(3); the zero is in both.
TEST(Worn, TheZeroCancelsInTheWear) {
  Ledger ledger = worked(with(Way::kOutside, quantity::Kind::kDiameter, {"0.7430"}));
  EXPECT_NEAR(ledger.get("worn/pin/wear").u(), std::sqrt(2.0 * 1.25 / 3.0) * 1e-3 * kInch, 1e-12);
  EXPECT_NEAR(ledger.get("worn/pin/now").u(), std::sqrt(2.25 / 3.0) * 1e-3 * kInch, 1e-12);
}

TEST(Worn, ABoreIsLargerWhereItIsWornMost) {
  Ledger ledger = worked(with(Way::kInside, quantity::Kind::kDiameter, {"0.7560", "0.7580"}));
  EXPECT_NEAR(ledger.get("worn/pin/now").value, 0.7580 * kInch, 1e-12);
  EXPECT_NEAR(ledger.get("worn/pin/wear").value, 0.0080 * kInch, 1e-12);
}

TEST(Worn, OfARadiusItIsRadii) {
  Ledger ledger = worked(with(Way::kOutside, quantity::Kind::kRadius, {"0.7430"}));
  EXPECT_NEAR(ledger.get("worn/pin/now").value, 0.3715 * kInch, 1e-12);
  EXPECT_NEAR(ledger.get("worn/pin/wear").value, 0.0035 * kInch, 1e-12);
}

TEST(Worn, WithoutASoundReadingTheWearIsNotKnown) {
  Survey survey = with(Way::kOutside, quantity::Kind::kDiameter, {"0.7430"});
  survey.readings.erase(survey.readings.begin());
  Ledger ledger = worked(survey);
  EXPECT_NEAR(ledger.get("worn/pin/now").value, 0.7430 * kInch, 1e-12);
  EXPECT_FALSE(ledger.get("worn/pin/wear").known());
  EXPECT_THAT(ledger.get("worn/pin/wear").formula, HasSubstr("no sound reading"));
}

Reading tried(std::string name, Trial trial, std::string_view size) {
  Reading one =
      in_condition(reading(std::move(name), Way::kInside, {"pin"}, "caliper 8", {size}), Condition::kWorn);
  one.trial = trial;
  return one;
}

// A worn bore takes a drill shank of 0.7560 and not one of 0.7600: it is 0.7580 now, and 0.0080 has gone.
TEST(Worn, ABoreEnclosedByWhatGoesAndWhatWillNot) {
  Survey survey = with(Way::kInside, quantity::Kind::kDiameter, {});
  survey.readings.push_back(tried("drill", Trial::kGoes, "0.7560"));
  survey.readings.push_back(tried("larger drill", Trial::kWillNotGo, "0.7600"));
  Ledger ledger = worked(survey);
  EXPECT_NEAR(ledger.get("worn/pin/now").value, 0.7580 * kInch, 1e-12);
  EXPECT_EQ(ledger.get("worn/pin/now").bound, Bound::kExact);
  EXPECT_THAT(ledger.get("worn/pin/now").inputs, testing::ElementsAre("trial/pin/worn place"));
  EXPECT_NEAR(ledger.get("worn/pin/wear").value, 0.0080 * kInch, 1e-12);
  EXPECT_EQ(ledger.get("survey/pin").bound, Bound::kExact);
  EXPECT_NEAR(ledger.get("survey/pin").value, 0.7500 * kInch,
              1e-12);  // the trials say nothing more of the original
  EXPECT_TRUE(ledger.queries().empty());
}

TEST(Worn, OneTrialAloneEnclosesNothing) {
  Survey survey = with(Way::kInside, quantity::Kind::kDiameter, {});
  survey.readings.push_back(tried("drill", Trial::kGoes, "0.7560"));
  EXPECT_FALSE(worked(survey).get("worn/pin/now").known());
  survey.readings.push_back(
      in_condition(reading("caliper", Way::kInside, {"pin"}, "caliper 8", {"0.7580"}), Condition::kWorn));
  EXPECT_NEAR(worked(survey).get("worn/pin/now").value, 0.7580 * kInch, 1e-12);
}

TEST(Worn, TrialsThatContradictEachOtherEncloseNothing) {
  Survey survey = with(Way::kInside, quantity::Kind::kDiameter, {});
  survey.readings.push_back(tried("drill", Trial::kGoes, "0.7660"));
  survey.readings.push_back(tried("larger drill", Trial::kWillNotGo, "0.7600"));
  Ledger ledger = worked(survey);
  EXPECT_FALSE(ledger.get("worn/pin/now").known());
  const auto queries = ledger.queries();
  ASSERT_EQ(queries.size(), 1U);
  EXPECT_EQ(queries[0].id, "trials contradict/pin/worn place");
}

TEST(Worn, WhereBothWaysAreReadNothingIsSaid) {
  Survey survey = with(Way::kOutside, quantity::Kind::kDiameter, {"0.7430"});
  survey.readings.push_back(
      in_condition(reading("odd", Way::kInside, {"pin"}, "caliper 8", {"0.7600"}), Condition::kWorn));
  EXPECT_TRUE(worn_places(survey).empty());
  EXPECT_FALSE(worked(survey).get("worn/pin/now").known());
}

// 0.7430, 0.7480 and 0.7410 along a worn band: the pin was 0.7480 at least, and 0.7410 of it is left. Their doubt is the
// instrument's: they do not scatter about one size.
TEST(Worn, OfSeveralPlacesTheLeastWornBoundsAndTheMostWornIsWhatIsLeft) {
  Survey survey = with(Way::kOutside, quantity::Kind::kDiameter, {});
  survey.readings.push_back(
      in_condition(reading("band", Way::kOutside, {"pin"}, "caliper 8", {"0.7430", "0.7480", "0.7410"}),
                   Condition::kWorn));
  Ledger ledger = worked(survey);
  const auto bound = ledger.get("reading/band");
  EXPECT_NEAR(bound.value, 0.7480 * kInch, 1e-12);
  EXPECT_EQ(bound.bound, Bound::kAtLeast);
  EXPECT_THAT(bound.source, HasSubstr("the most of 3"));
  EXPECT_NEAR(ledger.get("worn/pin/now").value, 0.7410 * kInch, 1e-12);
  EXPECT_NEAR(ledger.get("worn/pin/now").u(), std::sqrt(2.25 / 3.0) * 1e-3 * kInch, 1e-12);
  EXPECT_NEAR(ledger.get("worn/pin/wear").value, 0.0090 * kInch, 1e-12);
  EXPECT_NEAR(ledger.get("worn/pin/wear").u(), std::sqrt(2.0 * 1.25 / 3.0) * 1e-3 * kInch, 1e-12);
}

TEST(Worn, InABoreTheLeastReadingBounds) {
  Survey survey = with(Way::kInside, quantity::Kind::kDiameter, {});
  survey.readings.push_back(in_condition(
      reading("bore", Way::kInside, {"pin"}, "caliper 8", {"0.7560", "0.7590"}), Condition::kWorn));
  Ledger ledger = worked(survey);
  EXPECT_NEAR(ledger.get("reading/bore").value, 0.7560 * kInch, 1e-12);
  EXPECT_EQ(ledger.get("reading/bore").bound, Bound::kAtMost);
  EXPECT_NEAR(ledger.get("worn/pin/now").value, 0.7590 * kInch, 1e-12);
}

// A depth at a worn place may be more or less than it was: its repeats are one size read several times.
TEST(Worn, WhereWearBoundsNothingTheMeanCounts) {
  Survey survey = with(Way::kOutside, quantity::Kind::kDiameter, {});
  survey.dimensions.push_back({"deep", quantity::Kind::kLength});
  survey.readings.push_back(in_condition(
      reading("floor", Way::kDepth, {"deep"}, "caliper 8", {"0.5000", "0.5020"}), Condition::kWorn));
  EXPECT_NEAR(worked(survey).get("reading/floor").value, 0.5010 * kInch, 1e-12);
}

}  // namespace
}  // namespace sparewright::survey
