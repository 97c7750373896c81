// What sizes hang on where the readings do not agree.
#include "core/survey/left_aside.hpp"

#include <algorithm>
#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/survey/stage.hpp"
#include "networks.hpp"
#include "surveys.hpp"

namespace sparewright::survey {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using tests::lengths;
using tests::network_of;
using tests::reading;

std::vector<LeftAside> aside_of(const Network& network) {
  const auto measured = measure_up(network);
  if (!measured) throw std::runtime_error(base::report(measured.error()));
  return left_aside(network, *measured);
}

Network four_of_one(double fourth) {
  return network_of(lengths({"a"}),
                    {{"a", 10.00, 0.01}, {"a", 10.01, 0.01}, {"a", 9.99, 0.01}, {"a", fourth, 0.01}});
}

TEST(LeftAside, IsNothingWhereTheReadingsAgree) {
  EXPECT_THAT(aside_of(four_of_one(10.005)), IsEmpty());
  EXPECT_THAT(aside_of(network_of(lengths({"a"}), {{"a", 10.0, 0.01}})), IsEmpty());
}

TEST(LeftAside, LeavesTheOneThatIsFurthestOut) {
  const auto all = aside_of(four_of_one(10.20));
  ASSERT_EQ(all.size(), 1U);
  EXPECT_THAT(all[0].readings, ElementsAre(3));
  EXPECT_THAT(all[0].rest.used, ElementsAre(0, 1, 2));
  EXPECT_NEAR(all[0].rest.adjustment.unknowns[0].value, 10.0, 1e-12);
  EXPECT_NEAR(all[0].rest.adjustment.unknowns[0].u, 0.01 / std::sqrt(3.0), 1e-12);
}

TEST(LeftAside, GoesOnUntilTheRestAgrees) {
  auto network = network_of(lengths({"a"}), {{"a", 10.00, 0.01},
                                             {"a", 10.01, 0.01},
                                             {"a", 9.99, 0.01},
                                             {"a", 10.005, 0.01},
                                             {"a", 10.30, 0.01},
                                             {"a", 9.60, 0.01}});
  const auto all = aside_of(network);
  ASSERT_EQ(all.size(), 1U);
  EXPECT_THAT(all[0].readings, ElementsAre(5, 4));
  EXPECT_TRUE(all[0].rest.adjustment.agree());
}

TEST(LeftAside, NeverMoreThanThree) {
  const auto all = aside_of(network_of(lengths({"a"}), {{"a", 10.0, 0.01},
                                                        {"a", 11.0, 0.01},
                                                        {"a", 12.1, 0.01},
                                                        {"a", 13.3, 0.01},
                                                        {"a", 14.6, 0.01},
                                                        {"a", 16.0, 0.01},
                                                        {"a", 17.7, 0.01}}));
  ASSERT_EQ(all.size(), 1U);
  EXPECT_EQ(all[0].readings.size(), kMostLeftAside);
}

TEST(LeftAside, ThoseThatCannotBeToldApartOneByOne) {
  const auto all = aside_of(network_of(lengths({"a"}), {{"a", 10.00, 0.01}, {"a", 10.20, 0.01}}));
  ASSERT_EQ(all.size(), 2U);
  EXPECT_THAT(all[0].readings, ElementsAre(0));
  EXPECT_NEAR(all[0].rest.adjustment.unknowns[0].value, 10.20, 1e-12);
  EXPECT_NEAR(all[1].rest.adjustment.unknowns[0].value, 10.00, 1e-12);
}

// Linear: without a reading a size is what it is less its slope times that reading's error by the others.
TEST(LeftAside, IsWhatTheErrorOfTheReadingSays) {
  auto network = network_of(lengths({"a", "b"}), {{"a", 10.00, 0.01},
                                                  {"b", 20.00, 0.01},
                                                  {"a + b", 30.02, 0.02},
                                                  {"b - a", 10.15, 0.01},
                                                  {"b", 20.01, 0.02}});
  tests::share(network, {0, 1, 3}, 0.01);
  const auto measured = measure_up(network);
  const auto all = left_aside(network, *measured);
  ASSERT_EQ(all.size(), 1U);
  ASSERT_EQ(all[0].readings.size(), 1U);
  const std::size_t left = all[0].readings[0];
  const Adjustment& report = measured->adjustment;
  for (std::size_t j = 0; j < 2; ++j) {
    EXPECT_NEAR(all[0].rest.adjustment.unknowns[j].value,
                report.unknowns[j].value - report.slopes.at(j, left) * *report.readings[left].error, 1e-10);
  }
}

TEST(LeftAsideInTheLedger, SaysBothSizesAndTheDifference) {
  Survey survey = tests::lever();
  survey.readings.push_back(reading("stud again", Way::kOutside, {"stud"}, "caliper 8", {"0.498"}));
  survey.readings.push_back(reading("stud a third time", Way::kOutside, {"stud"}, "caliper 8", {"0.523"}));
  auto stages = survey_stages(survey);
  ASSERT_TRUE(stages.has_value());
  ledger::Ledger ledger;
  ledger.declare(std::move(*stages));
  const auto with = ledger.get("survey/stud");
  const auto without = ledger.get("survey/without/stud a third time/stud");
  const auto hangs = ledger.get("survey/hangs on/stud a third time/stud");
  ASSERT_TRUE(without.known());
  EXPECT_LT(without.value, with.value);
  EXPECT_NEAR(hangs.value, with.value - without.value, 1e-12);
  EXPECT_GT(hangs.value, hangs.expanded());
  EXPECT_FALSE(ledger.get("survey/without/stud a third time/pivot_pin").known() &&
               ledger.get("survey/hangs on/stud a third time/pivot_pin").value > 0.001);
  const auto queries = ledger.queries();
  ASSERT_EQ(queries.size(), 1U);
  EXPECT_THAT(queries[0].happens, HasSubstr("Without it "));
}

TEST(LeftAsideInTheLedger, OfTwoEachIsLeftAside) {
  Survey survey = tests::lever();
  survey.dimensions = {{"a", quantity::Kind::kLength}};
  survey.readings = {reading("first", Way::kOutside, {"a"}, "caliper 8", {"0.500"}),
                     reading("second", Way::kOutside, {"a"}, "caliper 8", {"0.600"})};
  auto stages = survey_stages(survey);
  ASSERT_TRUE(stages.has_value());
  ledger::Ledger ledger;
  ledger.declare(std::move(*stages));
  EXPECT_NEAR(ledger.get("survey/without/first/a").value, 0.6 * 25.4, 1e-9);
  EXPECT_NEAR(ledger.get("survey/without/second/a").value, 0.5 * 25.4, 1e-9);
  EXPECT_NEAR(ledger.get("survey/hangs on/second/a").value, 0.05 * 25.4, 1e-9);
}

}  // namespace
}  // namespace sparewright::survey
