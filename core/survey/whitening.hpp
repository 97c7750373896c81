// The linear algebra of a weighted adjustment. Its library stays in whitening.cpp and weighted.cpp.
//
// Notation: n readings y, covariance S (n x n), J the slopes of what they should read by the m unknowns
// (n x m), W with W S W' = 1 ("whitening": W times the readings are independent, each of standard uncertainty 1).
// Source: G. H. Golub, C. F. Van Loan, Matrix Computations, 3rd ed., 1996: weighting by a Cholesky factor (chapter 4; from
// memory).
#pragma once

#include <cstddef>
#include <vector>

#include "core/survey/matrix.hpp"

namespace sparewright::survey {

// What a reading keeps to itself where the covariance leaves it nothing of its own: this part of its standard
// uncertainty, or, where it has none at all, this part of the least that any other has. It shifts other results
// by the square of it.
inline constexpr double kOwnPart = 1e-6;

class Whitening {
 public:
  // Readings that share causes, directly or by way of others: W leaves different groups apart.
  struct Group {
    std::vector<std::size_t> readings;  // rising
    Matrix white;                       // their part of W, lower triangular
  };

  // covariance: n x n, symmetric, positive semi-definite; n may be 0. Readings that are exact, or copies of
  // one another, are given kOwnPart as above (`mended` says so), so that every covariance can be used.
  explicit Whitening(const Matrix& covariance);

  void apply(Matrix& rows) const;  // W times it; n rows
  [[nodiscard]] bool mended() const { return mended_; }
  [[nodiscard]] const std::vector<Group>& groups() const { return groups_; }

 private:
  std::vector<Group> groups_;
  bool mended_ = false;
};

}  // namespace sparewright::survey
