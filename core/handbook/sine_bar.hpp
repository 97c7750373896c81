// The sine bar: the stack for an angle, and back.
#pragma once

#include <cmath>
#include <optional>

#include "core/base/result.hpp"
#include "core/handbook/gauge_blocks.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

inline constexpr Source kSineBar{
    "stack = bar sin(angle), Handbook of Machining and Metalworking Calculations, ch. 4",
    "https://www.globalspec.com/reference/63915/203279/"
    "chapter-4-measurement-and-calculation-procedures-for-machinists",
    Basis::kPublished};

// bar is the distance of the rolls' centres. 5 in, 30 degrees: 2.5 in.
template <class Scalar>
[[nodiscard]] Scalar sine_bar_stack_mm(const Scalar& bar_mm, const Scalar& angle_rad) {
  using std::sin;
  return bar_mm * sin(angle_rad);
}

// The inverse; the stack must not be longer than the bar.
template <class Scalar>
[[nodiscard]] Scalar sine_bar_angle_rad(const Scalar& bar_mm, const Scalar& stack_mm) {
  using std::asin;
  return asin(stack_mm / bar_mm);
}

// Over 60 degrees a little of stack is a lot of angle: set the complement from a square instead (common practice
// says 45 to 60).
inline constexpr quantity::Angle kMostSineBarAngle = quantity::Angle::of(60.0, quantity::unit::degree);

struct SineBarSetting {
  quantity::Length stack;  // that would be exact
  GaugeStack blocks;       // of the set, with its own error
  quantity::Angle angle;   // the bar then stands at
  quantity::Angle error;   // of that: angle less wanted
};

// Fails with kSizeNotPositive for bar or angle, kValueNotAccepted for an angle over 60 degrees, and as gauge_stacks.
[[nodiscard]] base::Result<SineBarSetting> sine_bar_setting(
    quantity::Length bar, quantity::Angle angle, const GaugeBlockSet& set,
    std::optional<quantity::Length> wear = std::nullopt);

// The angle a stack shows. Fails with kSizeNotPositive, or kValueNotAccepted where the stack is longer than the bar.
[[nodiscard]] base::Result<quantity::Angle> sine_bar_angle(quantity::Length bar, quantity::Length stack);

}  // namespace sparewright::handbook
