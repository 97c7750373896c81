// What is to be measured, and whether it was measured well enough, as rows.
#include <fmt/format.h>

#include "app/measuring.hpp"
#include "core/measuring/measuring.hpp"

namespace sparewright::app {
namespace {

PlanRow row_of(const measuring::PlanRow& plan) {
  PlanRow row;
  row.what = plan.what;
  row.of_new_part = plan.of_new_part;
  row.needed_for = plan.needed_for;
  row.verdict = ledger::name_of(plan.state);
  row.says = plan.says;
  for (const survey::Reach& reach : plan.with) {
    if (reach.reaches == survey::Reaches::kYes || reach.reaches == survey::Reaches::kBarely)
      row.with.push_back(fmt::format("{}, {}", reach.instrument, survey::name_of(reach.jaws)));
  }
  return row;
}

MetRow row_of(const measuring::MetRow& met) {
  MetRow row;
  row.feature = met.feature;
  row.mate = met.mate;
  row.verdict = ledger::name_of(met.state);
  row.says = met.says;
  row.missing = met.missing;
  for (const measuring::Remedy& remedy : met.remedies) {
    if (!remedy.todo.empty())
      row.todo.push_back(
          fmt::format("{}, {:.0f} % of the doubt: {}", remedy.of, 100.0 * remedy.doubt.part, remedy.todo));
  }
  return row;
}

}  // namespace

void add_plan(ledger::Ledger& ledger, Measured& measured) {
  if (const auto plan = ledger.value<measuring::Plan>(measuring::kPlan)) {
    for (const measuring::PlanRow& row : plan->rows)
      measured.plan.push_back(row_of(row));
  }
  if (const auto met = ledger.value<measuring::Met>(measuring::kMet)) {
    for (const measuring::MetRow& row : met->rows)
      measured.met.push_back(row_of(row));
  }
}

}  // namespace sparewright::app
