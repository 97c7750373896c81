// The box the finished work fits in.
#pragma once

#include "core/shape/recipe.hpp"
#include "core/shape/support.hpp"

namespace sparewright::shape {

// The ranges of the metal along the axes of the part frame, not those of the blank it was cut from; empty where no metal
// is left.
//
// By rays along each axis, at both edges and in the middle of every strip between two faces, and through the middle line
// of every body of revolution. Where faces are square to the axes or go round one of them, that is exact to
// kBoundsAccuracy_mm; of a slanted or hollow face at the outside it falls short by what lies between two rays.
[[nodiscard]] Bounds metal_bounds(const Work& work);

inline constexpr double kBoundsAccuracy_mm = 1e-5;

// How far the metal reaches from a line along x, y or z of the part frame, all round; by the same rays.
// axis  0, 1, 2: the line's direction; through: a point on it.
[[nodiscard]] double metal_radius_mm(const Work& work, int axis, const Point& through);

}  // namespace sparewright::shape
