// Sharing out a casting: where in it the finished part has to lie so that every machined surface cleans up.
#pragma once

#include <array>
#include <vector>

#include "core/part/face.hpp"

namespace sparewright::part {

// A machined side. All in mm.
struct SharedFace {
  Face side = Face::kTop;
  double metal_mm =
      0.0;  // to come off it as the part lies now, at its lowest spot; negative: it does not clean up
};

// A cored hole and the hole that cleans it up. The metal all round is at the least radius less the cored one, less how far
// the two middles are apart.
struct SharedHole {
  Face into = Face::kTop;
  shape::Vector off;      // from the cored hole's middle to the finished one's, as the part lies now
  double metal_mm = 0.0;  // the finished radius less the cored one
};

// least_mm  of all surfaces, with the part moved by shift_mm in the casting.
struct Sharing {
  shape::Vector shift_mm;
  double least_mm = 0.0;
};

// The least metal to come off any surface with the part moved.
[[nodiscard]] double least_metal(const std::vector<SharedFace>& faces, const std::vector<SharedHole>& holes,
                                 const shape::Vector& shift_mm);

// The move with the most metal at the worst place. Only along axes that are free; what the worst place leaves open goes to
// the middle of the other sides. The least metal is a concave function of the move, so nested searches by thirds find its
// summit (J. Kiefer, Sequential minimax search for a maximum, 1953, from memory), here to a micrometre.
[[nodiscard]] Sharing best_sharing(const std::vector<SharedFace>& faces, const std::vector<SharedHole>& holes,
                                   const std::array<bool, 3>& free_axes);

}  // namespace sparewright::part
