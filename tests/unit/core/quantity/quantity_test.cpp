#include "core/quantity/quantity.hpp"

#include <numbers>

#include <gtest/gtest.h>

namespace sparewright::quantity {
namespace {

// A few roundings of a double, relative.
constexpr double kRoundings = 4 * 2.220446049250313e-16;

TEST(Quantity, IsReadInAnyUnitOfItsKind) {
  const Length l = Length::of(1.375, unit::inch);
  EXPECT_EQ(l.in(unit::millimetre), 34.925);
  EXPECT_DOUBLE_EQ(l.in(unit::thou), 1375.0);
  EXPECT_EQ(l.base(), 34.925);
  EXPECT_EQ(Length::from_base(34.925), l);
  EXPECT_EQ(Length{}.base(), 0.0);
}

TEST(Quantity, IsOrdered) {
  EXPECT_LT(Length::of(1.0, unit::millimetre), Length::of(1.0, unit::inch));
  EXPECT_GE(Diameter::of(0.5, unit::inch), Diameter::of(12.7, unit::millimetre));
}

TEST(Quantity, PlainOnesAddAndScale) {
  const Length a = Length::of(2.0, unit::millimetre);
  const Length b = Length::of(0.5, unit::millimetre);
  EXPECT_EQ((a + b).base(), 2.5);
  EXPECT_EQ((a - b).base(), 1.5);
  EXPECT_EQ((-a).base(), -2.0);
  EXPECT_EQ((a * 3.0).base(), 6.0);
  EXPECT_EQ((3.0 * a).base(), 6.0);
  EXPECT_EQ((a / 4.0).base(), 0.5);
  EXPECT_EQ(a / b, 4.0);
}

TEST(Quantity, DiametersAndRadiiMixByName) {
  const Diameter d = Diameter::of(0.750, unit::inch);
  const Radius r = Radius::of(0.125, unit::inch);
  const Length l = Length::of(2.0, unit::inch);
  EXPECT_EQ(half(d), Radius::of(0.375, unit::inch));
  EXPECT_EQ(twice(r), Diameter::of(0.250, unit::inch));
  EXPECT_EQ(across(d).base(), 19.05);
  EXPECT_EQ(reach(r).base(), 3.175);
  EXPECT_EQ(as_diameter(l).base(), 50.8);
  EXPECT_EQ(as_radius(l).base(), 50.8);
  EXPECT_NEAR((l + d).in(unit::inch), 2.75, 2.75 * kRoundings);
  EXPECT_NEAR((l - d).in(unit::inch), 1.25, 1.25 * kRoundings);
  EXPECT_NEAR((l + r).in(unit::inch), 2.125, 2.125 * kRoundings);
  EXPECT_NEAR((l - r).in(unit::inch), 1.875, 1.875 * kRoundings);
  EXPECT_EQ((d + d).base(), 38.1);
  EXPECT_EQ((d - d).base(), 0.0);
  EXPECT_EQ((r + r).base(), 6.35);
  EXPECT_EQ((r - r).base(), 0.0);
}

TEST(Quantity, CoordinatesArePoints) {
  const Coordinate from = Coordinate::of(1.0, unit::millimetre);
  const Coordinate to = Coordinate::of(4.5, unit::millimetre);
  EXPECT_EQ((to - from).base(), 3.5);
  EXPECT_EQ(from + (to - from), to);
  EXPECT_EQ(to - (to - from), from);
  EXPECT_EQ((from + Radius::of(2.0, unit::millimetre)).base(), 3.0);
  EXPECT_EQ((from - Radius::of(2.0, unit::millimetre)).base(), -1.0);
}

TEST(Quantity, TemperaturesArePointsToo) {
  const Temperature room = Temperature::of(68.0, unit::degree_fahrenheit);
  EXPECT_NEAR(room.in(unit::degree_celsius), 20.0, 293.15 * kRoundings);
  const TemperatureDifference rise = Temperature::of(120.0, unit::degree_celsius) - room;
  EXPECT_NEAR(rise.in(unit::celsius_difference), 100.0, 393.15 * kRoundings);
  EXPECT_NEAR(rise.in(unit::fahrenheit_difference), 180.0, 2 * 393.15 * kRoundings);
}

TEST(Quantity, ProductsCarryTheirUnits) {
  const Area a = Length::of(2.0, unit::inch) * Length::of(3.0, unit::inch);
  EXPECT_NEAR(a.in(unit::square_inch), 6.0, 6.0 * kRoundings);
  const Force f = Pressure::of(30'000.0, unit::psi) * a;
  EXPECT_NEAR(f.in(unit::pound_force), 180'000.0, 180'000.0 * 4 * kRoundings);
  const Torque t = Force::of(10.0, unit::newton) * Length::of(0.5, unit::metre);
  EXPECT_NEAR(t.in(unit::newton_metre), 5.0, 5.0 * kRoundings);
  const FeedRate rate = FeedPerTurn::of(0.003, unit::inch_per_turn) * RotationalSpeed::of(500.0, unit::rpm);
  EXPECT_NEAR(rate.in(unit::inch_per_minute), 1.5, 1.5 * 4 * kRoundings);
}

// v = pi d n, worked by hand: 1 in at 382 rpm is pi * 382 / 12 ft/min.
TEST(SurfaceSpeed, FollowsFromDiameterAndRpm) {
  const Diameter inch = Diameter::of(1.0, unit::inch);
  const Speed v = surface_speed(inch, RotationalSpeed::of(382.0, unit::rpm));
  const double by_hand = std::numbers::pi * 382.0 / 12.0;
  EXPECT_NEAR(v.in(unit::foot_per_minute), by_hand, by_hand * 4 * kRoundings);
  EXPECT_NEAR(spindle_speed(v, inch).in(unit::rpm), 382.0, 382.0 * 4 * kRoundings);
}

// P = T w, worked by hand: 5252 rpm is where hp and ft lbf meet (33000 / 2 pi = 5252.113...).
TEST(PowerOfTorque, FollowsFromRpm) {
  const double meeting_rpm = 33'000.0 / (2.0 * std::numbers::pi);
  const Power p = power(Torque::of(7.0, unit::foot_pound), RotationalSpeed::of(meeting_rpm, unit::rpm));
  EXPECT_NEAR(p.in(unit::horsepower), 7.0, 7.0 * 8 * kRoundings);
}

}  // namespace
}  // namespace sparewright::quantity
