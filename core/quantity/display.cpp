#include "core/quantity/display.hpp"

#include <cassert>
#include <cmath>

#include <fmt/format.h>

namespace sparewright::quantity {

namespace {

constexpr int kMostPlaces = 15;
constexpr double kHalfCounts = 1e-6;

}  // namespace

double rounded(double value, int places) {
  assert(places >= 0 && places <= kMostPlaces);
  const double scale = std::pow(10.0, places);
  const double magnitude = std::floor(std::abs(value) * scale + 0.5 + kHalfCounts) / scale;
  return value < 0 ? -magnitude : magnitude;
}

std::string fixed(double value, int places) {
  const double r = rounded(value, places);
  return fmt::format("{:.{}f}", r == 0.0 ? 0.0 : r, places);
}

std::string signed_fixed(double value, int places) {
  const double r = rounded(value, places);
  return fmt::format("{:+.{}f}", r == 0.0 ? 0.0 : r, places);
}

InchFraction nearest_64th(Length length) {
  const double inches = length.in(unit::inch);
  const double sixty_fourths = std::floor(std::abs(inches) * 64.0 + 0.5 + kHalfCounts);
  InchFraction f;
  f.negative = inches < 0 && sixty_fourths > 0;
  f.whole = static_cast<long>(sixty_fourths / 64.0);
  f.numerator = static_cast<int>(sixty_fourths - static_cast<double>(f.whole) * 64.0);
  f.denominator = f.numerator == 0 ? 1 : 64;
  while (f.numerator > 0 && f.numerator % 2 == 0) {
    f.numerator /= 2;
    f.denominator /= 2;
  }
  f.error = Length::of((f.negative ? -sixty_fourths : sixty_fourths) / 64.0, unit::inch) - length;
  return f;
}

std::string to_string(const InchFraction& f) {
  std::string out = f.negative ? "-" : "";
  if (f.numerator == 0) return out + fmt::format("{}", f.whole);
  if (f.whole != 0) out += fmt::format("{}-", f.whole);
  return out + fmt::format("{}/{}", f.numerator, f.denominator);
}

std::string shown(double base, Kind kind, UnitSystem system, int places) {
  const Unit printed = display_unit(kind, system);
  const std::string number = fixed(printed.from_base(base), places);
  return printed.symbol.empty() ? number : fmt::format("{} {}", number, printed.symbol);
}

int usual_places(Kind kind, UnitSystem system) {
  switch (kind) {
    case Kind::kLength:
    case Kind::kDiameter:
    case Kind::kRadius:
    case Kind::kCoordinate:
    case Kind::kFeedPerTurn:
      return system == UnitSystem::kInch ? 4 : 3;
    case Kind::kRotationalSpeed:
    case Kind::kSpeed:
      return 0;
    case Kind::kNumber:
    case Kind::kAngle:
    case Kind::kArea:
    case Kind::kVolume:
    case Kind::kMass:
    case Kind::kDensity:
      return 3;
    default:
      return 1;
  }
}

std::string three_ways(Length length) {
  const InchFraction f = nearest_64th(length);
  const double error = f.error.in(unit::inch);
  std::string fraction = to_string(f);
  if (std::abs(error) >= 0.00005)
    fraction += fmt::format(" {} {}", error < 0 ? '+' : '-', fixed(std::abs(error), 4));
  return fmt::format("{} in = {} = {} mm", fixed(length.in(unit::inch), 4), fraction,
                     fixed(length.in(unit::millimetre), 3));
}

}  // namespace sparewright::quantity
