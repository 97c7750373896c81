// Cutting speeds, feeds, reaming.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/cutting_speeds.hpp"
#include "core/handbook/feeds.hpp"
#include "core/handbook/materials.hpp"
#include "core/handbook/reaming.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using testing::HasSubstr;
namespace unit = quantity::unit;

constexpr ToolMaterial kHss = ToolMaterial::kHighSpeedSteel;

Work work(std::string_view material) {
  return work_of(find_material(material)->material);
}
Diameter inch(double count) {
  return Diameter::of(count, unit::inch);
}
double fpm(quantity::Speed speed) {
  return speed.in(unit::foot_per_minute);
}

TEST(CuttingSpeed, StartsLowAndShowsTheSpread) {
  const auto speed = cutting_speed(work("1018 cold drawn"), Operation::kDrilling, kHss);
  EXPECT_NEAR(fpm(speed->start), 70, 1e-9);  // the workshop article's low end
  EXPECT_NEAR(fpm(speed->low), 70, 1e-9);
  EXPECT_NEAR(fpm(speed->high), 110, 1e-9);
  EXPECT_GE(speed->printed.size(), 4U);
  EXPECT_EQ(speed->start_rule.basis, Basis::kCommonPractice);
}

TEST(CuttingSpeed, RowsForAnotherHardnessAreLeftOut) {
  const auto soft = cutting_speed(work("4140 annealed"), Operation::kDrilling, kHss);
  const auto hard =
      cutting_speed({WorkGroup::kAlloySteel, BrinellRange{350, 350}}, Operation::kDrilling, kHss);
  EXPECT_NEAR(fpm(soft->low), 50, 1e-9);
  EXPECT_NEAR(fpm(hard->low), 20, 1e-9);  // 300-400 HB: 20 to 30
  for (const auto& one : soft->printed)
    EXPECT_EQ(one.material.find("300-400"), std::string_view::npos);
}

TEST(CuttingSpeed, FreeMachiningStainlessHasItsOwnRows) {
  const auto own = cutting_speed(work("stainless 303"), Operation::kDrilling, kHss);
  EXPECT_NEAR(fpm(own->low), 85, 1e-9);
  const auto general = cutting_speed(work("stainless 416"), Operation::kMilling, kHss);
  EXPECT_NEAR(fpm(general->low), 30, 1e-9);  // stainless of any kind, having none of its own
}

TEST(CuttingSpeed, WhatNobodyPrintsIsNotMadeUp) {
  const auto none = cutting_speed(work("magnesium AZ31B"), Operation::kDrilling, kHss);
  ASSERT_FALSE(none);
  EXPECT_EQ(base::sentence(none.error()),
            "the cutting speed is not tabled here for drilling magnesium with a high-speed steel tool");
  EXPECT_FALSE(cutting_speed(work("1018"), Operation::kTapping, ToolMaterial::kCarbide));
}

TEST(CuttingSpeed, BoringIsARuleOfThumbFromMemory) {
  const auto speed = cutting_speed(work("1018"), Operation::kBoring, kHss);
  ASSERT_EQ(speed->printed.size(), 1U);
  EXPECT_EQ(speed->printed.front().source.basis, Basis::kFromMemory);
  EXPECT_THAT(std::string(speed->printed.front().note), HasSubstr("0.8 x turning speed"));
}

// Every group but magnesium can be drilled, milled, turned and tapped with high-speed steel, so far as
// printed.
TEST(CuttingSpeed, GroupsThatAreCovered) {
  std::vector<std::string> missing;
  for (int i = 0; i <= static_cast<int>(WorkGroup::kPlastic); ++i) {
    const auto group = static_cast<WorkGroup>(i);
    for (const Operation operation : {Operation::kDrilling, Operation::kMilling, Operation::kTurningRough}) {
      if (!cutting_speed({group, {}}, operation, kHss)) {
        missing.push_back(std::string(name_of(group)) + " " + std::string(name_of(operation)));
      }
    }
  }
  EXPECT_THAT(missing,
              testing::ElementsAre("free-machining steel milling", "free-machining steel rough turning",
                                   "malleable iron milling", "malleable iron rough turning",
                                   "ductile iron milling", "ductile iron rough turning", "magnesium drilling",
                                   "magnesium milling", "magnesium rough turning"));
}

TEST(DrillFeed, BySizeWithItsSpread) {
  const auto feed = drill_feed(inch(0.3125));
  EXPECT_NEAR(feed->low.in(unit::inch_per_turn), 0.004, 1e-12);
  EXPECT_NEAR(feed->high.in(unit::inch_per_turn), 0.010, 1e-12);  // cutter maker; the manuals stop at 0.007
  EXPECT_EQ(feed->printed.size(), 3U);
  EXPECT_NEAR(drill_feed(inch(0.25))->high.in(unit::inch_per_turn), 0.006,
              1e-12);  // the finer range at its end
  EXPECT_TRUE(drill_feed(inch(3)));
  EXPECT_EQ(drill_feed(Diameter()).error().code, base::Code::kSizeNotPositive);
}

TEST(EndMillFeed, BetweenTwoDiametersIsInterpolated) {
  // end mill maker, aluminium: 0.003 at 1/4 in, 0.009 at 1 in; at 5/8 half way, 0.006.
  const auto feed = end_mill_feed(work("aluminium 6061"), kHss, inch(0.625));
  ASSERT_EQ(feed->printed.size(), 1U);
  EXPECT_NEAR(feed->start.in(unit::inch), 0.006, 1e-12);
  EXPECT_EQ(feed->printed.front().source.basis, Basis::kDerived);
  EXPECT_EQ(end_mill_feed(work("aluminium 6061"), kHss, inch(0.25))->printed.front().source.basis,
            Basis::kPublished);
  EXPECT_NEAR(end_mill_feed(work("aluminium 6061"), kHss, inch(2))->start.in(unit::inch), 0.009, 1e-12);
}

TEST(EndMillFeed, SmallerThanPrintedIsNotMadeUp) {
  EXPECT_EQ(end_mill_feed(work("aluminium 6061"), kHss, inch(0.125)).error().code, base::Code::kNotTabled);
  EXPECT_NEAR(end_mill_feed({WorkGroup::kLowCarbonSteel, {}}, kHss, inch(0.125))->start.in(unit::inch),
              0.0005, 1e-12);
  EXPECT_EQ(end_mill_feed(work("1018"), kHss, Diameter()).error().code, base::Code::kSizeNotPositive);
}

TEST(TurningFeed, OwnRowsBeforeAnyMetal) {
  const auto own = turning_feed(work("aluminium 6061"), Operation::kTurningRough, kHss);
  EXPECT_NEAR(own->low.in(unit::inch_per_turn), 0.015, 1e-12);
  const auto any = turning_feed({WorkGroup::kDuctileIron, {}}, Operation::kTurningRough, kHss);
  EXPECT_NEAR(any->low.in(unit::inch_per_turn), 0.005, 1e-12);
  EXPECT_EQ(any->printed.front().material, "any metal");
  EXPECT_FALSE(
      turning_feed({WorkGroup::kPlastic, {}}, Operation::kTurningRough, kHss));  // a plastic is no metal
  EXPECT_FALSE(turning_feed(work("1018"), Operation::kMilling, kHss));
  EXPECT_EQ(turning_feed(work("1018"), Operation::kBoring, kHss)->printed.front().source.basis,
            Basis::kFromMemory);
}

TEST(Reaming, StockAndFeed) {
  EXPECT_NEAR(reaming_stock(inch(0.5))->low.in(unit::inch), 0.010, 1e-12);
  EXPECT_NEAR(reaming_stock(inch(0.5))->high.in(unit::inch), 0.016, 1e-12);
  EXPECT_NEAR(reaming_stock(inch(0.1705))->high.in(unit::inch), 0.010,
              1e-12);  // between two ranges: the lower
  EXPECT_EQ(reaming_stock(inch(0.05)).error().code, base::Code::kNotTabled);
  EXPECT_EQ(reaming_stock(inch(2.6)).error().code, base::Code::kNotTabled);
  const auto feed = reaming_feed(6);
  EXPECT_NEAR(feed->low.in(unit::inch_per_turn), 0.009, 1e-12);
  EXPECT_NEAR(feed->high.in(unit::inch_per_turn), 0.024, 1e-12);
  EXPECT_EQ(reaming_feed(0).error().code, base::Code::kSizeNotPositive);
}

}  // namespace
}  // namespace sparewright::handbook
