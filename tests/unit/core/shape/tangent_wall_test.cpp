// A cut that just touches another one is a wall of nothing, whatever the two are: neither metal nor an opening. A
// hundredth of a millimetre to either side is one or the other.
#include <gtest/gtest.h>

#include "core/shape/wall.hpp"
#include "shape_samples.hpp"

namespace sparewright::shape {
namespace {

using tests::dia;
using tests::kDown;
using tests::mm;
using tests::plate;

constexpr double kHundredth_mm = 0.01;

Cutter milled(const Contour& contour) {
  return {"pocket", ProfiledBody{Frame::at({0.0, 0.0, 8.0}), contour, 12.0}, Open::kEnd};
}
Cutter hole(double x, double y, double d) {
  return through_hole("hole", {x, y, 20.0}, kDown, dia(d), mm(20.0));
}
Recipe bar(const Contour& half_section, const Cutter& other) {
  const Frame along = Frame::along({}, {1.0, 0.0, 0.0});
  const std::vector<Cutter> cutters{{"turned", TurnedBody{along, half_section}, Open::kNone}, other};
  return Recipe::make({"bar", Cylinder{along, 25.0, 80.0}}, cutters).value();
}
// Along the bar, its axis so far over the bar's.
Cutter axial_hole(double over_axis_mm, double d) {
  return through_hole("hole", {0.0, 0.0, over_axis_mm}, {1.0, 0.0, 0.0}, dia(d), mm(80.0));
}

// What the wall is with the other cut in three places: just touching, and a hundredth nearer and further.
template <typename Make>
void expect_tangent(const Make& part_with) {
  const Recipe touching = part_with(0.0);
  const Wall none = wall_between(touching.work(), 0, 1);
  EXPECT_EQ(none.kind, WallKind::kTangent);
  EXPECT_LE(none.least_mm, kTouch_mm);
  const Recipe nearer = part_with(-kHundredth_mm);
  EXPECT_EQ(wall_between(nearer.work(), 0, 1).kind, WallKind::kOpen);
  const Recipe further = part_with(kHundredth_mm);
  const Wall thin = wall_between(further.work(), 0, 1);
  EXPECT_EQ(thin.kind, WallKind::kMetal);
  EXPECT_NEAR(thin.least_mm, kHundredth_mm, kHundredth_mm * kWallSearch + kWallAccuracy_mm);
}

TEST(TangentWall, HoleBesideTheRoundEndOfASlot) {
  expect_tangent([](double gap) {
    return plate({milled(slot_contour({30.0, 30.0}, {50.0, 30.0}, 10.0)), hole(60.0 + gap, 30.0, 10.0)});
  });
}

TEST(TangentWall, HoleBesideTheStraightOfASlot) {
  expect_tangent([](double gap) {
    return plate({milled(slot_contour({30.0, 30.0}, {50.0, 30.0}, 10.0)), hole(40.0, 40.0 + gap, 10.0)});
  });
}

TEST(TangentWall, HoleInTheCornerOfAnLShapedPocket) {
  const std::vector<FlatPoint> l_shape{{20.0, 10.0}, {60.0, 10.0}, {60.0, 20.0},
                                       {30.0, 20.0}, {30.0, 50.0}, {20.0, 50.0}};
  expect_tangent([&](double gap) {
    return plate({milled(straight_contour(l_shape)), hole(45.0, 25.0 + gap, 10.0)});
  });
}

TEST(TangentWall, HoleBesideARoundEndedLShapedPocket) {
  const std::vector<RoundedCorner> corners{{{20.0, 10.0}}, {{60.0, 10.0}, 4.9}, {{60.0, 20.0}, 4.9},
                                           {{30.0, 20.0}}, {{30.0, 50.0}},      {{20.0, 50.0}}};
  expect_tangent([&](double gap) {
    return plate({milled(rounded_contour(corners)), hole(65.0 + gap, 15.0, 10.0)});
  });
}

TEST(TangentWall, HoleUnderASquareGroove) {
  expect_tangent([](double gap) {
    return bar(rectangle({20.0, 30.0}, {26.0, 36.0}), axial_hole(15.0 - gap, 10.0));
  });
}

TEST(TangentWall, HoleUnderARoundGroove) {
  expect_tangent([](double gap) { return bar(circle({25.0, 40.0}, 4.0), axial_hole(16.0 - gap, 10.0)); });
}

TEST(TangentWall, CrossHoleBesideAGroove) {
  expect_tangent([](double gap) {
    return bar(rectangle({20.0, 30.0}, {26.0, 36.0}),
               through_hole("cross", {41.0 + gap, 0.0, 25.0}, kDown, dia(10.0), mm(50.0)));
  });
}

// A bore along a face, its end in the metal: what touches is a line.
TEST(TangentWall, BoreUnderAFace) {
  const auto towards = [](double centre_z, std::string_view face) {
    const Recipe part =
        plate({flat_bottomed_hole("bore", {0.0, 30.0, centre_z}, {1.0, 0.0, 0.0}, dia(12.0), mm(57.0))});
    for (const FaceWall& one : walls_to_outside(part.work(), 0)) {
      if (one.face == face) return one.wall;
    }
    return Wall{};
  };
  EXPECT_EQ(towards(6.0, "z low").kind, WallKind::kTangent);
  EXPECT_EQ(towards(14.0, "z high").kind, WallKind::kTangent);
  EXPECT_EQ(towards(6.0, "z low").at_least_mm, 0.0);
  EXPECT_EQ(towards(6.0 - kHundredth_mm, "z low").kind, WallKind::kOpen);
  EXPECT_EQ(towards(6.0 + kHundredth_mm, "z low").kind, WallKind::kMetal);
  EXPECT_NEAR(towards(6.0 + kHundredth_mm, "z low").least_mm, kHundredth_mm, kWallAccuracy_mm);
}

TEST(TangentWall, BoreUnderAFaceIsNeverThickEnough) {
  for (const double limit_mm : {1e-5, 1e-3, 1.0, 100.0}) {
    const Recipe part =
        plate({flat_bottomed_hole("bore", {34.0, 15.0, 10.0}, {1.0, 0.0, 0.0}, dia(20.0), mm(17.0))});
    for (const FaceWall& one : walls_to_outside(part.work(), 0, limit_mm)) {
      if (one.face == "z low" || one.face == "z high") {
        EXPECT_EQ(one.wall.kind, WallKind::kTangent) << one.face << " " << limit_mm;
      }
    }
  }
}

}  // namespace
}  // namespace sparewright::shape
