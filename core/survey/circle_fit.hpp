// The circle that lies nearest to touches. orthogonal_fit.hpp has the notation and the sources.
#pragma once

#include <span>
#include <vector>

#include "core/base/result.hpp"
#include "core/survey/orthogonal_fit.hpp"

namespace sparewright::survey {

struct Point2 {
  double x = 0.0;
  double y = 0.0;
};

struct CircleFit : OrthogonalFit {
  double x = 0.0;
  double y = 0.0;
  double radius = 0.0;
  std::vector<Point2> normals;  // of each touch: outwards, length 1
  double arc_rad = 0.0;         // what the touches are spread over: a turn less the widest gap between them
};

// Guarantees
//   1. Moving, turning or mirroring all touches does the same to the circle, within kFitError of the touches' extent.
//   2. Three touches are met exactly.
// Degenerate: fewer than three places touched, or touches on a straight line -> kReadingsTooFew.
// Assumes touches equally well known in all directions. A touch at the circle's own middle has no direction.
// Fails with kReadingsTooFew, kTooMany, kReadingsDisagree (no circle of a finite radius lies nearest).
[[nodiscard]] base::Result<CircleFit> fit_circle(std::span<const Point2> touches);

}  // namespace sparewright::survey
