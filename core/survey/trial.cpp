#include "core/survey/trial.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include <fmt/format.h>

#include "core/ledger/share.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::survey {
namespace {

using ledger::Bound;
using ledger::Figure;
using ledger::Pen;

// The trial that tells most from one side, as a figure; none where none does.
struct Tightest {
  const Figure* figure = nullptr;
  const Trials::One* trial = nullptr;
};

std::string local_name(const Trials& trials) {
  return trials.dimension + (trials.at_worn_places ? "/worn place" : "");
}

// What a trial says of the place itself. At a sound place the figure says so, which may have been replaced by a size found;
// at a worn one its bound is that of the original.
Bound bound_of_place(const Trials& trials, const Trials::One& trial, const Figure& figure) {
  if (!trials.at_worn_places) return figure.bound;
  return trial.in_a_gap == trial.goes ? Bound::kAtLeast : Bound::kAtMost;
}

class TrialWriter {
 public:
  TrialWriter(Pen& pen, quantity::UnitSystem system) : pen_(pen), system_(system) {}

  void write(const Trials& trials) {
    const Tightest low = tightest(trials, Bound::kAtLeast);
    const Tightest high = tightest(trials, Bound::kAtMost);
    if (low.figure == nullptr || high.figure == nullptr) return;
    ledger::Shares gap_shares = high.figure->shares;
    ledger::add_scaled(gap_shares, low.figure->shares, -1.0);
    const double gap = high.figure->value - low.figure->value;
    if (-gap > ledger::expanded_uncertainty(gap_shares)) return contradict(trials, low, high);
    const double u_gap = ledger::standard_uncertainty(gap_shares);
    enclose(trials, low, high, std::hypot(std::max(0.0, gap), u_gap) / std::sqrt(kTwelve));
  }

  TrialOutcome outcome;

 private:
  static constexpr double kTwelve =
      12.0;  // the variance of a rectangle of width 1 is 1/12 (JCGM 101:2008, 6.4.2)

  Tightest tightest(const Trials& trials, Bound side) {
    Tightest best;
    for (const Trials::One& trial : trials.all) {
      const Figure& figure = pen_.need("reading/" + trial.reading);
      if (bound_of_place(trials, trial, figure) != side) continue;
      const bool is_tighter =
          best.figure == nullptr ||
          (side == Bound::kAtLeast ? figure.value > best.figure->value : figure.value < best.figure->value);
      if (is_tighter) best = {&figure, &trial};
    }
    return best;
  }

  void enclose(const Trials& trials, const Tightest& low, const Tightest& high, double doubt) {
    ledger::Root between;
    between.kind = low.figure->kind;
    between.value = 0.0;
    between.shares = {{trial_path(local_name(trials)) + "/between", doubt}};
    between.source =
        fmt::format("it may lie anywhere between '{}' and '{}' (JCGM 101:2008, 6.4.2, 6.4.3, from memory)",
                    low.trial->reading, high.trial->reading);
    const Figure& anywhere = pen_.root(local_name(trials) + "/between", between);
    const std::array terms{ledger::Term{low.figure, 0.5}, ledger::Term{high.figure, 0.5},
                           ledger::Term{&anywhere, 1.0}};
    const std::string words = fmt::format("the middle: '{}' {}, '{}' {}", low.trial->reading, does(low),
                                          high.trial->reading, does(high));
    const double middle = low.figure->value + (high.figure->value - low.figure->value) / 2.0;
    pen_.exact(local_name(trials), low.figure->kind, words, middle + anywhere.value, terms,
               "JCGM 101:2008, 6.4.2 and 6.4.3, from memory");
    if (!trials.at_worn_places) outcome.enclosed.push_back(trials.dimension);
  }

  static std::string_view does(const Tightest& one) {
    return name_of(one.trial->goes ? Trial::kGoes : Trial::kWillNotGo);
  }

  // In a hole what goes tells the least; over metal the most.
  void contradict(const Trials& trials, const Tightest& low, const Tightest& high) {
    const Tightest& goes = low.trial->goes ? low : high;
    const Tightest& will_not = low.trial->goes ? high : low;
    const double apart = low.figure->value - high.figure->value;
    ledger::Query query;
    query.id = "trials contradict/" + local_name(trials);
    query.about = goes.figure->name;
    query.says = fmt::format(
        "'{}' goes, yet '{}', {} {}, will not", goes.trial->reading, will_not.trial->reading,
        quantity::shown(apart, low.figure->kind, system_, quantity::usual_places(low.figure->kind, system_)),
        low.trial->goes ? "smaller" : "larger");
    query.happens = fmt::format("Nothing is taken from the trials of {}.", trials.dimension);
    query.todo = "Try both again at one place, and measure what was tried.";
    query.serious = true;
    pen_.query(std::move(query));
    for (const Trials::One& trial : trials.all)
      outcome.contradicting.push_back(trial.reading);
  }

  Pen& pen_;
  quantity::UnitSystem system_;
};

base::Fingerprint definition(const std::vector<Trials>& trials, quantity::UnitSystem system) {
  base::Hasher h;
  h.add("trial").add(static_cast<int>(system));
  for (const Trials& of_one : trials) {
    h.add(local_name(of_one)).add(static_cast<std::uint64_t>(of_one.all.size()));
    for (const Trials::One& trial : of_one.all)
      h.add(trial.reading).add(trial.goes).add(trial.in_a_gap);
  }
  return h.done();
}

}  // namespace

std::vector<Trials> trials_of(const Survey& survey) {
  std::vector<Trials> all;
  for (const Dimension& dimension : survey.dimensions) {
    for (const Condition condition : {Condition::kSound, Condition::kWorn}) {
      Trials trials;
      trials.dimension = dimension.name;
      trials.at_worn_places = condition == Condition::kWorn;
      for (const Reading& reading : survey.readings) {
        const bool bounds =
            reading.trial && *reading.trial != Trial::kGoesWithAPush && reading.condition == condition;
        if (bounds && reading.of == std::vector<std::string>{dimension.name})
          trials.all.push_back({reading.name, *reading.trial == Trial::kGoes, reading.way == Way::kInside});
      }
      if (!trials.all.empty()) all.push_back(std::move(trials));
    }
  }
  return all;
}

base::Fingerprint fingerprint(const TrialOutcome& outcome) {
  base::Hasher h;
  h.add(static_cast<std::uint64_t>(outcome.enclosed.size()));
  for (const std::string& dimension : outcome.enclosed)
    h.add(dimension);
  for (const std::string& reading : outcome.contradicting)
    h.add(reading);
  return h.done();
}

ledger::Stage trial_stage(std::vector<Trials> trials, quantity::UnitSystem system) {
  const base::Fingerprint print = definition(trials, system);
  return {"trial", print, [trials = std::move(trials), system](Pen& pen) {
            TrialWriter writer(pen, system);
            for (const Trials& of_one : trials)
              writer.write(of_one);
            const base::Fingerprint outcome = fingerprint(writer.outcome);
            pen.publish("outcome", std::move(writer.outcome), outcome);
          }};
}

std::string trial_path(std::string_view dimension) {
  return fmt::format("trial/{}", dimension);
}
std::string worn_trial_path(std::string_view dimension) {
  return fmt::format("trial/{}/worn place", dimension);
}

}  // namespace sparewright::survey
