#include "solid/pieces.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include <BRepBuilderAPI_Transform.hxx>
#include <TopExp.hxx>
#include <TopTools_IndexedMapOfShape.hxx>
#include <gp_Trsf.hxx>
#include <gp_Vec.hxx>

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

Solid in_its_own_frame(const Solid& solid) {
  const shape::Point corner = solid.bounds().low;
  gp_Trsf move;
  move.SetTranslation(gp_Vec(-corner.x, -corner.y, -corner.z));
  // A copy: the kernel's other holders of the shape keep theirs where it is.
  return from_kernel(BRepBuilderAPI_Transform(to_kernel(solid), move, true).Shape());
}

}  // namespace sparewright::solid
