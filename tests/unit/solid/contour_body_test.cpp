// Profiled and turned bodies as the kernel has them, against closed forms.
#include <array>
#include <numbers>

#include <gtest/gtest.h>

#include "core/shape/volume.hpp"
#include "solid/make_solid.hpp"
#include "solid/step.hpp"

namespace sparewright::solid {
namespace {

using shape::Cutter;
using shape::FlatPoint;
using shape::Open;

constexpr double kPi = std::numbers::pi;

CheckedSolid made(const shape::Blank& blank, const std::vector<Cutter>& cutters) {
  const auto recipe = shape::Recipe::make(blank, cutters);
  EXPECT_TRUE(recipe);
  auto solid = make_solid(*recipe);
  EXPECT_TRUE(solid) << (solid ? "" : solid.error().found);
  return std::move(solid.value());
}

const shape::Blank kPlate{"plate", shape::Box{{}, {100.0, 60.0, 20.0}}};
const shape::Blank kBar{"bar", shape::Cylinder{{}, 25.0, 80.0}};

TEST(ContourBody, ASlotWithRoundEnds) {
  const shape::ProfiledBody slot{shape::Frame::at({0.0, 0.0, 12.0}),
                                 shape::slot_contour({30.0, 30.0}, {70.0, 30.0}, 12.0), 8.0};
  const auto solid = made(kPlate, {{"slot", slot, Open::kEnd}}).solid;
  EXPECT_NEAR(solid.volume_mm3(), 120000.0 - 8.0 * (40.0 * 12.0 + 36.0 * kPi), 1e-6);
  EXPECT_TRUE(solid.valid());
}

TEST(ContourBody, APocketWithRoundCorners) {
  const std::array corners{shape::RoundedCorner{{20.0, 10.0}, 5.0}, shape::RoundedCorner{{80.0, 10.0}, 5.0},
                           shape::RoundedCorner{{80.0, 50.0}, 5.0}, shape::RoundedCorner{{20.0, 50.0}, 5.0}};
  const shape::ProfiledBody pocket{shape::Frame::at({0.0, 0.0, 10.0}), shape::rounded_contour(corners), 10.0};
  const auto solid = made(kPlate, {{"pocket", pocket, Open::kEnd}}).solid;
  EXPECT_NEAR(solid.volume_mm3(), 120000.0 - 10.0 * (2400.0 - (4.0 - kPi) * 25.0), 1e-6);
}

TEST(ContourBody, AGrooveRoundABar) {
  const shape::TurnedBody groove{
      {},
      shape::straight_contour(std::array{FlatPoint{20.0, 30.0}, FlatPoint{26.0, 30.0}, FlatPoint{26.0, 34.0},
                                         FlatPoint{20.0, 34.0}})};
  const auto solid = made(kBar, {{"groove", groove, Open::kNone}}).solid;
  EXPECT_NEAR(solid.volume_mm3(), kPi * 625.0 * 80.0 - kPi * (625.0 - 400.0) * 4.0, 1e-6);
  EXPECT_NEAR(solid.centre_of_gravity().z,
              (625.0 * 80.0 * 40.0 - 225.0 * 4.0 * 32.0) / (625.0 * 80.0 - 225.0 * 4.0), 1e-9);
}

// Turned to 30 over 40 from the end, with a shoulder radius of 3.
TEST(ContourBody, AShoulderWithAFillet) {
  const std::array corners{shape::RoundedCorner{{15.0, 40.0}}, shape::RoundedCorner{{26.0, 40.0}},
                           shape::RoundedCorner{{26.0, 81.0}}, shape::RoundedCorner{{15.0, 81.0}}};
  std::array rounded = corners;
  rounded[0].radius_mm = 3.0;
  const shape::TurnedBody shoulder{{}, shape::rounded_contour(rounded)};
  const auto solid = made(kBar, {{"shoulder", shoulder, Open::kNone}}).solid;
  // What the fillet leaves: a square of 3 less a quarter disc, 3 (1 - 4/3pi) r from its far sides.
  const double square = 9.0;
  const double quarter = 9.0 * kPi / 4.0;
  const double moment = square * (15.0 + 1.5) - quarter * (15.0 + 3.0 - 4.0 * 3.0 / (3.0 * kPi));
  const double turned = kPi * 625.0 * 40.0 + kPi * 225.0 * 40.0;
  EXPECT_NEAR(solid.volume_mm3(), turned + 2.0 * kPi * moment, 1e-6);
}

TEST(ContourBody, ARoundGrooveLeavesATorusOff) {
  const shape::TurnedBody ring{{}, shape::circle({25.0, 40.0}, 4.0)};
  const auto checked = made(kBar, {{"ring", ring, Open::kNone}});
  // Half of the torus lies in the bar: the half disc's centroid is 4r/3pi inside the bar's surface.
  const double half = 16.0 * kPi / 2.0;
  EXPECT_NEAR(kPi * 625.0 * 80.0 - checked.solid.volume_mm3(), 2.0 * kPi * (25.0 - 16.0 / (3.0 * kPi)) * half,
              1e-6);
}

TEST(ContourBody, AKeyseatAcrossTheBarIsCheckedByRays) {
  const auto frame = shape::Frame::along({0.0, 0.0, 40.0}, {1.0, 0.0, 0.0}, {0.0, 0.0, 1.0});
  const shape::ProfiledBody keyseat{frame.shifted({0.0, 0.0, 20.0}),
                                    shape::slot_contour({-15.0, 0.0}, {15.0, 0.0}, 8.0), 5.0};
  const auto checked = made(kBar, {{"keyseat", keyseat, Open::kEnd}});
  ASSERT_EQ(checked.cuts.size(), 1U);
  EXPECT_NEAR(checked.cuts[0].taken_mm3, checked.cuts[0].expected_mm3,
              checked.cuts[0].error_mm3 + kAgreeShare * checked.cuts[0].taken_mm3);
  EXPECT_GT(checked.cuts[0].taken_mm3, 1000.0);
  EXPECT_EQ(checked.cuts[0].way, Way::kAsUsual);
}

TEST(ContourBody, ComesBackFromStep) {
  const shape::TurnedBody ring{{}, shape::circle({25.0, 40.0}, 4.0)};
  const auto solid = made(kBar, {{"ring", ring, Open::kNone}}).solid;
  const auto bytes = write_step(solid, "bar");
  ASSERT_TRUE(bytes);
  const auto back = read_step(*bytes);
  ASSERT_TRUE(back);
  EXPECT_NEAR(back->volume_mm3(), solid.volume_mm3(), 1e-6 * solid.volume_mm3());
}

}  // namespace
}  // namespace sparewright::solid
