#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/compound_indexing.hpp"
#include "core/handbook/differential_indexing.hpp"
#include "core/handbook/plain_indexing.hpp"
#include "core/handbook/rotary_table.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Angle;
using testing::HasSubstr;
namespace unit = quantity::unit;

DividingHead three_plate_head() {
  return {40, find_index_plates("three-plate").value().plates};
}

template <class Value>
std::string refusal(const base::Result<Value>& result) {
  return result ? "" : base::report(result.error());
}

TEST(Ratio, IsExactAndReduced) {
  EXPECT_EQ(Ratio::of(6, -4), Ratio::of(-3, 2));
  EXPECT_EQ(Ratio::of(1, 3) + Ratio::of(1, 6), Ratio::of(1, 2));
  EXPECT_EQ(Ratio::of(1, 3) / Ratio::of(-2, 9), Ratio::of(-3, 2));
  EXPECT_LT(Ratio::of(-1, 2), Ratio::of(-1, 3));
  EXPECT_EQ(Ratio::of(-7, 2).floor(), -4);
  EXPECT_EQ(Ratio::of(-8, 2).floor(), -4);
  EXPECT_EQ(Ratio::of(7, 2).nearest_whole(), 4);
  EXPECT_EQ(Ratio::of(-7, 2).nearest_whole(), -3);
  EXPECT_EQ(ratio_near(25.4 / 13.0, 1e-12), Ratio::of(127, 65));
  EXPECT_EQ(ratio_near(-0.125, 1e-12), Ratio::of(-1, 8));
  EXPECT_EQ(ratio_near(0.0, 1e-12), Ratio());
  EXPECT_EQ(ratio_near(3.0, 1e-12), Ratio::of(3));
}

TEST(PlainIndexing, PartsOfATurn) {
  EXPECT_EQ(part_for_angle(Angle::of(1.0 / 3.0, unit::degree)).value(), Ratio::of(1, 1080));
  EXPECT_EQ(part_for_angle(Angle::of(360.0, unit::degree)).value(), Ratio::of(1));
  const Angle odd = angle_of({false, 34, 25, 17.0});
  EXPECT_EQ(part_for_angle(odd).value(), Ratio::of(34 * 3600 + 25 * 60 + 17, 1296000));
  EXPECT_THAT(refusal(part_for_angle(Angle::of(-3.0, unit::degree))), HasSubstr("'-3 deg'"));
  EXPECT_THAT(refusal(part_for_angle(Angle::of(361.0, unit::degree))), HasSubstr("up to 360 deg"));
  EXPECT_FALSE(part_for_angle(Angle::of(std::nan(""), unit::degree)));
  EXPECT_THAT(refusal(part_for_divisions(1)), HasSubstr("the number of divisions' cannot be '1'"));
  EXPECT_FALSE(part_for_divisions(100001));
}

TEST(PlainIndexing, LargestCircleFirst) {
  const auto settings = plain_indexing(three_plate_head(), Ratio::of(1, 6)).value();
  std::vector<int> circles;
  for (const PlainIndexing& one : settings)
    circles.push_back(one.circle);
  EXPECT_EQ(circles, (std::vector{39, 33, 27, 21, 18, 15}));
  EXPECT_EQ(settings[0].turns, 6);
  EXPECT_EQ(settings[0].holes, 26);
  EXPECT_EQ(settings[0].plate, "plate 3");
}

TEST(PlainIndexing, NearestSaysItsError) {
  // 127 divisions: 40/127 is on no circle. The best is found by trying every hole of every circle.
  const auto settings = plain_indexing(three_plate_head(), Ratio::of(1, 127), 3).value();
  ASSERT_EQ(settings.size(), 3U);
  double best = 1.0;
  const DividingHead head = three_plate_head();
  for (const IndexPlate& plate : head.plates) {
    for (const int circle : plate.circles) {
      for (int holes = 1; holes <= circle; ++holes)
        best = std::min(best, std::abs(holes / 40.0 / circle - 1.0 / 127.0));
    }
  }
  EXPECT_FALSE(settings[0].exact());
  EXPECT_NEAR(std::abs(settings[0].error.in(unit::turn)), best, 1e-15);
}

TEST(PlainIndexing, HeadsThatCannotBe) {
  const Ratio part = Ratio::of(1, 6);
  EXPECT_THAT(refusal(plain_indexing({0, three_plate_head().plates}, part)), HasSubstr("'0:1'"));
  EXPECT_THAT(refusal(plain_indexing({40, {}}, part)), HasSubstr("at least one plate"));
  EXPECT_THAT(refusal(plain_indexing({40, {{"plate 1", {20, 1}}}}, part)), HasSubstr("a circle of plate 1"));
  EXPECT_THAT(refusal(find_index_plates("three plate")), HasSubstr("did you mean 'three-plate'?"));
  EXPECT_EQ(index_plate_sets().size(), 3U);
}

TEST(PlainIndexing, PositionsByTheNearestHole) {
  const auto positions = nearest_hole_positions(three_plate_head(), 127, 49).value();
  ASSERT_EQ(positions.size(), 127U);
  EXPECT_EQ(positions[0].holes, 0);
  for (const IndexPosition& one : positions)
    EXPECT_LE(std::abs(one.error.in(unit::turn)), 0.5 / 40 / 49 + 1e-15);
  EXPECT_THAT(refusal(nearest_hole_positions(three_plate_head(), 127, 50)), HasSubstr("47, 49"));
}

TEST(CompoundIndexing, SpacesWithoutACommonFactor) {
  const auto moves = compound_divisions(three_plate_head(), 106, 12, 1000).value();
  EXPECT_GT(moves.size(), 200U);
  for (const CompoundIndexing& move : moves)
    EXPECT_EQ(move.spaces % 2, 1);
  EXPECT_THAT(refusal(compound_divisions(three_plate_head(), 106, 0)), HasSubstr("1 to 100"));
  EXPECT_FALSE(compound_divisions(three_plate_head(), 0, 1));
}

TEST(CompoundIndexing, OneCircleMakesNoCompound) {
  EXPECT_TRUE(compound_indexing({40, {{"plate", {20}}}}, Ratio::of(1, 7)).value().empty());
  // circles of two plates do not go together
  EXPECT_TRUE(compound_indexing({40, {{"one", {39}}, {"two", {49}}}}, Ratio::of(1, 91)).value().empty());
}

TEST(DifferentialIndexing, ExactFor127) {
  const auto settings = differential_indexing(three_plate_head(), 127, dividing_head_gears()).value();
  ASSERT_FALSE(settings.empty());
  const DifferentialIndexing& best = settings[0];
  EXPECT_TRUE(best.exact());
  EXPECT_EQ(best.gears.gears(), 2U);
  EXPECT_EQ(best.idlers, best.with_crank() ? 1 : 2);
  EXPECT_EQ(best.moved, Ratio::of(1, 127));
}

TEST(DifferentialIndexing, GearsThatCannotBe) {
  EXPECT_THAT(refusal(differential_indexing(three_plate_head(), 127, std::vector{24})),
              HasSubstr("'the set of gears' cannot be 'one gear of 24 teeth'"));
  EXPECT_THAT(refusal(differential_indexing(three_plate_head(), 127, std::vector{24, 3})),
              HasSubstr("8 to 400"));
}

TEST(RotaryTable, DegreesMinutesSecondsCarry) {
  const Angle seventh = Angle::of(360.0 / 7.0, unit::degree);
  EXPECT_EQ(to_string(in_degrees_minutes_seconds(seventh)), "51 deg 25' 43\"");
  EXPECT_EQ(to_string(in_degrees_minutes_seconds(seventh, 2), 2), "51 deg 25' 42.86\"");
  EXPECT_EQ(to_string(in_degrees_minutes_seconds(Angle::of(59.99999 / 60.0, unit::degree))), "1 deg 0' 0\"");
  EXPECT_EQ(to_string(in_degrees_minutes_seconds(Angle::of(-0.5, unit::degree))), "-0 deg 30' 0\"");
  EXPECT_EQ(in_degrees_minutes_seconds(Angle::of(-1e-9, unit::degree)).negative, false);
  EXPECT_NEAR(angle_of(in_degrees_minutes_seconds(seventh, 6)).base(), seventh.base(), 1e-11);
}

TEST(RotaryTable, SevenHolesOn90To1) {
  const RotaryTable table{90, Angle::of(10.0, unit::arc_second)};
  const auto holes = rotary_divisions(table, 7, Angle::of(30.0, unit::degree)).value();
  ASSERT_EQ(holes.size(), 7U);
  EXPECT_EQ(holes[0].turns, 7);  // 30 = 7 x 4 + 2
  EXPECT_NEAR(holes[0].dial.in(unit::degree), 2.0, 1e-12);
  EXPECT_TRUE(holes[0].exact());
  EXPECT_EQ(holes[1].turns, 20);  // 81 deg 25' 42.86": 20 x 4 + 1 deg 25' 40"
  EXPECT_EQ(to_string(in_degrees_minutes_seconds(holes[1].dial)), "1 deg 25' 40\"");
  EXPECT_NEAR(holes[1].error.in(unit::arc_second), 40 - 42.857142857, 1e-6);
  EXPECT_NEAR(holes[6].wanted.in(unit::degree), 30.0 + 360.0 * 6 / 7, 1e-9);
  EXPECT_NEAR(rotary_divisions(table, 4, Angle::of(300.0, unit::degree)).value()[1].wanted.in(unit::degree),
              30.0, 1e-9);
}

TEST(RotaryTable, SettingsThatCannotBe) {
  EXPECT_THAT(refusal(rotary_reading({90, {}}, Angle())), HasSubstr("the mark of the dial"));
  EXPECT_THAT(refusal(rotary_reading({90, Angle::of(5.0, unit::degree)}, Angle())),
              HasSubstr("0.01 arc seconds to 4 deg"));
  EXPECT_THAT(refusal(rotary_reading({0, Angle::of(1.0, unit::degree)}, Angle())), HasSubstr("'0:1'"));
  EXPECT_THAT(refusal(rotary_reading({}, Angle::of(400.0, unit::degree))), HasSubstr("0 to 360 deg"));
  EXPECT_EQ(rotary_reading({}, Angle())->turns, 0);
}

}  // namespace
}  // namespace sparewright::handbook
