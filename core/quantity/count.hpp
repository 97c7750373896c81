// The digits of a number, before its unit: 1.375, .0005, 3/8, 1-3/8, 1 3/8, each with a sign or without.
#pragma once

#include <cstddef>
#include <string_view>

#include "core/base/result.hpp"
#include "core/quantity/kind.hpp"

namespace sparewright::quantity {

struct Count {            // of some unit
  double value = 0.0;     // with its sign; zero is never negative
  int places = 0;         // decimal places written; Typed::kFraction where it was written as a fraction
  std::size_t taken = 0;  // bytes, blanks before it included
  bool has_sign = false;
  bool negative = false;  // also where the value is zero, as in -0 ft 3 in
  bool is_whole = false;  // digits alone, without a point
};

// Reads the longest number at the start of text. A decimal is the nearest double to what was typed; a
// fraction is rounded once where it is no binary fraction. At most 15 digits, which is what a double holds.
// kind only words the failure: kNotANumber, kBadFraction, kNumberTooLarge; the span points into text.
[[nodiscard]] base::Result<Count> read_count(std::string_view text, Kind kind);

}  // namespace sparewright::quantity
