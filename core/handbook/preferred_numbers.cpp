#include "core/handbook/preferred_numbers.hpp"

#include <array>
#include <cmath>

#include <fmt/format.h>

namespace sparewright::handbook {
namespace {

// R40; every second number is R20, every fourth R10, every eighth R5. Source: kPreferredNumbers.
constexpr std::array kR40Numbers{1.00, 1.06, 1.12, 1.18, 1.25, 1.32, 1.40, 1.50, 1.60, 1.70,
                                 1.80, 1.90, 2.00, 2.12, 2.24, 2.36, 2.50, 2.65, 2.80, 3.00,
                                 3.15, 3.35, 3.55, 3.75, 4.00, 4.25, 4.50, 4.75, 5.00, 5.30,
                                 5.60, 6.00, 6.30, 6.70, 7.10, 7.50, 8.00, 8.50, 9.00, 9.50};

constexpr double kSame = 1e-9;  // of the number
constexpr int kDecades = 9;     // either way

}  // namespace

std::vector<double> preferred_numbers(RenardSeries series) {
  const std::size_t step = kR40Numbers.size() / static_cast<std::size_t>(series);
  std::vector<double> out;
  for (std::size_t i = 0; i < kR40Numbers.size(); i += step)
    out.push_back(kR40Numbers.at(i));
  return out;
}

base::Result<PreferredAround> preferred_around(double value, RenardSeries series) {
  const std::string found = fmt::format("{}", value);
  if (!(value > 0.0)) {
    return base::fail(base::Code::kSizeNotPositive, found, "more than zero", "a preferred number");
  }
  if (value < std::pow(10.0, -kDecades) || value > std::pow(10.0, kDecades)) {
    return base::fail(base::Code::kNumberTooLarge, found, "1e-9 to 1e9", "a preferred number");
  }
  PreferredAround around;
  // A decade to either side is searched as well, so that the logarithm may be off by one.
  const int decade = static_cast<int>(std::floor(std::log10(value)));
  for (int power = decade - 1; power <= decade + 1; ++power) {
    for (const double number : preferred_numbers(series)) {
      const double one = number * std::pow(10.0, power);
      if (one <= value * (1.0 + kSame)) around.at_or_below = one;
      if (one >= value * (1.0 - kSame) && around.at_or_above == 0.0) around.at_or_above = one;
    }
  }
  return around;
}

}  // namespace sparewright::handbook
