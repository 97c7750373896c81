#include "core/handbook/sine_bar.hpp"

#include <fmt/format.h>

namespace sparewright::handbook {
namespace {

using quantity::Angle;
using quantity::Length;
namespace unit = quantity::unit;

tl::unexpected<base::Failure> not_positive(std::string_view what, const std::string& found) {
  return base::fail(base::Code::kSizeNotPositive, found, "more than 0", what);
}

std::string shown(Length length) {
  return fmt::format("{:.6g} mm", length.in(unit::millimetre));
}

}  // namespace

base::Result<SineBarSetting> sine_bar_setting(Length bar, Angle angle, const GaugeBlockSet& set,
                                              std::optional<Length> wear) {
  if (!(bar > Length())) return not_positive("the length of the sine bar", shown(bar));
  const std::string degrees = fmt::format("{:.6g} deg", angle.in(unit::degree));
  if (!(angle > Angle())) return not_positive("the angle of the sine bar", degrees);
  if (angle > kMostSineBarAngle) {
    return base::fail(base::Code::kValueNotAccepted, degrees,
                      "up to 60 deg; set the complement from a square for more", "the angle of the sine bar");
  }
  SineBarSetting setting;
  setting.stack = Length::from_base(sine_bar_stack_mm(bar.base(), angle.base()));
  auto stacks = gauge_stacks(set, setting.stack, wear, 1);
  if (!stacks) return tl::unexpected(stacks.error());
  setting.blocks = std::move(stacks->front());
  setting.angle = Angle::from_base(sine_bar_angle_rad(bar.base(), setting.blocks.length.base()));
  setting.error = setting.angle - angle;
  return setting;
}

base::Result<Angle> sine_bar_angle(Length bar, Length stack) {
  if (!(bar > Length())) return not_positive("the length of the sine bar", shown(bar));
  if (!(stack > Length())) return not_positive("the stack", shown(stack));
  if (stack > bar) {
    return base::fail(base::Code::kValueNotAccepted, shown(stack),
                      "up to the length of the bar, " + shown(bar), "the stack");
  }
  return Angle::from_base(sine_bar_angle_rad(bar.base(), stack.base()));
}

}  // namespace sparewright::handbook
