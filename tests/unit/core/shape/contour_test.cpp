#include "core/shape/contour.hpp"

#include <array>
#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

namespace sparewright::shape {
namespace {

constexpr double kPi = std::numbers::pi;
constexpr double kShortest_mm = 1e-5;

Contour rounded_box(double width, double height, double radius) {
  return rounded_contour(std::array{RoundedCorner{{0.0, 0.0}, radius}, RoundedCorner{{width, 0.0}, radius},
                                    RoundedCorner{{width, height}, radius},
                                    RoundedCorner{{0.0, height}, radius}});
}

// An L, 40 by 30 with legs 10 wide, the inner corner rounded.
Contour angle_piece(double inner_radius) {
  return rounded_contour(std::array{RoundedCorner{{0.0, 0.0}}, RoundedCorner{{40.0, 0.0}},
                                    RoundedCorner{{40.0, 10.0}}, RoundedCorner{{10.0, 10.0}, inner_radius},
                                    RoundedCorner{{10.0, 30.0}}, RoundedCorner{{0.0, 30.0}}});
}

TEST(Contour, HasTheAreaOfPlainGeometry) {
  EXPECT_NEAR(area_mm2(circle({3.0, -2.0}, 5.0)), 25.0 * kPi, 1e-12);
  EXPECT_NEAR(area_mm2(slot_contour({1.0, 1.0}, {1.0, 21.0}, 6.0)), 20.0 * 6.0 + 9.0 * kPi, 1e-12);
  EXPECT_NEAR(area_mm2(rounded_box(30.0, 20.0, 4.0)), 600.0 - (4.0 - kPi) * 16.0, 1e-12);
  EXPECT_NEAR(area_mm2(angle_piece(0.0)), 600.0, 1e-12);
  EXPECT_NEAR(area_mm2(angle_piece(5.0)), 600.0 + (1.0 - kPi / 4.0) * 25.0, 1e-12);
}

TEST(Contour, HasTheCentroidOfPlainGeometry) {
  const FlatPoint of_circle = centroid(circle({3.0, -2.0}, 5.0));
  EXPECT_NEAR(of_circle.u, 3.0, 1e-12);
  EXPECT_NEAR(of_circle.v, -2.0, 1e-12);
  const Contour half_disc{{{0.0, -6.0}, 1.0}, {{0.0, 6.0}, 0.0}};
  EXPECT_NEAR(centroid(half_disc).u, 4.0 * 6.0 / (3.0 * kPi), 1e-12);  // 4r / 3 pi, any handbook of mechanics
  EXPECT_NEAR(centroid(half_disc).v, 0.0, 1e-12);
}

TEST(Contour, KnowsInsideFromOutside) {
  const Contour disc = circle({0.0, 0.0}, 5.0);
  EXPECT_TRUE(contains(disc, {0.0, 0.0}));  // on the chord between its two halves
  EXPECT_TRUE(contains(disc, {3.0, 0.0}));
  EXPECT_TRUE(contains(disc, {-4.999, 0.0}));
  EXPECT_FALSE(contains(disc, {5.001, 0.0}));
  const Contour piece = angle_piece(5.0);
  EXPECT_TRUE(contains(piece, {11.0, 11.0}));   // in the inner radius, where metal stays
  EXPECT_FALSE(contains(piece, {14.0, 14.0}));  // past it
  EXPECT_FALSE(contains(piece, {20.0, 20.0}));
}

TEST(Contour, MeasuresHowFarItIs) {
  const Contour piece = angle_piece(5.0);
  const FlatClearance past = clearance(piece, false, {15.0, 15.0});  // the centre of the inner radius
  EXPECT_NEAR(past.distance_mm, 5.0, 1e-12);
  const FlatClearance inner = clearance(piece, false, {5.0, 20.0});
  EXPECT_NEAR(inner.distance_mm, -5.0, 1e-12);
  const FlatClearance corner = clearance(piece, false, {-3.0, -4.0});
  EXPECT_NEAR(corner.distance_mm, 5.0, 1e-12);
  EXPECT_NEAR(corner.u, -0.6, 1e-12);
  EXPECT_NEAR(corner.v, -0.8, 1e-12);
  const FlatClearance on = clearance(circle({0.0, 0.0}, 5.0), false, {0.0, 5.0});
  EXPECT_NEAR(on.distance_mm, 0.0, 1e-12);
  EXPECT_NEAR(on.v, 1.0, 1e-12);
}

TEST(Contour, LeavesTheAxisOutOfAHalfSection) {
  const Contour half = straight_contour(
      std::array{FlatPoint{0.0, 0.0}, FlatPoint{8.0, 0.0}, FlatPoint{8.0, 20.0}, FlatPoint{0.0, 20.0}});
  EXPECT_NEAR(clearance(half, true, {1.0, 10.0}).distance_mm, -7.0, 1e-12);
  EXPECT_NEAR(clearance(half, false, {1.0, 10.0}).distance_mm, -1.0, 1e-12);
}

TEST(Contour, KnowsWhatIsConvex) {
  EXPECT_TRUE(is_convex(circle({1.0, 2.0}, 3.0)));
  EXPECT_TRUE(is_convex(slot_contour({0.0, 0.0}, {20.0, 7.0}, 6.0)));
  EXPECT_TRUE(is_convex(rounded_box(30.0, 20.0, 4.0)));
  EXPECT_FALSE(is_convex(angle_piece(0.0)));
  EXPECT_FALSE(is_convex(angle_piece(5.0)));
}

TEST(Contour, FindsItsFarthestPoint) {
  const Contour slot = slot_contour({0.0, 0.0}, {20.0, 0.0}, 6.0);
  const FlatPoint end = farthest(slot, 1.0, 0.0);
  EXPECT_NEAR(end.u, 23.0, 1e-12);
  EXPECT_NEAR(end.v, 0.0, 1e-12);
  const FlatPoint up = farthest(slot, 3.0, 4.0);
  EXPECT_NEAR(up.u, 20.0 + 3.0 * 0.6, 1e-12);
  EXPECT_NEAR(up.v, 3.0 * 0.8, 1e-12);
}

TEST(Contour, TellsWhatIsWrong) {
  EXPECT_EQ(fault_of(angle_piece(5.0), kShortest_mm), "");
  EXPECT_EQ(fault_of(circle({0.0, 0.0}, 1.0), kShortest_mm), "");
  EXPECT_EQ(fault_of(slot_contour({0.0, 0.0}, {0.0, 9.0}, 2.0), kShortest_mm), "");
  const Contour bow_tie = straight_contour(
      std::array{FlatPoint{0.0, 0.0}, FlatPoint{10.0, 10.0}, FlatPoint{10.0, 0.0}, FlatPoint{0.0, 10.0}});
  EXPECT_NE(fault_of(bow_tie, kShortest_mm).find("crosses itself"), std::string::npos);
  Contour backwards = rounded_box(30.0, 20.0, 0.0);
  std::swap(backwards[1], backwards[3]);
  EXPECT_NE(fault_of(backwards, kShortest_mm).find("clockwise"), std::string::npos);
  // Radii that do not find room: 2 x 12 on a side of 20.
  EXPECT_NE(fault_of(rounded_box(30.0, 20.0, 12.0), kShortest_mm), "");
  // An arc that bulges through the side opposite.
  Contour through = rounded_box(30.0, 10.0, 0.0);
  through[0].bow = -0.9;
  EXPECT_NE(fault_of(through, kShortest_mm).find("crosses itself"), std::string::npos);
  // A corner that touches another side: two loops hang together by a point.
  const Contour touching =
      straight_contour(std::array{FlatPoint{0.0, 0.0}, FlatPoint{20.0, 0.0}, FlatPoint{20.0, 10.0},
                                  FlatPoint{10.0, 0.0}, FlatPoint{0.0, 10.0}});
  EXPECT_NE(fault_of(touching, kShortest_mm), "");
  Contour long_arc = circle({0.0, 0.0}, 5.0);
  long_arc[0].bow = 1.5;
  EXPECT_NE(fault_of(long_arc, kShortest_mm).find("half a circle"), std::string::npos);
}

// Area by counting the squares of a grid whose middles are inside.
TEST(Contour, EnclosesTheAreaItSays) {
  const Contour piece = angle_piece(7.0);
  constexpr double kStep = 0.05;
  double counted = 0.0;
  for (double u = kStep / 2; u < 41.0; u += kStep) {
    for (double v = kStep / 2; v < 31.0; v += kStep)
      if (contains(piece, {u, v})) counted += kStep * kStep;
  }
  EXPECT_NEAR(counted, area_mm2(piece), 0.5);
}

}  // namespace
}  // namespace sparewright::shape
