// Convex distances against what can be worked out by hand, and against a slow twin.
#include <gtest/gtest.h>

#include "core/shape/clearance.hpp"
#include "core/shape/distance.hpp"
#include "core/shape/region.hpp"
#include "core/shape/surface_points.hpp"
#include "random_shapes.hpp"

namespace sparewright::shape {
namespace {

TEST(DistanceProperty, ProvesItselfOnRandomPairs) {
  tests::Random random(21);
  int apart = 0;
  for (int i = 0; i < 20000; ++i) {
    const double reach = random.one_in(2) ? 100.0 : 30.0;
    const Primitive a = tests::random_primitive(random, reach);
    const Primitive b = tests::random_primitive(random, reach);
    const Distance d = distance(a, b);
    ASSERT_GE(d.at_least_mm, d.distance_mm - kDistanceAccuracy_mm) << i;
    ASSERT_NEAR(clearance(a, d.on_a).distance_mm, std::min(0.0, clearance(a, d.on_a).distance_mm), 1e-11)
        << i;
    ASSERT_NEAR(clearance(b, d.on_b).distance_mm, std::min(0.0, clearance(b, d.on_b).distance_mm), 1e-11)
        << i;
    if (d.distance_mm == 0.0) continue;
    ++apart;
    ASSERT_NEAR(distance_mm(d.on_a, d.on_b), d.distance_mm, 1e-11) << i;
  }
  EXPECT_GT(apart, 15000);
}

// The other way round, and moved as a whole, the answer is the same.
TEST(DistanceProperty, DoesNotDependOnOrderOrPlace) {
  tests::Random random(22);
  for (int i = 0; i < 2000; ++i) {
    const Primitive a = tests::random_primitive(random, 60.0);
    const Primitive b = tests::random_primitive(random, 60.0);
    const Frame motion = tests::random_frame(random, 100.0);
    const double here = distance(a, b).distance_mm;
    ASSERT_NEAR(distance(b, a).distance_mm, here, kDistanceAccuracy_mm) << i;
    ASSERT_NEAR(distance(placed(a, motion), placed(b, motion)).distance_mm, here, kDistanceAccuracy_mm) << i;
  }
}

// The twin: drop from body to body until nothing moves, from many starts.
TEST(DistanceProperty, AgreesWithDroppingBackAndForth) {
  tests::Random random(23);
  for (int i = 0; i < 100; ++i) {
    const Primitive a = tests::random_primitive(random, 60.0);
    const Primitive b = tests::random_primitive(random, 60.0);
    double nearest = 1e9;
    Point best;
    for (const Point& p : surface_points(a)) {
      const double d = std::max(0.0, clearance(b, p).distance_mm);
      if (d < nearest) {
        nearest = d;
        best = p;
      }
    }
    for (int drop = 0; drop < 20000 && nearest > 0.0; ++drop) {
      const Clearance to_b = clearance(b, best);
      const Point on_b = best - to_b.distance_mm * to_b.normal;
      const Clearance to_a = clearance(a, on_b);
      nearest = std::max(0.0, to_a.distance_mm);
      best = on_b - to_a.distance_mm * to_a.normal;
    }
    const double found = distance(a, b).distance_mm;
    ASSERT_LE(found, nearest + kDistanceAccuracy_mm) << i;
    ASSERT_NEAR(found, nearest, 1e-3) << i;  // the twin creeps where surfaces are nearly parallel
  }
}

TEST(DistanceProperty, ParallelCylinders) {
  tests::Random random(24);
  for (int i = 0; i < 500; ++i) {
    const Frame f = tests::random_frame(random, 50.0);
    const double r = random.size(0.1, 20.0);
    const double s = random.size(0.1, 20.0);
    const double gap = random.size(1e-5, 50.0);
    const Cylinder a{f, r, random.size(1.0, 50.0)};
    const Cylinder b{f.turned(random.between(0.0, 6.0)).shifted({r + s + gap, 0.0, 0.5}), s,
                     random.size(1.0, 50.0)};
    ASSERT_NEAR(distance(a, b).distance_mm, gap, kDistanceAccuracy_mm) << i;
  }
}

TEST(DistanceProperty, SkewCylinders) {
  tests::Random random(25);
  for (int i = 0; i < 500; ++i) {
    const Frame f = tests::random_frame(random, 50.0);
    const double r = random.size(0.1, 20.0);
    const double s = random.size(0.1, 20.0);
    const double gap = random.size(1e-5, 50.0);
    const double turn = random.between(0.02, 3.1);
    // Both long enough that the common perpendicular of the axes, along x, meets both mantles.
    const Frame across = Frame::along(f.to_world(Point{r + s + gap, 0.0, 0.0}),
                                      f.to_world(Vector{0.0, std::sin(turn), std::cos(turn)}));
    const Cylinder a{f.shifted({0.0, 0.0, -60.0}), r, 120.0};
    const Cylinder b{across.shifted({0.0, 0.0, -60.0}), s, 120.0};
    ASSERT_NEAR(distance(a, b).distance_mm, gap, kDistanceAccuracy_mm) << i;
  }
}

TEST(DistanceProperty, BoxesSquareToEachOther) {
  tests::Random random(26);
  for (int i = 0; i < 500; ++i) {
    const Frame f = tests::random_frame(random, 50.0);
    const Vector size{random.size(1.0, 20.0), random.size(1.0, 20.0), random.size(1.0, 20.0)};
    const Point at = random.point(40.0);
    const Vector other{random.size(1.0, 20.0), random.size(1.0, 20.0), random.size(1.0, 20.0)};
    const auto gap = [](double low, double mine, double yours) {
      return std::max({0.0, low - mine, -(low + yours)});
    };
    const Vector apart{gap(at.x, size.x, other.x), gap(at.y, size.y, other.y), gap(at.z, size.z, other.z)};
    const double found = distance(Box{f, size}, Box{f.shifted(at - Point{}), other}).distance_mm;
    ASSERT_NEAR(found, length_mm(apart), kDistanceAccuracy_mm) << i;
  }
}

TEST(DistanceProperty, CylinderBesideABox) {
  tests::Random random(27);
  for (int i = 0; i < 500; ++i) {
    const Frame f = tests::random_frame(random, 50.0);
    const Box box{f, {10.0, 10.0, 10.0}};
    const double r = random.size(0.1, 20.0);
    const double gap = random.size(1e-5, 30.0);
    // Lying along the top edge at 45 degrees outside: the nearest is edge to mantle.
    const double out = (r + gap) * std::sqrt(0.5);
    const Frame lying = Frame::along(f.to_world(Point{10.0 + out, -5.0, 10.0 + out}), f.y);
    ASSERT_NEAR(distance(box, Cylinder{lying, r, 20.0}).distance_mm, gap, kDistanceAccuracy_mm) << i;
    const Frame standing = Frame::along(f.to_world(Point{10.0 + r + gap, 3.0, -5.0}), f.z);
    ASSERT_NEAR(distance(box, Cylinder{standing, r, 7.0}).distance_mm, gap, kDistanceAccuracy_mm) << i;
  }
}

TEST(DistanceProperty, HalfSpaces) {
  const HalfSpace floor{};
  EXPECT_DOUBLE_EQ(distance(floor, Cone{Frame::at({0.0, 0.0, 2.5}), 1.0, 3.0, 4.0}).distance_mm, 2.5);
  EXPECT_DOUBLE_EQ(distance(Box{Frame::at({0.0, 0.0, -1.0}), {1.0, 1.0, 1.0}}, floor).distance_mm, 0.0);
  const HalfSpace ceiling{Frame::along({0.0, 0.0, 3.0}, {0.0, 0.0, -1.0})};
  EXPECT_DOUBLE_EQ(distance(floor, ceiling).distance_mm, 3.0);
  EXPECT_DOUBLE_EQ(distance(floor, HalfSpace{Frame::along({0.0, 0.0, 3.0}, {0.0, 0.1, -1.0})}).distance_mm,
                   0.0);
}

// Regions of one body each are the same question asked another way.
TEST(RegionProperty, NearestPairAgreesWithDistance) {
  tests::Random random(28);
  for (int i = 0; i < 60; ++i) {
    const Primitive a = tests::random_primitive(random, 60.0, 2.0);
    const Primitive b = tests::random_primitive(random, 60.0, 2.0);
    const std::array<const Primitive*, 1> one{&a};
    const std::array<const Primitive*, 1> other{&b};
    const auto pair = nearest_pair(one, other, {{}, 200.0});
    ASSERT_TRUE(pair) << i;
    ASSERT_NEAR(pair->distance_mm, distance(a, b).distance_mm, kRegionAccuracy_mm) << i;
  }
}

TEST(RegionProperty, DeepestOfABoxIsItsMiddle) {
  const Primitive box = Box{{}, {4.0, 6.0, 9.0}};
  const std::array<const Primitive*, 1> region{&box};
  EXPECT_NEAR(deepest(region, {{}, 30.0}).depth_mm, 2.0, kRegionAccuracy_mm);
}

TEST(RegionProperty, DeepestSaysHowFarBodiesOverlapOrFailTo) {
  tests::Random random(29);
  for (int i = 0; i < 200; ++i) {
    const double gap = random.between(-1.0, 5.0);
    const Primitive a = Cylinder{Frame::at({0.0, 0.0, -30.0}), 5.0, 60.0};
    const Primitive b = Cylinder{Frame::along({13.0 + gap, -30.0, 0.0}, {0.0, 1.0, 0.0}), 8.0, 60.0};
    const std::array<const Primitive*, 2> region{&a, &b};
    ASSERT_NEAR(deepest(region, {{}, 60.0}).depth_mm, -gap / 2, kRegionAccuracy_mm) << i;
  }
}

TEST(RegionProperty, EmptyRegionsHaveNoNearestPair) {
  const Primitive a = Box{{}, {1.0, 1.0, 1.0}};
  const Primitive b = Box{Frame::at({3.0, 0.0, 0.0}), {1.0, 1.0, 1.0}};
  const std::array<const Primitive*, 2> nothing{&a, &b};
  const std::array<const Primitive*, 1> something{&a};
  EXPECT_FALSE(nearest_pair(nothing, something, {{}, 10.0}));
}

}  // namespace
}  // namespace sparewright::shape
