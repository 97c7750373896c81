// The rows of the table of what was measured.
#include "core/survey/measured_rows.hpp"

#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/survey/stage.hpp"
#include "surveys.hpp"

namespace sparewright::survey {
namespace {

using testing::ElementsAre;
using testing::Field;
using testing::HasSubstr;
using tests::reading;

std::vector<MeasuredRow> rows_of(const Survey& survey) {
  auto stages = survey_stages(survey);
  if (!stages) throw std::runtime_error(base::report(stages.error().front()));
  ledger::Ledger ledger;
  ledger.declare(std::move(*stages));
  return measured_rows(ledger, survey);
}

TEST(MeasuredRows, PartsOfTheReadingsSumToOne) {
  const auto rows = rows_of(tests::lever());
  ASSERT_EQ(rows.size(), 3U);
  for (const MeasuredRow& row : rows) {
    double by_reading = 0.0;
    for (const ReadingsPart& part : row.by_reading)
      by_reading += part.part;
    double by_cause = 0.0;
    for (const CausesPart& part : row.by_cause)
      by_cause += part.part;
    EXPECT_NEAR(by_reading, 1.0, 1e-9) << row.size.name;
    EXPECT_NEAR(by_cause, 1.0, 1e-12) << row.size.name;
    EXPECT_TRUE(row.checked) << row.size.name;
    EXPECT_TRUE(row.without.empty());
    EXPECT_FALSE(row.now.has_value());
  }
  EXPECT_EQ(rows[0].by_reading.front().name, "pivot pin");
}

// The mean of two readings of one caliper: own (1 + 0.25)/3 each, in 1e-6 in2, the zero 1/3. In the mean a quarter of each own
// part and the zero whole: 0.4167/2 + 0.3333; the zero has 0.3333 of 0.5417.
TEST(MeasuredRows, TwoReadingsOfOneZero) {
  Survey survey = tests::lever();
  survey.dimensions = {{"a", quantity::Kind::kLength}, {"b", quantity::Kind::kLength}};
  survey.readings = {reading("first", Way::kOutside, {"a"}, "caliper 8", {"0.5000"}),
                     reading("second", Way::kOutside, {"a"}, "caliper 8", {"0.5004"}),
                     reading("b", Way::kOutside, {"b"}, "caliper 8", {"0.7000"})};
  const auto rows = rows_of(survey);
  EXPECT_NEAR(rows[0].by_reading.at(0).part, 0.5, 1e-9);
  EXPECT_EQ(rows[0].by_cause.at(0).cause, "instrument/caliper 8/outside jaws/zero");
  EXPECT_NEAR(rows[0].by_cause.at(0).part, (1.0 / 3.0) / (1.25 / 6.0 + 1.0 / 3.0), 1e-9);
  // The zero is all that a and b share: 1/3 over the root of both variances.
  ASSERT_EQ(rows[0].with_others.size(), 1U);
  EXPECT_NEAR(rows[0].with_others[0].correlation,
              (1.0 / 3.0) / std::sqrt((1.25 / 6.0 + 1.0 / 3.0) * (2.25 / 3.0)), 1e-9);
  EXPECT_TRUE(std::isinf(rows[0].degrees_of_freedom));
  EXPECT_NEAR(rows[0].size.k(), 1.96, 0.0005);
}

// Three repeats 0.7498, 0.7497, 0.7498: s/sqrt(3) = 1e-4/3 in with 2 degrees of freedom; error 1e-4, half a step and zero 0.5e-4,
// over sqrt(3). nu = u^4/(s^4/2), by hand: u^2 = 1/9 + 1/3 + 0.5/6 = 0.61111, nu = 2*(0.61111*9)^2 = 60.5, k = t(60) = 2.000.
TEST(MeasuredRows, RepeatsHaveDegreesOfFreedom) {
  Survey survey = tests::lever();
  survey.dimensions = {{"pivot_pin", quantity::Kind::kDiameter}};
  survey.readings.resize(1);
  const auto rows = rows_of(survey);
  const double u2 = 1.0 / 9.0 + 1.0 / 3.0 + 0.25 / 3.0 + 0.25 / 3.0;
  EXPECT_NEAR(rows[0].degrees_of_freedom, 2.0 * (u2 * 9.0) * (u2 * 9.0), 1e-3);
  EXPECT_NEAR(rows[0].size.u() / 25.4, std::sqrt(u2) * 1e-4, 1e-9);
  EXPECT_NEAR(rows[0].size.k(), 2.00, 0.005);
  EXPECT_FALSE(rows[0].checked);
}

TEST(MeasuredRows, SuspectsAndWearAreInThem) {
  Survey survey = tests::lever();
  survey.readings.push_back(reading("stud again", Way::kOutside, {"stud"}, "caliper 8", {"0.498"}));
  survey.readings.push_back(reading("stud a third time", Way::kOutside, {"stud"}, "caliper 8", {"0.523"}));
  survey.readings.push_back(tests::in_condition(
      reading("worn band", Way::kOutside, {"pivot_pin"}, "micrometer 0-1", {"0.7440"}), Condition::kWorn));
  const auto rows = rows_of(survey);
  ASSERT_EQ(rows[1].without.size(), 1U);
  EXPECT_EQ(rows[1].without[0].name.text(), "survey/without/stud a third time/stud");
  ASSERT_EQ(rows[1].hangs_on.size(), 1U);
  EXPECT_NEAR(rows[1].hangs_on[0].value, rows[1].size.value - rows[1].without[0].value, 1e-12);
  ASSERT_TRUE(rows[0].wear.has_value());
  EXPECT_NEAR(rows[0].wear->value / 25.4, 0.0058, 0.0002);
  EXPECT_NEAR(rows[0].now->value / 25.4, 0.7440, 1e-9);
}

TEST(MeasuredRows, WhatIsNotFixedHasNoParts) {
  Survey survey = tests::lever();
  survey.readings.erase(survey.readings.begin());
  survey.readings.pop_back();
  const auto rows = rows_of(survey);
  EXPECT_FALSE(rows[2].size.known());
  EXPECT_TRUE(rows[2].by_reading.empty());
}

}  // namespace
}  // namespace sparewright::survey
