// The circle, the straight line and the plane that lie nearest to touches, by their distances square to it.
//
// Notation: n touches p_i, e_i how far touch i lies off (positive outwards, away from the middle of a circle; along the
// side the tip stands on for a line or a plane), J the slopes of e by the k numbers found. The sum of e_i^2 is least.
// Gauss-Newton from an algebraic start. Moving touch i by d along its normal moves the numbers by
// -inverse(J'J) J_i' d, to first order.
// Sources: W. Gander, G. H. Golub, R. Strebel, Least-squares fitting of circles and ellipses, BIT 34 (1994) 558-578
// (geometric fit, Gauss-Newton); N. Chernov, Circular and Linear Regression, 2010, chapter 5 (Taubin's start; from memory).
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/survey/matrix.hpp"

namespace sparewright::survey {

inline constexpr std::size_t kMostTouches = 1000;

// What all fits have. Numbers: x, y, radius of a circle; at and one rise (or two) of a line (a plane).
struct OrthogonalFit {
  std::vector<double> off;  // e_i
  Matrix slopes;            // numbers x n: how each follows a touch moved outwards by 1
  int steps = 0;

  // Most less least of what the touches lie off: what is left of the form. 0 where there are no more touches than numbers.
  [[nodiscard]] double form_error() const;
  [[nodiscard]] std::size_t most() const;   // the touch that lies furthest out
  [[nodiscard]] std::size_t least() const;  // and furthest in
  [[nodiscard]] int spare() const;          // touches more than needed
  // The part of a touch's error that shows in what it lies off itself: 1 - (the touch's leverage). J_i is row i of J.
  [[nodiscard]] double redundancy(std::size_t touch) const;
  // Of the numbers, for touches of standard uncertainty 1 along their normals: inverse(J'J).
  [[nodiscard]] Matrix covariance() const;

  Matrix equation_slopes;  // J, n x numbers
};

// What becomes of the touches: their distances as they lie, and the slopes by the numbers found (n x numbers).
[[nodiscard]] OrthogonalFit orthogonal_fit(std::vector<double> off, Matrix equation_slopes);

inline constexpr double kFitError = 1e-9;

// --- for the fits of this room
// What is fixed: the least singular value of J over the largest, columns scaled to length 1. Places typed to 1e-4 of their
// extent in one line leave less than this of rounding.
inline constexpr double kFitRank = 1e-9;
[[nodiscard]] bool fixes(const Matrix& slopes);
// The step d that makes |off + J d| least.
[[nodiscard]] std::vector<double> step_of(const Matrix& slopes, std::span<const double> off);
[[nodiscard]] base::Failure touches_too_few(std::string subject, std::string wanted);

}  // namespace sparewright::survey
