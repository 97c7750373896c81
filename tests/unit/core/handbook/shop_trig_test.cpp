#include <cmath>
#include <numbers>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/arcs.hpp"
#include "core/handbook/bolt_circle.hpp"
#include "core/handbook/eccentric_packing.hpp"
#include "core/handbook/over_pins.hpp"
#include "core/handbook/polygons.hpp"
#include "core/handbook/sine_bar.hpp"
#include "core/handbook/taper_turning.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Angle;
using quantity::Coordinate;
using quantity::Diameter;
using quantity::Length;
using testing::HasSubstr;
namespace unit = quantity::unit;

Length mm(double length) {
  return Length::of(length, unit::millimetre);
}
Coordinate at(double mm_from_datum) {
  return Coordinate::of(mm_from_datum, unit::millimetre);
}
double rad(double degrees) {
  return Angle::of(degrees, unit::degree).base();
}

template <class Value>
std::string refusal(const base::Result<Value>& result) {
  return result ? "" : base::report(result.error());
}

TEST(BoltCircle, FiveHolesOnFourInches) {
  const auto holes = bolt_circle({Diameter::of(4, unit::inch), 5, {}, {}, {}}).value();
  ASSERT_EQ(holes.size(), 5U);
  EXPECT_NEAR(holes[0].x.in(unit::inch), 2.0, 1e-12);
  EXPECT_NEAR(holes[1].x.in(unit::inch), 0.6180, 0.00005);
  EXPECT_NEAR(holes[1].y.in(unit::inch), 1.9021, 0.00005);
  const auto from_corner = from_datum(holes, Coordinate::of(-2, unit::inch), Coordinate::of(-2, unit::inch));
  EXPECT_NEAR(from_corner[1].x.in(unit::inch), 2.6180, 0.00005);
  const double chord = std::hypot((holes[2].x - holes[0].x).base(), (holes[2].y - holes[0].y).base());
  EXPECT_NEAR(chord_between_holes(Diameter::of(4, unit::inch), 5, 2).base(), chord, 1e-9);
  EXPECT_NEAR(bolt_circle_for_chord(chord_between_holes(Diameter::of(4, unit::inch), 5), 5)->in(unit::inch),
              4.0, 1e-12);
}

TEST(BoltCircle, TurnedDatumAndGrid) {
  const auto grid = hole_grid({3, 2, mm(10), mm(20), Angle::of(30, unit::degree), at(5), at(7)}).value();
  ASSERT_EQ(grid.size(), 6U);
  EXPECT_NEAR(grid[2].x.base(), 5 + 20 * std::cos(rad(30)), 1e-12);
  EXPECT_NEAR(grid[3].x.base(), 5 - 20 * std::sin(rad(30)), 1e-12);
  const auto seen = from_datum(grid, at(5), at(7), Angle::of(30, unit::degree));
  EXPECT_NEAR(seen[5].x.base(), 20.0, 1e-12);
  EXPECT_NEAR(seen[5].y.base(), 20.0, 1e-12);
}

TEST(BoltCircle, PatternsThatCannotBe) {
  EXPECT_THAT(refusal(bolt_circle({Diameter(), 5, {}, {}, {}})),
              HasSubstr("the diameter of the circle is 0 mm"));
  EXPECT_THAT(refusal(bolt_circle({Diameter::of(4, unit::inch), 0, {}, {}, {}})),
              HasSubstr("1 to 10000 holes"));
  EXPECT_FALSE(bolt_circle_for_chord(mm(-1), 5));
  EXPECT_FALSE(bolt_circle_for_chord(mm(1), 1));
  EXPECT_FALSE(hole_grid({3, 0, mm(10), mm(20), {}, {}, {}}));
  EXPECT_FALSE(hole_grid({30000, 30000, mm(10), mm(20), {}, {}, {}}));
  EXPECT_THAT(refusal(hole_grid({3, 1, mm(0), mm(20), {}, {}, {}})),
              HasSubstr("the distance of the columns"));
  EXPECT_TRUE(hole_grid({1, 1, {}, {}, {}, {}, {}}));
}

TEST(SineBar, SettingsThatCannotBe) {
  const GaugeBlockSet set = find_gauge_blocks("87-piece metric").value();
  EXPECT_THAT(refusal(sine_bar_setting(mm(0), Angle::of(5, unit::degree), set)),
              HasSubstr("the sine bar is 0 mm"));
  EXPECT_THAT(refusal(sine_bar_setting(mm(100), Angle::of(61, unit::degree), set)),
              HasSubstr("the complement"));
  EXPECT_FALSE(sine_bar_setting(mm(100), Angle::of(-1, unit::degree), set));
  EXPECT_FALSE(sine_bar_angle(mm(100), mm(101)));
  EXPECT_FALSE(sine_bar_angle(mm(100), mm(0)));
  EXPECT_NEAR(sine_bar_angle(mm(100), mm(50))->in(unit::degree), 30.0, 1e-9);
}

TEST(TaperTurning, RulesAgreeWithOneAnother) {
  const double taper = taper_of(1.0, 0.5, 12.0);
  EXPECT_NEAR(taper_per_foot(taper), 0.5, 1e-12);
  EXPECT_NEAR(diameter_along_mm(0.5, taper, 12.0), 1.0, 1e-12);
  EXPECT_NEAR(taper_from_angle(angle_to_axis_rad(taper)), taper, 1e-15);
  EXPECT_NEAR(exact_set_over_mm(taper, 10.0), 10.0 * std::sin(angle_to_axis_rad(taper)), 1e-12);
  EXPECT_NEAR(exact_set_over_mm(1.0 / 12, 36.0) / tailstock_set_over_mm(1.0 / 12, 36.0), 1 - 0.0009, 0.00005);
  EXPECT_NEAR(indicator_change_mm(taper, 2.0), 0.5 / 12, 1e-12);
  EXPECT_NEAR(compound_setting(Angle::of(30, unit::degree), CompoundZero::kAlongTheBed).in(unit::degree), 30,
              1e-12);
}

TEST(Arcs, ChordAndHeight) {
  EXPECT_NEAR(radius_from_chord_mm(24.0, 3.0), 25.5,
              1e-12);  // check number derived from the formula in print
  EXPECT_NEAR((radius_from_chord_mm(24.0, 3.001) - 25.5) / 0.001, -7.5, 0.01);
  EXPECT_NEAR(sagitta_mm(25.5, 24.0), 3.0, 1e-12);
  EXPECT_NEAR(chord_from_sagitta_mm(25.5, 3.0), 24.0, 1e-12);
  EXPECT_NEAR(sagitta_mm(1e6, 1.0), 1.25e-7, 1e-17);  // shallow: no digits lost
  EXPECT_NEAR(sagitta_mm(5.0, 10.0), 5.0, 1e-12);     // the whole diameter
  EXPECT_NEAR(keyseat_from_crest_mm(10.0, 12.0, 3.0), 5.0, 1e-12);
  EXPECT_NEAR(over_the_back_mm(10.0, 5.0), 15.0, 1e-12);
  // rolls of 10 beside a radius of 40: their centres 2 sqrt(40 x 5 x 2)... the tangent length between unlike
  // circles
  EXPECT_NEAR(radius_between_rolls_mm(10.0 + 2.0 * 2.0 * std::sqrt(40.0 * 5.0), 10.0), 40.0, 1e-9);
}

TEST(Touches, ThirdOfATurnApart) {
  std::array<Touch, 3> touches;
  for (std::size_t i = 0; i < 3; ++i) {
    const double angle = rad(20.0 + 120.0 * static_cast<double>(i));
    touches.at(i) = {at(7.0 + 9.0 * std::cos(angle)), at(-3.0 + 9.0 * std::sin(angle))};
  }
  const Diameter tip = Diameter::of(2, unit::millimetre);
  const auto hole = circle_from_touches(touches, tip, TouchedSide::kHole).value();
  EXPECT_NEAR(hole.x.base(), 7.0, 1e-9);
  EXPECT_NEAR(hole.y.base(), -3.0, 1e-9);
  EXPECT_NEAR(hole.diameter.base(), 20.0, 1e-9);
  EXPECT_NEAR(hole.centre_per_touch, 4.0 / 3.0, 1e-9);
  EXPECT_NEAR(hole.diameter_per_touch, 2.0, 1e-9);
  EXPECT_NEAR(circle_from_touches(touches, tip, TouchedSide::kBoss)->diameter.base(), 16.0, 1e-9);
}

TEST(Touches, TouchesThatFixNoCircle) {
  const Diameter tip = Diameter::of(2, unit::millimetre);
  const std::array<Touch, 3> line{{{at(0), at(0)}, {at(1), at(1)}, {at(3), at(3)}}};
  EXPECT_EQ(circle_from_touches(line, tip, TouchedSide::kHole).error().code, base::Code::kReadingsTooFew);
  const std::array<Touch, 3> same{{{at(0), at(0)}, {at(0), at(0)}, {at(3), at(3)}}};
  EXPECT_FALSE(circle_from_touches(same, tip, TouchedSide::kHole));
  const std::array<Touch, 3> near{
      {{at(100), at(0)}, {at(100 - 1.25e-5), at(0.05)}, {at(100 - 5e-5), at(0.1)}}};
  EXPECT_THAT(refusal(circle_from_touches(near, tip, TouchedSide::kHole)),
              HasSubstr("a third of a turn apart"));
  const std::array<Touch, 3> small{{{at(0.5), at(0)}, {at(-0.5), at(0)}, {at(0), at(0.5)}}};
  EXPECT_THAT(refusal(circle_from_touches(small, tip, TouchedSide::kBoss)), HasSubstr("less than 1 mm"));
  EXPECT_FALSE(circle_from_touches(small, Diameter::of(-1, unit::millimetre), TouchedSide::kHole));
}

TEST(Polygons, HexagonAndPentagon) {
  EXPECT_NEAR(across_corners_mm(1.0, 6), 1.1547, 0.00005);
  EXPECT_NEAR(across_corners_mm(1.0, 4), std::numbers::sqrt2, 1e-12);
  EXPECT_NEAR(across_flats_mm(across_corners_mm(17.0, 5), 5), 17.0, 1e-12);
  EXPECT_NEAR(flat_width_mm(1.0, 6), 1.0 / std::numbers::sqrt3, 1e-12);
  EXPECT_NEAR(flat_depth_mm(20.0, 17.0), 1.5, 1e-12);
  // a triangle of unit sides: height sqrt(3)/2, inscribed circle 1/sqrt(3) across
  EXPECT_NEAR(flat_to_corner_mm(1.0 / std::numbers::sqrt3, 3), std::numbers::sqrt3 / 2.0, 1e-12);
}

// Check numbers derived beside the formulas; no printed example was found.
TEST(OverPins, Dovetails) {
  EXPECT_NEAR(male_dovetail_over_pins_mm(2.0, 0.5, rad(60)), 3.3660, 0.00005);
  EXPECT_NEAR(female_dovetail_between_pins_mm(3.0, 0.5, rad(60)), 1.6340, 0.00005);
  EXPECT_NEAR(male_dovetail_narrow_mm(3.36602540378, 0.5, rad(60)), 2.0, 1e-9);
  EXPECT_NEAR(female_dovetail_wide_mm(1.63397459622, 0.5, rad(60)), 3.0, 1e-9);
  EXPECT_NEAR(dovetail_widening_mm(10.0, rad(45)), 20.0, 1e-12);
}

TEST(OverPins, VeesAndBalls) {
  // a 10 mm pin in a 90 degree vee of 10 mm mouth: apex 5 below, centre 5 sqrt(2) over the apex
  EXPECT_NEAR(pin_over_vee_mm(10.0, 10.0, rad(90)), 5.0 * std::numbers::sqrt2, 1e-12);
  EXPECT_NEAR(vee_mouth_mm(5.0 * std::numbers::sqrt2, 10.0, rad(90)), 10.0, 1e-12);
  const double large = pin_over_vee_mm(20.0, 16.0, rad(60));
  const double small = pin_over_vee_mm(20.0, 10.0, rad(60));
  EXPECT_NEAR(vee_angle_rad(16.0, 10.0, large, small), rad(60), 1e-12);
  // balls of 40 and 32 in a ring: the large one stands 8 over the face, the small one's top 76 under it
  EXPECT_NEAR(taper_ring_angle_rad(40.0, 32.0, 8.0, -76.0), rad(5.732), 1e-5);
  EXPECT_NEAR(ball_over_hole_mm(10.0, 8.0), 8.0, 1e-12);  // 3, 4, 5
  EXPECT_NEAR(hole_under_ball_mm(10.0, 8.0), 8.0, 1e-12);
  EXPECT_NEAR(centres_from_outside_mm(60.0, 10.0, 14.0), 48.0, 1e-12);
  EXPECT_NEAR(centres_from_both_mm(60.0, 36.0), 48.0, 1e-12);
}

TEST(OverPins, Countersinks) {
  EXPECT_NEAR(countersink_travel_mm(10.0, 0.0, rad(90)), 5.0, 1e-12);
  EXPECT_NEAR(countersink_travel_mm(10.0, 4.0, rad(60)), 3.0 * std::numbers::sqrt3, 1e-12);
  EXPECT_NEAR(countersink_diameter_mm(3.0, 4.0, rad(90)), 10.0, 1e-12);
}

TEST(Eccentric, PackingByRuleAndByGeometry) {
  const Diameter work = Diameter::of(50, unit::millimetre);
  const auto wide = eccentric_packing(mm(5), work, mm(10)).value();
  EXPECT_NEAR(wide.packing.base(), 7.5, 1e-12);
  EXPECT_NEAR(wide.narrow.base(), 7.122, 0.0005);
  EXPECT_NEAR(wide.run_out.base(), 10.0, 1e-12);
  const auto narrow = eccentric_packing(mm(5), work, mm(0)).value();
  EXPECT_NEAR(narrow.packing.base(), narrow.narrow.base(), 1e-12);
  EXPECT_NEAR(narrow.by_the_rule.base(), 7.5, 1e-12);
  for (const double jaw : {0.0, 3.0, 6.0, 12.0}) {
    const Length packing = eccentric_packing(mm(7), work, mm(jaw))->packing;
    EXPECT_NEAR(throw_of_packing(packing, work, mm(jaw))->base(), 7.0, 2e-6);
  }
}

TEST(Eccentric, PackingsThatCannotBe) {
  const Diameter work = Diameter::of(50, unit::millimetre);
  EXPECT_THAT(refusal(eccentric_packing(mm(13), work, mm(0))), HasSubstr("up to 12.5 mm"));
  EXPECT_FALSE(eccentric_packing(mm(0), work, mm(0)));
  EXPECT_FALSE(eccentric_packing(mm(5), Diameter(), mm(0)));
  EXPECT_THAT(refusal(eccentric_packing(mm(5), work, mm(-1))), HasSubstr("the width of the jaws"));
  EXPECT_THAT(refusal(throw_of_packing(mm(30), work, mm(0))), HasSubstr("a four-jaw chuck"));
  EXPECT_FALSE(throw_of_packing(mm(0), work, mm(0)));
}

}  // namespace
}  // namespace sparewright::handbook
