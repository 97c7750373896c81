// Keyseats, stripping and stock lengths against slow or other ways to the same answer.
#include <cmath>
#include <string>

#include <gtest/gtest.h>

#include "core/handbook/keyseat_formulas.hpp"
#include "core/handbook/parallel_keys.hpp"
#include "core/handbook/stock_lengths.hpp"
#include "core/handbook/thread_engagement.hpp"
#include "property.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
using quantity::Pressure;
using quantity::UnitSystem;
using tests::holds;
namespace unit = quantity::unit;

// A whole number of thousandths from low to high.
double thousandths(int low, int high) {
  return *rc::gen::inRange(low, high + 1) / 1000.0;
}

// The arc over a keyseat by the angle it spans instead of by Pythagoras.
TEST(KeyseatProperty, TheArcIsTheSameByItsAngle) {
  EXPECT_TRUE(holds("the arc over a keyseat is the same by the angle it spans", [] {
    const double diameter_mm = thousandths(1000, 200000);
    const double width_mm = diameter_mm * thousandths(1, 999);
    const double half_angle_rad = std::asin(width_mm / diameter_mm);
    const double by_angle_mm = diameter_mm / 2 * 2 * std::pow(std::sin(half_angle_rad / 2), 2);
    RC_ASSERT(std::abs(keyseat_arc_height_mm(diameter_mm, width_mm) - by_angle_mm) < 1e-9 * diameter_mm);
  }));
}

// Every shaft within the tables has one key, whose keyseat leaves more than half of the shaft.
TEST(KeyseatProperty, EveryShaftOfTheTablesHasOne) {
  EXPECT_TRUE(holds("every shaft of the tables has a keyseat that leaves more than half of it", [] {
    const bool metric = *rc::gen::arbitrary<bool>();
    const Diameter shaft = metric ? Diameter::of(thousandths(6001, 230000), unit::millimetre)
                                  : Diameter::of(thousandths(313, 6500), unit::inch);
    const auto key = parallel_key(shaft, metric ? KeySystem::kMetric : KeySystem::kInch);
    RC_ASSERT(key.has_value());
    const auto seat = parallel_keyseat(*key, shaft);
    RC_ASSERT(seat.has_value());
    RC_ASSERT(seat->over_back.nominal.base() > shaft.base() / 2);
    RC_ASSERT(seat->side_depth + seat->arc_height == seat->crest_depth ||
              std::abs((seat->side_depth + seat->arc_height - seat->crest_depth).base()) < 1e-9);
    RC_ASSERT(seat->top_clearance > Length{});
  }));
}

// Shear areas are in proportion to the engagement; the harder the hole, the shorter it may be.
TEST(EngagementProperty, AreasGrowWithLengthAndNeedFallsWithStrength) {
  EXPECT_TRUE(holds("shear areas grow with length, engagement falls with strength", [] {
    const ScrewThread thread =
        *rc::gen::map(rc::gen::element<std::string>("#8-32", "1/4-28", "1/2-13", "1-8", "M5", "M12"),
                      [](const std::string& name) { return read_screw_thread(name).value(); });
    const Length one = Length::of(thousandths(500, 30000), unit::millimetre);
    const ShearAreas once = shear_areas(thread, one).value();
    const ShearAreas twice = shear_areas(thread, one * 2.0).value();
    RC_ASSERT(std::abs(twice.hole / once.hole - 2.0) < 1e-12);
    RC_ASSERT(std::abs(twice.screw / once.screw - 2.0) < 1e-12);
    const Pressure screw = Pressure::of(thousandths(300000, 1200000), unit::megapascal);
    const Pressure soft = Pressure::of(thousandths(50000, 600000), unit::megapascal);
    const auto in_soft = least_engagement(thread, screw, soft).value();
    const auto in_hard = least_engagement(thread, screw, soft * 1.5).value();
    RC_ASSERT(in_hard.for_hole_thread < in_soft.for_hole_thread);
    RC_ASSERT(in_hard.for_screw_thread == in_soft.for_screw_thread);
    RC_ASSERT(in_soft.for_strong_screw >= in_soft.least);
  }));
}

// The stock length chosen is the first that is long enough.
TEST(StockLengthProperty, IsTheFirstLongEnough) {
  EXPECT_TRUE(holds("the stock length chosen is the first that is long enough", [] {
    const bool metric = *rc::gen::arbitrary<bool>();
    const UnitSystem system = metric ? UnitSystem::kMetric : UnitSystem::kInch;
    const Length thickness = Length::of(thousandths(100, 80000), unit::millimetre);
    const Length engagement = Length::of(thousandths(100, 80000), unit::millimetre);
    const auto chosen = screw_length(system, thickness, engagement);
    RC_ASSERT(chosen.has_value());
    RC_ASSERT(chosen->engagement.base() >= engagement.base() - 1e-5);
    int between = 0;
    for (const Length length : stock_lengths(system))
      between += length < chosen->length && length.base() > (thickness + engagement).base() + 1e-5 ? 1 : 0;
    RC_ASSERT(between == 0);
  }));
}

}  // namespace
}  // namespace sparewright::handbook
