// Work clamped down on a mill's table: the clamps stand on something, and the work lies flat.
#include <algorithm>

#include <fmt/format.h>

#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Pen;
using ledger::State;

// A flat that takes the whole of the upper side; a step leaves a place beside it.
const part::Feature* milled_all_over(const Subject& subject, const route::Setup& setup, part::Face up) {
  for (const route::Work& work : setup.works) {
    const part::Feature* feature = part::find_feature(subject.route.part, work.feature);
    const auto* flat = feature != nullptr ? std::get_if<part::Flat>(&feature->shape) : nullptr;
    if (flat != nullptr && flat->side == up && !flat->region) return feature;
  }
  return nullptr;
}

void judge_clamps(Pen& pen, const Subject& subject, const route::Setup& setup, part::Face up) {
  ledger::Verdict verdict;
  verdict.check = "the clamps have a place to stand";
  verdict.subject = route::setup_path(setup);
  verdict.source = "plain sense: what a clamp stands on cannot be milled";
  if (const part::Feature* flat = milled_all_over(subject, setup, up)) {
    verdict.state = State::kNo;
    verdict.reason = fmt::format("'{}' is milled all over the {}, and the clamps stand on it", flat->name,
                                 part::name_of(up));
    verdict.todo = "mill it in a vise; or clamp on a step lower down, said as a flat of its own";
  } else {
    verdict.state = State::kOk;
    verdict.reason = fmt::format("nothing is milled all over the {}", part::name_of(up));
  }
  pen.state(std::move(verdict));
}

void judge_lies_flat(Pen& pen, const route::Setup& setup) {
  ledger::Verdict verdict;
  verdict.check = "work under clamps lies flat";
  verdict.subject = route::setup_path(setup);
  verdict.state = State::kNo;
  verdict.source = "plain geometry";
  verdict.reason = "a bar lies on one line of the table and rolls under the clamps";
  verdict.todo = "hold it in a vise, or drill it in V-blocks";
  pen.state(std::move(verdict));
}

}  // namespace

void add_on_table_checks(const Shared& subject, Stages& stages) {
  for (const route::Setup& setup : subject->route.plan.setups) {
    const auto* on = std::get_if<route::OnMill>(&setup.held);
    if (on == nullptr || on->holding.vise() != nullptr) continue;
    const part::Face up = part::opposite(on->holding.sits_on);
    const bool rolls = part::is_round(subject->route.part.blank.shape) && part::axis_of(up) != part::Axis::kX;
    stages.push_back(
        check_stage(subject, "on table", route::setup_path(setup), [subject, setup, up, rolls](Pen& pen) {
          judge_clamps(pen, *subject, setup, up);
          if (rolls) judge_lies_flat(pen, setup);
        }));
  }
}

}  // namespace sparewright::judge
