#include "core/shape/primitive.hpp"

#include <gtest/gtest.h>

#include "core/shape/clearance.hpp"
#include "core/shape/support.hpp"

namespace sparewright::shape {
namespace {

using base::Code;
constexpr double kPi = std::numbers::pi;

TEST(Volume, ClosedForms) {
  EXPECT_DOUBLE_EQ(volume_mm3(Box{{}, {2.0, 3.0, 4.0}}), 24.0);
  EXPECT_DOUBLE_EQ(volume_mm3(Cylinder{{}, 2.0, 5.0}), 20.0 * kPi);
  EXPECT_DOUBLE_EQ(volume_mm3(Cone{{}, 3.0, 0.0, 4.0}), 12.0 * kPi);
  EXPECT_DOUBLE_EQ(volume_mm3(Cone{{}, 2.0, 2.0, 5.0}), 20.0 * kPi);
  // A 90 degree point is as long as the radius.
  EXPECT_NEAR(volume_mm3(DrilledHole{{}, 3.0, 10.0, kPi / 2}), 90.0 * kPi + 9.0 * kPi, 1e-12);
  // Hexagon, across flats s: area s^2 sqrt(3) / 2.
  EXPECT_NEAR(volume_mm3(hexagonal_prism({}, 10.0, 2.0)), 100.0 * std::sqrt(3.0) / 2 * 2.0, 1e-4);
  EXPECT_TRUE(std::isinf(volume_mm3(HalfSpace{})));
}

TEST(HexagonalPrism, HasAFlatFacingX) {
  EXPECT_NEAR(clearance(hexagonal_prism({}, 10.0, 2.0), {7.0, 0.0, 1.0}).distance_mm, 2.0, kGrid_mm);
  EXPECT_NEAR(clearance(hexagonal_prism({}, 10.0, 2.0), {0.0, 7.0, 1.0}).distance_mm,
              7.0 - 10.0 / std::sqrt(3.0), kGrid_mm);
}

TEST(Clearance, OfABox) {
  const Box box{Frame::at({10.0, 0.0, 0.0}), {4.0, 6.0, 8.0}};
  EXPECT_DOUBLE_EQ(clearance(box, {11.0, 3.0, 4.0}).distance_mm, -1.0);
  EXPECT_EQ(clearance(box, {11.0, 3.0, 4.0}).normal, (Vector{-1.0, 0.0, 0.0}));
  EXPECT_DOUBLE_EQ(clearance(box, {7.0, -4.0, 4.0}).distance_mm, 5.0);  // 3, 4, 5
  EXPECT_TRUE(contains(box, {10.0, 0.0, 0.0}));
  EXPECT_FALSE(contains(box, {9.999, 0.0, 0.0}));
}

TEST(Clearance, OfBodiesOfRevolution) {
  const Cylinder cylinder{{}, 5.0, 20.0};
  EXPECT_DOUBLE_EQ(clearance(cylinder, {8.0, 0.0, 24.0}).distance_mm, 5.0);
  EXPECT_DOUBLE_EQ(clearance(cylinder, {0.0, 0.0, 10.0}).distance_mm, -5.0);
  EXPECT_DOUBLE_EQ(clearance(cylinder, {0.0, 0.0, 1.0}).distance_mm, -1.0);
  // Beside the point of a 90 degree drill the nearest surface is at 45 degrees.
  const DrilledHole hole{{}, 3.0, 10.0, kPi / 2};
  EXPECT_NEAR(clearance(hole, {0.0, 0.0, 12.0}).distance_mm, -std::sqrt(0.5), 1e-12);
  EXPECT_NEAR(clearance(hole, {0.0, 0.0, 15.0}).distance_mm, 2.0, 1e-12);
}

TEST(Farthest, AndBounds) {
  const Cone cone{Frame::along({0.0, 0.0, 1.0}, {1.0, 0.0, 0.0}), 2.0, 0.0, 6.0};
  const Bounds box = bounds(cone);
  EXPECT_NEAR(distance_mm(box.low, {0.0, -2.0, -1.0}), 0.0, 1e-12);
  EXPECT_NEAR(distance_mm(box.high, {6.0, 2.0, 3.0}), 0.0, 1e-12);
  EXPECT_EQ(farthest(cone, {1.0, 0.0, 0.0}), (Point{6.0, 0.0, 1.0}));
  EXPECT_TRUE(common(box, bounds(Box{Frame::at({7.0, 0.0, 0.0}), {1.0, 1.0, 1.0}})).empty());
}

Code failure_of(const Primitive& p) {
  const auto result = checked(p, "pivot bore");
  return result ? Code::kLast : result.error().code;
}

TEST(Checked, TakesWhatCanBeMade) {
  EXPECT_EQ(failure_of(Cylinder{{}, 1.0, 2.0}), Code::kLast);
  EXPECT_EQ(failure_of(Cone{{}, 1.0, 0.0, 2.0}), Code::kLast);
  EXPECT_EQ(failure_of(hexagonal_prism({}, 5.0, 5.0)), Code::kLast);
  EXPECT_EQ(failure_of(HalfSpace{}), Code::kLast);
}

TEST(Checked, RefusesWhatCannot) {
  const double nan = std::nan("");
  EXPECT_EQ(failure_of(Cylinder{{}, 0.0, 2.0}), Code::kSizeNotPositive);
  EXPECT_EQ(failure_of(Cylinder{{}, 1.0, -2.0}), Code::kSizeNotPositive);
  EXPECT_EQ(failure_of(Box{{}, {1.0, nan, 1.0}}), Code::kSizeNotPositive);
  EXPECT_EQ(failure_of(Box{{}, {1.0, 1e9, 1.0}}), Code::kNumberTooLarge);
  EXPECT_EQ(failure_of(Cylinder{Frame::at({nan, 0.0, 0.0}), 1.0, 1.0}), Code::kValueNotAccepted);
  EXPECT_EQ(failure_of(Cylinder{Frame::along({}, {0.0, 0.0, 0.0}), 1.0, 1.0}), Code::kValueNotAccepted);
  EXPECT_EQ(failure_of(Cone{{}, 0.0, 0.0, 1.0}), Code::kSizeNotPositive);
  EXPECT_EQ(failure_of(Cone{{}, 1.0, -1.0, 1.0}), Code::kValueNotAccepted);
  EXPECT_EQ(failure_of(Cone{{}, 1.0, nan, 1.0}), Code::kValueNotAccepted);
  EXPECT_EQ(failure_of(Cone{{}, nan, 1.0, 1.0}), Code::kSizeNotPositive);
  EXPECT_EQ(failure_of(ProfiledBody{{}, {{{0.0, 0.0}, nan}, {{4.0, 0.0}}, {{0.0, 4.0}}}, 1.0}),
            Code::kValueNotAccepted);
  EXPECT_EQ(failure_of(DrilledHole{{}, 1.0, 1.0, kPi}), Code::kValueNotAccepted);
  EXPECT_EQ(failure_of(DrilledHole{{}, 1.0, 1.0, nan}), Code::kValueNotAccepted);
  const Outline dart{{0.0, 0.0}, {4.0, 0.0}, {1.0, 1.0}, {0.0, 4.0}};
  EXPECT_EQ(failure_of(Prism{{}, dart, 1.0}), Code::kValueNotAccepted);
  const Outline clockwise{{0.0, 0.0}, {0.0, 1.0}, {1.0, 0.0}};
  EXPECT_EQ(failure_of(Prism{{}, clockwise, 1.0}), Code::kValueNotAccepted);
  EXPECT_EQ(failure_of(Prism{{}, {}, 1.0}), Code::kValueNotAccepted);
}

TEST(Checked, NamesTheSizeAndTheFeature) {
  const auto result = checked(Cylinder{{}, 0.0, 2.0}, "pivot bore");
  ASSERT_FALSE(result);
  EXPECT_EQ(result.error().subject, "the radius of pivot bore");
}

}  // namespace
}  // namespace sparewright::shape
