// Walls against a slow twin that knows neither rays nor distances: many points on both surfaces, every pair
// of them tried in order of length, the stretch between walked point by point.
#include <algorithm>

#include <gtest/gtest.h>

#include "core/shape/clearance.hpp"
#include "core/shape/material.hpp"
#include "core/shape/wall.hpp"
#include "random_shapes.hpp"

namespace sparewright::shape {
namespace {

constexpr std::size_t kPoints = 200;
const Vector kSize{60.0, 40.0, 25.0};

// Cuts that mostly meet the block, some of them each other, in any direction.
std::vector<Cutter> random_cutters(tests::Random& random, int count) {
  std::vector<Cutter> cutters;
  for (int i = 0; i < count; ++i) {
    const Point middle{random.between(0.0, kSize.x), random.between(0.0, kSize.y),
                       random.between(0.0, kSize.z)};
    Primitive body = tests::random_primitive(random, 1.0, 2.0, 25.0);
    const Frame to = Frame::at(middle);
    cutters.push_back({"cut " + std::to_string(i + 1), placed(body, to), Open::kNone});
  }
  return cutters;
}

constexpr int kCoarse = 40;
constexpr int kFine = 4000;  // coarse steps miss a corner that a stretch just cuts

bool stretch_is_metal(const Work& work, const Point& a, const Point& b, int steps) {
  for (int i = 0; i < steps; ++i) {
    if (!is_metal(work, between(a, b, (i + 0.5) / steps))) return false;
  }
  return true;
}

// Points of a body's surface that the part has too.
std::vector<Point> part_surface(tests::Random& random, const Work& work, std::size_t cut) {
  const Primitive& body = work.cuts[cut].body;
  std::vector<Point> all;
  for (int tries = 0; tries < 20000 && all.size() < kPoints; ++tries) {
    const Point aim{random.between(0.0, kSize.x), random.between(0.0, kSize.y), random.between(0.0, kSize.z)};
    const Clearance c = clearance(body, aim);
    const Point p = aim - c.distance_mm * c.normal;
    bool shared = contains(work.blank, p);
    for (std::size_t i = 0; i < work.cuts.size(); ++i) {
      shared = shared && (i == cut || clearance(work.cuts[i].body, p).distance_mm > 0.0);
    }
    if (shared) all.push_back(p);
  }
  return all;
}

// The shortest stretch of metal found; none where there is none.
std::optional<double> twin_mm(tests::Random& random, const Work& work, std::size_t one, std::size_t other) {
  struct Pair {
    double length_mm;
    Point p;
    Point q;
  };
  std::vector<Pair> pairs;
  const auto from = part_surface(random, work, one);
  const auto to = part_surface(random, work, other);
  for (const Point& p : from) {
    for (const Point& q : to)
      pairs.push_back({distance_mm(p, q), p, q});
  }
  std::sort(pairs.begin(), pairs.end(),
            [](const Pair& a, const Pair& b) { return a.length_mm < b.length_mm; });
  for (const Pair& pair : pairs) {
    if (stretch_is_metal(work, pair.p, pair.q, kCoarse) && stretch_is_metal(work, pair.p, pair.q, kFine)) {
      return pair.length_mm;
    }
  }
  return std::nullopt;
}

bool is_wall(const Wall& w) {
  return w.kind == WallKind::kMetal || w.kind == WallKind::kTangent;
}

TEST(WallProperty, TheTwinNeverFindsAThinnerOne) {
  tests::Random random(41);
  int walls = 0;
  int open = 0;
  int nothing = 0;
  int missed = 0;
  for (int part = 0; part < 40; ++part) {
    const auto made = Recipe::make({"block", Box{{}, kSize}}, random_cutters(random, 4));
    ASSERT_TRUE(made);
    const Work work = made->work();
    const Wall wall = wall_between(work, 0, 1);
    if (wall.kind == WallKind::kOpen) {
      ++open;
      for (const std::size_t cut : {0U, 1U})
        ASSERT_LT(clearance(work.cuts[cut].body, wall.from).distance_mm, 0.0);
      for (const std::size_t cut : {2U, 3U})
        ASSERT_GT(clearance(work.cuts[cut].body, wall.from).distance_mm, -kTouch_mm);
      ASSERT_TRUE(contains(work.blank, wall.from));
      continue;
    }
    const auto twin = twin_mm(random, work, 0, 1);
    if (is_wall(wall)) {
      ++walls;
      ASSERT_TRUE(stretch_is_metal(work, wall.from, wall.to, kFine)) << part;
      ASSERT_NEAR(clearance(work.cuts[0].body, wall.from).distance_mm, 0.0, kTouch_mm) << part;
      ASSERT_NEAR(clearance(work.cuts[1].body, wall.to).distance_mm, 0.0, kTouch_mm) << part;
      ASSERT_LE(wall.least_mm, twin.value_or(1e9) * (1.0 + kWallSearch) + kWallAccuracy_mm) << part;
    } else {
      ++nothing;
      missed += twin ? 1 : 0;
    }
  }
  std::printf("seed 41: walls %d, open %d, nothing between %d, missed %d\n", walls, open, nothing, missed);
  EXPECT_GT(walls, 10);
  EXPECT_GT(open, 1);
  EXPECT_LE(missed, 1);  // promised in wall.hpp: rarely
}

// Without a third cut the answer is exact, and so proven from below.
TEST(WallProperty, TwoCutsAloneAreExact) {
  tests::Random random(42);
  int walls = 0;
  for (int part = 0; part < 100; ++part) {
    const auto made = Recipe::make({"block", Box{{}, kSize}}, random_cutters(random, 2));
    ASSERT_TRUE(made);
    const Wall wall = wall_between(made->work(), 0, 1);
    if (!is_wall(wall)) continue;
    ++walls;
    ASSERT_NEAR(wall.least_mm, wall.at_least_mm, 2 * kWallAccuracy_mm) << part;
  }
  EXPECT_GT(walls, 20);
}

TEST(WallProperty, DoesNotDependOnOrder) {
  tests::Random random(43);
  for (int part = 0; part < 40; ++part) {
    const auto made = Recipe::make({"block", Box{{}, kSize}}, random_cutters(random, 2));
    ASSERT_TRUE(made);
    const Wall there = wall_between(made->work(), 0, 1);
    const Wall back = wall_between(made->work(), 1, 0);
    ASSERT_EQ(there.kind, back.kind) << part;
    ASSERT_NEAR(there.least_mm, back.least_mm, kWallAccuracy_mm) << part;
  }
}

// Towards the side of a bar, from anywhere: the twin walks outwards from every point of the cut.
TEST(WallProperty, TowardsTheRoundSide) {
  tests::Random random(44);
  int walls = 0;
  constexpr double kRadius_mm = 30.0;
  for (int part = 0; part < 60; ++part) {
    const Frame across =
        Frame::along({random.between(-12.0, 12.0), random.between(-12.0, 12.0), 20.0}, random.direction());
    const Primitive body = random.one_in(2)
                               ? Primitive(Cylinder{across, random.size(1.0, 8.0), random.size(1.0, 12.0)})
                               : Primitive(Box{across, {random.size(1.0, 8.0), 6.0, 7.0}});
    const auto made =
        Recipe::make({"bar", Cylinder{{}, kRadius_mm, 40.0}}, std::vector{Cutter{"cut", body, Open::kNone}});
    ASSERT_TRUE(made);
    const Wall wall = walls_to_outside(made->work(), 0).back().wall;
    if (wall.kind != WallKind::kMetal) continue;
    ++walls;
    double twin = 1e9;
    for (const Point& p : part_surface(random, made->work(), 0))
      twin = std::min(twin, kRadius_mm - std::hypot(p.x, p.y));
    ASSERT_LE(wall.least_mm, twin + kWallAccuracy_mm) << part;
    ASSERT_NEAR(std::hypot(wall.to.x, wall.to.y), kRadius_mm, kTouch_mm) << part;
    ASSERT_NEAR(wall.least_mm, wall.at_least_mm, kWallAccuracy_mm) << part;
  }
  EXPECT_GT(walls, 30);
}

}  // namespace
}  // namespace sparewright::shape
