// A value that carries its slopes: forward differentiation, as wide as the argument list.
//
// Formulas of the trade are generic functions; run on double they give the number, run on Dual<N> also its
// slopes:
//   auto clearance = [](auto bore, auto pin) { return bore - pin; };
//   auto y = with_slopes(clearance, 15.90, 15.87);   // y.value = 0.03, y.slopes = {1, -1}
//
// Comparisons look at the value only, so an `if` in a formula takes the branch the value takes; of two equal
// numbers min and max take the first. Where a slope is infinite (sqrt at 0, asin at 1), the slopes by what
// moves the argument are infinite, and those by everything else stay 0.
//
// Source, named from memory: A. Griewank, A. Walther, Evaluating Derivatives, 2nd ed., SIAM 2008, chapter 3
// (forward mode).
#pragma once

#include <array>
#include <cmath>
#include <compare>
#include <cstddef>
#include <utility>

namespace sparewright::formula {

template <std::size_t N>
struct Dual {
  double value = 0.0;
  std::array<double, N> slopes{};

  Dual() = default;
  Dual(double v) : value(v) {}  // NOLINT(google-explicit-constructor): a constant has no slopes
  Dual(double v, const std::array<double, N>& s) : value(v), slopes(s) {}

  // The chain rule: outer value f(value) and outer slope f'(value).
  [[nodiscard]] Dual chained(double outer_value, double outer_slope) const {
    Dual y(outer_value);
    for (std::size_t i = 0; i < N; ++i) {
      if (slopes[i] != 0.0) y.slopes[i] = outer_slope * slopes[i];
    }
    return y;
  }

  friend Dual operator+(const Dual& a, const Dual& b) { return combined(a.value + b.value, a, 1.0, b, 1.0); }
  friend Dual operator-(const Dual& a, const Dual& b) { return combined(a.value - b.value, a, 1.0, b, -1.0); }
  friend Dual operator*(const Dual& a, const Dual& b) {
    return combined(a.value * b.value, a, b.value, b, a.value);
  }
  friend Dual operator/(const Dual& a, const Dual& b) {
    return combined(a.value / b.value, a, 1.0 / b.value, b, -a.value / (b.value * b.value));
  }
  friend Dual operator-(const Dual& a) { return a.chained(-a.value, -1.0); }

  friend bool operator==(const Dual& a, const Dual& b) { return a.value == b.value; }
  friend auto operator<=>(const Dual& a, const Dual& b) { return a.value <=> b.value; }

 private:
  static Dual combined(double v, const Dual& a, double slope_a, const Dual& b, double slope_b) {
    Dual y(v);
    for (std::size_t i = 0; i < N; ++i)
      y.slopes[i] = slope_a * a.slopes[i] + slope_b * b.slopes[i];
    return y;
  }
};

template <std::size_t N>
Dual<N> sqrt(const Dual<N>& x) {
  const double root = std::sqrt(x.value);
  return x.chained(root, 0.5 / root);
}
template <std::size_t N>
Dual<N> sin(const Dual<N>& x) {
  return x.chained(std::sin(x.value), std::cos(x.value));
}
template <std::size_t N>
Dual<N> cos(const Dual<N>& x) {
  return x.chained(std::cos(x.value), -std::sin(x.value));
}
template <std::size_t N>
Dual<N> tan(const Dual<N>& x) {
  const double t = std::tan(x.value);
  return x.chained(t, 1.0 + t * t);
}
template <std::size_t N>
Dual<N> asin(const Dual<N>& x) {
  return x.chained(std::asin(x.value), 1.0 / std::sqrt(1.0 - x.value * x.value));
}
template <std::size_t N>
Dual<N> acos(const Dual<N>& x) {
  return x.chained(std::acos(x.value), -1.0 / std::sqrt(1.0 - x.value * x.value));
}
template <std::size_t N>
Dual<N> atan(const Dual<N>& x) {
  return x.chained(std::atan(x.value), 1.0 / (1.0 + x.value * x.value));
}
template <std::size_t N>
Dual<N> log(const Dual<N>& x) {
  return x.chained(std::log(x.value), 1.0 / x.value);
}
template <std::size_t N>
Dual<N> exp(const Dual<N>& x) {
  const double e = std::exp(x.value);
  return x.chained(e, e);
}
template <std::size_t N>
Dual<N> pow(const Dual<N>& x, double exponent) {
  const double slope = exponent == 0.0 ? 0.0 : exponent * std::pow(x.value, exponent - 1.0);
  return x.chained(std::pow(x.value, exponent), slope);
}
template <std::size_t N>
Dual<N> abs(const Dual<N>& x) {
  return x.value < 0 ? -x : x;
}
template <std::size_t N>
Dual<N> min(const Dual<N>& a, const Dual<N>& b) {
  return b < a ? b : a;
}
template <std::size_t N>
Dual<N> max(const Dual<N>& a, const Dual<N>& b) {
  return a < b ? b : a;
}

// What a formula gives at a point: its value and one slope for each argument.
template <std::size_t N>
struct ValueAndSlopes {
  double value = 0.0;
  std::array<double, N> slopes{};
};

namespace detail {

template <typename Formula, typename Values, std::size_t... I>
auto with_slopes_of(const Formula& formula, const Values& values, std::index_sequence<I...> /*indices*/) {
  constexpr std::size_t kWidth = sizeof...(I);
  std::array<Dual<kWidth>, kWidth> arguments;
  for (std::size_t i = 0; i < kWidth; ++i) {
    arguments[i].value = values[i];
    arguments[i].slopes[i] = 1.0;
  }
  const Dual<kWidth> y = formula(arguments[I]...);
  return ValueAndSlopes<kWidth>{y.value, y.slopes};
}

}  // namespace detail

// The formula at the values, and its slope by each of them.
template <typename Formula, typename... Values>
[[nodiscard]] auto with_slopes(const Formula& formula, Values... values) {
  const std::array<double, sizeof...(Values)> list{values...};
  return detail::with_slopes_of(formula, list, std::make_index_sequence<sizeof...(Values)>());
}

}  // namespace sparewright::formula
