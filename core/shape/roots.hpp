// The real roots of polynomials of small degree.
#pragma once

#include <array>
#include <cstddef>
#include <span>
#include <vector>

namespace sparewright::shape {

// Rising. coefficients[i] belongs to x^i; leading ones that are 0 count for nothing. A root where the polynomial only
// touches 0 may be given or not. Accuracy: to the last bits of where the polynomial, as computed, changes its sign.
//
// Between two roots of the derivative a polynomial crosses 0 once at most: these are found first, in the same way, and
// bisection with secants closes in on each crossing.
[[nodiscard]] std::vector<double> real_roots(std::span<const double> coefficients);

// Those of a x^2 + b x + c, the same without taking room anywhere; a may be 0.
class QuadraticRoots {
 public:
  QuadraticRoots(double c, double b, double a);

  [[nodiscard]] const double* begin() const { return roots_.data(); }
  [[nodiscard]] const double* end() const { return roots_.data() + count_; }

 private:
  std::array<double, 2> roots_{};
  std::size_t count_ = 0;
};

}  // namespace sparewright::shape
