// What several convex bodies have in common, and the nearest points of two such regions.
#pragma once

#include <optional>
#include <span>

#include "core/shape/primitive.hpp"

namespace sparewright::shape {

// The common part of some convex primitives, half-spaces among them. Valid as long as they are.
using Region = std::span<const Primitive* const>;

// A ball that holds the part of the regions that is of interest.
struct Ball {
  Point centre;
  double radius_mm = 0.0;
};

// The point deepest inside the region: the greatest depth below the nearest surface, negative where nothing
// is in common (then how far the bodies fail to meet). Accuracy: kRegionAccuracy_mm on the depth.
struct Deepest {
  Point point;
  double depth_mm = 0.0;
};
[[nodiscard]] Deepest deepest(Region region, const Ball& ball);

// The nearest two points of two regions, or nothing where one of them is empty or thinner than
// kRegionAccuracy_mm. Regions that meet to that accuracy give distance 0. Of many equally near pairs always
// the same one.
struct NearestPair {
  Point on_a;
  Point on_b;
  double distance_mm = 0.0;
};
[[nodiscard]] std::optional<NearestPair> nearest_pair(Region a, Region b, const Ball& ball);

inline constexpr double kRegionAccuracy_mm = 1e-7;

}  // namespace sparewright::shape
