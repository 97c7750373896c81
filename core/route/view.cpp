// The plan view of the work as it is held, from the figures.
#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/route/bench.hpp"
#include "core/shape/support.hpp"

namespace sparewright::route {
namespace {

// From a coordinate of the part to one of the machine, from the picked-up zero.
double on_machine(const MillBench& bench, MachineAxis axis, double at_mm) {
  const Along part_axis = along(bench.orientation, axis);
  const double zero = bench.side(pick_up_of(bench.on, axis).side).value;
  return (part_axis.same_way ? 1.0 : -1.0) * (at_mm - zero);
}

double blank_side(const MillBench& bench, part::Face face) {
  return bench.pen.ask(fmt::format("blank/{}", part::name_of(face))).value;
}

bool cut_here(const Setup& setup, const std::string& feature) {
  return std::any_of(setup.works.begin(), setup.works.end(),
                     [&](const Work& w) { return w.feature == feature; });
}

// A coordinate of the part along the way out of one of its sides.
double along_way(part::Face side, double at_mm) {
  return part::at_greater_end(side) ? at_mm : -at_mm;
}

Stance stance(const MillBench& bench) {
  const Orientation& o = bench.orientation;
  const auto zero = [&](MachineAxis axis) { return bench.side(pick_up_of(bench.on, axis).side).value; };
  return {o.right,
          o.away,
          o.up,
          along_way(o.right, zero(MachineAxis::kX)),
          along_way(o.away, zero(MachineAxis::kY)),
          along_way(o.up, bench.side(bench.on.holding.sits_on).value)};
}

PlanView::Rectangle outline(const MillBench& bench) {
  const Orientation& o = bench.orientation;
  PlanView::Rectangle r;
  r.name = "work";
  r.left_mm = on_machine(bench, MachineAxis::kX, blank_side(bench, part::opposite(o.right)));
  r.right_mm = on_machine(bench, MachineAxis::kX, blank_side(bench, o.right));
  r.near_mm = on_machine(bench, MachineAxis::kY, blank_side(bench, part::opposite(o.away)));
  r.far_mm = on_machine(bench, MachineAxis::kY, blank_side(bench, o.away));
  return r;
}

PlanView& view_of(Bench& bench) {
  return std::get<PlanView>(bench.sheet.view);
}

void add_hole(MillBench& bench, const part::Feature& feature, const part::Hole& hole) {
  const bool open_above =
      hole.into == bench.orientation.up || (!hole.depth && hole.into == part::opposite(bench.orientation.up));
  if (!open_above) return;
  const auto at = [&](MachineAxis axis) {
    const part::Axis along_part = along(bench.orientation, axis).axis;
    return on_machine(
        bench, axis,
        bench.feature_figure(feature.name, fmt::format("at {}", part::name_of(along_part))).value);
  };
  const bool here = cut_here(bench.setup, feature.name);
  const double x = at(MachineAxis::kX);
  const double y = at(MachineAxis::kY);
  view_of(bench).holes.push_back(
      {feature.name, x, y, bench.feature_figure(feature.name, "diameter").value / 2.0, here});
  if (hole.counterbore && hole.into == bench.orientation.up) {
    view_of(bench).holes.push_back(
        {"", x, y, bench.feature_figure(feature.name, "counterbore diameter").value / 2.0, here});
  }
}

void add_flat(MillBench& bench, const part::Feature& feature, const part::Flat& flat) {
  if (flat.side != bench.orientation.up) return;
  PlanView::Rectangle r = outline(bench);
  r.name = feature.name;
  r.cut_here = cut_here(bench.setup, feature.name);
  if (flat.region) {
    const bool is_x = along(bench.orientation, MachineAxis::kX).axis == flat.region->along;
    const MachineAxis axis = is_x ? MachineAxis::kX : MachineAxis::kY;
    const double wall = on_machine(
        bench, axis,
        bench.feature_figure(feature.name, fmt::format("at {}", part::name_of(flat.region->along))).value);
    const bool beyond = flat.region->towards_greater == along(bench.orientation, axis).same_way;
    double& moved = is_x ? (beyond ? r.left_mm : r.right_mm) : (beyond ? r.near_mm : r.far_mm);
    moved = wall;
  }
  view_of(bench).flats.push_back(std::move(r));
}

// How far along the two ways of the table it reaches, by its cutters.
void add_form(MillBench& bench, const part::Feature& feature, const part::Formed& formed) {
  const bool here = cut_here(bench.setup, feature.name);
  if (!here && formed.side != bench.orientation.up) return;
  const auto ask = [&](const std::string& name) { return bench.pen.ask(name).value; };
  const std::vector<shape::Cutter> cutters = part::cutters_of(feature, ask);
  if (cutters.empty()) return;
  shape::Bounds all = shape::bounds(cutters.front().nominal);
  for (const shape::Cutter& cutter : cutters) {
    const shape::Bounds one = shape::bounds(cutter.nominal);
    all.low = {std::min(all.low.x, one.low.x), std::min(all.low.y, one.low.y),
               std::min(all.low.z, one.low.z)};
    all.high = {std::max(all.high.x, one.high.x), std::max(all.high.y, one.high.y),
                std::max(all.high.z, one.high.z)};
  }
  const auto reach = [&](MachineAxis axis) {
    const part::Axis part_axis = along(bench.orientation, axis).axis;
    return std::minmax({on_machine(bench, axis, part::component(all.low - shape::Point{}, part_axis)),
                        on_machine(bench, axis, part::component(all.high - shape::Point{}, part_axis))});
  };
  const auto [left, right] = reach(MachineAxis::kX);
  const auto [near, far] = reach(MachineAxis::kY);
  const PlanView::Rectangle work = outline(bench);
  view_of(bench).forms.push_back({feature.name, std::max(left, work.left_mm), std::max(near, work.near_mm),
                                  std::min(right, work.right_mm), std::min(far, work.far_mm), here});
}

}  // namespace

void write_view(MillBench& bench) {
  PlanView& view = bench.sheet.view.emplace<PlanView>();
  view.work = outline(bench);
  for (const part::Feature& feature : bench.route.part.features) {
    if (const auto* hole = std::get_if<part::Hole>(&feature.shape)) {
      add_hole(bench, feature, *hole);
    } else if (const auto* flat = std::get_if<part::Flat>(&feature.shape)) {
      add_flat(bench, feature, *flat);
    } else {
      add_form(bench, feature, std::get<part::Formed>(feature.shape));
    }
  }
  view.x_rises_right = rises_right_or_away(bench, MachineAxis::kX);
  view.y_rises_away = rises_right_or_away(bench, MachineAxis::kY);
  const double middle = (view.work.left_mm + view.work.right_mm) / 2.0;
  if (const shop::Vise* vise = bench.on.holding.vise()) {
    const double half_jaw = vise->jaw_width.base() / 2.0;
    view.jaw_left_mm = middle - half_jaw;
    view.jaw_right_mm = middle + half_jaw;
    view.jaw_high_mm = vise->jaw_depth.base();
  }
  view.parallel_mm = bench.on.holding.under.thickness.base();
  view.parallels_in_middle = sits_on_middle(bench);
  view.parallel_high_mm = bench.on.holding.under.height.base();
  view.stance = stance(bench);
  const Orientation& o = bench.orientation;
  view.left_side = part::name_of(part::opposite(o.right));
  view.right_side = part::name_of(o.right);
  view.near_side = part::name_of(part::opposite(o.away));
  view.far_side = part::name_of(o.away);
}

}  // namespace sparewright::route
