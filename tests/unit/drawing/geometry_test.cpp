#include "drawing/geometry.hpp"

#include <gtest/gtest.h>

namespace sparewright::drawing {
namespace {

constexpr Box kBox{10.0, 10.0, 20.0, 14.0};

TEST(Geometry, DistanceToASegmentEndsAtItsEnds) {
  const Segment s{{0.0, 0.0}, {10.0, 0.0}};
  EXPECT_DOUBLE_EQ(distance(s, {5.0, 3.0}), 3.0);
  EXPECT_DOUBLE_EQ(distance(s, {13.0, 4.0}), 5.0);
  EXPECT_DOUBLE_EQ(distance(Segment{{1.0, 1.0}, {1.0, 1.0}}, {4.0, 5.0}), 5.0);
}

TEST(Geometry, DistanceToABoxIsNothingInside) {
  EXPECT_DOUBLE_EQ(distance(kBox, {15.0, 12.0}), 0.0);
  EXPECT_DOUBLE_EQ(distance(kBox, {23.0, 18.0}), 5.0);
}

TEST(Geometry, BoxesThatOnlyMeetDoNotOverlap) {
  EXPECT_FALSE(overlap(kBox, {20.0, 10.0, 25.0, 14.0}));
  EXPECT_FALSE(overlap(kBox, {10.0, 14.0, 20.0, 18.0}));
  EXPECT_TRUE(overlap(kBox, {19.9, 13.9, 25.0, 18.0}));
  EXPECT_TRUE(overlap(kBox, {12.0, 11.0, 13.0, 12.0}));  // one within the other
}

TEST(Geometry, ASegmentCrossesABoxOnlyThroughItsInside) {
  EXPECT_TRUE(crosses(Segment{{0.0, 12.0}, {30.0, 12.0}}, kBox));
  EXPECT_TRUE(crosses(Segment{{12.0, 11.0}, {13.0, 12.0}}, kBox));   // wholly inside
  EXPECT_FALSE(crosses(Segment{{0.0, 10.0}, {30.0, 10.0}}, kBox));   // along its edge
  EXPECT_FALSE(crosses(Segment{{0.0, 12.0}, {9.0, 12.0}}, kBox));    // ends before
  EXPECT_FALSE(crosses(Segment{{18.0, 18.0}, {24.0, 12.0}}, kBox));  // past its corner
  EXPECT_TRUE(crosses(Segment{{16.0, 16.0}, {22.0, 10.0}}, kBox));   // over its corner
}

TEST(Geometry, SegmentsCrossWhereTheyMeet) {
  const Segment s{{0.0, 0.0}, {10.0, 10.0}};
  EXPECT_TRUE(cross(s, {{0.0, 10.0}, {10.0, 0.0}}));
  EXPECT_TRUE(cross(s, {{10.0, 10.0}, {20.0, 0.0}}));  // end on end
  EXPECT_TRUE(cross(s, {{5.0, 5.0}, {9.0, 0.0}}));     // end on line
  EXPECT_FALSE(cross(s, {{6.0, 5.0}, {9.0, 0.0}}));
  EXPECT_FALSE(cross(s, {{1.0, 0.0}, {11.0, 10.0}}));  // beside it
}

}  // namespace
}  // namespace sparewright::drawing
