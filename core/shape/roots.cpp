#include "core/shape/roots.hpp"

#include <algorithm>
#include <cmath>

namespace sparewright::shape {
namespace {

double value_at(std::span<const double> c, double x) {
  double sum = 0.0;
  for (std::size_t i = c.size(); i-- > 0;)
    sum = sum * x + c[i];
  return sum;
}

// Where the sign changes between low and high; it does.
double crossing(std::span<const double> c, double low, double high) {
  constexpr int kMostSteps = 200;
  double at_low = value_at(c, low);
  double at_high = value_at(c, high);
  for (int step = 0; step < kMostSteps; ++step) {
    // A secant every other time: fast where the curve is plain, never slower than halving twice as often.
    double middle = low + (high - low) / 2.0;
    if (step % 2 == 1) middle = std::clamp(low - at_low * (high - low) / (at_high - at_low), low, high);
    if (middle <= low || middle >= high) middle = low + (high - low) / 2.0;
    if (middle <= low || middle >= high) break;
    const double here = value_at(c, middle);
    if (here == 0.0) return middle;
    ((here > 0.0) == (at_low > 0.0) ? low : high) = middle;
    ((here > 0.0) == (at_low > 0.0) ? at_low : at_high) = here;
  }
  return low + (high - low) / 2.0;
}

// No root lies further from 0 (Cauchy's bound).
double reach(std::span<const double> c) {
  double most = 0.0;
  for (std::size_t i = 0; i + 1 < c.size(); ++i)
    most = std::max(most, std::abs(c[i] / c.back()));
  return 1.0 + most;
}

}  // namespace

QuadraticRoots::QuadraticRoots(double c, double b, double a) {
  if (a == 0.0) {
    if (b == 0.0) return;
    roots_ = {-c / b};
    count_ = 1;
    return;
  }
  const double half = b / 2.0;
  const double discriminant = half * half - a * c;
  if (discriminant < 0.0) return;
  const double q = half >= 0.0 ? -(half + std::sqrt(discriminant)) : std::sqrt(discriminant) - half;
  count_ = 1;
  if (q == 0.0) return;  // 0 it is
  const double one = q / a;
  const double other = c / q;  // the sum without cancellation
  roots_ = {std::min(one, other), std::max(one, other)};
  count_ = 2;
}

std::vector<double> real_roots(std::span<const double> coefficients) {
  while (!coefficients.empty() && coefficients.back() == 0.0)
    coefficients = coefficients.first(coefficients.size() - 1);
  if (coefficients.size() < 2) return {};
  if (coefficients.size() <= 3) {
    const QuadraticRoots roots(coefficients[0], coefficients[1],
                               coefficients.size() == 3 ? coefficients[2] : 0.0);
    return {roots.begin(), roots.end()};
  }
  std::vector<double> derivative;
  for (std::size_t i = 1; i < coefficients.size(); ++i)
    derivative.push_back(static_cast<double>(i) * coefficients[i]);
  const double far = reach(coefficients);
  std::vector<double> ends{-far};
  for (const double turning : real_roots(derivative))
    ends.push_back(turning);
  ends.push_back(far);
  std::vector<double> roots;
  for (std::size_t i = 0; i + 1 < ends.size(); ++i) {
    const double low = value_at(coefficients, ends[i]);
    const double high = value_at(coefficients, ends[i + 1]);
    if (low == 0.0) roots.push_back(ends[i]);
    if (low != 0.0 && high != 0.0 && (low > 0.0) != (high > 0.0))
      roots.push_back(crossing(coefficients, ends[i], ends[i + 1]));
  }
  return roots;
}

}  // namespace sparewright::shape
