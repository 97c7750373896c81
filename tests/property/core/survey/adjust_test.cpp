#include "core/survey/adjust.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>

#include <gtest/gtest.h>

#include "networks.hpp"
#include "property.hpp"

namespace sparewright::survey {
namespace {

using tests::adjusted;
using tests::holds;
using tests::random_network;

constexpr double kRounding = 1e-8;  // relative, of numbers that went through two factorisations

std::uint64_t any_seed() {
  return *rc::gen::inRange<std::uint64_t>(1, 1U << 30U);
}

// The network with its readings in another order.
Network reordered(const Network& network, const std::vector<std::size_t>& order) {
  Network other;
  other.unknowns = network.unknowns;
  other.covariance = Matrix(order.size(), order.size());
  for (std::size_t a = 0; a < order.size(); ++a) {
    other.readings.push_back(network.readings[order[a]]);
    for (std::size_t b = 0; b < order.size(); ++b)
      other.covariance.at(a, b) = network.covariance.at(order[a], order[b]);
  }
  return other;
}

std::vector<std::size_t> counting(std::size_t n) {
  std::vector<std::size_t> order(n);
  std::iota(order.begin(), order.end(), 0U);
  return order;
}

TEST(AdjustProperty, ReorderingReadingsChangesNothingThatMatters) {
  EXPECT_TRUE(holds("reordering", [] {
    const auto random = random_network(any_seed(), true);
    auto order = counting(random.network.readings.size());
    std::reverse(order.begin(), order.end());
    const auto one = adjusted(random.network);
    const auto other = adjusted(reordered(random.network, order));
    for (std::size_t j = 0; j < one.unknowns.size(); ++j) {
      RC_ASSERT(std::abs(one.unknowns[j].value - other.unknowns[j].value) <=
                kAdjustError * one.unknowns[j].u);
      RC_ASSERT(std::abs(one.unknowns[j].u / other.unknowns[j].u - 1.0) <= kRounding);
    }
    RC_ASSERT(one.at_odds->odds - other.at_odds->odds <= 1e-5);
  }));
}

TEST(AdjustProperty, ScalingEveryLengthScalesTheAnswer) {
  EXPECT_TRUE(holds("scaling", [] {
    // Only equations without a written size keep their form when everything is scaled.
    auto random = random_network(any_seed(), true);
    std::vector<std::size_t> plain;
    for (std::size_t i = 0; i < random.equations.size(); ++i) {
      if (random.equations[i].find("mm") == std::string::npos) plain.push_back(i);
    }
    Network network = reordered(random.network, plain);
    const auto one = adjusted(network);
    const double factor = *rc::gen::element(0.01, 25.4, 1000.0);
    for (Observation& reading : network.readings)
      reading.value *= factor;
    for (double& cell : network.covariance.cells)
      cell *= factor * factor;
    const auto other = adjusted(network);
    for (std::size_t j = 0; j < one.unknowns.size(); ++j) {
      RC_ASSERT(std::abs(other.unknowns[j].value / factor - one.unknowns[j].value) <=
                kAdjustError * one.unknowns[j].u);
      RC_ASSERT(std::abs(other.unknowns[j].u / factor / one.unknowns[j].u - 1.0) <= kRounding);
    }
    RC_ASSERT(std::abs(one.chi_square - other.chi_square) <= 1e-6 * (1.0 + one.chi_square));
  }));
}

TEST(AdjustProperty, OneMoreReadingNeverMakesAnUnknownLessSure) {
  EXPECT_TRUE(holds("one more reading", [] {
    const auto random = random_network(any_seed(), false);
    const std::size_t n = random.network.readings.size();
    auto order = counting(n);
    order.pop_back();  // the last is never the only reading of an unknown
    const auto fewer = adjusted(reordered(random.network, order));
    const auto more = adjusted(random.network);
    for (std::size_t j = 0; j < more.unknowns.size(); ++j) {
      RC_ASSERT(more.unknowns[j].u <= fewer.unknowns[j].u * (1.0 + kRounding));
    }
  }));
}

TEST(AdjustProperty, RedundanciesSumToTheDegreesOfFreedom) {
  EXPECT_TRUE(holds("redundancies", [] {
    const auto report = adjusted(random_network(any_seed(), true).network);
    double sum = 0.0;
    for (const Fit& fit : report.readings)
      sum += fit.redundancy;
    RC_ASSERT(std::abs(sum - report.degrees_of_freedom) <= 1e-6);
  }));
}

TEST(AdjustProperty, NoOneReadingExplainsMoreThanAllTheMisfit) {
  EXPECT_TRUE(holds("odds", [] {
    const auto report = adjusted(random_network(any_seed(), true, 3.0).network);
    for (const Fit& fit : report.readings) {
      RC_ASSERT(fit.odds.has_value() == fit.checked);
      if (fit.odds) RC_ASSERT(*fit.odds * *fit.odds <= report.chi_square * (1.0 + 1e-6));
    }
  }));
}

TEST(AdjustProperty, SlopesAreWhatAMovedReadingDoes) {
  EXPECT_TRUE(holds("slopes", [] {
    // Linear equations, where first order is all there is.
    auto random = random_network(any_seed(), false);
    const auto before = adjusted(random.network);
    const std::size_t i = *rc::gen::inRange<std::size_t>(0, random.network.readings.size());
    random.network.readings[i].value += 1.0;
    const auto after = adjusted(random.network);
    for (std::size_t j = 0; j < before.unknowns.size(); ++j) {
      RC_ASSERT(std::abs(after.unknowns[j].value - before.unknowns[j].value - before.slopes.at(j, i)) <=
                1e-8);
    }
  }));
}

TEST(AdjustProperty, TheCovarianceIsWhatTheSlopesMakeOfTheReadings) {
  EXPECT_TRUE(holds("covariance", [] {
    const auto random = random_network(any_seed(), true);
    const auto report = adjusted(random.network);
    for (std::size_t a = 0; a < report.unknowns.size(); ++a) {
      for (std::size_t b = 0; b < report.unknowns.size(); ++b) {
        double sum = 0.0;
        for (std::size_t i = 0; i < random.network.readings.size(); ++i) {
          sum += report.slopes.at(a, i) * dot(random.network.covariance.row(i), report.slopes.row(b));
        }
        RC_ASSERT(std::abs(sum - report.covariance.at(a, b)) <=
                  1e-7 * report.unknowns[a].u * report.unknowns[b].u);
      }
    }
  }));
}

// A gap is planted by taking away every reading that ties a set of unknowns down: of those in the set only
// differences with one another are left, so that all of them can move together, and of a second set nothing
// is left at all.
TEST(AdjustProperty, APlantedGapNamesExactlyTheUnknownsNothingFixes) {
  int gaps_met = 0;
  EXPECT_TRUE(holds("planted gaps", [&] {
    std::mt19937_64 draw(any_seed());
    const auto index = [&](std::size_t below) { return static_cast<std::size_t>(draw() % below); };
    const std::size_t m = 3 + index(10);
    std::vector<std::string> names;
    std::vector<int> group;  // 0 fixed, 1 and 2 adrift together, 3 not read at all
    for (std::size_t j = 0; j < m; ++j) {
      names.push_back("x" + std::to_string(j));
      group.push_back(static_cast<int>(index(4)));
    }
    std::vector<tests::Row> rows;
    std::vector<std::size_t> size(4, 0);
    std::vector<std::size_t> last(4, m);
    const auto u = [&] { return std::pow(10.0, -static_cast<double>(index(4))); };
    for (std::size_t j = 0; j < m; ++j) {
      const auto g = static_cast<std::size_t>(group[j]);
      ++size[g];
      if (g == 0 && (last[0] == m || index(2) == 0))
        rows.push_back({names[j], 10.0 + static_cast<double>(j), u()});
      if (g < 3 && last[g] < m) {
        rows.push_back({names[j] + " - " + names[last[g]], static_cast<double>(j - last[g]), u()});
        if (index(2) == 0) rows.push_back({"2*" + names[last[g]] + " - 2*" + names[j], -2.0, u()});
      }
      last[g] = j;
    }
    std::shuffle(rows.begin(), rows.end(), draw);
    const auto report = adjusted(tests::network_of(tests::lengths(names), rows));
    std::set<std::set<std::size_t>> expected;
    for (std::size_t g = 1; g < 3; ++g) {
      std::set<std::size_t> together;
      for (std::size_t j = 0; j < m; ++j) {
        if (group[j] == static_cast<int>(g)) together.insert(j);
      }
      if (!together.empty()) expected.insert(together);
    }
    for (std::size_t j = 0; j < m; ++j) {
      RC_ASSERT(report.unknowns[j].fixed == (group[j] == 0));
      if (group[j] == 3) expected.insert({j});
    }
    std::set<std::set<std::size_t>> found;
    for (const Gap& gap : report.gaps) {
      RC_ASSERT(gap.readings_wanted == 1U);
      found.insert(std::set<std::size_t>(gap.unknowns.begin(), gap.unknowns.end()));
    }
    RC_ASSERT(found == expected);
    gaps_met += static_cast<int>(expected.size());
  }));
  EXPECT_GT(gaps_met, 400);
}

// A reading made 20 standard uncertainties wrong is the one named, in networks that can tell: every reading
// checked well enough for 20 to stand out, and none too like it.
TEST(AdjustProperty, APlantedBlunderIsNamed) {
  int planted = 0;
  EXPECT_TRUE(holds("planted blunder", [&] {
    auto random = random_network(any_seed(), *rc::gen::arbitrary<bool>());
    const auto sound = adjusted(random.network);
    const std::size_t i = *rc::gen::inRange<std::size_t>(0, random.network.readings.size());
    const double u = std::sqrt(random.network.covariance.at(i, i));
    if (!sound.readings[i].checked) return;
    // What 20 u would come to, without errors: odds of the blunder alone, and of every other reading by it.
    Network quiet = random.network;
    for (std::size_t k = 0; k < quiet.readings.size(); ++k)
      quiet.readings[k].value = sound.readings[k].fitted;
    quiet.readings[i].value += 20.0 * u;
    const auto alone = adjusted(quiet);
    double next = 0.0;
    for (std::size_t k = 0; k < quiet.readings.size(); ++k) {
      if (k != i && alone.readings[k].odds) next = std::max(next, std::abs(*alone.readings[k].odds));
    }
    // Two normal numbers differ by more than 5 standard uncertainties of sqrt(2) once in a million.
    if (std::abs(alone.readings[i].odds.value_or(0.0)) < next + 5.0 * std::sqrt(2.0)) return;
    random.network.readings[i].value += 20.0 * u;
    const auto report = adjusted(random.network);
    RC_ASSERT(report.at_odds.has_value());
    RC_ASSERT(report.at_odds->suspect);
    RC_ASSERT(report.at_odds->reading == i);
    RC_ASSERT(std::abs(*report.readings[i].error - 20.0 * u) <= 6.0 * 20.0 * u / report.at_odds->odds);
    ++planted;
  }));
  EXPECT_GT(planted, 200);
}

// Without any other error the misread reading always has the largest odds, however the readings hang
// together.
TEST(AdjustProperty, WithNoOtherErrorTheBlunderHasTheLargestOdds) {
  EXPECT_TRUE(holds("quiet blunder", [] {
    auto random = random_network(any_seed(), false, 0.0);
    const std::size_t i = *rc::gen::inRange<std::size_t>(0, random.network.readings.size());
    random.network.readings[i].value += *rc::gen::element(-0.635, 0.635, 25.4);
    const auto report = adjusted(random.network);
    if (!report.readings[i].checked) return;
    const auto& at_odds = *report.at_odds;
    const bool named = at_odds.reading == i || std::count(at_odds.alike.begin(), at_odds.alike.end(), i) > 0;
    RC_ASSERT(named);
  }));
}

TEST(AdjustProperty, TheSameNetworkGivesTheSameBits) {
  EXPECT_TRUE(holds("same bits", [] {
    const auto random = random_network(any_seed(), true);
    RC_ASSERT(fingerprint(adjusted(random.network)) == fingerprint(adjusted(random.network)));
  }));
}

}  // namespace
}  // namespace sparewright::survey
