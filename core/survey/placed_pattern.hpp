// The pattern that holes lie in by their middles: on a circle or in a row, equally spaced with places left out or not.
//
// Each hole is given the nearest of equally spaced places. How many places there are goes by odds, as in hole_pattern.hpp: how
// often such a count is met x the ways the holes can fall on places x what the misfits make of it. The circle (or line) and
// its size do not go by that choice, save the pitch of a row and the angle of the first hole.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/survey/circle_fit.hpp"
#include "core/survey/following_number.hpp"
#include "core/survey/touched.hpp"

namespace sparewright::survey {

struct PlacedPattern {
  HoleLayout layout = HoleLayout::kCircle;
  int places = 0;          // as many as there are in the pattern, holes or not
  std::vector<int> place;  // of each hole, from 0 for the first
  double odds = 0.0;       // of that many places, 0 to 1
  int next_places = 0;     // the count that comes next; 0 where none does
  double next_odds = 0.0;
  double no_pattern_odds = 0.0;
  FollowingNumber x, y;  // circle: its middle. Row: the middle of hole 1 brought onto the line
  FollowingNumber size;  // circle: its diameter; row: the pitch
  FollowingNumber
      start;  // angle from x, counterclockwise: circle: of the first hole; row: of the way it goes
  std::vector<FollowingNumber>
      along;  // of each hole: how far it is from its place along the circle or the row
  std::vector<FollowingNumber> across;  // how far outside the circle, or to the left of the row
};

// middles: one for each hole. u: standard uncertainty of a coordinate; made: standard deviation a hole was placed with when
// it was made. Holes of a row are numbered the way from the first to the last of the list. Fails with kReadingsTooFew (fewer
// than three holes, two at one place, for a circle all in a line), kTooMany, kReadingsDisagree (no equal spacing up to
// kMostPatternHoles places takes each hole to a place of its own).
[[nodiscard]] base::Result<PlacedPattern> placed_pattern(HoleLayout layout, std::span<const Point2> middles,
                                                         double u, double made);

}  // namespace sparewright::survey
