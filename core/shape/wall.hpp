// The least metal between two cuts, and between a cut and the outside of the blank.
//
// A wall is proven by a witness: a straight stretch that starts on one surface, ends on the other and lies in
// metal all the way. Nearest points alone prove nothing, since they may lie in the air (in an overrun, past
// an end, in a pocket); convex distances only rule thin walls out.
#pragma once

#include <limits>
#include <string_view>
#include <vector>

#include "core/shape/recipe.hpp"

namespace sparewright::shape {

// What stands on the grid can be tangent no better than this: two steps of the grid.
inline constexpr double kTouch_mm = 2e-6;

// A witness is no longer than the least there is by more than kWallAccuracy_mm where no third cut interrupts the metal
// there and both bodies are convex. With one in the way, or a profiled or turned body that is not convex, it is the least
// of a search, which comes within kWallSearch of the least.
inline constexpr double kWallAccuracy_mm = 1e-6;
inline constexpr double kWallSearch = 1e-3;

enum class WallKind {
  kThickEnough,  // ruled out: the two are at least as far apart as was asked; no witness was looked for
  kMetal,        // the witness from -> to, least_mm long, lies wholly in metal
  kTangent,      // they touch in metal and do not cut into each other: a wall of nothing
  kOpen,  // they run into each other in metal (or the cut breaks through the face): no wall; from is there
  kNothingBetween,  // no stretch of metal was found from one to the other (rarely there is one, through a narrow gap)
};

// least_mm     kMetal: the witness's length. kTangent: 0. kThickEnough: as at_least_mm. Else 0.
// at_least_mm  no wall between the two is thinner than this, metal or not (0 where nothing is proven).
// Where at_least_mm falls short of least_mm by more than kWallAccuracy_mm a third cut stood in the way: the nearest
// pair in the blank proved nothing, so thousands of stretches between points spread over the two surfaces were tried,
// and the shortest few that lie in metal drawn tight. That takes some 10 ms; without a third cut it is well under 1.
struct Wall {
  WallKind kind = WallKind::kNothingBetween;
  double least_mm = 0.0;
  double at_least_mm = 0.0;
  Point from;
  Point to;
};

// Between two cuts of the work, given by their places in it. Precondition: two different places in the work.
// limit_mm  walls of at least this are of no interest: they may come out longer than they are.
[[nodiscard]] Wall wall_between(const Work& work, std::size_t one, std::size_t other,
                                double limit_mm = std::numeric_limits<double>::infinity());

// From a cut to each face of the blank, in the order of faces(). kOpen where the cut breaks through that
// face. (How much is left beside a hole that is meant to break through the round side: side_metal() in
// cut_faults.hpp.)
struct FaceWall {
  std::string_view face;
  Wall wall;
};
[[nodiscard]] std::vector<FaceWall> walls_to_outside(
    const Work& work, std::size_t cut, double limit_mm = std::numeric_limits<double>::infinity());

}  // namespace sparewright::shape
