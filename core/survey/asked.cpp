#include "core/survey/asked.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/ledger/share.hpp"
#include "core/survey/known.hpp"
#include "core/survey/trial.hpp"

namespace sparewright::survey {
namespace {

using ledger::Figure;

bool is_in(const std::vector<std::string>& list, const std::string& name) {
  return std::find(list.begin(), list.end(), name) != list.end();
}

void take(Asked& asked, const SurveyPlan::Equation& equation, ledger::Pen& pen) {
  const bool may_be_open = equation.from == SurveyPlan::From::kTouches;  // too few touches: left out
  const Figure& figure = may_be_open ? pen.ask(equation.figure) : pen.need(equation.figure);
  if (!figure.known()) return;
  asked.equations.push_back(equation);
  asked.figures.push_back(&figure);
  asked.network.readings.push_back({equation.reading, figure.value, equation.formula, figure.bound});
}

void fill_covariance(Asked& asked) {
  const std::size_t n = asked.figures.size();
  Matrix& covariance = asked.network.covariance;
  covariance = Matrix(n, n);
  double finest = std::numeric_limits<double>::infinity();
  for (std::size_t a = 0; a < n; ++a) {
    for (std::size_t b = a; b < n; ++b) {
      const double both = ledger::covariance(asked.figures[a]->shares, asked.figures[b]->shares);
      covariance.at(a, b) = both;
      covariance.at(b, a) = both;
    }
    if (covariance.at(a, a) > 0.0) finest = std::min(finest, covariance.at(a, a));
  }
  if (!std::isfinite(finest)) return;
  for (std::size_t a = 0; a < n; ++a) {
    const bool is_exact = asked.equations[a].from == SurveyPlan::From::kKnown && covariance.at(a, a) == 0.0;
    if (is_exact) covariance.at(a, a) = kExactPart * kExactPart * finest;
  }
}

}  // namespace

Asked ask_for(const SurveyPlan& plan, ledger::Pen& pen) {
  Asked asked;
  asked.network.unknowns = plan.unknowns;
  static const TrialOutcome kNone;
  const TrialOutcome& trials = plan.trials.empty() ? kNone : pen.need_value<TrialOutcome>("trial/outcome");
  for (const SurveyPlan::Equation& equation : plan.readings) {
    if (!is_in(trials.contradicting, equation.reading)) take(asked, equation, pen);
  }
  for (const SurveyPlan::Equation& equation : plan.trials) {
    if (is_in(trials.enclosed, equation.of)) take(asked, equation, pen);
  }
  for (const SurveyPlan::Equation& equation : plan.known)
    take(asked, equation, pen);
  fill_covariance(asked);
  return asked;
}

}  // namespace sparewright::survey
