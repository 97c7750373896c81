// The linear algebra of a weighted adjustment. Its library stays in whitening.cpp.
//
// Notation: n readings y, covariance S (n x n), J the slopes of what they should read by the m unknowns
// (n x m), W with W S W' = 1 ("whitening": W times the readings are independent, each of standard uncertainty 1).
// Source: G. H. Golub, C. F. Van Loan, Matrix Computations, 3rd ed., 1996: rank-deficient least squares by a
// complete orthogonal decomposition, weighting by a Cholesky factor (chapters 5 and 4; from memory).
#pragma once

#include <cstddef>
#include <memory>
#include <span>
#include <vector>

#include "core/survey/matrix.hpp"
#include "core/survey/traces.hpp"

namespace sparewright::survey {

// Below this share of the largest pivot a direction counts as not fixed by the readings. The slopes of each
// reading, then those by each unknown, are scaled to length 1 first: how fine a reading is, and whether
// millimetres or radians are meant, has nothing to do with what is fixed.
inline constexpr double kRankTolerance = 1e-10;

// What a reading keeps to itself where the covariance leaves it nothing of its own: this part of its standard
// uncertainty, or, where it has none at all, this part of the least that any other has. It shifts other results
// by the square of it.
inline constexpr double kOwnPart = 1e-6;

class Whitening {
 public:
  // covariance: n x n, symmetric, positive semi-definite; n may be 0. Readings that are exact, or copies of
  // one another, are given kOwnPart as above (`mended` says so), so that every covariance can be used.
  explicit Whitening(const Matrix& covariance);
  ~Whitening();
  Whitening(Whitening&&) noexcept;
  Whitening& operator=(Whitening&&) noexcept;
  Whitening(const Whitening&) = delete;
  Whitening& operator=(const Whitening&) = delete;

  [[nodiscard]] Matrix weights() const;  // inverse(S), n x n
  [[nodiscard]] bool mended() const;

 private:
  friend class Weighted;
  struct Factor;
  std::unique_ptr<Factor> factor_;
};

// What the readings fix, at one set of values of the unknowns.
struct Determination {
  std::size_t rank = 0;
  std::vector<double> scale;  // m: what each unknown is multiplied by to be a scaled one
  Matrix gaps;    // m x (m - rank): directions the readings do not feel; orthonormal in scaled unknowns
  Matrix slopes;  // m x n: how the unknowns follow the readings. Rows of unknowns with a gap mean nothing.
  Matrix covariance;  // m x m, of the unknowns (with S as mended). The same.
  Traces traces;      // of the readings, with the misfits of this set of values
};

// The network at one set of values, whitened: A = W J, r = W (y - f).
class Weighted {
 public:
  // slopes: J, n x m; fitted: f; misfit: y - f. Keeps a reference to the whitening and to the slopes.
  Weighted(const Whitening& whitening, const Matrix& slopes, std::span<const double> fitted,
           std::span<const double> misfit);
  ~Weighted();
  Weighted(Weighted&&) noexcept;
  Weighted& operator=(Weighted&&) noexcept;
  Weighted(const Weighted&) = delete;
  Weighted& operator=(const Weighted&) = delete;

  [[nodiscard]] double cost() const;      // |r|^2
  [[nodiscard]] double rounding() const;  // what rounding may put into r, as a length

  // The step d that makes |r - A d|^2 + damping * |d scaled|^2 least, the shortest of them where several do. Scaled: each
  // unknown by the length of its column of A.
  [[nodiscard]] std::vector<double> step(double damping) const;

  // How far a step moves the fitted readings, in standard uncertainties.
  [[nodiscard]] double reach(std::span<const double> step) const;

  [[nodiscard]] Determination determine() const;

 private:
  struct Parts;
  std::unique_ptr<Parts> parts_;
};

}  // namespace sparewright::survey
