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

  [[nodiscard]] std::vector<double> apply(std::span<const double> readings) const;  // W y
  [[nodiscard]] Matrix apply(const Matrix& slopes) const;                           // W J
  [[nodiscard]] Matrix matrix() const;                                              // W
  [[nodiscard]] bool mended() const;

 private:
  struct Factor;
  std::unique_ptr<Factor> factor_;
};

// The step d that makes |r - A d|^2 + damping * |d scaled|^2 least, the shortest of them where several do.
// slopes A = W J (n x m), misfit r = W (y - f). Scaled: each unknown by the length of its column of A.
[[nodiscard]] std::vector<double> damped_step(const Matrix& slopes, std::span<const double> misfit,
                                              double damping);

// What the readings fix, at one set of values of the unknowns.
struct Determination {
  std::size_t rank = 0;
  std::vector<double> scale;  // m: what each unknown is multiplied by to be a scaled one
  Matrix gaps;    // m x (m - rank): directions the readings do not feel; orthonormal in scaled unknowns
  Matrix slopes;  // m x n: how the unknowns follow the readings. Rows of unknowns with a gap mean nothing.
  Matrix covariance;  // m x m, of the unknowns (with S as mended). The same.
  Matrix
      blunders;  // n x n: row i is what an error of 1 in reading i leaves in the adjusted, whitened misfits
  std::vector<double> weights;  // n: the length of what that error was before adjusting
};
// slopes J, not whitened.
[[nodiscard]] Determination determine(const Matrix& slopes, const Whitening& whitening);

}  // namespace sparewright::survey
