#include "app/measuring.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <string_view>

#include <fmt/format.h>

#include "app/printing.hpp"
#include "core/survey/measure_up.hpp"
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

std::vector<DoubtRow> doubts_in(const ledger::Shares& shares) {
  const double all = std::pow(ledger::standard_uncertainty(shares), 2);
  std::vector<DoubtRow> doubts;
  if (all <= 0.0) return doubts;
  for (const ledger::Share& share : shares)
    doubts.push_back({cause_words(share.cause.text()), share.amount * share.amount / all});
  std::stable_sort(doubts.begin(), doubts.end(),
                   [](const DoubtRow& a, const DoubtRow& b) { return a.part > b.part; });
  std::erase_if(doubts, [](const DoubtRow& one) { return one.part < kLeastPart; });
  return doubts;
}

class Rows {
 public:
  Rows(const job::Job& job, ledger::Ledger& ledger)
      : job_(job), report_(ledger.value<MeasuredUp>("survey/report")), figures_(ledger.keep()) {
    if (!report_) return;
    for (std::size_t i = 0; i < report_->used.size(); ++i)
      used_[report_->adjustment.readings[i].name] = i;
  }

  [[nodiscard]] MeasuredRow size(const survey::Dimension& dimension) const {
    MeasuredRow row;
    row.name = dimension.name;
    const ledger::Figure* figure = figures_.find("survey/" + dimension.name);
    if (figure == nullptr) return row;
    row.size = row_of(*figure, job_.system);
    if (!figure->known()) return row;
    if (figure->u() > 0.0) {
      row.k = figure->expanded() / figure->u();
      row.expanded = *row.k * row.size.u.value_or(0.0);
    }
    row.doubts = doubts_in(figure->shares);
    row.together = together(dimension.name, *figure);
    if (report_) add_how_found(dimension.name, row);
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
    row.use = used == used_.end() ? "set aside" : "used";
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

  void agreement(Measured& measured) const {
    if (!report_) return;
    measured.spare_readings = report_->adjustment.degrees_of_freedom;
    if (measured.spare_readings <= 0) return;
    measured.total = report_->adjustment.chi_square;
    measured.limit = report_->adjustment.chi_square_limit;
  }

 private:
  [[nodiscard]] std::vector<TogetherRow> together(const std::string& name,
                                                  const ledger::Figure& figure) const {
    std::vector<TogetherRow> rows;
    for (const survey::Dimension& other : job_.survey.dimensions) {
      if (other.name == name) continue;
      const ledger::Figure* its = figures_.find("survey/" + other.name);
      if (its == nullptr || !its->known() || its->u() <= 0.0 || figure.u() <= 0.0) continue;
      const double r = ledger::covariance(figure.shares, its->shares) / (figure.u() * its->u());
      if (std::abs(r) >= kLeastCorrelation) rows.push_back({other.name, r});
    }
    std::stable_sort(rows.begin(), rows.end(), [](const TogetherRow& a, const TogetherRow& b) {
      return std::abs(a.correlation) > std::abs(b.correlation);
    });
    return rows;
  }

  void add_how_found(const std::string& name, MeasuredRow& row) const {
    const survey::Adjustment& adjustment = report_->adjustment;
    const auto found = std::find_if(adjustment.unknowns.begin(), adjustment.unknowns.end(),
                                    [&](const survey::Found& one) { return one.name == name; });
    if (found == adjustment.unknowns.end()) return;
    row.is_checked = found->checked;
    for (const std::size_t i : found->unchecked_readings)
      row.unchecked.push_back(adjustment.readings[i].name);
    const auto j = static_cast<std::size_t>(found - adjustment.unknowns.begin());
    for (const survey::Reading& reading : job_.survey.readings) {
      const auto used = used_.find(reading.name);
      if (used == used_.end()) continue;
      if (const double by = adjustment.slopes.at(j, used->second); by != 0.0)
        row.follows.push_back({reading.name, by});
    }
  }

  const job::Job& job_;
  std::shared_ptr<const MeasuredUp> report_;
  ledger::Snapshot figures_;
  std::map<std::string, std::size_t> used_;  // by the reading's name: its place in the adjustment
};

bool is_about_readings(const ledger::Query& query) {
  return query.about.starts_with("reading/") || query.about.starts_with("survey/");
}

}  // namespace

Measured measured_of(const job::Job& job, ledger::Ledger& ledger) {
  const Rows rows(job, ledger);
  Measured measured;
  for (const survey::Dimension& dimension : job.survey.dimensions)
    measured.sizes.push_back(rows.size(dimension));
  for (const survey::Reading& reading : job.survey.readings)
    measured.readings.push_back(rows.reading(reading));
  rows.agreement(measured);
  for (const ledger::Query& query : job::queries(job, ledger.queries())) {
    if (is_about_readings(query)) measured.queries.push_back(row_of(query));
  }
  return measured;
}

}  // namespace sparewright::app
