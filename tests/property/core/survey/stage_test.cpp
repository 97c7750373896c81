#include "core/survey/stage.hpp"

#include <cmath>
#include <random>

#include <gtest/gtest.h>

#include "core/survey/measure_up.hpp"
#include "property.hpp"
#include "surveys.hpp"

namespace sparewright::survey {
namespace {

using ledger::Ledger;
using tests::holds;

// One edit of a survey, as a person would make it.
void edit(Survey& survey, std::mt19937_64& draw) {
  const auto index = [&](std::size_t below) { return static_cast<std::size_t>(draw() % below); };
  Reading& reading = survey.readings[index(survey.readings.size())];
  Instrument& instrument = survey.instruments[index(survey.instruments.size())];
  switch (index(6)) {
    case 0:
      reading.repeats.push_back(reading.repeats[index(reading.repeats.size())]);
      break;
    case 1:
      reading.repeats.front().base += 0.01 * (static_cast<double>(index(21)) - 10.0);
      break;
    case 2:
      reading.condition = static_cast<Condition>(index(4));
      break;
    case 3:
      instrument.zero_checked = !instrument.zero_checked;
      break;
    case 4:
      reading.place += " again";
      break;
    default:
      instrument.good_to.base *= 1.5;
      break;
  }
}

TEST(StageProperty, EditsGiveWhatAFreshStartGives) {
  EXPECT_TRUE(holds("edits", [] {
    std::mt19937_64 draw(*rc::gen::inRange<std::uint64_t>(1, 1U << 30U));
    Survey survey = tests::lever();
    survey.readings.push_back(
        tests::reading("stud again", Way::kOutside, {"stud"}, "micrometer 0-1", {"0.4990"}));
    Ledger kept;
    for (int i = 0; i < 5; ++i) {
      edit(survey, draw);
      auto stages = survey_stages(survey);
      RC_ASSERT(stages.has_value());
      kept.declare(std::move(*stages));
      Ledger fresh;
      fresh.declare(*survey_stages(survey));
      const auto a = kept.figures();
      const auto b = fresh.figures();
      RC_ASSERT(a.size() == b.size());
      for (std::size_t k = 0; k < a.size(); ++k)
        RC_ASSERT(fingerprint(a[k]) == fingerprint(b[k]));
    }
  }));
}

// What the ledger makes of the shares is the covariance the report gives, whatever was worn or bent.
TEST(StageProperty, TheLedgerAgreesWithTheReport) {
  int sizes = 0;
  EXPECT_TRUE(holds("ledger and report", [&] {
    std::mt19937_64 draw(*rc::gen::inRange<std::uint64_t>(1, 1U << 30U));
    Survey survey = tests::lever();
    survey.readings.push_back(
        tests::reading("stud again", Way::kOutside, {"stud"}, "micrometer 0-1", {"0.4990"}));
    for (int i = 0; i < 4; ++i)
      edit(survey, draw);
    Ledger ledger;
    ledger.declare(*survey_stages(survey));
    const auto report = ledger.value<MeasuredUp>("survey/report");
    RC_ASSERT(report != nullptr);
    for (const Found& found : report->adjustment.unknowns) {
      const auto figure = ledger.get("survey/" + found.name);
      RC_ASSERT(figure.known() == found.fixed);
      if (!found.fixed) continue;
      RC_ASSERT(std::abs(figure.value - found.value) == 0.0);
      RC_ASSERT(std::abs(figure.u() / found.u - 1.0) <= 1e-8);
      ++sizes;
    }
  }));
  EXPECT_GT(sizes, 800);
}

}  // namespace
}  // namespace sparewright::survey
