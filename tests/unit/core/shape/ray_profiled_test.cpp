#include <array>
#include <cmath>
#include <numbers>
#include <random>

#include <gtest/gtest.h>

#include "core/shape/clearance.hpp"
#include "core/shape/ray.hpp"
#include "core/shape/volume.hpp"

namespace sparewright::shape {
namespace {

constexpr double kPi = std::numbers::pi;
const Vector kX{1.0, 0.0, 0.0};
const Vector kZ{0.0, 0.0, 1.0};

// A ring of round section: 20 mm to the middle of the section, 5 mm section radius.
const TurnedBody kRing{{}, circle({20.0, 0.0}, 5.0)};

TurnedBody tube(double inner, double outer, double length) {
  return {{},
          straight_contour(std::array{FlatPoint{inner, 0.0}, FlatPoint{outer, 0.0}, FlatPoint{outer, length},
                                      FlatPoint{inner, length}})};
}

ProfiledBody angle_piece() {
  return {{},
          rounded_contour(std::array{RoundedCorner{{0.0, 0.0}}, RoundedCorner{{40.0, 0.0}},
                                     RoundedCorner{{40.0, 10.0}}, RoundedCorner{{10.0, 10.0}, 5.0},
                                     RoundedCorner{{10.0, 30.0}}, RoundedCorner{{0.0, 30.0}}}),
          12.0};
}

void expect_stretches(const std::vector<Interval>& found, std::initializer_list<Interval> wanted) {
  ASSERT_EQ(found.size(), wanted.size());
  auto one = found.begin();
  for (const Interval& want : wanted) {
    EXPECT_NEAR(one->enter_mm, want.enter_mm, kRayAccuracy_mm);
    EXPECT_NEAR(one->exit_mm, want.exit_mm, kRayAccuracy_mm);
    ++one;
  }
}

TEST(StretchesInside, ARingOnItsMiddlePlane) {
  expect_stretches(stretches_inside(kRing, {{-40.0, 0.0, 0.0}, kX}), {{15.0, 25.0}, {55.0, 65.0}});
  // Off the middle: rho from 15 to 25 at y = 15 is x from 0 to 20, so the near stretch touches at x = 0 and is one.
  expect_stretches(stretches_inside(kRing, {{-40.0, 15.0, 0.0}, kX}), {{20.0, 60.0}});
  // 3 above the middle plane: the section is 4 wide to either side.
  expect_stretches(stretches_inside(kRing, {{-40.0, 0.0, 3.0}, kX}), {{16.0, 24.0}, {56.0, 64.0}});
  expect_stretches(stretches_inside(kRing, {{20.0, 0.0, -9.0}, kZ}), {{4.0, 14.0}});
  expect_stretches(stretches_inside(kRing, {{0.0, 0.0, -9.0}, kZ}), {});
}

// An arc about a point of the axis makes a ball, about one next to it nearly so: whatever ray, it is a chord.
TEST(StretchesInside, ABallAndWhatIsNearlyOne) {
  std::mt19937_64 random(31);
  std::uniform_real_distribution<double> place(-7.0, 7.0);
  const double half_circle = 1.0;
  for (const double off_axis : {0.0, 1e-6, 1e-5, 1e-4, 1e-3, 1e-2}) {
    const TurnedBody ball{{},
                          {{{off_axis, -8.0}, half_circle}, {{off_axis, 8.0}}, {{0.0, 8.0}}, {{0.0, -8.0}}}};
    int hits = 0;
    for (int i = 0; i < 500; ++i) {
      const Point through{place(random), place(random), place(random)};
      const Ray ray{through, direction(Vector{place(random), place(random), place(random)})};
      const double nearest = -dot(through - Point{}, ray.direction);
      const double miss = distance_mm(ray.at(nearest), Point{});
      const auto found = stretches_inside(ball, ray);
      if (std::abs(miss - 8.0) <= 2 * off_axis + 1e-9) continue;  // it may touch
      ASSERT_EQ(found.size(), miss < 8.0 ? 1U : 0U) << off_axis << " " << i;
      if (found.empty()) continue;
      ++hits;
      const double half = std::sqrt(64.0 - miss * miss);
      const double steep = 8.0 / half;  // how far the ray goes while it comes 1 mm nearer
      ASSERT_NEAR(found.front().enter_mm, nearest - half, steep * off_axis + 1e-9) << off_axis << " " << i;
      ASSERT_NEAR(found.front().exit_mm, nearest + half, steep * off_axis + 1e-9) << off_axis << " " << i;
    }
    EXPECT_GT(hits, 300) << off_axis;
  }
}

TEST(StretchesInside, ATube) {
  expect_stretches(stretches_inside(tube(5.0, 8.0, 20.0), {{-10.0, 0.0, 4.0}, kX}),
                   {{2.0, 5.0}, {15.0, 18.0}});
  expect_stretches(stretches_inside(tube(5.0, 8.0, 20.0), {{6.0, 0.0, -1.0}, kZ}), {{1.0, 21.0}});
  expect_stretches(stretches_inside(tube(5.0, 8.0, 20.0), {{-10.0, 0.0, 21.0}, kX}), {});
}

TEST(StretchesInside, AProfile) {
  expect_stretches(stretches_inside(angle_piece(), {{-5.0, 20.0, 6.0}, kX}), {{5.0, 15.0}});
  expect_stretches(stretches_inside(angle_piece(), {{-5.0, 5.0, 6.0}, kX}), {{5.0, 45.0}});
  // Along x + y = 35: in the lower leg for y from 0 to 10, in the upright one for x from 10 to 5.
  const Ray slant{{45.0, -10.0, 6.0}, direction(Vector{-1.0, 1.0, 0.0})};
  const double root2 = std::sqrt(2.0);
  expect_stretches(stretches_inside(angle_piece(), slant),
                   {{10.0 * root2, 20.0 * root2}, {35.0 * root2, 40.0 * root2}});
}

// A cylinder as a turned body, and as a profiled one, is the cylinder.
TEST(StretchesInside, AgreesWithTheConvexKinds) {
  const Frame frame = Frame::along({3.0, -2.0, 1.0}, {1.0, 2.0, 2.0});
  const Cylinder cylinder{frame, 7.0, 15.0};
  const TurnedBody turned{frame, straight_contour(std::array{FlatPoint{0.0, 0.0}, FlatPoint{7.0, 0.0},
                                                             FlatPoint{7.0, 15.0}, FlatPoint{0.0, 15.0}})};
  const ProfiledBody profiled{frame, circle({0.0, 0.0}, 7.0), 15.0};
  std::mt19937 random(11);
  std::uniform_real_distribution<double> place(-20.0, 20.0);
  int through = 0;
  for (int i = 0; i < 2000; ++i) {
    const Point a{place(random), place(random), place(random)};
    const Point b{place(random), place(random), place(random)};
    const auto wanted = inside(cylinder, ray_through(a, b));
    for (const auto& found :
         {stretches_inside(turned, ray_through(a, b)), stretches_inside(profiled, ray_through(a, b))}) {
      ASSERT_EQ(found.size(), wanted ? 1U : 0U) << i;
      if (!wanted) continue;
      EXPECT_NEAR(found.front().enter_mm, wanted->enter_mm, 1e-9);
      EXPECT_NEAR(found.front().exit_mm, wanted->exit_mm, 1e-9);
    }
    through += wanted ? 1 : 0;
  }
  EXPECT_GT(through, 300);
}

// Along random rays through a ring and a profile, points are inside the body where they are inside a stretch.
TEST(StretchesInside, AgreesWithTheDistance) {
  std::mt19937 random(5);
  std::uniform_real_distribution<double> place(-45.0, 45.0);
  for (const Primitive& body : {Primitive(kRing), Primitive(angle_piece())}) {
    for (int i = 0; i < 400; ++i) {
      const Ray ray = ray_through({place(random), place(random), place(random) / 5},
                                  {place(random) / 3, place(random) / 3, place(random) / 10});
      std::vector<Interval> all;
      for_each_inside(body, ray, [&](const Interval& one) { all.push_back(one); });
      for (double t = -90.0; t < 90.0; t += 0.37) {
        const double out = clearance(body, ray.at(t)).distance_mm;
        if (std::abs(out) < 1e-6) continue;
        const bool in = std::any_of(all.begin(), all.end(),
                                    [&](const Interval& one) { return one.enter_mm < t && t < one.exit_mm; });
        ASSERT_EQ(in, out < 0.0) << i << " at " << t;
      }
    }
  }
}

TEST(Primitive, OfAContourHasTheVolumeOfPappus) {
  EXPECT_NEAR(volume_mm3(kRing), 2.0 * kPi * kPi * 20.0 * 25.0, 1e-9);
  EXPECT_NEAR(volume_mm3(tube(5.0, 8.0, 20.0)), kPi * (64.0 - 25.0) * 20.0, 1e-9);
  EXPECT_NEAR(volume_mm3(angle_piece()), (600.0 + (1.0 - kPi / 4.0) * 25.0) * 12.0, 1e-9);
  EXPECT_FALSE(is_convex(Primitive(kRing)));
  EXPECT_TRUE(is_convex(Primitive(ProfiledBody{{}, slot_contour({0.0, 0.0}, {9.0, 0.0}, 4.0), 3.0})));
}

TEST(Primitive, OfAContourIsMeasuredByRays) {
  const Cylinder bar{{}, 30.0, 40.0};
  const TurnedBody groove{Frame::at({0.0, 0.0, 10.0}),
                          straight_contour(std::array{FlatPoint{25.0, 0.0}, FlatPoint{31.0, 0.0},
                                                      FlatPoint{31.0, 6.0}, FlatPoint{25.0, 6.0}})};
  const std::vector<Cutter> cutters{{"groove", groove, Open::kNone}};
  const auto recipe = Recipe::make({"bar", bar}, cutters);
  ASSERT_TRUE(recipe);
  const RayVolume left = metal_volume(recipe->work(), Effort::kCareful);
  const double exact = kPi * 900.0 * 40.0 - kPi * (900.0 - 625.0) * 6.0;
  EXPECT_NEAR(left.volume_mm3, exact, left.error_mm3);
  EXPECT_LT(left.error_mm3, 2e-3 * exact);
}

}  // namespace
}  // namespace sparewright::shape
