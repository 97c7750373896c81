#include "core/ledger/student_t.hpp"

#include <cassert>
#include <cmath>
#include <limits>
#include <numbers>

namespace sparewright::ledger {
namespace {

// DLMF clauses in this file are named from memory; the outcome is checked against published tables.
// gamma(b + 1/2) / gamma(b), b > 0: Stirling's series for both (DLMF 5.11.8 with h = 1/2 and h = 0), after
// stepping b up by gamma(x + 1) = x gamma(x) to where the four terms leave less than 1e-15.
double gamma_ratio(double b) {
  constexpr double kLargeEnough = 20.0;
  double steps = 1.0;
  for (; b < kLargeEnough; b += 1.0)
    steps *= b / (b + 0.5);
  const double r = 1.0 / b;
  const double r2 = r * r;
  const double series = r * (-1.0 / 8.0 + r2 * (1.0 / 192.0 + r2 * (-1.0 / 640.0 + r2 * (17.0 / 14336.0))));
  return steps * std::sqrt(b) * std::exp(series);
}

// The regularised incomplete beta function I_x(a, b) for x <= 1/2, by DLMF 8.17.8: the series of 2F1(a + b,
// 1; a + 1; x), all of whose terms are positive. front is x^a (1 - x)^b / B(a, b).
double incomplete_beta(double a, double b, double x, double front) {
  constexpr double kNegligible = 1e-17;
  double term = 1.0 / a;
  double sum = 0.0;
  for (double n = 1.0; term > kNegligible * sum; n += 1.0) {
    sum += term;
    term *= x * (a + b + n - 1.0) / (a + n);
  }
  return front * sum;
}

// The density of |t|.
double density(double t, double degrees_of_freedom) {
  if (std::isinf(degrees_of_freedom)) return std::sqrt(2.0 / std::numbers::pi) * std::exp(-t * t / 2.0);
  const double nu = degrees_of_freedom;
  return 2.0 * gamma_ratio(nu / 2.0) / std::sqrt(nu * std::numbers::pi) *
         std::exp(-(nu + 1.0) / 2.0 * std::log1p(t * t / nu));
}

}  // namespace

double student_t_inside(double t, double degrees_of_freedom) {
  assert(t >= 0.0 && degrees_of_freedom > 0.0);
  if (std::isinf(degrees_of_freedom)) return std::erf(t / std::numbers::sqrt2);
  // P(|T| <= t) = I_x(1/2, nu/2) with x = t^2 / (nu + t^2) (DLMF 8.17; JCGM 100:2008, G.3.2 for the density).
  const double b = degrees_of_freedom / 2.0;
  const double t2 = t * t;
  const double x = t2 / (degrees_of_freedom + t2);
  const double rest = degrees_of_freedom / (degrees_of_freedom + t2);  // 1 - x, to all its digits
  const double front =
      std::sqrt(x / std::numbers::pi) * gamma_ratio(b) * std::exp(-b * std::log1p(t2 / degrees_of_freedom));
  if (x > 0.5) return 1.0 - incomplete_beta(b, 0.5, rest, front);
  if (front == 0.0) return t > 0.0 ? 1.0 : 0.0;  // so far out that nothing is left outside
  return incomplete_beta(0.5, b, x, front);
}

double student_t_two_sided(double probability, double degrees_of_freedom) {
  assert(probability >= 0.0 && probability < 1.0);
  constexpr int kMostSteps = 1000;
  // The probability inside is concave in t, so Newton's steps climb from 0 towards the answer and do not pass
  // it.
  double t = 0.0;
  for (int i = 0; i < kMostSteps; ++i) {
    const double step =
        (probability - student_t_inside(t, degrees_of_freedom)) / density(t, degrees_of_freedom);
    if (!(step > 2.0 * std::numeric_limits<double>::epsilon() * t)) break;
    t += step;
  }
  return t;
}

}  // namespace sparewright::ledger
