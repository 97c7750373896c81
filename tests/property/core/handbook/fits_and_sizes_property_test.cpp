// Invariants of fits, press fits, tapers and sizes, on random input, with slow twins where there are any.
#include <algorithm>
#include <cmath>
#include <limits>
#include <string>

#include <gtest/gtest.h>

#include "core/handbook/fit_found.hpp"
#include "core/handbook/fits.hpp"
#include "core/handbook/preferred_numbers.hpp"
#include "core/handbook/press_fits.hpp"
#include "core/handbook/recommended_fits.hpp"
#include "core/handbook/size_conversion.hpp"
#include "core/handbook/standard_sizes.hpp"
#include "core/handbook/taper_formulas.hpp"
#include "core/quantity/typed.hpp"
#include "property.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
using quantity::Pressure;
using tests::holds;
namespace unit = quantity::unit;

// low to high, both included, in steps of a millionth of the range.
double between(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 1'000'001) / 1e6;
}

// A pair made within a recommended fit at a whole millimetre, measured without error, is found possible in
// that fit, and every fit called possible holds both parts.
TEST(FitsFoundProperty, APairWithinItsLimitsIsFound) {
  EXPECT_TRUE(holds("a pair within its limits is found possible and certain", [] {
    const auto all = recommended_fits();
    const RecommendedFit& row =
        all[static_cast<std::size_t>(*rc::gen::inRange(0, static_cast<int>(all.size())))];
    const bool iso = row.standard == FitStandard::kIso286;
    const Diameter nominal = iso ? Diameter::of(*rc::gen::inRange(3, 400), unit::millimetre)
                                 : Diameter::of(*rc::gen::inRange(2, 40) / 8.0, unit::inch);
    const auto fit = fit_at(row.fit, nominal);
    RC_PRE(fit.has_value());
    const auto within = [](const SizeLimits& limits) {
      return quantity::as_diameter(limits.width() * between(0.01, 0.99) + limits.lower);
    };
    const MeasuredSize hole{within(fit->hole), Length()};
    const MeasuredSize shaft{within(fit->shaft), Length()};
    const auto found = fits_found(hole, shaft, 1000).value();
    const auto& same = iso ? found.iso286 : found.ansi_b41;
    RC_ASSERT(std::any_of(same.begin(), same.end(), [&](const FoundFit& one) {
      return one.possible && one.certain && one.fit.name == fit->name &&
             std::abs((one.fit.nominal - nominal).base()) < 1e-9;
    }));
    bool beyond = false;
    for (const FoundFit& one : same) {
      RC_ASSERT(!(beyond && one.possible));  // possible ones stand first
      beyond = beyond || !one.possible;
      const bool holds = hole.size >= one.fit.hole.lower && hole.size <= one.fit.hole.upper &&
                         shaft.size >= one.fit.shaft.lower && shaft.size <= one.fit.shaft.upper;
      RC_ASSERT(!holds || one.possible);
      RC_ASSERT(!one.certain || holds);
    }
  }));
}

// Twice the interference is twice the pressure, force and torque; a stiffer hub presses harder; a hub without
// end is the limit from below.
TEST(PressFitProperty, IsLinearAndGrowsWithTheHub) {
  EXPECT_TRUE(holds("twice the interference, twice the pressure; a thicker hub presses harder", [] {
    PressFit fit;
    fit.joint = Diameter::of(between(5, 200), unit::millimetre);
    fit.shaft_bore = Diameter::of(fit.joint.in(unit::millimetre)*between(0.0, 0.9), unit::millimetre);
    fit.hub_outside = Diameter::of(fit.joint.in(unit::millimetre)*between(1.05, 4.0), unit::millimetre);
    fit.length = Length::of(between(5, 200), unit::millimetre);
    fit.least_interference = Length::of(0.01, unit::millimetre);
    fit.most_interference = Length::of(0.02, unit::millimetre);
    fit.hub = {Pressure::of(between(70, 210), unit::gigapascal), between(0.2, 0.35), 12.0, {}};
    fit.shaft = {Pressure::of(between(70, 210), unit::gigapascal), between(0.2, 0.35), 12.0, {}};
    fit.friction_low = 0.1;
    fit.friction_high = 0.1;
    const PressFitAnswer answer = press_fit(fit).value();
    RC_ASSERT(std::abs(answer.most_pressure / answer.least_pressure - 2.0) < 1e-9);
    RC_ASSERT(std::abs(answer.pressing_at_most / answer.holds_at_least - 2.0) < 1e-9);
    RC_ASSERT(answer.hub_equivalent > answer.hub_hoop);
    RC_ASSERT(answer.hub_hoop > answer.most_pressure);
    PressFit thicker = fit;
    thicker.hub_outside = Diameter::of(fit.hub_outside.in(unit::millimetre)*1.1, unit::millimetre);
    RC_ASSERT(press_fit(thicker)->most_pressure > answer.most_pressure);
  }));
}

// Over rollers and back, into a socket and back.
TEST(TaperProperty, MeasuredAndFoundAgain) {
  EXPECT_TRUE(holds("tapers over rollers and balls are found again", [] {
    const double taper = between(0.001, 0.6);
    const double end = between(5.0, 60.0);
    const double roller = between(1.0, 12.0);
    const double height = between(roller / 2.0, 100.0);
    RC_ASSERT(
        std::abs(small_end_from_rollers(over_rollers(end, taper, roller, height), taper, roller, height) -
                 end) < 1e-9);
    const double depth = ball_depth(end, taper, roller);
    RC_ASSERT(std::abs(large_end_from_ball(depth, taper, roller) - end) < 1e-9);
    const double second = ball_depth(end, taper, roller * 0.9);
    const double apart = second - depth - roller * 0.05;
    RC_ASSERT(std::abs(taper_of_two_discs(roller, roller * 0.9, apart) - taper) < 1e-6);
  }));
}

// Against a search through every multiple of a 64th and every half millimetre.
TEST(StandardSizesProperty, NoNearerOneWasMissed) {
  EXPECT_TRUE(holds("no 64th and no half millimetre is nearer", [] {
    const double mm = between(0.3, 150.0);
    const auto near = nearest_standard_sizes(Diameter::of(mm, unit::millimetre)).value();
    for (const NearStandardSize& one : near) {
      const double step = one.series == SizeSeries::kInchFraction ? 25.4 / 64.0
                          : one.series == SizeSeries::kMetric     ? 0.5
                                                                  : 0.0;
      if (step == 0.0) continue;
      double best = std::numeric_limits<double>::infinity();
      for (int i = 0; i * step < mm + 2.0 * step; ++i)
        best = std::min(best, std::abs(mm - i * step));
      RC_ASSERT(std::abs(std::abs(one.off.base()) - best) < 1e-9);
    }
  }));
}

// What is written out exactly is read back as the same size.
TEST(SizeConversionProperty, ExactDecimalsAreExact) {
  EXPECT_TRUE(holds("exact decimals are read back as the same size", [] {
    const int sixty_fourths = *rc::gen::inRange(1, 64);
    const std::string text = std::to_string(sixty_fourths) + "/64 in";
    const SizeConversion size = convert_size(text).value();
    RC_ASSERT(size.inch.exact);
    RC_ASSERT(size.millimetre.exact);
    RC_ASSERT(convert_size(size.inch.text + " in")->size == size.size);
    RC_ASSERT(std::abs((convert_size(size.millimetre.text + " mm")->size - size.size).base()) < 1e-12);
  }));
}

// The preferred numbers on either side, by a search through three decades.
TEST(PreferredNumbersProperty, NoneLiesBetween) {
  EXPECT_TRUE(holds("no preferred number lies between", [] {
    const auto series =
        *rc::gen::element(RenardSeries::kR5, RenardSeries::kR10, RenardSeries::kR20, RenardSeries::kR40);
    const double value = between(1.0, 99.0);
    const PreferredAround around = preferred_around(value, series).value();
    RC_ASSERT(around.at_or_below <= value * (1.0 + 1e-9));
    RC_ASSERT(around.at_or_above >= value * (1.0 - 1e-9));
    for (const double number : preferred_numbers(series)) {
      for (const double decade : {1.0, 10.0, 100.0}) {
        const double one = number * decade;
        RC_ASSERT(one <= around.at_or_below * (1.0 + 1e-9) || one >= around.at_or_above * (1.0 - 1e-9));
      }
    }
  }));
}

}  // namespace
}  // namespace sparewright::handbook
