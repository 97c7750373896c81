// The numbers of a touched form and how they follow its touches and its tip.
#pragma once

#include <cstddef>
#include <vector>

#include "core/base/result.hpp"
#include "core/survey/orthogonal_fit.hpp"
#include "core/survey/touched.hpp"

namespace sparewright::survey {

struct ToldNumber {
  Told told = Told::kX;
  double value = 0.0;
  std::vector<double> follows;  // a touch moved by 1 along its normal
  double tip = 0.0;             // the tip's diameter
};

struct TouchedNumbers {
  OrthogonalFit fit;
  std::vector<std::vector<double>> normals;  // one for each touch, length 1
  std::vector<ToldNumber> numbers;           // in the order of told_of()
  double arc_rad = 0.0;                      // of a circle
};

// touches: base units, as many coordinates each as the form wants. The tip's radius is taken off or put on: told is the
// surface. Fails as fit_circle() and fit_flat() do, and with kSizeNotPositive where the tip is larger than the boss.
[[nodiscard]] base::Result<TouchedNumbers> touched_numbers(TouchedForm form, TipSide side,
                                                           const std::vector<std::vector<double>>& touches,
                                                           double tip_diameter);

}  // namespace sparewright::survey
