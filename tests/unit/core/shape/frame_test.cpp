#include "core/shape/frame.hpp"

#include <numbers>

#include <gtest/gtest.h>

#include "random_shapes.hpp"

namespace sparewright::shape {
namespace {

constexpr double kRounding = 1e-12;

void expect_near(const Point& a, const Point& b) {
  EXPECT_LT(distance_mm(a, b), kRounding);
}

TEST(Frame, AlongTheAxesIsExact) {
  EXPECT_EQ(Frame::along({}, {0.0, 0.0, 7.0}), Frame{});
  const Frame x = Frame::along({}, {2.0, 0.0, 0.0});
  EXPECT_EQ(x.z, (Vector{1.0, 0.0, 0.0}));
  EXPECT_EQ(x.x, (Vector{0.0, 1.0, 0.0}));
  EXPECT_EQ(x.y, (Vector{0.0, 0.0, 1.0}));
}

TEST(Frame, GoesThereAndBack) {
  tests::Random random(1);
  for (int i = 0; i < 200; ++i) {
    const Frame outer = tests::random_frame(random, 10.0);
    const Frame inner = tests::random_frame(random, 10.0);
    const Point p = random.point(10.0);
    expect_near(outer.to_local(outer.to_world(p)), p);
    expect_near(inner.in(outer).to_world(p), outer.to_world(inner.to_world(p)));
    expect_near(outer.inverse().to_world(outer.to_world(p)), p);
    EXPECT_NEAR(dot(cross(outer.x, outer.y), outer.z), 1.0, kRounding);
  }
}

TEST(Frame, TurnsAboutItsOwnAxis) {
  const Frame f = Frame::at({1.0, 2.0, 3.0}).turned(std::numbers::pi / 2);
  expect_near(f.to_world(Point{1.0, 0.0, 0.0}), {1.0, 3.0, 3.0});
  expect_near(Frame{}.shifted({0.0, 4.0, 0.0}).origin, {0.0, 4.0, 0.0});
}

TEST(Snapped, RoundsToTheGridAndHasNoMinusZero) {
  EXPECT_EQ(snapped(1.23456789), 1.234568);
  EXPECT_EQ(snapped(25.4 / 64), 0.396875);
  EXPECT_FALSE(std::signbit(snapped(-1e-9)));
  EXPECT_EQ(snapped(0.1 + 0.2), snapped(0.3));
}

TEST(Snapped, EqualFramesReachedByDifferentSumsAreEqual) {
  const Frame one = snapped(Frame::along({0.1 + 0.2, 0.0, 0.0}, {1.0, 1.0, 0.0}));
  const Frame other = snapped(Frame::along({0.3, 0.0, 0.0}, {3.0, 3.0, 1e-14}));
  EXPECT_EQ(one, other);
}

}  // namespace
}  // namespace sparewright::shape
