// A view put down on paper. Used inside this room only.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "drawing/display_list.hpp"
#include "drawing/view.hpp"

namespace sparewright::drawing {

// Where a view's (0, 0) lies on paper, and mm on paper for one mm of work.
struct ViewPlace {
  Point origin;
  double scale = 1.0;

  [[nodiscard]] Point on_paper(const shape::FlatPoint& p) const {
    return {origin.x_mm + scale * p.u, origin.y_mm - scale * p.v};
  }
};

// Nothing: such lines are left out.
using WeightOf = std::function<std::optional<Weight>(Seen seen, bool cut_here)>;

// Lines, then circles and arcs, then thin lines and waves, then paths.
// ground  gets all of it in straight pieces, for words to keep off
void add_view(DisplayList& list, std::vector<Segment>& ground, const View& view, const ViewPlace& place,
              const WeightOf& weight_of);

// A circle, or the stretch of it between two angles, in straight pieces.
void add_round(std::vector<Segment>& ground, Point centre, double radius_mm, double from_rad, double to_rad);

// Whether it goes all the way round.
[[nodiscard]] bool is_whole(const ViewArc& arc);

}  // namespace sparewright::drawing
