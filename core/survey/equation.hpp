// The equation of a reading: what it would read if the dimensions were known.
#pragma once

#include <span>
#include <string>

#include "core/base/result.hpp"
#include "core/formula/expression.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::survey {

// The equation in words that expressions are written in: the row of ways.hpp with the names put in, an expression as
// written. A dimension that is a radius is taken whole where half of a round one is wanted, and doubled where the faces
// touch it across.
//
// Fails with kValueNotAccepted where `of` has another count of names or a count is missing,
// kNameUnknown where one is not a
// dimension, kKindsDoNotMix where one is no diameter, radius or length where that is wanted.
[[nodiscard]] base::Result<std::string> equation_text(const Reading& reading,
                                                      std::span<const Dimension> dimensions);

// The same, read and with its units checked against the kind of the repeats (at least one). Fails also as
// formula::Expression does; the span is into the expression.
[[nodiscard]] base::Result<formula::Formula> equation_of(const Reading& reading,
                                                         std::span<const Dimension> dimensions,
                                                         quantity::UnitSystem system);

}  // namespace sparewright::survey
