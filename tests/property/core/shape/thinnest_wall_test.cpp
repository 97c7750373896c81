// The thinnest wall beside a cut against looking at every wall it has.
#include "core/shape/thinnest_wall.hpp"

#include <gtest/gtest.h>

#include "random_shapes.hpp"

namespace sparewright::shape {
namespace {

const Vector kSize{60.0, 40.0, 25.0};

bool is_wall(const Wall& w) {
  return w.kind == WallKind::kMetal || w.kind == WallKind::kTangent;
}

TEST(ThinnestWall, IsTheLeastOfAll) {
  testing::Random random(46);
  int between = 0;
  int outside = 0;
  for (int part = 0; part < 60; ++part) {
    const auto made = Recipe::make({"block", Box{{}, kSize}}, testing::grid_cutters(random, 4, kSize));
    ASSERT_TRUE(made);
    const Work work = made->work();
    double least_mm = std::numeric_limits<double>::infinity();
    for (std::size_t other = 1; other < work.cuts.size(); ++other) {
      const Wall wall = wall_between(work, 0, other);
      if (is_wall(wall)) least_mm = std::min(least_mm, wall.least_mm);
    }
    for (const FaceWall& face : walls_to_outside(work, 0)) {
      if (is_wall(face.wall)) least_mm = std::min(least_mm, face.wall.least_mm);
    }
    const auto thinnest = thinnest_wall(work, 0);
    ASSERT_EQ(thinnest.has_value(), std::isfinite(least_mm)) << part;
    if (!thinnest) continue;
    ++(thinnest->other ? between : outside);
    ASSERT_EQ(thinnest->other.has_value(), thinnest->face.empty()) << part;
    ASSERT_NEAR(thinnest->wall.least_mm, least_mm, kWallAccuracy_mm + kWallSearch * least_mm) << part;
    if (least_mm <= kTouch_mm) continue;
    ASSERT_FALSE(thinnest_wall(work, 0, least_mm / 2)) << part;
    ASSERT_TRUE(thinnest_wall(work, 0, least_mm * 2)) << part;
  }
  EXPECT_GT(between, 10);
  EXPECT_GT(outside, 5);
}

TEST(ThinnestWall, OfEqualOnesIsTheOneToTheEarlierCut) {
  const auto bore = [](double x) {
    return Cutter{"bore", Cylinder{Frame::at({x, 20.0, 0.0}), 4.0, kSize.z}, Open::kThrough};
  };
  const auto made = Recipe::make({"block", Box{{}, kSize}}, std::vector{bore(45.0), bore(30.0), bore(15.0)});
  ASSERT_TRUE(made);
  const auto thinnest = thinnest_wall(made->work(), 1);
  ASSERT_TRUE(thinnest);
  EXPECT_NEAR(thinnest->wall.least_mm, 7.0, kWallAccuracy_mm);
  EXPECT_EQ(thinnest->other, 0U);
}

}  // namespace
}  // namespace sparewright::shape
