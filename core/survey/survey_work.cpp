#include "core/survey/survey_work.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <utility>

#include <fmt/format.h>

#include "core/base/messages.hpp"
#include "core/quantity/display.hpp"
#include "core/survey/asked.hpp"
#include "core/survey/known_clash.hpp"
#include "core/survey/left_aside.hpp"
#include "core/survey/measure_up.hpp"
#include "core/survey/says_too_much.hpp"
#include "core/survey/slips.hpp"
#include "core/survey/write_left_aside.hpp"

namespace sparewright::survey {
namespace {

using ledger::Figure;
using ledger::Pen;
using ledger::Term;
using quantity::Kind;

constexpr double kNotANumber = std::numeric_limits<double>::quiet_NaN();
constexpr std::string_view kSource =
    "least squares, each reading weighted by its doubt and by what it shares with others (E. M. Mikhail, "
    "F. Ackermann, Observations and Least Squares, 1976; named from memory)";

// "a, b or c"
std::string any_of(const std::vector<std::string>& names) {
  std::string words = names.front();
  for (std::size_t i = 1; i < names.size(); ++i)
    words += (i + 1 < names.size() ? ", " : " or ") + names[i];
  return words;
}

class Writer {
 public:
  Writer(const SurveyPlan& plan, Pen& pen) : plan_(plan), pen_(pen), asked_(ask_for(plan, pen)) {}

  void write() {
    auto measured = measure_up(asked_.network);
    if (!measured) return tell_failure(measured.error());
    measured_ = std::move(*measured);
    write_wanted();
    for (std::size_t j = 0; j < plan_.unknowns.size(); ++j)
      write_dimension(j);
    for (std::size_t i = 0; i < measured_.used.size(); ++i)
      write_difference(i);
    for (const SetAside& aside : measured_.set_aside)
      write_set_aside(aside);
    left_aside_ = left_aside(asked_.network, measured_);
    write_left_aside(left_aside_, asked_, measured_, dimensions_, pen_);
    write_agreement();
    const auto print = fingerprint(measured_);
    pen_.publish("report", std::move(measured_), print);
  }

 private:
  [[nodiscard]] const Adjustment& report() const { return measured_.adjustment; }
  [[nodiscard]] const Figure& reading(std::size_t used) const {
    return *asked_.figures[measured_.used[used]];
  }
  [[nodiscard]] std::string shown(double value, Kind kind) const {
    return quantity::shown(value, kind, plan_.system, quantity::usual_places(kind, plan_.system));
  }

  void tell_failure(const base::Failure& failure) {
    for (const Dimension& unknown : plan_.unknowns) {
      pen_.linear(unknown.name, unknown.kind, base::sentence(failure), kNotANumber, {});
    }
    ledger::Query query;
    query.id = "measuring up fails";
    query.about = pen_.stage() + "/" + plan_.unknowns.front().name;
    query.says = base::sentence(failure);
    query.happens = "No size comes out of the readings.";
    query.todo = "Look for a misreading or a wrong equation.";
    pen_.query(std::move(query));
  }

  // A root that is not known, for each gap.
  void write_wanted() {
    for (const Gap& gap : report().gaps) {
      std::vector<std::string> names;
      for (const std::size_t j : gap.unknowns)
        names.push_back(plan_.unknowns[j].name);
      const std::string how_many =
          gap.readings_wanted == 1 ? "a reading of " : fmt::format("{} readings of ", gap.readings_wanted);
      ledger::Root root;
      root.kind = plan_.unknowns[gap.unknowns.front()].kind;
      root.source = "the readings so far do not fix it";
      const Figure& wanted = pen_.root("wanted/" + how_many + any_of(names), root);
      for (const std::size_t j : gap.unknowns)
        wanted_[j] = {&wanted, gap.unknowns.size() == 1};
    }
  }

  void write_dimension(std::size_t j) {
    const Dimension& unknown = plan_.unknowns[j];
    if (const auto wanted = wanted_.find(j); wanted != wanted_.end()) {
      const auto& [figure, alone] = wanted->second;
      const Term term{figure, 1.0};
      dimensions_.push_back(&pen_.linear(unknown.name, unknown.kind, "not fixed by the readings so far",
                                         alone ? figure->value : kNotANumber, {&term, 1}));
      return;
    }
    const Found& found = report().unknowns[j];
    std::vector<Term> terms;
    for (std::size_t i = 0; i < measured_.used.size(); ++i) {
      if (const double slope = report().slopes.at(j, i); slope != 0.0) terms.push_back({&reading(i), slope});
    }
    std::string words = terms.size() == 1 ? "from one reading" : "what fits the readings best";
    if (!found.checked) words += "; not checked by another reading";
    dimensions_.push_back(&pen_.linear(unknown.name, unknown.kind, words, found.value, terms, kSource));
    const bool is_round = unknown.kind == Kind::kDiameter || unknown.kind == Kind::kRadius;
    if (is_round && found.value <= 0.0) ask_no_size(*dimensions_.back());
  }

  void ask_no_size(const Figure& figure) {
    ledger::Query query;
    query.id = "no size/" + std::string(figure.name.text());
    query.about = figure.name;
    query.says = fmt::format("by the readings it is {}, and no {} is 0 or less",
                             shown(figure.value, figure.kind), quantity::name_of(figure.kind));
    query.happens = "Nothing can be made of it.";
    query.todo = "Look at the readings and their equations: near for far, over for between.";
    query.serious = true;
    pen_.query(std::move(query));
  }

  // A reading less what the sizes found make it.
  const Figure& write_differs(std::size_t reading_index, double fitted, const std::vector<Term>& sizes) {
    const Figure& figure = *asked_.figures[reading_index];
    const SurveyPlan::Equation& equation = asked_.equations[reading_index];
    std::vector<Term> terms{{&figure, 1.0}};
    for (const Term& size : sizes)
      terms.push_back({size.figure, -size.slope});
    const std::string words = equation.from == SurveyPlan::From::kKnown
                                  ? fmt::format("how far the sizes are from {}", equation.typed)
                                  : fmt::format("the reading less {}", equation.formula.typed());
    return pen_.linear("differs/" + equation.reading, figure.kind, words, figure.value - fitted, terms);
  }

  // The sizes that a reading is of, with its slopes by them: one slope for each unknown.
  [[nodiscard]] std::vector<Term> sizes_in(std::span<const double> slopes) const {
    std::vector<Term> sizes;
    for (std::size_t j = 0; j < slopes.size(); ++j) {
      if (slopes[j] != 0.0) sizes.push_back({dimensions_[j], slopes[j]});
    }
    return sizes;
  }

  void write_difference(std::size_t used) {
    const Fit& fit = report().readings[used];
    if (!fit.checked) return;
    write_differs(measured_.used[used], fit.fitted, sizes_in(report().equation_slopes.row(used)));
  }

  void write_set_aside(const SetAside& aside) {
    const Figure& differs = write_differs(aside.reading, aside.fitted, sizes_in(aside.slopes));
    const SurveyPlan::Equation& equation = asked_.equations[aside.reading];
    if (auto query = says_too_much(equation, *asked_.figures[aside.reading], differs, plan_.system))
      pen_.query(std::move(*query));
  }

  const Figure& write_number(std::string_view local, std::string_view words, double value) {
    std::vector<Term> terms;
    for (std::size_t i = 0; i < measured_.used.size(); ++i)
      terms.push_back({&reading(i), 0.0});
    return pen_.linear(local, Kind::kNumber, words, value, terms, kSource);
  }

  void write_agreement() {
    const Adjustment& adjustment = report();
    write_number("agreement/spare readings", "readings more than needed", adjustment.degrees_of_freedom);
    if (adjustment.degrees_of_freedom > 0) {
      write_number("agreement/total", "squares of what the readings differ by, over their doubts",
                   adjustment.chi_square);
      write_number("agreement/limit", "what the total stays below 19 times in 20",
                   adjustment.chi_square_limit);
    }
    if (adjustment.at_odds) {
      write_number("agreement/most at odds",
                   fmt::format("{} is this many times its own doubt out", suspects()),
                   adjustment.at_odds->odds);
    }
    if (adjustment.at_odds && adjustment.at_odds->suspect) {
      auto clash = known_clashes(asked_, measured_, plan_.system);
      if (clash) return pen_.query(std::move(*clash));
      ask_misread();
    } else if (!adjustment.agree()) {
      ask_disagreement();
    }
  }

  [[nodiscard]] std::string suspects() const {
    const AtOdds& at_odds = *report().at_odds;
    std::vector<std::string> names{fmt::format("'{}'", report().readings[at_odds.reading].name)};
    for (const std::size_t i : at_odds.alike)
      names.push_back(fmt::format("'{}'", report().readings[i].name));
    return any_of(names);
  }

  // "; it agrees to 0.0003 in if one turn of the thimble (0.025 in) was missed"
  [[nodiscard]] std::string explained(std::size_t used) const {
    const Fit& fit = report().readings[used];
    if (!fit.error || !fit.odds || *fit.odds == 0.0) return "";
    const SurveyPlan::Equation& equation = asked_.equations[measured_.used[used]];
    if (equation.from != SurveyPlan::From::kReading) return "";
    const Figure& figure = reading(used);
    const auto all = slips({equation.typed, figure.value, *fit.error, std::abs(*fit.error / *fit.odds),
                            figure.kind, equation.is_metric, equation.instrument_kind, equation.zero_found});
    if (all.empty()) return "";
    return fmt::format("; it agrees to {} if {}", shown(all.front().rest, figure.kind), all.front().says);
  }

  void ask_misread() {
    const AtOdds& at_odds = *report().at_odds;
    const Figure& figure = reading(at_odds.reading);
    ledger::Query query;
    query.id = "misread/" + report().readings[at_odds.reading].name;
    query.about = figure.name;
    if (at_odds.alike.empty()) {
      const double error = *report().readings[at_odds.reading].error;
      query.says = fmt::format("misread? {} is {} {} what the others say{}", suspects(),
                               shown(std::abs(error), figure.kind), error > 0 ? "above" : "below",
                               explained(at_odds.reading));
    } else {
      query.says =
          fmt::format("misread? {} is out; the readings cannot tell which{}", suspects(), explained_one_of());
    }
    query.happens = "Every size found from it is out too.";
    const std::string moves = moves_most(left_aside_, measured_, plan_.unknowns, plan_.system);
    if (!moves.empty()) query.happens += " " + moves;
    query.todo = "Measure it again.";
    query.serious = true;
    pen_.query(std::move(query));
  }

  // Of readings that cannot be told apart, the one that a usual slip explains.
  [[nodiscard]] std::string explained_one_of() const {
    const AtOdds& at_odds = *report().at_odds;
    std::vector<std::size_t> all{at_odds.reading};
    all.insert(all.end(), at_odds.alike.begin(), at_odds.alike.end());
    std::string only;
    for (const std::size_t used : all) {
      const std::string says = explained(used);
      if (says.empty()) continue;
      if (!only.empty()) return "";
      only =
          fmt::format("; '{}'{}", report().readings[used].name, says.substr(std::string_view("; it").size()));
    }
    return only;
  }

  void ask_disagreement() {
    ledger::Query query;
    query.id = "readings disagree";
    query.about = pen_.stage() + "/agreement/total";
    query.says =
        "the readings differ by more than their instruments allow, no one reading much more than the rest";
    query.happens = "The sizes are less sure than they look.";
    query.todo = "Check the zeros, then measure again.";
    pen_.query(std::move(query));
  }

  const SurveyPlan& plan_;
  Pen& pen_;
  Asked asked_;
  MeasuredUp measured_;
  std::vector<LeftAside> left_aside_;
  std::map<std::size_t, std::pair<const Figure*, bool>> wanted_;  // by unknown; whether it is the only one
  std::vector<const Figure*> dimensions_;
};

}  // namespace

void write_survey(const SurveyPlan& plan, Pen& pen) {
  Writer(plan, pen).write();
}

}  // namespace sparewright::survey
