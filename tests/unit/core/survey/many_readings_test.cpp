// Far more readings than a job has.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/survey/adjust.hpp"
#include "core/survey/stage.hpp"
#include "networks.hpp"
#include "surveys.hpp"

namespace sparewright::survey {
namespace {

constexpr std::size_t kReadings = 800;
constexpr std::size_t kUnknowns = 40;

std::string name_of_unknown(std::size_t j) {
  return "x" + std::to_string(j);
}

double truth_of(std::size_t j) {
  return 10.0 + static_cast<double>(j);
}

// Every reading a difference to the next or a size, all with one caliper; the errors are +-0.01 by turns.
TEST(ManyReadings, AreAdjustedTogether) {
  std::vector<std::string> names;
  for (std::size_t j = 0; j < kUnknowns; ++j)
    names.push_back(name_of_unknown(j));
  std::vector<tests::Row> rows;
  std::vector<std::size_t> all;
  for (std::size_t i = 0; i < kReadings; ++i) {
    const std::size_t a = i % kUnknowns;
    const std::size_t b = (a + 1) % kUnknowns;
    const bool is_size = (i / kUnknowns) % 2 == 0;
    const double error = (i / (2 * kUnknowns)) % 2 == 0 ? 0.01 : -0.01;
    rows.push_back({is_size ? names[a] : names[a] + " + " + names[b],
                    truth_of(a) + (is_size ? 0.0 : truth_of(b)) + error, 0.02});
    all.push_back(i);
  }
  auto network = tests::network_of(tests::lengths(names), rows);
  tests::share(network, all, 0.01);
  network.readings[567].value += 0.5;
  const auto report = tests::adjusted(network);
  EXPECT_EQ(report.degrees_of_freedom, static_cast<int>(kReadings - kUnknowns));
  ASSERT_TRUE(report.at_odds.has_value());
  EXPECT_EQ(report.at_odds->reading, 567U);
  for (std::size_t j = 0; j < kUnknowns; ++j)
    EXPECT_NEAR(report.unknowns[j].value, truth_of(j), 0.03);
}

// The same through the ledger, fewer, since every size there carries the shares of every reading.
TEST(ManyReadings, GoThroughTheLedger) {
  Survey survey;
  survey.instruments = {tests::instrument("caliper", "0.001", "0.001")};
  constexpr std::size_t kSizes = 20;
  constexpr std::size_t kRepeats = 15;
  for (std::size_t j = 0; j < kSizes; ++j) {
    survey.dimensions.push_back({name_of_unknown(j), quantity::Kind::kLength});
    for (std::size_t i = 0; i < kRepeats; ++i) {
      const std::string text = fmt::format("{:.3f}", truth_of(j) / 10.0 + 0.001 * static_cast<double>(i % 2));
      auto& reading = survey.readings.emplace_back(tests::reading(
          fmt::format("{} {}", name_of_unknown(j), i), Way::kOutside, {name_of_unknown(j)}, "caliper", {}));
      reading.repeats.push_back(tests::typed(text));
    }
  }
  auto stages = survey_stages(survey);
  ASSERT_TRUE(stages.has_value());
  ledger::Ledger ledger;
  ledger.declare(std::move(*stages));
  // The mean of eight of one and seven of the next, though all share one zero.
  EXPECT_NEAR(ledger.get("survey/x3").value, (1.3 + 0.001 * 7.0 / 15.0) * 25.4, 1e-9);
  EXPECT_TRUE(ledger.queries().empty());
}

}  // namespace
}  // namespace sparewright::survey
