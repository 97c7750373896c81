// What a place is measured from has to be there when the place is made: not made later, not cut away by then, and a side
// that the numbers take as finished not still rough.
#include <set>

#include <fmt/format.h>

#include "core/judge/order.hpp"
#include "core/shape/cut_faults.hpp"

namespace sparewright::judge {
namespace {

using ledger::Pen;
using ledger::State;

// The features its place is measured from.
std::set<std::string> measured_from(const part::Feature& feature) {
  std::set<std::string> names;
  const auto add = [&](const part::Position& position) {
    if (const auto* other = std::get_if<std::string>(&position.from)) names.insert(*other);
  };
  if (const auto* flat = std::get_if<part::Flat>(&feature.shape)) {
    if (flat->region) add(flat->region->start);
    return names;
  }
  const auto* hole = std::get_if<part::Hole>(&feature.shape);
  for (const auto& [axis, position] : hole != nullptr ? hole->at : std::get<part::Formed>(feature.shape).at)
    add(position);
  if (const auto* formed = std::get_if<part::Formed>(&feature.shape)) {
    for (const part::ProfileCorner& corner : formed->corners) {
      add(corner.first);
      add(corner.second);
    }
  }
  return names;
}

// Whether anything of a feature can be seen among the first `count` cuts: whether it takes metal that no other takes.
bool still_there(const shape::Recipe& recipe, const std::string& feature, std::size_t count) {
  std::vector<shape::Cut> cuts;
  std::vector<shape::Cut> own;
  for (const shape::Cut& cut : recipe.work_after(count).cuts)
    (cut.feature == feature ? own : cuts).push_back(cut);
  if (own.empty()) return true;  // it takes nothing by itself
  for (const shape::Cut& cut : own) {
    cuts.push_back(cut);
    if (shape::bite_of({recipe.blank().body, cuts}, cuts.size() - 1).taken == shape::Taken::kMetal)
      return true;
    cuts.pop_back();
  }
  return false;
}

std::size_t first_cut(const shape::Recipe& recipe, const std::string& feature) {
  std::size_t cut = 0;
  while (cut < recipe.cuts().size() && recipe.cuts()[cut].feature != feature)
    ++cut;
  return cut;
}

void judge_datum(Pen& pen, const Subject& subject, const Step& step, std::size_t at, const Step& datum,
                 std::size_t datum_at) {
  const std::string& name = step.feature->name;
  const std::string& from = datum.feature->name;
  const bool by_marks = std::holds_alternative<route::ByMarks>(step.setup->held);
  if (datum_at > at) {
    if (step.setup == datum.setup && !by_marks) return;  // both by one zero
    say(pen, {"what it is measured from is there", name, by_marks ? State::kNo : State::kClose,
              fmt::format("it is measured from {}, which is made only later, in {}", from, op_of(datum)),
              fmt::format("make {} first, or both in one holding", from)});
    return;
  }
  const auto path = route::recipe_path_after(subject.route.plan, step.setup->op);
  if (!path) return;
  const auto& recipe = pen.need_value<shape::Recipe>(*path);
  if (!still_there(recipe, from, first_cut(recipe, name))) {
    say(pen, {"what it is measured from is there", name, by_marks ? State::kNo : State::kClose,
              fmt::format("it is measured from {}, which is cut away by then", from),
              fmt::format("make {} before {} is gone, or measure it from something that stays", name, from)});
    return;
  }
  const auto& finished = pen.need_value<shape::Recipe>(part::kRecipe);
  if (still_there(finished, from, finished.cuts().size())) return;
  say(pen, {"what it is measured from stays", name, State::kClose,
            fmt::format("it is measured from {}, of which nothing is left on the finished part", from),
            "measure it before that is cut away, or from something that stays"});
}

// The flat that cuts the whole of a side, where it is made only after a step.
const Step* cut_later(const std::vector<Step>& steps, std::size_t after, part::Face side) {
  for (std::size_t i = after + 1; i < steps.size(); ++i) {
    const auto* flat = std::get_if<part::Flat>(&steps[i].feature->shape);
    if (flat != nullptr && flat->side == side && !flat->region) return &steps[i];
  }
  return nullptr;
}

void judge_zero(Pen& pen, const std::string& subject, part::Face side, const Step& later,
                const std::string& what) {
  say(pen,
      {"the side it is measured from is finished", subject, State::kNo,
       fmt::format("{} the {}, which is cut only later, in {} ({}): the numbers are from the finished side",
                   what, part::name_of(side), op_of(later), later.feature->name),
       fmt::format("finish the {} first, or measure from a side that stays as it is", part::name_of(side))});
}

void add_zero_checks(const Shared& subject, const std::vector<Step>& steps, Stages& stages) {
  std::set<std::string> said;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const auto* on = std::get_if<route::OnMill>(&steps[i].setup->held);
    if (on == nullptr) continue;
    for (const route::EdgePickUp& pick_up : {on->x, on->y}) {
      const Step* later = cut_later(steps, i, pick_up.side);
      const std::string name = fmt::format("{}, {}", op_of(steps[i]), part::name_of(pick_up.side));
      if (later == nullptr || !said.insert(name).second) continue;
      stages.push_back(
          check_stage(subject, "zero", name, [subject, name, side = pick_up.side, later = *later](Pen& pen) {
            judge_zero(pen, name, side, later, "the zero is picked up on");
          }));
    }
  }
}

void add_mark_checks(const Shared& subject, const std::vector<Step>& steps, Stages& stages) {
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const auto* hole = std::get_if<part::Hole>(&steps[i].feature->shape);
    const bool by_marks = std::holds_alternative<route::ByMarks>(steps[i].setup->held);
    if (!by_marks || hole == nullptr || hole->placed_by != part::PlacedBy::kCoordinates) continue;
    for (const auto& [axis, position] : hole->at) {
      const part::Face side = route::marked_from(subject->route, steps[i].feature->name, axis);
      const Step* later = cut_later(steps, i, side);
      if (later == nullptr) continue;
      const std::string name = fmt::format("{}, {}", steps[i].feature->name, part::name_of(axis));
      stages.push_back(
          check_stage(subject, "marked from", name, [subject, name, side, later = *later](Pen& pen) {
            judge_zero(pen, name, side, later, "it is marked from");
          }));
    }
  }
}

}  // namespace

void add_order_datum_checks(const Shared& subject, Stages& stages) {
  const std::vector<Step> steps = steps_of(*subject);
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (steps[i].joins()) continue;
    for (const std::string& from : measured_from(*steps[i].feature)) {
      const auto datum = made_at(steps, from);
      if (!datum) continue;  // that no setup makes it is said elsewhere
      stages.push_back(check_stage(subject, "datum " + from, steps[i].feature->name,
                                   [subject, step = steps[i], i, other = steps[*datum], at = *datum](
                                       Pen& pen) { judge_datum(pen, *subject, step, i, other, at); }));
    }
  }
  add_zero_checks(subject, steps, stages);
  add_mark_checks(subject, steps, stages);
}

}  // namespace sparewright::judge
