#include "core/survey/told_formula.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "core/base/nearest.hpp"

namespace sparewright::survey {

using base::Code;
using base::fail;
using quantity::Kind;

base::Result<formula::Formula> told_formula(const ToldReading& told, std::span<const Dimension> dimensions,
                                            quantity::UnitSystem system) {
  std::vector<std::string> known;
  std::optional<Kind> kind;
  for (const Dimension& dimension : dimensions) {
    known.push_back(dimension.name);
    if (dimension.name == told.dimension) kind = dimension.kind;
  }
  if (!kind)
    return fail(Code::kNameUnknown, told.dimension, base::known_words(told.dimension, known), "dimension");
  const bool is_angle = told.kind == Kind::kAngle;
  const bool is_other_radius = (told.kind == Kind::kRadius) != (*kind == Kind::kRadius);
  const bool is_length = quantity::is_length_like(*kind) && !is_other_radius;
  if (is_angle ? *kind != Kind::kAngle : !is_length)
    return fail(Code::kKindsDoNotMix, quantity::name_of(*kind), quantity::name_of(told.kind), told.dimension);
  const auto expression = formula::Expression::read(told.dimension);
  if (!expression) return fail(expression.error());
  return expression->bind([&](std::string_view) { return kind; }, *kind, system, known);
}

}  // namespace sparewright::survey
