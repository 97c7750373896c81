#include "core/ledger/student_t.hpp"

#include <cmath>
#include <limits>

namespace sparewright::ledger {
namespace {

// The continued fraction of the incomplete beta function, DLMF 8.17.22.
double beta_fraction(double a, double b, double x) {
  constexpr double kTiny = 1e-300;
  constexpr int kMostTerms = 10000;
  const auto kept_from_zero = [](double v) { return std::abs(v) < kTiny ? kTiny : v; };
  double c = 1.0;
  double d = 1.0 / kept_from_zero(1.0 - (a + b) * x / (a + 1.0));
  double h = d;
  for (int m = 1; m < kMostTerms; ++m) {
    const double even = m * (b - m) * x / ((a + 2.0 * m - 1.0) * (a + 2.0 * m));
    const double odd = -(a + m) * (a + b + m) * x / ((a + 2.0 * m) * (a + 2.0 * m + 1.0));
    double step = 1.0;
    for (const double term : {even, odd}) {
      d = 1.0 / kept_from_zero(1.0 + term * d);
      c = kept_from_zero(1.0 + term / c);
      h *= c * d;
      step = c * d;
    }
    if (std::abs(step - 1.0) < 1e-15) break;
  }
  return h;
}

// The regularised incomplete beta function I_x(a, b).
double incomplete_beta(double a, double b, double x) {
  if (x <= 0.0) return 0.0;
  if (x >= 1.0) return 1.0;
  const double front =
      std::exp(std::lgamma(a + b) - std::lgamma(a) - std::lgamma(b) + a * std::log(x) + b * std::log1p(-x));
  if (x < (a + 1.0) / (a + b + 2.0)) return front * beta_fraction(a, b, x) / a;
  return 1.0 - front * beta_fraction(b, a, 1.0 - x) / b;
}

// Beyond this the distribution is the normal one to the accuracy promised.
constexpr double kNormalFrom = 1e12;

}  // namespace

double student_t_inside(double t, double degrees_of_freedom) {
  if (degrees_of_freedom > kNormalFrom) return std::erf(t / std::sqrt(2.0));
  // DLMF 8.17: P(|T| <= t) = I_x(1/2, nu/2) with x = t^2 / (nu + t^2).
  return incomplete_beta(0.5, degrees_of_freedom / 2.0, t * t / (degrees_of_freedom + t * t));
}

double student_t_two_sided(double probability, double degrees_of_freedom) {
  double low = 0.0;
  double high = 1.0;
  while (student_t_inside(high, degrees_of_freedom) < probability && high < 1e15) high *= 2.0;
  for (int i = 0; i < 200 && high - low > std::numeric_limits<double>::epsilon() * high; ++i) {
    const double middle = low + (high - low) / 2.0;
    (student_t_inside(middle, degrees_of_freedom) < probability ? low : high) = middle;
  }
  return low + (high - low) / 2.0;
}

}  // namespace sparewright::ledger
