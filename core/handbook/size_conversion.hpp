// One size in every way a shop may want it: inch, millimetre, 64ths, drill, thou, hundredths.
#pragma once

#include <string>
#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/drills.hpp"
#include "core/quantity/display.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// A decimal number written out. Not exact: rounded to ten decimals.
struct WrittenDecimal {
  std::string text;  // "1.84375", without a unit and without zeros at its end
  bool exact = false;
};

struct SizeConversion {
  std::string typed;  // as it stood
  quantity::Length size;
  WrittenDecimal inch;
  WrittenDecimal millimetre;
  quantity::InchFraction nearest_64th;  // its error: the fraction less the size
  Drill nearest_drill;  // of all four series; of equally near ones the fraction, number, letter, metric
  quantity::Length drill_off;     // the drill less the size
  quantity::Length nearest_thou;  // halves away from zero
  quantity::Length thou_off;
  quantity::Length nearest_hundredth;  // of a millimetre
  quantity::Length hundredth_off;
};

// Converts a size as typed: 1-27/32 in, 46.83 mm, 3/8, 5 thou, 2 ft 3-1/2 in, #7, letter F. A number without
// a unit is not guessed at (a fraction is of an inch). Fails as read_size and find_drill; kSizeNotPositive
// below zero and at it.
[[nodiscard]] base::Result<SizeConversion> convert_size(std::string_view text);

}  // namespace sparewright::handbook
