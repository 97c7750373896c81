// A reading out by five of its standard uncertainties, planted in readings of a plate as a shop takes them: how often it is
// named, beside a detector that knows more. SPAREWRIGHT_SURVEYS sets how many sets are made (tools/blunders.sh).
#include <algorithm>
#include <cmath>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "blunder_judge.hpp"
#include "core/survey/adjust.hpp"
#include "core/survey/suspects.hpp"
#include "shop_networks.hpp"

namespace sparewright::survey {
namespace {

using tests::BlunderJudge;

constexpr double kBlunder = 5.0;  // standard uncertainties of the reading

struct Tally {
  int sets = 0;
  int first = 0;         // named first, or among those nothing tells apart
  int held = 0;          // among the suspects
  int alarmed = 0;       // the alarm was raised
  int likeliest = 0;     // the detector that tries every single error
  int knowing = 0;       // the one that knows the size, too
  double suspects = 0;   // of all sets together
  int held_alarmed = 0;  // of those alarmed
  double suspects_alarmed = 0;

  [[nodiscard]] double part(int count) const { return static_cast<double>(count) / sets; }
  void print(const char* what) const {
    fmt::print(
        "{}: {} sets; named first {:.1f} %; likeliest single error {:.1f} %, its size known too {:.1f} %\n",
        what, sets, 100 * part(first), 100 * part(likeliest), 100 * part(knowing));
    fmt::print(
        "  held by the suspects {:.1f} % ({:.1f} of them on average); alarm {:.1f} %, then held {:.1f} % "
        "({:.1f})\n",
        100 * part(held), suspects / sets, 100 * part(alarmed), 100.0 * held_alarmed / alarmed,
        suspects_alarmed / alarmed);
  }
};

// The reading to be misread, among those that others check.
std::size_t any_checked(const BlunderJudge& judge, std::size_t readings, tests::ShopSets& sets) {
  for (;;) {
    const std::size_t i = sets.index(readings);
    if (judge.checked(i)) return i;
  }
}

struct Tallies {
  Tally clear;  // redundancy at least 0.7, and no rival nearer than 0.9
  Tally rest;
  Tally all;
};

void judge_one(tests::ShopSets& sets, Tallies& tallies) {
  tests::ShopSet set = sets.next(false);
  const std::size_t n = set.network.readings.size();
  const BlunderJudge judge(set);
  const std::size_t planted = any_checked(judge, n, sets);
  const bool is_clear = judge.redundancy(planted) >= 0.7 && judge.nearest_rival(planted) <= 0.9;
  set.network.readings[planted].value += (sets.index(2) == 0 ? 1.0 : -1.0) * kBlunder * judge.u(planted);
  std::vector<double> errors;
  for (std::size_t i = 0; i < n; ++i)
    errors.push_back(set.network.readings[i].value - set.exact[i]);
  const auto misfit = judge.misfit(errors);
  const bool likeliest = judge.same(judge.likeliest(misfit), planted);
  const bool knowing = judge.same(judge.likeliest(misfit, kBlunder), planted);

  const Adjustment adjustment = tests::adjusted(set.network);
  const AtOdds& at_odds = *adjustment.at_odds;
  const bool first =
      at_odds.reading == planted || std::count(at_odds.alike.begin(), at_odds.alike.end(), planted) > 0;
  const auto held = suspects(adjustment.traces);
  const bool is_held = std::count(held.begin(), held.end(), planted) > 0;
  for (Tally* tally : {is_clear ? &tallies.clear : &tallies.rest, &tallies.all}) {
    ++tally->sets;
    tally->first += first ? 1 : 0;
    tally->held += is_held ? 1 : 0;
    tally->held_alarmed += at_odds.suspect && is_held ? 1 : 0;
    tally->suspects_alarmed += at_odds.suspect ? static_cast<double>(held.size()) : 0.0;
    tally->alarmed += at_odds.suspect ? 1 : 0;
    tally->likeliest += likeliest ? 1 : 0;
    tally->knowing += knowing ? 1 : 0;
    tally->suspects += static_cast<double>(held.size());
  }
}

TEST(PlantedBlunders, AreNamedAsOftenAsTheyCanBe) {
  constexpr std::uint64_t kSeed = 71;
  const int count = tests::count_from("SPAREWRIGHT_SURVEYS", 50);
  fmt::print("seed {}\n", kSeed);
  tests::ShopSets sets(kSeed);
  Tallies tallies;
  for (int i = 0; i < count; ++i)
    judge_one(sets, tallies);
  tallies.clear.print("well checked");
  tallies.rest.print("the rest");
  tallies.all.print("all");
  // What so few sets may fall short by through luck: 3 binomial standard deviations.
  const auto at_least = [](const Tally& tally, double part) {
    return part - 3.0 * std::sqrt(part * (1.0 - part) / tally.sets);
  };
  EXPECT_GE(tallies.clear.part(tallies.clear.first), at_least(tallies.clear, 0.95));
  EXPECT_GE(tallies.rest.part(tallies.rest.held), at_least(tallies.rest, 0.98));
  EXPECT_GE(tallies.all.first, 0.97 * tallies.all.likeliest);
  EXPECT_GE(tallies.all.part(tallies.all.held), at_least(tallies.all, 0.98));
  EXPECT_LT(tallies.clear.suspects_alarmed, 4.0 * tallies.clear.alarmed);  // few, where it is plain
  EXPECT_GT(tallies.clear.sets, count / 20);
  EXPECT_GT(tallies.rest.sets, count / 20);
}

// Sound readings: an alarm as often as kFalseAlarms says, and the readings held by the suspects all but always.
TEST(PlantedBlunders, NonePlantedRaisesAlarmsAsOftenAsStated) {
  constexpr std::uint64_t kSeed = 72;
  const int count = 10 * tests::count_from("SPAREWRIGHT_SURVEYS", 50);
  fmt::print("seed {}\n", kSeed);
  tests::ShopSets sets(kSeed);
  int alarms = 0;
  int drawn = 0;
  for (int i = 0; i < count; ++i) {
    const Adjustment adjustment = tests::adjusted(sets.next(false).network);
    if (!adjustment.at_odds) continue;
    alarms += adjustment.at_odds->suspect ? 1 : 0;
    drawn += adjustment.at_odds->chance < 0.1 ? 1 : 0;
  }
  const double expected = kFalseAlarms * count;
  fmt::print("{} false alarms in {} sets, {:.0f} expected; chance below 0.1 in {}\n", alarms, count, expected,
             drawn);
  EXPECT_NEAR(alarms, expected, 3.0 * std::sqrt(expected * (1.0 - kFalseAlarms)));
}

}  // namespace
}  // namespace sparewright::survey
