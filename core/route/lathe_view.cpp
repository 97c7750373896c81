// The picture of work on a lathe: its steps as this setup leaves it, from the free end.
#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

#include "core/route/lathe_bench.hpp"
#include "core/route/lathe_works.hpp"

namespace sparewright::route {
namespace {

using part::Form;

double figure(const LatheBench& bench, const std::string& feature, std::string_view local) {
  return bench.feature_figure(feature, local).value;
}

void add_turned(LatheBench& bench, const part::Feature& feature, const part::Formed& formed, bool here) {
  const auto has = [&](const char* size) { return formed.sizes.contains(size); };
  const double from_end = has("from end") ? figure(bench, feature.name, "from end") : 0.0;
  const double long_mm = has("length")  ? figure(bench, feature.name, "length")
                         : has("width") ? figure(bench, feature.name, "width")
                                        : 0.0;
  const double way = part::at_greater_end(formed.side) ? -1.0 : 1.0;
  const double start = figure(bench, feature.name, "starts at");
  TurnedView::Step step;
  step.name = feature.name;
  const double one = bench.in_mm(start + way * from_end);
  const double other = bench.in_mm(start + way * (from_end + long_mm));
  step.from_mm = std::min(one, other);
  step.to_mm = std::max(one, other);
  const bool is_taper = formed.form == Form::kTaper;
  const double at_start = figure(bench, feature.name, is_taper ? "small diameter" : "diameter");
  const double at_far = is_taper ? figure(bench, feature.name, "large diameter") : at_start;
  step.from_diameter_mm = one <= other ? at_start : at_far;
  step.to_diameter_mm = one <= other ? at_far : at_start;
  step.cut_here = here;
  std::get<TurnedView>(bench.sheet.view).steps.push_back(std::move(step));
}

// The cut of the parting tool, behind the part.
void add_parting(LatheBench& bench, const part::Feature& feature, bool here) {
  const auto& wanted = bench.pen.ask(fmt::format("{}/{}/parting wanted", bench.pen.stage(), feature.name));
  const auto& length = bench.pen.ask(fmt::format("{}/{}/length parted", bench.pen.stage(), feature.name));
  if (!here || !wanted.known() || !length.known()) return;
  std::get<TurnedView>(bench.sheet.view)
      .steps.push_back({feature.name, length.value, wanted.value, 0.0, 0.0, true, false});
}

void add_hole(LatheBench& bench, const part::Feature& feature, const part::Hole& hole, bool here) {
  const auto& off = bench.pen.ask(fmt::format("{}/{}/off the axis", bench.pen.stage(), feature.name));
  const bool on_axis = part::is_on_axis(hole) || (off.known() && off.value <= kOnAxis_mm);
  if (part::axis_of(hole.into) != part::Axis::kX || !on_axis) return;
  auto& view = std::get<TurnedView>(bench.sheet.view);
  const double start = bench.in_mm(figure(bench, feature.name, "starts at"));
  const bool from_here = hole.into == bench.on.free_end;
  const ledger::Figure& through = bench.pen.ask(fmt::format("{}/{}/deep", bench.pen.stage(), feature.name));
  const double deep = hole.depth        ? figure(bench, feature.name, "depth")
                      : through.known() ? through.value
                                        : view.work_to_mm - view.work_from_mm;
  TurnedView::Step step;
  step.name = feature.name;
  step.from_mm = from_here ? start : std::max(view.work_from_mm, start - deep);
  step.to_mm = from_here ? std::min(view.work_to_mm, start + deep) : start;
  step.from_diameter_mm = figure(bench, feature.name, "diameter");
  step.to_diameter_mm = step.from_diameter_mm;
  step.cut_here = here;
  step.is_bore = true;
  view.steps.push_back(std::move(step));
}

// The free end itself, where it is faced here: a step of no length.
void add_face(LatheBench& bench, const part::Feature& feature, const part::Flat& flat, bool here) {
  if (!here || flat.side != bench.on.free_end || flat.region) return;
  auto& view = std::get<TurnedView>(bench.sheet.view);
  const double at = view.work_from_mm;
  const ledger::Figure* across = bench.outside.largest(bench.end->value, bench.end->value + bench.way());
  const double diameter = across != nullptr ? across->value : std::nan("");
  view.steps.push_back({feature.name, at, at, diameter, diameter, true, false});
}

void add_feature(LatheBench& bench, const part::Feature& feature, bool here) {
  if (const auto* flat = std::get_if<part::Flat>(&feature.shape))
    return add_face(bench, feature, *flat, here);
  if (const auto* hole = std::get_if<part::Hole>(&feature.shape))
    return add_hole(bench, feature, *hole, here);
  const auto* formed = std::get_if<part::Formed>(&feature.shape);
  if (formed == nullptr) return;
  switch (formed->form) {
    case Form::kTurned:
    case Form::kThread:
    case Form::kKnurl:
    case Form::kGroove:
    case Form::kTaper:
      return add_turned(bench, feature, *formed, here);
    case Form::kChuckingPiece:
      return add_parting(bench, feature, here);
    default:
      return;  // too small to be seen, or no step
  }
}

void add_jaws(LatheBench& bench, TurnedView& view) {
  const auto hold = [&](const char* local) -> const ledger::Figure& {
    return bench.pen.ask(fmt::format("{}/hold/{}", bench.pen.stage(), local));
  };
  const auto& gripped = hold("gripped");
  view.jaws_from_mm = view.work_to_mm;
  if (gripped.known() && gripped.value > 0.0) view.jaws_from_mm = view.work_to_mm - gripped.value;
  const auto& on = hold("on");
  view.jaws_grip_diameter_mm = on.known() ? on.value : std::nan("");
  view.holder = bench.on.holder.name;
  constexpr std::array kTails{"", "live [center]", "dead [center]", "steady"};
  view.tail = kTails.at(static_cast<std::size_t>(bench.on.tail));
  view.tail_is_centre =
      bench.on.tail == TailSupport::kLiveCentre || bench.on.tail == TailSupport::kDeadCentre;
  view.free_end = part::name_of(bench.on.free_end);
}

}  // namespace

void write_turned_view(LatheBench& bench) {
  TurnedView& view = bench.sheet.view.emplace<TurnedView>();
  const auto& largest = bench.pen.ask(bench.pen.stage() + "/hold/largest");
  view.work_from_mm = 0.0;
  view.work_to_mm = bench.in_mm(bench.held_far->value);
  TurnedView::Step bar{"", view.work_from_mm, view.work_to_mm, largest.value, largest.value, false, false};
  view.steps.push_back(bar);
  for (const Setup& setup : bench.route.plan.setups) {
    const bool here = setup.op == bench.setup.op;
    for (const Work& work : setup.works) {
      const part::Feature* feature = part::find_feature(bench.route.part, work.feature);
      if (feature != nullptr && !work.joins) add_feature(bench, *feature, here);
    }
    if (here) break;
  }
  add_jaws(bench, view);
}

}  // namespace sparewright::route
