#include "core/survey/chi_square.hpp"

#include <cmath>
#include <limits>

namespace sparewright::survey {
namespace {

// A step this small against the answer is only rounding.
constexpr double kSettledPart = 1e-14;

}  // namespace

double chi_square_below(double x, int degrees_of_freedom) {
  if (x <= 0.0) return 0.0;
  const double a = degrees_of_freedom / 2.0;
  const double z = x / 2.0;
  // P(a, z) = z^a e^-z / Gamma(a + 1) * (1 + z/(a+1) + z^2/((a+1)(a+2)) + ...), DLMF 8.7.1 with 8.2.4.
  const double front = std::exp(a * std::log(z) - z - std::lgamma(a + 1.0));
  double term = 1.0;
  double sum = 1.0;
  for (double k = 1.0; term > sum * std::numeric_limits<double>::epsilon() / 4.0; k += 1.0) {
    term *= z / (a + k);
    sum += term;
    if (!std::isfinite(sum)) return 1.0;  // far out in the tail
  }
  return std::fmin(1.0, front * sum);
}

double chi_square_limit(double probability, int degrees_of_freedom) {
  double low = 0.0;
  double high = degrees_of_freedom;  // the mean
  while (chi_square_below(high, degrees_of_freedom) < probability)
    high *= 2.0;
  // Newton's steps along the density, halving where one would leave what is known to hold the answer.
  const double a = degrees_of_freedom / 2.0;
  double x = low + (high - low) / 2.0;
  while (high - low > 4.0 * std::numeric_limits<double>::epsilon() * high) {
    const double over = chi_square_below(x, degrees_of_freedom) - probability;
    (over < 0.0 ? low : high) = x;
    const double density = std::exp((a - 1.0) * std::log(x / 2.0) - x / 2.0 - std::lgamma(a)) / 2.0;
    const double next = x - over / density;
    const bool is_inside = next > low && next < high;
    const double before = x;
    x = is_inside ? next : low + (high - low) / 2.0;
    if (is_inside && std::abs(x - before) <= kSettledPart * x) break;
  }
  return x;
}

}  // namespace sparewright::survey
