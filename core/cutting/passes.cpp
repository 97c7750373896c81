#include "core/cutting/passes.hpp"

#include <algorithm>
#include <cmath>

namespace sparewright::cutting {
namespace {

// Roughing cuts, first to last: none greater than allowed, all but the first whole steps and alike.
std::vector<double> roughing_cuts(double metal, const PassLimits& limits) {
  constexpr double kSame = 1e-9;  // of a cut: a rounding error over a whole number of cuts is no further cut
  for (int count = std::max(1, static_cast<int>(std::ceil(metal / limits.greatest_mm - kSame)));; ++count) {
    const double alike = metal / count;
    const double whole =
        limits.step_mm > 0.0 ? std::floor(alike / limits.step_mm + kSame) * limits.step_mm : alike;
    const double first = metal - (count - 1) * whole;
    if (first > limits.greatest_mm * (1.0 + kSame) && whole > 0.0) continue;
    std::vector<double> cuts{first};
    cuts.resize(static_cast<std::size_t>(count), whole);
    return cuts;
  }
}

}  // namespace

Passes share_out(double from_mm, double aim_mm, const PassLimits& limits) {
  constexpr double kNothing_mm = 1e-9;
  const double way = aim_mm < from_mm ? -1.0 : 1.0;
  const double metal = std::abs(aim_mm - from_mm);
  Passes passes;
  if (metal < kNothing_mm) return passes;
  const double like = std::min(limits.like_mm, metal / 2.0);
  passes.two_like_last = like >= limits.least_mm;
  if (passes.two_like_last) {
    double size = from_mm;
    const double rough = metal - 2.0 * like;
    if (rough >= kNothing_mm) {
      for (const double cut : roughing_cuts(rough, limits))
        passes.sizes_mm.push_back(size += way * cut);
    }
    passes.sizes_mm.push_back(aim_mm - way * like);
  }
  passes.sizes_mm.push_back(aim_mm);
  return passes;
}

}  // namespace sparewright::cutting
