// The walls that NearCuts finds among the nearest cuts against those that all cuts give.
#include "core/shape/near_cuts.hpp"

#include <cmath>
#include <limits>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/shape/distance.hpp"
#include "random_shapes.hpp"

namespace sparewright::shape {
namespace {

constexpr double kAnything = std::numeric_limits<double>::infinity();
const Vector kSize{60.0, 40.0, 25.0};

bool is_wall(const Wall& w) {
  return w.kind == WallKind::kMetal || w.kind == WallKind::kTangent;
}

// Each cut a feature of its own.
Recipe random_block(tests::Random& random) {
  std::vector<Cutter> cutters = tests::grid_cutters(random, 4, kSize);
  for (std::size_t i = 0; i < cutters.size(); ++i)
    cutters[i].feature += fmt::format(" {}", i);
  auto made = Recipe::make({"block", Box{{}, kSize}}, cutters);
  EXPECT_TRUE(made);
  return *made;
}

// A body that only lies against the block takes nothing, and there is no wall beside it.
double least_of_all(const NearCuts& near, std::size_t cut) {
  const Work& work = near.work();
  double least_mm = kAnything;
  for (std::size_t other = 0; other < work.cuts.size(); ++other) {
    if (other == cut || !near.cuts_metal(other)) continue;
    const Wall wall = wall_between(work, cut, other);
    if (is_wall(wall)) least_mm = std::min(least_mm, wall.least_mm);
  }
  for (const FaceWall& face : walls_to_outside(work, cut)) {
    if (is_wall(face.wall)) least_mm = std::min(least_mm, face.wall.least_mm);
  }
  return least_mm;
}

// As the checks ask it: nearest first, each asked only for what would be thinner.
double least_of_near(const NearCuts& near, std::size_t cut) {
  double least_mm = kAnything;
  const auto take = [&](const Wall& wall) {
    if (is_wall(wall)) least_mm = std::min(least_mm, wall.least_mm);
  };
  for (const auto& [other, gap_mm] : near.within(cut, least_mm)) {
    if (gap_mm >= least_mm) break;
    take(near.wall_between(cut, other, least_mm));
  }
  for (const FaceWall& outside : near.walls_to_outside(cut, least_mm))
    take(outside.wall);
  return least_mm;
}

TEST(NearCuts, FindTheLeastOfAllWalls) {
  tests::Random random(46);
  int found = 0;
  for (int part = 0; part < 60; ++part) {
    const Recipe recipe = random_block(random);
    const NearCuts near(recipe.work());
    if (!near.cuts_metal(0)) continue;
    const double all_mm = least_of_all(near, 0);
    const double near_mm = least_of_near(near, 0);
    ASSERT_EQ(std::isfinite(near_mm), std::isfinite(all_mm)) << part;
    if (!std::isfinite(all_mm)) continue;
    ++found;
    ASSERT_NEAR(near_mm, all_mm, kWallAccuracy_mm + kWallSearch * all_mm) << part;
  }
  EXPECT_GT(found, 15);
}

TEST(NearCuts, AGapIsNeverMoreThanTheDistance) {
  tests::Random random(47);
  int apart = 0;
  for (int part = 0; part < 60; ++part) {
    const Recipe recipe = random_block(random);
    const NearCuts near(recipe.work());
    for (std::size_t i = 0; i < recipe.cuts().size(); ++i) {
      for (const auto& [other, gap_mm] : near.within(i, kAnything)) {
        apart += gap_mm > 0.0 ? 1 : 0;
        ASSERT_LE(gap_mm, distance(recipe.cuts()[i].body, recipe.cuts()[other].body).distance_mm + 1e-9)
            << part;
      }
    }
  }
  EXPECT_GT(apart, 50);
}

TEST(NearCuts, NearestComeFirst) {
  const auto bore = [](const char* name, double x) {
    return Cutter{name, Cylinder{Frame::at({x, 20.0, 0.0}), 4.0, kSize.z}, Open::kThrough};
  };
  const auto made = Recipe::make({"block", Box{{}, kSize}},
                                 std::vector{bore("far", 50.0), bore("one", 15.0), bore("near", 26.0)});
  ASSERT_TRUE(made);
  const auto near = NearCuts(made->work()).within(1, kAnything);
  ASSERT_EQ(near.size(), 2U);
  EXPECT_EQ(near[0].cut, 2U);
  EXPECT_NEAR(near[0].gap_mm, 3.0, 1e-9);
  EXPECT_EQ(NearCuts(made->work()).within(1, 4.0).size(), 1U);
}

}  // namespace
}  // namespace sparewright::shape
