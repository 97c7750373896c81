// Whether a cut does what it is meant to: takes something, stays inside the blank where it should, starts at
// a surface.
#pragma once

#include <optional>

#include "core/shape/volume.hpp"

namespace sparewright::shape {

// The body reaches into the blank by more than kTouch_mm of wall.hpp. (Of one that is not convex: some of its rays do.)
[[nodiscard]] bool reaches(const Primitive& blank, const Primitive& body);

// What a cut takes off the work as the cuts before it left it.
enum class Taken {
  kMetal,         // volume_mm3 of it
  kOutsideBlank,  // nothing: the cutter does not reach into the blank
  kAlreadyAir,    // nothing: what it reaches was cut before
};
struct Bite {
  Taken taken = Taken::kMetal;
  RayVolume volume;
};
// Precondition: `cut` is a place in the work. A bite so small that it falls between the rays counts as
// kAlreadyAir.
[[nodiscard]] Bite bite_of(const Work& work, std::size_t cut, Effort effort = Effort::kUsual);

// The least metal of the blank beside a cut where it is not meant to be open: negative where it breaks out,
// by as much as it comes through.
//
// For a hole: along every line of its side, the most metal there is beside it towards the outside of the
// blank; of all lines the one that has least. So a hole drilled across a round bar is measured at the middle
// of the bar, where its wall is thickest, and not at its mouths. The far end of a blind hole, floor and
// point, is measured as it is. For a box: along every edge between two faces that are not open, and the ends
// of these that are not open either; of a face without such an edge, the place deepest in metal.
//
//   a 17/32 counterbore with its axis 0.250 in from the edge of a plate: least_mm = -0.4 (0.016 in breaks
//   out)
//
// at: the place, on the cutter's nominal surface. Half-spaces have no sides: nothing is returned.
// Other cuts do not count; wall_between() has those.
struct SideMetal {
  double least_mm = 0.0;
  Point at;
};
[[nodiscard]] std::optional<SideMetal> side_metal(const Work& work, std::size_t cut);

// The cut comes out of the blank somewhere it is not meant to, by more than kTouch_mm of wall.hpp.
[[nodiscard]] bool breaks_out(const Work& work, std::size_t cut);

// A place where the overrun of an open end is not in the air: the end was said to be open and is not, or the
// cut starts below a surface. The work before the cut is looked at. Nothing where all open ends are in the
// air.
[[nodiscard]] std::optional<Point> metal_past_open_end(const Work& work, std::size_t cut);

}  // namespace sparewright::shape
