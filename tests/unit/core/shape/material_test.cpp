#include "core/shape/material.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/shape/volume.hpp"
#include "random_shapes.hpp"

namespace sparewright::shape {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

constexpr double kPi = std::numbers::pi;
const Ray kAlongX{{-5.0, 5.0, 5.0}, {1.0, 0.0, 0.0}};

Recipe bar(const std::vector<Cutter>& cutters) {
  const auto made = Recipe::make({"bar", Box{{}, {100.0, 10.0, 10.0}}}, cutters);
  EXPECT_TRUE(made);
  return made.value();
}

Cutter slot(double from, double to) {
  return milled_box("slot", {}, {from, 0.0, 0.0}, {to, 10.0, 10.0},
                    Open::kYLow | Open::kYHigh | Open::kZLow | Open::kZHigh);
}

TEST(Metal, IsTheBlankLessTheCutters) {
  EXPECT_THAT(metal_along(bar({}).work(), kAlongX), ElementsAre(Interval{5.0, 105.0}));
  EXPECT_THAT(metal_along(bar({slot(20.0, 30.0)}).work(), kAlongX),
              ElementsAre(Interval{5.0, 25.0}, Interval{35.0, 105.0}));
  EXPECT_THAT(metal_along(bar({slot(20.0, 30.0), slot(25.0, 40.0)}).work(), kAlongX),
              ElementsAre(Interval{5.0, 25.0}, Interval{45.0, 105.0}));
  EXPECT_THAT(metal_along(bar({slot(20.0, 30.0)}).work(), {{0.0, 50.0, 0.0}, {1.0, 0.0, 0.0}}), IsEmpty());
}

TEST(Metal, CoincidentFacesLeaveNeitherSliversNorGaps) {
  EXPECT_THAT(metal_along(bar({slot(20.0, 30.0), slot(30.0, 40.0), slot(0.0, 20.0)}).work(), kAlongX),
              ElementsAre(Interval{45.0, 105.0}));
  EXPECT_THAT(metal_along(bar({slot(0.0, 100.0)}).work(), kAlongX), IsEmpty());
  EXPECT_THAT(metal_along(bar({slot(20.0, 30.0), slot(20.0, 30.0)}).work(), kAlongX),
              ElementsAre(Interval{5.0, 25.0}, Interval{35.0, 105.0}));
  // Three ways of saying 0.3, none the same double.
  const double third = 0.1 + 0.2;
  EXPECT_THAT(
      metal_along(bar({slot(0.1, third), slot(0.3, 0.9 - 0.6 + 1.0), slot(1.3, 100.0)}).work(), kAlongX),
      ElementsAre(Interval{5.0, 5.1}));
}

TEST(Metal, MembershipKeepsTheSurface) {
  const Recipe recipe = bar({slot(20.0, 30.0)});
  EXPECT_TRUE(is_metal(recipe.work(), {0.0, 0.0, 0.0}));
  EXPECT_TRUE(is_metal(recipe.work(), {20.0, 5.0, 5.0}));
  EXPECT_FALSE(is_metal(recipe.work(), {20.001, 5.0, 5.0}));
  EXPECT_FALSE(is_metal(recipe.work(), {-0.001, 5.0, 5.0}));
  EXPECT_TRUE(is_metal(recipe.work_after(0), {25.0, 5.0, 5.0}));
}

// The twin of the intervals is point membership, step by step.
TEST(Metal, AgreesWithMembershipOnPartsFullOfCoincidentFaces) {
  tests::Random random(31);
  int steps_in_metal = 0;
  for (int part = 0; part < 60; ++part) {
    const Vector size{60.0, 40.0, 25.0};
    const auto made = Recipe::make({"block", Box{{}, size}}, tests::grid_cutters(random, 8, size));
    ASSERT_TRUE(made);
    for (int k = 0; k < 30; ++k) {
      const Ray ray =
          ray_through(random.point(70.0), {random.between(0.0, size.x), random.between(0.0, size.y), 11.0});
      const auto metal = metal_along(made->work(), ray);
      for (std::size_t i = 0; i + 1 < metal.size(); ++i)
        ASSERT_GT(metal[i + 1].enter_mm, metal[i].exit_mm);
      for (double t = -200.0; t < 200.0; t += 0.731) {
        const bool between_ends = std::any_of(
            metal.begin(), metal.end(), [&](const Interval& m) { return t > m.enter_mm && t < m.exit_mm; });
        const bool near_an_end = std::any_of(metal.begin(), metal.end(), [&](const Interval& m) {
          return std::abs(t - m.enter_mm) < 1e-6 || std::abs(t - m.exit_mm) < 1e-6;
        });
        if (near_an_end) continue;
        steps_in_metal += between_ends ? 1 : 0;
        ASSERT_EQ(between_ends, is_metal(made->work(), ray.at(t))) << part << " " << k << " " << t;
      }
    }
  }
  EXPECT_GT(steps_in_metal, 10000);
}

TEST(RayVolume, IsExactWhereEveryRayMeetsTheSame) {
  const Recipe recipe = bar({slot(20.0, 30.0)});
  const RayVolume taken = metal_within(recipe.work_after(0), recipe.cuts()[0].body, Effort::kQuick);
  EXPECT_NEAR(taken.volume_mm3, 1000.0, 1e-5);
  EXPECT_LT(taken.error_mm3, 1e-3);
  const auto plate = Recipe::make(
      {"plate", Box{{}, {50.0, 50.0, 8.0}}},
      std::vector{Cutter{"bore", Cylinder{Frame::at({20.0, 20.0, 0.0}), 7.0, 8.0}, Open::kThrough}});
  ASSERT_TRUE(plate);
  const RayVolume bore = metal_within(plate->work_after(0), plate->cuts()[0].body);
  EXPECT_NEAR(bore.volume_mm3, kPi * 49.0 * 8.0, 1e-5);
}

TEST(RayVolume, OfWhatHasGoneIsNothing) {
  const Recipe recipe = bar({slot(20.0, 30.0), slot(22.0, 28.0)});
  EXPECT_EQ(metal_within(recipe.work_after(1), recipe.cuts()[1].body).volume_mm3, 0.0);
}

TEST(RayVolume, TakesAHalfSpace) {
  const Recipe recipe =
      bar({{"end", HalfSpace{Frame::along({60.0, 0.0, 0.0}, {-1.0, 0.0, 0.0})}, Open::kNone}});
  EXPECT_NEAR(metal_volume(recipe.work()).volume_mm3, 6000.0, 1e-3);
  EXPECT_NEAR(metal_within(recipe.work_after(0), recipe.cuts()[0].body).volume_mm3, 4000.0, 1e-3);
}

TEST(RayVolume, RepeatsBitForBit) {
  tests::Random random(32);
  const Vector size{60.0, 40.0, 25.0};
  const auto made = Recipe::make({"block", Box{{}, size}}, tests::grid_cutters(random, 8, size));
  ASSERT_TRUE(made);
  EXPECT_EQ(metal_volume(made->work()).volume_mm3, metal_volume(made->work()).volume_mm3);
}

TEST(RayVolume, BitesAddUpToWhatHasGone) {
  tests::Random random(33);
  for (int part = 0; part < 20; ++part) {
    const Vector size{60.0, 40.0, 25.0};
    const auto made = Recipe::make({"block", Box{{}, size}}, tests::grid_cutters(random, 6, size));
    ASSERT_TRUE(made);
    double left = size.x * size.y * size.z;
    double error = 0.0;
    for (std::size_t k = 0; k < 6; ++k) {
      const RayVolume bite = metal_within(made->work_after(k), made->cuts()[k].body, Effort::kCareful);
      left -= bite.volume_mm3;
      error += bite.error_mm3;
    }
    const RayVolume all = metal_volume(made->work(), Effort::kCareful);
    ASSERT_NEAR(all.volume_mm3, left, error + all.error_mm3) << part;
  }
}

}  // namespace
}  // namespace sparewright::shape
