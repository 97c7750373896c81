#include "core/survey/stage.hpp"

#include <algorithm>
#include <map>
#include <memory>
#include <utility>

#include <fmt/format.h>

#include "core/quantity/typed_system.hpp"
#include "core/survey/check.hpp"
#include "core/survey/corrected.hpp"
#include "core/survey/equation.hpp"
#include "core/survey/known.hpp"
#include "core/survey/next_reading.hpp"
#include "core/survey/repeats.hpp"
#include "core/survey/survey_work.hpp"
#include "core/survey/told_formula.hpp"
#include "core/survey/touched_stages.hpp"
#include "core/survey/trial.hpp"
#include "core/survey/unit_mix.hpp"
#include "core/survey/ways.hpp"
#include "core/survey/worn.hpp"

namespace sparewright::survey {
namespace {

using ledger::Origin;
using ledger::Pen;
using ledger::Root;
using ledger::Stage;

template <typename Named>
void sort_by_name(std::vector<Named>& list) {
  std::sort(list.begin(), list.end(), [](const Named& a, const Named& b) { return a.name < b.name; });
}

const Instrument& instrument_named(const Survey& survey, std::string_view name) {
  return *std::find_if(survey.instruments.begin(), survey.instruments.end(),
                       [&](const Instrument& each) { return each.name == name; });
}
const Instrument& instrument_of(const Survey& survey, const Reading& reading) {
  return instrument_named(survey, reading.instrument);
}

// "instrument": the zero errors in use, by their causes.
struct ZeroInUse {
  ZeroError zero;
  quantity::Kind kind = quantity::Kind::kLength;
};

Stage instrument_stage(const Survey& survey) {
  std::map<std::string, ZeroInUse> zeros;
  for (const Reading& reading : survey.readings) {
    if (row_of(reading.way).is_difference) continue;
    const Instrument& instrument = instrument_of(survey, reading);
    ZeroError zero = zero_error_of(instrument, jaws_of(reading));
    std::string local = zero.cause.substr(std::string_view("instrument/").size());
    zeros.emplace(std::move(local), ZeroInUse{std::move(zero), instrument.good_to.kind});
  }
  for (const Touched& touched : survey.touched) {
    const Instrument& instrument = instrument_named(survey, touched.instrument);
    for (std::size_t axis = 0; axis < touched.touches.front().size(); ++axis) {
      const std::string cause = axis_zero_cause(instrument.name, axis);
      zeros.emplace(cause.substr(std::string_view("instrument/").size()),
                    ZeroInUse{zero_error_of(instrument, Jaws::kOutside), instrument.good_to.kind});
    }
  }
  base::Hasher h;
  h.add("instrument");
  for (const auto& [local, in_use] : zeros) {
    h.add(local).add(in_use.zero.within).add(in_use.zero.is_default).add(static_cast<int>(in_use.kind));
    h.add(in_use.zero.why);
  }
  return {"instrument", h.done(), [zeros](Pen& pen) {
            for (const auto& [local, in_use] : zeros) {
              Root root;
              root.kind = in_use.kind;
              root.value = in_use.zero.within;
              root.origin = in_use.zero.is_default ? Origin::kDefault : Origin::kReading;
              root.source = in_use.zero.why;
              pen.root(local, root);
            }
          }};
}

Root root_of(const Reading& reading, Corrected as_it_counts) {
  Root root;
  root.kind = reading.repeats.front().kind;
  root.value = as_it_counts.value;
  root.shares = std::move(as_it_counts.shares);
  root.bound = bound_of(reading);
  root.origin = Origin::kReading;
  root.typed = std::move(as_it_counts.typed);
  root.source = std::move(as_it_counts.source);
  return root;
}

void add(base::Hasher& h, const std::string& name, const Root& root) {
  h.add(name).add(static_cast<int>(root.kind)).add(*root.value).add(static_cast<int>(root.bound));
  h.add(root.typed).add(root.source).add(static_cast<std::uint64_t>(root.shares.size()));
  for (const ledger::Share& share : root.shares)
    h.add(share.cause.text()).add(share.amount).add(share.degrees_of_freedom);
}

// "reading": one root a reading, at a worn place read several times two, and a query where its repeats cannot all be true.
Stage reading_stage(const Survey& survey) {
  std::map<std::string, Root> roots;
  std::vector<ledger::Query> queries;
  base::Hasher h;
  h.add("reading");
  for (const Reading& reading : survey.readings) {
    const Instrument& instrument = instrument_of(survey, reading);
    roots.emplace(reading.name, root_of(reading, corrected(reading, instrument)));
    if (has_most_worn(reading)) {
      Root most = root_of(reading, corrected(reading, instrument, most_worn(reading)));
      most.bound = ledger::Bound::kExact;  // of the place as it is, not of what was there
      roots.emplace(reading.name + std::string(kMostWorn), std::move(most));
    }
    for (auto& query : {repeats_apart(reading, instrument, survey.system), unit_asked(reading, instrument)}) {
      if (!query) continue;
      h.add(ledger::fingerprint(*query));
      queries.push_back(*query);
    }
  }
  for (const auto& [name, root] : roots)
    add(h, name, root);
  return {"reading", h.done(), [roots, queries](Pen& pen) {
            for (const auto& [name, root] : roots)
              pen.root(name, root);
            for (const ledger::Query& query : queries)
              pen.query(query);
          }};
}

AsRead as_read(const Reading& reading, const Instrument& instrument) {
  AsRead read;
  read.name = reading.name;
  read.typed = reading.repeats.front().typed;
  read.is_metric = quantity::system_of(reading.repeats.front()) == quantity::UnitSystem::kMetric;
  read.instrument_kind = instrument.kind;
  if (instrument.turn) read.turn = instrument.turn->base;
  if (row_of(reading.way).is_difference) return read;
  read.zero_found = zero_error_of(instrument, jaws_of(reading)).found;
  read.zero = fmt::format("{}, {}", instrument.name, name_of(jaws_of(reading)));
  return read;
}

// An observation of the plan, for the definition of the stage.
void add(base::Hasher& h, const SurveyPlan::Equation& read) {
  h.add(read.reading).add(read.formula.fingerprint());
  h.add(read.read.typed).add(read.read.is_metric).add(read.read.instrument_kind).add(read.read.zero_found);
  h.add(read.read.zero).add(read.read.turn.value_or(0.0));
  h.add(read.is).add(read.figure).add(read.trial ? static_cast<int>(*read.trial) : -1);
}

base::Result<SurveyPlan::Equation> planned(const Survey& survey, const Reading& reading) {
  auto equation = equation_of(reading, survey.dimensions, survey.system);
  if (!equation) return base::fail(equation.error());
  SurveyPlan::Equation read;
  read.reading = reading.name;
  read.formula = std::move(*equation);
  read.read = as_read(reading, instrument_of(survey, reading));
  read.figure = "reading/" + reading.name;
  read.trial = reading.trial;
  return read;
}

// The trials that may enclose a size read as one of them does; what is known has its own equation.
std::vector<SurveyPlan::Equation> planned_trials(const Survey& survey, const SurveyPlan& plan) {
  std::vector<SurveyPlan::Equation> all;
  for (const Trials& trials : trials_of(survey)) {
    if (trials.at_worn_places) continue;
    const auto one = std::find_if(plan.readings.begin(), plan.readings.end(), [&](const auto& read) {
      return read.reading == trials.all.front().reading;
    });
    SurveyPlan::Equation enclosed = *one;
    enclosed.reading = "trials of " + trials.dimension;
    enclosed.read = {};
    enclosed.from = SurveyPlan::From::kTrial;
    enclosed.figure = trial_path(trials.dimension);
    enclosed.of = trials.dimension;
    enclosed.trial.reset();
    all.push_back(std::move(enclosed));
  }
  return all;
}

// What touches tell of a dimension.
base::Result<SurveyPlan::Equation> planned(const Survey& survey, const ToldReading& told) {
  auto equation = told_formula(told, survey.dimensions, survey.system);
  if (!equation) return base::fail(equation.error());
  SurveyPlan::Equation read;
  read.reading = told.name;
  read.formula = std::move(*equation);
  read.from = SurveyPlan::From::kTouches;
  read.figure = told.path;
  return read;
}

base::Result<std::vector<SurveyPlan::Equation>> planned_known(const Survey& survey) {
  std::vector<SurveyPlan::Equation> all;
  for (const Known& known : survey.known) {
    auto equation = equation_of(known, survey.dimensions, survey.system);
    if (!equation) return base::fail(equation.error());
    SurveyPlan::Equation one;
    one.reading = known.name;
    one.formula = std::move(*equation);
    one.is = known.is;
    one.from = SurveyPlan::From::kKnown;
    one.figure = known_path(known.name);
    all.push_back(std::move(one));
  }
  return all;
}

// "survey": the equations; values and doubts are asked of the readings' figures.
base::Result<Stage> survey_stage(const Survey& survey) {
  auto plan = std::make_shared<SurveyPlan>();
  plan->unknowns = survey.dimensions;
  plan->system = survey.system;
  for (const Reading& reading : survey.readings) {
    auto read = planned(survey, reading);
    if (!read) return base::fail(read.error());
    plan->readings.push_back(std::move(*read));
  }
  for (const ToldReading& told : told_readings(survey)) {
    auto read = planned(survey, told);
    if (!read) return base::fail(read.error());
    plan->readings.push_back(std::move(*read));
  }
  plan->trials = planned_trials(survey, *plan);
  auto known = planned_known(survey);
  if (!known) return base::fail(known.error());
  plan->known = std::move(*known);
  base::Hasher h;
  h.add("survey")
      .add(static_cast<int>(survey.system))
      .add(static_cast<std::uint64_t>(survey.dimensions.size()));
  for (const Dimension& dimension : survey.dimensions)
    h.add(dimension.name).add(static_cast<int>(dimension.kind));
  for (const auto* list : {&plan->readings, &plan->trials, &plan->known}) {
    for (const SurveyPlan::Equation& read : *list)
      add(h, read);
  }
  return Stage{"survey", h.done(),
               [plan = std::shared_ptr<const SurveyPlan>(plan)](Pen& pen) { write_survey(*plan, pen); }};
}

}  // namespace

base::ResultOrAll<std::vector<Stage>> survey_stages(const Survey& survey) {
  base::Failures failures;
  for (Trouble& trouble : troubles(survey))
    failures.push_back(std::move(trouble.failure));
  if (!failures.empty()) return tl::unexpected<base::Failures>(std::move(failures));
  Survey sorted = survey;
  sort_by_name(sorted.dimensions);
  sort_by_name(sorted.readings);
  sort_by_name(sorted.known);
  std::vector<Stage> stages = touched_stages(sorted);
  stages.push_back(instrument_stage(sorted));
  if (!sorted.readings.empty()) stages.push_back(reading_stage(sorted));
  if (sorted.dimensions.empty()) return stages;  // touched alone, and no dimension named
  auto last = survey_stage(sorted);
  if (!last) return tl::unexpected<base::Failures>({last.error()});
  auto trials = trials_of(sorted);
  if (!trials.empty()) stages.push_back(trial_stage(std::move(trials), sorted.system));
  if (!sorted.known.empty()) stages.push_back(known_stage(sorted));
  stages.push_back(std::move(*last));
  stages.push_back(next_reading_stage(sorted));
  if (!worn_places(sorted).empty()) stages.push_back(worn_stage(sorted));
  return stages;
}

}  // namespace sparewright::survey
