#include "core/handbook/gauge_blocks.hpp"

#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Length;
using testing::HasSubstr;
namespace unit = quantity::unit;

Length mm(double length) {
  return Length::of(length, unit::millimetre);
}
Length inch(double length) {
  return Length::of(length, unit::inch);
}
GaugeBlockSet set_of(const std::string& name) {
  return find_gauge_blocks(name).value();
}

template <class Value>
std::string refusal(const base::Result<Value>& result) {
  return result ? "" : base::report(result.error());
}

TEST(GaugeBlocks, SetsHaveTheirPieces) {
  for (const GaugeBlockSet& set : gauge_block_sets())
    EXPECT_EQ(set.blocks.size(), static_cast<std::size_t>(std::stoi(set.name))) << set.name;
  EXPECT_EQ(gauge_block_sets().size(), 5U);
  EXPECT_THAT(refusal(find_gauge_blocks("81 piece inch")), HasSubstr("did you mean '81-piece inch'?"));
}

TEST(GaugeBlocks, WearBlocksAtTheEnds) {
  const auto stacks = gauge_stacks(set_of("81-piece inch"), inch(1.3717), inch(0.050)).value();
  EXPECT_TRUE(stacks[0].exact());
  EXPECT_EQ(stacks[0].count(), stacks[0].blocks.size() + 2);
  Length sum = inch(0.1);
  for (const Length block : stacks[0].blocks)
    sum = sum + block;
  EXPECT_NEAR(sum.in(unit::inch), 1.3717, 1e-9);
  EXPECT_EQ(stacks[0].blocks.size(), 4U);  // 1.2717 = 0.1007 + 0.121 + 0.05 + 1
}

TEST(GaugeBlocks, NearestWhereTheSetIsTooCoarse) {
  const auto stacks = gauge_stacks(set_of("81-piece inch"), inch(2.82604)).value();  // sine of 34 deg 25'
  EXPECT_NEAR(stacks[0].length.in(unit::inch), 2.8260, 1e-9);
  EXPECT_NEAR(stacks[0].error.in(unit::inch), -0.00004, 1e-9);
  EXPECT_FALSE(stacks[0].exact());
}

TEST(GaugeBlocks, StacksThatCannotBe) {
  const GaugeBlockSet set = set_of("87-piece metric");
  EXPECT_THAT(refusal(gauge_stacks(set, mm(0.2))), HasSubstr("0.5 to"));
  EXPECT_THAT(refusal(gauge_stacks(set, mm(900.0))), HasSubstr("'900 mm'"));
  EXPECT_FALSE(gauge_stacks(set, mm(-5.0)));
  EXPECT_FALSE(gauge_stacks(set, mm(std::nan(""))));
  EXPECT_THAT(refusal(gauge_stacks({"empty", {}, {}}, mm(5.0))), HasSubstr("1 to 200 blocks"));
  EXPECT_THAT(refusal(gauge_stacks({"bad", {mm(0.0)}, {}}, mm(5.0))), HasSubstr("a gauge block is 0 mm"));
  EXPECT_THAT(refusal(gauge_stacks(set, mm(5.0), mm(0.0))), HasSubstr("a wear block"));
  EXPECT_FALSE(gauge_stacks(set, mm(1.5), mm(2.0)));  // the wear blocks alone are thicker
}

TEST(GaugeBlocks, TwoOfAKindAreOneStack) {
  const GaugeBlockSet set{"two of each", {mm(5), mm(5), mm(3), mm(3), mm(7)}, {}};
  const auto stacks = gauge_stacks(set, mm(10), std::nullopt, 10).value();
  ASSERT_EQ(stacks.size(), 2U);  // 7 + 3, 5 + 5
  EXPECT_NEAR(stacks[0].blocks[0].in(unit::millimetre), 7.0, 1e-12);
}

}  // namespace
}  // namespace sparewright::handbook
