// The values of the unknowns that fit the readings best.
#pragma once

#include <memory>
#include <span>
#include <utility>
#include <vector>

#include "core/base/result.hpp"
#include "core/survey/network.hpp"
#include "core/survey/weighted.hpp"
#include "core/survey/whitening.hpp"

namespace sparewright::survey {

// The network at one set of values.
struct Point {
  Point(Equations::All what, std::vector<double> by, const Whitening& whitening)
      : all(std::move(what)), misfit(std::move(by)), weighted(whitening, all.slopes, all.fitted, misfit) {}

  // At other values, whose slopes are the same but for kSameSlopes of themselves.
  Point(Equations::All what, std::vector<double> by, const Weighted& nearby)
      : all(std::move(what)), misfit(std::move(by)), weighted(nearby) {
    weighted.replace(misfit);
  }

  // After a step so small that the slopes stay as they are.
  void move(std::span<const double> step);

  Equations::All all;
  std::vector<double> misfit;  // readings less fitted
  Weighted weighted;
};

struct Solution {
  std::vector<double> values;
  std::unique_ptr<Point> point;  // at those; its slopes from within kSlopesStay of them
  int steps = 0;
};

// Settled: the next undamped step would move no fitted reading by more than this part of its standard
// uncertainty (or by more than rounding).
inline constexpr double kSettled = 1e-10;

// Slopes stay as they are where no fitted reading moves by more than this part of its standard uncertainty.
inline constexpr double kSlopesStay = 1e-7;

// Slopes that differ by no more than this part of the steepest of their reading are not whitened anew.
inline constexpr double kSameSlopes = 1e-9;

// From cold_start; where that does not settle, or settles on a poor fit after a guess, from a few other
// guesses, and the best fit of those counts. Fails as adjust() does.
[[nodiscard]] base::Result<Solution> solve(const Equations& equations, const Whitening& whitening);

}  // namespace sparewright::survey
