#include "core/handbook/press_fits.hpp"

#include <numbers>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
using quantity::Pressure;
using testing::HasSubstr;
namespace unit = quantity::unit;

// A solid 60 mm shaft in a 100 mm hub, 50 mm long, 0.030 mm interference, 210 GPa: 33.6 MPa (own arithmetic;
// a page that prints 36.7 uses another form).
PressFit example() {
  PressFit fit;
  fit.joint = Diameter::of(60, unit::millimetre);
  fit.hub_outside = Diameter::of(100, unit::millimetre);
  fit.length = Length::of(50, unit::millimetre);
  fit.least_interference = Length::of(0.010, unit::millimetre);
  fit.most_interference = Length::of(0.030, unit::millimetre);
  fit.hub = {Pressure::of(210, unit::gigapascal), 0.29, 12.0, Pressure::of(200, unit::megapascal)};
  fit.shaft = fit.hub;
  fit.friction_low = 0.05;
  fit.friction_high = 0.12;
  return fit;
}

TEST(PressFits, SolidShaft) {
  const PressFitAnswer answer = press_fit(example()).value();
  EXPECT_NEAR(answer.most_pressure.in(unit::megapascal), 33.6, 0.05);
  EXPECT_NEAR(answer.least_pressure.in(unit::megapascal), 33.6 / 3, 0.02);
  EXPECT_NEAR(answer.hub_hoop.in(unit::megapascal), 33.6 * 13600.0 / 6400.0, 0.1);
  EXPECT_NEAR(answer.shaft_equivalent.in(unit::megapascal), 33.6, 0.05);
  EXPECT_EQ(answer.hub_yields, false);
  const double area_mm2 = std::numbers::pi * 60 * 50;
  EXPECT_NEAR(answer.holds_at_least.in(unit::newton), 0.05 * area_mm2 * 11.2, 1.0);
  EXPECT_NEAR(answer.pressing_at_most.in(unit::newton), 0.12 * area_mm2 * 33.6, 1.0);
  EXPECT_NEAR(answer.turns_at_least.in(unit::newton_metre), 0.05 * area_mm2 * 11.2 * 0.030, 0.05);
  EXPECT_NEAR(answer.heat_hub_by->in(unit::kelvin), 0.030 / (12e-6 * 60), 1e-9);
}

// Ring of 10, 25 and 50 mm radius, radial interference 0.072 mm, 200 GPa: 189.1 MPa in a textbook (from
// memory).
TEST(PressFits, HollowShaft) {
  PressFit fit = example();
  fit.shaft_bore = Diameter::of(20, unit::millimetre);
  fit.joint = Diameter::of(50, unit::millimetre);
  fit.most_interference = Length::of(2 * 0.072, unit::millimetre);
  fit.hub.modulus = fit.shaft.modulus = Pressure::of(200, unit::gigapascal);
  const PressFitAnswer answer = press_fit(fit).value();
  EXPECT_NEAR(answer.most_pressure.in(unit::megapascal), 189.0, 0.1);
  EXPECT_EQ(answer.hub_yields, true);
  EXPECT_EQ(answer.shaft_yields, true);
}

TEST(PressFits, WhatIsSmoothedHoldsNothing) {
  PressFit fit = example();
  fit.smoothed = Length::of(0.012, unit::millimetre);
  const PressFitAnswer answer = press_fit(fit).value();
  EXPECT_EQ(answer.least_pressure, Pressure());
  EXPECT_EQ(answer.holds_at_least.base(), 0.0);
  EXPECT_NEAR(answer.most_pressure.in(unit::megapascal), 33.6 * 18 / 30, 0.05);
  EXPECT_NEAR(answer.heat_hub_by->in(unit::kelvin), 0.030 / (12e-6 * 60),
              1e-9);  // the parts are still as made
}

TEST(PressFits, OfAFitAndMaterials) {
  const Fit h7s6 = read_fit("60 mm H7/s6").value();
  EXPECT_NEAR(least_interference(h7s6).in(unit::micrometre), 53 - 30, 1e-6);
  EXPECT_NEAR(most_interference(h7s6).in(unit::micrometre), 72, 1e-6);
  const auto steel = elastic_part(find_material("1018 cold drawn")->material);
  ASSERT_TRUE(steel);
  EXPECT_NEAR(steel->modulus.in(unit::gigapascal), 205, 1e-9);
  EXPECT_DOUBLE_EQ(steel->poisson, 0.29);
  EXPECT_EQ(elastic_part(find_material("PTFE")->material).error().code, base::Code::kNotTabled);
}

TEST(PressFits, FrictionByMetalAndAssembly) {
  const auto pressed = press_friction(WorkGroup::kMediumCarbonSteel, PressAssembly::kPressed).value();
  const auto shrunk = press_friction(WorkGroup::kMediumCarbonSteel, PressAssembly::kShrunk).value();
  EXPECT_LT(pressed.low, pressed.high);
  EXPECT_LE(pressed.high, shrunk.low);
  EXPECT_EQ(pressed.source.basis, Basis::kFromMemory);
  EXPECT_TRUE(press_friction(WorkGroup::kGreyIron, PressAssembly::kPressed));
  EXPECT_EQ(press_friction(WorkGroup::kTitanium, PressAssembly::kShrunk).error().code,
            base::Code::kNotTabled);
}

TEST(PressFits, WhatCannotBeIsRefused) {
  const auto refused = [](auto change) {
    PressFit fit = example();
    change(fit);
    const auto answer = press_fit(fit);
    return answer ? std::string() : base::report(answer.error());
  };
  EXPECT_THAT(refused([](PressFit& fit) { fit.joint = {}; }), HasSubstr("the joint's diameter is 0"));
  EXPECT_THAT(refused([](PressFit& fit) { fit.friction_low = 0; }), HasSubstr("the friction is 0"));
  EXPECT_THAT(refused([](PressFit& fit) { fit.hub_outside = fit.joint; }), HasSubstr("and a hub above it"));
  EXPECT_THAT(refused([](PressFit& fit) { fit.shaft_bore = fit.joint; }), HasSubstr("below the joint"));
  EXPECT_THAT(refused([](PressFit& fit) { fit.friction_high = 0.01; }),
              HasSubstr("the low coefficient first"));
  EXPECT_THAT(refused([](PressFit& fit) { fit.most_interference = {}; }),
              HasSubstr("a most interference above zero"));
}

}  // namespace
}  // namespace sparewright::handbook
