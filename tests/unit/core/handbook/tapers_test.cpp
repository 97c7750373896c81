#include "core/handbook/tapers.hpp"

#include <cmath>
#include <string>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/taper_formulas.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
using testing::HasSubstr;
namespace unit = quantity::unit;

Diameter inch(double size) {
  return Diameter::of(size, unit::inch);
}
Length inches(double size) {
  return Length::of(size, unit::inch);
}

TEST(Tapers, AreFoundAsTheyAreCalled) {
  for (const auto& [text, name] :
       {std::pair("MT2", "Morse 2"), std::pair("2MT", "Morse 2"), std::pair("mt 2", "Morse 2"),
        std::pair("Morse 2", "Morse 2"), std::pair("Morse taper No. 2", "Morse 2"),
        std::pair("JT33", "Jacobs 33"), std::pair("Jacobs #6", "Jacobs 6"),
        std::pair("Jacobs 2 short", "Jacobs 2 short"), std::pair("B&S 9", "Brown & Sharpe 9"),
        std::pair("Brown & Sharpe 10", "Brown & Sharpe 10"), std::pair("r8", "R8")}) {
    const auto found = find_taper(text);
    ASSERT_TRUE(found) << text;
    EXPECT_EQ(to_string(*found), name) << text;
  }
  for (const char* text : {"", "MT", "MT9", "Morse", "2", "B&S", "R9", "mtmt", "#"})
    EXPECT_EQ(find_taper(text).error().code, base::Code::kNameUnknown) << text;
  EXPECT_THAT(base::report(find_taper("Mors 3").error()), HasSubstr("did you mean 'Morse 3'?"));
  for (const Taper& taper : tapers())
    EXPECT_EQ(to_string(find_taper(to_string(taper)).value()), to_string(taper));
}

TEST(Tapers, PinsByNumber) {
  EXPECT_NEAR(find_taper_pin("#4")->large_end.in(unit::inch), 0.25, 1e-9);
  EXPECT_NEAR(find_taper_pin("No. 7")->large_end.in(unit::inch), 0.409, 1e-9);
  EXPECT_NEAR(find_taper_pin("4")->small_end(inches(1.5)).in(unit::inch), 0.25 - 1.5 / 48, 1e-9);
  EXPECT_EQ(find_taper_pin("11").error().code, base::Code::kNameUnknown);
}

// A plug's roller must be tangent to the side: the distance of its centre from the side is its radius.
TEST(Tapers, RollersTouchTheSide) {
  const Taper taper = find_taper("MT3").value();
  const PlugCheck check = check_plug(taper, inch(0.5), inches(2.0)).value();
  const double a = half_angle_rad(taper.ratio());
  for (const auto& [over, height] : {std::pair(check.on_plate, 0.25), std::pair(check.on_blocks, 2.25)}) {
    const double centre = (over.in(unit::inch)-0.5) / 2.0;
    const double side = taper.small_end->in(unit::inch) / 2.0 + height * std::tan(a);
    EXPECT_NEAR((centre - side) * std::cos(a), 0.25, 1e-12);
  }
  EXPECT_NEAR((check.on_blocks - check.on_plate).in(unit::inch), 2.0 * taper.ratio(), 1e-12);
}

TEST(Tapers, APlugIsFoundAgainFromItsRollers) {
  const Taper taper = find_taper("MT2").value();
  const PlugCheck check = check_plug(taper, inch(0.375), inches(1.5)).value();
  const auto found = measured_plug(check.on_plate, check.on_blocks, inches(1.5), inch(0.375)).value();
  EXPECT_NEAR(found.taper_per_foot.in(unit::inch), 0.59941, 1e-9);
  EXPECT_NEAR(found.at_end.in(unit::inch), 0.572, 1e-9);
  const auto near = nearest_tapers(found.taper_per_foot, std::nullopt, 1);
  EXPECT_EQ(to_string(near.front().taper), "Morse 2");
  EXPECT_NEAR(near.front().taper_off.base(), 0.0, 1e-9);
}

TEST(Tapers, BallsTouchTheSocketAndFindItAgain) {
  const Taper taper = find_taper("MT3").value();
  const SocketCheck check = check_socket(taper, inch(0.875), inch(0.8125)).value();
  const double a = half_angle_rad(taper.ratio());
  for (const auto& [depth, ball] :
       {std::pair(check.large_ball, 0.875), std::pair(check.small_ball, 0.8125)}) {
    const double centre = depth.in(unit::inch) + ball / 2.0;
    const double side = taper.large_end->in(unit::inch) / 2.0 - centre * std::tan(a);
    EXPECT_NEAR(side * std::cos(a), ball / 2.0, 1e-12);
  }
  const auto found = measured_socket(inch(0.875), check.large_ball, inch(0.8125), check.small_ball).value();
  EXPECT_NEAR(found.taper_per_foot.in(unit::inch), 0.60235, 1e-9);
  EXPECT_NEAR(found.at_end.in(unit::inch), 0.938, 1e-9);
  EXPECT_EQ(to_string(nearest_tapers(found.taper_per_foot, found.at_end).front().taper), "Morse 3");
}

// Balls of 40 and 32 mm, tops 8 mm above and 76 mm below the face: centres 80 mm apart, 5.732 deg included.
TEST(Tapers, ABallThatStandsOut) {
  const auto found = measured_socket(Diameter::of(40, unit::millimetre), Length::of(-8, unit::millimetre),
                                     Diameter::of(32, unit::millimetre), Length::of(76, unit::millimetre));
  ASSERT_TRUE(found);
  EXPECT_NEAR(2.0 * found->half_angle.in(unit::degree), 5.732, 5e-4);
}

TEST(Tapers, WhatCannotBeCheckedIsRefused) {
  const Taper taper = find_taper("MT2").value();
  EXPECT_THAT(base::report(check_plug(taper, inch(0.5), inches(3.0)).error()), HasSubstr("lower blocks"));
  EXPECT_EQ(check_plug(taper, inch(0), inches(1.0)).error().code, base::Code::kSizeNotPositive);
  EXPECT_EQ(check_plug(find_taper("R8").value(), inch(0.5), inches(1.0)).error().code,
            base::Code::kOutsideDomain);
  EXPECT_EQ(check_socket(taper, inch(0.75), inch(0.6)).error().code, base::Code::kOutsideDomain);
  EXPECT_EQ(check_socket(taper, inch(0.6), inch(0.3)).error().code, base::Code::kOutsideDomain);
  EXPECT_EQ(check_socket(taper, inch(0.6), inch(0.65)).error().code, base::Code::kOutsideDomain);
  EXPECT_EQ(check_socket(taper, inch(0.65), inch(-0.6)).error().code, base::Code::kSizeNotPositive);
  EXPECT_FALSE(measured_plug(inches(2.0), inches(1.9), inches(1.0), inch(0.5)));
  EXPECT_FALSE(measured_plug(inches(0.6), inches(0.7), inches(1.0), inch(0.5)));
  EXPECT_FALSE(measured_socket(inch(0.6), inches(1.0), inch(0.5), inches(1.0)));
  EXPECT_FALSE(measured_socket(inch(0.5), inches(1.0), inch(0.6), inches(2.0)));
}

}  // namespace
}  // namespace sparewright::handbook
