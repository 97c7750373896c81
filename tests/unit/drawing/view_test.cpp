// What is seen and what is hidden, on shapes small enough to know by heart.
#include "drawing/view.hpp"

#include <cmath>
#include <numbers>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/shape/cutters.hpp"
#include "solid/make_solid.hpp"

namespace sparewright::drawing {
namespace {

using quantity::Diameter;
using quantity::Length;
using shape::Cutter;
using shape::FlatPoint;

const Sight kFront{{1, 0, 0}, {0, 0, 1}, {0, -1, 0}};
const Sight kTop{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};

View seen(const shape::Primitive& blank, const std::vector<Cutter>& cutters, const Sight& sight) {
  const auto recipe = shape::Recipe::make({"blank", blank}, cutters);
  EXPECT_TRUE(recipe);
  const auto made = solid::make_solid(*recipe);
  EXPECT_TRUE(made);
  const auto edges = solid::edges_of(made->solid);
  EXPECT_TRUE(edges);
  return view_of(recipe->work(), *edges, sight);
}

// A plate 60 x 40 x 10.
shape::Primitive plate() {
  return shape::Box{shape::Frame{}, {60, 40, 10}};
}
Cutter hole(double x, double y, double diameter, double depth) {
  const shape::Point entry{x, y, 10};
  const shape::Vector down{0, 0, -1};
  return depth >= 10.0
             ? shape::through_hole("hole", entry, down, Diameter::from_base(diameter), Length::from_base(10))
             : shape::flat_bottomed_hole("hole", entry, down, Diameter::from_base(diameter),
                                         Length::from_base(depth));
}

// The length of straight lines seen, or hidden, that run along u or along v.
double length(const View& view, Seen seen, bool upright) {
  double sum = 0.0;
  for (const ViewLine& line : view.lines) {
    const double du = std::abs(line.to.u - line.from.u);
    const double dv = std::abs(line.to.v - line.from.v);
    if (line.seen == seen && (upright ? du < 1e-6 : dv < 1e-6)) sum += du + dv;
  }
  return sum;
}

TEST(View, ABoxIsItsOutline) {
  const View front = seen(plate(), {}, kFront);
  EXPECT_EQ(front.lines.size(), 4U);
  EXPECT_NEAR(length(front, Seen::kVisible, false), 120.0, 1e-6);
  EXPECT_NEAR(length(front, Seen::kVisible, true), 20.0, 1e-6);
  EXPECT_NEAR(front.high.u, 60.0, 1e-9);
  EXPECT_NEAR(front.high.v, 10.0, 1e-9);
}

TEST(View, AHoleIsACircleFromAboveAndTwoHiddenLinesFromTheFront) {
  const View top = seen(plate(), {hole(20, 15, 8, 10)}, kTop);
  ASSERT_EQ(top.arcs.size(), 1U) << "the two rims fall on one another";
  EXPECT_EQ(top.arcs[0].seen, Seen::kVisible);
  EXPECT_NEAR(top.arcs[0].radius_mm, 4.0, 1e-9);
  EXPECT_NEAR(top.arcs[0].centre.u, 20.0, 1e-9);
  EXPECT_NEAR(top.arcs[0].to_rad - top.arcs[0].from_rad, 2.0 * std::numbers::pi, 1e-6);
  const View front = seen(plate(), {hole(20, 15, 8, 10)}, kFront);
  EXPECT_NEAR(length(front, Seen::kHidden, true), 20.0, 0.02);
  EXPECT_NEAR(length(front, Seen::kHidden, false), 0.0, 0.02) << "its rims lie in the outline";
}

TEST(View, ABlindHoleShowsItsFloor) {
  const View front = seen(plate(), {hole(20, 15, 8, 6)}, kFront);
  EXPECT_NEAR(length(front, Seen::kHidden, true), 12.0, 0.02);
  EXPECT_NEAR(length(front, Seen::kHidden, false), 8.0, 0.02);
}

TEST(View, ALineWhoseVeryEndIsCutAwayIsDrawnUpToThere) {
  // A slot takes the last 0.04 mm of the hole's sides, less than the way between two places that are looked at.
  const Cutter slot = shape::milled_box("slot", shape::Frame{}, {0, 10, 3}, {60, 20, 4.04},
                                        shape::Open::kXLow | shape::Open::kXHigh);
  const View front = seen(plate(), {hole(20, 15, 8, 6), slot}, kFront);
  double sides = 0.0;
  for (const ViewLine& line : front.lines) {
    const bool is_side = std::abs(line.from.u - 16.0) < 0.01 || std::abs(line.from.u - 24.0) < 0.01;
    if (is_side && std::abs(line.to.u - line.from.u) < 0.01) sides += std::abs(line.to.v - line.from.v);
  }
  EXPECT_NEAR(sides, 2.0 * 5.96, 0.02);
}

TEST(View, AStepHidesWhatStandsBehindIt) {
  // Milled from the top, front 15 deep, 4 down: the back stands 10 high behind it.
  const Cutter step =
      shape::milled_box("step", shape::Frame{}, {0, 0, 6}, {60, 15, 10},
                        shape::Open::kXLow | shape::Open::kXHigh | shape::Open::kYLow | shape::Open::kZHigh);
  const View front = seen(plate(), {step}, kFront);
  EXPECT_NEAR(length(front, Seen::kVisible, false), 180.0, 1e-3) << "foot, edge of the step, top";
  const View top = seen(plate(), {step}, kTop);
  EXPECT_NEAR(length(top, Seen::kVisible, false), 180.0, 1e-3);
  const Sight back{{-1, 0, 0}, {0, 0, 1}, {0, 1, 0}};
  EXPECT_NEAR(length(seen(plate(), {step}, back), Seen::kHidden, false), 60.0, 1e-3)
      << "the step, behind the wall";
}

TEST(View, ARoundBarHasItsSidesAndNoSeam) {
  const shape::Primitive bar = shape::Cylinder{shape::Frame::along({0, 20, 20}, {1, 0, 0}), 15.0, 80.0};
  const View front = seen(bar, {}, kFront);
  EXPECT_EQ(front.lines.size(), 4U);
  EXPECT_NEAR(length(front, Seen::kVisible, false), 160.0, 1e-3);
  EXPECT_NEAR(length(front, Seen::kVisible, true), 60.0, 0.02);
  EXPECT_NEAR(front.low.v, 5.0, 0.01);
  EXPECT_NEAR(front.high.v, 35.0, 0.01);
  const Sight end{{0, 1, 0}, {0, 0, 1}, {1, 0, 0}};
  ASSERT_EQ(seen(bar, {}, end).arcs.size(), 1U);
}

TEST(View, ABallEndIsAnArcFromTheSide) {
  // A crown of radius 20 on a bar of radius 12: from the front its outline is an arc of 20.
  const shape::Primitive bar = shape::Cylinder{shape::Frame::along({0, 0, 0}, {1, 0, 0}), 12.0, 60.0};
  const double drop = 20.0 - std::sqrt(400.0 - 144.0);
  shape::Contour off{{{0, -1}, 0},
                     {{14, -1}, 0},
                     {{14, drop}, 0},
                     {{12, drop}, -std::tan(std::asin(0.6) / 4.0)},
                     {{0, 0}, 0}};
  const Cutter crown{"crown", shape::TurnedBody{shape::Frame::along({0, 0, 0}, {1, 0, 0}), off}};
  const View front = seen(bar, {crown}, kFront);
  double seen_mm = 0.0;
  for (const ViewPath& path : front.paths) {
    for (std::size_t i = 0; i < path.points.size(); ++i) {
      const FlatPoint& p = path.points[i];
      EXPECT_NEAR(std::hypot(p.u - 20.0, p.v), 20.0, 0.01);
      if (i > 0 && path.seen == Seen::kVisible)
        seen_mm += std::hypot(p.u - path.points[i - 1].u, p.v - path.points[i - 1].v);
    }
  }
  EXPECT_NEAR(seen_mm, 2.0 * 20.0 * std::asin(0.6), 0.1);
}

TEST(View, EqualWorkGivesEqualViews) {
  const View one = seen(plate(), {hole(20, 15, 8, 6), hole(30, 15, 8, 6)}, kFront);
  const View other = seen(plate(), {hole(20, 15, 8, 6), hole(30, 15, 8, 6)}, kFront);
  EXPECT_EQ(one.lines, other.lines);
  EXPECT_EQ(one.arcs, other.arcs);
}

}  // namespace
}  // namespace sparewright::drawing
