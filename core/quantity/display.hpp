// How a number is printed. Rounding happens here and at the collar, nowhere else.
#pragma once

#include <string>

#include "core/quantity/kind.hpp"
#include "core/quantity/quantity.hpp"
#include "core/quantity/unit.hpp"

namespace sparewright::quantity {

// The nearest multiple of 10^-places, halves away from zero. A value within 1e-6 of a last place of the half
// counts as the half, because 0.00005 typed is not a binary fraction. Wants places from 0 to 15 (never
// Typed::kFraction) and |value| * 10^places up to 1e15.
[[nodiscard]] double rounded(double value, int places);

// "0.6250", with exactly `places` decimals, never "-0.0000".
[[nodiscard]] std::string fixed(double value, int places);

// "+0.0010" or "-0.0005": always with a sign, zero as "+0.0000".
[[nodiscard]] std::string signed_fixed(double value, int places);

// The nearest 64th of an inch; what is within 1e-6 of a 64th of the half counts as the half and goes away
// from zero.
struct InchFraction {
  long whole = 0;
  int numerator = 0;    // 0 where whole inches
  int denominator = 1;  // reduced: 1, 2, 4, 8, 16, 32 or 64
  bool negative = false;
  Length error;  // the fraction less the value
};
[[nodiscard]] InchFraction nearest_64th(Length length);
[[nodiscard]] std::string to_string(const InchFraction& fraction);  // "1-3/8", "3/64", "2", "-1/8"

// "0.6250 in", "15.88 mm", "660 rpm": in the unit printed for the kind and system, with that many decimals.
[[nodiscard]] std::string shown(double base, Kind kind, UnitSystem system, int places);

// Decimal places a kind is printed with unless something finer is asked for: lengths 4 in inch, 3 in mm.
[[nodiscard]] int usual_places(Kind kind, UnitSystem system);

// A length in all three ways at once: "1.3750 in = 1-3/8 = 34.925 mm", the fraction with its error where it
// has one: "0.3760 in = 3/8 + 0.0010 = 9.550 mm".
[[nodiscard]] std::string three_ways(Length length);

}  // namespace sparewright::quantity
