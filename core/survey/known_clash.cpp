#include "core/survey/known_clash.hpp"

#include <cmath>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "core/quantity/display.hpp"
#include "core/survey/known.hpp"

namespace sparewright::survey {
namespace {

// "'a', 'b' and 'c'"
std::string all_of(const std::vector<std::string>& names) {
  std::string words;
  for (std::size_t i = 0; i < names.size(); ++i)
    words += fmt::format("{}'{}'", i == 0 ? "" : i + 1 < names.size() ? ", " : " and ", names[i]);
  return words;
}

// Those that explain the misfits as well as each other, counted in the readings used.
std::vector<std::size_t> suspects_of(const Adjustment& report) {
  std::vector<std::size_t> all;
  if (!report.at_odds || !report.at_odds->suspect) return all;
  all.push_back(report.at_odds->reading);
  all.insert(all.end(), report.at_odds->alike.begin(), report.at_odds->alike.end());
  return all;
}

}  // namespace

std::optional<ledger::Query> known_clashes(const Asked& asked, const MeasuredUp& measured,
                                           quantity::UnitSystem system) {
  const Adjustment& report = measured.adjustment;
  std::optional<std::size_t> known;
  std::vector<std::string> readings;
  for (const std::size_t used : suspects_of(report)) {
    const SurveyPlan::Equation& equation = asked.equations[measured.used[used]];
    const bool is_known = equation.from == SurveyPlan::From::kKnown;
    if (is_known && !known) {
      known = used;
    } else {
      readings.push_back(is_known ? equation.is : equation.reading);
    }
  }
  if (!known) return std::nullopt;
  const SurveyPlan::Equation& equation = asked.equations[measured.used[*known]];
  const ledger::Figure& figure = *asked.figures[measured.used[*known]];
  const double apart = std::abs(*report.readings[*known].error);
  ledger::Query query;
  query.id = "known against the readings/" + equation.reading;
  query.about = figure.name;
  query.says =
      fmt::format("'{}' is said to be so, yet by the readings the two sides are {} apart", equation.is,
                  quantity::shown(apart, figure.kind, system, quantity::usual_places(figure.kind, system)));
  if (!readings.empty()) query.says += fmt::format("; it does not go together with {}", all_of(readings));
  query.happens = "Every size found with it is out too.";
  query.todo = "Measure again; if it stays so, take out what is not so.";
  query.serious = true;
  return query;
}

}  // namespace sparewright::survey
