#include "app/measuring.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <string_view>

#include <fmt/format.h>

#include "app/printing.hpp"
#include "app/questioned.hpp"
#include "core/survey/measure_up.hpp"
#include "core/survey/measured_rows.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::app {
namespace {

using survey::MeasuredUp;

// A smaller part of a doubt than this is not told.
constexpr double kLeastPart = 0.01;
// Nor that two dimensions hang together by less.
constexpr double kLeastCorrelation = 0.1;

// "reading/over both/good to" -> "'over both', good to"; "instrument/caliper 6/outside jaws/zero" -> "zero of caliper 6,
// outside jaws". Any other cause by its name.
std::string cause_words(std::string_view cause) {
  const std::size_t first = cause.find('/');
  if (first == std::string_view::npos) return std::string(cause);
  const std::string_view room = cause.substr(0, first);
  const std::string_view rest = cause.substr(first + 1);
  const std::size_t last = rest.rfind('/');
  if (last == std::string_view::npos) return std::string(cause);
  const std::string_view of = rest.substr(0, last);
  const std::string_view what = rest.substr(last + 1);
  if (room == "reading") return fmt::format("'{}', {}", of, what);
  if (room != "instrument") return std::string(cause);
  std::string who(of);
  if (const std::size_t jaws = who.find('/'); jaws != std::string::npos) who.replace(jaws, 1, ", ");
  return fmt::format("{} of {}", what, who);
}

class Rows {
 public:
  Rows(const job::Job& job, ledger::Ledger& ledger)
      : job_(job),
        report_(ledger.value<MeasuredUp>("survey/report")),
        figures_(ledger.keep()),
        questioned_(job, ledger) {
    if (!report_) return;
    for (std::size_t i = 0; i < report_->used.size(); ++i)
      used_[report_->adjustment.readings[i].name] = i;
  }

  [[nodiscard]] MeasuredRow size(const survey::MeasuredRow& measured) const {
    const ledger::Figure& figure = measured.size;
    MeasuredRow row;
    row.name = figure.name.text().substr(std::string_view("survey/").size());
    row.size = row_of(figure, job_.system);
    if (!figure.known()) return row;
    if (figure.u() > 0.0) {
      row.k = figure.expanded() / figure.u();
      row.expanded = *row.k * row.size.u.value_or(0.0);
    }
    row.in_question = questioned_.about(row.name);
    row.is_checked = measured.checked && measured.without.empty() && row.in_question.empty();
    for (const survey::CausesPart& one : measured.by_cause) {
      if (one.part >= kLeastPart) row.doubts.push_back({cause_words(one.cause), one.part});
    }
    for (const survey::ReadingsPart& one : measured.by_reading)
      row.by_reading.push_back({one.name, one.part});
    for (const survey::WithOther& other : measured.with_others) {
      if (std::abs(other.correlation) >= kLeastCorrelation)
        row.together.push_back({other.dimension, other.correlation});
    }
    for (const ledger::Figure& without : measured.without)
      row.without.push_back(row_of(without, job_.system));
    if (measured.now) row.now = row_of(*measured.now, job_.system);
    if (measured.wear) row.wear = row_of(*measured.wear, job_.system);
    add_how_found(row);
    return row;
  }

  [[nodiscard]] ReadingRow reading(const survey::Reading& reading) const {
    ReadingRow row;
    row.name = reading.name;
    row.way = survey::name_of(reading.way);
    row.of = reading.of;
    row.is = reading.is;
    row.instrument = reading.instrument;
    row.place = reading.place;
    if (const ledger::Figure* counts = figures_.find("reading/" + reading.name))
      row.counts = row_of(*counts, job_.system);
    const auto used = used_.find(reading.name);
    row.use = used == used_.end() ? (reading.trial ? "tried" : "set aside") : "used";
    if (reading.condition != survey::Condition::kSound)
      row.use += fmt::format(", {}", survey::name_of(reading.condition));
    if (reading.trial) row.use += fmt::format(", {}", survey::name_of(*reading.trial));
    if (const ledger::Figure* differs = figures_.find("survey/differs/" + reading.name))
      row.differs = row_of(*differs, job_.system);
    if (used == used_.end()) return row;
    const survey::Fit& fit = report_->adjustment.readings[used->second];
    row.redundancy = fit.redundancy;
    row.times_its_doubt = fit.odds;
    return row;
  }

  [[nodiscard]] TouchedRow touched(const survey::Touched& touched) const {
    TouchedRow row;
    row.name = touched.name;
    row.form = survey::name_of(touched.form);
    row.side = survey::name_of(touched.side);
    for (const auto& touch : touched.touches) {
      auto& typed = row.touches.emplace_back();
      for (const quantity::Typed& coordinate : touch)
        typed.push_back(coordinate.typed);
    }
    row.instrument = touched.instrument;
    row.tip = touched.tip.name;
    row.place = touched.place;
    row.use = "used";
    if (touched.condition == survey::Condition::kWorn)
      row.use = "worn: its size is a bound, its place not used";
    if (touched.condition == survey::Condition::kBent ||
        touched.condition == survey::Condition::kAcrossABreak)
      row.use = fmt::format("set aside, {}", survey::name_of(touched.condition));
    for (const survey::Gives& one : touched.gives)
      row.gives.push_back({std::string(survey::row_of(one.told).figure), one.dimension});
    const auto number = [&](const char* which) -> std::optional<NumberRow> {
      const ledger::Figure* figure = figures_.find(fmt::format("touched/{}/{}", touched.name, which));
      return figure == nullptr ? std::nullopt : std::optional(row_of(*figure, job_.system));
    };
    row.form_error = number("form error");
    row.furthest_off = number("furthest off");
    return row;
  }

  void agreement(Measured& measured) const {
    if (!report_) return;
    measured.spare_readings = report_->adjustment.degrees_of_freedom;
    if (measured.spare_readings <= 0) return;
    measured.total = report_->adjustment.chi_square;
    measured.limit = report_->adjustment.chi_square_limit;
  }

 private:
  void add_how_found(MeasuredRow& row) const {
    if (!report_) return;
    const survey::Adjustment& adjustment = report_->adjustment;
    const auto found = std::find_if(adjustment.unknowns.begin(), adjustment.unknowns.end(),
                                    [&](const survey::Found& one) { return one.name == row.name; });
    if (found == adjustment.unknowns.end()) return;
    for (const std::size_t i : found->unchecked_readings)
      row.unchecked.push_back(adjustment.readings[i].name);
    const auto j = static_cast<std::size_t>(found - adjustment.unknowns.begin());
    for (std::size_t i = 0; i < adjustment.readings.size(); ++i) {
      if (const double by = adjustment.slopes.at(j, i); by != 0.0)
        row.follows.push_back({adjustment.readings[i].name, by});
    }
  }

  const job::Job& job_;
  std::shared_ptr<const MeasuredUp> report_;
  ledger::Snapshot figures_;
  Questioned questioned_;
  std::map<std::string, std::size_t> used_;  // by the reading's name: its place in the adjustment
};

}  // namespace

Measured measured_of(const job::Job& job, ledger::Ledger& ledger) {
  const Rows rows(job, ledger);
  Measured measured;
  for (const survey::MeasuredRow& row : survey::measured_rows(ledger, job.survey))
    measured.sizes.push_back(rows.size(row));
  for (const survey::Reading& reading : job.survey.readings)
    measured.readings.push_back(rows.reading(reading));
  for (const survey::Touched& touched : job.survey.touched)
    measured.touched.push_back(rows.touched(touched));
  rows.agreement(measured);
  add_plan(ledger, measured);
  for (const ledger::Query& query : queries_of_readings(job, ledger))
    measured.queries.push_back(row_of(query));
  return measured;
}

}  // namespace sparewright::app
