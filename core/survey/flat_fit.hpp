// The straight line or the plane that lies nearest to touches. orthogonal_fit.hpp has the notation and the sources.
#pragma once

#include <cstddef>
#include <vector>

#include "core/base/result.hpp"
#include "core/survey/orthogonal_fit.hpp"

namespace sparewright::survey {

// A line touched in x and y, or a plane in x, y and z, both nearly square to one axis: that coordinate as it follows the
// others, along = at + rise[0] (across[0] - middle[0]) + rise[1] (across[1] - middle[1]).
struct FlatFit : OrthogonalFit {
  double at = 0.0;
  std::vector<double> rises;    // one for each other axis, in their order
  std::vector<double> middles;  // the mean of the touches on each other axis
  std::vector<double> normal;   // length 1, in the order of the axes; positive along `along`
};

// The steepest rise: a face that leans more belongs to another side.
inline constexpr double kSteepest = 1.0;

// touches: rows of 2 or 3 coordinates, all alike. along: the axis the face is nearly square to.
// Guarantees 1 as above (turning: as long as the rises stay below kSteepest); 2: as many touches as numbers are met exactly.
// Fails with kReadingsTooFew where the touches do not fix it (one place; for a plane, places in one line), kTooMany, and
// kValueNotAccepted where it leans by more than kSteepest.
[[nodiscard]] base::Result<FlatFit> fit_flat(const std::vector<std::vector<double>>& touches,
                                             std::size_t along);

}  // namespace sparewright::survey
