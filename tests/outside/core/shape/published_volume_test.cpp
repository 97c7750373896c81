// Volumes of bodies whose closed form is published.
#include <gtest/gtest.h>

#include "core/shape/volume.hpp"

namespace sparewright::shape {
namespace {

struct Crossing {
  double radius_mm;
};

// Two round holes of one radius crossing square share 16 r^3 / 3.
// The sources of this file are named from memory.
// Source: E. Weisstein, "Steinmetz Solid", MathWorld, V_2 = 16 r^3 / 3 (Archimedes, The Method, proposition
// 14's kin).
class OutsideSteinmetzSolid : public ::testing::TestWithParam<Crossing> {};

TEST_P(OutsideSteinmetzSolid, TwoCylinders) {
  const double r = GetParam().radius_mm;
  const double length = 3 * r;
  const Cylinder bar{Frame::at({0.0, 0.0, -length / 2}), r, length};
  const Cylinder cross{Frame::along({-length / 2, 0.0, 0.0}, {1.0, 0.0, 0.0}), r, length};
  const RayVolume shared = metal_within({bar, {}}, cross, Effort::kPainstaking);
  const double published = 16.0 / 3.0 * r * r * r;
  EXPECT_NEAR(shared.volume_mm3, published, shared.error_mm3);
  EXPECT_LT(shared.error_mm3, published * 2e-3);
}
INSTANTIATE_TEST_SUITE_P(Radii, OutsideSteinmetzSolid,
                         ::testing::Values(Crossing{1.0}, Crossing{6.35}, Crossing{20.0}));

// Three of them share 8 (2 - sqrt 2) r^3. Source: the same page, V_3.
TEST(OutsideSteinmetzSolidOfThree, Cylinders) {
  constexpr double kRadius = 10.0;
  const Cylinder x{Frame::along({-15.0, 0.0, 0.0}, {1.0, 0.0, 0.0}), kRadius, 30.0};
  const Cylinder y{Frame::along({0.0, -15.0, 0.0}, {0.0, 1.0, 0.0}), kRadius, 30.0};
  const Cylinder z{Frame::at({0.0, 0.0, -15.0}), kRadius, 30.0};
  // Common to three = common to x and y, less what of it lies outside z: a block less z's is cut from
  // nothing, so it is measured as x and y of the work "z".
  const RayVolume all_of_x = metal_within({z, {}}, x, Effort::kPainstaking);
  const auto y_cut = Recipe::make({"z", z}, std::vector{Cutter{"y", y, Open::kNone}});
  ASSERT_TRUE(y_cut);
  const RayVolume without_y = metal_within(y_cut->work(), x, Effort::kPainstaking);
  EXPECT_NEAR(all_of_x.volume_mm3 - without_y.volume_mm3, 8.0 * (2.0 - std::sqrt(2.0)) * 1000.0,
              all_of_x.error_mm3 + without_y.error_mm3);
}

// A cylinder cut by a plane through the middle of its base, at 45 degrees (the hoof): 2 r^2 h / 3.
// Source: E. Weisstein, "Cylindrical Wedge", MathWorld (a = r): V = 2 r^2 h / 3.
TEST(OutsideCylindricalWedge, HalfBase) {
  const Cylinder bar{{}, 10.0, 10.0};
  const HalfSpace below{Frame::along({}, direction(Vector{-1.0, 0.0, 1.0}))};  // z <= x
  const RayVolume hoof = metal_within({bar, {}}, below, Effort::kPainstaking);
  EXPECT_NEAR(hoof.volume_mm3, 2.0 / 3.0 * 100.0 * 10.0, hoof.error_mm3);
  EXPECT_LT(hoof.error_mm3, 3.0);
}

struct PointLength {
  double included_deg;
  double per_diameter;
};

// Length of a drill's point as a part of its diameter, to three places. Source: 1 / (2 tan(half angle)),
// worked by hand with a table of tangents: tan 59 = 1.6643, tan 67.5 = 2.4142, tan 45 = 1, tan 41 = 0.8693,
// tan 30 = 0.5774.
class OutsideDrillPoint : public ::testing::TestWithParam<PointLength> {};

TEST_P(OutsideDrillPoint, Length) {
  const double point_rad = GetParam().included_deg / 180.0 * std::numbers::pi;
  EXPECT_NEAR(point_length_mm(5.0, point_rad), GetParam().per_diameter * 10.0, 0.005);
}
INSTANTIATE_TEST_SUITE_P(Angles, OutsideDrillPoint,
                         ::testing::Values(PointLength{118.0, 0.300}, PointLength{135.0, 0.207},
                                           PointLength{90.0, 0.500}, PointLength{82.0, 0.575},
                                           PointLength{60.0, 0.866}));

}  // namespace
}  // namespace sparewright::shape
