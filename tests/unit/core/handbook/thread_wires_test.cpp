#include "core/handbook/thread_wires.hpp"

#include <array>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/thread_designation.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
using testing::HasSubstr;
namespace unit = quantity::unit;

constexpr std::array kThreads{"1/4-20 UNC", "#4-40 UNC",         "M10x1.5", "1/2-12 BSW", "2 BA",
                              "1-5 ACME",   "1-10 ACME 2 START", "Tr20x4",  "G1/2",       "1/4-26 BSC"};

ThreadShape shape(std::string_view text) {
  return shape_of(read_thread(text).value());
}

TEST(ThreadWires, WhatIsMeasuredGivesThePitchDiameterBack) {
  for (const char* text : kThreads) {
    const ThreadShape thread = shape(text);
    const WireRange range = wires_for(thread);
    EXPECT_LT(range.least, range.best) << text;
    EXPECT_LT(range.best, range.most) << text;
    for (const double share : {0.0, 0.3, 1.0}) {
      const Diameter wire =
          Diameter::from_base(range.least.base() + share * (range.most - range.least).base());
      const auto over = over_three_wires(thread, thread.pitch_diameter, wire);
      ASSERT_TRUE(over) << text;
      EXPECT_GT(over->over.base(), thread.major.base() - 1e-5) << text << ": the wires stand out";
      const auto back = pitch_diameter_from_three_wires(thread, over->over, wire).value();
      EXPECT_NEAR(back.base(), thread.pitch_diameter.base(), 1e-8) << text;
      const auto one = over_one_wire(thread, thread.pitch_diameter, wire, thread.major).value();
      const auto from_one = pitch_diameter_from_one_wire(thread, one.over, wire, thread.major).value();
      EXPECT_NEAR(from_one.base(), thread.pitch_diameter.base(), 1e-8) << text;
    }
    const Diameter ball = balls_for(thread).best;
    const auto between = between_balls(thread, thread.pitch_diameter, ball).value();
    EXPECT_LT(between.over, across(thread.minor)) << text << ": the balls stand into the bore";
    EXPECT_NEAR(pitch_diameter_from_balls(thread, between.over, ball)->base(), thread.pitch_diameter.base(),
                1e-9);
  }
}

TEST(ThreadWires, TheBestWireShowsNoErrorOfTheFlankAngle) {
  const ThreadShape thread = shape("1/2-13 UNC");
  const double best = best_wire_mm(thread.pitch.base(), 0.5235987755982988);
  const auto over = [&](double half, double wire) {
    return over_three_wires_mm(thread.pitch_diameter.base(), thread.pitch.base(), 0.0, half, wire);
  };
  constexpr double kOff = 0.001;  // of the half angle, in radians
  const double at_best = std::abs(over(0.5235987755982988 + kOff, best) - over(0.5235987755982988, best));
  const double at_large =
      std::abs(over(0.5235987755982988 + kOff, 1.5 * best) - over(0.5235987755982988, 1.5 * best));
  EXPECT_LT(at_best, 0.02 * at_large);
}

TEST(ThreadWires, TheNearestToTheBestIsChosenFromASet) {
  EXPECT_DOUBLE_EQ(choose_wire(shape("1/2-13 UNC"), usual_wires())->in(unit::inch), 0.045);
  EXPECT_DOUBLE_EQ(choose_wire(shape("1/4-20 UNC"), usual_wires())->in(unit::inch), 0.029);
  const std::array thick{Diameter::of(0.150, unit::inch)};
  const auto none = choose_wire(shape("1/4-20 UNC"), thick);
  ASSERT_FALSE(none);
  EXPECT_THAT(base::report(none.error()),
              HasSubstr("wires of 0.0253 in (0.642 mm) to 0.0505 in (1.283 mm), best 0.0289 in"));
  EXPECT_FALSE(choose_wire(shape("1/4-20 UNC"), {}));
}

TEST(ThreadWires, BadInput) {
  const ThreadShape thread = shape("1/4-20 UNC");
  const Diameter best = wires_for(thread).best;
  EXPECT_EQ(over_three_wires(thread, Diameter(), best).error().code, base::Code::kSizeNotPositive);
  EXPECT_FALSE(over_three_wires(thread, thread.pitch_diameter, Diameter::of(0.02, unit::inch)))
      << "lies below the crest";
  EXPECT_FALSE(over_three_wires(thread, thread.pitch_diameter, Diameter::of(0.06, unit::inch)))
      << "rides on the crest";
  EXPECT_EQ(pitch_diameter_from_three_wires(thread, Length::of(0.01, unit::inch), best).error().code,
            base::Code::kReadingsDisagree);
  EXPECT_FALSE(pitch_diameter_from_three_wires(thread, Length(), best));
  EXPECT_FALSE(over_one_wire(thread, thread.pitch_diameter, best, Diameter()));
  EXPECT_FALSE(between_balls(thread, thread.pitch_diameter, Diameter::of(0.06, unit::inch)));
  EXPECT_THAT(base::report(over_three_wires(shape("1/2 NPT"), Diameter::of(0.7, unit::inch), best).error()),
              HasSubstr("parallel threads"));
}

}  // namespace
}  // namespace sparewright::handbook
