// A turn of the collar out in one coordinate of one touch: what of it explains touches that do not agree.
#pragma once

#include <cstddef>
#include <vector>

#include "core/survey/slips.hpp"
#include "core/survey/touched.hpp"
#include "core/survey/touched_numbers.hpp"

namespace sparewright::survey {

// A form with its touches, as its stage has them.
struct FormTouched {
  TouchedForm form = TouchedForm::kCircle;
  TipSide side = TipSide::kInside;
  std::vector<std::vector<double>> touches;  // base unit
  double tip = 0.0;                          // its diameter
  std::vector<double> doubts;                // standard uncertainty of each touch along its normal
  std::vector<Turn> turns;                   // that the instrument counts; empty: it counts none
};

struct TurnInTouch {
  std::size_t touch = 0;
  std::size_t axis = 0;
  Turn turn;
  double by = 0.0;      // what the coordinate has to be changed by: the turn, or less it
  TouchedNumbers then;  // with the coordinate put right
  double weight = 0.0;  // natural logarithm of likelihood times how usual; only differences count
};

// One turn put right in one coordinate, for each coordinate of the touches furthest off (kMostTouchesTried), fitted anew.
// Those after which no touch is out and all agree (touch_odds.hpp), the weightiest first; what weighs kOutweighs less than the
// best is left out. A turn no larger than what a touch may be out by anyway explains nothing. Wants a touch to spare.
// Assumes a touch as well known along each axis.
[[nodiscard]] std::vector<TurnInTouch> turns_in_touches(const FormTouched& form, const OrthogonalFit& fit);

// A choice made here: a touch that is out by a turn is among those furthest off, few as touches are.
inline constexpr std::size_t kMostTouchesTried = 12;

}  // namespace sparewright::survey
