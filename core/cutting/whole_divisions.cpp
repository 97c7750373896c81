#include "core/cutting/whole_divisions.hpp"

#include <algorithm>
#include <cmath>

namespace sparewright::cutting {
namespace {

constexpr double kSame = 1e-6;  // of a division

long whole(double mm, double step_mm) {
  return static_cast<long>(std::floor(mm / step_mm + kSame));
}

// Divisions of each cut: roughing cuts as even as whole divisions allow, the heavier first; then two alike.
std::vector<long> cuts_in_divisions(long all, long like, long greatest) {
  std::vector<long> cuts;
  const long rough = all - 2 * like;
  const long count = rough > 0 ? (rough + greatest - 1) / greatest : 0;
  for (long i = 0; i < count; ++i)
    cuts.push_back(rough / count + (i < rough % count ? 1 : 0));
  cuts.insert(cuts.end(), 2, like);
  return cuts;
}

}  // namespace

WholeDivisions whole_divisions(double from_mm, double aim_mm, const PassLimits& limits) {
  const double way = aim_mm < from_mm ? -1.0 : 1.0;
  const double metal = std::abs(aim_mm - from_mm);
  WholeDivisions shared;
  shared.left_mm = metal;
  const long all = whole(metal - limits.least_mm, limits.step_mm);
  if (all < 1) return shared;
  std::vector<long> cuts{1};
  if (all >= 2) {
    const long like = std::min(std::max(1L, whole(limits.like_mm, limits.step_mm)), all / 2);
    const long greatest = std::max(1L, whole(limits.greatest_mm, limits.step_mm));
    const bool spare_is_left = all / 2 == like;  // an odd division is no cut of its own
    cuts = cuts_in_divisions(spare_is_left ? 2 * like : all, like, greatest);
    shared.two_like_last = true;
  }
  long taken = 0;
  for (const long cut : cuts) {
    taken += cut;
    shared.sizes_mm.push_back(from_mm + way * limits.step_mm * static_cast<double>(taken));
  }
  shared.left_mm = metal - limits.step_mm * static_cast<double>(taken);
  return shared;
}

}  // namespace sparewright::cutting
