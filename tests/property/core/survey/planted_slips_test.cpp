// A turn of the thimble or the collar missed, or counted too many, planted in readings of a plate as a shop takes them: how
// often it is named rightly. SPAREWRIGHT_SURVEYS sets how many sets are made (tools/blunders.sh).
#include <algorithm>
#include <cmath>
#include <optional>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "blunder_judge.hpp"
#include "core/survey/explanations.hpp"
#include "shop_networks.hpp"

namespace sparewright::survey {
namespace {

using tests::BlunderJudge;

// A slip can be determined where the misfits it leaves, errors aside, are so many standard deviations from those of every other
// slip of every reading, and from none: the best detector then takes one for the other once in 700 times at most (a normal
// number beyond half of it).
constexpr double kDeterminable = 6.0;

struct Planted {
  std::size_t reading = 0;
  double shift = 0.0;
};

std::optional<double> turn_of(const AsRead& read) {
  if (read.turn) return read.turn;
  if (read.instrument_kind.find("micrometer") == std::string::npos) return std::nullopt;
  return read.is_metric ? 0.5 : 0.025 * 25.4;
}

// Puts a slip into a checked reading that can have one.
std::optional<Planted> planted_in(tests::ShopSet& set, const BlunderJudge& judge, tests::ShopSets& sets,
                                  std::optional<std::size_t> but = std::nullopt) {
  const std::size_t first = sets.index(set.read.size());
  for (std::size_t k = 0; k < set.read.size(); ++k) {
    const std::size_t i = (first + k) % set.read.size();
    AsRead& read = set.read[i];
    const auto turn = turn_of(read);
    if (!turn || !judge.checked(i) || i == but) continue;
    const double shift = sets.index(2) == 0 ? *turn : -*turn;
    read.reading += shift;
    read.typed = fmt::format("{:.{}f}", read.reading / (read.is_metric ? 1.0 : 25.4),
                             read.typed.size() - read.typed.find('.') - 1);
    set.network.readings[i].value = read.reading;
    return Planted{i, shift};
  }
  return std::nullopt;
}

bool is_determinable(const tests::ShopSet& set, const BlunderJudge& judge, const Planted& planted) {
  if (std::abs(planted.shift) * judge.length(planted.reading) < kDeterminable) return false;
  for (std::size_t k = 0; k < set.read.size(); ++k) {
    if (!judge.checked(k)) continue;
    for (const Slip& slip : usual_slips(set.read[k])) {
      const bool is_it = k == planted.reading && std::abs(slip.shift - planted.shift) < 1e-9;
      if (!is_it && judge.apart(planted.reading, planted.shift, k, slip.shift) < kDeterminable) return false;
    }
  }
  return true;
}

bool holds_slip(const Explanation& explanation, const Planted& planted) {
  return std::any_of(explanation.slips.begin(), explanation.slips.end(), [&](const SlipAt& at) {
    return at.reading == planted.reading && std::abs(at.slip.shift - planted.shift) < 1e-9;
  });
}

TEST(PlantedSlips, ATurnMissedIsExplainedWhereItCanBeDetermined) {
  constexpr std::uint64_t kSeed = 73;
  const int count = tests::count_from("SPAREWRIGHT_SURVEYS", 50);
  fmt::print("seed {}\n", kSeed);
  tests::ShopSets sets(kSeed);
  int all = 0;
  int determinable = 0;
  int right = 0;
  int right_of_all = 0;
  for (int i = 0; i < count; ++i) {
    tests::ShopSet set = sets.next(true);
    const BlunderJudge judge(set);
    const auto planted = planted_in(set, judge, sets);
    if (!planted) continue;
    const auto found = explanations(set.network, tests::adjusted(set.network), set.read);
    const bool is_right =
        !found.empty() && found.front().slips.size() == 1 && holds_slip(found.front(), *planted);
    const bool can_be = is_determinable(set, judge, *planted);
    ++all;
    determinable += can_be ? 1 : 0;
    right += can_be && is_right ? 1 : 0;
    right_of_all += is_right ? 1 : 0;
  }
  fmt::print(
      "one turn missed or too many: {} of {} determinable ones explained rightly ({:.1f} %); of all {}, "
      "{:.1f} %\n",
      right, determinable, 100.0 * right / determinable, all, 100.0 * right_of_all / all);
  EXPECT_GT(determinable, count / 10);
  EXPECT_GE(right, determinable * 0.97 - 3.0 * std::sqrt(0.97 * 0.03 * determinable));
}

TEST(PlantedSlips, TwoTurnsAtOnceAreExplainedWhereEachAloneCouldBe) {
  constexpr std::uint64_t kSeed = 74;
  const int count = tests::count_from("SPAREWRIGHT_SURVEYS", 50);
  fmt::print("seed {}\n", kSeed);
  tests::ShopSets sets(kSeed);
  int both = 0;
  int right = 0;
  for (int i = 0; i < count; ++i) {
    tests::ShopSet set = sets.next(true);
    const BlunderJudge judge(set);
    const auto one = planted_in(set, judge, sets);
    if (!one) continue;
    const auto other = planted_in(set, judge, sets, one->reading);
    if (!other || !is_determinable(set, judge, *one) || !is_determinable(set, judge, *other)) continue;
    ++both;
    const auto found = explanations(set.network, tests::adjusted(set.network), set.read);
    right += !found.empty() && holds_slip(found.front(), *one) && holds_slip(found.front(), *other) ? 1 : 0;
  }
  fmt::print("two at once: {} of {} explained rightly ({:.1f} %)\n", right, both, 100.0 * right / both);
  EXPECT_GT(both, count / 20);
  // How often two together look like others is not worked out beforehand; most are to be found.
  EXPECT_GE(right, both * 0.8);
}

}  // namespace
}  // namespace sparewright::survey
