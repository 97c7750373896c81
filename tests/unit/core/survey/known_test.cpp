// What is known without measuring.
#include "core/survey/known.hpp"

#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/survey/stage.hpp"
#include "surveys.hpp"

namespace sparewright::survey {
namespace {

using base::Code;
using ledger::Ledger;
using testing::ElementsAre;
using testing::HasSubstr;
using tests::reading;

constexpr double kInch = 25.4;

Known known(std::string name, std::string is, std::string_view within = "") {
  Known one;
  one.name = std::move(name);
  one.is = std::move(is);
  if (!within.empty()) one.within = tests::typed(within);
  return one;
}

// Two holes and the whole they lie in.
Survey holes() {
  Survey survey = tests::lever();
  survey.dimensions = {{"left", quantity::Kind::kDiameter}, {"right", quantity::Kind::kDiameter}};
  survey.readings = {reading("left", Way::kInside, {"left"}, "caliper 8", {"0.500"}),
                     reading("right", Way::kInside, {"right"}, "caliper 8", {"0.501"})};
  return survey;
}

Ledger worked(const Survey& survey) {
  auto stages = survey_stages(survey);
  if (!stages) throw std::runtime_error(base::report(stages.error().front()));
  Ledger ledger;
  ledger.declare(std::move(*stages));
  return ledger;
}

TEST(Known, EqualSizesAreTheMeanOfBoth) {
  Survey survey = holes();
  survey.known = {known("alike", "left = right")};
  survey.known[0].why = "bored in one setting";
  Ledger ledger = worked(survey);
  const auto left = ledger.get("survey/left");
  // What is exact counts as known to a thousandth of the finest reading: the sizes differ by 1e-6 of 0.001 in.
  EXPECT_NEAR(left.value, 0.5005 * kInch, 1e-5 * 0.001 * kInch);
  EXPECT_NEAR(ledger.get("survey/right").value, left.value, 1e-5 * 0.001 * kInch);
  // Own doubts 1e-6 in2 (1 + 0.25)/3 halved by two, the zero of the inside jaws (1e-3)^2/3 whole.
  EXPECT_NEAR(left.u(), std::sqrt(1.25 / 3.0 / 2.0 + 1.0 / 3.0) * 1e-3 * kInch, 1e-6 * left.u());
  EXPECT_THAT(left.inputs, ElementsAre("reading/left", "reading/right", "known/alike"));
  const auto root = ledger.get("known/alike");
  EXPECT_EQ(root.origin, ledger::Origin::kChoice);
  EXPECT_EQ(root.typed, "left = right");
  EXPECT_EQ(root.source, "bored in one setting");
  EXPECT_EQ(root.u(), 0.0);
  EXPECT_EQ(ledger.get("survey/agreement/spare readings").value, 1.0);
  EXPECT_TRUE(ledger.queries().empty());
}

// Weights by hand: left's own doubt a = sqrt(1.25/3)e-3 in, and right by way of the known, sqrt(a^2 + w^2) with w =
// 0.003/sqrt(3) in.
TEST(Known, WithinIsACauseOfItsOwn) {
  Survey survey = holes();
  survey.known = {known("alike", "left = right", "0.003")};
  Ledger ledger = worked(survey);
  const auto left = ledger.get("survey/left");
  const double own = 1.25 / 3.0;
  const double by_right = own + 9.0 / 3.0;
  const double weight = by_right / (own + by_right);
  EXPECT_NEAR(left.value, (0.500 * weight + 0.501 * (1.0 - weight)) * kInch, 1e-9);
  double share = 0.0;
  for (const auto& each : left.shares) {
    if (each.cause.text() == "known/alike") share = each.amount;
  }
  EXPECT_NEAR(std::abs(share), (1.0 - weight) * std::sqrt(3.0) * 1e-3 * kInch, 1e-9);
}

TEST(Known, ASumThatClosesFixesWhatNobodyMeasured) {
  Survey survey = holes();
  survey.dimensions.push_back({"whole", quantity::Kind::kLength});
  survey.known = {known("closes", "left + right + 1/4 = whole")};
  Ledger ledger = worked(survey);
  EXPECT_NEAR(ledger.get("survey/whole").value, 1.251 * kInch, 1e-9);
}

TEST(Known, AgainstTheReadingsIsNamedWithThem) {
  Survey survey = holes();
  survey.readings[1].repeats = tests::typed_all({"0.520"});
  survey.known = {known("alike", "left = right")};
  Ledger ledger = worked(survey);
  const auto queries = ledger.queries();
  ASSERT_EQ(queries.size(), 1U);
  EXPECT_EQ(queries[0].id, "known against the readings/alike");
  EXPECT_EQ(queries[0].about, "known/alike");
  EXPECT_EQ(queries[0].says,
            "'left = right' is said to be so, yet by the readings the two sides are 0.0200 in apart; it does "
            "not go "
            "together with 'left' and 'right'");
}

// A micrometer elsewhere is ten times finer: it has no part in what is exact between the two holes.
TEST(Known, IsCheckedBesideFinerReadingsElsewhere) {
  Survey survey = holes();
  survey.dimensions.push_back({"pin", quantity::Kind::kDiameter});
  survey.readings.push_back(reading("pin", Way::kOutside, {"pin"}, "micrometer 0-1", {"0.4000"}));
  survey.readings[1].repeats = tests::typed_all({"0.520"});
  survey.known = {known("alike", "left = right")};
  const auto queries = worked(survey).queries();
  ASSERT_EQ(queries.size(), 1U);
  EXPECT_EQ(queries[0].id, "known against the readings/alike");
}

// One end by caliper, the other over a chain of three: what is exact is a thousandth of the finest of them.
TEST(Known, IsCheckedOverAChainOfReadings) {
  Survey survey = holes();
  survey.dimensions = {
      {"a", quantity::Kind::kLength}, {"b", quantity::Kind::kLength}, {"whole", quantity::Kind::kLength}};
  survey.readings = {reading("a", Way::kOutside, {"a"}, "micrometer 0-1", {"0.4000"}),
                     reading("b", Way::kOutside, {"b"}, "caliper 8", {"0.500"}),
                     reading("whole", Way::kOutside, {"whole"}, "caliper 8", {"0.930"})};
  survey.known = {known("closes", "a + b = whole")};
  const auto queries = worked(survey).queries();
  ASSERT_EQ(queries.size(), 1U);
  EXPECT_EQ(queries[0].id, "known against the readings/closes");
  EXPECT_THAT(queries[0].says, HasSubstr("0.0300 in apart"));
  survey.readings[2].repeats = tests::typed_all({"0.900"});
  EXPECT_TRUE(worked(survey).queries().empty());
}

TEST(Known, OfAnotherReadingSaysNothing) {
  Survey survey = holes();
  survey.readings.push_back(reading("right again", Way::kInside, {"right"}, "caliper 8", {"0.501"}));
  survey.readings.push_back(reading("right off", Way::kInside, {"right"}, "caliper 8", {"0.522"}));
  survey.known = {known("alike", "left = right", "0.003")};
  const auto queries = worked(survey).queries();
  ASSERT_EQ(queries.size(), 1U);
  EXPECT_EQ(queries[0].id, "misread/right off");
}

std::vector<base::Failure> failures_of(const std::vector<Known>& all) {
  Survey survey = holes();
  survey.known = all;
  std::vector<base::Failure> failures;
  for (const Trouble& trouble : troubles(survey)) {
    EXPECT_EQ(trouble.in, Trouble::In::kKnown);
    failures.push_back(trouble.failure);
  }
  return failures;
}

TEST(KnownTroubles, ContradictionsNameAllThatAreInThem) {
  const auto failures = failures_of({known("a", "left = right"), known("b", "left = right + 0.01")});
  ASSERT_EQ(failures.size(), 1U);
  EXPECT_EQ(failures[0].found, "left = right + 0.01");
  EXPECT_EQ(failures[0].accepted, "what goes with 'left = right': no sizes make all of them true");
  EXPECT_TRUE(failures_of({known("a", "left = right"), known("b", "right = left")}).empty());
  // 0.010 in apart and each known within 0.006: both can be true.
  EXPECT_TRUE(
      failures_of({known("a", "left = right", "0.006"), known("b", "left = right + 0.01", "0.006")}).empty());
}

TEST(KnownTroubles, PointIntoTheText) {
  const auto unknown = failures_of({known("a", "left = rihgt")});
  ASSERT_EQ(unknown.size(), 1U);
  EXPECT_EQ(unknown[0].code, Code::kNameUnknown);
  EXPECT_EQ(unknown[0].span->offset, 7U);
  EXPECT_EQ(unknown[0].span->length, 5U);
  const auto mixed = failures_of({known("a", "left = 30 deg")});
  ASSERT_EQ(mixed.size(), 1U);
  EXPECT_EQ(mixed[0].code, Code::kKindsDoNotMix);
}

TEST(KnownTroubles, RefuseWhatNoDimensionDecides) {
  for (const char* is : {"left = left", "left = left + 0.1", "left - right = left - right"}) {
    const auto failures = failures_of({known("a", is)});
    ASSERT_EQ(failures.size(), 1U) << is;
    EXPECT_EQ(failures[0].accepted, "an equation that a dimension decides: here they cancel") << is;
  }
  const auto by_zero = failures_of({known("a", "left / 0 = right")});
  ASSERT_EQ(by_zero.size(), 1U);
  EXPECT_EQ(by_zero[0].code, Code::kDividesByZero);
}

TEST(KnownTroubles, SayWhatIsTaken) {
  for (const char* is : {"left", "left = right = left", "left =", "= right", ""}) {
    const auto failures = failures_of({known("a", is)});
    ASSERT_EQ(failures.size(), 1U) << is;
    EXPECT_EQ(failures[0].code, Code::kValueNotAccepted) << is;
  }
  EXPECT_EQ(failures_of({known("a", "1 = 2")}).at(0).accepted, "an equation with a dimension in it");
  EXPECT_EQ(failures_of({known("a", "left = right", "0")}).at(0).accepted,
            "more than 0; left out where the two sides are the same");
  EXPECT_EQ(failures_of({known("left", "left = right")}).at(0).code, Code::kNameTwice);
  EXPECT_EQ(failures_of({known("a/b", "left = right")}).at(0).code, Code::kValueNotAccepted);
}

}  // namespace
}  // namespace sparewright::survey
