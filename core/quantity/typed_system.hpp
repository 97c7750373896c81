// The system of units a length was typed in.
#pragma once

#include "core/quantity/typed.hpp"

namespace sparewright::quantity {

// Inch for inches, thou, microinches and feet; metric for every other unit.
[[nodiscard]] inline UnitSystem system_of(const Typed& length) {
  const bool is_inch = length.unit == unit::inch || length.unit == unit::thou ||
                       length.unit == unit::microinch || length.unit == unit::foot;
  return is_inch ? UnitSystem::kInch : UnitSystem::kMetric;
}

}  // namespace sparewright::quantity
