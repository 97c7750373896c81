#include "core/handbook/drills.hpp"

#include <array>

#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/drill_points.hpp"
#include "core/handbook/drilled_holes.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Designation;
using quantity::Diameter;
namespace unit = quantity::unit;

Diameter inch(double count) {
  return Diameter::of(count, unit::inch);
}

TEST(Drills, EverySeriesIsThereSmallestFirst) {
  EXPECT_EQ(drills(DrillSeries::kNumber).size(), 80U);
  EXPECT_EQ(drills(DrillSeries::kLetter).size(), 26U);
  EXPECT_EQ(drills(DrillSeries::kFraction).size(), 64U);
  EXPECT_EQ(drills(DrillSeries::kMetric).size(), 230U);
  EXPECT_EQ(drills(DrillSeries::kNumber).front().name, "#80");
  EXPECT_EQ(drills(DrillSeries::kNumber).back().name, "#1");
  EXPECT_EQ(drills(DrillSeries::kLetter).back().name, "letter Z");
}

TEST(Drills, ADesignationIsResolved) {
  const auto seven = find_drill(Designation{Designation::Series::kNumberDrill, "7", "#7"});
  EXPECT_EQ(seven->name, "#7");
  EXPECT_DOUBLE_EQ(seven->diameter.in(unit::inch), 0.201);
  const auto f = find_drill(Designation{Designation::Series::kLetterDrill, "F", "letter F"});
  EXPECT_DOUBLE_EQ(f->diameter.in(unit::inch), 0.257);
}

TEST(Drills, ANameIsReadInItsSpellings) {
  EXPECT_EQ(find_drill("#7")->name, "#7");
  EXPECT_EQ(find_drill("# 7")->name, "#7");
  EXPECT_EQ(find_drill("letter F")->name, "letter F");
  EXPECT_EQ(find_drill(" f ")->name, "letter F");
  EXPECT_EQ(find_drill("27/64")->name, "27/64");
  EXPECT_EQ(find_drill("27/64 in")->name, "27/64");
  EXPECT_EQ(find_drill("1 in")->name, "1");
  EXPECT_EQ(find_drill("6.8 mm")->name, "6.8 mm");
  EXPECT_EQ(find_drill("6.80 mm")->name, "6.8 mm");
}

TEST(Drills, WhatNamesNoDrillFails) {
  for (const char* text :
       {"", "#81", "#0", "7", "0.201 in", "letter AA", "27/63", "1-1/16", "6.83 mm", "in", "#"}) {
    const auto drill = find_drill(text);
    ASSERT_FALSE(drill) << text;
    EXPECT_EQ(drill.error().code, base::Code::kNameUnknown) << text;
  }
  EXPECT_EQ(
      base::report(find_drill("#81").error()),
      "'#81' is not a known drill\n    accepted: a drill such as #7, letter F, 27/64 or 6.8 mm (did you mean "
      "'#80'?)");
}

TEST(Drills, TheNearestOnEitherSide) {
  const DrillsAround around = drills_around(inch(0.2010), DrillSeries::kNumber);
  EXPECT_EQ(around.at_or_below->name, "#7");
  EXPECT_EQ(around.at_or_above->name, "#7");
  const DrillsAround between = drills_around(inch(0.2015), DrillSeries::kNumber);
  EXPECT_EQ(between.at_or_below->name, "#7");
  EXPECT_EQ(between.at_or_above->name, "#6");
  EXPECT_FALSE(drills_around(inch(0.001), DrillSeries::kNumber).at_or_below);
  EXPECT_FALSE(drills_around(inch(2), DrillSeries::kFraction).at_or_above);
}

TEST(Drills, BetweenTwoSizesOverSeveralSeries) {
  constexpr std::array kSeries{DrillSeries::kFraction, DrillSeries::kLetter, DrillSeries::kMetric};
  const auto found = drills_between(inch(0.25), inch(0.2570), kSeries);
  std::vector<std::string_view> names;
  names.reserve(found.size());
  for (const Drill& drill : found)
    names.push_back(drill.name);
  EXPECT_EQ(names, (std::vector<std::string_view>{"1/4", "letter E", "6.4 mm", "6.5 mm", "letter F"}));
  EXPECT_TRUE(drills_between(inch(0.3), inch(0.2), kSeries).empty());
}

TEST(Drills, EachCarriesItsSource) {
  for (const DrillSeries series :
       {DrillSeries::kNumber, DrillSeries::kLetter, DrillSeries::kFraction, DrillSeries::kMetric}) {
    for (const Drill& drill : drills(series))
      EXPECT_FALSE(drill.source.text.empty()) << drill.name;
  }
  EXPECT_EQ(cite(find_drill("#40")->source), "number and letter drill sizes (ASME B94.11M) (from memory)");
  EXPECT_EQ(cite(find_drill("#7")->source), "chart of number and letter drills, tool dealer");
}

TEST(DrillPoint, IsThreeTenthsOfTheDiameter) {
  EXPECT_NEAR(point_length(inch(1)).in(unit::inch), 0.30043, 1e-5);  // 0.5 / tan 59 degrees, by hand
  EXPECT_NEAR(point_length(inch(1), quantity::Angle::of(90, unit::degree)).in(unit::inch), 0.5, 1e-12);
  EXPECT_NEAR(point_length(inch(1), quantity::Angle::of(135, unit::degree)).in(unit::inch), 0.20711, 1e-5);
}

TEST(DrilledHole, RangesMeetWithoutAGap) {
  EXPECT_NEAR(drilled_hole_limits(inch(0.1255))->upper.in(unit::inch), 0.004,
              1e-12);  // between 0.125 and 0.126
  EXPECT_NEAR(drilled_hole_limits(inch(0.126))->upper.in(unit::inch), 0.005, 1e-12);
  EXPECT_EQ(drilled_hole_limits(inch(0.01)).error().code, base::Code::kNotTabled);
  EXPECT_EQ(drilled_hole_limits(inch(2.001)).error().code, base::Code::kNotTabled);
}

TEST(DrillOversize, IsInterpolatedAndSaysFromMemory) {
  const auto half = drill_oversize(inch(0.5));
  EXPECT_NEAR(half->least.in(unit::inch), 0.003, 1e-12);
  EXPECT_NEAR(half->mean.in(unit::inch), 0.005, 1e-12);
  EXPECT_NEAR(half->most.in(unit::inch), 0.008, 1e-12);
  EXPECT_NEAR(drill_oversize(inch(0.375))->mean.in(unit::inch), 0.0045, 1e-12);  // half way 0.004 to 0.005
  EXPECT_EQ(half->source.basis, Basis::kFromMemory);
  EXPECT_EQ(drill_oversize(inch(0.03)).error().code, base::Code::kNotTabled);
  EXPECT_EQ(drill_oversize(inch(1.1)).error().code, base::Code::kNotTabled);
}

}  // namespace
}  // namespace sparewright::handbook
