// Every unit of core/quantity against GNU units (Debian's package `units`, its own table of definitions), run
// once a row.
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <memory>
#include <ostream>
#include <string>

#include <gtest/gtest.h>

#include "core/quantity/quantity.hpp"

namespace sparewright::quantity {
namespace {

// Both sides multiply a handful of doubles; each rounds by 1.1e-16.
constexpr double kBothRound = 2e-15;

// What GNU units prints for one of `from`, counted in `to`.
double by_gnu_units(const std::string& from, const std::string& to) {
  const std::string command =
      "LC_ALL=C.UTF-8 units --terse --output-format '%.17g' '" + from + "' '" + to + "' 2>&1";
  const std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(command.c_str(), "r"), pclose);
  if (!pipe) return std::nan("");
  std::array<char, 256> line{};
  if (std::fgets(line.data(), line.size(), pipe.get()) == nullptr) return std::nan("");
  char* end = nullptr;
  const double value = std::strtod(line.data(), &end);
  return end == line.data() ? std::nan("") : value;
}

struct Row {
  Unit ours;
  const char* theirs;
  const char* base;  // our base unit in their words
};

// NOLINTNEXTLINE(readability-identifier-naming): the name GoogleTest looks for
void PrintTo(const Row& row, std::ostream* out) {
  *out << row.theirs;
}

class OutsideGnuUnits : public testing::TestWithParam<Row> {};

TEST_P(OutsideGnuUnits, GivesTheSame) {
  const Row& row = GetParam();
  const double theirs = by_gnu_units(row.theirs, row.base);
  ASSERT_TRUE(std::isfinite(theirs)) << "is GNU units installed?";
  const double ours = row.ours.to_base(1.0);
  EXPECT_NEAR(ours, theirs, theirs * kBothRound);
  EXPECT_NEAR(row.ours.from_base(theirs), 1.0, kBothRound);
}

constexpr const char* kLength = "mm";
constexpr const char* kAngle = "radian";
constexpr const char* kForce = "kg mm/s^2";
constexpr const char* kPressure = "kg/(mm s^2)";
constexpr const char* kTorque = "kg mm^2/s^2";
constexpr const char* kPower = "kg mm^2/s^3";

const Row kRows[] = {
    {unit::inch, "inch", kLength},
    {unit::thou, "thou", kLength},
    {unit::foot, "foot", kLength},
    {unit::millimetre, "millimetre", kLength},
    {unit::micrometre, "micrometre", kLength},
    {unit::centimetre, "cm", kLength},
    {unit::metre, "metre", kLength},
    {unit::degree, "degree", kAngle},
    {unit::arc_minute, "arcmin", kAngle},
    {unit::arc_second, "arcsec", kAngle},
    {unit::turn, "turn", kAngle},
    {unit::percent, "percent", "1"},
    {unit::square_inch, "inch^2", "mm^2"},
    {unit::cubic_inch, "inch^3", "mm^3"},
    {unit::cubic_centimetre, "cm^3", "mm^3"},
    {unit::pound, "pound", "kg"},
    {unit::gram, "gram", "kg"},
    {unit::pound_per_cubic_inch, "lb/in^3", "kg/mm^3"},
    {unit::gram_per_cubic_centimetre, "g/cm^3", "kg/mm^3"},
    {unit::kilogram_per_cubic_metre, "kg/m^3", "kg/mm^3"},
    {unit::minute, "minute", "s"},
    {unit::hour, "hour", "s"},
    {unit::fahrenheit_difference, "degF", "K"},
    {unit::celsius_difference, "degC", "K"},
    {unit::pound_force, "lbf", kForce},
    {unit::newton, "newton", kForce},
    {unit::kilonewton, "kN", kForce},
    {unit::psi, "psi", kPressure},
    {unit::ksi, "ksi", kPressure},
    {unit::megapascal, "MPa", kPressure},
    {unit::gigapascal, "GPa", kPressure},
    {unit::bar, "bar", kPressure},
    {unit::inch_pound, "inch lbf", kTorque},
    {unit::foot_pound, "ft lbf", kTorque},
    {unit::newton_metre, "N m", kTorque},
    {unit::horsepower, "horsepower", kPower},
    {unit::kilowatt, "kW", kPower},
    {unit::watt, "W", kPower},
    {unit::foot_per_minute, "ft/min", "mm/s"},
    {unit::metre_per_minute, "m/min", "mm/s"},
    {unit::inch_per_minute, "in/min", "mm/s"},
    {unit::millimetre_per_minute, "mm/min", "mm/s"},
    {unit::rpm, "rpm", "radian/s"},
    {unit::inch_per_turn, "in/turn", "mm/radian"},
    {unit::millimetre_per_turn, "mm/turn", "mm/radian"},
};
INSTANTIATE_TEST_SUITE_P(Rows, OutsideGnuUnits, testing::ValuesIn(kRows));

// Temperatures have a shifted zero, which GNU units writes as a function.
struct TemperatureRow {
  double count;
  Unit ours;
  const char* theirs;
};

// NOLINTNEXTLINE(readability-identifier-naming): the name GoogleTest looks for
void PrintTo(const TemperatureRow& row, std::ostream* out) {
  *out << row.theirs;
}

class OutsideGnuUnitsTemperature : public testing::TestWithParam<TemperatureRow> {};

TEST_P(OutsideGnuUnitsTemperature, GivesTheSame) {
  const TemperatureRow& row = GetParam();
  const double theirs = by_gnu_units(row.theirs, "K");
  ASSERT_TRUE(std::isfinite(theirs));
  EXPECT_NEAR(row.ours.to_base(row.count), theirs, theirs * kBothRound);
}

const TemperatureRow kTemperatures[] = {
    {68, unit::degree_fahrenheit, "tempF(68)"},   {212, unit::degree_fahrenheit, "tempF(212)"},
    {-40, unit::degree_fahrenheit, "tempF(-40)"}, {1450, unit::degree_fahrenheit, "tempF(1450)"},
    {20, unit::degree_celsius, "tempC(20)"},      {-273.15, unit::degree_celsius, "tempC(-273.15)"},
    {160, unit::degree_celsius, "tempC(160)"},
};
INSTANTIATE_TEST_SUITE_P(Rows, OutsideGnuUnitsTemperature, testing::ValuesIn(kTemperatures));

}  // namespace
}  // namespace sparewright::quantity
