#include "core/survey/draws.hpp"

#include <algorithm>
#include <bit>
#include <cassert>
#include <cmath>
#include <numbers>

namespace sparewright::survey {
namespace {

// G. L. Steele, D. Lea, C. H. Flood, OOPSLA 2014 (from memory).
std::uint64_t split_mix(std::uint64_t& state) {
  state += 0x9E3779B97F4A7C15U;
  std::uint64_t z = state;
  z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9U;
  z = (z ^ (z >> 27U)) * 0x94D049BB133111EBU;
  return z ^ (z >> 31U);
}

}  // namespace

Draws::Draws(std::uint64_t seed) {
  for (std::uint64_t& word : state_)
    word = split_mix(seed);
}

double Draws::unit() {
  const std::uint64_t result = std::rotl(state_[1] * 5U, 7) * 9U;
  const std::uint64_t shifted = state_[1] << 17U;
  state_[2] ^= state_[0];
  state_[3] ^= state_[1];
  state_[1] ^= state_[2];
  state_[0] ^= state_[3];
  state_[2] ^= shifted;
  state_[3] = std::rotl(state_[3], 45);
  return (static_cast<double>(result >> 12U) + 0.5) * 0x1p-52;
}

// G. Marsaglia's polar method (from memory).
double Draws::normal() {
  if (has_spare_) {
    has_spare_ = false;
    return spare_;
  }
  double a = 0.0;
  double b = 0.0;
  double square = 0.0;
  do {
    a = 2.0 * unit() - 1.0;
    b = 2.0 * unit() - 1.0;
    square = a * a + b * b;
  } while (square >= 1.0 || square == 0.0);
  const double stretch = std::sqrt(-2.0 * std::log(square) / square);
  spare_ = b * stretch;
  has_spare_ = true;
  return a * stretch;
}

// G. Marsaglia, W. W. Tsang, A simple method for generating gamma variables, ACM TOMS 26 (2000) 363-372 (from memory).
double Draws::gamma(double shape) {
  if (shape < 1.0) return gamma(shape + 1.0) * std::pow(unit(), 1.0 / shape);
  const double d = shape - 1.0 / 3.0;
  const double c = 1.0 / std::sqrt(9.0 * d);
  while (true) {
    const double x = normal();
    const double root = 1.0 + c * x;
    if (root <= 0.0) continue;
    const double v = root * root * root;
    if (std::log(unit()) < 0.5 * x * x + d - d * v + d * std::log(v)) return d * v;
  }
}

double Draws::student(double degrees_of_freedom) {
  double stretch = 1.0;
  fill_stretches({&stretch, 1}, degrees_of_freedom);
  return normal() * stretch;
}

void Draws::fill_stretches(std::span<double> out, double degrees_of_freedom) {
  for (double& one : out)
    one = std::sqrt(degrees_of_freedom / (2.0 * gamma(degrees_of_freedom / 2.0)));
}

void Draws::fill(std::span<double> out, Distribution distribution, double degrees_of_freedom) {
  const double root3 = std::numbers::sqrt3;
  const double root6 = std::sqrt(6.0);
  switch (distribution) {
    case Distribution::kNormal:
      for (double& one : out)
        one = normal();
      return;
    case Distribution::kRectangular:
      for (double& one : out)
        one = root3 * (2.0 * unit() - 1.0);
      return;
    case Distribution::kTriangular:
      for (double& one : out)
        one = root6 * (unit() + unit() - 1.0);
      return;
    case Distribution::kArcsine:
      for (double& one : out)
        one = std::numbers::sqrt2 * std::sin(2.0 * std::numbers::pi * unit());
      return;
    case Distribution::kStudent:
      for (double& one : out)
        one = std::isfinite(degrees_of_freedom) ? student(degrees_of_freedom) : normal();
      return;
  }
}

Spread spread_of(std::vector<double>& draws, double probability) {
  assert(draws.size() >= 2);
  std::sort(draws.begin(), draws.end());
  const auto count = static_cast<double>(draws.size());
  Spread spread;
  const double middle = draws[draws.size() / 2];
  double sum = 0.0;
  for (const double one : draws)
    sum += one - middle;
  spread.mean = middle + sum / count;
  double squares = 0.0;
  for (const double one : draws)
    squares += (one - spread.mean) * (one - spread.mean);
  spread.deviation = std::sqrt(squares / (count - 1.0));
  // JCGM 101:2008, 7.7.2: q of the M draws within, r below where as many are to lie above.
  const auto within = static_cast<std::size_t>(probability * count + 0.5);
  const std::size_t spare = draws.size() - std::min(within, draws.size() - 1);
  const std::size_t below = (spare + 1) / 2 - 1;  // counted from 0
  spread.low = draws[below];
  spread.high = draws[below + draws.size() - spare];
  std::size_t best = 0;
  for (std::size_t r = 0; r < spare; ++r) {
    if (draws[r + draws.size() - spare] - draws[r] < draws[best + draws.size() - spare] - draws[best])
      best = r;
  }
  spread.shortest_low = draws[best];
  spread.shortest_high = draws[best + draws.size() - spare];
  return spread;
}

}  // namespace sparewright::survey
