// The least metal anywhere beside a cut.
#pragma once

#include <optional>
#include <string_view>

#include "core/shape/wall.hpp"

namespace sparewright::shape {

// wall   kMetal or kTangent, its witness from the cut to what is beyond.
// other  the place in the work of the cut that is beyond; none where it is the outside of the blank, through `face`.
struct ThinnestWall {
  Wall wall;
  std::optional<std::size_t> other;
  std::string_view face;
};

// Of all walls between this cut and the others, and between it and the faces of the blank, the one with the least metal;
// of equals the one to the earlier cut, cuts before faces. Cuts that it runs into, and faces that it breaks through, have
// no wall and count for nothing. Nothing where no wall was found, or none under limit_mm.
// The nearest bodies are looked at first, so that the walls beyond them are ruled out by their distance alone.
// Precondition: `cut` is a place in the work. Accuracy as in wall.hpp.
[[nodiscard]] std::optional<ThinnestWall> thinnest_wall(
    const Work& work, std::size_t cut, double limit_mm = std::numeric_limits<double>::infinity());

}  // namespace sparewright::shape
