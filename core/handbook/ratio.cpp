#include "core/handbook/ratio.hpp"

#include <cassert>
#include <cmath>
#include <limits>

namespace sparewright::handbook {
namespace {

__extension__ using Wide = __int128;

struct Reduced {
  std::int64_t top = 0;
  std::int64_t bottom = 1;
};

Reduced reduced(Wide top, Wide bottom) {
  assert(bottom != 0);
  if (bottom < 0) {
    top = -top;
    bottom = -bottom;
  }
  Wide a = top < 0 ? -top : top;
  for (Wide b = bottom; b != 0;) {
    const Wide rest = a % b;
    a = b;
    b = rest;
  }
  top /= a;
  bottom /= a;
  [[maybe_unused]] constexpr Wide kMost = std::numeric_limits<std::int64_t>::max();
  assert(top <= kMost && top >= -kMost && bottom <= kMost);
  return {static_cast<std::int64_t>(top), static_cast<std::int64_t>(bottom)};
}

}  // namespace

Ratio Ratio::of(std::int64_t top, std::int64_t bottom) {
  const Reduced r = reduced(top, bottom);
  return {r.top, r.bottom};
}

std::int64_t Ratio::floor() const {
  const std::int64_t toward_zero = top_ / bottom_;
  return top_ < 0 && toward_zero * bottom_ != top_ ? toward_zero - 1 : toward_zero;
}

std::int64_t Ratio::nearest_whole() const {
  return (*this + Ratio::of(1, 2)).floor();
}

Ratio operator+(Ratio a, Ratio b) {
  const Reduced r = reduced(Wide{a.top_} * b.bottom_ + Wide{b.top_} * a.bottom_, Wide{a.bottom_} * b.bottom_);
  return {r.top, r.bottom};
}

Ratio operator-(Ratio a, Ratio b) {
  return a + (-b);
}

Ratio operator*(Ratio a, Ratio b) {
  const Reduced r = reduced(Wide{a.top_} * b.top_, Wide{a.bottom_} * b.bottom_);
  return {r.top, r.bottom};
}

Ratio operator/(Ratio a, Ratio b) {
  const Reduced r = reduced(Wide{a.top_} * b.bottom_, Wide{a.bottom_} * b.top_);
  return {r.top, r.bottom};
}

std::strong_ordering operator<=>(const Ratio& a, const Ratio& b) {
  return Wide{a.top_} * b.bottom_ <=> Wide{b.top_} * a.bottom_;
}

std::int64_t nearest_multiple(const Ratio& value, const Ratio& step) {
  // floor(value/step + 1/2)
  const Wide top = Wide{value.top()} * step.bottom();
  const Wide bottom = Wide{value.bottom()} * step.top();
  const Wide twice = 2 * top + bottom;
  const Wide whole = twice / (2 * bottom);
  return static_cast<std::int64_t>(twice < 0 && whole * 2 * bottom != twice ? whole - 1 : whole);
}

Ratio ratio_near(double value, double tolerance) {
  assert(std::abs(value) < 1e6 && tolerance > 0.0);
  const double wanted = std::abs(value);
  std::int64_t top = 1;
  std::int64_t bottom = 0;
  std::int64_t top_before = 0;
  std::int64_t bottom_before = 1;
  double rest = wanted;
  for (;;) {
    const auto term = static_cast<std::int64_t>(std::floor(rest));
    const std::int64_t next_top = term * top + top_before;
    const std::int64_t next_bottom = term * bottom + bottom_before;
    top_before = top;
    bottom_before = bottom;
    top = next_top;
    bottom = next_bottom;
    const double found = static_cast<double>(top) / static_cast<double>(bottom);
    const double left = rest - std::floor(rest);
    if (std::abs(found - wanted) <= tolerance || left <= 0.0) break;
    rest = 1.0 / left;
    if (rest > 1e9) break;  // the digits of a double are used up
  }
  return Ratio::of(value < 0.0 ? -top : top, bottom);
}

}  // namespace sparewright::handbook
