#include "core/shape/cut_faults.hpp"

#include <gtest/gtest.h>

#include "core/shape/cutters.hpp"
#include "core/shape/wall.hpp"
#include "shape_samples.hpp"

namespace sparewright::shape {
namespace {

using quantity::Diameter;
using tests::dia;
using tests::kDown;
using tests::mm;
using tests::plate;
namespace unit = quantity::unit;

constexpr double kNear_mm = 1e-6;
const Open kAllButFloor = Open::kXLow | Open::kXHigh | Open::kYLow | Open::kYHigh | Open::kZHigh;

Recipe round_bar(const std::vector<Cutter>& cutters) {  // 50 across, along x, its axis at z = 0
  const auto made = Recipe::make({"bar", Cylinder{Frame::along({}, {1.0, 0.0, 0.0}), 25.0, 80.0}}, cutters);
  EXPECT_TRUE(made);
  return made.value();
}

double side_mm(const Recipe& recipe, std::size_t cut = 0) {
  const auto side = side_metal(recipe.work(), cut);
  EXPECT_TRUE(side);
  return side ? side->least_mm : 1e9;
}

TEST(Bite, SaysWhatItTakesAndWhyNothing) {
  const Recipe recipe = plate({through_hole("bore", {50.0, 30.0, 20.0}, kDown, dia(12.0), mm(20.0)),
                               through_hole("again", {50.0, 30.0, 20.0}, kDown, dia(10.0), mm(20.0)),
                               through_hole("beside", {120.0, 30.0, 20.0}, kDown, dia(10.0), mm(20.0)),
                               through_hole("touching", {105.0, 30.0, 20.0}, kDown, dia(10.0), mm(20.0))});
  const Bite bore = bite_of(recipe.work(), 0);
  EXPECT_EQ(bore.taken, Taken::kMetal);
  EXPECT_NEAR(bore.volume.volume_mm3, std::numbers::pi * 36.0 * 20.0, 1e-4);
  EXPECT_EQ(bite_of(recipe.work(), 1).taken, Taken::kAlreadyAir);
  EXPECT_EQ(bite_of(recipe.work(), 2).taken, Taken::kOutsideBlank);
  EXPECT_EQ(bite_of(recipe.work(), 3).taken, Taken::kOutsideBlank);
}

TEST(SideMetal, OfAThroughHoleIsItsEdgeDistance) {
  const Recipe recipe = plate({through_hole("bore", {50.0, 11.0, 20.0}, kDown, dia(12.0), mm(20.0))});
  // The middle of a line is 10 below the surface; the nearest edge is 11 - 6 away.
  EXPECT_NEAR(side_mm(recipe), 5.0, kNear_mm);
  EXPECT_FALSE(breaks_out(recipe.work(), 0));
}

// 17/32 counterbore with its axis 0.250 in from the end: 17/64 - 1/4 = 1/64 in breaks out.
TEST(SideMetal, CounterboreThatBreaksOut) {
  const Recipe recipe = plate({flat_bottomed_hole("counterbore", {6.35, 30.0, 20.0}, kDown,
                                                  Diameter::of(17.0 / 32.0, unit::inch), mm(10.0))});
  EXPECT_NEAR(side_mm(recipe), -25.4 / 64, kNear_mm);
  EXPECT_TRUE(breaks_out(recipe.work(), 0));
  EXPECT_NEAR(side_metal(recipe.work(), 0)->at.x, 6.35 - 6.746875, 1e-3);
}

TEST(SideMetal, BlindHoleThatComesThroughTheFarFace) {
  const auto blind = [](double depth) {
    return plate({drilled_hole("blind", {50.0, 30.0, 20.0}, kDown, dia(10.0), mm(depth),
                               quantity::Angle::of(90.0, unit::degree))});
  };
  EXPECT_NEAR(side_mm(blind(14.5)), 0.5, kNear_mm);  // 5 of point
  EXPECT_NEAR(side_mm(blind(15.5)), -0.5, kNear_mm);
  EXPECT_TRUE(breaks_out(blind(15.5).work(), 0));
}

TEST(SideMetal, CrossHoleInARoundBarIsMeasuredAtTheMiddle) {
  const auto cross = [](double off_mm, double d_mm) {
    return round_bar({through_hole("cross", {40.0, off_mm, 25.0}, kDown, dia(d_mm), mm(50.0))});
  };
  EXPECT_NEAR(side_mm(cross(0.0, 10.0)), 20.0, kNear_mm);
  EXPECT_NEAR(side_mm(cross(15.0, 10.0)), 5.0, kNear_mm);
  EXPECT_NEAR(side_mm(cross(21.0, 10.0)), -1.0, kNear_mm);
  EXPECT_TRUE(breaks_out(cross(21.0, 10.0).work(), 0));
}

TEST(SideMetal, OfBoxes) {
  const auto pocket = [](double from_edge) {
    return plate({milled_box("pocket", {}, {from_edge, 20.0, 12.0}, {40.0, 40.0, 20.0}, Open::kZHigh)});
  };
  EXPECT_NEAR(side_mm(pocket(3.0)), 3.0, kNear_mm);
  EXPECT_NEAR(side_mm(pocket(-2.0)), -2.0, kNear_mm);
  const Recipe step = plate({milled_box("step", {}, {80.0, 0.0, 12.0}, {100.0, 60.0, 20.0},
                                        Open::kXHigh | Open::kYLow | Open::kYHigh | Open::kZHigh)});
  EXPECT_NEAR(side_mm(step), 8.0,
              kNear_mm);  // the middle of the inner corner: 8 below the top, 12 above the bottom
  const Recipe flat =
      round_bar({milled_box("flat", {}, {0.0, -25.0, 20.0}, {80.0, 25.0, 25.0}, kAllButFloor)});
  EXPECT_NEAR(side_mm(flat), 5.0, kNear_mm);
  const Recipe above =
      round_bar({milled_box("flat", {}, {0.0, -25.0, 26.0}, {80.0, 25.0, 30.0}, kAllButFloor)});
  EXPECT_NEAR(side_mm(above), -1.0, kNear_mm);
}

TEST(SideMetal, HexPocketAndHalfSpace) {
  const Recipe recipe =
      plate({{"hex", hexagonal_prism(Frame::along({50.0, 30.0, 20.0}, kDown), 20.0, 16.0), Open::kStart},
             {"end", HalfSpace{Frame::along({90.0, 0.0, 0.0}, {-1.0, 0.0, 0.0})}, Open::kNone}});
  EXPECT_NEAR(side_mm(recipe), 4.0, kNear_mm);
  EXPECT_FALSE(side_metal(recipe.work(), 1));
  EXPECT_FALSE(breaks_out(recipe.work(), 1));
}

TEST(MetalPastOpenEnd, IsFound) {
  const auto holes = [](double length, double entry_z) {
    return plate({through_hole("bore", {50.0, 30.0, entry_z}, kDown, dia(12.0), mm(length))});
  };
  EXPECT_FALSE(metal_past_open_end(holes(20.0, 20.0).work(), 0));
  EXPECT_TRUE(metal_past_open_end(holes(15.0, 20.0).work(), 0));  // does not come through
  EXPECT_TRUE(metal_past_open_end(holes(19.5, 20.0).work(), 0));  // by luck of the overrun only
  EXPECT_TRUE(metal_past_open_end(holes(18.0, 18.0).work(), 0));  // starts below the surface
}

TEST(MetalPastOpenEnd, LooksAtTheWorkAsItIsBeforeTheCut) {
  const Cutter step = milled_box("step", {}, {30.0, 0.0, 15.0}, {70.0, 60.0, 20.0},
                                 Open::kYLow | Open::kYHigh | Open::kZHigh);
  const Cutter hole = through_hole("bore", {50.0, 30.0, 15.0}, kDown, dia(12.0), mm(15.0));
  EXPECT_FALSE(metal_past_open_end(plate({step, hole}).work(), 1));
  EXPECT_TRUE(metal_past_open_end(plate({hole, step}).work(), 0));
  EXPECT_FALSE(metal_past_open_end(plate({step, hole}).work(), 0));
}

TEST(MetalPastOpenEnd, CountersinkAndHex) {
  const Recipe recipe = plate(
      {countersink("sink", {50.0, 30.0, 20.0}, kDown, dia(12.0), quantity::Angle::of(82.0, unit::degree)),
       {"hex", hexagonal_prism(Frame::along({20.0, 30.0, 19.0}, kDown), 10.0, 8.0), Open::kStart}});
  EXPECT_FALSE(metal_past_open_end(recipe.work(), 0));
  EXPECT_TRUE(metal_past_open_end(recipe.work(), 1));
}

}  // namespace
}  // namespace sparewright::shape
