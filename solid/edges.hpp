// The edges of a solid as curves a draughtsman draws.
#pragma once

#include <variant>
#include <vector>

#include "core/base/result.hpp"
#include "core/shape/vector.hpp"
#include "solid/solid.hpp"

namespace sparewright::solid {

struct EdgeLine {
  shape::Point from;
  shape::Point to;
};

// From centre + radius * start counterclockwise about axis; sweep_rad in (0, 2 pi]. axis and start have length 1.
struct EdgeArc {
  shape::Point centre;
  shape::Vector axis;
  shape::Vector start;
  double radius_mm = 0.0;
  double sweep_rad = 0.0;
};

// Any other curve, by points on it; straight lines between them are off it by no more than kPathSag_mm.
struct EdgePath {
  std::vector<shape::Point> points;
};
inline constexpr double kPathSag_mm = 0.002;

// Across a smooth edge the surface goes on without a bend: one sees it only where it turns away from the eye there, and it
// can do so all along the edge only where the way out of the metal is one and the same all along.
struct Edge {
  std::variant<EdgeLine, EdgeArc, EdgePath> curve;
  bool is_smooth = false;
  shape::Vector out;  // of a smooth edge, length 1
};

// In the kernel's order, which is the same for equal recipes. Seams are left out, and smooth edges along which the way out
// of the metal turns. Fails with kKernel.
[[nodiscard]] base::Result<std::vector<Edge>> edges_of(const Solid& solid);

}  // namespace sparewright::solid
