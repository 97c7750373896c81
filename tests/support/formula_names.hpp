// The dimensions that the formulas of these tests speak of, and reading with them.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/formula/expression.hpp"
#include "core/quantity/kind.hpp"
#include "core/quantity/unit.hpp"

namespace sparewright::formula {

inline const std::map<std::string, quantity::Kind, std::less<>>& known_kinds() {
  using quantity::Kind;
  static const std::map<std::string, Kind, std::less<>> kKinds{
      {"angle", Kind::kAngle},      {"area", Kind::kArea},     {"centres", Kind::kLength},
      {"count", Kind::kNumber},     {"force", Kind::kForce},   {"high", Kind::kLength},
      {"mass", Kind::kMass},        {"pin", Kind::kDiameter},  {"r", Kind::kRadius},
      {"slot.left", Kind::kLength}, {"stud", Kind::kDiameter}, {"x", Kind::kCoordinate},
      {"y", Kind::kCoordinate},
  };
  return kKinds;
}

inline std::optional<quantity::Kind> kind_of(std::string_view name) {
  const auto found = known_kinds().find(name);
  return found == known_kinds().end() ? std::nullopt : std::optional(found->second);
}

inline base::Result<Formula> read_and_bind(std::string_view text,
                                           quantity::Kind wanted = quantity::Kind::kLength,
                                           quantity::UnitSystem system = quantity::UnitSystem::kInch) {
  auto expression = Expression::read(text);
  if (!expression) return tl::unexpected(expression.error());
  std::vector<std::string> known;
  for (const auto& [name, kind] : known_kinds())
    known.push_back(name);
  return expression->bind(kind_of, wanted, system, known);
}

}  // namespace sparewright::formula
