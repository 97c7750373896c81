// One view of the work: what is seen and what is hidden, as straight lines, arcs and paths in the plane of the view.
#pragma once

#include <span>
#include <vector>

#include "core/shape/recipe.hpp"
#include "drawing/sight.hpp"
#include "solid/edges.hpp"

namespace sparewright::drawing {

enum class Seen { kVisible, kHidden };

// cut_here: the last of the cuts made it (see view_of).
struct ViewLine {
  shape::FlatPoint from;
  shape::FlatPoint to;
  Seen seen = Seen::kVisible;
  bool cut_here = false;
  friend bool operator==(const ViewLine&, const ViewLine&) = default;
};

// From one angle counterclockwise to a greater one (v up), at most a full circle.
struct ViewArc {
  shape::FlatPoint centre;
  double radius_mm = 0.0;
  double from_rad = 0.0;
  double to_rad = 0.0;
  Seen seen = Seen::kVisible;
  bool cut_here = false;
  friend bool operator==(const ViewArc&, const ViewArc&) = default;
};

// Straight between its points, which lie within 0.01 mm of the curve.
struct ViewPath {
  std::vector<shape::FlatPoint> points;
  Seen seen = Seen::kVisible;
  bool cut_here = false;
};

// The end of what is drawn of a long bar.
struct ViewWave {
  double u = 0.0;
  double low = 0.0;  // along v
  double high = 0.0;
};

struct View {
  std::vector<ViewLine> lines;
  std::vector<ViewArc> arcs;
  std::vector<ViewPath> paths;
  std::vector<ViewLine> thin_lines;  // not edges of the solid: they stand for threads and knurls
  std::vector<ViewArc> thin_arcs;
  std::vector<ViewWave> waves;
  shape::FlatPoint low;  // of all of it
  shape::FlatPoint high;
};

// Edges come from the solid, outlines of round surfaces from the exact primitives, and what hides what from rays through
// them. Lines that fall on one another are one, seen before hidden and cut here before others. A curve is looked at every 0.5 mm, at no fewer than 40
// places and no more than 400; between two of them that differ the change is found to 0.005 mm, and what is shorter than the
// way between two is not sure to be seen.
//
// edges     of the solid of that work (solid/edges.hpp)
// cut_here  the last of the work's cuts: lines on the surface of one of them are marked
[[nodiscard]] View view_of(const shape::Work& work, const std::vector<solid::Edge>& edges, const Sight& sight,
                           std::span<const shape::Cut> cut_here = {});

}  // namespace sparewright::drawing
