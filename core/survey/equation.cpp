#include "core/survey/equation.hpp"

#include <algorithm>
#include <optional>
#include <vector>

#include <fmt/format.h>

#include "core/base/nearest.hpp"

namespace sparewright::survey {
namespace {

using base::Code;
using base::fail;
using base::Result;
using quantity::Kind;

std::vector<std::string> names_of(std::span<const Dimension> dimensions) {
  std::vector<std::string> names;
  for (const Dimension& dimension : dimensions)
    names.push_back(dimension.name);
  return names;
}

std::optional<Kind> kind_of(std::string_view name, std::span<const Dimension> dimensions) {
  const auto found = std::find_if(dimensions.begin(), dimensions.end(),
                                  [&](const Dimension& dimension) { return dimension.name == name; });
  if (found == dimensions.end()) return std::nullopt;
  return found->kind;
}

struct Shape {
  std::size_t names;
  std::string_view wanted;
};

Shape shape_of(Way way) {
  switch (way) {
    case Way::kEdgeToHoleNear:
    case Way::kEdgeToHoleFar:
      return {2, "two names: edge to centre, hole"};
    case Way::kOverPins:
    case Way::kBetweenPins:
      return {3, "three names: centres, one pin, the other pin"};
    default:
      return {1, "one name: the size that was measured"};
  }
}

// Half of a round dimension, as an expression.
Result<std::string> half_of(const std::string& name, Kind kind) {
  if (kind == Kind::kDiameter) return name + "/2";
  if (kind == Kind::kRadius) return name;
  return fail(Code::kKindsDoNotMix, quantity::name_of(kind), "a diameter or a radius", name);
}

Result<std::string> text_of_sizes(const Reading& reading, const std::vector<Kind>& kinds) {
  const auto& of = reading.of;
  const auto length =
      std::find_if(kinds.begin(), kinds.end(), [](Kind kind) { return !quantity::is_length_like(kind); });
  if (length != kinds.end()) {
    return fail(Code::kKindsDoNotMix, quantity::name_of(*length), "a length, a diameter or a radius",
                of[static_cast<std::size_t>(length - kinds.begin())]);
  }
  if (of.size() == 1) {
    const bool across = reading.way == Way::kOutside || reading.way == Way::kInside;
    return across && kinds[0] == Kind::kRadius ? "2*" + of[0] : of[0];
  }
  const bool adds = reading.way == Way::kEdgeToHoleFar || reading.way == Way::kOverPins;
  std::string text = of[0];
  for (std::size_t i = 1; i < of.size(); ++i) {
    auto half = half_of(of[i], kinds[i]);
    if (!half) return half;
    text += (adds ? " + " : " - ") + *half;
  }
  return text;
}

}  // namespace

Result<std::string> equation_text(const Reading& reading, std::span<const Dimension> dimensions) {
  if (reading.way == Way::kExpression) return reading.is;
  const Shape shape = shape_of(reading.way);
  if (reading.of.size() != shape.names) {
    return fail(Code::kValueNotAccepted, fmt::format("{}", fmt::join(reading.of, ", ")), shape.wanted, "of");
  }
  std::vector<Kind> kinds;
  for (const std::string& name : reading.of) {
    const auto kind = kind_of(name, dimensions);
    if (!kind) {
      return fail(Code::kNameUnknown, name, base::known_words(name, names_of(dimensions)), "dimension");
    }
    kinds.push_back(*kind);
  }
  return text_of_sizes(reading, kinds);
}

Result<formula::Formula> equation_of(const Reading& reading, std::span<const Dimension> dimensions,
                                     quantity::UnitSystem system) {
  const auto text = equation_text(reading, dimensions);
  if (!text) return fail(text.error());
  const auto expression = formula::Expression::read(*text);
  if (!expression) return fail(expression.error());
  const auto known = names_of(dimensions);
  return expression->bind([&](std::string_view name) { return kind_of(name, dimensions); },
                          reading.repeats.front().kind, system, known);
}

}  // namespace sparewright::survey
