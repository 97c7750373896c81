// What counts as skin in a plane, and what does not.
#include "core/shape/face_area.hpp"

#include <numbers>

#include <gtest/gtest.h>

#include "core/shape/flat_faces.hpp"
#include "core/shape/material.hpp"
#include "random_shapes.hpp"
#include "shape_samples.hpp"

namespace sparewright::shape {
namespace {

using tests::kDown;
using tests::plate;

const Frame kTop = Frame::along({0.0, 0.0, 20.0}, -kDown);

double area_of(const Recipe& recipe, const Frame& plane) {
  return face_area(recipe.work(), plane).area_mm2;
}

TEST(FaceArea, IsOfTheSideOnTheWayOutAlone) {
  const Recipe part = plate({});
  EXPECT_NEAR(area_of(part, kTop), 6000.0, 1e-6);
  EXPECT_EQ(area_of(part, Frame::along({0.0, 0.0, 20.0}, kDown)), 0.0);
}

TEST(FaceArea, IsNothingWithinTheMetalOrInTheAir) {
  const Recipe part = plate({});
  EXPECT_EQ(area_of(part, Frame::along({0.0, 0.0, 10.0}, -kDown)), 0.0);
  EXPECT_EQ(area_of(part, Frame::along({0.0, 0.0, 21.0}, -kDown)), 0.0);
}

TEST(FaceArea, AStepOfTheGridLowerIsAnotherFace) {
  const Recipe part = plate({});
  EXPECT_EQ(area_of(part, Frame::along({0.0, 0.0, 20.0 - kGrid_mm}, -kDown)), 0.0);
}

TEST(FaceArea, FloorsOfSeveralCutsAreOneFace) {
  const Recipe part = plate({milled_box("a", {}, {10.0, 10.0, 12.0}, {30.0, 30.0, 20.0}, Open::kZHigh),
                             milled_box("b", {}, {20.0, 20.0, 12.0}, {40.0, 40.0, 20.0}, Open::kZHigh),
                             milled_box("deeper", {}, {25.0, 25.0, 5.0}, {35.0, 35.0, 20.0}, Open::kZHigh)});
  EXPECT_NEAR(area_of(part, Frame::along({0.0, 0.0, 12.0}, -kDown)), 400.0 + 400.0 - 100.0 - 100.0, 1e-6);
  EXPECT_NEAR(area_of(part, Frame::along({0.0, 0.0, 5.0}, -kDown)), 100.0, 1e-6);
}

// A bar lying on the plane touches it along a line; a bore just under a face takes nothing off it.
TEST(FaceArea, WhereARoundFaceTouchesThereIsNone) {
  const auto bar = Recipe::make({"bar", Cylinder{Frame::along({}, {1.0, 0.0, 0.0}), 10.0, 50.0}}, {});
  ASSERT_TRUE(bar);
  EXPECT_EQ(area_of(*bar, Frame::along({0.0, 0.0, 10.0}, -kDown)), 0.0);
  const Recipe under =
      plate({through_hole("bore", {0.0, 30.0, 15.0}, {1.0, 0.0, 0.0}, tests::dia(10.0), tests::mm(100.0))});
  const FaceArea top = face_area(under.work(), kTop);
  EXPECT_NEAR(top.area_mm2, 6000.0, top.error_mm2);
  EXPECT_LT(top.error_mm2, 0.1);
}

// The twin: points of a fine grid in the plane, each asked whether there is metal below it and none above.
TEST(FaceArea, AgreesWithCountingPoints) {
  constexpr int kAcross = 400;
  const Vector size{60.0, 40.0, 25.0};
  tests::Random random(51);
  for (int trial = 0; trial < 20; ++trial) {
    const auto part = Recipe::make({"block", Box{{}, size}}, tests::grid_cutters(random, 6, size));
    ASSERT_TRUE(part);
    const double z = 5.0 * random.whole(1, 5);
    const Frame plane = Frame::along({0.0, 0.0, z}, {0.0, 0.0, 1.0});
    int count = 0;
    const double pitch_x = size.x / kAcross;
    const double pitch_y = size.y / kAcross;
    for (int i = 0; i < kAcross; ++i) {
      for (int k = 0; k < kAcross; ++k) {
        const Ray up{{(i + 0.5) * pitch_x, (k + 0.5) * pitch_y, z}, {0.0, 0.0, 1.0}};
        for (const Interval& metal : metal_along(part->work(), up))
          count += std::abs(metal.exit_mm) < 1e-7 ? 1 : 0;
      }
    }
    // A grid's count is off by the points along the outline: it has some 500 mm, a cell is 0.15 x 0.1 mm.
    ASSERT_NEAR(area_of(*part, plane), count * pitch_x * pitch_y, 500.0 * 0.1 * 0.25) << trial;
  }
}

TEST(FlatFaces, LieOnTheBodyAndPointOutOfIt) {
  const Primitive hole = DrilledHole{{}, 3.0, 10.0};
  ASSERT_EQ(flat_faces(hole).size(), 1U);
  EXPECT_EQ(flat_faces(hole).front().frame.z, (Vector{0.0, 0.0, -1.0}));
  EXPECT_EQ(flat_faces(Box{{}, {1.0, 2.0, 3.0}}).size(), 6U);
  EXPECT_EQ(flat_faces(hexagonal_prism({}, 10.0, 5.0)).size(), 8U);
  EXPECT_EQ(flat_faces(Cone{{}, 5.0, 0.0, 5.0}).size(), 1U);
  EXPECT_EQ(flat_faces(TurnedBody{{}, rectangle({2.0, 0.0}, {4.0, 3.0})}).size(), 2U);
  EXPECT_EQ(flat_faces(TurnedBody{{}, circle({8.0, 0.0}, 2.0)}).size(), 0U);
  EXPECT_EQ(flat_faces(ProfiledBody{{}, slot_contour({0.0, 0.0}, {9.0, 0.0}, 4.0), 5.0}).size(), 4U);
}

}  // namespace
}  // namespace sparewright::shape
