// The network at one set of values, whitened: the step from there that fits the readings better, and what the readings fix.
//
// Notation as in whitening.hpp; A = W J, r = W (y - f).
// Source: G. H. Golub, C. F. Van Loan, Matrix Computations, 3rd ed., 1996: rank-deficient least squares by a complete
// orthogonal decomposition, normal equations where the columns lie well apart (chapter 5; from memory).
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "core/survey/matrix.hpp"
#include "core/survey/traces.hpp"
#include "core/survey/whitening.hpp"

namespace sparewright::survey {

// Below this share of the largest pivot a direction counts as not fixed by the readings. The slopes of each
// reading, then those by each unknown, are scaled to length 1 first: how fine a reading is, and whether
// millimetres or radians are meant, has nothing to do with what is fixed.
inline constexpr double kRankTolerance = 1e-10;

// What the readings fix, at one set of values of the unknowns.
struct Determination {
  std::size_t rank = 0;
  std::vector<double>
      scale;          // m: what each unknown is multiplied by to be a scaled one; where there is a gap
  Matrix gaps;        // m x (m - rank): directions the readings do not feel; orthonormal in scaled unknowns
  Matrix covariance;  // m x m, of the unknowns (with S as mended). Rows of unknowns with a gap mean nothing.
  Matrix back;        // B, rank x m: covariance = B' B, and the columns of A B' are orthonormal. The same.
  Matrix followed;    // A B', n x rank, where rounding would spoil the product; else empty
  std::vector<double> weights;  // n: the odds that an error of 1 in a reading alone comes to
};

// How the unknowns follow the readings, and what they cannot follow.
struct Following {
  Matrix slopes;  // m x n. Rows of unknowns with a gap mean nothing.
  Traces traces;  // of the readings, with the misfits of this set of values
};

class Weighted {
 public:
  // slopes: J, n x m; fitted: f; misfit: y - f. It keeps a reference to the whitening.
  Weighted(const Whitening& whitening, const Matrix& slopes, std::span<const double> fitted,
           std::span<const double> misfit);

  [[nodiscard]] double cost() const { return cost_; }          // |r|^2
  [[nodiscard]] double rounding() const { return rounding_; }  // what rounding may put into r, as a length

  // The step d that makes |r - A d|^2 + damping * |d scaled|^2 least, the shortest of them where several do. Scaled: each
  // unknown by the length of its column of A. Where the columns lie well apart it comes from the normal equations, good to
  // kPlainError of itself.
  [[nodiscard]] std::vector<double> step(double damping) const;

  // How far a step moves the fitted readings, in standard uncertainties.
  [[nodiscard]] double reach(std::span<const double> step) const;

  // As at values so near that the slopes are the same, with the misfits there.
  void replace(std::span<const double> misfit);

  // As at the values after a step so small that the slopes stay as they are.
  void move(std::span<const double> step);

  // slopes: J again.
  [[nodiscard]] Determination determine(const Matrix& slopes) const;
  [[nodiscard]] Following follow(const Determination& determination) const;

 private:
  void factor();
  [[nodiscard]] std::vector<double> plain_step() const;
  [[nodiscard]] Determination determine_plain(const Matrix& slopes) const;
  [[nodiscard]] Determination determine_by_rank(const Matrix& slopes) const;

  const Whitening* whitening_;
  std::size_t unknowns_;
  Matrix white_;                 // n x (m + 2): A, r and W f(x)
  std::vector<double> lengths_;  // of the columns of A; 1 where it is nothing
  Matrix factor_;                // L with L L' = A' A, of columns of length 1
  bool is_plain_ = false;        // the columns lie well apart, so that L is good
  double cost_ = 0.0;
  double rounding_ = 0.0;
};

// What the normal equations may lose: rounding over the least pivot they are used with.
inline constexpr double kLeastPivot = 1e-4;
inline constexpr double kPlainError = 1e-11;

}  // namespace sparewright::survey
