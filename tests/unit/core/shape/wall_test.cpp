#include "core/shape/wall.hpp"

#include <gtest/gtest.h>

#include "core/shape/cutters.hpp"
#include "shape_samples.hpp"

namespace sparewright::shape {
namespace {

using tests::dia;
using tests::kDown;
using tests::mm;
using tests::plate;
namespace unit = quantity::unit;

const Open kAllButFloor = Open::kXLow | Open::kXHigh | Open::kYLow | Open::kYHigh | Open::kZHigh;

Recipe round_bar(const std::vector<Cutter>& cutters) {  // 50 across, along x
  const auto made = Recipe::make({"bar", Cylinder{Frame::along({}, {1.0, 0.0, 0.0}), 25.0, 80.0}}, cutters);
  EXPECT_TRUE(made);
  return made.value();
}

Cutter hole(double x, double y, double d) {
  return through_hole("hole", {x, y, 20.0}, kDown, dia(d), mm(20.0));
}

void expect_metal(const Wall& wall, double least_mm) {
  EXPECT_EQ(wall.kind, WallKind::kMetal);
  EXPECT_NEAR(wall.least_mm, least_mm, kWallAccuracy_mm);
  EXPECT_NEAR(distance_mm(wall.from, wall.to), least_mm, kWallAccuracy_mm);
  EXPECT_LE(wall.at_least_mm, wall.least_mm);
}

const Wall& towards(const std::vector<FaceWall>& walls, std::string_view face) {
  for (const FaceWall& w : walls) {
    if (w.face == face) return w.wall;
  }
  static const Wall kNone;
  ADD_FAILURE() << "no face " << face;
  return kNone;
}

TEST(WallBetween, ParallelHoles) {
  const Recipe recipe = plate({hole(30.0, 30.0, 20.0), hole(52.5, 30.0, 16.0)});
  const Wall wall = wall_between(recipe.work(), 0, 1);
  expect_metal(wall, 4.5);
  EXPECT_NEAR(wall.at_least_mm, 4.5, kWallAccuracy_mm);
  EXPECT_GE(wall.from.z, 0.0);  // in the plate, not in the overrun
  EXPECT_LE(wall.from.z, 20.0);
}

TEST(WallBetween, IsRuledOutByALimit) {
  const Recipe recipe = plate({hole(30.0, 30.0, 20.0), hole(52.5, 30.0, 16.0)});
  EXPECT_EQ(wall_between(recipe.work(), 0, 1, 4.4).kind, WallKind::kThickEnough);
  EXPECT_EQ(wall_between(recipe.work(), 0, 1, 4.6).kind, WallKind::kMetal);
}

TEST(WallBetween, BoreAndCounterboreBesideIt) {
  const Recipe recipe = plate({hole(40.0, 30.0, 25.0), flat_bottomed_hole("counterbore", {63.0, 30.0, 20.0},
                                                                          kDown, dia(17.5), mm(10.8))});
  expect_metal(wall_between(recipe.work(), 0, 1), 23.0 - 12.5 - 8.75);
}

TEST(WallBetween, HoleFloorAndCrossHole) {
  const Recipe recipe = plate({flat_bottomed_hole("pocket", {50.0, 30.0, 20.0}, kDown, dia(12.0), mm(8.0)),
                               through_hole("cross", {50.0, 0.0, 6.0}, {0.0, 1.0, 0.0}, dia(5.0), mm(60.0))});
  expect_metal(wall_between(recipe.work(), 0, 1), 12.0 - 6.0 - 2.5);
}

TEST(WallBetween, DrillPointAndCrossHole) {
  // The tip at 20 - 8 - 6 = 6 above the bottom (90 degree point, radius 6), the cross hole's top at 4.5.
  const Recipe recipe = plate({drilled_hole("blind", {50.0, 30.0, 20.0}, kDown, dia(12.0), mm(8.0),
                                            quantity::Angle::of(90.0, unit::degree)),
                               through_hole("cross", {50.0, 0.0, 2.5}, {0.0, 1.0, 0.0}, dia(4.0), mm(60.0))});
  expect_metal(wall_between(recipe.work(), 0, 1), 1.5);
}

TEST(WallBetween, HoleAndStep) {
  const Recipe recipe =
      plate({hole(70.0, 30.0, 10.0), milled_box("step", {}, {80.0, 0.0, 12.0}, {100.0, 60.0, 20.0},
                                                Open::kXHigh | Open::kYLow | Open::kYHigh | Open::kZHigh)});
  expect_metal(wall_between(recipe.work(), 0, 1), 5.0);
}

TEST(WallBetween, HolesThatMeetAreOpen) {
  const Recipe crossing = plate({hole(50.0, 30.0, 12.0), through_hole("cross", {0.0, 30.0, 10.0},
                                                                      {1.0, 0.0, 0.0}, dia(5.0), mm(100.0))});
  EXPECT_EQ(wall_between(crossing.work(), 0, 1).kind, WallKind::kOpen);
  const Recipe counterbored =
      plate({hole(50.0, 30.0, 8.0),
             flat_bottomed_hole("counterbore", {50.0, 30.0, 20.0}, kDown, dia(14.0), mm(8.0))});
  EXPECT_EQ(wall_between(counterbored.work(), 0, 1).kind, WallKind::kOpen);
}

TEST(WallBetween, TangentHolesHaveAWallOfNothing) {
  const Recipe recipe = plate({hole(30.0, 30.0, 20.0), hole(48.0, 30.0, 16.0)});
  const Wall wall = wall_between(recipe.work(), 0, 1);
  EXPECT_EQ(wall.kind, WallKind::kTangent);
  EXPECT_EQ(wall.least_mm, 0.0);
  EXPECT_NEAR(wall.from.x, 40.0, 1e-3);
}

TEST(WallBetween, AHundredthOpenIsOpenAndAHundredthOfMetalIsMetal) {
  const Recipe open = plate({hole(30.0, 30.0, 20.0), hole(47.99, 30.0, 16.0)});
  EXPECT_EQ(wall_between(open.work(), 0, 1).kind, WallKind::kOpen);
  const Recipe thin = plate({hole(30.0, 30.0, 20.0), hole(48.01, 30.0, 16.0)});
  expect_metal(wall_between(thin.work(), 0, 1), 0.01);
}

// A pair of holes 30 degrees off the upright, coming together towards the top, their axes `apart_mm` apart at
// the top face. They start well above it: the mouth of a slanted hole needs more than the overrun.
std::vector<Cutter> leaning_pair(double apart_mm) {
  const double s = 0.5;
  const double c = std::sqrt(3.0) / 2;
  const double up = 3.0;
  const auto one = [&](std::string name, double way) {
    const Point entry{50.0 + way * (apart_mm / 2 - up * s / c), 30.0, 20.0 + up};
    return through_hole(std::move(name), entry, {way * s, 0.0, -c}, dia(6.0), mm((20.0 + up) / c + 3.0));
  };
  return {one("left", -1.0), one("right", 1.0)};
}
const double kMouth_mm = 6.0 * 2 / std::sqrt(3.0);    // along x, of one of them
const double kSpread_mm = 2 * 10.0 / std::sqrt(3.0);  // more between the axes 10 below the top

TEST(WallBetween, NearestPointsInTheOverrunDoNotCount) {
  const Recipe recipe = plate(leaning_pair(20.0));
  const Wall wall = wall_between(recipe.work(), 0, 1);
  expect_metal(wall, 20.0 - kMouth_mm);
  EXPECT_NEAR(wall.from.z, 20.0, 1e-4);
}

TEST(WallBetween, WhatAPocketTookAwayDoesNotCount) {
  auto cutters = leaning_pair(20.0);
  cutters.push_back(milled_box("flat", {}, {0.0, 0.0, 10.0}, {100.0, 60.0, 20.0}, kAllButFloor));
  const Wall wall = wall_between(plate(cutters).work(), 0, 1);
  expect_metal(wall, 20.0 + kSpread_mm - kMouth_mm);
  EXPECT_NEAR(wall.from.z, 10.0, 1e-4);
}

TEST(WallBetween, HolesThatMeetOnlyInAnotherCutsAirHaveTheWallBelowIt) {
  auto cutters = leaning_pair(2.0);
  EXPECT_EQ(wall_between(plate(cutters).work(), 0, 1).kind, WallKind::kOpen);
  cutters.push_back(milled_box("flat", {}, {0.0, 0.0, 10.0}, {100.0, 60.0, 20.0}, kAllButFloor));
  expect_metal(wall_between(plate(cutters).work(), 0, 1), 2.0 + kSpread_mm - kMouth_mm);
}

TEST(WallBetween, AHoleInTheWayLeavesNothingBetween) {
  // Three slots right through, side by side: the middle one takes all there is between the outer two.
  const auto slot = [](double from, double to) {
    return milled_box("slot", {}, {from, 0.0, 0.0}, {to, 60.0, 20.0},
                      Open::kYLow | Open::kYHigh | Open::kZLow | Open::kZHigh);
  };
  const Recipe recipe = plate({slot(10.0, 20.0), slot(60.0, 70.0), slot(30.0, 50.0)});
  EXPECT_EQ(wall_between(recipe.work(), 0, 1).kind, WallKind::kNothingBetween);
  expect_metal(wall_between(recipe.work(), 0, 2), 10.0);
}

TEST(WallsToOutside, OfAHoleInAPlate) {
  const Recipe recipe = plate({hole(12.0, 20.0, 16.0)});
  const auto walls = walls_to_outside(recipe.work(), 0);
  ASSERT_EQ(walls.size(), 6U);
  expect_metal(towards(walls, "x low"), 4.0);
  expect_metal(towards(walls, "x high"), 80.0);
  expect_metal(towards(walls, "y low"), 12.0);
  EXPECT_EQ(towards(walls, "z low").kind, WallKind::kOpen);
  EXPECT_EQ(towards(walls, "z high").kind, WallKind::kOpen);
}

TEST(WallsToOutside, OfABlindHole) {
  const Recipe recipe = plate({drilled_hole("blind", {50.0, 30.0, 20.0}, kDown, dia(12.0), mm(8.0),
                                            quantity::Angle::of(90.0, unit::degree))});
  expect_metal(towards(walls_to_outside(recipe.work(), 0), "z low"), 6.0);
}

TEST(WallsToOutside, CounterboreThroughTheEdgeIsOpen) {
  const Recipe recipe = plate({hole(7.0, 30.0, 16.0)});
  EXPECT_EQ(towards(walls_to_outside(recipe.work(), 0), "x low").kind, WallKind::kOpen);
}

TEST(WallsToOutside, TangentToTheEdgeIsAWallOfNothing) {
  const Recipe recipe = plate({hole(8.0, 30.0, 16.0)});
  EXPECT_EQ(towards(walls_to_outside(recipe.work(), 0), "x low").kind, WallKind::kTangent);
}

TEST(WallsToOutside, HoleAlongARoundBar) {
  const Recipe recipe =
      round_bar({through_hole("off centre", {0.0, 9.0, 12.0}, {1.0, 0.0, 0.0}, dia(10.0), mm(80.0))});
  const auto walls = walls_to_outside(recipe.work(), 0);
  ASSERT_EQ(walls.size(), 3U);
  expect_metal(towards(walls, "side"), 25.0 - (15.0 + 5.0));  // 9, 12, 15
  EXPECT_EQ(towards(walls, "start").kind, WallKind::kOpen);
}

TEST(WallsToOutside, HoleOnTheAxisOfABar) {
  const Recipe recipe =
      round_bar({through_hole("bore", {0.0, 0.0, 0.0}, {1.0, 0.0, 0.0}, dia(30.0), mm(80.0))});
  expect_metal(towards(walls_to_outside(recipe.work(), 0), "side"), 10.0);
}

TEST(WallsToOutside, BlindCrossHoleInARoundBar) {
  // Flat bottom at z = -20, 8 across: its rim is at most hypot(20, 4) from the axis of the bar.
  const Recipe recipe =
      round_bar({flat_bottomed_hole("cross", {40.0, 0.0, 25.0}, kDown, dia(8.0), mm(45.0))});
  const auto walls = walls_to_outside(recipe.work(), 0);
  EXPECT_EQ(towards(walls, "side").kind, WallKind::kOpen);  // it enters through the side
  expect_metal(towards(walls, "start"), 36.0);
}

TEST(WallsToOutside, AFlatThatTookTheEdgeLeavesNothingTowardsIt) {
  const Recipe recipe =
      plate({hole(70.0, 30.0, 10.0),
             milled_box("end", {}, {80.0, 0.0, 0.0}, {100.0, 60.0, 20.0},
                        Open::kXHigh | Open::kYLow | Open::kYHigh | Open::kZHigh | Open::kZLow)});
  EXPECT_EQ(towards(walls_to_outside(recipe.work(), 0), "x high").kind, WallKind::kNothingBetween);
  expect_metal(wall_between(recipe.work(), 0, 1), 5.0);
}

TEST(WallsToOutside, HexBar) {
  const auto made = Recipe::make({"hex", hexagonal_prism({}, 24.0, 40.0)},
                                 std::vector{Cutter{"bore", Cylinder{{}, 8.0, 40.0}, Open::kThrough}});
  ASSERT_TRUE(made);
  const auto walls = walls_to_outside(made->work(), 0);
  ASSERT_EQ(walls.size(), 8U);
  expect_metal(towards(walls, "side 1"), 4.0);
  expect_metal(towards(walls, "side 4"), 4.0);
}

}  // namespace
}  // namespace sparewright::shape
