#include "core/judge/round_hole.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "core/shape/material.hpp"

namespace sparewright::judge {
namespace {

constexpr int kStep_deg = 5;

// The first metal outwards from the wall, or from the bottom of a groove or a keyway in it; 0 where there is none near.
double metal_at_wall_mm(const shape::Work& work, const shape::Ray& ray, double radius_mm) {
  constexpr double kDeepest = 1.25;  // radii: what lies deeper is no groove in the wall. A choice made here
  for (const shape::Interval& metal : shape::metal_along(work, ray)) {
    if (metal.exit_mm <= radius_mm) continue;
    return metal.enter_mm <= kDeepest * radius_mm ? metal.exit_mm - std::max(metal.enter_mm, radius_mm) : 0.0;
  }
  return 0.0;
}

}  // namespace

std::optional<double> metal_round_mm(ledger::Pen& pen, const part::Part& part, const part::Feature& feature,
                                     const part::Hole& hole, std::optional<part::Face> leave_out,
                                     double around_deg) {
  if (hole.lean || hole.around_bar) return std::nullopt;
  const auto& ground = pen.need_value<Ground>(kGround);
  const std::string path = part::feature_path(feature.name);
  const auto axes = part::axes_in(hole.into);
  shape::Vector at;
  for (const part::Axis axis : axes)
    part::component(at, axis) = pen.need(part::at_path(feature.name, axis)).value;
  const double start = pen.need(path + "/starts at").value;
  const double end = pen.need(part::side_path(part, part::opposite(hole.into))).value;
  part::component(at, part::axis_of(hole.into)) = (start + end) / 2.0;
  const double radius = pen.need(path + "/diameter").value / 2.0;
  double least = std::numeric_limits<double>::infinity();
  for (int degrees = 0; degrees < 360; degrees += kStep_deg) {
    const double angle = degrees * std::numbers::pi / 180.0;
    shape::Vector direction;
    part::component(direction, axes[0]) = std::cos(angle);
    part::component(direction, axes[1]) = std::sin(angle);
    if (leave_out &&
        shape::dot(direction, part::outward(*leave_out)) > std::cos(around_deg * std::numbers::pi / 180.0))
      continue;
    least =
        std::min(least, metal_at_wall_mm(ground.recipe->work(), {shape::Point{} + at, direction}, radius));
  }
  return least > 0.0 && std::isfinite(least) ? std::optional(least) : std::nullopt;
}

}  // namespace sparewright::judge
