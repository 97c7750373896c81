// Checking the units of a formula, and fixing what its bare numbers are.
#include <algorithm>
#include <utility>

#include <fmt/format.h>

#include "core/base/nearest.hpp"
#include "core/formula/excerpt.hpp"
#include "core/formula/expression.hpp"

namespace sparewright::formula {
namespace {

using base::Code;
using base::fail;
using base::Failure;
using base::Result;
using quantity::Dimension;
using quantity::Kind;

// What a step gives: its dimension, and for lengths which kind of length.
struct Type {
  Dimension dimension;
  Kind length_kind = Kind::kLength;
};

bool is_length(const Type& type) {
  return type.dimension == quantity::kLengthDimension;
}

Type type_of(Kind kind) {
  return {quantity::dimension_of(kind), quantity::is_length_like(kind) ? kind : Kind::kLength};
}

std::string name_of(const Type& type) {
  if (is_length(type)) return std::string(quantity::name_of(type.length_kind));
  for (int k = 0; k < quantity::kKinds; ++k) {
    const Kind kind = static_cast<Kind>(k);
    if (quantity::dimension_of(kind) == type.dimension) return std::string(quantity::name_of(kind));
  }
  return "something with no name of its own";
}

bool radius_with_diameter(const Type& a, const Type& b) {
  return (a.length_kind == Kind::kRadius && b.length_kind == Kind::kDiameter) ||
         (a.length_kind == Kind::kDiameter && b.length_kind == Kind::kRadius);
}

class Binder {
 public:
  Binder(std::string_view typed, const std::vector<TypedStep>& steps, quantity::UnitSystem system)
      : typed_(typed), typed_steps_(steps), system_(system), types_(steps.size()) {
    for (const TypedStep& step : steps)
      steps_.push_back(step.step);
  }

  // The kinds of the names first; then every step in order.
  Result<std::vector<Step>> bind(const std::vector<Kind>& names, Kind wanted) {
    for (std::size_t i = 0; i < steps_.size(); ++i) {
      if (auto failure = type_step(i, names)) return fail(std::move(*failure));
    }
    if (auto failure = suit(steps_.size() - 1, type_of(wanted))) return fail(std::move(*failure));
    return std::move(steps_);
  }

 private:
  std::optional<Failure> type_step(std::size_t i, const std::vector<Kind>& names) {
    Step& step = steps_[i];
    switch (step.operation) {
      case Operation::kConstant:
        if (const auto& unit = typed_steps_[i].unit) {
          types_[i].dimension = unit->dimension;
          step.constant = unit->to_base(step.constant);
        }
        return std::nullopt;
      case Operation::kName:
        types_[i] = type_of(names[step.first]);
        return std::nullopt;
      case Operation::kAdd:
      case Operation::kSubtract:
      case Operation::kMin:
      case Operation::kMax:
        return type_sum(i);
      case Operation::kMultiply:
      case Operation::kDivide:
        type_product(i);
        return std::nullopt;
      case Operation::kNegate:
      case Operation::kAbs:
        types_[i] = types_[step.first];
        return std::nullopt;
      case Operation::kPower:
        return type_power(i);
      case Operation::kSqrt:
        return type_root(i);
      default:
        return type_angle_function(i);
    }
  }

  std::optional<Failure> type_sum(std::size_t i) {
    const Step& step = steps_[i];
    if (auto failure = make_alike(step.first, step.second)) return failure;
    const Type a = types_[step.first];
    const Type b = types_[step.second];
    types_[i] = {a.dimension, Kind::kLength};
    if (radius_with_diameter(a, b)) {
      return does_not_mix(i, "a radius and a diameter stand side by side",
                          "halve the diameter or double the radius");
    }
    if (step.operation == Operation::kMin || step.operation == Operation::kMax) {
      if (a.length_kind == b.length_kind) types_[i] = a;
      return std::nullopt;
    }
    const bool first_is_place = a.length_kind == Kind::kCoordinate;
    const bool second_is_place = b.length_kind == Kind::kCoordinate;
    if (first_is_place && second_is_place && step.operation == Operation::kAdd) {
      return does_not_mix(i, "two coordinates cannot be added",
                          "a coordinate plus a length; the middle of a and b is a + (b - a)/2");
    }
    // A coordinate moved by a length is a coordinate; a length less a coordinate starts from the other end.
    const bool moved = second_is_place ? step.operation == Operation::kAdd : first_is_place;
    if (moved) types_[i].length_kind = Kind::kCoordinate;
    return std::nullopt;
  }

  void type_product(std::size_t i) {
    const Step& step = steps_[i];
    const Type a = types_[step.first];
    const Type b = types_[step.second];
    const bool divides = step.operation == Operation::kDivide;
    types_[i].dimension = divides ? a.dimension / b.dimension : a.dimension * b.dimension;
    const auto is_plain = [&](std::size_t s, double value) {
      return steps_[s].operation == Operation::kConstant && !typed_steps_[s].unit &&
             steps_[s].constant == value;
    };
    const auto halves_or_doubles = [&](const Type& length, std::size_t factor, double half, double twice) {
      if (length.length_kind == Kind::kDiameter && is_plain(factor, half))
        types_[i].length_kind = Kind::kRadius;
      if (length.length_kind == Kind::kRadius && is_plain(factor, twice))
        types_[i].length_kind = Kind::kDiameter;
    };
    if (divides) {
      halves_or_doubles(a, step.second, 2.0, 0.5);
    } else {
      halves_or_doubles(a, step.second, 0.5, 2.0);
      halves_or_doubles(b, step.first, 0.5, 2.0);
    }
  }

  std::optional<Failure> type_power(std::size_t i) {
    constexpr int kHighest = 12;  // no formula of the trade comes near
    const Dimension d = types_[steps_[i].first].dimension.power(static_cast<int>(steps_[i].constant));
    for (const int power : {d.length, d.mass, d.time, d.temperature, d.angle}) {
      if (power > kHighest || power < -kHighest) {
        return does_not_mix(i, "it raises a unit too far",
                            fmt::format("a unit to the power {} at most", kHighest));
      }
    }
    types_[i].dimension = d;
    return std::nullopt;
  }

  std::optional<Failure> type_root(std::size_t i) {
    const Dimension d = types_[steps_[i].first].dimension;
    const bool even =
        d.length % 2 == 0 && d.mass % 2 == 0 && d.time % 2 == 0 && d.temperature % 2 == 0 && d.angle % 2 == 0;
    if (!even)
      return does_not_mix(i, "the square root is taken of " + name_of(types_[steps_[i].first]), "an area");
    types_[i].dimension = {d.length / 2, d.mass / 2, d.time / 2, d.temperature / 2, d.angle / 2};
    return std::nullopt;
  }

  std::optional<Failure> type_angle_function(std::size_t i) {
    const Operation operation = steps_[i].operation;
    const bool takes_angle =
        operation == Operation::kSin || operation == Operation::kCos || operation == Operation::kTan;
    const Dimension wanted = takes_angle ? quantity::kAngleDimension : quantity::kNumberDimension;
    if (types_[steps_[i].first].dimension != wanted) {
      return does_not_mix(i, "it is given " + name_of(types_[steps_[i].first]),
                          takes_angle ? "an angle, such as 30 deg" : "a ratio of two lengths");
    }
    types_[i].dimension = takes_angle ? quantity::kNumberDimension : quantity::kAngleDimension;
    return std::nullopt;
  }

  // A bare number beside a length becomes a length.
  std::optional<Failure> make_alike(std::size_t a, std::size_t b) {
    if (types_[a].dimension == types_[b].dimension) return std::nullopt;
    if (coerce(a, types_[b]) || coerce(b, types_[a])) return std::nullopt;
    const base::Span span{steps_[a].span.offset, steps_[b].span.end() - steps_[a].span.offset};
    return failure_at(span,
                      fmt::format("{} and {} stand side by side", name_of(types_[a]), name_of(types_[b])),
                      "like with like" + hint());
  }

  // Whether the step is a bare number as typed (or one negated) that could take a unit, and has taken it.
  bool coerce(std::size_t i, const Type& wanted) {
    Step& step = steps_[i];
    if (step.operation == Operation::kNegate && coerce(step.first, wanted)) {
      types_[i] = types_[step.first];
      return true;
    }
    const bool is_bare = step.operation == Operation::kConstant && !typed_steps_[i].unit &&
                         types_[i].dimension == quantity::kNumberDimension;
    if (!is_bare || (!is_length(wanted) && wanted.dimension != quantity::kAngleDimension)) return false;
    quantity::Unit unit = quantity::unit::degree;
    if (is_length(wanted)) {
      unit = typed_steps_[i].is_fraction ? quantity::Unit(quantity::unit::inch)
                                         : quantity::display_unit(Kind::kLength, system_);
    }
    step.constant = unit.to_base(step.constant);
    types_[i] = {wanted.dimension, Kind::kLength};
    return true;
  }

  // The whole formula against what is wanted.
  std::optional<Failure> suit(std::size_t last, const Type& wanted) {
    const bool of_other_dimension = types_[last].dimension != wanted.dimension && !coerce(last, wanted);
    const bool radius_for_diameter =
        !of_other_dimension && is_length(wanted) && radius_with_diameter(types_[last], wanted);
    if (!of_other_dimension && !radius_for_diameter) return std::nullopt;
    return failure_at(
        {0, typed_.size()}, fmt::format("it gives {}", name_of(types_[last])),
        name_of(wanted) + (radius_for_diameter ? "; 2 * radius is a diameter, diameter/2 a radius" : hint()));
  }

  // What mends most mixtures: a bare number that was meant to have a unit.
  [[nodiscard]] std::string hint() const {
    const bool has_bare_number =
        std::any_of(typed_steps_.begin(), typed_steps_.end(),
                    [](const TypedStep& s) { return s.step.operation == Operation::kConstant && !s.unit; });
    return has_bare_number ? "; write the unit of a number" : "";
  }

  [[nodiscard]] std::optional<Failure> does_not_mix(std::size_t i, std::string_view found,
                                                    std::string_view accepted) const {
    return failure_at(steps_[i].span, found, accepted);
  }
  [[nodiscard]] Failure failure_at(base::Span span, std::string_view found, std::string_view accepted) const {
    Failure f;
    f.code = Code::kKindsDoNotMix;
    f.subject = fmt::format("in '{}'", excerpt(typed_, span));
    f.found = found;
    f.accepted = accepted;
    f.span = span;
    return f;
  }

  std::string_view typed_;
  const std::vector<TypedStep>& typed_steps_;
  std::vector<Step> steps_;
  quantity::UnitSystem system_;
  std::vector<Type> types_;
};

}  // namespace

Result<Formula> Expression::bind(const KindOf& kind_of, Kind wanted, quantity::UnitSystem system,
                                 std::span<const std::string> known) const {
  std::vector<Kind> kinds;
  for (std::size_t n = 0; n < names_.size(); ++n) {
    const auto kind = kind_of(names_[n]);
    if (!kind) {
      Failure f;
      f.code = Code::kNameUnknown;
      f.subject = "dimension";
      f.found = names_[n];
      f.accepted = base::known_words(names_[n], known);
      const auto first = std::find_if(steps_.begin(), steps_.end(), [&](const TypedStep& s) {
        return s.step.operation == Operation::kName && s.step.first == n;
      });
      f.span = first->step.span;
      return fail(std::move(f));
    }
    kinds.push_back(*kind);
  }
  auto tape = Binder(typed_, steps_, system).bind(kinds, wanted);
  if (!tape) return tl::unexpected(tape.error());
  Formula formula;
  formula.typed_ = typed_;
  formula.names_ = names_;
  formula.tape_ = std::move(*tape);
  formula.kind_ = wanted;
  return formula;
}

}  // namespace sparewright::formula
