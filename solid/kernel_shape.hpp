// Between our solids and the kernel's shapes. For this room's .cpp files only.
#pragma once

#include "core/shape/primitive.hpp"
#include "solid/solid.hpp"

namespace sparewright::solid {

[[nodiscard]] Solid from_kernel(const TopoDS_Shape& shape);
[[nodiscard]] const TopoDS_Shape& to_kernel(const Solid& solid);

// The kernel's own volume, by Gauss integration over its faces.
[[nodiscard]] double kernel_volume_mm3(const TopoDS_Shape& shape);

// The same closely, by adaptive integration, at many times the cost: over a large face with small openings the usual
// one misses by more than the bite of a small drill (0.3 of 88 mm3 at the third hole round a shaft, measured).
[[nodiscard]] double kernel_volume_closely_mm3(const TopoDS_Shape& shape);

// A primitive as a closed shape of the kernel.
// seam_rad  where the seam of round surfaces runs, from local x towards y. Kept off the axes by the caller: seams that
//           meet other faces' edges are what the kernel trips over.
// reach     what a half-space has to cover; it becomes a box that does.
[[nodiscard]] TopoDS_Shape kernel_body(const shape::Primitive& primitive, double seam_rad,
                                       const shape::Primitive& reach);

}  // namespace sparewright::solid
