#include "solid/make_solid.hpp"

#include <gtest/gtest.h>

#include "core/shape/cutters.hpp"
#include "shape_samples.hpp"
#include "solid/expected_bite.hpp"

namespace sparewright::solid {
namespace {

using shape::Cutter;
using shape::Open;
using shape::Recipe;
using tests::dia;
using tests::kDown;
using tests::mm;
using tests::plate;

std::vector<Cutter> usual_cuts() {
  return {shape::through_hole("bore", {30.0, 30.0, 20.0}, kDown, dia(25.0), mm(20.0)),
          shape::flat_bottomed_hole("counterbore", {70.0, 30.0, 20.0}, kDown, dia(17.5), mm(10.8)),
          shape::through_hole("screw", {70.0, 30.0, 20.0}, kDown, dia(11.0), mm(20.0)),
          shape::milled_box("step", {}, {85.0, 0.0, 12.0}, {100.0, 60.0, 20.0},
                            Open::kXHigh | Open::kYLow | Open::kYHigh | Open::kZHigh)};
}

TEST(MakeSolid, ReportsEveryCut) {
  const auto made = make_solid(plate(usual_cuts()));
  ASSERT_TRUE(made);
  ASSERT_EQ(made->cuts.size(), 4U);
  EXPECT_EQ(made->cuts[0].feature, "bore");
  EXPECT_EQ(made->cuts[0].way, Way::kAsUsual);
  EXPECT_NEAR(made->cuts[0].taken_mm3, made->cuts[0].expected_mm3, 1.0);
  EXPECT_EQ(made->cuts[3].feature, "step");
}

TEST(MakeSolid, MeasuresWhatItMade) {
  const auto made = make_solid(plate({}));
  ASSERT_TRUE(made);
  EXPECT_NEAR(made->solid.volume_mm3(), 120000.0, 1e-6);
  EXPECT_NEAR(made->solid.area_mm2(), 2 * (6000.0 + 2000.0 + 1200.0), 1e-6);
  EXPECT_EQ(made->solid.faces(), 6);
  EXPECT_EQ(made->solid.edges(), 12);
  EXPECT_EQ(made->solid.pieces(), 1);
  const shape::Bounds bounds = made->solid.bounds();
  EXPECT_LT(distance_mm(bounds.low, {0.0, 0.0, 0.0}), 1e-6);
  EXPECT_LT(distance_mm(bounds.high, {100.0, 60.0, 20.0}), 1e-6);
}

TEST(MakeSolid, GoesOnFromAPrefix) {
  const Recipe recipe = plate(usual_cuts());
  const auto whole = make_solid(recipe);
  const auto begun = make_solid(recipe.first(2));
  ASSERT_TRUE(whole && begun);
  const auto finished = make_solid(recipe, Begun{begun->solid, 2});
  ASSERT_TRUE(finished);
  EXPECT_EQ(finished->cuts.size(), 2U);
  EXPECT_DOUBLE_EQ(finished->solid.volume_mm3(), whole->solid.volume_mm3());
  EXPECT_NEAR(begun->solid.volume_mm3(), make_solid(recipe.first(2))->solid.volume_mm3(), 0.0);
}

TEST(MakeSolid, CutsThatReachNothingChangeNothing) {
  const auto made =
      make_solid(plate({shape::through_hole("beside", {130.0, 30.0, 20.0}, kDown, dia(10.0), mm(20.0)),
                        shape::through_hole("touching", {105.0, 30.0, 20.0}, kDown, dia(10.0), mm(20.0)),
                        shape::through_hole("bore", {50.0, 30.0, 20.0}, kDown, dia(10.0), mm(20.0)),
                        shape::through_hole("again", {50.0, 30.0, 20.0}, kDown, dia(10.0), mm(20.0))}));
  ASSERT_TRUE(made);
  EXPECT_EQ(made->cuts[0].way, Way::kNothingToCut);
  EXPECT_EQ(made->cuts[1].way, Way::kNothingToCut);
  EXPECT_NEAR(made->cuts[3].taken_mm3, 0.0, 1e-3);
  EXPECT_NEAR(made->solid.volume_mm3(), 120000.0 - 25.0 * std::numbers::pi * 20.0, 1e-2);
}

TEST(MakeSolid, NamesTheFeatureThatLeavesNoMetal) {
  const auto made =
      make_solid(plate({shape::through_hole("bore", {50.0, 30.0, 20.0}, kDown, dia(10.0), mm(20.0)),
                        {"everything", shape::HalfSpace{shape::Frame::at({0.0, 0.0, 30.0})}, Open::kNone}}));
  ASSERT_FALSE(made);
  EXPECT_EQ(made.error().code, base::Code::kKernel);
  EXPECT_EQ(made.error().subject, "everything");
  EXPECT_EQ(made.error().found, "no metal is left");
}

TEST(ExpectedBite, TellsAWrongVolumeFromARightOne) {
  const Recipe recipe = plate(usual_cuts());
  const double bore = std::numbers::pi / 4 * 625.0 * 20.0;
  ExpectedBite right(recipe.work_after(0), recipe.cuts()[0].body);
  EXPECT_TRUE(right.agrees_with(bore));
  EXPECT_TRUE(right.agrees_with(bore * 1.0005));
  EXPECT_FALSE(right.agrees_with(bore * 1.01));
  EXPECT_FALSE(right.agrees_with(0.0));
  EXPECT_FALSE(right.agrees_with(-bore));
}

TEST(ExpectedBite, AddsRaysUntilItIsSure) {
  // A cross hole through a round bar has no direction in which all rays are equally long.
  const auto bar =
      Recipe::make({"bar", shape::Cylinder{shape::Frame::along({}, {1.0, 0.0, 0.0}), 25.0, 80.0}},
                   std::vector{shape::through_hole("cross", {40.0, 5.0, 25.0}, kDown, dia(24.0), mm(50.0))});
  ASSERT_TRUE(bar);
  ExpectedBite bite(bar->work_after(0), bar->cuts()[0].body);
  const double true_mm3 =
      metal_within(bar->work_after(0), bar->cuts()[0].body, shape::Effort::kPainstaking).volume_mm3;
  EXPECT_FALSE(bite.agrees_with(true_mm3 * 1.02));
  EXPECT_LT(bite.volume().error_mm3, kSureShare * true_mm3);
}

}  // namespace
}  // namespace sparewright::solid
