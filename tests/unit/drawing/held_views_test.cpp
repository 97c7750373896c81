// The work as it is held: what a setup cuts is told from what was there, and lies where the machine has it.
#include "drawing/held_views.hpp"

#include <cmath>
#include <limits>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/shape/cutters.hpp"
#include "solid/make_solid.hpp"

namespace sparewright::drawing {
namespace {

using part::Face;
using quantity::Diameter;
using quantity::Length;

base::Result<std::vector<solid::Edge>> edges_of(const shape::Recipe& recipe) {
  const auto made = solid::make_solid(recipe);
  if (!made) return tl::unexpected(made.error());
  return solid::edges_of(made->solid);
}

// A plate 60 x 40 x 10, a hole at (20, 15) through it, then a step 4 deep from x = 45 on.
shape::Recipe plate() {
  const shape::Cutter hole =
      shape::through_hole("hole", {20, 15, 10}, {0, 0, -1}, Diameter::from_base(8), Length::from_base(10));
  const shape::Cutter step{
      "step", shape::Box{shape::Frame{{45, 0, 6}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}}, {15, 40, 4}},
      shape::Open::kXHigh | shape::Open::kYLow | shape::Open::kYHigh | shape::Open::kZHigh};
  return *shape::Recipe::make({"blank", shape::Box{shape::Frame{}, {60, 40, 10}}}, std::vector{hole, step});
}

// As the job holds it: the back to the fixed jaw, picked up at the left end and the back, on parallels 20 high.
route::PlanView held() {
  route::PlanView view;
  view.stance = {Face::kRightEnd, Face::kBack, Face::kTop, 0.0, 40.0, 0.0};
  view.parallel_high_mm = 20.0;
  return view;
}

double length_cut_here(const View& view) {
  double sum = 0.0;
  for (const ViewLine& line : view.lines) {
    if (line.cut_here && line.seen == Seen::kVisible)
      sum += std::hypot(line.to.u - line.from.u, line.to.v - line.from.v);
  }
  return sum;
}

TEST(HeldViews, LieFromTheZeroAndTheBed) {
  const auto views = held_views(held(), plate(), 0, edges_of);
  ASSERT_TRUE(views);
  EXPECT_NEAR(views->above.low.u, 0.0, 1e-9);
  EXPECT_NEAR(views->above.high.u, 60.0, 1e-9);
  EXPECT_NEAR(views->above.low.v, -40.0, 1e-9);
  EXPECT_NEAR(views->above.high.v, 0.0, 1e-9);
  ASSERT_EQ(views->above.arcs.size(), 1U);
  EXPECT_NEAR(views->above.arcs[0].centre.u, 20.0, 1e-9);
  EXPECT_NEAR(views->above.arcs[0].centre.v, -25.0, 1e-9);
  EXPECT_NEAR(views->from_right.low.u, -40.0, 1e-9);
  EXPECT_NEAR(views->from_right.low.v, 20.0, 1e-9);
  EXPECT_NEAR(views->from_right.high.v, 30.0, 1e-9);
}

TEST(HeldViews, TellWhatIsCutHere) {
  const auto first = held_views(held(), plate().first(1), 0, edges_of);
  ASSERT_TRUE(first);
  EXPECT_TRUE(first->above.arcs[0].cut_here);
  EXPECT_NEAR(length_cut_here(first->above), 0.0, 0.01);
  const auto second = held_views(held(), plate(), 1, edges_of);
  ASSERT_TRUE(second);
  EXPECT_FALSE(second->above.arcs[0].cut_here) << "the hole was there";
  // The wall, the far and the near edge of the floor and its end: 40 + 15 + 15 + 40.
  EXPECT_NEAR(length_cut_here(second->above), 110.0, 0.05);
  // From the right: the floor's edge, the top of the wall above it, and the sides of the wall: 40 + 40 + 4 + 4.
  EXPECT_NEAR(length_cut_here(second->from_right), 88.0, 0.05);
}

// Upside down, the front away: x of the part runs to the right still, y towards the operator.
TEST(HeldViews, TurnWithTheWork) {
  route::PlanView view = held();
  view.stance = {Face::kRightEnd, Face::kFront, Face::kUnderside, 0.0, 0.0, -10.0};
  const auto views = held_views(view, plate(), 0, edges_of);
  ASSERT_TRUE(views);
  ASSERT_EQ(views->above.arcs.size(), 1U);
  EXPECT_NEAR(views->above.arcs[0].centre.u, 20.0, 1e-9);
  EXPECT_NEAR(views->above.arcs[0].centre.v, -15.0, 1e-9);
  EXPECT_NEAR(views->from_right.low.v, 20.0, 1e-9) << "the top lies on the parallels";
  EXPECT_NEAR(length_cut_here(views->above), 0.0, 0.01) << "the step is under the work";
}

TEST(HeldViews, AreNoneWhereThePlaceIsNotKnown) {
  for (double route::Stance::*one :
       {&route::Stance::zero_right_mm, &route::Stance::zero_away_mm, &route::Stance::sits_at_mm}) {
    route::PlanView view = held();
    view.stance.*one = std::numeric_limits<double>::quiet_NaN();
    EXPECT_EQ(held_views(view, plate(), 0, edges_of).error().code, base::Code::kSizeNotPositive);
  }
}

}  // namespace
}  // namespace sparewright::drawing
