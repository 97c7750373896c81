// Volumes measured by rays through the exact primitives: the judge of what the kernel took away.
#pragma once

#include "core/shape/ray_field.hpp"
#include "core/shape/recipe.hpp"

namespace sparewright::shape {

// volume_mm3  of the metal.
// error_mm3   an estimate, not a bound: 99 times in 100 the true volume is no further away. It comes from
//             four patterns of rays that know nothing of each other. Nothing smaller than the gaps between rays is sure to
//             be seen.
struct RayVolume {
  double volume_mm3 = 0.0;
  double error_mm3 = 0.0;
  std::size_t rays = 0;
};

// The metal of the work that lies inside a body: what a cutter with that body takes off. The rays run along
// the body's own axes inside its own bounds (and the blank's); along the first axis only where that already
// comes within a thousandth.
//
// Exact to rounding where every ray meets the same length: a hole through parallel faces, a square pocket.
// Guarantees: the same numbers on every run; no ray runs in a face that is parallel to the body's axes on the
// grid. The pattern is ray_field.hpp's.
[[nodiscard]] RayVolume metal_within(const Work& work, const Primitive& body, Effort effort = Effort::kUsual);

// All the metal of the work.
[[nodiscard]] RayVolume metal_volume(const Work& work, Effort effort = Effort::kUsual);

}  // namespace sparewright::shape
