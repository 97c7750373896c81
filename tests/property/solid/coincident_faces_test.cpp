// Parts made so that faces coincide: where a kernel goes wrong without saying so. Judged by counting.
#include <cmath>

#include <gtest/gtest.h>

#include "core/shape/material.hpp"
#include "core/shape/volume.hpp"
#include "random_shapes.hpp"
#include "solid/make_solid.hpp"

namespace sparewright::solid {
namespace {

const shape::Vector kSize{60.0, 40.0, 25.0};

struct Tally {
  int first_try = 0;
  int second_try = 0;
  int flagged = 0;

  void add(const base::Result<CheckedSolid>& made) {
    if (!made) {
      ++flagged;
      std::printf("  flagged: %s: %s\n", made.error().subject.c_str(), made.error().found.c_str());
      return;
    }
    bool again = false;
    for (const CutReport& cut : made->cuts)
      again = again || (cut.way != Way::kAsUsual && cut.way != Way::kNothingToCut);
    ++(again ? second_try : first_try);
  }
  void print(const char* what, int seed) const {
    std::printf("%s, seed %d: first try %d, second try %d, flagged %d\n", what, seed, first_try, second_try,
                flagged);
  }
};

// Everything lies on whole millimetres, so the metal is whole cubes of 1 mm: counting them is exact.
double counted_mm3(const shape::Recipe& recipe) {
  int count = 0;
  for (int x = 0; x < static_cast<int>(kSize.x); ++x) {
    for (int y = 0; y < static_cast<int>(kSize.y); ++y) {
      for (int z = 0; z < static_cast<int>(kSize.z); ++z) {
        count += is_metal(recipe.work(), {x + 0.5, y + 0.5, z + 0.5}) ? 1 : 0;
      }
    }
  }
  return count;
}

TEST(CoincidentFaces, BoxesOnAGridAreRightOrFlagged) {
  constexpr int kSeed = 61;
  testing::Random random(kSeed);
  Tally tally;
  int parts = 0;
  while (parts < 30) {
    auto cutters = testing::grid_cutters(random, 6, kSize);
    std::erase_if(cutters, [](const auto& c) { return !std::holds_alternative<shape::Box>(c.nominal); });
    const auto recipe = shape::Recipe::make({"block", shape::Box{{}, kSize}}, cutters);
    ASSERT_TRUE(recipe);
    const double counted = counted_mm3(*recipe);
    if (counted == 0.0) continue;
    ++parts;
    const auto made = make_solid(*recipe);
    tally.add(made);
    if (made) {
      ASSERT_NEAR(made->solid.volume_mm3(), counted, 1e-3) << "part " << parts;
    }
  }
  tally.print("boxes on a grid", kSeed);
  EXPECT_LE(tally.flagged, 1);
}

TEST(CoincidentFaces, HolesAndBoxesOnAGridAreRightOrFlagged) {
  constexpr int kSeed = 62;
  testing::Random random(kSeed);
  Tally tally;
  for (int part = 0; part < 30; ++part) {
    const auto recipe =
        shape::Recipe::make({"block", shape::Box{{}, kSize}}, testing::grid_cutters(random, 6, kSize));
    ASSERT_TRUE(recipe);
    const shape::RayVolume rays = metal_volume(recipe->work(), shape::Effort::kPainstaking);
    const auto made = make_solid(*recipe);
    tally.add(made);
    if (made) {
      ASSERT_NEAR(made->solid.volume_mm3(), rays.volume_mm3, 2 * rays.error_mm3 + 1e-2) << "part " << part;
    }
  }
  tally.print("holes and boxes on a grid", kSeed);
  EXPECT_LE(tally.flagged, 2);
}

}  // namespace
}  // namespace sparewright::solid
