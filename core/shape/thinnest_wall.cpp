#include "core/shape/thinnest_wall.hpp"

#include <algorithm>

#include "core/shape/distance.hpp"

namespace sparewright::shape {
namespace {

struct Neighbour {
  std::size_t cut = 0;
  double at_least_mm = 0.0;
};

// The other cuts, the nearest first.
std::vector<Neighbour> neighbours(const Work& work, std::size_t cut) {
  std::vector<Neighbour> all;
  for (std::size_t i = 0; i < work.cuts.size(); ++i) {
    if (i != cut) all.push_back({i, distance(work.cuts[cut].body, work.cuts[i].body).at_least_mm});
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const Neighbour& a, const Neighbour& b) { return a.at_least_mm < b.at_least_mm; });
  return all;
}

bool is_wall(const Wall& w) {
  return w.kind == WallKind::kMetal || w.kind == WallKind::kTangent;
}

bool goes_before(const Wall& wall, std::size_t other, const ThinnestWall& than) {
  if (wall.least_mm != than.wall.least_mm) return wall.least_mm < than.wall.least_mm;
  return other < *than.other;
}

}  // namespace

std::optional<ThinnestWall> thinnest_wall(const Work& work, std::size_t cut, double limit_mm) {
  std::optional<ThinnestWall> thinnest;
  const auto reach_mm = [&] { return thinnest ? std::min(limit_mm, thinnest->wall.least_mm) : limit_mm; };
  for (const Neighbour& neighbour : neighbours(work, cut)) {
    if (neighbour.at_least_mm > reach_mm()) break;
    const Wall wall = wall_between(work, cut, neighbour.cut, limit_mm);
    if (is_wall(wall) && wall.least_mm < limit_mm &&
        (!thinnest || goes_before(wall, neighbour.cut, *thinnest)))
      thinnest = {wall, neighbour.cut, {}};
  }
  for (const FaceWall& outside : walls_to_outside(work, cut, reach_mm())) {
    if (is_wall(outside.wall) && outside.wall.least_mm < reach_mm())
      thinnest = {outside.wall, std::nullopt, outside.face};
  }
  return thinnest;
}

}  // namespace sparewright::shape
