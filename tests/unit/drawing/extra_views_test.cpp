// Partial views: what lies in a circle, where one is wanted, and at which scale.
#include "drawing/extra_views.hpp"

#include <cmath>
#include <numbers>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "drawing/clip.hpp"

namespace sparewright::drawing {
namespace {

using part::Face;

double length_of(const View& view) {
  double sum = 0.0;
  for (const ViewLine& line : view.lines)
    sum += std::hypot(line.to.u - line.from.u, line.to.v - line.from.v);
  for (const ViewPath& path : view.paths) {
    for (std::size_t i = 1; i < path.points.size(); ++i)
      sum += std::hypot(path.points[i].u - path.points[i - 1].u, path.points[i].v - path.points[i - 1].v);
  }
  return sum;
}

TEST(Clip, KeepsTheChordOfALine) {
  View view;
  view.lines = {{{-10, 3}, {10, 3}}, {{-10, 6}, {10, 6}}, {{0, 0}, {0, 9}}};
  const View out = within(view, {0, 0}, 5.0);
  ASSERT_EQ(out.lines.size(), 2U) << "the second passes outside";
  EXPECT_NEAR(out.lines[0].from.u, -4.0, 1e-9);  // 3, 4, 5
  EXPECT_NEAR(out.lines[0].to.u, 4.0, 1e-9);
  EXPECT_NEAR(out.lines[1].to.v, 5.0, 1e-9);
}

TEST(Clip, KeepsACircleInsideAndThePartOfOneThatRunsOut) {
  View view;
  view.arcs = {{{1, 0}, 2.0, 0.0, 2.0 * std::numbers::pi}, {{5, 0}, 5.0, 0.0, 2.0 * std::numbers::pi}};
  const View out = within(view, {0, 0}, 5.0);
  ASSERT_EQ(out.arcs.size(), 1U);
  // Two circles of radius 5 whose middles are 5 apart: the arc within is 120 degrees.
  EXPECT_NEAR(length_of(out), 5.0 * 2.0 * std::numbers::pi / 3.0, 0.02);
}

TEST(Clip, OfNothingIsNothing) {
  View view;
  view.paths = {{{{8, 8}, {9, 9}}, Seen::kVisible}};
  const View out = within(view, {0, 0}, 5.0);
  EXPECT_TRUE(out.lines.empty() && out.arcs.empty() && out.paths.empty());
  EXPECT_NEAR(out.high.u, 5.0, 1e-9);
}

NoteMark note(double x, double across) {
  NoteMark mark;
  mark.at = {x, 10, 20};
  mark.seen_from = Face::kFront;
  mark.across_mm = across;
  mark.lines = {"ring groove: groove", "width 1.30"};
  return mark;
}

PartViews bar() {
  PartViews views;
  views.front.low = {0, 0};
  views.front.high = {200, 20};
  views.front.lines = {{{0, 20}, {200, 20}}};
  return views;
}

// 1.3 mm at 1:2 is 0.65 mm on paper; 4 mm of paper wants 3.08:1, and the next scale up is 5:1.
TEST(ExtraViews, ASmallGrooveIsShownLarger) {
  Marks marks;
  marks.notes = {note(100, 1.3), note(30, 12.0)};
  const auto extras = extra_views(bar(), marks, 0.5);
  ASSERT_EQ(extras.size(), 1U);
  EXPECT_EQ(extras[0].letter, "A");
  EXPECT_THAT(extras[0].caption, testing::ElementsAre("A  5:1", "ring groove"));
  EXPECT_NEAR(extras[0].centre.u, 100.0, 1e-9);
  EXPECT_NEAR(extras[0].radius_mm, kExtraRadius_mm / 5.0, 1e-9);
  EXPECT_NEAR(length_of(extras[0].view), 2.0 * kExtraRadius_mm / 5.0, 1e-9);
}

TEST(ExtraViews, WhatIsLargeEnoughHasNone) {
  Marks marks;
  marks.notes = {note(100, 1.3)};
  EXPECT_TRUE(extra_views(bar(), marks, 2.0).empty());
  marks.notes = {note(100, 0.0)};
  EXPECT_TRUE(extra_views(bar(), marks, 0.01).empty()) << "its size is not known";
}

TEST(ExtraViews, NeighboursShareOneAndThereAreFourAtMost) {
  Marks marks;
  marks.notes = {note(100, 1.3), note(101, 1.4)};
  EXPECT_EQ(extra_views(bar(), marks, 0.5).size(), 1U);
  marks.notes.clear();
  for (int i = 0; i < 9; ++i)
    marks.notes.push_back(note(20.0 * i, 1.3));
  EXPECT_EQ(extra_views(bar(), marks, 0.5).size(), kMostExtraViews);
}

}  // namespace
}  // namespace sparewright::drawing
