#include "core/shape/ray.hpp"

#include <limits>

#include <gtest/gtest.h>

namespace sparewright::shape {
namespace {

constexpr double kEndless = std::numeric_limits<double>::infinity();
const Vector kX{1.0, 0.0, 0.0};
const Vector kZ{0.0, 0.0, 1.0};

void expect_inside(const Primitive& p, const Ray& ray, double enter, double exit) {
  const auto found = inside(p, ray);
  ASSERT_TRUE(found);
  if (std::isinf(enter)) {
    EXPECT_EQ(found->enter_mm, enter);
  } else {
    EXPECT_NEAR(found->enter_mm, enter, kRayAccuracy_mm);
  }
  EXPECT_NEAR(found->exit_mm, exit, kRayAccuracy_mm);
}

TEST(Ray, ThroughEachKind) {
  expect_inside(Box{{}, {4.0, 4.0, 4.0}}, {{-1.0, 1.0, 1.0}, kX}, 1.0, 5.0);
  expect_inside(Cylinder{{}, 5.0, 2.0}, {{-9.0, 3.0, 1.0}, kX}, 5.0, 13.0);
  expect_inside(Cylinder{{}, 5.0, 2.0}, {{1.0, 1.0, 7.0}, -kZ}, 5.0, 7.0);
  expect_inside(Cone{{}, 4.0, 0.0, 4.0}, {{-9.0, 0.0, 1.0}, kX}, 6.0, 12.0);
  expect_inside(Cone{{}, 4.0, 0.0, 4.0}, {{1.0, 0.0, -5.0}, kZ}, 5.0, 8.0);
  expect_inside(Cone{{}, 0.0, 4.0, 4.0}, {{1.0, 0.0, -5.0}, kZ}, 6.0, 9.0);
  expect_inside(DrilledHole{{}, 3.0, 10.0, std::numbers::pi / 2}, {{1.0, 0.0, -1.0}, kZ}, 1.0, 13.0);
  expect_inside(HalfSpace{}, {{0.0, 0.0, -2.0}, kZ}, -kEndless, 2.0);
  expect_inside(hexagonal_prism({}, 10.0, 2.0), {{-9.0, 0.0, 1.0}, kX}, 4.0, 14.0);
}

TEST(Ray, SlantedThroughACone) {
  // Half angle 45 degrees; the ray at 45 degrees runs parallel to the mantle on one side.
  const Cone cone{{}, 4.0, 0.0, 4.0};
  const Ray parallel{{0.0, 0.0, 0.0}, direction(Vector{-1.0, 0.0, 1.0})};
  expect_inside(cone, parallel, 0.0, std::sqrt(8.0));
  const Ray other{{-2.0, 0.0, 0.0}, direction(Vector{1.0, 0.0, 1.0})};
  expect_inside(cone, other, 0.0, std::sqrt(18.0));
}

TEST(Ray, TangentMisses) {
  EXPECT_FALSE(inside(Cylinder{{}, 5.0, 2.0}, {{-9.0, 5.0, 1.0}, kX}));
  EXPECT_FALSE(inside(Box{{}, {1.0, 1.0, 1.0}}, {{-1.0, 1.0, 0.5}, direction(Vector{1.0, 1.0, 0.0})}));
}

TEST(Ray, AlongAMantleMisses) {
  EXPECT_FALSE(inside(Cylinder{{}, 5.0, 2.0}, {{5.0, 0.0, -1.0}, kZ}));
}

TEST(Ray, InAFaceBelongsToOneSideOnly) {
  const Box low{{}, {1.0, 1.0, 1.0}};
  const Box high{Frame::at({0.0, 0.0, 1.0}), {1.0, 1.0, 1.0}};
  const Ray shared{{-1.0, 0.5, 1.0}, kX};
  EXPECT_FALSE(inside(low, shared));
  EXPECT_TRUE(inside(high, shared));
  EXPECT_FALSE(inside(HalfSpace{}, {{0.0, 0.0, 0.0}, kX}));
  EXPECT_TRUE(inside(Cylinder{{}, 5.0, 2.0}, {{-9.0, 0.0, 0.0}, kX}));
  EXPECT_FALSE(inside(Cylinder{{}, 5.0, 2.0}, {{-9.0, 0.0, 2.0}, kX}));
}

TEST(Ray, BehindItsOriginCounts) {
  expect_inside(Box{{}, {4.0, 4.0, 4.0}}, {{9.0, 1.0, 1.0}, kX}, -9.0, -5.0);
}

}  // namespace
}  // namespace sparewright::shape
