// The picture of what was measured along a line, with the readings on it.
#pragma once

#include <string>
#include <vector>

#include "core/survey/sketch.hpp"
#include "drawing/display_list.hpp"

namespace sparewright::drawing {

struct MeasuredPicture {
  DisplayList list;  // from (0, 0)
  double height_mm = 0.0;
  std::string scale;  // "1:2"
};

// Round things as circles with their centre lines, edges as lines with hatched metal behind them; below them a row for each
// reading, the shorter nearer, an arrow at both ends. To the largest scale that stays within width_mm and kMeasuredHigh_mm.
// says  what stands over the line of each span, in their order: "1.280, 1.281". Texts overlap nothing.
[[nodiscard]] MeasuredPicture measured_view(const survey::Sketch& sketch,
                                            const std::vector<std::string>& says, double width_mm,
                                            const Ruler& ruler);

inline constexpr double kMeasuredHigh_mm = 34.0;  // without the rows

}  // namespace sparewright::drawing
