// Points spread over the surface of a primitive: where a search starts.
#pragma once

#include <vector>

#include "core/shape/primitive.hpp"

namespace sparewright::shape {

// Between 100 and 300 points, on the surface to rounding, none on an edge. None for a half-space.
[[nodiscard]] std::vector<Point> surface_points(const Primitive& primitive);

}  // namespace sparewright::shape
