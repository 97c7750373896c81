// Contours of straights and arcs whose corners are rounded by arcs that touch both edges.
#pragma once

#include <span>

#include "core/shape/contour.hpp"

namespace sparewright::shape {

// A corner, the edge that leads on to the next one (bow as in Corner), and the fillet at the corner; 0: sharp.
struct FilletedCorner {
  FlatPoint at;
  double bow = 0.0;
  double radius_mm = 0.0;
};

// Corners counterclockwise. Each fillet touches the two edges that meet at its corner, straight or arc, on the inside of
// the bend; of several such circles the one nearest the corner is taken. Where there is none, its corners are not numbers,
// and where it takes more of an edge than there is, the contour crosses itself: fault_of() tells both.
//
// The centre of the fillet lies where the two edges meet when each is shifted towards it by the radius (plain geometry).
[[nodiscard]] Contour filleted_contour(std::span<const FilletedCorner> corners);

// The bow of an arc with that radius over a chord, not more than half a circle; not a number where the chord is longer
// than the circle is wide.
[[nodiscard]] double bow_of(const FlatPoint& from, const FlatPoint& to, double radius_mm);

}  // namespace sparewright::shape
