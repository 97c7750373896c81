// A fraction kept exact: turns of a crank, gear trains, pitches in millimetres.
#pragma once

#include <compare>
#include <cstdint>

namespace sparewright::handbook {

// Always reduced, the bottom more than zero. Sums and products are worked out in 128 bits and must fit 64
// bits again when reduced: an assertion, since every maker of a Ratio here bounds what goes in.
class Ratio {
 public:
  constexpr Ratio() = default;  // 0
  // bottom must not be zero.
  [[nodiscard]] static Ratio of(std::int64_t top, std::int64_t bottom = 1);

  [[nodiscard]] std::int64_t top() const { return top_; }
  [[nodiscard]] std::int64_t bottom() const { return bottom_; }
  [[nodiscard]] double value() const { return static_cast<double>(top_) / static_cast<double>(bottom_); }
  [[nodiscard]] bool is_whole() const { return bottom_ == 1; }
  // The greatest whole number that is not more.
  [[nodiscard]] std::int64_t floor() const;
  // The nearest whole number, halves upwards.
  [[nodiscard]] std::int64_t nearest_whole() const;

  friend Ratio operator+(Ratio a, Ratio b);
  friend Ratio operator-(Ratio a, Ratio b);
  friend Ratio operator*(Ratio a, Ratio b);
  friend Ratio operator/(Ratio a, Ratio b);  // b must not be zero
  friend Ratio operator-(Ratio a) { return Ratio(-a.top_, a.bottom_); }
  friend bool operator==(const Ratio&, const Ratio&) = default;
  friend std::strong_ordering operator<=>(const Ratio& a, const Ratio& b);

 private:
  constexpr Ratio(std::int64_t top, std::int64_t bottom) : top_(top), bottom_(bottom) {}
  std::int64_t top_ = 0;
  std::int64_t bottom_ = 1;
};

[[nodiscard]] inline Ratio magnitude(Ratio a) {
  return a < Ratio() ? -a : a;
}

// How many times `step` is nearest to value, halves upwards; step more than zero, the answer within 64 bits.
// Their quotient as a Ratio may be too fine for 64 bits.
[[nodiscard]] std::int64_t nearest_multiple(const Ratio& value, const Ratio& step);

// The first convergent of value's continued fraction that lies within tolerance of it: 0.125 gives 1/8,
// 1.953846153846154 (25.4/13) gives 127/65. Two fractions with bottoms up to b lie at least 1/b^2 apart, so a
// fraction whose double was handed in comes back as itself where tolerance is less than half of that.
// |value| must be under 1e6 and tolerance at least 1e-15 |value|.
[[nodiscard]] Ratio ratio_near(double value, double tolerance);

}  // namespace sparewright::handbook
