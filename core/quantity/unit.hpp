// Units as exact ratios against one base: millimetre, kilogram, second, kelvin, radian.
//
// Exact by definition: 1 in = 25.4 mm (international yard and pound agreement, 1959), 1 lb = 0.45359237 kg
// (same), standard gravity 9.80665 m/s2 (CGPM 1901), so 1 lbf = 4.4482216152605 N; 1 hp = 550 ft lbf/s
// (mechanical).
#pragma once

#include <cstdint>
#include <numbers>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/dimension.hpp"
#include "core/quantity/kind.hpp"

namespace sparewright::quantity {

// base = (count + offset) * numerator / denominator * pi^pi_power, pi_power being -1, 0 or 1.
// A count of inches that is a binary fraction (n/64) is multiplied exactly and divided once, so its length in
// mm is the nearest double there is.
struct Unit {
  constexpr Unit() = default;
  constexpr Unit(std::string_view written, Dimension of, std::int64_t top, std::int64_t bottom,
                 int power_of_pi, double shift)
      : symbol(written),
        dimension(of),
        numerator(top),
        denominator(bottom),
        pi_power(power_of_pi),
        offset(shift) {}

  std::string_view symbol;
  Dimension dimension{};
  std::int64_t numerator = 1;
  std::int64_t denominator = 1;
  int pi_power = 0;
  double offset = 0.0;  // temperatures only

  [[nodiscard]] constexpr double to_base(double count) const {
    return (count + offset) * static_cast<double>(numerator) / static_cast<double>(denominator) * pi_factor();
  }
  [[nodiscard]] constexpr double from_base(double base) const {
    return base / pi_factor() * static_cast<double>(denominator) / static_cast<double>(numerator) - offset;
  }
  friend constexpr bool operator==(const Unit& a, const Unit& b) {
    return a.symbol == b.symbol && a.dimension == b.dimension && a.offset == b.offset;
  }

 private:
  [[nodiscard]] constexpr double pi_factor() const {
    return pi_power == 0 ? 1.0 : pi_power > 0 ? std::numbers::pi : 1.0 / std::numbers::pi;
  }
};

// Where a unit counts from. 20 degC is a temperature, and no difference of 20 K; a difference of 20 degC is
// no temperature. A unit that counts from the true zero serves for both.
enum class Zero { kTrue, kShifted, kDifference };

// A unit whose dimension is known when compiling.
template <Dimension D, Zero Z = Zero::kTrue>
struct UnitOf : Unit {
  constexpr UnitOf(std::string_view written, std::int64_t top, std::int64_t bottom = 1, int power_of_pi = 0,
                   double shift = 0.0)
      : Unit{written, D, top, bottom, power_of_pi, shift} {}
};

namespace unit {

inline constexpr UnitOf<kNumberDimension> unity{"", 1};
inline constexpr UnitOf<kNumberDimension> percent{"%", 1, 100};

inline constexpr UnitOf<kLengthDimension> millimetre{"mm", 1};
inline constexpr UnitOf<kLengthDimension> micrometre{"um", 1, 1000};
inline constexpr UnitOf<kLengthDimension> centimetre{"cm", 10};
inline constexpr UnitOf<kLengthDimension> metre{"m", 1000};
inline constexpr UnitOf<kLengthDimension> inch{"in", 127, 5};
inline constexpr UnitOf<kLengthDimension> thou{"thou", 127, 5000};
inline constexpr UnitOf<kLengthDimension> microinch{"uin", 127, 5'000'000};
inline constexpr UnitOf<kLengthDimension> foot{"ft", 1524, 5};

inline constexpr UnitOf<kAngleDimension> radian{"rad", 1};
inline constexpr UnitOf<kAngleDimension> degree{"deg", 1, 180, 1};
inline constexpr UnitOf<kAngleDimension> arc_minute{"arcmin", 1, 10'800, 1};
inline constexpr UnitOf<kAngleDimension> arc_second{"arcsec", 1, 648'000, 1};
inline constexpr UnitOf<kAngleDimension> turn{"turn", 2, 1, 1};

inline constexpr UnitOf<kAreaDimension> square_millimetre{"mm2", 1};
inline constexpr UnitOf<kAreaDimension> square_inch{"in2", 16129, 25};
inline constexpr UnitOf<kVolumeDimension> cubic_millimetre{"mm3", 1};
inline constexpr UnitOf<kVolumeDimension> cubic_centimetre{"cm3", 1000};
inline constexpr UnitOf<kVolumeDimension> cubic_inch{"in3", 2048383, 125};

inline constexpr UnitOf<kMassDimension> kilogram{"kg", 1};
inline constexpr UnitOf<kMassDimension> gram{"g", 1, 1000};
inline constexpr UnitOf<kMassDimension> pound{"lb", 45359237, 100000000};
inline constexpr UnitOf<kDensityDimension> gram_per_cubic_centimetre{"g/cm3", 1, 1000000};
inline constexpr UnitOf<kDensityDimension> kilogram_per_cubic_metre{"kg/m3", 1, 1000000000};
inline constexpr UnitOf<kDensityDimension> pound_per_cubic_inch{"lb/in3", 45359237LL * 125,
                                                                100000000LL * 2048383};

inline constexpr UnitOf<kTimeDimension> second{"s", 1};
inline constexpr UnitOf<kTimeDimension> minute{"min", 60};
inline constexpr UnitOf<kTimeDimension> hour{"h", 3600};

inline constexpr UnitOf<kTemperatureDimension> kelvin{"K", 1};
inline constexpr UnitOf<kTemperatureDimension, Zero::kShifted> degree_celsius{"degC", 1, 1, 0, 273.15};
inline constexpr UnitOf<kTemperatureDimension, Zero::kShifted> degree_fahrenheit{"degF", 5, 9, 0, 459.67};
inline constexpr UnitOf<kTemperatureDimension, Zero::kDifference> celsius_difference{"degC", 1};
inline constexpr UnitOf<kTemperatureDimension, Zero::kDifference> fahrenheit_difference{"degF", 5, 9};

// Coherent units of this base: force kg mm/s2 = mN, pressure kg/(mm s2) = kPa, torque kg mm2/s2 = mN mm,
// power kg mm2/s3 = uW.
inline constexpr UnitOf<kForceDimension> newton{"N", 1000};
inline constexpr UnitOf<kForceDimension> kilonewton{"kN", 1000000};
inline constexpr UnitOf<kForceDimension> pound_force{"lbf", 8896443230521, 2000000000};
inline constexpr UnitOf<kPressureDimension> megapascal{"MPa", 1000};
inline constexpr UnitOf<kPressureDimension> gigapascal{"GPa", 1000000};
inline constexpr UnitOf<kPressureDimension> bar{"bar", 100};
inline constexpr UnitOf<kPressureDimension> psi{"psi", 8896443230521, 1290320000000};
inline constexpr UnitOf<kPressureDimension> ksi{"ksi", 8896443230521, 1290320000};
inline constexpr UnitOf<kTorqueDimension> newton_metre{"N m", 1000000};
inline constexpr UnitOf<kTorqueDimension> inch_pound{"in lbf", 1129848290276167, 10000000000};
inline constexpr UnitOf<kTorqueDimension> foot_pound{"ft lbf", 3389544870828501, 2500000000};
inline constexpr UnitOf<kPowerDimension> watt{"W", 1000000};
inline constexpr UnitOf<kPowerDimension> kilowatt{"kW", 1000000000};
inline constexpr UnitOf<kPowerDimension> horsepower{"hp", 37284993579113511, 50000000};

inline constexpr UnitOf<kSpeedDimension> millimetre_per_second{"mm/s", 1};
inline constexpr UnitOf<kSpeedDimension> metre_per_minute{"m/min", 1000, 60};
inline constexpr UnitOf<kSpeedDimension> foot_per_minute{"ft/min", 127, 25};
inline constexpr UnitOf<kSpeedDimension> millimetre_per_minute{"mm/min", 1, 60};
inline constexpr UnitOf<kSpeedDimension> inch_per_minute{"in/min", 127, 300};
inline constexpr UnitOf<kRotationalSpeedDimension> rpm{"rpm", 1, 30, 1};
inline constexpr UnitOf<kRotationalSpeedDimension> radian_per_second{"rad/s", 1};

// A turn is 2 pi, so a length per turn carries 1/(2 pi).
inline constexpr UnitOf<kFeedPerTurnDimension> millimetre_per_turn{"mm/rev", 1, 2, -1};
inline constexpr UnitOf<kFeedPerTurnDimension> inch_per_turn{"in/rev", 127, 10, -1};

}  // namespace unit

// Every unit a text may use for a kind, the first of each spelling list being the one printed.
struct UnitWords {
  Unit unit;
  std::vector<std::string_view> spellings;
};
[[nodiscard]] std::span<const UnitWords> units_of(Kind kind);

// Whether a text spells a unit so. A spelling of two or more small letters may be in capitals (IN, PSI,
// FT/MIN), one of three or more may begin with one (Inch); where capitals tell units apart (MPa, kN, N, m)
// they must be as listed.
[[nodiscard]] bool is_spelled(std::string_view written, std::string_view spelling);

// The unit that a text spells so, among those of the kind.
[[nodiscard]] std::optional<Unit> find_unit(Kind kind, std::string_view spelling);

// "in, mm, thou, ...": for the accepted line of a message.
[[nodiscard]] std::string spellings_of(Kind kind);

// The two systems a reader may want.
enum class UnitSystem { kInch, kMetric };

// The unit a kind is printed in.
[[nodiscard]] Unit display_unit(Kind kind, UnitSystem system);

// The unit a bare number of this kind takes in a job of that system; none where both systems have several
// plausible units, so that one must be written.
[[nodiscard]] std::optional<Unit> bare_unit(Kind kind, UnitSystem system);

}  // namespace sparewright::quantity
