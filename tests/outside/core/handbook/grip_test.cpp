// Grip: a textbook's vise, a chuck manual's example and its misprint, and the chuck maker's table of
// friction.
#include <gtest/gtest.h>

#include "core/handbook/grip_formulas.hpp"
#include "core/handbook/grip_friction.hpp"

namespace sparewright::handbook {
namespace {

namespace unit = quantity::unit;

// Statics (textbook), problem 8-76: a couple of 35 N on 250 mm, square thread of 6 mm mean radius, 8 mm lead,
// friction 0.27: 2.85 kN.
TEST(OutsideViseScrew, ForceOfTheTextbook) {
  EXPECT_NEAR(screw_force(35.0 * 250.0, 6.0, 8.0, 0.27) / 1000.0, 2.85, 0.005);
}

// Chuck manual, p. 25: standing grip 17 723 N, cutting 3000 N, jaws 2.668 kg m, both factors 1.5. The manual
// prints 1495 rpm; its own forward formula gives the grip at 500 rpm, so that 1495 is a misprint.
TEST(OutsideChuckGrip, PermittedSpeedOfTheManual) {
  EXPECT_NEAR(permitted_rpm(17723.0, 1.5, 3000.0, 1.5, 2.668), 500.0, 0.5);
}
TEST(OutsideChuckGrip, StandingGripOfTheManual) {
  EXPECT_NEAR(1.5 * (1.5 * 3000.0 - grip_at_speed_n(0.0, 2.668, 500.0)), 17723.0, 2.0);
}

// Lathe chuck maker's reference norm, p. 45, table 4.
struct PrintedFriction {
  JawFace jaw;
  WorkFinish finish;
  double coefficient;
};
class OutsideJawFriction : public testing::TestWithParam<PrintedFriction> {};
TEST_P(OutsideJawFriction, IsThePrintedOne) {
  const PrintedFriction& printed = GetParam();
  const auto on = [&](WorkGroup work) {
    return jaw_friction(printed.jaw, printed.finish, work)->coefficient;
  };
  EXPECT_DOUBLE_EQ(on(WorkGroup::kMediumCarbonSteel), printed.coefficient);
  EXPECT_DOUBLE_EQ(on(WorkGroup::kAluminium), 0.95 * printed.coefficient);
  EXPECT_DOUBLE_EQ(on(WorkGroup::kBrass), 0.9 * printed.coefficient);
  EXPECT_DOUBLE_EQ(on(WorkGroup::kGreyIron), 0.8 * printed.coefficient);
}
INSTANTIATE_TEST_SUITE_P(OutsideNorm, OutsideJawFriction,
                         testing::Values(PrintedFriction{JawFace::kSmooth, WorkFinish::kFine, 0.07},
                                         PrintedFriction{JawFace::kDiamond, WorkFinish::kFine, 0.12},
                                         PrintedFriction{JawFace::kSerrated, WorkFinish::kFine, 0.20},
                                         PrintedFriction{JawFace::kSmooth, WorkFinish::kRough, 0.10},
                                         PrintedFriction{JawFace::kDiamond, WorkFinish::kRough, 0.20},
                                         PrintedFriction{JawFace::kSerrated, WorkFinish::kRough, 0.35},
                                         PrintedFriction{JawFace::kSmooth, WorkFinish::kUnmachined, 0.15},
                                         PrintedFriction{JawFace::kDiamond, WorkFinish::kUnmachined, 0.30},
                                         PrintedFriction{JawFace::kSerrated, WorkFinish::kUnmachined, 0.45}));

}  // namespace
}  // namespace sparewright::handbook
