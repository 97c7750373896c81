#include "drawing/leaning_holes.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

namespace sparewright::drawing {
namespace {

using part::Axis;
using part::Face;

// Along a hole that leads from square towards another side, from outside: as one looks into it.
Sight sight_along(const part::Hole& hole, double lean_rad) {
  const shape::Vector in = -part::outward(hole.into);
  const shape::Vector sideways = part::outward(hole.lean->towards);
  const shape::Vector towards = -(std::cos(lean_rad) * in + std::sin(lean_rad) * sideways);
  const shape::Vector right = shape::direction(shape::cross(sideways, part::outward(hole.into)));
  return {right, shape::cross(towards, right), towards};
}

struct Leaning {
  Face into = Face::kTop;
  Face towards = Face::kRightEnd;
  double lean_rad = 0.0;
  double diameter_mm = 0.0;
  friend bool operator==(const Leaning&, const Leaning&) = default;
};

}  // namespace

std::vector<LeaningHole> leaning_holes(const part::Part& part, const ledger::Snapshot& figures,
                                       const shape::Work& work, const std::vector<solid::Edge>& edges) {
  std::vector<LeaningHole> all;
  std::vector<Leaning> known;
  for (const part::Feature& feature : part.features) {
    const auto* hole = std::get_if<part::Hole>(&feature.shape);
    if (hole == nullptr || !hole->lean) continue;
    const auto value = [&](std::string_view local) {
      return value_or_nan(figures, fmt::format("{}/{}", part::feature_path(feature.name), local));
    };
    shape::Vector mouth;
    for (const Axis axis : part::kAxes)
      part::component(mouth, axis) =
          value(axis == part::axis_of(hole->into) ? "starts at" : fmt::format("at {}", part::name_of(axis)));
    const Leaning leaning{hole->into, hole->lean->towards, value("lean"), value("diameter")};
    const bool is_known = std::isfinite(mouth.x + mouth.y + mouth.z + leaning.lean_rad + leaning.diameter_mm);
    if (!is_known || std::find(known.begin(), known.end(), leaning) != known.end()) continue;
    known.push_back(leaning);
    const Sight sight = sight_along(*hole, leaning.lean_rad);
    const shape::Point at = shape::Point{} + mouth;
    LeaningHole one{feature.name,  hole->into, at, leaning.diameter_mm, view_of(work, edges, sight),
                    sight.seen(at)};
    keep_seen(one.view);
    all.push_back(std::move(one));
  }
  return all;
}

}  // namespace sparewright::drawing
