#include "core/quantity/unit.hpp"

#include <algorithm>
#include <array>
#include <cstddef>

#include "core/quantity/spelling.hpp"

namespace sparewright::quantity {
namespace {

using namespace unit;  // NOLINT(google-build-using-namespace): the tables below are made of units

std::vector<UnitWords> make_units(Kind kind) {
  switch (kind) {
    case Kind::kNumber:
      return {{unity, {""}}, {percent, {"%", "percent"}}};
    case Kind::kLength:
    case Kind::kDiameter:
    case Kind::kRadius:
    case Kind::kCoordinate:
      return {{inch, {"in", "inch", "inches", "\"", "″", "”", "''"}},
              {millimetre, {"mm"}},
              {thou, {"thou"}},
              {microinch, {"uin", "µin", "μin", "microinch", "microinches"}},
              {foot, {"ft", "foot", "feet", "'", "′", "’"}},
              {micrometre, {"um", "µm", "μm", "micron", "microns"}},
              {centimetre, {"cm"}},
              {metre, {"m"}}};
    case Kind::kAngle:
      return {{degree, {"deg", "°", "degree", "degrees"}},
              {arc_minute, {"arcmin", "'", "′", "’"}},
              {arc_second, {"arcsec", "\"", "″", "”", "''"}},
              {radian, {"rad"}},
              {turn, {"turn", "turns"}}};
    case Kind::kArea:
      return {{square_inch, {"in2", "in²", "sq in"}}, {square_millimetre, {"mm2", "mm²"}}};
    case Kind::kVolume:
      return {{cubic_inch, {"in3", "in³", "cu in"}},
              {cubic_centimetre, {"cm3", "cm³", "ml"}},
              {cubic_millimetre, {"mm3", "mm³"}}};
    case Kind::kMass:
      return {{pound, {"lb", "lbs"}}, {kilogram, {"kg"}}, {gram, {"g"}}};
    case Kind::kDensity:
      return {{pound_per_cubic_inch, {"lb/in3", "lb/in³"}},
              {gram_per_cubic_centimetre, {"g/cm3", "g/cm³"}},
              {kilogram_per_cubic_metre, {"kg/m3", "kg/m³"}}};
    case Kind::kTime:
      return {{minute, {"min"}}, {second, {"s", "sec"}}, {hour, {"h", "hour", "hours"}}};
    case Kind::kTemperature:
      return {
          {degree_fahrenheit, {"degF", "°F", "F"}}, {degree_celsius, {"degC", "°C", "C"}}, {kelvin, {"K"}}};
    case Kind::kTemperatureDifference:
      return {{fahrenheit_difference, {"degF", "°F", "F"}},
              {celsius_difference, {"degC", "°C", "C"}},
              {kelvin, {"K"}}};
    case Kind::kForce:
      return {{pound_force, {"lbf", "lb", "lbs"}}, {newton, {"N"}}, {kilonewton, {"kN"}}};
    case Kind::kPressure:
      return {{psi, {"psi", "lbf/in2", "lbf/in²"}},
              {ksi, {"ksi"}},
              {megapascal, {"MPa", "N/mm2", "N/mm²"}},
              {gigapascal, {"GPa"}},
              {bar, {"bar"}}};
    case Kind::kTorque:
      return {{inch_pound, {"in lbf", "in lb", "in-lb", "in-lbf", "lbf in", "lb in", "lb-in", "lbf-in"}},
              {foot_pound, {"ft lbf", "ft lb", "ft-lb", "ft-lbf", "lbf ft", "lb ft", "lb-ft", "lbf-ft"}},
              {newton_metre, {"N m", "Nm", "N·m"}}};
    case Kind::kPower:
      return {{horsepower, {"hp"}}, {kilowatt, {"kW"}}, {watt, {"W"}}};
    case Kind::kSpeed:
      return {{foot_per_minute, {"ft/min", "sfm"}},
              {metre_per_minute, {"m/min"}},
              {millimetre_per_second, {"mm/s"}}};
    case Kind::kRotationalSpeed:
      return {{rpm, {"rpm", "rev/min"}}, {radian_per_second, {"rad/s"}}};
    case Kind::kFeedPerTurn:
      return {{inch_per_turn, {"in/rev", "ipr"}}, {millimetre_per_turn, {"mm/rev"}}};
    case Kind::kFeedRate:
      return {{inch_per_minute, {"in/min", "ipm"}},
              {millimetre_per_minute, {"mm/min"}},
              {millimetre_per_second, {"mm/s"}}};
  }
  return {};
}

struct Printed {
  Unit inch_system;
  Unit metric_system;
};

Printed printed(Kind kind) {
  switch (kind) {
    case Kind::kNumber:
      return {unity, unity};
    case Kind::kLength:
    case Kind::kDiameter:
    case Kind::kRadius:
    case Kind::kCoordinate:
      return {inch, millimetre};
    case Kind::kAngle:
      return {degree, degree};
    case Kind::kArea:
      return {square_inch, square_millimetre};
    case Kind::kVolume:
      return {cubic_inch, cubic_centimetre};
    case Kind::kMass:
      return {pound, kilogram};
    case Kind::kDensity:
      return {pound_per_cubic_inch, gram_per_cubic_centimetre};
    case Kind::kTime:
      return {minute, minute};
    case Kind::kTemperature:
      return {degree_fahrenheit, degree_celsius};
    case Kind::kTemperatureDifference:
      return {fahrenheit_difference, celsius_difference};
    case Kind::kForce:
      return {pound_force, newton};
    case Kind::kPressure:
      return {psi, megapascal};
    case Kind::kTorque:
      return {inch_pound, newton_metre};
    case Kind::kPower:
      return {horsepower, kilowatt};
    case Kind::kSpeed:
      return {foot_per_minute, metre_per_minute};
    case Kind::kRotationalSpeed:
      return {rpm, rpm};
    case Kind::kFeedPerTurn:
      return {inch_per_turn, millimetre_per_turn};
    case Kind::kFeedRate:
      return {inch_per_minute, millimetre_per_minute};
  }
  return {unity, unity};
}

}  // namespace

std::span<const UnitWords> units_of(Kind kind) {
  static const auto kUnits = [] {
    std::array<std::vector<UnitWords>, kKinds> all;
    for (int k = 0; k < kKinds; ++k)
      all.at(static_cast<std::size_t>(k)) = make_units(static_cast<Kind>(k));
    return all;
  }();
  return kUnits.at(static_cast<std::size_t>(kind));
}

bool is_spelled(std::string_view written, std::string_view spelling) {
  if (written == spelling) return true;
  if (written.size() != spelling.size()) return false;
  const auto letters = std::count_if(spelling.begin(), spelling.end(), is_letter);
  if (letters < 2 || std::any_of(spelling.begin(), spelling.end(), is_upper)) return false;
  const bool only_first = letters > 2 && std::none_of(written.begin() + 1, written.end(), is_upper);
  if (!only_first && std::any_of(written.begin(), written.end(), is_lower)) return false;
  return std::equal(written.begin(), written.end(), spelling.begin(),
                    [](char w, char s) { return (is_upper(w) ? static_cast<char>(w - 'A' + 'a') : w) == s; });
}

std::optional<Unit> find_unit(Kind kind, std::string_view spelling) {
  for (const UnitWords& words : units_of(kind)) {
    if (std::any_of(words.spellings.begin(), words.spellings.end(),
                    [&](std::string_view s) { return is_spelled(spelling, s); })) {
      return words.unit;
    }
  }
  return std::nullopt;
}

std::string spellings_of(Kind kind) {
  std::string out;
  for (const UnitWords& words : units_of(kind)) {
    if (words.spellings.front().empty()) continue;
    if (!out.empty()) out += ", ";
    out += words.spellings.front();
  }
  return out;
}

Unit display_unit(Kind kind, UnitSystem system) {
  const Printed both = printed(kind);
  return system == UnitSystem::kInch ? both.inch_system : both.metric_system;
}

std::optional<Unit> bare_unit(Kind kind, UnitSystem system) {
  switch (kind) {
    case Kind::kNumber:
    case Kind::kLength:
    case Kind::kDiameter:
    case Kind::kRadius:
    case Kind::kCoordinate:
    case Kind::kAngle:
    case Kind::kRotationalSpeed:
    case Kind::kFeedPerTurn:
    case Kind::kFeedRate:
      return display_unit(kind, system);
    default:
      return std::nullopt;
  }
}

}  // namespace sparewright::quantity
