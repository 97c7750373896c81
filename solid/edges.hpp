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

// Any other curve, by points on it no further apart than kPathChord_mm and straight between them to kPathSag_mm.
struct EdgePath {
  std::vector<shape::Point> points;
};
inline constexpr double kPathSag_mm = 0.002;

using Edge = std::variant<EdgeLine, EdgeArc, EdgePath>;

// In the kernel's order, which is the same for equal recipes. Edges across which the surface goes on smoothly, and seams,
// are left out: nobody sees them. Fails with kKernel.
[[nodiscard]] base::Result<std::vector<Edge>> edges_of(const Solid& solid);

}  // namespace sparewright::solid
