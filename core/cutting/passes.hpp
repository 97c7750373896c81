// How metal is shared out over cuts.
//
// The last two cuts are alike: same depth, same tool, same speed. What the first of them did to the size is what the
// second will do, so the size can be hit (common practice).
#pragma once

#include <vector>

namespace sparewright::cutting {

struct PassLimits {
  double greatest_mm = 0.0;  // most metal one roughing cut takes, as the size shows it; more than 0
  double like_mm = 0.0;      // what each of the two last cuts takes, as the size shows it; more than 0
  double least_mm = 0.0;     // what still cuts and does not rub; at most like_mm
  double step_mm = 0.0;      // what can be set: roughing cuts after the first are whole steps; 0: any
};

struct Passes {
  std::vector<double> sizes_mm;  // after each cut, the last one being the aim
  bool two_like_last = false;    // false: too little metal for two cuts that still cut
};

// From the size there is to the size aimed at, growing or shrinking. On diameter for a bore, on depth for a face: the
// limits are in the same measure. Roughing cuts are alike among themselves, but for the first, which takes what whole
// steps leave over. Where the metal is less than two like cuts,
// it is halved, as long as half still cuts; below that it is one cut. No metal: no cuts.
// A last cut of the size like_mm leaves "like_mm to finish" before it.
[[nodiscard]] Passes share_out(double from_mm, double aim_mm, const PassLimits& limits);

}  // namespace sparewright::cutting
