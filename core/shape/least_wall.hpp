// The thinnest wall of the whole work, with its place.
#pragma once

#include <optional>
#include <string_view>

#include "core/shape/wall.hpp"

namespace sparewright::shape {

// A straight stretch of metal from one surface to another. Between two cuts of one feature there is no wall.
struct LeastWall {
  double least_mm = 0.0;  // 0 where two cuts only touch
  Point from;
  Point to;
  std::optional<std::size_t> cut;    // none: from one face of the blank to the opposite one
  std::optional<std::size_t> other;  // the cut at the far end; none: a face of the blank
  std::string_view face;             // that face, as faces() in blank_face.hpp names it
};

// Nothing where there is no metal, or where more than kMostMeetingPairs pairs of cuts meet: then it is not computed.
//
// Accuracy as walls have it (wall.hpp). Two cuts that run into each other somewhere are open to each other: a web that is
// left between them elsewhere is not looked for. A blank that flats cut down all over is measured to the flats.
// Time: some ms for 20 cuts that are boxes, cylinders and drilled holes; every pair with a turned or a milled contour whose
// hulls meet adds a search of some 10 ms.
[[nodiscard]] std::optional<LeastWall> least_wall(const Work& work);

inline constexpr std::size_t kMostMeetingPairs = 4000;

}  // namespace sparewright::shape
