// Lines that fall on one another are drawn once: what is seen before what is hidden, what is cut here before the rest. Used inside this room only.
#pragma once

#include <vector>

#include "drawing/view.hpp"

namespace sparewright::drawing {

// Two lines are one where they lie within kOneLine_mm of each other. The pieces come out sorted, in no particular order
// of the input, gaps of less than kOneLine_mm closed.
inline constexpr double kOneLine_mm = 0.01;
[[nodiscard]] std::vector<ViewLine> one_line_each(const std::vector<ViewLine>& lines);
[[nodiscard]] std::vector<ViewArc> one_arc_each(const std::vector<ViewArc>& arcs);

}  // namespace sparewright::drawing
