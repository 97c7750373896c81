#include "core/survey/known.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>
#include <optional>
#include <set>
#include <utility>

#include <fmt/format.h>

#include "core/survey/adjust.hpp"
#include "core/survey/trouble_with.hpp"

namespace sparewright::survey {
namespace {

using base::Code;
using base::Failure;
using base::Result;
using quantity::Kind;

// Two things said to be exact contradict each other where they differ by more than a few of these: 1 nm. A choice made
// here, without a source: far below what is measured here, far above rounding.
constexpr double kExact_mm = 1e-6;

// "left = right" as "left - right". A right side that is a sum is put in parentheses: what stands behind the '=' then moves
// by one place.
struct AsDifference {
  std::string text;
  std::size_t equals = 0;  // where the '=' was
  std::size_t moved = 0;
};

Result<AsDifference> as_difference(const Known& known) {
  const std::size_t equals = known.is.find('=');
  if (equals == std::string::npos || known.is.find('=', equals + 1) != std::string::npos)
    return base::fail(Code::kValueNotAccepted, known.is,
                      "one '=' between two formulas of dimensions: left = right", "is");
  for (const std::string& side : {known.is.substr(0, equals), known.is.substr(equals + 1)}) {
    if (side.find_first_not_of(" \t") == std::string::npos)
      return base::fail(Code::kValueNotAccepted, known.is, "a formula on both sides of the '='", "is");
  }
  const std::string right = known.is.substr(equals + 1);
  const bool is_sum = right.find_first_of("+-") != std::string::npos;
  return AsDifference{known.is.substr(0, equals) + (is_sum ? "-(" + right + ")" : "-" + right), equals,
                      is_sum ? std::size_t{1} : std::size_t{0}};
}

Failure in_place(Failure failure, const AsDifference& difference, const Known& known) {
  if (!failure.span) return failure;
  base::Span& span = *failure.span;
  if (span.offset > difference.equals) span.offset -= difference.moved;
  span.length = std::min(span.length, known.is.size() - std::min(known.is.size(), span.offset));
  return failure;
}

double half_width_to_u(double half_width) {
  return half_width * std::numbers::inv_sqrt3;
}

constexpr double kHeeds = 1e-9;

class KnownChecker {
 public:
  explicit KnownChecker(const Survey& survey) : survey_(survey) {
    for (const Reading& reading : survey.readings)
      names_.insert(reading.name);
  }

  std::vector<Trouble> run() {
    for (std::size_t i = 0; i < survey_.known.size(); ++i)
      check(i);
    if (troubles_.empty()) check_together();
    return std::move(troubles_);
  }

 private:
  void add(std::size_t i, std::string_view field, Failure failure) {
    troubles_.push_back({Trouble::In::kKnown, i, std::string(field), std::move(failure)});
  }

  void check(std::size_t i) {
    const Known& known = survey_.known[i];
    if (known.name.empty() || known.name.find('/') != std::string::npos) {
      add(i, "name", failure_of(Code::kValueNotAccepted, known.name, "a name without '/'", "name"));
    } else if (!names_.insert(known.name).second) {
      add(i, "name", failure_of(Code::kNameTwice, known.name, "another name", "reading or known"));
    }
    const auto equation = equation_of(known, survey_.dimensions, survey_.system);
    if (!equation) return add(i, "is", equation.error());
    if (equation->names().empty()) {
      add(i, "is", failure_of(Code::kValueNotAccepted, known.is, "an equation with a dimension in it", "is"));
    }
    check_says_something(i, *equation);
    if (!known.within) return;
    if (quantity::dimension_of(known.within->kind) != quantity::dimension_of(equation->kind())) {
      add(i, "within",
          failure_of(Code::kUnitOfAnotherKind, known.within->typed, quantity::name_of(equation->kind()),
                     quantity::name_of(equation->kind())));
    } else if (known.within->base <= 0.0) {
      add(i, "within",
          failure_of(Code::kValueNotAccepted, known.within->typed,
                     "more than 0; left out where the two sides are the same", "within"));
    }
  }

  // At two places that mean nothing: an equation that cannot be worked out at either, or heeds no dimension there, is none.
  void check_says_something(std::size_t i, const formula::Formula& equation) {
    bool heeds = equation.names().empty();
    std::optional<Failure> cannot;
    for (const double place : {7.3, 11.9}) {
      std::vector<double> values(equation.names().size());
      for (std::size_t k = 0; k < values.size(); ++k)
        values[k] = place * (1.0 + 0.37 * static_cast<double>(k));
      const auto y = equation.at(values);
      if (!y) {
        cannot = y.error();
        continue;
      }
      cannot.reset();
      heeds = heeds || std::any_of(y->slopes.begin(), y->slopes.end(),
                                   [](double slope) { return std::abs(slope) > kHeeds; });
      if (heeds) break;
    }
    if (cannot && cannot->code == Code::kDividesByZero) return add(i, "is", std::move(*cannot));
    if (!heeds && !cannot)
      add(i, "is",
          failure_of(Code::kValueNotAccepted, survey_.known[i].is,
                     "an equation that a dimension decides: here they cancel", "is"));
  }

  // All of them without any reading: they have to agree among themselves.
  void check_together() {
    Network network;
    network.unknowns = survey_.dimensions;
    const std::size_t n = survey_.known.size();
    network.covariance = Matrix(n, n);
    for (std::size_t i = 0; i < n; ++i) {
      const Known& known = survey_.known[i];
      const double u = known.within ? half_width_to_u(known.within->base) : kExact_mm;
      network.covariance.at(i, i) = u * u;
      network.readings.push_back({known.name, 0.0, *equation_of(known, survey_.dimensions, survey_.system)});
    }
    if (n < 2) return;
    const auto adjustment = adjust(network);
    if (!adjustment)
      return;  // an equation that cannot be worked out at the start: the readings will say more
    if (!adjustment->at_odds || !adjustment->at_odds->suspect) return;
    std::vector<std::size_t> clash{adjustment->at_odds->reading};
    clash.insert(clash.end(), adjustment->at_odds->alike.begin(), adjustment->at_odds->alike.end());
    tell_clash(std::move(clash));
  }

  // At the last of them, naming the others.
  void tell_clash(std::vector<std::size_t> clash) {
    std::sort(clash.begin(), clash.end());
    std::string others;
    for (std::size_t k = 0; k + 1 < clash.size(); ++k)
      others += fmt::format("{}'{}'", k > 0 ? ", " : "", survey_.known[clash[k]].is);
    const std::string accepted = others.empty()
                                     ? "what goes with the rest that is known"
                                     : "what goes with " + others + ": no sizes make all of them true";
    add(clash.back(), "is",
        failure_of(Code::kValueNotAccepted, survey_.known[clash.back()].is, accepted, "known"));
  }

  const Survey& survey_;
  std::set<std::string, std::less<>> names_;
  std::vector<Trouble> troubles_;
};

}  // namespace

Result<formula::Formula> equation_of(const Known& known, std::span<const Dimension> dimensions,
                                     quantity::UnitSystem system) {
  const auto difference = as_difference(known);
  if (!difference) return base::fail(difference.error());
  const auto expression = formula::Expression::read(difference->text);
  if (!expression) return base::fail(in_place(expression.error(), *difference, known));
  std::vector<std::string> names;
  for (const Dimension& dimension : dimensions)
    names.push_back(dimension.name);
  const auto kind_of = [&](std::string_view name) -> std::optional<Kind> {
    const auto found = std::find_if(dimensions.begin(), dimensions.end(),
                                    [&](const Dimension& d) { return d.name == name; });
    return found == dimensions.end() ? std::nullopt : std::optional(found->kind);
  };
  std::optional<Failure> first;
  for (const Kind kind : {Kind::kLength, Kind::kRadius, Kind::kAngle, Kind::kNumber}) {
    auto bound = expression->bind(kind_of, kind, system, names);
    if (bound) return bound;
    if (!first) first = bound.error();
  }
  return base::fail(in_place(std::move(*first), *difference, known));
}

std::vector<std::string> names_in(const Known& known) {
  const auto difference = as_difference(known);
  if (!difference) return {};
  const auto expression = formula::Expression::read(difference->text);
  return expression ? expression->names() : std::vector<std::string>{};
}

std::vector<Trouble> known_troubles(const Survey& survey) {
  return KnownChecker(survey).run();
}

ledger::Stage known_stage(const Survey& survey) {
  std::map<std::string, ledger::Root> roots;
  base::Hasher h;
  h.add("known");
  for (const Known& known : survey.known) {
    ledger::Root root;
    const auto equation = equation_of(known, survey.dimensions, survey.system);
    root.kind = equation ? equation->kind() : Kind::kLength;
    root.value = 0.0;
    if (known.within) root.shares = {{known_path(known.name), half_width_to_u(known.within->base)}};
    root.origin = ledger::Origin::kChoice;
    root.typed = known.within ? fmt::format("{}, within {}", known.is, known.within->typed) : known.is;
    root.source = known.why.empty() ? "as the job says" : known.why;
    h.add(known.name).add(static_cast<int>(root.kind)).add(root.typed).add(root.source);
    h.add(known.within ? known.within->base : 0.0);
    roots.emplace(known.name, std::move(root));
  }
  return {"known", h.done(), [roots = std::move(roots)](ledger::Pen& pen) {
            for (const auto& [name, root] : roots)
              pen.root(name, root);
          }};
}

std::string known_path(std::string_view name) {
  return fmt::format("known/{}", name);
}

}  // namespace sparewright::survey
