// The area of a flat face of the work as the cuts leave it.
#pragma once

#include "core/shape/recipe.hpp"

namespace sparewright::shape {

// area_mm2   of the skin in the plane.
// error_mm2  an estimate of how far that may be from the truth: by how much the last halving of the steps changed it, and
//            by how much another depth below the plane does.
// lines      how many were measured.
struct FaceArea {
  double area_mm2 = 0.0;
  double error_mm2 = 0.0;
  std::size_t lines = 0;
};

// The skin of the work in a plane: the points of the plane that have metal just below and none just above, in a flat face
// of the blank or of a cutter. Where the plane only touches a round face there is none.
//
// plane  origin anywhere in it, z out of the metal.
//
// Accuracy: where a round face touches the plane from within the metal or the air, a strip along it counts as the other:
// some hundredths of a mm2. Elsewhere some 1e-6 mm2.
//
//   a plate of 100 x 60 with a 10 hole through it, its top face: 6000 - 25 pi = 5921.46 mm2
//
// Measured along lines in the plane, half kSkin_mm below and above it. The lines of a stretch between two places where a
// body begins or ends are spread as Gauss's rule wants them, so that straight and round outlines come out exact to
// rounding; stretches are halved until that makes no difference. Source of the rule, from memory: Abramowitz and Stegun,
// Handbook of Mathematical Functions, 25.4.29.
[[nodiscard]] FaceArea face_area(const Work& work, const Frame& plane);

// Faces nearer to the plane than half of this lie in it: a fiftieth of a step of the grid, and ten times what rounding
// leaves of two equal sizes at 1 m. A choice made here.
inline constexpr double kSkin_mm = 2e-8;

}  // namespace sparewright::shape
