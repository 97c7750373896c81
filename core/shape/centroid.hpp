// Where the centre of gravity of the work lies, measured by rays through the exact primitives.
#pragma once

#include <optional>

#include "core/shape/ray_field.hpp"
#include "core/shape/recipe.hpp"

namespace sparewright::shape {

// centre    of the metal, the same all through.
// error_mm  an estimate, not a bound: 99 times in 100 the true centre is no further away. It comes from four patterns
//           of rays that know nothing of each other. Nothing smaller than the gaps between rays is sure to be seen.
struct CentreOfGravity {
  Point centre;
  double error_mm = 0.0;
  std::size_t rays = 0;
};

// Rays run along all three axes of the blank, and each coordinate is taken from those that tell it best: along its own
// axis a ray gives it exactly. Exact to rounding for a box, and for one with square pockets through it.
// Nothing where no ray meets metal.
[[nodiscard]] std::optional<CentreOfGravity> centre_of_gravity(const Work& work,
                                                               Effort effort = Effort::kUsual);

}  // namespace sparewright::shape
