#include "app/printing.hpp"

#include <cmath>

#include <fmt/format.h>

#include "core/base/messages.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::app {
namespace {

// A width: a difference of its kind, so a temperature's has no offset.
double width_in_unit(double base, quantity::Kind kind, quantity::UnitSystem system) {
  const quantity::Unit unit = quantity::display_unit(kind, system);
  return unit.from_base(base) - unit.from_base(0.0);
}

std::string width_shown(double base, quantity::Kind kind, quantity::UnitSystem system) {
  const quantity::Unit unit = quantity::display_unit(kind, system);
  // One place more than the number itself: half of its last place is worth knowing.
  const std::string number =
      quantity::fixed(width_in_unit(base, kind, system), quantity::usual_places(kind, system) + 1);
  return unit.symbol.empty() ? number : fmt::format("{} {}", number, unit.symbol);
}

}  // namespace

NumberRow row_of(const ledger::Figure& figure, quantity::UnitSystem system) {
  NumberRow row;
  row.name = figure.name;
  row.kind = quantity::code_name(figure.kind);
  row.unit = quantity::display_unit(figure.kind, system).symbol;
  row.bound = ledger::name_of(figure.bound);
  row.typed = figure.typed;
  row.state = figure.known() ? "known" : "NOT KNOWN";
  row.missing = figure.missing;
  row.origin = ledger::name_of(figure.origin);
  row.formula = figure.formula;
  row.inputs.assign(figure.inputs.begin(), figure.inputs.end());
  row.source = figure.source;
  row.flips_after = figure.flips_after;
  if (!figure.known()) {
    row.shown = "NOT KNOWN";
    return row;
  }
  row.value = quantity::display_unit(figure.kind, system).from_base(figure.value);
  row.u = width_in_unit(figure.u(), figure.kind, system);
  const double dof = ledger::effective_degrees_of_freedom(figure.shares);
  if (std::isfinite(dof)) row.dof = dof;
  row.shown = quantity::shown(figure.value, figure.kind, system, quantity::usual_places(figure.kind, system));
  if (!row.bound.empty()) row.shown = row.bound + " " + row.shown;
  if (figure.u() > 0.0) {
    row.good_to = fmt::format("{}, 19 times in 20", width_shown(figure.expanded(), figure.kind, system));
  }
  return row;
}

QueryRow row_of(const ledger::Query& query) {
  return {query.id,
          query.about,
          query.says,
          query.happens,
          query.todo,
          query.serious,
          query.state == ledger::QueryState::kOpen ? "open" : "overruled",
          query.reason};
}

TrailRow row_of(const ledger::Trail& trail, quantity::UnitSystem system) {
  TrailRow row;
  row.number = row_of(trail.figure, system);
  row.shown_before = trail.shown_before;
  for (const ledger::Trail& input : trail.inputs)
    row.inputs.push_back(row_of(input, system));
  return row;
}

VerdictRow row_of(const ledger::Verdict& verdict, const ledger::Snapshot& figures,
                  quantity::UnitSystem system) {
  VerdictRow row;
  row.check = verdict.check;
  row.subject = verdict.subject;
  row.verdict = ledger::name_of(verdict.state);
  row.figure = verdict.figure;
  row.reason = verdict.reason;
  row.source = verdict.source;
  row.todo = verdict.todo;
  row.missing = verdict.missing;
  const auto value_of = [&](const std::string& name) -> std::optional<double> {
    const ledger::Figure* figure = figures.find(name);
    if (figure == nullptr || !figure->known()) return std::nullopt;
    row.unit = quantity::display_unit(figure->kind, system).symbol;
    return quantity::display_unit(figure->kind, system).from_base(figure->value);
  };
  if (verdict.low) row.low = value_of(*verdict.low);
  if (verdict.high) row.high = value_of(*verdict.high);
  if (const ledger::Figure* margin = figures.find(verdict.margin); margin != nullptr && margin->known()) {
    row.margin = value_of(verdict.margin);
    row.margin_shown = quantity::signed_fixed(*row.margin, quantity::usual_places(margin->kind, system));
  }
  return row;
}

Trouble trouble_of(const base::Failure& failure) {
  Trouble trouble;
  trouble.code = base::code_name(failure.code);
  trouble.says = base::sentence(failure);
  trouble.accepted = failure.accepted;
  if (failure.place) {
    trouble.file = failure.place->file;
    trouble.line = failure.place->line;
    trouble.column = failure.place->column;
  }
  return trouble;
}

Troubles troubles_of(const base::Failures& failures) {
  Troubles troubles;
  for (const base::Failure& failure : failures)
    troubles.push_back(trouble_of(failure));
  return troubles;
}

std::string report(const Trouble& trouble) {
  std::string out;
  if (!trouble.file.empty()) {
    out = trouble.line > 0 ? fmt::format("{}:{}:{}: ", trouble.file, trouble.line, trouble.column)
                           : fmt::format("{}: ", trouble.file);
  }
  out += trouble.says;
  if (!trouble.accepted.empty()) out += "\n    accepted: " + trouble.accepted;
  return out;
}

}  // namespace sparewright::app
