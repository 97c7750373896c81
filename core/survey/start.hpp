// Where an adjustment starts: cold, from the readings alone, so that no history is in the answer.
#pragma once

#include <cstddef>
#include <vector>

#include "core/survey/network.hpp"

namespace sparewright::survey {

struct Start {
  std::vector<double> values;  // one for each unknown
  bool guessed = false;        // some unknown had to be guessed, so another guess may lead elsewhere
};

// The unknowns are found one after another, as a person would with a pencil:
//   1. as long as a reading has one unknown left (those of a single unknown first, then in the order of the
//      readings), that one is worked out from it: by one step along the slope where that does it (a linear
//      equation), else by trying sizes by factors of 2 on both sides of the guess, positive ones first, and
//      halving where the equation crosses the reading; where it never does, the size that comes nearest;
//   2. when none is left, the first unknown of the first unfinished reading is guessed, and 1 goes on.
// The guess for a length is half the reading it is in, for an angle half a radian (29 degrees), for a number
// 1, each times `stretch`. Unknowns in no reading keep their guess.
[[nodiscard]] Start cold_start(const Equations& equations, double stretch = 1.0);

}  // namespace sparewright::survey
