#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/grip_formulas.hpp"
#include "core/handbook/grip_friction.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Force;
using testing::HasSubstr;
namespace unit = quantity::unit;

Force newtons(double count) {
  return Force::of(count, unit::newton);
}

TEST(Grip, SaysNoOrNothing) {
  const FrictionRange friction{0.08, 0.12};
  // 10 kN in a vise, two faces: 1600 N at the low friction.
  const GripCheck holds = check_grip(newtons(10000), 2, friction, newtons(700), 2.0).value();
  EXPECT_NEAR(holds.holds_low.in(unit::newton), 1600, 1e-9);
  EXPECT_NEAR(holds.holds_high.in(unit::newton), 2400, 1e-9);
  EXPECT_NEAR(holds.needed.in(unit::newton), 1400, 1e-9);
  EXPECT_EQ(holds.verdict, GripVerdict::kNotProven);
  EXPECT_EQ(check_grip(newtons(10000), 2, friction, newtons(900), 2.0)->verdict, GripVerdict::kNo);
  EXPECT_EQ(check_grip(newtons(10000), 1, friction, newtons(700), 2.0)->verdict, GripVerdict::kNo);
  EXPECT_EQ(check_grip(newtons(10000), 2, friction, newtons(0), 2.0)->verdict, GripVerdict::kNotProven);
}

TEST(Grip, BadInput) {
  const FrictionRange friction{0.08, 0.12};
  EXPECT_EQ(check_grip(newtons(0), 2, friction, newtons(1), 2.0).error().code, base::Code::kSizeNotPositive);
  EXPECT_EQ(check_grip(newtons(1), 0, friction, newtons(1), 2.0).error().code, base::Code::kSizeNotPositive);
  EXPECT_EQ(check_grip(newtons(1), 2, {0.0, 0.1}, newtons(1), 2.0).error().code,
            base::Code::kSizeNotPositive);
  EXPECT_EQ(check_grip(newtons(1), 2, {0.2, 0.1}, newtons(1), 2.0).error().code, base::Code::kOutsideDomain);
  EXPECT_EQ(check_grip(newtons(1), 2, friction, newtons(1), 0.5).error().code, base::Code::kOutsideDomain);
  EXPECT_EQ(check_grip(newtons(1), 2, friction, newtons(-1), 2.0).error().code, base::Code::kOutsideDomain);
}

TEST(Grip, TablesAreRanges) {
  for (const GripPair& pair : grip_pairs())
    EXPECT_LT(pair.low, pair.high) << pair.pair;
  for (const ClampingForce& force : clamping_forces())
    EXPECT_LT(force.low(), force.high()) << force.device;
  for (const GripSafety& safety : grip_safeties())
    EXPECT_LE(safety.new_chuck, safety.older_chuck) << safety.case_of;
}

TEST(Grip, PairsByName) {
  EXPECT_DOUBLE_EQ(find_grip_pair("Ground steel jaw on steel,  oily")->low, 0.08);
  EXPECT_THAT(base::report(find_grip_pair("soft jaw on stel").error()),
              HasSubstr("did you mean 'soft jaw on steel'?"));
  EXPECT_EQ(jaw_friction(JawFace::kSmooth, WorkFinish::kFine, WorkGroup::kPlastic).error().code,
            base::Code::kNotTabled);
}

TEST(Grip, TooLittleStandingStillIsNoSpeed) {
  EXPECT_TRUE(std::isnan(permitted_rpm(1000.0, 1.5, 3000.0, 1.5, 2.668)));
  EXPECT_LT(grip_at_speed_n(17723.0, 2.668, 1000.0), 0.0);
}

}  // namespace
}  // namespace sparewright::handbook
