// The plates of dividing heads and rotary tables, and the heads themselves.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"

namespace sparewright::handbook {

// Circles on one plate can be used together (compound indexing); those of two plates, or of the two sides of
// one that is drilled from both, cannot.
struct IndexPlate {
  std::string name;          // "plate 2"
  std::vector<int> circles;  // holes in each
};

struct IndexPlateSet {
  std::string name;  // "three-plate"
  std::vector<IndexPlate> plates;
  Source source;
};

// A worm and the plates at hand. worm is turns of the crank for one of the spindle: 40, 60, 90.
struct DividingHead {
  int worm = 40;
  std::vector<IndexPlate> plates;
};

inline constexpr int kLeastWorm = 1;
inline constexpr int kMostWorm = 720;
inline constexpr int kMostHoles = 1000;  // in a circle

// The sets in the handbook: "three-plate" (15-49 holes, 40:1 heads), "two-sided" (24-66), "rotary table"
// (15-49, 90:1, from memory).
[[nodiscard]] std::vector<IndexPlateSet> index_plate_sets();
// Fails with kNameUnknown.
[[nodiscard]] base::Result<IndexPlateSet> find_index_plates(std::string_view name);

// Whether a head can be reckoned with: a worm of 1 to 720, at least one circle, each of 2 to 1000 holes.
// Fails with kValueNotAccepted. What indexes asks this first.
[[nodiscard]] base::Result<DividingHead> checked(DividingHead head);

}  // namespace sparewright::handbook
