#include <algorithm>
#include <set>
#include <string>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/preferred_numbers.hpp"
#include "core/handbook/size_conversion.hpp"
#include "core/handbook/standard_sizes.hpp"
#include "core/handbook/stock_sizes.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
using testing::HasSubstr;
namespace unit = quantity::unit;

Diameter inch(double size) {
  return Diameter::of(size, unit::inch);
}

TEST(PreferredNumbers, EachSeriesIsInTheNext) {
  EXPECT_EQ(preferred_numbers(RenardSeries::kR5), (std::vector{1.0, 1.6, 2.5, 4.0, 6.3}));
  EXPECT_EQ(preferred_numbers(RenardSeries::kR10).size(), 10U);
  EXPECT_EQ(preferred_numbers(RenardSeries::kR20)[1], 1.12);
  EXPECT_EQ(preferred_numbers(RenardSeries::kR40).size(), 40U);
}

TEST(PreferredNumbers, OnEitherSide) {
  const auto around = preferred_around(27.0, RenardSeries::kR10).value();
  EXPECT_DOUBLE_EQ(around.at_or_below, 25.0);
  EXPECT_DOUBLE_EQ(around.at_or_above, 31.5);
  const auto exact = preferred_around(0.315, RenardSeries::kR10).value();
  EXPECT_NEAR(exact.at_or_below, 0.315, 1e-12);
  EXPECT_NEAR(exact.at_or_above, 0.315, 1e-12);
  const auto end = preferred_around(99.0, RenardSeries::kR5).value();
  EXPECT_DOUBLE_EQ(end.at_or_below, 63.0);
  EXPECT_DOUBLE_EQ(end.at_or_above, 100.0);
  EXPECT_EQ(preferred_around(0.0, RenardSeries::kR5).error().code, base::Code::kSizeNotPositive);
  EXPECT_EQ(preferred_around(-3.0, RenardSeries::kR5).error().code, base::Code::kSizeNotPositive);
  EXPECT_EQ(preferred_around(1e10, RenardSeries::kR5).error().code, base::Code::kNumberTooLarge);
}

TEST(StockSizes, EveryKindAscendsAndIsNamedOnce) {
  for (int i = 0; i < static_cast<int>(StockKind::kLast); ++i) {
    const auto kind = static_cast<StockKind>(i);
    const auto sizes = stock_sizes(kind);
    ASSERT_FALSE(sizes.empty()) << name_of(kind);
    std::set<std::string> names;
    for (const StockSize& one : sizes)
      EXPECT_TRUE(names.insert(one.name).second) << name_of(kind) << " " << one.name;
    EXPECT_TRUE(std::is_sorted(sizes.begin(), sizes.end(),
                               [](const StockSize& a, const StockSize& b) { return a.size < b.size; }));
  }
}

TEST(StockSizes, TheNextBar) {
  const auto around = stock_around(StockKind::kInchRoundSteel, Length::of(1.01, unit::inch));
  EXPECT_EQ(around.at_or_below->name, "1 in");
  EXPECT_EQ(around.at_or_above->name, "1-1/16 in");
  EXPECT_EQ(stock_around(StockKind::kMetricRoundSteel, Length::of(23, unit::millimetre)).at_or_above->name,
            "24 mm");
  EXPECT_EQ(stock_around(StockKind::kMetricHexagonSteel, Length::of(5.2, unit::millimetre)).at_or_above->name,
            "5.5 mm");
  EXPECT_FALSE(stock_around(StockKind::kMetricRoundSteel, Length::of(101, unit::millimetre)).at_or_above);
  EXPECT_FALSE(stock_around(StockKind::kInchPlate, Length::of(0.1, unit::inch)).at_or_below);
  EXPECT_EQ(stock_around(StockKind::kDowelReamer, Length::of(0.25, unit::inch)).at_or_above->name,
            "0.2510 in");
}

TEST(StockSizes, TheMetricRoundsAreTheListRead) {
  std::string names;
  for (const StockSize& one : stock_sizes(StockKind::kMetricRoundSteel))
    names += one.name.substr(0, one.name.find(' ')) + " ";
  EXPECT_EQ(names,
            "3 4 5 6 7 8 9 10 11 12 13 14 15 16 17 18 19 20 22 24 25 26 28 30 32 34 35 36 38 40 42 45 48 50 "
            "55 60 65 70 75 "
            "80 85 90 95 100 ");
  names.clear();
  for (const StockSize& one : stock_sizes(StockKind::kMetricHexagonSteel))
    names += one.name.substr(0, one.name.find(' ')) + " ";
  EXPECT_EQ(names, "4 5 5.5 6 7 8 9 10 11 12 13 14 17 19 22 24 27 30 32 36 41 46 50 55 60 ");
}

TEST(StockTaps, AreFoundOrTheNearestSaid) {
  const auto tap = stock_tap(inch(0.25), Length::of(0.05, unit::inch));
  ASSERT_TRUE(tap);
  EXPECT_EQ(tap->thread, "1/4-20");
  EXPECT_EQ(stock_tap(Diameter::of(8, unit::millimetre), Length::of(1, unit::millimetre))->thread, "M8x1");
  EXPECT_FALSE(stock_tap(inch(0.25), Length::of(1.0 / 22, unit::inch)));
  const auto near = nearest_stock_taps(inch(0.25), Length::of(1.0 / 22, unit::inch), 2);
  ASSERT_EQ(near.size(), 2U);
  EXPECT_EQ(near[0].thread, "1/4-20");
  EXPECT_EQ(near[1].thread, "1/4-28");
}

const NearStandardSize* in_series(const std::vector<NearStandardSize>& all, SizeSeries series) {
  const auto found =
      std::find_if(all.begin(), all.end(), [&](const NearStandardSize& one) { return one.series == series; });
  return found == all.end() ? nullptr : &*found;
}

TEST(StandardSizes, OfAHoleOf201Thou) {
  const auto near = nearest_standard_sizes(inch(0.2012), Length::of(0.0003, unit::inch)).value();
  EXPECT_EQ(near.front().name, "#7");
  EXPECT_NEAR(near.front().off.in(unit::inch), 0.0002, 1e-9);
  EXPECT_TRUE(near.front().possible);
  EXPECT_EQ(in_series(near, SizeSeries::kInchFraction)->name, "13/64 in");
  EXPECT_NEAR(in_series(near, SizeSeries::kInchFraction)->off.in(unit::inch), 0.2012 - 0.203125, 1e-9);
  EXPECT_FALSE(in_series(near, SizeSeries::kInchFraction)->possible);
  EXPECT_EQ(in_series(near, SizeSeries::kMetricDrill)->name, "5.1 mm");
  EXPECT_EQ(in_series(near, SizeSeries::kPipe), nullptr);
}

TEST(StandardSizes, OfABearingSeat) {
  const auto near = nearest_standard_sizes(Diameter::of(47.004, unit::millimetre)).value();
  const NearStandardSize* outside = in_series(near, SizeSeries::kBearingOutside);
  ASSERT_NE(outside, nullptr);
  EXPECT_EQ(outside->name, "6005");
  EXPECT_NEAR(outside->off.in(unit::micrometre), 4, 1e-6);
  EXPECT_EQ(in_series(near, SizeSeries::kMetric)->name, "47 mm");
  EXPECT_EQ(
      in_series(nearest_standard_sizes(Diameter::of(25, unit::millimetre)).value(), SizeSeries::kBearingBore)
          ->name,
      "6005");
}

TEST(StandardSizes, AreSortedAndOfEverySeriesAtMostOne) {
  for (const double mm : {0.05, 0.3, 1.0, 5.0, 12.7, 25.4, 100.0, 500.0}) {
    const auto near = nearest_standard_sizes(Diameter::of(mm, unit::millimetre)).value();
    std::set<SizeSeries> seen;
    for (const NearStandardSize& one : near)
      EXPECT_TRUE(seen.insert(one.series).second);
    EXPECT_TRUE(
        std::is_sorted(near.begin(), near.end(), [](const NearStandardSize& a, const NearStandardSize& b) {
          return std::abs(a.off.base()) < std::abs(b.off.base()) - 1e-5;
        }));
  }
  EXPECT_EQ(nearest_standard_sizes(inch(0)).error().code, base::Code::kSizeNotPositive);
  EXPECT_EQ(nearest_standard_sizes(inch(1), Length::of(-1, unit::inch)).error().code,
            base::Code::kSizeNotPositive);
}

TEST(SizeConversions, OfAFraction) {
  const SizeConversion size = convert_size("1-27/32 in").value();
  EXPECT_EQ(size.inch.text, "1.84375");
  EXPECT_TRUE(size.inch.exact);
  EXPECT_EQ(size.millimetre.text, "46.83125");
  EXPECT_TRUE(size.millimetre.exact);
  EXPECT_EQ(to_string(size.nearest_64th), "1-27/32");
  EXPECT_NEAR(size.nearest_thou.in(unit::thou), 1844, 1e-9);
  EXPECT_NEAR(size.thou_off.in(unit::thou), 0.25, 1e-9);
  EXPECT_NEAR(size.nearest_hundredth.in(unit::millimetre), 46.83, 1e-9);
  EXPECT_NEAR(size.hundredth_off.in(unit::micrometre), -1.25, 1e-6);
}

TEST(SizeConversions, OfMillimetresHaveNoExactInch) {
  const SizeConversion size = convert_size("10 mm").value();
  EXPECT_EQ(size.millimetre.text, "10");
  EXPECT_EQ(size.inch.text, "0.3937007874");
  EXPECT_FALSE(size.inch.exact);
  EXPECT_EQ(to_string(size.nearest_64th), "25/64");
  EXPECT_EQ(size.nearest_drill.name, "10 mm");
  EXPECT_EQ(convert_size("12.7 mm")->inch.text, "0.5");
  EXPECT_TRUE(convert_size("12.7 mm")->inch.exact);
}

TEST(SizeConversions, OfDrillsAndCompounds) {
  EXPECT_EQ(convert_size("#7")->inch.text, "0.201");
  EXPECT_EQ(convert_size("letter F")->inch.text, "0.257");
  EXPECT_EQ(convert_size("#7")->nearest_drill.name, "#7");
  EXPECT_EQ(convert_size("2 ft 3-1/2 in")->inch.text, "27.5");
  EXPECT_EQ(convert_size("5 thou")->millimetre.text, "0.127");
  EXPECT_EQ(convert_size("1/2 in")->nearest_drill.name, "1/2");
  EXPECT_EQ(convert_size("1/3 in")->inch.exact, false);
}

TEST(SizeConversions, WhatIsNoSizeIsRefused) {
  EXPECT_EQ(convert_size("1.5").error().code, base::Code::kUnitMissing);
  EXPECT_EQ(convert_size("").error().code, base::Code::kEmptyValue);
  EXPECT_EQ(convert_size("#81").error().code, base::Code::kNameUnknown);
  EXPECT_EQ(convert_size("0 mm").error().code, base::Code::kSizeNotPositive);
  EXPECT_EQ(convert_size("-3 mm").error().code, base::Code::kSizeNotPositive);
  EXPECT_FALSE(convert_size("30 deg"));
}

}  // namespace
}  // namespace sparewright::handbook
