// Which of equally spaced places holes are at, by odds.
//
// On a circle or in a row with `count` places the holes fall on places of their own in count (count - 1) ... ways, all alike;
// where the first place is counts as anywhere in a step. how_often_met() is the odds of a count before anything is known.
#pragma once

#include <optional>
#include <vector>

#include "core/survey/touched.hpp"

namespace sparewright::survey {

// How places were given: one number for each hole along the pattern, in units in which it repeats after `whole`.
struct Places {
  std::vector<int> place;
  double start = 0.0;  // of place 0
  double step = 0.0;   // from place to place
  double log_odds = 0.0;
  int count = 0;
};

// The likeliest count of places, and what the others are worth.
struct ChosenPlaces {
  Places places;
  double odds = 0.0;   // 0 to 1
  int next_count = 0;  // the count that comes next; 0 where none does
  double next_odds = 0.0;
  double no_pattern_odds = 0.0;
};

// along: an angle each on a circle, a distance each in a row. spread: standard deviation of one. Nothing where no count up
// to kMostPatternHoles takes each hole to a place of its own.
[[nodiscard]] std::optional<ChosenPlaces> chosen_places(HoleLayout layout, const std::vector<double>& along,
                                                        double spread);

}  // namespace sparewright::survey
