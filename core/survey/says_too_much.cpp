#include "core/survey/says_too_much.hpp"

#include <fmt/format.h>

#include "core/quantity/display.hpp"

namespace sparewright::survey {
namespace {

using ledger::Bound;
using ledger::Query;

Query of_a_trial(const SurveyPlan::Equation& equation, Bound bound, const std::string& by) {
  Query query;
  query.id = "trial against the readings/" + equation.reading;
  query.says = fmt::format("'{}' {}, yet the readings make {} {} {} than that", equation.reading,
                           name_of(*equation.trial), equation.formula.typed(), by,
                           bound == Bound::kAtLeast ? "smaller" : "larger");
  query.happens = "What was tried or one of the readings is not so: the size is not sure.";
  query.todo = "Measure what was tried, try it again, and measure the place again.";
  return query;
}

Query of_a_worn_place(const SurveyPlan::Equation& equation, const std::string& by) {
  Query query;
  query.id = "worn place has more metal/" + equation.reading;
  query.says =
      fmt::format("'{}' is worn, yet has {} more metal than the sound readings give", equation.reading, by);
  query.happens = "One of them is misread.";
  query.todo = "Measure both places again.";
  return query;
}

}  // namespace

std::optional<Query> says_too_much(const SurveyPlan::Equation& equation, const ledger::Figure& reading,
                                   const ledger::Figure& differs, quantity::UnitSystem system) {
  const double too_far = reading.bound == Bound::kAtLeast  ? differs.value
                         : reading.bound == Bound::kAtMost ? -differs.value
                                                           : 0.0;
  if (!differs.known() || too_far <= differs.expanded()) return std::nullopt;
  const std::string by =
      quantity::shown(too_far, differs.kind, system, quantity::usual_places(differs.kind, system));
  Query query = equation.trial ? of_a_trial(equation, reading.bound, by) : of_a_worn_place(equation, by);
  query.about = reading.name;
  query.serious = true;
  return query;
}

}  // namespace sparewright::survey
