#include "app/sizes.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "app/printing.hpp"
#include "app/questioned.hpp"
#include "core/intent/intent.hpp"
#include "core/quantity/display.hpp"
#include "core/survey/measured_rows.hpp"

namespace sparewright::app {
namespace {

using intent::Original;
using intent::Pair;

class Rows {
 public:
  Rows(const job::Job& job, ledger::Ledger& ledger)
      : job_(job),
        ledger_(ledger),
        measured_(survey::measured_rows(ledger, job.survey)),
        questioned_(job, ledger) {}

  SizeRow size(const Original& original) {
    SizeRow row;
    row.name = original.name;
    row.measured = number(intent::measured_path(original.name));
    const std::string path = intent::original_path(original.name);
    if (const auto proposals = ledger_.value<intent::Proposals>(path + "/proposals")) {
      for (std::size_t i = 0; i < proposals->candidates.size(); ++i)
        row.candidates.push_back(candidate(*proposals, i, fmt::format("{}/proposed {}", path, i + 1)));
      row.is_settled = proposals->is_settled;
      row.none = proposals->none;
      if (row.measured.missing.empty()) row.decides = intent::decider_of(*proposals, job_.system);
    }
    add_what_is_at_odds(original.name, row);
    if (original.accepted) {
      row.accepted = number(path + "/size");
      row.leaves_over = number(path + "/leaves over");
      const bool has_limits =
          !std::holds_alternative<quantity::GeneralTolerance>(original.accepted->tolerance.form);
      if (has_limits) row.least = number(path + "/least");
      if (has_limits) row.most = number(path + "/most");
      if (original.accepted->duty) row.duty = part::name_of(*original.accepted->duty);
    }
    for (const part::Feature& feature : job_.subject.route.part.features) {
      const auto* hole = std::get_if<part::Hole>(&feature.shape);
      if (hole != nullptr && part::mate_of(*hole) == original.name) row.mate_of.push_back(feature.name);
    }
    return row;
  }

  // What the sizes together say of the machine; none where nothing was measured.
  std::optional<double> chance_of_inch() {
    const auto all = ledger_.value<intent::AllProposals>("original sizes/together");
    if (!all || all->of.empty()) return std::nullopt;
    return all->of.begin()->second.chance_of_inch;
  }

  PairRow pair(const Pair& pair) {
    const std::string path = intent::pair_path(pair);
    PairRow row;
    row.hole = pair.hole;
    row.shaft = pair.shaft;
    row.is_measured = pair.is_measured;
    if (pair.is_measured) row.clearance = number(path + "/clearance");
    row.least = number(path + "/least");
    row.most = number(path + "/most");
    row.unit = quantity::display_unit(quantity::Kind::kLength, job_.system).symbol;
    const auto fits = ledger_.value<intent::FitOfPair>(path + "/fits");
    if (!fits) return row;
    for (const intent::NearFit& near : fits->near)
      row.near.push_back(near_fit(near));
    for (const intent::MadeTo& one : fits->made_to)
      row.made_to.push_back(one.fit + (one.certain ? "" : ", as far as the readings can tell"));
    return row;
  }

 private:
  NumberRow number(const std::string& name) { return row_of(ledger_.get(name), job_.system); }

  [[nodiscard]] double in_unit(double mm) const {
    return quantity::display_unit(quantity::Kind::kLength, job_.system).from_base(mm);
  }

  // Nothing that rests on readings at odds is settled.
  void add_what_is_at_odds(const std::string& name, SizeRow& row) {
    row.in_question = questioned_.about(name);
    const std::string path = intent::measured_path(name);
    for (const survey::MeasuredRow& measured : measured_) {
      if (measured.size.name.text() != path) continue;
      for (const ledger::Figure& without : measured.without)
        row.without.push_back({row_of(without, job_.system), made_to_without(name, without)});
    }
    if (row.without.empty() && row.in_question.empty()) return;
    row.is_settled = false;
    row.decides = row.without.empty() ? "what is asked of its reading, answered, would decide"
                                      : "the readings at odds, cleared up, would decide";
  }

  // without: survey/without/<readings>/<dimension>.
  std::optional<CandidateRow> made_to_without(const std::string& name, const ledger::Figure& without) {
    const auto all = ledger_.value<intent::AllProposals>("original sizes/together");
    if (!all) return std::nullopt;
    for (const auto& [readings, of] : all->without) {
      if (without.name.text() != intent::measured_without_path(readings, name)) continue;
      const auto found = of.find(name);
      if (found == of.end() || found->second.candidates.empty()) return std::nullopt;
      return candidate(found->second, 0, intent::original_without_path(readings, name) + "/proposed 1");
    }
    return std::nullopt;
  }

  CandidateRow candidate(const intent::Proposals& proposals, std::size_t i, const std::string& path) {
    const intent::Candidate& one = proposals.candidates[i];
    CandidateRow row;
    row.name = one.name;
    row.size = number(path);
    row.leaves_over = number(path + " leaves over");
    row.chance = one.chance;
    row.odds = intent::odds_of(one.chance);
    row.may_be_it = one.may_be_it;
    row.reason = intent::reason_of(one, proposals.measured, job_.system);
    return row;
  }

  NearFitRow near_fit(const intent::NearFit& near) const {
    const int places = quantity::usual_places(quantity::Kind::kLength, job_.system);
    NearFitRow row;
    row.duty = handbook::name_of(near.duty);
    row.standard = handbook::name_of(near.standard);
    row.fit = near.fit;
    row.name = near.name;
    row.least = in_unit(near.has.least_mm);
    row.most = in_unit(near.has.most_mm);
    row.out = in_unit(near.out_mm);
    row.shown = fmt::format("{} to {}", quantity::signed_fixed(row.least, places),
                            quantity::signed_fixed(row.most, places));
    if (near.out_mm > 0.0) row.out_shown = quantity::fixed(row.out, places);
    row.source = near.source;
    return row;
  }

  const job::Job& job_;
  ledger::Ledger& ledger_;
  std::vector<survey::MeasuredRow> measured_;
  Questioned questioned_;
};

}  // namespace

Sizes sizes_of(const job::Job& job, ledger::Ledger& ledger) {
  Rows rows(job, ledger);
  Sizes sizes;
  for (const Original& original : job.subject.originals.all)
    sizes.sizes.push_back(rows.size(original));
  if (const auto inch = rows.chance_of_inch()) {
    sizes.chance_of_inch = *inch;
    sizes.machine = fmt::format("{}, {}", *inch >= 0.5 ? "an inch machine" : "a metric machine",
                                intent::odds_of(std::max(*inch, 1.0 - *inch)));
  }
  for (const Pair& pair : intent::pairs_of(job.subject.originals, job.subject.route.part))
    sizes.pairs.push_back(rows.pair(pair));
  for (const ledger::Query& query : queries_of_readings(job, ledger)) {
    if (query.serious && query.state == ledger::QueryState::kOpen) sizes.queries.push_back(row_of(query));
  }
  return sizes;
}

}  // namespace sparewright::app
