// The one reading more that would fix the most.
#include "core/survey/next_reading.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/survey/stage.hpp"
#include "surveys.hpp"

namespace sparewright::survey {
namespace {

using ledger::Ledger;
using quantity::Kind;
using testing::ElementsAre;
using testing::HasSubstr;
using tests::reading;

Ledger worked(const Survey& survey) {
  auto stages = survey_stages(survey);
  if (!stages) throw std::runtime_error(base::report(stages.error().front()));
  Ledger ledger;
  ledger.declare(std::move(*stages));
  return ledger;
}

NextReading next_of(const Survey& survey) {
  Ledger ledger = worked(survey);
  const auto report = ledger.value<MeasuredUp>("survey/report");
  Survey sorted = survey;
  std::sort(sorted.dimensions.begin(), sorted.dimensions.end(),
            [](const auto& a, const auto& b) { return a.name < b.name; });
  return next_reading(sorted, *report).value_or(NextReading{});
}

Survey two_holes(std::vector<Reading> readings) {
  Survey survey = tests::lever();
  survey.dimensions = {{"centres", Kind::kLength}, {"left", Kind::kDiameter}, {"right", Kind::kDiameter}};
  survey.readings = std::move(readings);
  return survey;
}

// The two readings differ by the left hole. The right one by itself fixes it and the centres, as the far sides of both
// would: one name is less than three.
TEST(NextReading, OfThoseThatFixAsMuchTheSimplest) {
  const auto next = next_of(
      two_holes({reading("between", Way::kBetweenHoles, {"centres", "left", "right"}, "caliper 8", {"1.500"}),
                 reading("same", Way::kSameSides, {"centres", "left", "right"}, "caliper 8", {"2.000"})}));
  EXPECT_EQ(next.way, Way::kInside);
  EXPECT_THAT(next.of, ElementsAre("right"));
  EXPECT_EQ(next.instrument, "micrometer 0-1");  // said to have all jaws, and the finer
  EXPECT_THAT(next.fixes, ElementsAre("centres", "right"));
}

TEST(NextReading, NothingWhereAllIsFixed) {
  const auto next = next_of(
      two_holes({reading("between", Way::kBetweenHoles, {"centres", "left", "right"}, "caliper 8", {"1.500"}),
                 reading("equal", Way::kInside, {"left"}, "caliper 8", {"0.500"}),
                 reading("right", Way::kInside, {"right"}, "caliper 8", {"0.500"})}));
  EXPECT_TRUE(next.fixes.empty());
}

TEST(NextReading, ByTheFinestInstrumentWithTheJaws) {
  Survey survey = tests::lever();
  survey.readings.erase(survey.readings.begin());  // the pivot pin
  survey.readings.pop_back();                      // between both
  const auto next = next_of(survey);
  EXPECT_EQ(next.way, Way::kOutside);
  EXPECT_THAT(next.of, ElementsAre("pivot_pin"));
  EXPECT_EQ(next.instrument, "micrometer 0-1");
  EXPECT_THAT(next.fixes, ElementsAre("centres", "pivot_pin"));
}

TEST(NextReading, ALengthIsReadByItselfWhereNothingSaysItLiesBetweenMiddles) {
  Survey survey = tests::lever();
  survey.readings.pop_back();
  survey.readings.pop_back();
  survey.readings.push_back(tests::expression("sum", "0*centres + stud", "caliper 8", {"0.4985"}));
  const auto next = next_of(survey);
  EXPECT_THAT(next.of, ElementsAre("centres"));
}

TEST(NextReading, AnAngleByAProtractor) {
  Survey survey = tests::lever();
  survey.dimensions = {{"lean", Kind::kAngle}, {"rise", Kind::kLength}};
  survey.readings = {tests::expression("rise", "rise + 0*sin(lean)*1 in", "caliper 8", {"0.500"})};
  survey.instruments.push_back(tests::instrument("protractor", "0.001", "0.001"));
  survey.instruments.back().good_to = tests::typed("0.1", Kind::kAngle);
  survey.instruments.back().reads = tests::typed("0.1", Kind::kAngle);
  const auto next = next_of(survey);
  EXPECT_EQ(next.way, Way::kAngle);
  EXPECT_EQ(next.instrument, "protractor");
}

TEST(NextReading, IsSaidInTheLedger) {
  Survey survey = tests::lever();
  survey.readings.erase(survey.readings.begin());
  survey.readings.pop_back();
  Ledger ledger = worked(survey);
  const auto fixes = ledger.get("next reading/fixes");
  EXPECT_EQ(fixes.value, 2.0);
  EXPECT_EQ(fixes.formula, "'outside' of pivot_pin with micrometer 0-1 would fix centres and pivot_pin");
  const auto queries = ledger.queries();
  ASSERT_EQ(queries.size(), 1U);
  EXPECT_EQ(queries[0].id, "one more reading/pivot_pin");
  EXPECT_EQ(queries[0].todo,
            "Read 'outside' of pivot_pin with micrometer 0-1: it fixes centres and pivot_pin.");
  EXPECT_EQ(queries[0].says, "the readings do not fix centres and pivot_pin");
  EXPECT_FALSE(queries[0].serious);
  EXPECT_FALSE(worked(tests::lever()).get("next reading/fixes").known());
}

}  // namespace
}  // namespace sparewright::survey
