// What is milled right across, from air to air: whether the slide goes so far as the work is long and the cutter wide.
#include <algorithm>

#include <fmt/format.h>

#include "core/judge/checks.hpp"
#include "core/route/orientation.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;

// The axis a cutter runs along from air to air: an open slot's own, beside a flat's wall, over a whole side the machine's x.
std::optional<part::Axis> runs_along(const part::Feature& feature, part::Axis machine_x) {
  if (const auto* flat = std::get_if<part::Flat>(&feature.shape)) {
    const auto axes = part::axes_in(flat->side);
    if (!flat->region) return machine_x;
    return flat->region->along == axes[0] ? axes[1] : axes[0];
  }
  const auto* formed = std::get_if<part::Formed>(&feature.shape);
  if (formed == nullptr || formed->form != part::Form::kSlot || formed->sizes.contains("length"))
    return std::nullopt;
  return formed->along.value_or(part::axes_in(formed->side)[0]);
}

// Silent where a tenth of the travel is to spare. A choice made here, without a source.
constexpr double kToSpare = 0.9;

struct Across {
  part::Axis axis = part::Axis::kX;
  std::string wheel;  // "x"
  quantity::Length travel;
  shop::Tool mill;
};

void judge_across(Pen& pen, const Subject& subject, const route::Setup& setup, const std::string& feature,
                  const Across& across) {
  const route::Printing print(subject.route.system);
  const Figure& cutter =
      limit(pen, "cutter", across.mill.diameter->base, Origin::kChoice, "the shop, " + across.mill.name);
  const Figure& way = pen.work(
      "way", quantity::Kind::kLength, "the work and the cutter", [](auto work, auto d) { return work + d; },
      pen.ask(part::blank_path(subject.route.part.blank, across.axis)), cutter);
  if (way.known() && way.value < kToSpare * across.travel.base()) return;
  pen.judge({.check = "the slide goes right across",
             .subject = feature,
             .figure = &way,
             .high = &limit(pen, "travel", across.travel.base(), Origin::kChoice,
                            "the shop, " + setup.machine.name),
             .reason = fmt::format("from air to air it is {} along {} and the {} travels {}",
                                   route::or_not_known(way, print.plain(way.value)), across.wheel,
                                   setup.machine.name, print.plain(across.travel.base())),
             .source = "the shop",
             .todo = "hold it the other way round, or mill from both ends in two holdings",
             .margin = "travel margin"});
}

std::optional<Across> across_of(const Made& made) {
  const auto* on = std::get_if<route::OnMill>(&made.setup.held);
  if (on == nullptr || !route::cuts_are_worked_out(made.setup, made.feature)) return std::nullopt;
  const auto orientation = route::orientation_of(on->holding);
  if (!orientation) return std::nullopt;
  const part::Axis machine_x = orientation->along_x().axis;
  const auto axis = runs_along(made.feature, machine_x);
  const auto mill = std::find_if(made.work.tools.begin(), made.work.tools.end(),
                                 [](const shop::Tool& t) { return t.kind == shop::ToolKind::kEndMill; });
  if (!axis || mill == made.work.tools.end() || !mill->diameter) return std::nullopt;
  const bool is_x = *axis == machine_x;
  const auto travel = is_x ? made.setup.machine.travel.x : made.setup.machine.travel.y;
  if (!travel) return std::nullopt;
  return Across{*axis, is_x ? "x" : "y", *travel, *mill};
}

}  // namespace

void add_right_across_checks(const Shared& subject, Stages& stages) {
  for (const Made& made : all_made(*subject)) {
    const auto across = across_of(made);
    if (!across) continue;
    stages.push_back(
        check_stage(subject, "right across", made.work.feature,
                    [subject, &setup = made.setup, work = made.work, across = *across](Pen& pen) {
                      judge_across(pen, *subject, setup, work.feature, across);
                    }));
  }
}

}  // namespace sparewright::judge
