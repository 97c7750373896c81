// The curves of the work that a view can show: its edges, and the outlines of its round surfaces. Used inside this room
// only.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "core/shape/recipe.hpp"
#include "drawing/sight.hpp"
#include "solid/edges.hpp"

namespace sparewright::drawing {

enum class Look {
  kStraight,  // seen as a straight line
  kArc,       // seen as it is: a circle or an arc
  kPath,      // anything else
};

// One curve, t from 0 to 1.
struct ViewCurve {
  Look look = Look::kStraight;
  double length_mm = 0.0;                                 // about
  std::function<std::optional<shape::Point>(double)> at;  // nothing where there is no surface
  std::vector<double> turns;  // of a circle seen from its edge: where it turns back
  shape::FlatPoint centre;    // of an arc, as seen
  double radius_mm = 0.0;
};

[[nodiscard]] std::vector<ViewCurve> edge_curves(const std::vector<solid::Edge>& edges, const Sight& sight);

// Where a round surface turns away from the eye: the sides of a cylinder seen from beside it. Of each blank and cutter
// whose surface is the surface of the work there.
[[nodiscard]] std::vector<ViewCurve> outline_curves(const shape::Work& work, const Sight& sight);

}  // namespace sparewright::drawing
