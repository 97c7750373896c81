// From a recipe to one checked solid.
//
// Cuts are made one by one. After each the volume the kernel took is compared with what rays through the exact
// primitives say that cutter takes (core/shape/volume.hpp). On a difference the cut is made another way: first with its
// seam elsewhere, then with a fuzzy tolerance, then the whole part anew with that cutter first. If none agrees there is
// no solid, and the failure names the feature: a wrong solid never comes out.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/shape/recipe.hpp"
#include "solid/solid.hpp"

namespace sparewright::solid {

// The kernel's volume of a cut may differ from the rays' by the rays' own error and this share of the cut; rays are
// added until their error is below kSureShare of it, or they are at their most painstaking.
inline constexpr double kAgreeShare = 1e-3;
inline constexpr double kSureShare = 5e-3;

enum class Way { kAsUsual, kOtherSeam, kFuzzy, kOtherOrder, kNothingToCut };

struct CutReport {
  std::string feature;
  Way way = Way::kAsUsual;
  double taken_mm3 = 0.0;     // by the kernel
  double expected_mm3 = 0.0;  // by rays
  double error_mm3 = 0.0;     // of the rays, 99 in 100
};

// One report for each cut made here, in the recipe's order.
struct CheckedSolid {
  Solid solid;
  std::vector<CutReport> cuts;
};

// after  a solid of the first `cuts` cuts of the same recipe, to go on from; it has been checked when it was made.
struct Begun {
  Solid solid;
  std::size_t cuts = 0;
};

// Told after each cut how many of the recipe's cuts have been made and how the work stands then; answers whether to go
// on.
using Watch = std::function<bool(std::size_t cuts, const Solid& work)>;

// Fails with kKernel, naming the feature, where the kernel throws, reports an error, or disagrees with the rays in
// every way tried; also where a cut leaves no metal. Fails with kStopped, naming the blank, where the watch says so.
// Never throws anything of the kernel's. The same recipe gives the same solid, and the same STEP bytes, on every run and
// from wherever it is gone on: the work after k cuts depends on the first k cuts alone.
[[nodiscard]] base::Result<CheckedSolid> make_solid(const shape::Recipe& recipe,
                                                    const std::optional<Begun>& begun = std::nullopt,
                                                    const Watch& watch = {});

}  // namespace sparewright::solid
