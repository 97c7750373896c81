// Before measuring: what the part needs, and which instrument of the shop reaches it.
#include <algorithm>
#include <map>

#include <fmt/format.h>

#include "core/measuring/needs.hpp"
#include "core/measuring/room.hpp"

namespace sparewright::measuring {
namespace {

using ledger::Figure;
using ledger::Pen;
using ledger::State;
using survey::Jaws;
using survey::Reaches;

// From limit to limit; none where they are not known yet and the text does not say it either.
std::optional<double> width_of(Pen& pen, const std::string& least, const std::string& most) {
  const Figure& low = pen.ask(least);
  const Figure& high = pen.ask(most);
  if (!low.known() || !high.known()) return std::nullopt;
  return high.value - low.value;
}

// What the clearance asked leaves: also before the mate has been measured.
std::optional<double> clearance_width(Pen& pen, const part::Feature& feature) {
  const auto& hole = std::get<part::Hole>(feature.shape);
  if (const auto* on = std::get_if<part::OnMate>(&hole.diameter.size))
    return on->most_clearance.base - on->least_clearance.base;
  const Asked asked = asked_of(feature, hole);
  return width_of(pen, asked.least, asked.most);
}

std::optional<double> tolerance_of(Pen& pen, const Subject& subject, const Need& need) {
  const auto& features = subject.judged.route.part.features;
  const auto feature =
      std::find_if(features.begin(), features.end(), [&](const auto& f) { return f.name == need.feature; });
  if (need.is_mate && feature != features.end() && std::holds_alternative<part::Hole>(feature->shape))
    return clearance_width(pen, *feature);
  const std::string path = fmt::format("{}/{}", part::feature_path(need.feature), need.local);
  if (const auto width = width_of(pen, path + "/least", path + "/most")) return width;
  if (const auto* written = std::get_if<quantity::Deviations>(&need.by->tolerance.form))
    return written->upper.base - written->lower.base;
  return std::nullopt;
}

// Over metal or in a gap, where that is known; a mate of a hole goes into it, whatever it was read by.
std::optional<Jaws> jaws_for(const Subject& subject, const Need& need) {
  if (const auto* original = intent::find_original(subject.judged.originals, need.dimension)) {
    if (original->role == intent::Role::kHole) return Jaws::kInside;
    if (original->role == intent::Role::kShaft) return Jaws::kOutside;
  }
  const bool into_a_hole = need.is_mate && need.local == "diameter" && need.by->jaws == "inside jaws";
  if (into_a_hole) return Jaws::kOutside;
  return std::nullopt;
}

std::string shown(const PlanRow& row, double value, quantity::UnitSystem system) {
  return quantity::shown(value, row.kind, system, quantity::usual_places(row.kind, system));
}

std::string of_the_best(const PlanRow& row, quantity::UnitSystem system) {
  const survey::Reach& best = row.with.front();
  const std::string tolerance = row.tolerance_mm ? shown(row, *row.tolerance_mm, system) : std::string();
  switch (best.reaches) {
    case Reaches::kYes:
      return fmt::format("{} knows it to {}{}", best.instrument, shown(row, best.unknown, system),
                         best.range_known ? "" : "; whether it goes that far is not known");
    case Reaches::kBarely:
      return fmt::format("{} knows it to {} either way, against {} from limit to limit: there is little left",
                         best.instrument, shown(row, best.unknown, system), tolerance);
    case Reaches::kTooCoarse:
      return fmt::format(
          "NOT KNOWN with what is here: the best, {}, knows it to {} either way, and {} is asked",
          best.instrument, shown(row, best.unknown, system), tolerance);
    case Reaches::kDoesNotGo:
      return fmt::format("NOT KNOWN with what is here: {} {}", best.instrument, best.why);
  }
  return "";
}

// State and sentence of a row whose size, tolerance and jaws are there.
void judge_row(PlanRow& row, const Subject& subject, const std::optional<Jaws>& jaws) {
  row.with = survey::reaches(subject.survey.instruments, {jaws, row.size_mm, row.tolerance_mm, row.kind});
  if (row.with.empty()) {
    row.says = "NOT KNOWN with what is here: the shop has no instrument for it";
    return;
  }
  row.says = of_the_best(row, subject.survey.system);
  if (row.with.front().reaches == Reaches::kYes) row.state = State::kOk;
  if (row.with.front().reaches == Reaches::kBarely) row.state = State::kClose;
  if (row.tolerance_mm) return;
  row.state = State::kNotKnown;
  row.says = "its tolerance is not known yet; " + row.says;
}

void add_old_sizes(Pen& pen, const Subject& subject, Plan& plan) {
  std::map<std::string, PlanRow> rows;
  std::map<std::string, std::optional<Jaws>> jaws;
  for (const Need& need : needs_of(subject.judged.route.part)) {
    PlanRow& row = rows[need.dimension];
    if (row.what.empty()) {
      row.what = need.dimension;
      row.needed_for = fmt::format("{}, {}", need.feature, need.local);
    }
    if (const auto width = tolerance_of(pen, subject, need))
      row.tolerance_mm = std::min(*width, row.tolerance_mm.value_or(*width));
    if (!jaws[need.dimension]) jaws[need.dimension] = jaws_for(subject, need);
  }
  for (auto& [name, row] : rows) {
    for (const survey::Dimension& dimension : subject.survey.dimensions) {
      if (dimension.name == name) row.kind = dimension.kind;
    }
    const Figure& measured = pen.ask(intent::measured_path(name));
    const Figure& accepted = pen.ask(intent::accepted_path(name));
    if (measured.known())
      row.size_mm = measured.value;
    else if (accepted.known())
      row.size_mm = accepted.value;
    judge_row(row, subject, jaws[name]);
    plan.rows.push_back(std::move(row));
  }
}

void add_new_sizes(Pen& pen, const Subject& subject, Plan& plan) {
  for (const part::Feature& feature : subject.judged.route.part.features) {
    for (const part::NamedDimension& named : part::dimensions_of(feature)) {
      if (!part::has_aim(*named.dimension)) continue;
      const std::string path = fmt::format("{}/{}", part::feature_path(feature.name), named.local);
      PlanRow row;
      row.what = fmt::format("{}, {}", feature.name, named.local);
      row.of_new_part = true;
      row.kind = named.dimension->kind;
      row.tolerance_mm = width_of(pen, path + "/least", path + "/most");
      if (const Figure& nominal = pen.ask(path); nominal.known()) row.size_mm = nominal.value;
      judge_row(row, subject, jaws_named(named.dimension->jaws));
      plan.rows.push_back(std::move(row));
    }
  }
}

}  // namespace

void write_plan(Pen& pen, const Subject& subject) {
  Plan plan;
  add_old_sizes(pen, subject, plan);
  add_new_sizes(pen, subject, plan);
  const base::Fingerprint print = fingerprint(plan);
  pen.publish("rows", std::move(plan), print);
}

base::Fingerprint fingerprint(const Plan& plan) {
  base::Hasher h;
  for (const PlanRow& row : plan.rows) {
    h.add(row.what).add(row.of_new_part).add(row.needed_for).add(row.says).add(static_cast<int>(row.state));
    h.add(static_cast<int>(row.kind));
    for (const auto& size : {row.size_mm, row.tolerance_mm})
      h.add(size.has_value()).add(size.value_or(0.0));
    for (const survey::Reach& reach : row.with) {
      h.add(reach.instrument).add(static_cast<int>(reach.jaws)).add(static_cast<int>(reach.reaches));
      h.add(reach.unknown).add(reach.range_known).add(reach.why);
    }
  }
  return h.done();
}

}  // namespace sparewright::measuring
