#include "core/shape/metal_bounds.hpp"

#include <array>

#include <gtest/gtest.h>

#include "core/shape/cutters.hpp"
#include "core/shape/likeness.hpp"

namespace sparewright::shape {
namespace {

using quantity::Diameter;
using quantity::Length;
using quantity::unit::millimetre;

const Blank kPlate{"plate", Box{Frame{}, {100.0, 60.0, 20.0}}};
const Blank kBar{"bar", Cylinder{Frame::along({0.0, 20.0, 20.0}, {1.0, 0.0, 0.0}), 20.0, 100.0}};

Recipe recipe(const Blank& blank, const std::vector<Cutter>& cutters) {
  return *Recipe::make(blank, cutters);
}

Cutter through(const std::string& name, double x, double y, double diameter = 8.0) {
  return through_hole(name, {x, y, 20.0}, {0.0, 0.0, -1.0}, Diameter::of(diameter, millimetre),
                      Length::of(20.0, millimetre));
}

// All of a bar but what is turned to a radius over a length from its left end.
Cutter turned(double radius, double length) {
  return {"seat", TurnedBody{Frame::along({0.0, 20.0, 20.0}, {1.0, 0.0, 0.0}),
                             rectangle({radius, -kOverrun_mm}, {30.0, length})}};
}

TEST(MetalBounds, AreThoseOfWhatIsLeft) {
  const Cutter step = milled_box("step", Frame{}, {0.0, 0.0, 12.0}, {100.0, 60.0, 20.0},
                                 Open::kXLow | Open::kXHigh | Open::kYLow | Open::kYHigh | Open::kZHigh);
  const Recipe part = recipe(kPlate, {step, through("hole", 30.0, 30.0)});
  const Bounds b = metal_bounds(part.work());
  EXPECT_NEAR(b.low.z, 0.0, kBoundsAccuracy_mm);
  EXPECT_NEAR(b.high.z, 12.0, kBoundsAccuracy_mm);
  EXPECT_NEAR(b.high.x, 100.0, kBoundsAccuracy_mm);
}

// A boss 4 across is all that reaches above 12: rays spread evenly over the plate could miss it.
TEST(MetalBounds, ASmallBossThatIsLeftStandingCounts) {
  std::vector<Cutter> cutters;
  const std::array<std::array<double, 4>, 4> round_it{
      {{0.0, 33.0, 0.0, 60.0}, {37.0, 100.0, 0.0, 60.0}, {0.0, 100.0, 0.0, 41.0}, {0.0, 100.0, 45.0, 60.0}}};
  for (const auto& [x0, x1, y0, y1] : round_it)
    cutters.push_back(milled_box("round " + std::to_string(cutters.size()), Frame{}, {x0, y0, 12.0},
                                 {x1, y1, 20.0}, Open::kZHigh));
  EXPECT_NEAR(metal_bounds(recipe(kPlate, cutters).work()).high.z, 20.0, kBoundsAccuracy_mm);
}

TEST(MetalBounds, ATurnedBarHasTheDiameterItIsTurnedTo) {
  const Recipe part = recipe(kBar, {turned(15.0, 100.0 + kOverrun_mm)});
  const Bounds b = metal_bounds(part.work());
  EXPECT_NEAR(b.high.y - b.low.y, 30.0, kBoundsAccuracy_mm);
  EXPECT_NEAR(b.high.z - b.low.z, 30.0, kBoundsAccuracy_mm);
  EXPECT_NEAR(metal_radius_mm(part.work(), 0, b.middle()), 15.0, 1e-4);
  const Recipe shouldered = recipe(kBar, {turned(15.0, 40.0)});
  EXPECT_NEAR(metal_bounds(shouldered.work()).high.y, 40.0, kBoundsAccuracy_mm);
}

bool is_like(const Recipe& part, std::array<double, 3> signs) {
  Image image;
  image.middle = metal_bounds(part.work()).middle();
  image.axes = {Vector{signs[0], 0.0, 0.0}, Vector{0.0, signs[1], 0.0}, Vector{0.0, 0.0, signs[2]}};
  return !difference(part.work(), image, kAlikeAtLeast_mm).has_value();
}

TEST(Likeness, APlateWithTwoHolesIsItsOwnMirrorImage) {
  const Recipe part = recipe(kPlate, {through("one", 20.0, 20.0), through("two", 80.0, 40.0)});
  EXPECT_TRUE(is_like(part, {1.0, 1.0, -1.0}));   // top for underside
  EXPECT_TRUE(is_like(part, {-1.0, -1.0, 1.0}));  // half round
  EXPECT_FALSE(is_like(part, {-1.0, 1.0, 1.0}));
}

TEST(Likeness, ASmallHoleAndASmallShiftAreSeen) {
  EXPECT_FALSE(is_like(recipe(kPlate, {through("one", 20.0, 30.0, 1.0)}), {-1.0, 1.0, 1.0}));
  EXPECT_TRUE(
      is_like(recipe(kPlate, {through("one", 20.0, 30.0), through("two", 80.0, 30.0)}), {-1.0, 1.0, 1.0}));
  EXPECT_FALSE(
      is_like(recipe(kPlate, {through("one", 20.0, 30.0), through("two", 80.025, 30.0)}), {-1.0, 1.0, 1.0}));
}

// Six holes in a row, each 0.004 from where the image has one: no nearer to unlike than one of them.
TEST(Likeness, ManyThatAreEachALittleOutAreAlike) {
  const auto row_out_by = [](double out) {
    std::vector<Cutter> cutters;
    for (const double x : {15.0, 29.0, 43.0})
      cutters.push_back(through("left " + std::to_string(x), x, 30.0));
    for (const double x : {57.0, 71.0, 85.0})
      cutters.push_back(through("right " + std::to_string(x), x + out, 30.0));
    return recipe(kPlate, cutters);
  };
  EXPECT_TRUE(is_like(row_out_by(0.004), {-1.0, -1.0, 1.0}));
  EXPECT_FALSE(is_like(row_out_by(0.006), {-1.0, -1.0, 1.0}));
}

// A hex bar is not its own image turned a quarter round, unless it is turned round all over.
TEST(Likeness, OfTheBlankCountsWhatIsLeft) {
  const Blank hex{
      "hex", hexagonal_prism(Frame::along({0.0, 20.0, 20.0}, {1.0, 0.0, 0.0}, {0.0, 0.0, 1.0}), 40.0, 100.0)};
  const auto quarter_turned = [&](const Recipe& part) {
    Image image;
    image.middle = {50.0, 20.0, 20.0};
    image.axes = {Vector{1.0, 0.0, 0.0}, Vector{0.0, 0.0, 1.0}, Vector{0.0, -1.0, 0.0}};
    return !difference(part.work(), image, kAlikeAtLeast_mm).has_value();
  };
  EXPECT_FALSE(quarter_turned(recipe(hex, {turned(15.0, 40.0)})));
  EXPECT_TRUE(quarter_turned(recipe(hex, {turned(15.0, 100.0 + kOverrun_mm)})));
}

TEST(Likeness, WhichEndABlindHoleStartsFromIsSeen) {
  const Cutter blind = drilled_hole("blind", {50.0, 30.0, 20.0}, {0.0, 0.0, -1.0},
                                    Diameter::of(8.0, millimetre), Length::of(7.6, millimetre));
  EXPECT_FALSE(is_like(recipe(kPlate, {blind}), {1.0, 1.0, -1.0}));
  EXPECT_TRUE(is_like(recipe(kPlate, {blind}), {1.0, -1.0, 1.0}));
}

TEST(Likeness, ABoxHasEightImagesAndABarTwiceAsMany) {
  EXPECT_EQ(images_of(Bounds{{0.0, 0.0, 0.0}, {3.0, 2.0, 1.0}}, 0.1).size(), 8U);
  EXPECT_EQ(images_of(Bounds{{0.0, 0.0, 0.0}, {3.0, 2.0, 2.05}}, 0.1).size(), 16U);
}

}  // namespace
}  // namespace sparewright::shape
