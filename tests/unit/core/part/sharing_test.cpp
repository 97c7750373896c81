// Sharing out a casting against plain reckoning, and against a search over a grid.
#include "core/part/sharing.hpp"

#include <gtest/gtest.h>

#include "splitmix.hpp"

namespace sparewright::part {
namespace {

TEST(Sharing, TwoSidesShareTheirMetal) {
  // 1 on one end and 4 on the other: 1.5 towards the right end leaves 2.5 on both.
  const std::vector<SharedFace> faces{{Face::kLeftEnd, 1.0}, {Face::kRightEnd, 4.0}};
  const Sharing best = best_sharing(faces, {}, {true, false, false});
  EXPECT_NEAR(best.shift_mm.x, 1.5, 1e-5);
  EXPECT_NEAR(best.least_mm, 2.5, 1e-5);
}

TEST(Sharing, ACoredHoleDrawsThePartToIt) {
  // The hole lies 2 out along y with 3 round it; the sides have plenty.
  const std::vector<SharedFace> faces{{Face::kFront, 10.0}, {Face::kBack, 10.0}};
  const std::vector<SharedHole> holes{{Face::kTop, {0.0, 2.0, 0.0}, 3.0}};
  const Sharing best = best_sharing(faces, holes, {false, true, false});
  EXPECT_NEAR(best.shift_mm.y, -2.0, 1e-3);
  EXPECT_NEAR(best.least_mm, 3.0, 1e-3);
}

TEST(Sharing, AnAxisThatIsNotFreeStays) {
  const std::vector<SharedFace> faces{{Face::kLeftEnd, -1.0}};
  EXPECT_EQ(best_sharing(faces, {}, {false, false, false}).shift_mm, (shape::Vector{}));
  EXPECT_EQ(best_sharing(faces, {}, {false, false, false}).least_mm, -1.0);
}

// Nothing on a grid of moves is better than the summit found.
TEST(Sharing, IsTheBestOfAll) {
  tests::SplitMix random(20251128);
  for (int i = 0; i < 20; ++i) {
    std::vector<SharedFace> faces;
    for (const Face face : kFaces)
      faces.push_back({face, random.between(-1.0, 4.0)});
    std::vector<SharedHole> holes;
    for (int k = 0; k < 2; ++k)
      holes.push_back({k == 0 ? Face::kTop : Face::kFront,
                       {random.between(-2.0, 2.0), random.between(-2.0, 2.0), random.between(-2.0, 2.0)},
                       random.between(0.0, 4.0)});
    const Sharing best = best_sharing(faces, holes, {true, true, true});
    for (int x = -8; x <= 8; ++x) {
      for (int y = -8; y <= 8; ++y) {
        for (int z = -8; z <= 8; ++z)
          EXPECT_LE(least_metal(faces, holes, {x / 2.0, y / 2.0, z / 2.0}), best.least_mm + 2e-3);
      }
    }
  }
}

}  // namespace
}  // namespace sparewright::part
