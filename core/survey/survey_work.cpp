#include "core/survey/survey_work.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <utility>

#include <fmt/format.h>

#include "core/base/messages.hpp"
#include "core/ledger/share.hpp"
#include "core/quantity/display.hpp"
#include "core/survey/measure_up.hpp"
#include "core/survey/misread.hpp"

namespace sparewright::survey {
namespace {

using ledger::Bound;
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
  Writer(const SurveyPlan& plan, Pen& pen) : plan_(plan), pen_(pen), network_(asked()) {}

  void write() {
    auto measured = measure_up(network_);
    if (!measured) return tell_failure(measured.error());
    measured_ = std::move(*measured);
    write_wanted();
    for (std::size_t j = 0; j < plan_.unknowns.size(); ++j)
      write_dimension(j);
    for (std::size_t i = 0; i < measured_.used.size(); ++i)
      write_difference(i);
    for (const SetAside& aside : measured_.set_aside)
      write_set_aside(aside);
    write_agreement();
    const auto print = fingerprint(measured_);
    pen_.publish("report", std::move(measured_), print);
  }

 private:
  [[nodiscard]] const Adjustment& report() const { return measured_.adjustment; }
  [[nodiscard]] const Figure& reading(std::size_t used) const { return *figures_[measured_.used[used]]; }
  [[nodiscard]] std::string shown(double value, Kind kind) const {
    return quantity::shown(value, kind, plan_.system, quantity::usual_places(kind, plan_.system));
  }

  Network asked() {
    Network network;
    network.unknowns = plan_.unknowns;
    for (const SurveyPlan::Equation& equation : plan_.readings) {
      const Figure& figure = pen_.need("reading/" + equation.reading);
      figures_.push_back(&figure);
      network.readings.push_back({equation.reading, figure.value, equation.formula, figure.bound});
    }
    const std::size_t n = figures_.size();
    network.covariance = Matrix(n, n);
    for (std::size_t a = 0; a < n; ++a) {
      for (std::size_t b = a; b < n; ++b) {
        const double both = ledger::covariance(figures_[a]->shares, figures_[b]->shares);
        network.covariance.at(a, b) = both;
        network.covariance.at(b, a) = both;
      }
    }
    return network;
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
  }

  // A reading less what the sizes found make it.
  const Figure& write_differs(std::size_t reading_index, double fitted, const std::vector<Term>& sizes) {
    const Figure& figure = *figures_[reading_index];
    const SurveyPlan::Equation& equation = plan_.readings[reading_index];
    std::vector<Term> terms{{&figure, 1.0}};
    for (const Term& size : sizes)
      terms.push_back({size.figure, -size.slope});
    return pen_.linear("differs/" + equation.reading, figure.kind,
                       fmt::format("the reading less {}", equation.formula.typed()), figure.value - fitted,
                       terms);
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

  // A worn place can have less metal than the sound one says, never more.
  void write_set_aside(const SetAside& aside) {
    const Figure& differs = write_differs(aside.reading, aside.fitted, sizes_in(aside.slopes));
    const Bound bound = network_.readings[aside.reading].bound;
    const double too_far = bound == Bound::kAtLeast  ? differs.value
                           : bound == Bound::kAtMost ? -differs.value
                                                     : 0.0;
    if (!differs.known() || too_far <= differs.expanded()) return;
    ledger::Query query;
    query.id = "worn place has more metal/" + aside.name;
    query.about = figures_[aside.reading]->name;
    query.says = fmt::format("'{}' is worn, yet has {} more metal than the sound readings give", aside.name,
                             shown(too_far, differs.kind));
    query.happens = "One of them is misread.";
    query.serious = true;
    query.todo = "Measure both places again.";
    pen_.query(std::move(query));
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
                   fmt::format("{} is this many times its own doubt out", most_at_odds(adjustment)),
                   adjustment.at_odds->odds);
    }
    const Network used = part_of(network_, measured_.used);
    if (auto query = misread_query({used, adjustment, as_read(), plan_.system}, pen_.stage()))
      pen_.query(std::move(*query));
  }

  [[nodiscard]] std::vector<AsRead> as_read() const {
    std::vector<AsRead> all;
    for (const std::size_t i : measured_.used) {
      AsRead& read = all.emplace_back(plan_.readings[i].read);
      read.reading = figures_[i]->value;
      read.kind = figures_[i]->kind;
    }
    return all;
  }

  const SurveyPlan& plan_;
  Pen& pen_;
  std::vector<const Figure*> figures_;  // of all readings; before network_, which is asked for with them
  Network network_;
  MeasuredUp measured_;
  std::map<std::size_t, std::pair<const Figure*, bool>> wanted_;  // by unknown; whether it is the only one
  std::vector<const Figure*> dimensions_;
};

}  // namespace

void write_survey(const SurveyPlan& plan, Pen& pen) {
  Writer(plan, pen).write();
}

}  // namespace sparewright::survey
