// Walls in stepped parts against a slow twin that knows neither rays nor distances: points spread over the surfaces, every
// pair of them tried in order of length, the stretch between walked point by point.
#include <algorithm>
#include <cstdio>

#include <gtest/gtest.h>

#include "core/shape/blank_face.hpp"
#include "core/shape/clearance.hpp"
#include "core/shape/material.hpp"
#include "core/shape/surface_points.hpp"
#include "core/shape/wall.hpp"
#include "random_shapes.hpp"

namespace sparewright::shape {
namespace {

constexpr int kSeed = 45;
constexpr int kParts = 200;
constexpr int kCoarse = 24;
constexpr int kFine = 2000;
const Vector kSize{60.0, 40.0, 25.0};
const Frame kBlank{};

// Two cuts to measure between, upright holes or pockets from the top, then one to three steps off the sides.
std::vector<Cutter> stepped(tests::Random& random) {
  std::vector<Cutter> cutters;
  for (int i = 0; i < 2; ++i) {
    const double x = random.between(5.0 + 16.0 * i, 26.0 + 16.0 * i);
    const double y = random.between(5.0, 35.0);
    const double depth = random.between(4.0, 22.0);
    if (random.one_in(2)) {
      cutters.push_back(
          {"hole", Cylinder{Frame::along({x, y, kSize.z}, {0.0, 0.0, -1.0}), random.between(1.5, 6.0), depth},
           Open::kStart});
    } else {
      const Point low{x - random.between(1.5, 6.0), y - random.between(1.5, 6.0), kSize.z - depth};
      cutters.push_back(milled_box("pocket", kBlank, low, {x + 3.0, y + 3.0, kSize.z}, Open::kZHigh));
    }
  }
  for (int i = random.whole(1, 3); i > 0; --i) {
    const double floor = random.between(5.0, 20.0);
    const double into = random.between(4.0, 20.0);
    const Open ends = Open::kYLow | Open::kYHigh | Open::kZHigh;
    switch (random.whole(0, 2)) {
      case 0:
        cutters.push_back(
            milled_box("step", kBlank, {0.0, 0.0, floor}, {into, kSize.y, kSize.z}, ends | Open::kXLow));
        break;
      case 1:
        cutters.push_back(milled_box("step", kBlank, {kSize.x - into, 0.0, floor},
                                     {kSize.x, kSize.y, kSize.z}, ends | Open::kXHigh));
        break;
      default:
        cutters.push_back(
            milled_box("slot", kBlank, {24.0, 0.0, floor}, {24.0 + into / 2, kSize.y, kSize.z}, ends));
    }
  }
  return cutters;
}

bool is_all_metal(const Work& work, const Point& a, const Point& b, int steps) {
  for (int i = 0; i < steps; ++i) {
    if (!is_metal(work, between(a, b, (i + 0.5) / steps))) return false;
  }
  return true;
}

// Every second of the points spread over a cut's surface, where the part has it too.
std::vector<Point> skin_of(const Work& work, std::size_t cut) {
  std::vector<Point> all;
  const std::vector<Point> surface = surface_points(work.cuts[cut].body);
  for (std::size_t k = 0; k < surface.size(); k += 2) {
    const Point& p = surface[k];
    bool shared = contains(work.blank, p);
    for (std::size_t i = 0; i < work.cuts.size(); ++i)
      shared = shared && (i == cut || clearance(work.cuts[i].body, p).distance_mm > 0.0);
    if (shared) all.push_back(p);
  }
  return all;
}

struct Pair {
  double length_mm = 0.0;
  Point p;
  Point q;
};

// The shortest of the pairs that lies in metal; none where none does.
std::optional<double> shortest_in_metal(const Work& work, std::vector<Pair>& pairs) {
  std::sort(pairs.begin(), pairs.end(),
            [](const Pair& a, const Pair& b) { return a.length_mm < b.length_mm; });
  for (const Pair& pair : pairs) {
    if (is_all_metal(work, pair.p, pair.q, kCoarse) && is_all_metal(work, pair.p, pair.q, kFine))
      return pair.length_mm;
  }
  return std::nullopt;
}

std::optional<double> twin_between(const Work& work) {
  std::vector<Pair> pairs;
  const std::vector<Point> to = skin_of(work, 1);
  for (const Point& p : skin_of(work, 0)) {
    for (const Point& q : to)
      pairs.push_back({distance_mm(p, q), p, q});
  }
  return shortest_in_metal(work, pairs);
}

// From the cut's points straight out through a flat face.
std::optional<double> twin_outwards(const Work& work, std::size_t cut, const HalfSpace& beyond) {
  std::vector<Pair> pairs;
  for (const Point& p : skin_of(work, cut)) {
    const double out_mm = clearance(beyond, p).distance_mm;
    pairs.push_back({out_mm, p, p - out_mm * beyond.frame.z});
  }
  return shortest_in_metal(work, pairs);
}

struct Tally {
  int walls = 0;
  int open = 0;
  int nothing = 0;
  int missed = 0;  // the twin found a wall where none was

  // The witness is real and no longer than the twin's.
  void check(const Work& work, const Wall& wall, const std::optional<double>& twin) {
    if (wall.kind == WallKind::kOpen) {
      ++open;
    } else if (wall.kind == WallKind::kMetal || wall.kind == WallKind::kTangent) {
      ++walls;
      EXPECT_TRUE(is_all_metal(work, wall.from, wall.to, kFine));
      EXPECT_NEAR(distance_mm(wall.from, wall.to), wall.least_mm, kTouch_mm);
      EXPECT_LE(wall.least_mm, twin.value_or(1e9) * (1.0 + kWallSearch) + kWallAccuracy_mm);
      EXPECT_LE(wall.at_least_mm, wall.least_mm);
    } else {
      ++nothing;
      missed += twin ? 1 : 0;
    }
  }
  void print(const char* what) const {
    std::printf("%s, seed %d: walls %d, open %d, nothing between %d, missed %d\n", what, kSeed, walls, open,
                nothing, missed);
  }
};

TEST(SteppedWall, TheTwinNeverFindsAThinnerOne) {
  tests::Random random(kSeed);
  Tally between;
  Tally outwards;
  for (int part = 0; part < kParts && !HasFailure(); ++part) {
    SCOPED_TRACE(part);
    const auto made = Recipe::make({"block", Box{kBlank, kSize}}, stepped(random));
    ASSERT_TRUE(made);
    const Work work = made->work();
    const Wall wall = wall_between(work, 0, 1);
    between.check(work, wall, wall.kind == WallKind::kOpen ? std::nullopt : twin_between(work));
    const std::vector<BlankFace> blank_faces = faces(work.blank);
    const std::vector<FaceWall> walls = walls_to_outside(work, 0);
    ASSERT_EQ(walls.size(), blank_faces.size());
    for (std::size_t i = 0; i < walls.size(); ++i) {
      if (walls[i].face == "z high") continue;  // the cut comes from there
      SCOPED_TRACE(walls[i].face);
      outwards.check(work, walls[i].wall, twin_outwards(work, 0, blank_faces[i].outside));
    }
  }
  between.print("between two cuts");
  outwards.print("to the outside");
  EXPECT_GT(between.walls, kParts / 2);
  EXPECT_GT(between.open, 3);
  EXPECT_GT(outwards.walls, 2 * kParts);
  EXPECT_LE(between.missed + outwards.missed, kParts / 100);  // promised in wall.hpp: rarely
}

}  // namespace
}  // namespace sparewright::shape
