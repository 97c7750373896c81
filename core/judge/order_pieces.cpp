// A part that is sawn in two and joined again: what goes through the joint is made when it is joined, what is made in
// between is made on one piece, and a joint closes by what the saw took.
#include <cmath>

#include <fmt/format.h>

#include "core/judge/order.hpp"
#include "core/shape/support.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Pen;
using ledger::State;

// Less is no more than a burr: the pieces go back to where they were.
constexpr double kSamePlace_mm = 0.05;

struct Split {
  const part::Feature& feature;
  const part::Formed& form;
  std::vector<Step> steps;
  std::optional<std::size_t> sawn;
  std::optional<std::size_t> joined;
};

double along(const shape::Point& point, part::Axis axis) {
  return part::component(point - shape::Point{}, axis);
}

// Whether a cut of the feature reaches metal on both sides of the saw cut.
bool crosses(const shape::Recipe& recipe, const part::Feature& feature, const Split& split) {
  const part::Axis axis = part::axis_of(split.form.side);
  const shape::Bounds blank = shape::bounds(recipe.blank().body);
  for (const shape::Cut& slab : recipe.cuts()) {
    if (slab.feature != split.feature.name) continue;
    const shape::Bounds gap = shape::bounds(slab.nominal);
    for (const shape::Cut& cut : recipe.cuts()) {
      if (cut.feature != feature.name) continue;
      const shape::Bounds body = shape::common(shape::bounds(cut.nominal), blank);
      if (body.empty()) continue;
      if (along(body.low, axis) < along(gap.low, axis) && along(body.high, axis) > along(gap.high, axis))
        return true;
    }
  }
  return false;
}

// A bore lies in the joint; a screw's hole stands across it.
bool is_bore_in_joint(const part::Feature& feature, const Split& split) {
  const auto* hole = std::get_if<part::Hole>(&feature.shape);
  return hole != nullptr && part::axis_of(hole->into) != part::axis_of(split.form.side);
}

// What the pieces come nearer by when they are joined.
const Figure& closes_by(Pen& pen, const Split& split) {
  const std::string path = part::feature_path(split.feature.name);
  const Figure& width = pen.need(path + "/width");
  if (!split.form.sizes.contains("shim")) {
    return pen.work(
        "closes by", quantity::Kind::kLength, "the width of the split", [](auto w) { return w; }, width);
  }
  return pen.work(
      "closes by", quantity::Kind::kLength, "the width of the split less the shim",
      [](auto w, auto s) { return w - s; }, width, pen.need(path + "/shim"));
}

void judge_bore(Pen& pen, const route::Printing& print, const Split& split, std::size_t step,
                double closes_mm) {
  const Step& bore = split.steps[step];
  const std::string& name = bore.feature->name;
  OrderVerdict verdict{"bored through the joint when it is joined", name, State::kOk,
                       fmt::format("it is made in {}, after {} is joined", op_of(bore), split.feature.name),
                       ""};
  const bool before_saw = step < *split.sawn;
  const bool apart = !before_saw && (!split.joined || step < *split.joined);
  if (before_saw) {
    const bool comes_back = split.joined && std::abs(closes_mm) < kSamePlace_mm;
    verdict.state = comes_back ? State::kClose : State::kNo;
    verdict.reason =
        comes_back
            ? fmt::format(
                  "it is made before {} is sawn; shims as thick as the cut bring it back, as well as the "
                  "screws do",
                  split.feature.name)
            : fmt::format("it is made before {} is sawn: joined again it is {} short of round",
                          split.feature.name, print.plain(closes_mm));
    verdict.todo = fmt::format("saw {}, join it, then make {}", split.feature.name, name);
  } else if (apart) {
    verdict.state = State::kNo;
    verdict.reason = fmt::format("in {} the pieces of {} lie apart", op_of(bore), split.feature.name);
    verdict.todo = fmt::format("join {} before {} is made", split.feature.name, name);
  }
  say(pen, std::move(verdict));
}

void judge_between(Pen& pen, const Split& split, std::size_t step) {
  if (step < *split.sawn || (split.joined && step > *split.joined)) return;
  const Step& made = split.steps[step];
  say(pen,
      {"made on one piece", made.feature->name, State::kClose,
       fmt::format("in {} the pieces of {} lie apart, and it reaches both", op_of(made), split.feature.name),
       fmt::format("make it before the saw or after the joint, or clamp both pieces as they were")});
}

void judge_joint(Pen& pen, const route::Printing& print, const Split& split, const Figure& closes) {
  if (!split.joined) return;
  if (!split.sawn || *split.joined < *split.sawn) {
    say(pen, {"sawn before it is joined", split.feature.name, State::kNo,
              fmt::format("{} joins it and it is not sawn yet: there are no pieces",
                          op_of(split.steps[*split.joined])),
              "saw it in a setup before"});
    return;
  }
  const bool comes_back = std::abs(closes.value) < kSamePlace_mm;
  say(pen, {"the joint comes back", split.feature.name, comes_back ? State::kOk : State::kClose,
            comes_back ? std::string("shims as thick as the cut put the pieces back where they were")
                       : fmt::format("joined, it is {} shorter across the joint than before it was sawn",
                                     print.plain(closes.value)),
            "measure across the joint only after it is joined, or put shims as thick as the cut between"});
}

void judge_pieces(Pen& pen, const Subject& subject, const Split& split) {
  const route::Printing print(subject.route.system);
  const Figure& closes = closes_by(pen, split);
  judge_joint(pen, print, split, closes);
  if (!split.sawn) return;
  const auto& recipe = pen.need_value<shape::Recipe>(part::kRecipe);
  for (std::size_t step = 0; step < split.steps.size(); ++step) {
    const Step& made = split.steps[step];
    if (made.joins() || step == *split.sawn || !crosses(recipe, *made.feature, split)) continue;
    if (is_bore_in_joint(*made.feature, split)) {
      judge_bore(pen, print, split, step, closes.value);
    } else {
      judge_between(pen, split, step);
    }
  }
}

void judge_join(Pen& pen, const Step& join) {
  say(pen,
      {"what is joined was split", join.feature->name, State::kNo,
       fmt::format("{} joins it, and it is a {}, not a split", op_of(join), part::kind_of(*join.feature)),
       "name the split that is put together again"});
}

bool is_split(const part::Feature& feature) {
  const auto* formed = std::get_if<part::Formed>(&feature.shape);
  return formed != nullptr && formed->form == part::Form::kSplit;
}

}  // namespace

void add_order_pieces_checks(const Shared& subject, Stages& stages) {
  const std::vector<Step> steps = steps_of(*subject);
  if (steps.empty()) return;
  for (const Step& step : steps) {
    if (step.joins() && !is_split(*step.feature))
      stages.push_back(check_stage(subject, "join in " + op_of(step), step.feature->name,
                                   [subject, step](Pen& pen) { judge_join(pen, step); }));
  }
  for (const part::Feature& feature : subject->route.part.features) {
    if (!is_split(feature)) continue;
    const Split split{feature, std::get<part::Formed>(feature.shape), steps, made_at(steps, feature.name),
                      joined_at(steps, feature.name)};
    stages.push_back(check_stage(subject, "pieces", feature.name,
                                 [subject, split](Pen& pen) { judge_pieces(pen, *subject, split); }));
  }
}

}  // namespace sparewright::judge
