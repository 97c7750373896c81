// Worked examples in print: sine bars, stacks of blocks, chords, tapers, disks, grooves, keyseats.
#include <array>
#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "core/handbook/arcs.hpp"
#include "core/handbook/bolt_circle.hpp"
#include "core/handbook/gauge_blocks.hpp"
#include "core/handbook/over_pins.hpp"
#include "core/handbook/rotary_table.hpp"
#include "core/handbook/sine_bar.hpp"
#include "core/handbook/taper_turning.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Angle;
using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

// What was printed with three or four decimals.
constexpr double kThirdPlace = 0.00051;
constexpr double kFourthPlace = 0.000051;

double rad(double degrees) {
  return Angle::of(degrees, unit::degree).base();
}

// A 5 in sine bar: globalspec.com/reference/63915 (34 deg 25'), higherprecision.com (27), shopdawg.com (18).
struct PrintedStack {
  int degrees;
  int minutes;
  double stack_in;
};
class OutsideSineBar : public testing::TestWithParam<PrintedStack> {};
TEST_P(OutsideSineBar, HasThePrintedStack) {
  const PrintedStack& row = GetParam();
  const Length bar = Length::of(5, unit::inch);
  const auto setting = sine_bar_setting(bar, angle_of({false, row.degrees, row.minutes, 0.0}),
                                        find_gauge_blocks("81-piece inch").value())
                           .value();
  EXPECT_NEAR(setting.stack.in(unit::inch), row.stack_in, kThirdPlace);
  EXPECT_LE(std::abs(setting.blocks.error.in(unit::inch)), kFourthPlace);
  EXPECT_LE(std::abs(setting.error.in(unit::arc_second)), 3.0);
  EXPECT_NEAR(sine_bar_angle(bar, setting.blocks.length)->base(), setting.angle.base(), 1e-12);
}
INSTANTIATE_TEST_SUITE_P(OutsideFiveInch, OutsideSineBar,
                         testing::Values(PrintedStack{34, 25, 2.826}, PrintedStack{27, 0, 2.270},
                                         PrintedStack{18, 0, 1.545}));

// Worked stacks. The metrology institute's (npl.co.uk, 58.345 = 1.005 + 1.04 + 1.30 + 5 + 50) takes five
// blocks where four do: 1.005 + 1.34 + 6 + 50. The maker's (starrett-webber.com, 3.9762 = 0.1002 + 0.126 +
// 0.75 + 3) has the fewest.
TEST(OutsideStackOf112, FourBlocksWhereFiveArePrinted) {
  const auto stacks =
      gauge_stacks(find_gauge_blocks("112-piece metric").value(), Length::of(58.345, unit::millimetre));
  EXPECT_TRUE(stacks->at(0).exact());
  EXPECT_EQ(stacks->at(0).blocks.size(), 4U);
}
TEST(OutsideStackOf81, AsManyBlocksAsPrinted) {
  const auto stacks =
      gauge_stacks(find_gauge_blocks("81-piece inch").value(), Length::of(3.9762, unit::inch), {}, 1000);
  EXPECT_TRUE(stacks->at(0).exact());
  EXPECT_EQ(stacks->at(0).blocks.size(), 4U);
  bool printed = false;
  for (const GaugeStack& stack : *stacks) {
    constexpr std::array kPrinted{3.0, 0.75, 0.126, 0.1002};
    bool same = true;
    for (std::size_t i = 0; i < kPrinted.size(); ++i)
      same = same && std::abs(stack.blocks.at(i).in(unit::inch)-kPrinted.at(i)) < 1e-9;
    printed = printed || same;
  }
  EXPECT_TRUE(printed);
}

// shopswarf.orcon.net.nz/spacing: factor for 5 holes. wyzant.com 1741: 12 holes 3.75 apart, radius 7.244.
TEST(OutsideChordFactor, OfFiveHoles) {
  EXPECT_NEAR(chord_between_holes(Diameter::of(1, unit::inch), 5).in(unit::inch), 0.5878, kFourthPlace);
}
TEST(OutsideChordCircle, OfTwelveHoles) {
  EXPECT_NEAR(bolt_circle_for_chord(Length::of(3.75, unit::inch), 12)->in(unit::inch) / 2.0, 7.244,
              kThirdPlace);
}

// Set-over of the tailstock: enginemechanics.tpub.com 14345 p. 168; bitlit.ru 614 (1 in per foot on 3 ft).
struct PrintedSetOver {
  double per_foot;
  double length_in;
  double set_over_in;
};
class OutsideSetOver : public testing::TestWithParam<PrintedSetOver> {};
TEST_P(OutsideSetOver, IsThePrintedOne) {
  const PrintedSetOver& row = GetParam();
  EXPECT_NEAR(tailstock_set_over_mm(row.per_foot / 12.0, row.length_in), row.set_over_in, 1e-12);
  EXPECT_LT(exact_set_over_mm(row.per_foot / 12.0, row.length_in), row.set_over_in);
}
INSTANTIATE_TEST_SUITE_P(OutsideManuals, OutsideSetOver,
                         testing::Values(PrintedSetOver{12.0 * (3 - 2) / 12, 12, 0.5},
                                         PrintedSetOver{1, 6, 0.25}, PrintedSetOver{1, 36, 1.5}));

// Compound slide, zero square to the bed: Turning and Boring.
TEST(OutsideCompoundSlide, NinetyIncluded) {
  const auto setting = compound_setting(Angle::of(45, unit::degree), CompoundZero::kSquareToTheBed);
  EXPECT_NEAR(setting.in(unit::degree), 45.0, 1e-12);
}
TEST(OutsideCompoundSlide, ThirtyToTheAxis) {
  const auto setting = compound_setting(Angle::of(30, unit::degree), CompoundZero::kSquareToTheBed);
  EXPECT_NEAR(setting.in(unit::degree), 60.0, 1e-12);
}

// forum.linuxcnc.org 43183: 7/24; littlemachineshop.com: Morse 0.
TEST(OutsideAngleToAxis, SevenIn24) {
  EXPECT_NEAR(Angle::from_base(angle_to_axis_rad(7.0 / 24.0)).in(unit::degree), 8.2971, kFourthPlace);
}
TEST(OutsideAngleToAxis, Morse0) {
  EXPECT_NEAR(Angle::from_base(angle_to_axis_rad(0.6246 / 12.0)).in(unit::degree), 1.4908, kFourthPlace);
}

// Machinery's Handbook 31st ed., p. 701 (online.flippingbook.com/view/954192180/791): two disks.
TEST(OutsideDisks, ThreeQuartersPerFoot) {
  EXPECT_NEAR(disks_for_angle_mm(1.5, 1.25, 2.0 * angle_to_axis_rad(0.75 / 12.0)), 4.002, kThirdPlace);
}
TEST(OutsideDisks, TwentyDegrees) {
  EXPECT_NEAR(disks_for_angle_mm(3.0, 1.0, rad(20)), 5.759, kThirdPlace);
}
TEST(OutsideDisks, TaperOnTheCentreLine) {
  const double half = angle_of_disks_rad(1.5, 1.0, 5.0) / 2.0;
  EXPECT_NEAR(taper_per_foot(taper_from_angle(half)), 1.2015, kFourthPlace);
}
TEST(OutsideDisks, TaperSquareToOneSide) {
  EXPECT_NEAR(12.0 * std::tan(angle_of_disks_rad(3.0, 2.0, 5.0)), 2.4367, kFourthPlace);
}
TEST(RememberedDisks, CentresForATaperSquareToOneSide) {  // the answer is from memory
  EXPECT_NEAR(disks_for_angle_mm(5.0, 2.0, std::atan(6.9 / 12.0)), 5.815, kThirdPlace);
}

// The same, p. 703: groove over two pins.
TEST(OutsideGroove, OverTwoPins) {
  EXPECT_NEAR(over_two_pins_mm(1.824, 1.0, rad(45), rad(35)), 4.374, kThirdPlace);
}

// Machinery's Handbook 31st ed., keys, table 2: 1 in shaft, 1/4 in key: 0.859 from the seat over the back,
// 1.114 over the keyway of the hub with 0.005 to spare.
TEST(OutsideKeyseat, OverTheBack) {
  const double from_crest = keyseat_from_crest_mm(0.5, 0.25, 0.125);
  EXPECT_NEAR(over_the_back_mm(0.5, from_crest), 0.859, kThirdPlace);
}
TEST(OutsideKeyseat, AcrossTheHub) {
  EXPECT_NEAR(1.0 - sagitta_mm(0.5, 0.25) + 0.125 + 0.005, 1.114, kThirdPlace);
}

}  // namespace
}  // namespace sparewright::handbook
