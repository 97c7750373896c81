#include "core/survey/equation.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <vector>

#include <fmt/format.h>

#include "core/base/nearest.hpp"
#include "core/survey/ways.hpp"

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

constexpr std::array<std::string_view, kMostNames> kCounts{"one name", "two names", "three names",
                                                           "four names"};

// One name in the row's expression, as it stands for a dimension of that kind.
Result<std::string> name_in(char how, const std::string& name, Kind kind, Kind usual) {
  const bool wants_angle = usual == Kind::kAngle;
  if (wants_angle != (kind == Kind::kAngle) || (!wants_angle && !quantity::is_length_like(kind)))
    return fail(Code::kKindsDoNotMix, quantity::name_of(kind),
                wants_angle ? "an angle" : "a length, a diameter or a radius", name);
  if (how == 'a') return kind == Kind::kRadius ? "2*" + name : name;
  if (how != 'h') return name;
  if (kind == Kind::kDiameter) return name + "/2";
  if (kind == Kind::kRadius) return name;
  return fail(Code::kKindsDoNotMix, quantity::name_of(kind), "a diameter or a radius", name);
}

// The row's expression with the names put in.
Result<std::string> filled(const WayRow& row, const Reading& reading, const std::vector<Kind>& kinds) {
  std::string text;
  for (std::size_t i = 0; i < row.reads.size(); ++i) {
    if (row.reads[i] != '{') {
      text += row.reads[i];
      continue;
    }
    const std::size_t end = row.reads.find('}', i);
    const std::string_view mark = row.reads.substr(i + 1, end - i - 1);
    i = end;
    if (mark == "n") {
      text += fmt::format("{}", reading.count.value_or(1));
      continue;
    }
    if (mark == "k") {
      text += fmt::format("{}", reading.spanned.value_or(1));
      continue;
    }
    const std::size_t which = static_cast<std::size_t>(mark.back() - '1');
    auto name = name_in(mark.front(), reading.of[which], kinds[which], row.kinds.at(which));
    if (!name) return name;
    text += *name;
  }
  return text;
}

}  // namespace

Result<std::string> equation_text(const Reading& reading, std::span<const Dimension> dimensions) {
  if (reading.way == Way::kExpression) return reading.is;
  const WayRow& row = row_of(reading.way);
  if (reading.of.size() != row.names) {
    return fail(Code::kValueNotAccepted, fmt::format("{}", fmt::join(reading.of, ", ")),
                fmt::format("{}: {}", kCounts.at(row.names - 1), row.of), "of");
  }
  if (row.counted != reading.count.has_value() || reading.count.value_or(1) < 1) {
    return fail(Code::kValueNotAccepted, reading.count ? fmt::format("{}", *reading.count) : "nothing",
                row.counted ? "a whole number from 1 on" : "no count: this way of measuring has none",
                "count");
  }
  if (row.spans != reading.spanned.has_value() || reading.spanned.value_or(1) < 1 ||
      (row.spans && *reading.spanned > *reading.count)) {
    return fail(Code::kValueNotAccepted, reading.spanned ? fmt::format("{}", *reading.spanned) : "nothing",
                row.spans ? "how many teeth were between the jaws, from 1 to all of them"
                          : "no teeth spanned: this way of measuring has none",
                "spanned");
  }
  std::vector<Kind> kinds;
  for (const std::string& name : reading.of) {
    const auto kind = kind_of(name, dimensions);
    if (!kind) {
      return fail(Code::kNameUnknown, name, base::known_words(name, names_of(dimensions)), "dimension");
    }
    kinds.push_back(*kind);
  }
  return filled(row, reading, kinds);
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
