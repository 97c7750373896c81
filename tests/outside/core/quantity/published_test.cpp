// Conversion factors and fraction sizes against published values.
#include <cmath>
#include <ostream>

#include <gtest/gtest.h>

#include "core/quantity/display.hpp"
#include "core/quantity/quantity.hpp"
#include "core/quantity/typed.hpp"

namespace sparewright::quantity {
namespace {

// NIST Special Publication 811 (2008), appendix B.8, factors to SI; from memory of the publication. It prints
// seven digits; those in bold there are exact and marked here.
struct Factor {
  const char* from_to;
  double ours;  // one of the unit, in the SI unit named
  double published;
  bool exact;
};

// NOLINTNEXTLINE(readability-identifier-naming): the name GoogleTest looks for
void PrintTo(const Factor& row, std::ostream* out) {
  *out << row.from_to;
}

class OutsideSp811 : public testing::TestWithParam<Factor> {};

TEST_P(OutsideSp811, AgreesToEveryPrintedDigit) {
  const Factor& row = GetParam();
  constexpr double kRoundings = 1e-15;
  const double last_place = std::pow(10.0, std::floor(std::log10(row.published)) - 6);
  EXPECT_NEAR(row.ours, row.published, row.exact ? row.published * kRoundings : last_place / 2);
}

template <Dimension D, Zero Z>
double si(const UnitOf<D, Z>& one, const Unit& si_unit) {
  return si_unit.from_base(one.to_base(1.0));
}

constexpr double kCubicMetre = 1e9;   // mm3
constexpr double kSquareMetre = 1e6;  // mm2

const Factor kFactors[] = {
    {"inch to m", si(unit::inch, unit::metre), 2.54e-2, true},
    {"foot to m", si(unit::foot, unit::metre), 3.048e-1, true},
    {"mil (0.001 in) to m", si(unit::thou, unit::metre), 2.54e-5, true},
    {"square inch to m2", unit::square_inch.to_base(1.0) / kSquareMetre, 6.4516e-4, true},
    {"cubic inch to m3", unit::cubic_inch.to_base(1.0) / kCubicMetre, 1.638706e-5, false},
    {"degree to rad", unit::degree.to_base(1.0), 1.745329e-2, false},
    {"minute of angle to rad", unit::arc_minute.to_base(1.0), 2.908882e-4, false},
    {"second of angle to rad", unit::arc_second.to_base(1.0), 4.848137e-6, false},
    {"pound (avoirdupois) to kg", unit::pound.to_base(1.0), 4.535924e-1, false},
    {"pound per cubic inch to kg/m3", unit::pound_per_cubic_inch.to_base(1.0) * kCubicMetre, 2.767990e4,
     false},
    {"pound-force to N", si(unit::pound_force, unit::newton), 4.448222, false},
    {"psi to Pa", si(unit::psi, unit::megapascal) * 1e6, 6.894757e3, false},
    {"ksi to Pa", si(unit::ksi, unit::megapascal) * 1e6, 6.894757e6, false},
    {"bar to Pa", si(unit::bar, unit::megapascal) * 1e6, 1e5, true},
    {"pound-force foot to N m", si(unit::foot_pound, unit::newton_metre), 1.355818, false},
    {"pound-force inch to N m", si(unit::inch_pound, unit::newton_metre), 1.129848e-1, false},
    {"horsepower (550 ft lbf/s) to W", si(unit::horsepower, unit::watt), 7.456999e2, false},
    {"foot per minute to m/s", unit::foot_per_minute.to_base(1.0) / 1000, 5.08e-3, true},
    {"revolution per minute to rad/s", unit::rpm.to_base(1.0), 1.047198e-1, false},
    {"degree Fahrenheit (interval) to K", unit::fahrenheit_difference.to_base(1.0), 5.555556e-1, false},
};
INSTANTIATE_TEST_SUITE_P(AppendixB8, OutsideSp811, testing::ValuesIn(kFactors));

// Fractional drills of ANSI B94.11M (1/64 to 1 in by 64ths), inch and millimetre sizes as printed in a table
// of drill sizes (liquisearch.com, "Fractional-inch drill bit sizes"). The table prints some halves of the
// last millimetre place rounded down (11/32 as 8.7312), hence a whole half place.
struct Drill {
  const char* fraction;
  double inches;
  double millimetres;
};

// NOLINTNEXTLINE(readability-identifier-naming): the name GoogleTest looks for
void PrintTo(const Drill& row, std::ostream* out) {
  *out << row.fraction;
}

class OutsideFractionalDrills : public testing::TestWithParam<Drill> {};

TEST_P(OutsideFractionalDrills, ReadTheFractionAsTheTableDoes) {
  const Drill& row = GetParam();
  const auto read = read_number(row.fraction, Kind::kDiameter, UnitSystem::kInch);
  ASSERT_TRUE(read);
  EXPECT_EQ(read->length().in(unit::inch), row.inches);
  constexpr double kHalfPlace = 0.00005 + 1e-12;
  EXPECT_NEAR(read->length().in(unit::millimetre), row.millimetres, kHalfPlace);
  EXPECT_EQ(to_string(nearest_64th(Length::of(row.millimetres, unit::millimetre))), row.fraction);
}

const Drill kDrills[] = {
    {"1/64", 0.015625, 0.3969},   {"1/32", 0.03125, 0.7937},    {"3/64", 0.046875, 1.1906},
    {"1/16", 0.0625, 1.5875},     {"7/64", 0.109375, 2.7781},   {"5/32", 0.15625, 3.9688},
    {"13/64", 0.203125, 5.1594},  {"1/4", 0.25, 6.3500},        {"19/64", 0.296875, 7.5406},
    {"11/32", 0.34375, 8.7312},   {"25/64", 0.390625, 9.9219},  {"7/16", 0.4375, 11.1125},
    {"31/64", 0.484375, 12.3031}, {"17/32", 0.53125, 13.4937},  {"37/64", 0.578125, 14.6844},
    {"5/8", 0.625, 15.8750},      {"43/64", 0.671875, 17.0656}, {"23/32", 0.71875, 18.2562},
    {"55/64", 0.859375, 21.8281}, {"61/64", 0.953125, 24.2094},
};
INSTANTIATE_TEST_SUITE_P(Rows, OutsideFractionalDrills, testing::ValuesIn(kDrills));

}  // namespace
}  // namespace sparewright::quantity
