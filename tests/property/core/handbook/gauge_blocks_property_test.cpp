// The stacks of gauge blocks against every subset of small sets.
#include <bit>
#include <cmath>
#include <map>
#include <numeric>
#include <optional>
#include <set>

#include <gtest/gtest.h>

#include "core/handbook/gauge_blocks.hpp"
#include "property.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Length;
using tests::holds;
namespace unit = quantity::unit;

// Half micrometres.
Length halves(int count) {
  return Length::of(count * 0.5, unit::micrometre);
}

TEST(GaugeBlocksProperty, FewestOfAllSubsets) {
  int exact = 0;
  int several = 0;
  int nearest = 0;
  int none = 0;
  EXPECT_TRUE(
      holds("the stacks are all subsets of the least size, of the length or the nearest one to a step", [&] {
        GaugeBlockSet set;
        std::vector<int> blocks = *rc::gen::container<std::vector<int>>(
            9, rc::gen::element(2001, 2002, 2004, 2010, 2020, 2040, 1000, 2000, 3000, 4000, 5000, 20000));
        for (const int block : blocks)
          set.blocks.push_back(halves(block));
        // a length some subset has, or one near it
        int wanted = *rc::gen::inRange(-2, 3) * (*rc::gen::arbitrary<bool>() ? 1 : 0);
        const auto mask = *rc::gen::inRange(1U, 1U << 9U);
        int step = 0;
        for (std::size_t i = 0; i < blocks.size(); ++i) {
          step = std::gcd(step, blocks[i]);
          if ((mask >> i & 1U) != 0) wanted += blocks[i];
        }
        // by trying every subset: sums to the sets of blocks that have them, by number of blocks
        std::map<int, std::map<int, std::set<std::multiset<int>>>> all;
        for (unsigned subset = 1; subset < 1U << 9U; ++subset) {
          if (std::popcount(subset) > static_cast<int>(kMostStackBlocks)) continue;
          std::multiset<int> taken;
          int sum = 0;
          for (std::size_t i = 0; i < blocks.size(); ++i) {
            if ((subset >> i & 1U) == 0) continue;
            taken.insert(blocks[i]);
            sum += blocks[i];
          }
          all[sum][std::popcount(subset)].insert(taken);
        }
        std::optional<int> sum;
        for (const auto& [one, stacks] : all) {
          const int off = std::abs(one - wanted);
          if (off <= step && (off < step || wanted % step == 0) && (!sum || off < std::abs(*sum - wanted)))
            sum = one;
        }
        const auto found = gauge_stacks(set, halves(wanted), std::nullopt, 1000);
        RC_ASSERT(found.has_value() == sum.has_value());
        if (!sum) {
          ++none;
          return;
        }
        const std::set<std::multiset<int>>& fewest = all[*sum].begin()->second;
        RC_ASSERT(found->size() == fewest.size());
        std::set<std::multiset<int>> same;
        for (const GaugeStack& stack : *found) {
          RC_ASSERT(stack.exact() == (*sum == wanted));
          RC_ASSERT(std::abs(stack.error.in(unit::micrometre)-0.5 * (*sum - wanted)) < 1e-6);
          std::multiset<int> taken;
          for (const Length block : stack.blocks)
            taken.insert(static_cast<int>(std::lround(block.in(unit::micrometre)*2)));
          same.insert(taken);
        }
        RC_ASSERT(same == fewest);
        exact += *sum == wanted ? 1 : 0;
        nearest += *sum != wanted ? 1 : 0;
        several += fewest.size() > 1 ? 1 : 0;
      }));
  EXPECT_GT(exact, 100);
  EXPECT_GT(several, 10);
  EXPECT_GT(nearest, 10);
  EXPECT_GT(none, 10);
}

// In each set of the handbook: no stack of one, two or three blocks is missed.
TEST(GaugeBlocksProperty, NoShorterStackInTheRealSets) {
  int three = 0;
  EXPECT_TRUE(holds("a length made of up to three blocks of a set takes no more", [&] {
    const auto sets = gauge_block_sets();
    const GaugeBlockSet& set = sets[*rc::gen::inRange<std::size_t>(0, sets.size())];
    const auto count = *rc::gen::inRange<std::size_t>(1, 4);
    std::set<std::size_t> taken;
    for (std::size_t i = 0; i < count; ++i)
      taken.insert(*rc::gen::inRange<std::size_t>(0, set.blocks.size()));
    Length sum;
    for (const std::size_t i : taken)
      sum = sum + set.blocks[i];
    const auto found = gauge_stacks(set, sum).value();
    RC_ASSERT(found[0].exact());
    RC_ASSERT(found[0].blocks.size() <= taken.size());
    three += found[0].blocks.size() == 3 ? 1 : 0;
  }));
  EXPECT_GT(three, 5);
}

}  // namespace
}  // namespace sparewright::handbook
