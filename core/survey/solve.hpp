// The values of the unknowns that fit the readings best.
#pragma once

#include <memory>
#include <utility>
#include <vector>

#include "core/base/result.hpp"
#include "core/survey/network.hpp"
#include "core/survey/whitening.hpp"

namespace sparewright::survey {

// The network where the iteration ended.
struct Point {
  Point(Equations::All what, std::vector<double> by, const Whitening& whitening)
      : all(std::move(what)), misfit(std::move(by)), weighted(whitening, all.slopes, all.fitted, misfit) {}

  Equations::All all;
  std::vector<double> misfit;  // readings less fitted
  Weighted weighted;           // refers to all.slopes
};

struct Solution {
  std::vector<double> values;
  std::unique_ptr<Point> point;  // where the last step was taken from: within kSettled of the values
  int steps = 0;
};

// Settled: the next undamped step would move no fitted reading by more than this part of its standard
// uncertainty (or by more than rounding).
inline constexpr double kSettled = 1e-10;

// From cold_start; where that does not settle, or settles on a poor fit after a guess, from a few other
// guesses, and the best fit of those counts. Fails as adjust() does.
[[nodiscard]] base::Result<Solution> solve(const Equations& equations, const Whitening& whitening);

}  // namespace sparewright::survey
