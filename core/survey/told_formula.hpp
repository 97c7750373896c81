// What touches tell of a dimension, as an equation.
#pragma once

#include <span>

#include "core/base/result.hpp"
#include "core/formula/expression.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::survey {

// The dimension itself; a diameter that is told of a length, or a length of a diameter, is it as it stands. Fails with
// kNameUnknown, and with kKindsDoNotMix where an angle meets a length or a radius a diameter.
[[nodiscard]] base::Result<formula::Formula> told_formula(const ToldReading& told,
                                                          std::span<const Dimension> dimensions,
                                                          quantity::UnitSystem system);

}  // namespace sparewright::survey
