// The search for trains against plain loops over every choice of gears: the same trains in the same order.
#include <algorithm>
#include <bit>
#include <cmath>
#include <map>
#include <set>
#include <tuple>

#include <gtest/gtest.h>

#include "core/handbook/gear_trains.hpp"
#include "property.hpp"

namespace sparewright::handbook {
namespace {

using tests::holds;

std::vector<int> gears_in(const std::vector<int>& box, unsigned mask) {
  std::vector<int> out;
  for (std::size_t i = 0; i < box.size(); ++i) {
    if ((mask >> i & 1U) != 0) out.push_back(box[i]);
  }
  std::sort(out.begin(), out.end());
  return out;
}

// Every train of that many gears, each once: all pairs of choices that share no gear.
std::vector<GearTrain> all_trains(const std::vector<int>& box, int gears) {
  std::vector<unsigned> choices;
  for (unsigned mask = 0; mask < 1U << box.size(); ++mask) {
    if (std::popcount(mask) == gears / 2) choices.push_back(mask);
  }
  std::set<std::pair<std::vector<int>, std::vector<int>>> seen;
  for (const unsigned drivers : choices) {
    for (const unsigned drivens : choices) {
      if ((drivers & drivens) == 0) seen.insert({gears_in(box, drivers), gears_in(box, drivens)});
    }
  }
  std::vector<GearTrain> out;
  for (const auto& [drivers, drivens] : seen)
    out.push_back({drivers, drivens});
  return out;
}

int smallest(const GearTrain& train) {
  return std::min(train.drivers.front(), train.drivens.front());
}

using Trains = std::vector<GearTrain>;

// All that are accepted, by ratio, those of one ratio in the order the header promises.
std::map<Ratio, Trains> by_plain_loops(const std::vector<int>& box, int gears,
                                       const TrainFinder::Accept& accept) {
  std::map<Ratio, Trains> all;
  for (const GearTrain& train : all_trains(box, gears)) {
    if (!accept || accept(train)) all[train.ratio()].push_back(train);
  }
  for (auto& [ratio, trains] : all) {
    std::sort(trains.begin(), trains.end(), [](const GearTrain& a, const GearTrain& b) {
      if (smallest(a) != smallest(b)) return smallest(a) > smallest(b);
      return std::tie(a.drivers, a.drivens) < std::tie(b.drivers, b.drivens);
    });
  }
  return all;
}

// What was found of each ratio begins the list of that ratio. Of a ratio some are left out only where it is
// as far off as the last one found: two ratios may be, one on either side.
void expect_same(const std::vector<FoundTrain>& found, const std::map<Ratio, Trains>& plain,
                 const Ratio& wanted, std::size_t most) {
  const auto off = [&](const Ratio& ratio) { return magnitude(ratio / wanted - Ratio::of(1)); };
  std::map<Ratio, Trains> of_ratio;
  std::size_t all = 0;
  for (const auto& [ratio, trains] : plain)
    all += trains.size();
  RC_ASSERT(found.size() == std::min(most, all));
  for (std::size_t i = 0; i < found.size(); ++i) {
    RC_ASSERT(found[i].ratio == found[i].train.ratio());
    RC_ASSERT(found[i].exact == (found[i].ratio == wanted));
    RC_ASSERT(std::abs(found[i].error - (found[i].ratio / wanted - Ratio::of(1)).value()) < 1e-12);
    if (i > 0) RC_ASSERT(off(found[i - 1].ratio) <= off(found[i].ratio));
    of_ratio[found[i].ratio].push_back(found[i].train);
  }
  for (const auto& [ratio, trains] : plain) {
    const Trains& taken = of_ratio[ratio];
    RC_ASSERT(std::equal(taken.begin(), taken.end(), trains.begin()));
    if (taken.size() < trains.size()) RC_ASSERT(off(ratio) >= off(found.back().ratio));
  }
}

void same_as_plain_loops(std::size_t gears, int box_size, const TrainFinder::Accept& accept) {
  int exact = 0;
  int doubles = 0;
  EXPECT_TRUE(holds("the nearest trains are those of the plain loops", [&] {
    const auto box = *rc::gen::container<std::vector<int>>(
        static_cast<std::size_t>(box_size),
        rc::gen::element(20, 24, 25, 30, 35, 36, 40, 42, 45, 50, 55, 60, 63, 127));
    const Ratio wanted = Ratio::of(*rc::gen::inRange(1, 40), *rc::gen::inRange(1, 40));
    const auto most = *rc::gen::inRange<std::size_t>(1, 30);
    const auto found = TrainFinder::of(box, gears)->nearest(wanted, gears, most, accept);
    expect_same(found, by_plain_loops(box, static_cast<int>(gears), accept), wanted, most);
    exact += !found.empty() && found[0].exact ? 1 : 0;
    doubles += std::set<int>(box.begin(), box.end()).size() < box.size() ? 1 : 0;
  }));
  EXPECT_GT(exact, 20);
  EXPECT_GT(doubles, 100);
}

TEST(GearTrainsProperty, TwoGears) {
  same_as_plain_loops(2, 9, {});
}
TEST(GearTrainsProperty, FourGears) {
  same_as_plain_loops(4, 7, {});
}
TEST(GearTrainsProperty, SixGears) {
  same_as_plain_loops(6, 7, {});
}
TEST(GearTrainsProperty, WhatIsNotAcceptedIsNotCounted) {
  same_as_plain_loops(4, 7,
                      [](const GearTrain& train) { return (train.drivers[0] + train.drivens[1]) % 3 != 0; });
}

TEST(GearTrainsProperty, FractionsComeBackFromDoubles) {
  EXPECT_TRUE(holds("a fraction handed in as a double is that fraction again", [] {
    const auto bottom = *rc::gen::inRange<std::int64_t>(1, 100000);
    const auto top = *rc::gen::inRange<std::int64_t>(-100 * bottom, 100 * bottom);
    const Ratio ratio = Ratio::of(top, bottom);
    RC_ASSERT(ratio_near(ratio.value(), 1e-11) == ratio);
  }));
}

}  // namespace
}  // namespace sparewright::handbook
