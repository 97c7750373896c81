// Inch fits of ANSI B4.1-1967: RC4, LC2, LT1, LN2, FN2 and so on to limits of hole and shaft.
#pragma once

#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// Limits less the nominal size. The hole is basic: its lower limit is 0 in every row.
struct InchFit {
  std::string_view fit;     // "RC4"
  quantity::Diameter over;  // the range of nominal sizes the row is for
  quantity::Diameter up_to;
  std::string_view hole_zone;   // "H8": a grade of B4.1, not of ISO 286
  std::string_view shaft_zone;  // "f7"; empty for RC9 and FN1, which have none
  quantity::Length hole_lower;
  quantity::Length hole_upper;
  quantity::Length shaft_lower;
  quantity::Length shaft_upper;
  Source source;

  // Negative is interference.
  [[nodiscard]] quantity::Length least_clearance() const { return hole_lower - shaft_upper; }
  [[nodiscard]] quantity::Length most_clearance() const { return hole_upper - shaft_lower; }
};

// The row of a fit at a nominal size; the name in capitals or small letters. Tabled: RC1-RC9, LC1-LC6,
// LT1-LT4, LN1-LN3 to 7.09 in, FN1-FN5 to 5.52 in, LT3, LT4 from 0.24 in, FN3 from 0.95 in. Fails with
// kNameUnknown (XY3), or kNotTabled naming the range of the fit.
[[nodiscard]] base::Result<InchFit> inch_fit(std::string_view fit, quantity::Diameter nominal);

}  // namespace sparewright::handbook
