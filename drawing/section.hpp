// A section: the work cut by a plane, the near part taken away, the cut metal hatched.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "core/part/part.hpp"
#include "drawing/view.hpp"

namespace sparewright::drawing {

// Gives the edges of the solid of a recipe (solid/edges.hpp); fails as the kernel does.
using EdgesOf = std::function<base::Result<std::vector<solid::Edge>>(const shape::Recipe&)>;

// Where the front view is better as a section: the y of the plane. That is where a hole square to the top has steps, or a
// recess or an oil groove in it, and nothing on the front or the back would be lost. Of several the one with most to show.
[[nodiscard]] std::optional<double> section_wanted(const part::Part& part, const ledger::Snapshot& figures);

// The front view of what stands behind the plane, seen lines only. hatched: lines of part-mm over the metal the plane cuts,
// at 45 degrees, apart_mm from each other.
struct Section {
  View view;
  std::vector<ViewLine> hatched;
  double area_mm2 = 0.0;  // of the metal cut
};
[[nodiscard]] base::Result<Section> section_at(const shape::Recipe& recipe, double y_mm, double apart_mm,
                                               const EdgesOf& edges_of);

// Straight pieces of closed lines, in any order: what of the hatching lies inside, by counting crossings.
[[nodiscard]] std::vector<ViewLine> hatched(const std::vector<ViewLine>& outline, double apart_mm);

}  // namespace sparewright::drawing
