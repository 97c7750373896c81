#include "core/shape/least_wall.hpp"

#include <gtest/gtest.h>

#include "core/shape/cutters.hpp"

namespace sparewright::shape {
namespace {

using quantity::Diameter;
using quantity::Length;
using quantity::unit::millimetre;

const Blank kPlate{"plate", Box{Frame{}, {100.0, 60.0, 20.0}}};

Cutter through(const std::string& name, double x, double y, double diameter) {
  return through_hole(name, {x, y, 20.0}, {0.0, 0.0, -1.0}, Diameter::of(diameter, millimetre),
                      Length::of(20.0, millimetre));
}

Cutter skim(double leaves) {
  return milled_box("skim", Frame{}, {0.0, 0.0, leaves}, {100.0, 60.0, 20.0},
                    Open::kXLow | Open::kXHigh | Open::kYLow | Open::kYHigh | Open::kZHigh);
}

std::optional<LeastWall> thinnest(const std::vector<Cutter>& cutters) {
  const auto recipe = Recipe::make(kPlate, cutters);
  EXPECT_TRUE(recipe.has_value());
  return least_wall(recipe->work());
}

TEST(LeastWall, WithoutCutsItIsTheThicknessOfTheBlank) {
  const auto wall = thinnest({});
  ASSERT_TRUE(wall);
  EXPECT_DOUBLE_EQ(wall->least_mm, 20.0);
  EXPECT_FALSE(wall->cut);
}

// Holes of 10 with their middles 18 apart leave 8; the one nearer to the front, 11 from it, leaves 6.
TEST(LeastWall, FindsTheThinnestOfAll) {
  const auto wall = thinnest({through("one", 30.0, 30.0, 10.0), through("two", 48.0, 30.0, 10.0),
                              through("three", 80.0, 11.0, 10.0)});
  ASSERT_TRUE(wall);
  EXPECT_NEAR(wall->least_mm, 6.0, kWallAccuracy_mm);
  EXPECT_EQ(wall->cut, 2U);
  EXPECT_EQ(wall->face, "y low");
  EXPECT_NEAR(std::min(wall->from.y, wall->to.y), 0.0, 1e-6);
  EXPECT_NEAR(std::max(wall->from.y, wall->to.y), 6.0, 1e-6);
}

TEST(LeastWall, BetweenTwoCutsNamesBoth) {
  const auto wall = thinnest({through("one", 30.0, 30.0, 10.0), through("two", 42.5, 30.0, 10.0)});
  ASSERT_TRUE(wall);
  EXPECT_NEAR(wall->least_mm, 2.5, kWallAccuracy_mm);
  EXPECT_EQ(wall->cut, 0U);
  EXPECT_EQ(wall->other, 1U);
}

// Milled down to 9 all over: a blind hole 6 deep from the underside leaves 3 to the new top, less than the 5 to the front.
TEST(LeastWall, ASideThatIsMilledAllOverIsWhereTheMetalEnds) {
  const auto blind = flat_bottomed_hole("blind", {50.0, 10.0, 0.0}, {0.0, 0.0, 1.0},
                                        Diameter::of(10.0, millimetre), Length::of(6.0, millimetre));
  const auto wall = thinnest({skim(9.0), blind});
  ASSERT_TRUE(wall);
  EXPECT_NEAR(wall->least_mm, 3.0, 1e-5);
  EXPECT_EQ(wall->face, "z high");
  EXPECT_NEAR(std::max(wall->from.z, wall->to.z), 9.0, 1e-5);
}

TEST(LeastWall, HolesThroughAMilledSideAreNoWallToIt) {
  const auto wall = thinnest({skim(9.0), through("one", 30.0, 30.0, 10.0)});
  ASSERT_TRUE(wall);
  EXPECT_NEAR(wall->least_mm, 9.0, 1e-5);
}

TEST(LeastWall, CutsOfOneFeatureLeaveNone) {
  const auto wall =
      thinnest({through("one", 30.0, 30.0, 10.0),
                flat_bottomed_hole("one", {30.0, 45.0, 20.0}, {0.0, 0.0, -1.0},
                                   Diameter::of(10.0, millimetre), Length::of(5.0, millimetre))});
  ASSERT_TRUE(wall);
  EXPECT_NEAR(wall->least_mm, 10.0, 1e-5);  // 60 - 45 - 5, to the back
}

// Most pairs of many cuts are ruled out by their boxes.
TEST(LeastWall, AThousandHolesAreNoTrouble) {
  std::vector<Cutter> cutters;
  for (int i = 0; i < 1000; ++i)
    cutters.push_back(through("hole " + std::to_string(i), 1.0 + 2.0 * (i % 49), 1.0 + 2.0 * (i / 49), 1.0));
  const auto wall = thinnest(cutters);
  ASSERT_TRUE(wall);
  EXPECT_NEAR(wall->least_mm, 0.5, kWallAccuracy_mm);  // the first row stands 1 from the front
}

}  // namespace
}  // namespace sparewright::shape
