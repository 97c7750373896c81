#include "solid/pieces.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include <TopExp.hxx>
#include <TopTools_IndexedMapOfShape.hxx>

#include "solid/kernel_shape.hpp"

namespace sparewright::solid {
namespace {

// Smaller comes first.
std::array<double, 4> rank(const Solid& piece) {
  const shape::Point centre = piece.centre_of_gravity();
  const auto step = [](double at_mm) { return std::round(at_mm / kSamePlace_mm); };
  return {-std::round(piece.volume_mm3() / kSameVolume_mm3), step(centre.x), step(centre.y), step(centre.z)};
}

}  // namespace

std::vector<Solid> pieces_of(const Solid& solid) {
  TopTools_IndexedMapOfShape lumps;
  TopExp::MapShapes(to_kernel(solid), TopAbs_SOLID, lumps);
  std::vector<std::pair<std::array<double, 4>, Solid>> ranked;
  for (int i = 1; i <= lumps.Extent(); ++i) {
    const Solid piece = from_kernel(lumps(i));
    ranked.emplace_back(rank(piece), piece);
  }
  std::stable_sort(ranked.begin(), ranked.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<Solid> pieces;
  for (auto& [order, piece] : ranked)
    pieces.push_back(std::move(piece));
  return pieces;
}

}  // namespace sparewright::solid
