#include "core/handbook/spur_gears.hpp"

#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Angle;
using quantity::Diameter;
using quantity::Length;
using testing::HasSubstr;
namespace unit = quantity::unit;

template <class Value>
std::string refusal(const base::Result<Value>& result) {
  return result ? "" : base::report(result.error());
}

GearPitch pitch_of(const std::string& name) {
  for (const GearPitch& pitch : gear_pitches()) {
    if (to_string(pitch) == name) return pitch;
  }
  ADD_FAILURE() << name;
  return {};
}

TEST(SpurGears, BlankAndTeethOf10Dp) {
  const SpurGear gear =
      spur_gear(40, pitch_of("10 DP"), find_tooth_form("14-1/2 deg full depth").value()).value();
  EXPECT_NEAR(gear.pitch_diameter.in(unit::inch), 4.0, 1e-12);
  EXPECT_NEAR(gear.blank.in(unit::inch), 4.2, 1e-12);
  EXPECT_NEAR(gear.whole_depth.in(unit::inch), 0.2157, 1e-12);
  EXPECT_NEAR(gear.root.in(unit::inch), 4.2 - 0.4314, 1e-12);
  EXPECT_NEAR(gear.circular_pitch.in(unit::inch), 0.31416, 0.000005);
  EXPECT_EQ(gear.cutter->number, 3);
  EXPECT_EQ(gear.cutter->continental_number(), 6);
  EXPECT_EQ(gear.least_teeth_not_undercut, 32);
}

TEST(SpurGears, FormsDiffer) {
  const SpurGear stub = spur_gear(20, pitch_of("8 DP"), find_tooth_form("20 deg stub").value()).value();
  EXPECT_NEAR(stub.blank.in(unit::inch), 21.6 / 8, 1e-12);
  EXPECT_NEAR(stub.whole_depth.in(unit::inch), 1.8 / 8, 1e-12);
  const SpurGear fine =
      spur_gear(20, pitch_of("32 DP"), find_tooth_form("20 deg full depth fine pitch").value()).value();
  EXPECT_NEAR(fine.whole_depth.in(unit::inch), 2.2 / 32 + 0.002, 1e-12);
  const SpurGear metric =
      spur_gear(20, pitch_of("module 2.5"), find_tooth_form("20 deg metric").value()).value();
  EXPECT_NEAR(metric.whole_depth.in(unit::millimetre), 5.625, 1e-12);
  EXPECT_EQ(metric.least_teeth_not_undercut, 18);  // 17.1
}

TEST(SpurGears, GearsThatCannotBe) {
  const ToothForm metric = find_tooth_form("20 deg metric").value();
  EXPECT_THAT(refusal(spur_gear(4, pitch_of("module 2"), metric)), HasSubstr("5 to 1000 teeth"));
  EXPECT_THAT(refusal(spur_gear(20, pitch_of("8 DP"), metric)), HasSubstr("cannot be '8 DP'"));
  EXPECT_THAT(
      refusal(spur_gear(20, pitch_of("8 DP"), find_tooth_form("20 deg full depth fine pitch").value())),
      HasSubstr("diametral pitches from 20 to 200"));
  EXPECT_THAT(refusal(find_tooth_form("20 deg stubb")), HasSubstr("did you mean '20 deg stub'?"));
  EXPECT_THAT(refusal(gear_cutter(11)), HasSubstr("12 and 13 teeth"));
  EXPECT_EQ(gear_cutter(134)->number, 2);
  EXPECT_EQ(gear_cutter(2000)->number, 1);
}

// Every cutter's range begins where the next one's ends.
TEST(SpurGears, CuttersLeaveNoGap) {
  for (int teeth = 12; teeth < 500; ++teeth) {
    const GearCutter cutter = gear_cutter(teeth).value();
    EXPECT_GE(teeth, cutter.from_teeth);
    if (teeth > 12) {
      EXPECT_LE(cutter.number, gear_cutter(teeth - 1)->number);
    }
  }
}

OldGear old_gear(int teeth, Length outside) {
  OldGear gear;
  gear.teeth = teeth;
  gear.outside = as_diameter(outside);
  return gear;
}

TEST(OldGears, InchOrMetric) {
  const auto inch = identify_spur_gear(old_gear(24, Length::of(2.6, unit::inch))).value();
  EXPECT_EQ(to_string(inch.at(0).pitch), "10 DP");
  EXPECT_NEAR(inch[0].outside_off->base(), 0.0, 1e-9);
  const auto metric = identify_spur_gear(old_gear(24, Length::of(64.9, unit::millimetre))).value();
  EXPECT_EQ(to_string(metric.at(0).pitch), "module 2.5");
  EXPECT_NEAR(metric[0].outside_off->in(unit::millimetre), -0.1, 1e-9);
}

TEST(OldGears, DepthTellsTheForm) {
  OldGear gear = old_gear(40, Length::of(4.2, unit::inch));
  gear.whole_depth = Length::of(0.2157, unit::inch);
  EXPECT_EQ(identify_spur_gear(gear)->at(0).form.name, "14-1/2 deg full depth");
  gear.whole_depth = Length::of(0.225, unit::inch);
  EXPECT_EQ(identify_spur_gear(gear)->at(0).form.name, "20 deg full depth");
}

TEST(OldGears, CentreDistanceDoesNotMindATurnedOutside) {
  OldGear gear = old_gear(12, Length::of(73.0, unit::millimetre));  // a long pinion of module 5, 3 mm over
  gear.mate_teeth = 36;
  gear.centres = Length::of(120.0, unit::millimetre);
  const auto all = identify_spur_gear(gear).value();
  bool found = false;
  for (const GearCandidate& one : all)
    found = found || (to_string(one.pitch) == "module 5" && std::abs(one.centres_off->base()) < 1e-9);
  EXPECT_FALSE(found);  // the outside is 4 % over: no candidate within 2 %, and the answer must not pretend
  gear.outside.reset();
  EXPECT_EQ(to_string(identify_spur_gear(gear)->at(0).pitch), "module 5");
}

TEST(OldGears, TooLittleIsSaid) {
  OldGear gear;
  gear.teeth = 30;
  gear.whole_depth = Length::of(4.5, unit::millimetre);
  EXPECT_EQ(identify_spur_gear(gear).error().code, base::Code::kReadingsTooFew);
  gear.centres = Length::of(100.0, unit::millimetre);  // without the mate
  EXPECT_FALSE(identify_spur_gear(gear));
  gear.mate_teeth = 2;
  EXPECT_THAT(refusal(identify_spur_gear(gear)), HasSubstr("the mate's teeth"));
  EXPECT_THAT(refusal(identify_spur_gear(old_gear(0, Length::of(1, unit::inch)))), HasSubstr("5 to 1000"));
  EXPECT_THAT(refusal(identify_spur_gear(old_gear(20, Length()))), HasSubstr("the outside diameter is 0 mm"));
  // nothing standard: 20 teeth on 100 mm is module 4.545, 5.59 DP; a stub of 20.8 would be 4.63
  EXPECT_TRUE(identify_spur_gear(old_gear(300, Length::of(1.0, unit::millimetre)))->empty());
}

TEST(OldGears, PressureAngleFromTwoSpans) {
  const Length module = Length::of(1.0 / 10, unit::inch);
  for (const double degrees : {14.5, 20.0, 25.0}) {
    const double alpha = Angle::of(degrees, unit::degree).base();
    constexpr double kThinnedMm = 0.15;  // backlash takes the same from both
    const auto span = [&](int k) {
      return Length::of(span_mm(2.54, 40, k, alpha) - kThinnedMm, unit::millimetre);
    };
    const auto hint = pressure_angle_hint(module, span(4), span(5)).value();
    EXPECT_NEAR(hint.measured.in(unit::degree), degrees, 1e-9);
    EXPECT_NEAR(hint.nearest.in(unit::degree), degrees, 1e-9);
  }
  EXPECT_THAT(refusal(pressure_angle_hint(module, Length(), Length::of(9.0, unit::millimetre))),
              HasSubstr("the spans differ by 9.000 mm"));
  EXPECT_FALSE(pressure_angle_hint(Length(), Length(), Length::of(9.0, unit::millimetre)));
}

TEST(OldGears, EveryStandardGearIsFoundAgain) {
  int gears = 0;
  for (const GearPitch& pitch : gear_pitches()) {
    for (const ToothForm& form : tooth_forms()) {
      const auto made = spur_gear(31, pitch, form);
      if (!made) continue;
      ++gears;
      OldGear old = old_gear(31, across(made->blank));
      old.mate_teeth = 47;
      old.centres = pitch.module() * 39.0;
      old.whole_depth = made->whole_depth;
      old.span = made->span;
      old.span_one_more =
          made->span +
          Length::of(base_pitch_mm(pitch.module().base(), form.pressure_angle.base()), unit::millimetre);
      const auto found = identify_spur_gear(old).value();
      ASSERT_FALSE(found.empty());
      EXPECT_EQ(to_string(found[0].pitch), to_string(pitch));
      EXPECT_EQ(found[0].form.name, form.name);
      EXPECT_LT(found[0].misfit, 1e-9);
    }
  }
  EXPECT_GT(gears, 200);
}

}  // namespace
}  // namespace sparewright::handbook
