#include "core/survey/stage.hpp"

#include <algorithm>
#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/survey/measure_up.hpp"
#include "surveys.hpp"

namespace sparewright::survey {
namespace {

using base::Code;
using ledger::Bound;
using ledger::Figure;
using ledger::Ledger;
using ledger::Origin;
using testing::ElementsAre;
using testing::HasSubstr;
using tests::lever;
using tests::reading;
using tests::typed;

constexpr double kInch = 25.4;
constexpr double kHand = 1e-10;

void declare(Ledger& ledger, const Survey& survey) {
  auto stages = survey_stages(survey);
  ASSERT_TRUE(stages.has_value());
  ledger.declare(std::move(*stages));
}

TEST(SurveyStages, WriteReadingsAndDimensions) {
  Ledger ledger;
  declare(ledger, lever());
  const Figure over = ledger.get("reading/over both");
  EXPECT_EQ(over.origin, Origin::kReading);
  EXPECT_EQ(over.typed, "6.628, 6.627");
  EXPECT_EQ(over.source, "caliper 8, outside jaws; mean of 2");
  EXPECT_NEAR(over.value, 6.6275 * kInch, kHand);

  const Figure centres = ledger.get("survey/centres");
  ASSERT_TRUE(centres.known());
  EXPECT_EQ(centres.kind, quantity::Kind::kLength);
  EXPECT_EQ(centres.bound, Bound::kExact);
  EXPECT_THAT(centres.inputs,
              ElementsAre("reading/between both", "reading/over both", "reading/pivot pin", "reading/stud"));
  EXPECT_NEAR(centres.value, 6.0025 * kInch, 0.001 * kInch);
}

TEST(SurveyStages, TheUncertaintyOfTheLedgerIsThatOfTheReport) {
  Ledger ledger;
  declare(ledger, lever());
  const auto report = ledger.value<MeasuredUp>("survey/report");
  ASSERT_NE(report, nullptr);
  const auto& unknowns = report->adjustment.unknowns;
  ASSERT_EQ(unknowns.size(), 3U);
  std::vector<Figure> figures;
  for (const Found& found : unknowns) {
    figures.push_back(ledger.get("survey/" + found.name));
    EXPECT_NEAR(figures.back().u() / found.u, 1.0, 1e-9);
  }
  for (std::size_t a = 0; a < 3; ++a) {
    for (std::size_t b = 0; b < 3; ++b) {
      EXPECT_NEAR(ledger::covariance(figures[a].shares, figures[b].shares),
                  report->adjustment.covariance.at(a, b), 1e-9 * unknowns[a].u * unknowns[b].u);
    }
  }
}

TEST(SurveyStages, OneZeroBehindTwoSizesCancelsInTheirDifference) {
  Survey survey = lever();
  survey.dimensions = {{"a", quantity::Kind::kDiameter}, {"b", quantity::Kind::kDiameter}};
  survey.readings = {reading("a", Way::kOutside, {"a"}, "caliper 8", {"1.000"}),
                     reading("b", Way::kOutside, {"b"}, "caliper 8", {"0.900"})};
  auto stages = survey_stages(survey);
  ASSERT_TRUE(stages.has_value());
  stages->push_back({"test", {}, [](ledger::Pen& pen) {
                       pen.work(
                           "clearance", quantity::Kind::kLength, "a less b",
                           [](auto a, auto b) { return a - b; }, pen.need("survey/a"), pen.need("survey/b"));
                     }});
  Ledger ledger;
  ledger.declare(std::move(*stages));
  // good to 0.001 and half a step 0.0005, each over sqrt(3), for two readings; no zero error.
  const double expected = std::sqrt(2.0 * (0.001 * 0.001 + 0.0005 * 0.0005) / 3.0) * kInch;
  EXPECT_NEAR(ledger.get("test/clearance").u(), expected, 1e-12);
  EXPECT_GT(ledger.get("survey/a").u(), expected / std::sqrt(2.0));
}

TEST(SurveyStages, DefaultsAreFiguresAndSaySo) {
  Ledger ledger;
  declare(ledger, lever());
  const Figure unchecked = ledger.get("instrument/caliper 8/outside jaws/zero");
  EXPECT_EQ(unchecked.origin, Origin::kDefault);
  EXPECT_NEAR(unchecked.value, 0.001 * kInch, kHand);
  EXPECT_THAT(unchecked.source, HasSubstr("not checked"));
  const Figure checked = ledger.get("instrument/micrometer 0-1/outside jaws/zero");
  EXPECT_EQ(checked.origin, Origin::kDefault);
  EXPECT_NEAR(checked.value, 0.00005 * kInch, kHand);
  EXPECT_TRUE(ledger.get("instrument/caliper 8/inside jaws/zero").known());
  EXPECT_FALSE(ledger.get("instrument/caliper 8/depth rod/zero").known());  // not in use

  Survey survey = lever();
  survey.instruments[1].zero_within = typed("0.0005");
  declare(ledger, survey);
  EXPECT_EQ(ledger.get("instrument/caliper 8/outside jaws/zero").origin, Origin::kReading);
}

TEST(SurveyStages, WhatNothingFixesIsNotKnownAndNamesTheReading) {
  Survey survey = lever();
  survey.readings.erase(survey.readings.begin());  // no reading of the pivot pin,
  survey.readings.pop_back();                      // none between
  Ledger ledger;
  declare(ledger, survey);
  const Figure centres = ledger.get("survey/centres");
  EXPECT_FALSE(centres.known());
  EXPECT_THAT(centres.missing, ElementsAre("survey/wanted/a reading of centres or pivot_pin"));
  EXPECT_TRUE(ledger.get("survey/stud").known());
}

TEST(SurveyStages, AFoundSizeStandsInForAWantedReading) {
  Survey survey = lever();
  survey.dimensions.push_back({"width", quantity::Kind::kLength});
  auto bent = tests::expression("width", "0*width", "caliper 8", {"0.000"});  // says nothing of the width
  survey.readings.push_back(bent);
  Ledger ledger;
  declare(ledger, survey);
  ASSERT_THAT(ledger.get("survey/width").missing, ElementsAre("survey/wanted/a reading of width"));
  ledger.replace("survey/wanted/a reading of width", {12.5, ledger::Shares{}, "measured at the machine"});
  EXPECT_TRUE(ledger.get("survey/width").known());
  EXPECT_EQ(ledger.get("survey/width").value, 12.5);
}

TEST(SurveyStages, WhatNoOtherReadingChecksIsSaid) {
  Survey survey = lever();
  survey.readings.pop_back();
  Ledger ledger;
  declare(ledger, survey);
  EXPECT_THAT(ledger.get("survey/stud").formula, HasSubstr("from one reading; not checked by another"));
  declare(ledger, lever());
  EXPECT_THAT(ledger.get("survey/centres").formula, testing::Not(HasSubstr("not checked")));
}

TEST(SurveyStages, AWornOutsideIsAtLeastAndAWornInsideAtMost) {
  Survey survey = lever();
  survey.dimensions = {{"pin", quantity::Kind::kDiameter}, {"bore", quantity::Kind::kDiameter}};
  survey.readings = {
      tests::in_condition(reading("pin", Way::kOutside, {"pin"}, "caliper 8", {"0.745"}), Condition::kWorn),
      tests::in_condition(reading("bore", Way::kInside, {"bore"}, "caliper 8", {"0.760"}), Condition::kWorn)};
  Ledger ledger;
  declare(ledger, survey);
  EXPECT_EQ(ledger.get("reading/pin").bound, Bound::kAtLeast);
  EXPECT_EQ(ledger.get("survey/pin").bound, Bound::kAtLeast);
  EXPECT_EQ(ledger.get("survey/bore").bound, Bound::kAtMost);
}

TEST(SurveyStages, AWornPinUnderAnOverReadingBoundsTheCentresTheOtherWay) {
  // over both = centres + pin/2 + stud/2 with the pin worn: the pin is at least, so the centres are at most.
  Survey survey = lever();
  survey.readings.pop_back();
  survey.readings[0].condition = Condition::kWorn;
  Ledger ledger;
  declare(ledger, survey);
  EXPECT_EQ(ledger.get("survey/pivot_pin").bound, Bound::kAtLeast);
  EXPECT_EQ(ledger.get("survey/centres").bound, Bound::kAtMost);
  EXPECT_EQ(ledger.get("survey/stud").bound, Bound::kExact);
}

TEST(SurveyStages, AWornPlaceIsComparedWithTheSoundOne) {
  Survey survey = lever();
  survey.readings.push_back(tests::in_condition(
      reading("worn band", Way::kOutside, {"pivot_pin"}, "micrometer 0-1", {"0.7440"}), Condition::kWorn));
  Ledger ledger;
  declare(ledger, survey);
  const Figure differs = ledger.get("survey/differs/worn band");
  const double pin = ledger.get("survey/pivot_pin").value;
  EXPECT_NEAR(differs.value, 0.7440 * kInch - pin, kHand);
  EXPECT_EQ(ledger.get("survey/pivot_pin").bound, Bound::kExact);
  EXPECT_TRUE(ledger.queries().empty());

  survey.readings.back().repeats = tests::typed_all({"0.7520"});  // more metal than where it is sound
  declare(ledger, survey);
  const auto queries = ledger.queries();
  ASSERT_EQ(queries.size(), 1U);
  EXPECT_EQ(queries[0].id, "worn place has more metal/worn band");
  EXPECT_EQ(queries[0].about, "reading/worn band");
  EXPECT_THAT(queries[0].says, HasSubstr("0.0022 in more metal"));
}

TEST(SurveyStages, AMisreadingIsNamed) {
  Survey survey = lever();
  survey.readings.push_back(reading("stud again", Way::kOutside, {"stud"}, "caliper 8", {"0.498"}));
  survey.readings.push_back(reading("stud a third time", Way::kOutside, {"stud"}, "caliper 8", {"0.523"}));
  Ledger ledger;
  declare(ledger, survey);
  const auto queries = ledger.queries();
  ASSERT_EQ(queries.size(), 1U);
  EXPECT_EQ(queries[0].id, "misread/stud a third time");
  EXPECT_THAT(queries[0].says, HasSubstr("above what the others say"));
  const Figure odds = ledger.get("survey/agreement/most at odds");
  EXPECT_GT(odds.value, 10.0);
  EXPECT_THAT(odds.formula, HasSubstr("'stud a third time'"));
  EXPECT_GT(ledger.get("survey/agreement/total").value, ledger.get("survey/agreement/limit").value);
  EXPECT_EQ(ledger.get("survey/agreement/spare readings").value, 3.0);
}

TEST(SurveyStages, WhatCannotBeToldApartIsSaidToBe) {
  Survey survey = lever();
  survey.readings[3].repeats = tests::typed_all({"5.4775"});  // a tenth out, with one spare reading
  Ledger ledger;
  declare(ledger, survey);
  const auto queries = ledger.queries();
  ASSERT_EQ(queries.size(), 1U);
  EXPECT_THAT(queries[0].says, HasSubstr("cannot tell which"));
  EXPECT_THAT(queries[0].says, HasSubstr("'between both', 'over both', 'pivot pin' or 'stud'"));
}

TEST(SurveyStages, ASoundSurveyAsksNothing) {
  Ledger ledger;
  declare(ledger, lever());
  EXPECT_TRUE(ledger.queries().empty());
}

TEST(SurveyStages, DifferencesCarryWhatTheyShareWithTheSizes) {
  Ledger ledger;
  declare(ledger, lever());
  const auto report = ledger.value<MeasuredUp>("survey/report");
  for (const Fit& fit : report->adjustment.readings) {
    const Figure differs = ledger.get("survey/differs/" + fit.name);
    EXPECT_NEAR(differs.value, fit.residual, 1e-12);
    EXPECT_NEAR(differs.u(), fit.residual_u, 1e-9 * fit.residual_u + 1e-9);
  }
}

TEST(SurveyStages, TheOrderOfTypingDoesNotTouchABit) {
  Survey survey = lever();
  Ledger one;
  declare(one, survey);
  std::reverse(survey.readings.begin(), survey.readings.end());
  std::reverse(survey.dimensions.begin(), survey.dimensions.end());
  Ledger other;
  declare(other, survey);
  const auto a = one.figures();
  const auto b = other.figures();
  ASSERT_EQ(a.size(), b.size());
  for (std::size_t i = 0; i < a.size(); ++i)
    EXPECT_EQ(fingerprint(a[i]), fingerprint(b[i])) << a[i].name;
}

TEST(SurveyStages, RunAgainOnlyForWhatChanged) {
  Survey survey = lever();
  Ledger ledger;
  declare(ledger, survey);
  ledger.settle();
  const auto first = ledger.runs();
  declare(ledger, survey);
  ledger.settle();
  EXPECT_EQ(ledger.runs(), first);

  survey.readings[1].repeats = tests::typed_all({"0.4990"});
  declare(ledger, survey);
  ledger.settle();
  EXPECT_EQ(ledger.runs(), first + 3);  // "reading", "survey", "next reading"; no zero error changed

  Ledger scratch;
  declare(scratch, survey);
  const auto a = ledger.figures();
  const auto b = scratch.figures();
  ASSERT_EQ(a.size(), b.size());
  for (std::size_t i = 0; i < a.size(); ++i)
    EXPECT_EQ(fingerprint(a[i]), fingerprint(b[i])) << a[i].name;
}

TEST(SurveyStages, DefinitionsCoverWhatTheStageUses) {
  const auto definitions = [](const Survey& survey) {
    std::vector<base::Fingerprint> prints;
    const auto stages = survey_stages(survey);
    for (const auto& stage : *stages)
      prints.push_back(stage.definition);
    return prints;
  };
  const auto before = definitions(lever());
  const auto changed = [&](auto&& edit) {
    Survey survey = lever();
    edit(survey);
    const auto after = definitions(survey);
    std::string which;
    for (std::size_t i = 0; i < after.size(); ++i)
      which += after[i] == before[i] ? '-' : 'x';
    return which;  // instrument, reading, survey, next reading
  };
  EXPECT_EQ(changed([](Survey&) {}), "----");
  EXPECT_EQ(changed([](Survey& s) { s.readings[0].place = "elsewhere"; }), "-x--");
  EXPECT_EQ(changed([](Survey& s) { s.readings[0].repeats = tests::typed_all({"0.7499"}); }), "-xx-");
  EXPECT_EQ(changed([](Survey& s) { s.instruments[1].good_to = typed("0.002"); }), "xx-x");
  EXPECT_EQ(changed([](Survey& s) { s.instruments[1].zero_within = typed("0.001"); }),
            "x---");  // same, but stated
  EXPECT_EQ(changed([](Survey& s) { s.readings[1].way = Way::kInside; }),
            "-xxx");  // inside jaws are in use already; the survey knows whose zero is in which reading
  EXPECT_EQ(changed([](Survey& s) { std::swap(s.readings[2].of[1], s.readings[2].of[2]); }), "--xx");
  EXPECT_EQ(changed([](Survey& s) { s.dimensions[2].kind = quantity::Kind::kCoordinate; }), "--xx");
  EXPECT_EQ(changed([](Survey& s) { s.system = quantity::UnitSystem::kMetric; }), "--xx");
}

TEST(SurveyStages, AReplacedReadingMovesTheSizes) {
  Ledger ledger;
  declare(ledger, lever());
  const double before = ledger.get("survey/stud").value;
  ledger.replace("reading/stud", {0.5 * kInch, std::nullopt, "trial"});
  EXPECT_GT(ledger.get("survey/stud").value, before);
  ledger.restore("reading/stud");
  EXPECT_EQ(ledger.get("survey/stud").value, before);
}

TEST(SurveyStages, ASurveyThatFailsLeavesItsSizesNotKnown) {
  Survey survey = lever();
  survey.readings.push_back(tests::expression("odd", "1 in2/(stud - stud)", "caliper 8", {"1"}));
  Ledger ledger;
  declare(ledger, survey);
  EXPECT_FALSE(ledger.get("survey/stud").known());
  const auto queries = ledger.queries();
  ASSERT_EQ(queries.size(), 1U);
  EXPECT_EQ(queries[0].id, "measuring up fails");
  EXPECT_THAT(queries[0].says, HasSubstr("divides by zero"));
}

TEST(SurveyStages, RefuseWhatIsWrong) {
  Survey survey = lever();
  survey.readings[1].instrument = "rule";
  survey.readings[2].of[0] = "center";
  const auto stages = survey_stages(survey);
  ASSERT_FALSE(stages.has_value());
  ASSERT_EQ(stages.error().size(), 2U);
  EXPECT_EQ(stages.error()[0].code, Code::kNotInTheShop);
  EXPECT_EQ(stages.error()[1].code, Code::kNameUnknown);
}

}  // namespace
}  // namespace sparewright::survey
