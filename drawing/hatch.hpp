// Hatching: slanted thin lines over an area, interrupted where something stands in it (ISO 128-3: hatching is
// interrupted round lettering).
#pragma once

#include <vector>

#include "drawing/geometry.hpp"

namespace sparewright::drawing {

enum class Slant { kRising, kFalling };  // at 45 degrees: / or \ as seen on paper

struct Hatching {
  Slant slant = Slant::kRising;
  double apart_mm = 2.5;  // between two lines, across them; > 0
};

// Pieces shorter than kShortestHatch_mm are left out. Lines of two areas with the same hatching run on into each other.
inline constexpr double kShortestHatch_mm = 0.6;
[[nodiscard]] std::vector<Segment> hatch(const Box& area, const Hatching& hatching,
                                         const std::vector<Box>& boxes_left_out,
                                         const std::vector<Disc>& discs_left_out = {});

}  // namespace sparewright::drawing
