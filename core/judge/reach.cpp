#include <algorithm>
#include <utility>

#include <fmt/format.h>

#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Pen;

constexpr std::string_view kSource = "the job's order of work";

// On a mill what is milled or drilled from a side wants that side up, an edge one of its two sides; what goes right through
// may come from behind. A saw lies flat: whether it does is asked elsewhere.
bool form_reached_from(const part::Formed& formed, part::Face up) {
  using part::Form;
  switch (formed.form) {
    case Form::kSlot:
    case Form::kPocket:
    case Form::kSpringPinHole:
      return formed.side == up || (!formed.sizes.contains("depth") && formed.side == part::opposite(up));
    case Form::kKeyseat:
    case Form::kDimple:
    case Form::kTaperPinHole:
      return formed.side == up;
    default:
      return true;
  }
}

// On a mill the spindle comes down: a cutter reaches the side that is up. On a lathe tools come from the free end.
bool reached_from(const route::Setup& setup, const part::Feature& feature, part::Face up) {
  if (const auto* formed = std::get_if<part::Formed>(&feature.shape)) {
    const bool on_mill = std::holds_alternative<route::OnMill>(setup.held);
    return !on_mill || form_reached_from(*formed, up);
  }
  if (const auto* hole = std::get_if<part::Hole>(&feature.shape)) {
    const bool through = !hole->depth && !hole->counterbore;
    return hole->into == up || (through && part::opposite(hole->into) == up);
  }
  const auto* flat = std::get_if<part::Flat>(&feature.shape);
  return flat == nullptr || flat->side == up;
}

// A saw goes down through the work: what it cuts stands upright.
bool sawn_from(const part::Feature& feature, part::Face up) {
  const auto* flat = std::get_if<part::Flat>(&feature.shape);
  const auto* formed = std::get_if<part::Formed>(&feature.shape);
  if (flat != nullptr) return part::axis_of(flat->side) != part::axis_of(up);
  if (formed == nullptr) return false;
  return formed->form == part::Form::kSlit ? formed->side == up
                                           : part::axis_of(formed->side) != part::axis_of(up);
}

bool is_sawn(const route::Setup& setup, const part::Feature& feature) {
  const auto* formed = std::get_if<part::Formed>(&feature.shape);
  const bool is_cut_off =
      formed != nullptr && (formed->form == part::Form::kSplit || formed->form == part::Form::kSlit);
  return setup.machine.kind == shop::MachineKind::kSaw ||
         (setup.machine.kind == shop::MachineKind::kBench && is_cut_off);
}

part::Face starts_on(const part::Feature& feature) {
  const auto* hole = std::get_if<part::Hole>(&feature.shape);
  if (hole != nullptr) return hole->into;
  const auto* flat = std::get_if<part::Flat>(&feature.shape);
  return flat != nullptr ? flat->side : std::get<part::Formed>(feature.shape).side;
}

void judge_reach(Pen& pen, const route::Setup& setup, const part::Feature& feature) {
  const part::Face up = route::worked_side(setup);
  if (is_sawn(setup, feature)) {
    if (sawn_from(feature, up)) return;
    return pen.state({.check = "the saw reaches it",
                      .subject = feature.name,
                      .state = ledger::State::kNo,
                      .reason = fmt::format("it lies on the {} and in {} the {} is up: the blade comes down "
                                            "beside it, not through",
                                            part::name_of(starts_on(feature)), route::setup_path(setup),
                                            part::name_of(up)),
                      .source = std::string(kSource),
                      .todo = "hold it so that the blade comes down along the cut"});
  }
  if (reached_from(setup, feature, up)) return;
  pen.state(
      {.check = "spindle reaches it",
       .subject = feature.name,
       .state = ledger::State::kNo,
       .reason = fmt::format("it starts on the {} and in {} the {} is {}", part::name_of(starts_on(feature)),
                             route::setup_path(setup), part::name_of(up),
                             setup.machine.kind == shop::MachineKind::kLathe ? "free" : "up"),
       .source = std::string(kSource),
       .todo = fmt::format("hold it with the {} {} for this one", part::name_of(starts_on(feature)),
                           setup.machine.kind == shop::MachineKind::kLathe ? "free" : "up")});
}

void judge_made(Pen& pen, const part::Feature& feature) {
  pen.state({.check = "it is made in a setup",
             .subject = feature.name,
             .state = ledger::State::kNo,
             .reason = "no setup makes it",
             .source = std::string(kSource),
             .todo = "put it into a setup"});
}

// The slide has to go from the picked-up zero to every place and back; what is under the spindle beyond the work counts
// for nothing here.
void judge_travel(Pen& pen, const Subject& subject, const route::Setup& setup, const std::string& axis,
                  quantity::Length travel) {
  const route::Printing print(subject.route.system);
  const std::string op = route::setup_path(setup);
  double low = 0.0;
  double high = 0.0;
  const ledger::Figure* far = nullptr;
  for (const std::string& name : pen.names(op)) {
    // "op 10/bore/x wanted", "op 10/way/x near wanted"
    if (name.find("/" + axis + " ") == std::string::npos || !name.ends_with(" wanted")) continue;
    const ledger::Figure& wanted = pen.ask(name);
    if (!wanted.known() || wanted.kind != quantity::Kind::kCoordinate) continue;
    if (wanted.value < low || wanted.value > high) far = &wanted;
    low = std::min(low, wanted.value);
    high = std::max(high, wanted.value);
  }
  if (far == nullptr || high - low <= travel.base()) return;
  pen.state(
      {.check = "the slide goes that far",
       .subject = fmt::format("{}, {}", op, axis),
       .state = ledger::State::kNo,
       .figure = far->name,
       .reason = fmt::format("the places lie {} apart along {} and the {} travels {}",
                             print.plain(high - low), axis, setup.machine.name, print.plain(travel.base())),
       .source = "the shop",
       .todo = "look at the places for a slip; else shift the work, or use another machine"});
}

bool made_in(const route::Setup& setup, const std::string& feature) {
  return std::any_of(setup.works.begin(), setup.works.end(),
                     [&](const route::Work& work) { return work.feature == feature && !work.joins; });
}

}  // namespace

void add_reach_checks(const Shared& subject, Stages& stages) {
  const std::vector<route::Setup>& setups = subject->route.plan.setups;
  if (setups.empty()) return;  // no order of work is given yet
  for (const route::Setup& setup : setups) {
    for (const auto& [axis, travel] : {std::pair{std::string("x"), setup.machine.travel.x},
                                       std::pair{std::string("y"), setup.machine.travel.y}}) {
      if (!travel) continue;
      stages.push_back(check_stage(subject, "travel in " + axis, route::setup_path(setup),
                                   [subject, setup, axis, way = *travel](Pen& pen) {
                                     judge_travel(pen, *subject, setup, axis, way);
                                   }));
    }
  }
  for (const part::Feature& feature : subject->route.part.features) {
    const auto* formed = std::get_if<part::Formed>(&feature.shape);
    if (formed != nullptr && formed->form == part::Form::kBush) continue;  // a piece of its own
    bool made = false;
    for (const route::Setup& setup : setups) {
      if (!made_in(setup, feature.name)) continue;
      made = true;
      stages.push_back(check_stage(subject, "reach in " + route::setup_path(setup), feature.name,
                                   [setup, feature](Pen& pen) { judge_reach(pen, setup, feature); }));
    }
    if (!made) {
      stages.push_back(
          check_stage(subject, "made", feature.name, [feature](Pen& pen) { judge_made(pen, feature); }));
    }
  }
}

}  // namespace sparewright::judge
