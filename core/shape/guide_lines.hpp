// The straight lines of a cutter's side, for judging whether it stays in the metal.
#pragma once

#include <vector>

#include "core/shape/recipe.hpp"

namespace sparewright::shape {

// A stretch of the side of a nominal body. An end that is open counts for nothing; one that is shut has to
// lie in metal.
struct GuideLine {
  Point start;
  Point end;
  bool start_open = false;
  bool end_open = false;
};

// Bodies of revolution: the line of the side at an angle about local z (not the point of a drill, and no end
// face). The line at an angle moves smoothly with it.
[[nodiscard]] bool has_round_side(const Primitive& nominal);
[[nodiscard]] GuideLine side_line(const Primitive& nominal, Open open, double angle_rad);

// Prisms and profiled bodies: their upright edges, and lines close together over arcs. Boxes: the edges between two faces that are both shut. Others: none.
[[nodiscard]] std::vector<GuideLine> edge_lines(const Primitive& nominal, Open open);

// The shut faces of a box whose neighbours are all open, as corner + s * u + t * v, s and t from 0 to 1.
struct Patch {
  Point corner;
  Vector u;
  Vector v;
};
[[nodiscard]] std::vector<Patch> lone_faces(const Primitive& nominal, Open open);

// The point of a drill, which is always shut.
[[nodiscard]] std::vector<Point> shut_points(const Primitive& nominal);

// Points spread over the open ends of the nominal body, each with the way out of it.
struct OpenPoint {
  Point at;
  Vector out;
};
[[nodiscard]] std::vector<OpenPoint> open_points(const Primitive& nominal, Open open);

}  // namespace sparewright::shape
