// Grades, tightening, stripping and friction: the answers a person asks for, and bad input.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/chuck_grip.hpp"
#include "core/handbook/friction.hpp"
#include "core/handbook/screw_grades.hpp"
#include "core/handbook/thread_engagement.hpp"
#include "core/handbook/tightening.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Force;
using quantity::Length;
using quantity::Pressure;
using testing::HasSubstr;
namespace unit = quantity::unit;

ScrewThread thread(std::string_view text) {
  return read_screw_thread(text).value();
}

TEST(ScrewGrades, AreFoundAsWritten) {
  const ScrewThread half = thread("1/2-13");
  for (const std::string_view name : {"grade 5", "Grade 5", "SAE grade 5", "5"})
    EXPECT_EQ(screw_grade(name, half)->grade, "grade 5") << name;
  EXPECT_EQ(screw_grade("8.8", thread("M10"))->grade, "class 8.8");
  EXPECT_EQ(screw_grade("a574", half)->grade, "A574");
  EXPECT_NEAR(screw_grade("8.8", thread("M16"))->proof.in(unit::megapascal), 580, 1e-9);
  EXPECT_NEAR(screw_grade("8.8", thread("M20"))->proof.in(unit::megapascal), 600, 1e-9);
  EXPECT_NEAR(screw_grade("grade 5", thread("1-1/8-7"))->tensile.in(unit::psi), 105000, 1e-6);
  EXPECT_EQ(screw_grade("4.6", thread("M8"))->source.basis, Basis::kFromMemory);
}

TEST(ScrewGrades, OfTheOtherSystemOrSizeAreRefused) {
  const auto metric = screw_grade("grade 5", thread("M10"));
  ASSERT_FALSE(metric);
  EXPECT_EQ(metric.error().code, base::Code::kNotTabled);
  EXPECT_THAT(base::report(metric.error()), HasSubstr("grade 5 of SAE J429"));
  EXPECT_THAT(base::report(metric.error()), HasSubstr("inch threads over 0.24 up to 1 in"));
  EXPECT_EQ(screw_grade("grade 8", thread("#10-24")).error().code, base::Code::kNotTabled);
  const auto none = screw_grade("grade 55", thread("1/2-13"));
  EXPECT_EQ(none.error().code, base::Code::kNameUnknown);
  EXPECT_THAT(base::report(none.error()), HasSubstr("did you mean 'grade 5'"));
}

TEST(ScrewThreads, SayWhatWasAssumed) {
  EXPECT_EQ(thread("M8").name, "M8x1.25");
  EXPECT_FALSE(thread("M8").assumed.empty());
  EXPECT_FALSE(read_screw_thread("bolt"));
  EXPECT_EQ(mesh_limits(thread("1/4-20 UNC-3A"))->classes, "3A in 3B");
  EXPECT_EQ(mesh_limits(thread("M10"))->classes, "6g in 6H");
}

TEST(Tightening, ShowsHowFarThePreloadMayBeOff) {
  const ScrewThread m10 = thread("M10");
  const auto oiled = tightening(m10, screw_grade("8.8", m10).value(), ThreadState::kMachineOil);
  ASSERT_TRUE(oiled);
  // 0.75 x 57.99 x 580 = 25,226 N; T = 0.21 x 25,226 x 0.010 = 53.0 N m, by hand.
  EXPECT_NEAR(oiled->preload.in(unit::newton), 25226, 5);
  EXPECT_NEAR(oiled->torque.in(unit::newton_metre), 52.97, 0.02);
  EXPECT_NEAR(oiled->preload_high.in(unit::newton), 25226 * 2.1, 20);
  EXPECT_NEAR(oiled->preload_low.in(unit::newton), 25226 * 0.21 / 0.225, 20);
  EXPECT_TRUE(oiled->may_pass_proof);
  EXPECT_NEAR(oiled->most.in(unit::newton_metre), 0.10 * 33634 * 0.010, 0.05);
  EXPECT_EQ(oiled->factors.printed.size(), 2U);
}

TEST(Tightening, EveryStateHasASpreadFromMemory) {
  for (const ThreadState state :
       {ThreadState::kAsReceived, ThreadState::kMachineOil, ThreadState::kMolybdenumPaste,
        ThreadState::kCopperPaste, ThreadState::kZincPlated, ThreadState::kCadmiumPlated}) {
    const NutFactors factors = nut_factors(state);
    EXPECT_LT(factors.low, factors.mean) << name_of(state);
    EXPECT_LT(factors.mean, factors.high) << name_of(state);
    for (const NutFactor& one : factors.printed)
      EXPECT_EQ(one.source.basis, Basis::kFromMemory) << name_of(state);
  }
}

TEST(Tightening, AShareOfMoreThanTheProofLoadIsRefused) {
  const ScrewThread m10 = thread("M10");
  const ScrewGrade grade = screw_grade("8.8", m10).value();
  for (const double share : {0.0, -0.5, 1.1}) {
    EXPECT_EQ(tightening(m10, grade, ThreadState::kMachineOil, share).error().code,
              base::Code::kValueNotAccepted);
  }
}

TEST(Engagement, ASteelScrewInSoftAndHardMaterial) {
  const auto aluminium = least_engagement("1/2-13", "grade 8", "aluminium 6061");
  ASSERT_TRUE(aluminium);
  EXPECT_THAT(aluminium->hole.name, HasSubstr("aluminium 6061"));
  EXPECT_EQ(aluminium->screw.name, "SAE J429, grade 8");
  // J = 150 ksi AS_s / (290 MPa AS_n): by hand 0.3643 x 0.7789 x 1034.2 / (1.1235 x 290) = 0.9007 in.
  EXPECT_NEAR(aluminium->engagement.least.in(unit::inch), 0.9007, 0.001);
  EXPECT_NEAR(aluminium->engagement.for_strong_screw.base() / aluminium->engagement.least.base(),
              kStrongestOverLeast, 1e-9);
  const auto steel = least_engagement("1/2-13", "grade 2", "steel 4140 prehardened");
  EXPECT_EQ(steel->engagement.least, steel->engagement.for_screw_thread);
  const auto iron = least_engagement("M12", "8.8", "grey iron class 30");
  EXPECT_GT(iron->engagement.least.in(unit::millimetre), 18.0);
}

TEST(Engagement, AnyPairOfMaterials) {
  const auto brass = least_engagement("1/4-20", "brass C360", "aluminium 6061");
  ASSERT_TRUE(brass);
  EXPECT_THAT(brass->screw.name, HasSubstr("brass C360"));
  EXPECT_NEAR(brass->screw.tensile.in(unit::megapascal), 400, 1e-9);
  const auto steel = least_engagement("1/4-20", "grade 8", "aluminium 6061");
  EXPECT_GT(steel->engagement.for_hole_thread, brass->engagement.for_hole_thread);
  EXPECT_EQ(steel->engagement.for_screw_thread, brass->engagement.for_screw_thread);
}

TEST(Engagement, FailsWhereSomethingIsNotKnown) {
  EXPECT_EQ(least_engagement("1/2-13", "grade 8", "UHMW polyethylene").error().code, base::Code::kNotTabled);
  EXPECT_FALSE(least_engagement("bolt", "grade 8", "brass C360"));
  EXPECT_FALSE(least_engagement("1/2-13", "grade 9", "brass C360"));
  EXPECT_FALSE(least_engagement("1/2-13", "grade 8", "cheese"));
  EXPECT_EQ(least_engagement(thread("1/2-13"), Pressure::of(100, unit::megapascal), Pressure{}).error().code,
            base::Code::kSizeNotPositive);
}

// At the least engagement the screw is the first to go, a little under it the thread is.
TEST(Engagement, IsWhereTheScrewStartsToBreakFirst) {
  for (const std::string_view name : {"#10-24", "1/4-20", "3/8-24", "1-8", "M6", "M10", "M20"}) {
    for (const double hole_mpa : {150.0, 300.0, 600.0, 1200.0}) {
      const ScrewThread screw = thread(name);
      const Pressure steel = Pressure::of(830, unit::megapascal);
      const Pressure hole = Pressure::of(hole_mpa, unit::megapascal);
      const Length least = least_engagement(screw, steel, hole)->least;
      EXPECT_EQ(stripping(screw, least * 1.001, steel, hole)->first, BreaksFirst::kScrew) << name << hole_mpa;
      EXPECT_NE(stripping(screw, least * 0.999, steel, hole)->first, BreaksFirst::kScrew) << name << hole_mpa;
    }
  }
}

TEST(Engagement, AHoleDrilledTooLargeWeakensTheScrewsThread) {
  const ScrewThread screw = thread("1/4-20");
  const Length deep = Length::of(0.25, unit::inch);
  const ShearAreas usual = shear_areas(screw, deep).value();
  const ShearAreas large = shear_areas(screw, deep, Diameter::of(0.220, unit::inch)).value();
  EXPECT_LT(large.screw, usual.screw);
  EXPECT_EQ(large.hole, usual.hole);
  EXPECT_EQ(shear_areas(screw, deep, Diameter::of(0.200, unit::inch))->screw,
            usual.screw);  // within its class
  EXPECT_EQ(shear_areas(screw, deep, Diameter::of(0.25, unit::inch)).error().code,
            base::Code::kOutsideDomain);
  EXPECT_EQ(shear_areas(screw, Length{}).error().code, base::Code::kSizeNotPositive);
}

TEST(Friction, MaySayThatWorkSlipsAndNoMore) {
  const FrictionRange oily = clamp_friction("ground steel on steel, oily").value();
  const Force press = Force::of(10, unit::kilonewton);
  const auto slips = friction_hold(press, press, 2, oily, Force::of(2.5, unit::kilonewton));
  EXPECT_EQ(slips->answer, FrictionAnswer::kSlips);
  EXPECT_NEAR(slips->high.in(unit::kilonewton), 2.4, 1e-9);
  EXPECT_NEAR(slips->low.in(unit::kilonewton), 1.6, 1e-9);
  EXPECT_EQ(friction_hold(press, press, 2, oily, Force::of(1.0, unit::kilonewton))->answer,
            FrictionAnswer::kMaySlip);  // 1.6 kN at the least, and a margin of 2 asks for 2
  EXPECT_EQ(friction_hold(press, press, 2, oily, Force::of(1.0, unit::kilonewton), 1.5)->answer,
            FrictionAnswer::kNotShown);
  EXPECT_EQ(friction_hold(press, press, 2, oily, press, 0.5).error().code, base::Code::kOutsideDomain);
  EXPECT_EQ(friction_hold(press, press, 2, oily, Force::of(0.001, unit::kilonewton))->answer,
            FrictionAnswer::kNotShown);
  EXPECT_EQ(friction_hold(press, press, 0, oily, press).error().code, base::Code::kSizeNotPositive);
  EXPECT_EQ(friction_hold(press, press * 0.5, 2, oily, press).error().code, base::Code::kSizeNotPositive);
  EXPECT_EQ(friction_hold(press, press, 2, oily, Force{}).error().code, base::Code::kSizeNotPositive);
}

TEST(Friction, ByMaterial) {
  EXPECT_NEAR(jaw_friction(JawFace::kSerratedJaw, GrippedSurface::kRough, WorkGroup::kAluminium)->low,
              0.45 * 0.95, 1e-12);
  EXPECT_EQ(jaw_friction(JawFace::kSmoothJaw, GrippedSurface::kSmooth, WorkGroup::kPlastic).error().code,
            base::Code::kNotTabled);
  EXPECT_EQ(clamp_frictions().size(), 8U);
  EXPECT_EQ(clamp_friction("wood").error().code, base::Code::kNameUnknown);
  EXPECT_EQ(clamping_forces().size(), 10U);
  for (const ClampingForce& force : clamping_forces())
    EXPECT_LT(force.low, force.high) << force.holder;
}

TEST(Friction, ASplitClampHoldsBetweenTheBooks) {
  const ClampTorque torque =
      clamp_torque({0.1, 0.2, {}}, Force::of(10, unit::kilonewton), Diameter::of(20, unit::millimetre));
  EXPECT_NEAR(torque.low.in(unit::newton_metre), 10, 1e-9);  // 0.1 x 10 kN x 10 mm
  EXPECT_NEAR(torque.high.in(unit::newton_metre), 62.83, 0.01);
}

TEST(ScrewLoads, AStrongInchScrewIsLessByOneBook) {
  const ScrewThread quarter = thread("1/4-20");
  const ScrewLoads strong = screw_loads(quarter, screw_grade("grade 8", quarter).value());
  ASSERT_TRUE(strong.tensile_h28);
  // pi (0.2127/2 - 0.16238/20)^2 = 0.03032 in2 at 150 ksi: 4548 lbf; 0.03182 in2 gives 4773.
  EXPECT_NEAR(strong.tensile_h28->in(unit::pound_force), 4548, 4);
  EXPECT_NEAR(strong.tensile.in(unit::pound_force), 4773, 2);
  EXPECT_FALSE(screw_loads(quarter, screw_grade("grade 2", quarter).value()).tensile_h28);
}

TEST(ChuckGrip, FallsWithTheSpeed) {
  EXPECT_NEAR(grip_at_speed_n(20000.0, 1.0, 1000.0), 20000 - 10966.2, 0.1);  // (pi 1000/30)^2
  EXPECT_NEAR(torque_held_nmm(0.1, 20000.0, 50.0), 50000, 1e-9);
  EXPECT_EQ(chuck_margins().size(), 3U);
  EXPECT_EQ(chuck_speeds().size(), 5U);
  EXPECT_NEAR(chuck_speed(Diameter::of(6, unit::inch))->iron_rpm, 2500, 1e-9);  // as a 160 mm one
  EXPECT_EQ(chuck_speed(Diameter::of(400, unit::millimetre)).error().code, base::Code::kNotTabled);
  EXPECT_FALSE(chuck_speed(Diameter{}));
}

}  // namespace
}  // namespace sparewright::handbook
