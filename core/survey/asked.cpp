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

// Whether the two are of a common dimension.
bool meet(const SurveyPlan::Equation& a, const SurveyPlan::Equation& b) {
  const std::vector<std::string>& names = a.formula.names();
  return std::any_of(names.begin(), names.end(),
                     [&](const std::string& name) { return is_in(b.formula.names(), name); });
}

// The least variance of the others that are of one of its dimensions, else of all; 0 where there is none.
double finest_beside(const Asked& asked, std::size_t one) {
  constexpr double kNone = std::numeric_limits<double>::infinity();
  double beside = kNone;
  double anywhere = kNone;
  for (std::size_t i = 0; i < asked.equations.size(); ++i) {
    const double variance = asked.network.covariance.at(i, i);
    if (i == one || asked.network.readings[i].is_exact || !(variance > 0.0)) continue;
    anywhere = std::min(anywhere, variance);
    if (meet(asked.equations[one], asked.equations[i])) beside = std::min(beside, variance);
  }
  if (std::isfinite(beside)) return beside;
  return std::isfinite(anywhere) ? anywhere : 0.0;
}

void fill_covariance(Asked& asked) {
  const std::size_t n = asked.figures.size();
  Matrix& covariance = asked.network.covariance;
  covariance = Matrix(n, n);
  for (std::size_t a = 0; a < n; ++a) {
    for (std::size_t b = a; b < n; ++b) {
      const double both = ledger::covariance(asked.figures[a]->shares, asked.figures[b]->shares);
      covariance.at(a, b) = both;
      covariance.at(b, a) = both;
    }
    asked.network.readings[a].is_exact =
        asked.equations[a].from == SurveyPlan::From::kKnown && covariance.at(a, a) == 0.0;
  }
  for (std::size_t a = 0; a < n; ++a) {
    if (asked.network.readings[a].is_exact)
      covariance.at(a, a) = kExactPart * kExactPart * finest_beside(asked, a);
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
