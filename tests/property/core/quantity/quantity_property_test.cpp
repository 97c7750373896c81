// Round trips between text and value, and exact decimal arithmetic as the judge of rounding.
#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <limits>
#include <string>
#include <vector>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/quantity/display.hpp"
#include "core/quantity/tolerance.hpp"
#include "core/quantity/typed.hpp"
#include "property.hpp"

namespace sparewright::quantity {
namespace {

using tests::holds;

constexpr double kEpsilon = std::numeric_limits<double>::epsilon();

double nearest_double(const std::string& decimal) {
  double value = 0.0;
  std::from_chars(decimal.data(), decimal.data() + decimal.size(), value);
  return value;
}

std::int64_t power_of_ten(int n) {
  std::int64_t p = 1;
  for (int i = 0; i < n; ++i)
    p *= 10;
  return p;
}

// units * 10^-places, written out exactly.
std::string decimal_text(std::int64_t units, int places) {
  const std::int64_t scale = power_of_ten(places);
  const std::int64_t size = units < 0 ? -units : units;
  std::string out = fmt::format("{}{}", units < 0 ? "-" : "", size / scale);
  if (places > 0) out += fmt::format(".{:0{}}", size % scale, places);
  return out;
}

double read_base(const std::string& text, Kind kind, std::optional<UnitSystem> system) {
  const auto read = read_number(text, kind, system);
  RC_ASSERT(read.has_value());
  return read->base;
}

// --- text -> value -> text
// ----------------------------------------------------------------------------------------
TEST(NumberProperty, WhatWasTypedIsPrintedBack) {
  EXPECT_TRUE(holds("typed -> value -> printed is the same text, in both systems", [] {
    const int places = *rc::gen::inRange(0, 7);
    const std::int64_t most =
        std::min<std::int64_t>(99'999'999, 39'000 * power_of_ten(places));  // 39000 in: 990 m
    const std::int64_t units = *rc::gen::inRange<std::int64_t>(-most, most);
    const std::string text = decimal_text(units, places);
    const auto system = *rc::gen::element(UnitSystem::kInch, UnitSystem::kMetric);
    const Unit unit = display_unit(Kind::kCoordinate, system);
    const double base = read_base(text, Kind::kCoordinate, system);
    RC_ASSERT(fixed(unit.from_base(base), places) == (units == 0 ? decimal_text(0, places) : text));
    const std::string printed = shown(base, Kind::kCoordinate, system, places);
    RC_ASSERT(read_base(printed, Kind::kCoordinate, std::nullopt) == base);
  }));
}

TEST(NumberProperty, PrintedValuesOfEveryKindAreReadBack) {
  std::vector<int> trials(static_cast<std::size_t>(kKinds));
  std::vector<Kind> kinds;
  for (int k = 0; k < kKinds; ++k)
    kinds.push_back(static_cast<Kind>(k));
  EXPECT_TRUE(holds("value -> printed -> value is within half of the last place", [&] {
    const Kind kind = *rc::gen::elementOf(kinds);
    const auto system = *rc::gen::element(UnitSystem::kInch, UnitSystem::kMetric);
    const int places = *rc::gen::inRange(0, 7);
    const Unit unit = display_unit(kind, system);
    const double count = *rc::gen::inRange(-400, 30'000) / 7.0;
    if (kind == Kind::kTemperature && count < -270.0) RC_DISCARD("below absolute zero");
    const std::string printed = shown(unit.to_base(count), kind, system, places);
    const double again = unit.from_base(read_base(printed, kind, std::nullopt));
    const double half_place = 0.5 * std::pow(10.0, -places) * (1.0 + 2e-6);
    RC_ASSERT(std::abs(again - count) <= half_place + 1000.0 * kEpsilon * std::max(std::abs(count), 500.0));
    ++trials[static_cast<std::size_t>(kind)];
  }));
  for (const int n : trials)
    EXPECT_GT(n, 0) << "a kind was never tried";
}

TEST(NumberProperty, EverySpellingOfEveryUnitIsRead) {
  for (int k = 0; k < kKinds; ++k) {
    const auto kind = static_cast<Kind>(k);
    for (const UnitWords& words : units_of(kind)) {
      for (const std::string_view spelling : words.spellings) {
        for (const char* gap : {"", " "}) {
          const std::string text = fmt::format("7.25{}{}", gap, spelling);
          const auto read = read_number(text, kind, std::nullopt);
          ASSERT_TRUE(read) << text << " as " << name_of(kind);
          EXPECT_EQ(read->base, words.unit.to_base(7.25)) << text;
          EXPECT_EQ(read->unit, words.unit) << text;
        }
      }
    }
  }
}

// --- exactness
// ---------------------------------------------------------------------------------------------------- n/64
// in = n * 25.4/64 mm = n * 0.396875 mm, which has six decimals: n * 396875 millionths, read by from_chars as
// the nearest double.
TEST(InchProperty, EverySixtyFourthUpToAThousandInchesIsExact) {
  for (std::int64_t n = 0; n <= 64'000; ++n) {
    const double inches = static_cast<double>(n) / 64.0;
    const Length l = Length::of(inches, unit::inch);
    ASSERT_EQ(l.in(unit::millimetre), nearest_double(decimal_text(n * 396'875, 6))) << n;
    ASSERT_EQ(l.in(unit::inch), inches) << n;
    ASSERT_EQ(Length::of(l.in(unit::millimetre), unit::millimetre), l) << n;
  }
}

TEST(InchProperty, FractionsAreReadExactly) {
  EXPECT_TRUE(holds("w-n/d, w n/d and the same in feet are the nearest double", [] {
    const int denominator = 1 << *rc::gen::inRange(1, 7);
    const int whole = *rc::gen::inRange(1, 12);
    const int feet = *rc::gen::inRange(1, 50);
    const int numerator = *rc::gen::inRange(0, denominator);
    const std::int64_t sixty_fourths = (64 / denominator) * (whole * denominator + numerator);
    const double exact = nearest_double(decimal_text(sixty_fourths * 396'875, 6));
    for (const char* form : {"{}-{}/{}", "{} {}/{}", " {}-{}/{} in", "{} {}/{}\""}) {
      const std::string text = fmt::format(fmt::runtime(form), whole, numerator, denominator);
      RC_ASSERT(read_base(text, Kind::kLength, UnitSystem::kMetric) == exact);
    }
    const double with_feet = nearest_double(decimal_text((sixty_fourths + 64 * 12 * feet) * 396'875, 6));
    const std::string text = fmt::format("{}' {}-{}/{}\"", feet, whole, numerator, denominator);
    RC_ASSERT(read_base(text, Kind::kLength, std::nullopt) == with_feet);
    const std::string improper = fmt::format("{}/{}", whole * denominator + numerator, denominator);
    RC_ASSERT(read_base(improper, Kind::kLength, std::nullopt) == exact);
  }));
}

TEST(InchProperty, NearestSixtyFourthIsNearestAndIsReadBack) {
  EXPECT_TRUE(holds("the nearest 64th is within 1/128 in, reduced, and prints as what it is", [] {
    const double inches = *rc::gen::inRange(-200'000, 200'000) / 1009.0;
    const InchFraction f = nearest_64th(Length::of(inches, unit::inch));
    constexpr double kHalf = (1.0 + 4e-6) / 128.0;
    RC_ASSERT(std::abs(f.error.in(unit::inch)) <= kHalf);
    RC_ASSERT(f.numerator % 2 == 1 || f.denominator == 1);
    const double again = read_base(to_string(f), Kind::kCoordinate, UnitSystem::kInch);
    RC_ASSERT(std::abs(again - (Length::of(inches, unit::inch) + f.error).base()) <=
              8 * kEpsilon * 25.4 * 200);
  }));
}

TEST(RoleProperty, HalfAndTwiceUndoEachOther) {
  EXPECT_TRUE(holds("twice(half(d)) is d and half(twice(r)) is r, bit for bit", [] {
    const double mm = *rc::gen::arbitrary<double>();
    if (!std::isfinite(mm) || std::abs(mm) > 1e300 || (mm != 0.0 && std::abs(mm) < 1e-300))
      RC_DISCARD("not a size");
    RC_ASSERT(twice(half(Diameter::from_base(mm))).base() == mm);
    RC_ASSERT(half(twice(Radius::from_base(mm))).base() == mm);
    RC_ASSERT((across(twice(Radius::from_base(mm))) == reach(Radius::from_base(mm)) * 2.0));
  }));
}

// --- rounding
// ----------------------------------------------------------------------------------------------------- The
// same decimal number, rounded on its digits: half away from zero.
std::string rounded_by_digits(std::int64_t units, int places, int wanted) {
  const std::int64_t step = power_of_ten(places - wanted);
  const std::int64_t size = units < 0 ? -units : units;
  const std::int64_t kept = size / step + (2 * (size % step) >= step ? 1 : 0);
  return decimal_text(units < 0 ? -kept : kept, wanted);
}

TEST(RoundingProperty, AgreesWithExactDecimalArithmetic) {
  int halves = 0;
  EXPECT_TRUE(holds("fixed() rounds the double as the digits say", [&] {
    const int places = *rc::gen::inRange(1, 9);
    const int dropped = *rc::gen::inRange(1, std::min(places, 5) + 1);
    const int wanted = places - dropped;
    std::int64_t units = *rc::gen::inRange<std::int64_t>(-9'999'999'999, 9'999'999'999);
    if (*rc::gen::arbitrary<bool>()) {  // exactly a half
      const std::int64_t step = power_of_ten(dropped);
      units = units / step * step + (units < 0 ? -step / 2 : step / 2);
      ++halves;
    }
    const double value = nearest_double(decimal_text(units, places));
    RC_ASSERT(fixed(value, wanted) == rounded_by_digits(units, places, wanted));
    RC_ASSERT(rounded(rounded(value, wanted), wanted) == rounded(value, wanted));
    RC_ASSERT(signed_fixed(value, wanted).substr(1) == fixed(std::abs(value), wanted));
  }));
  EXPECT_GT(halves, 100);
}

// --- tolerances
// ---------------------------------------------------------------------------------------------------
TEST(ToleranceProperty, ASizeAndItsToleranceAreReadAsEachAlone) {
  EXPECT_TRUE(holds("read_sized is read_number and read_tolerance side by side", [] {
    const int places = *rc::gen::inRange(1, 5);
    const std::string size = decimal_text(*rc::gen::inRange<std::int64_t>(1000, 99'999), places);
    std::int64_t a = *rc::gen::inRange<std::int64_t>(-99, 99);
    std::int64_t b = *rc::gen::inRange<std::int64_t>(-99, 99);
    const auto with_sign = [&](std::int64_t n) { return (n < 0 ? "" : "+") + decimal_text(n, places); };
    const char* form = *rc::gen::element("{}/{}", "{} / {}", "{} to {}", "{} {}");
    const std::string tolerance = fmt::format(fmt::runtime(form), with_sign(a), with_sign(b));
    const auto system = *rc::gen::element(UnitSystem::kInch, UnitSystem::kMetric);
    if (a > b) std::swap(a, b);

    const auto sized = read_sized(size + " " + tolerance, Kind::kDiameter, system);
    RC_ASSERT(sized.has_value());
    RC_ASSERT(sized->nominal.base == read_base(size, Kind::kDiameter, system));
    const auto alone = read_tolerance(tolerance, Kind::kDiameter, system);
    RC_ASSERT(alone.has_value());
    const auto& d = std::get<Deviations>(sized->tolerance.form);
    const Unit unit = display_unit(Kind::kDiameter, system);
    RC_ASSERT(d.lower.base == unit.to_base(nearest_double(decimal_text(a, places))));
    RC_ASSERT(d.upper.base == unit.to_base(nearest_double(decimal_text(b, places))));
    RC_ASSERT(std::get<Deviations>(alone->form).lower.base == d.lower.base);
  }));
}

// A unit written once at the end gives what the unit written twice gives.
TEST(ToleranceProperty, OneUnitAtTheEndCountsForBoth) {
  EXPECT_TRUE(holds("a to b unit is a unit to b unit", [] {
    const std::int64_t low = *rc::gen::inRange<std::int64_t>(0, 50'000);
    const std::int64_t high = low + *rc::gen::inRange<std::int64_t>(0, 500);
    const std::string unit = *rc::gen::element<std::string>("in", "mm", "\"", "thou", "um");
    const std::string a = decimal_text(low, 2);
    const std::string b = decimal_text(high, 2);
    const auto once =
        read_tolerance(fmt::format("{} to {} {}", a, b, unit), Kind::kLength, UnitSystem::kMetric);
    const auto twice =
        read_tolerance(fmt::format("{} {} to {} {}", a, unit, b, unit), Kind::kLength, std::nullopt);
    RC_ASSERT(once.has_value());
    RC_ASSERT(twice.has_value());
    RC_ASSERT(std::get<WrittenLimits>(once->form).low.base == std::get<WrittenLimits>(twice->form).low.base);
    RC_ASSERT(std::get<WrittenLimits>(once->form).high.base ==
              std::get<WrittenLimits>(twice->form).high.base);
  }));
}

}  // namespace
}  // namespace sparewright::quantity
