#include "core/survey/measured_rows.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/ledger/share.hpp"
#include "core/survey/measure_up.hpp"
#include "core/survey/worn.hpp"

namespace sparewright::survey {
namespace {

using ledger::Figure;

// What is only rounding of a part or a correlation.
constexpr double kNothing = 1e-12;

class RowWriter {
 public:
  RowWriter(ledger::Ledger& ledger, const Survey& survey)
      : survey_(survey), state_(ledger.keep()), report_(ledger.value<MeasuredUp>("survey/report")) {
    for (const Figure* figure : state_.figures())
      if (figure->name.text().starts_with(kWithout)) without_.push_back(figure);
  }

  MeasuredRow row(const Dimension& dimension) {
    MeasuredRow row;
    const Figure* size = find("survey/" + dimension.name);
    if (size == nullptr) return row;
    row.size = *size;
    if (const Figure* now = find(worn_now_path(dimension.name))) row.now = *now;
    if (const Figure* wear = find(worn_wear_path(dimension.name))) row.wear = *wear;
    if (!size->known()) return row;
    row.degrees_of_freedom = ledger::effective_degrees_of_freedom(size->shares);
    find_causes(row);
    find_others(row);
    if (report_) find_readings(dimension.name, row);
    find_without(dimension.name, row);
    return row;
  }

 private:
  static constexpr std::string_view kWithout = "survey/without/";

  const Figure* find(const std::string& name) { return state_.find(name); }

  static void find_causes(MeasuredRow& row) {
    const double u = row.size.u();
    for (const ledger::Share& share : row.size.shares)
      row.by_cause.push_back({std::string(share.cause.text()), (share.amount / u) * (share.amount / u)});
    std::stable_sort(row.by_cause.begin(), row.by_cause.end(),
                     [](const CausesPart& a, const CausesPart& b) { return a.part > b.part; });
  }

  void find_others(MeasuredRow& row) {
    for (const Dimension& other : survey_.dimensions) {
      const Figure* figure = find("survey/" + other.name);
      if (figure == nullptr || !figure->known() || figure->name == row.size.name) continue;
      const double both = row.size.u() * figure->u();
      if (!(both > 0.0)) continue;
      const double correlation = ledger::covariance(row.size.shares, figure->shares) / both;
      if (std::abs(correlation) > kNothing) row.with_others.push_back({other.name, correlation});
    }
  }

  void find_readings(const std::string& dimension, MeasuredRow& row) {
    const Adjustment& report = report_->adjustment;
    const auto found = std::find_if(report.unknowns.begin(), report.unknowns.end(),
                                    [&](const Found& one) { return one.name == dimension; });
    if (found == report.unknowns.end() || !found->fixed) return;
    row.checked = found->checked;
    const auto j = static_cast<std::size_t>(found - report.unknowns.begin());
    const double variance = row.size.u() * row.size.u();
    for (std::size_t i = 0; i < report.readings.size(); ++i) {
      const Figure* figure = observed(report.readings[i].name);
      const double slope = report.slopes.at(j, i);
      if (figure == nullptr || slope == 0.0 || !(variance > 0.0)) continue;
      const double part = slope * ledger::covariance(figure->shares, row.size.shares) / variance;
      if (std::abs(part) > kNothing) row.by_reading.push_back({report.readings[i].name, part});
    }
    std::stable_sort(row.by_reading.begin(), row.by_reading.end(),
                     [](const ReadingsPart& a, const ReadingsPart& b) { return a.part > b.part; });
  }

  // The figure of an observation: a reading, what is known, or the trials of a dimension.
  const Figure* observed(const std::string& name) {
    constexpr std::string_view kTrials = "trials of ";
    for (const std::string& path : {"reading/" + name, "known/" + name}) {
      if (const Figure* figure = find(path)) return figure;
    }
    return name.starts_with(kTrials) ? find("trial/" + name.substr(kTrials.size())) : nullptr;
  }

  void find_without(const std::string& dimension, MeasuredRow& row) {
    for (const Figure* figure : without_) {
      const std::string_view name = figure->name.text();
      if (!name.ends_with("/" + dimension)) continue;
      row.without.push_back(*figure);
      const Figure* hangs = find("survey/hangs on/" + std::string(name.substr(kWithout.size())));
      row.hangs_on.push_back(hangs != nullptr ? *hangs : Figure{});
    }
  }

  const Survey& survey_;
  ledger::Snapshot state_;
  std::shared_ptr<const MeasuredUp> report_;
  std::vector<const Figure*> without_;
};

}  // namespace

std::vector<MeasuredRow> measured_rows(ledger::Ledger& ledger, const Survey& survey) {
  RowWriter writer(ledger, survey);
  std::vector<MeasuredRow> rows;
  for (const Dimension& dimension : survey.dimensions)
    rows.push_back(writer.row(dimension));
  return rows;
}

}  // namespace sparewright::survey
