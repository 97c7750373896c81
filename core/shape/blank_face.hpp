// The faces of a blank, told apart by name, so that a wall can be said to be towards one of them.
#pragma once

#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/shape/recipe.hpp"

namespace sparewright::shape {

// A flat face has its outside as a half-space; the round side of a bar has one for every direction.
struct BlankFace {
  std::string_view name;  // "x low", "z high", "start", "end", "side", "side 1"
  bool round = false;
  HalfSpace outside;  // flat faces: everything beyond the face
};

// In a fixed order: a box x low, x high, ... z high; a prism its sides from the first corner on, then start
// and end; bodies of revolution start and end (where they have a face there), then the side.
[[nodiscard]] std::vector<BlankFace> faces(const Primitive& blank);

// What lies beyond the plane that touches the round side of a blank in the direction of an angle about its
// axis (0 is local +x, towards +y). Precondition: the blank has a round side.
[[nodiscard]] HalfSpace beyond_side(const Primitive& blank, double angle_rad);

}  // namespace sparewright::shape
