// How metal is shared out over cuts where one division of a collar is coarser than the limits: cuts of whole divisions,
// and what they leave for a finer feed.
#pragma once

#include <vector>

#include "core/cutting/passes.hpp"

namespace sparewright::cutting {

struct WholeDivisions {
  std::vector<double> sizes_mm;  // after each cut, the last two of them alike where there is metal for two
  double left_mm = 0.0;          // from the last of them to the aim: at least least_mm where there is as much
  bool two_like_last = false;
};

// From the size there is to the size aimed at, growing or shrinking. limits as for share_out(); step_mm > 0 is one
// division in the measure of the size. What is left lies between least_mm and least_mm and two steps.
[[nodiscard]] WholeDivisions whole_divisions(double from_mm, double aim_mm, const PassLimits& limits);

}  // namespace sparewright::cutting
