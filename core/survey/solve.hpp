// The values of the unknowns that fit the readings best.
#pragma once

#include <vector>

#include "core/base/result.hpp"
#include "core/survey/network.hpp"
#include "core/survey/whitening.hpp"

namespace sparewright::survey {

struct Solution {
  std::vector<double> values;
  double cost = 0.0;  // squared length of the whitened misfits: chi-square
  int steps = 0;
};

// Settled: the next undamped step would move no fitted reading by more than this part of its standard
// uncertainty (or by more than rounding).
inline constexpr double kSettled = 1e-10;

// From cold_start; where that does not settle, or settles on a poor fit after a guess, from a few other
// guesses, and the best fit of those counts. Fails as adjust() does.
[[nodiscard]] base::Result<Solution> solve(const Equations& equations, const Whitening& whitening);

}  // namespace sparewright::survey
