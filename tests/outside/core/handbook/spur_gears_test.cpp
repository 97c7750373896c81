// Gear tooth tables, from memory of the page each: the printed digits are what the formulas must give.
#include "core/handbook/spur_gears.hpp"

#include <cmath>
#include <vector>

#include <gtest/gtest.h>

namespace sparewright::handbook {
namespace {

using quantity::Angle;
namespace unit = quantity::unit;

GearPitch pitch_of(GearPitchSystem system, double number) {
  for (const GearPitch& pitch : gear_pitches()) {
    if (pitch.system == system && pitch.number == number) return pitch;
  }
  ADD_FAILURE() << number;
  return {};
}

// Chordal thickness and addendum of 1 DP, the table beside the set of eight cutters (Machinery's Handbook;
// Practical Treatise on Gearing; from memory). The cutter is the one whose smallest gear stands in the row.
// The table is old and was worked with short logarithms: eight of its 24 sizes are one off in the last place;
// none is farther off.
constexpr double kLastPlaceOff = 0.00015;
struct PrintedTooth {
  int teeth;
  double thickness;
  double addendum;
  int cutter;  // 0: none in the set
};
class RememberedChordalTooth : public testing::TestWithParam<PrintedTooth> {};
TEST_P(RememberedChordalTooth, HasThePrintedSizes) {
  const PrintedTooth& row = GetParam();
  const SpurGear gear = spur_gear(row.teeth, pitch_of(GearPitchSystem::kDiametralPitch, 1),
                                  find_tooth_form("14-1/2 deg full depth").value())
                            .value();
  EXPECT_NEAR(gear.chordal_thickness.in(unit::inch), row.thickness, kLastPlaceOff);
  EXPECT_NEAR(gear.chordal_addendum.in(unit::inch), row.addendum, kLastPlaceOff);
  EXPECT_EQ(gear.cutter ? gear.cutter->number : 0, row.cutter);
  if (gear.cutter) {
    EXPECT_EQ(gear.cutter->from_teeth, row.teeth);
  }
}
const std::vector<PrintedTooth> kOneDp{
    {8, 1.5607, 1.0769, 0},  {9, 1.5628, 1.0684, 0},  {10, 1.5643, 1.0616, 0}, {11, 1.5654, 1.0559, 0},
    {12, 1.5663, 1.0514, 8}, {14, 1.5675, 1.0440, 7}, {17, 1.5686, 1.0362, 6}, {21, 1.5694, 1.0294, 5},
    {26, 1.5698, 1.0237, 4}, {35, 1.5702, 1.0176, 3}, {55, 1.5706, 1.0112, 2}, {135, 1.5707, 1.0047, 1}};
INSTANTIATE_TEST_SUITE_P(RememberedOneDp, RememberedChordalTooth, testing::ValuesIn(kOneDp));
TEST(RememberedChordalTable, AgreesToTheLastPlaceBut) {
  int same = 0;
  for (const PrintedTooth& row : kOneDp) {
    same += std::abs(chordal_thickness_mm(1.0, row.teeth) - row.thickness) < 0.00005 ? 1 : 0;
    same += std::abs(chordal_addendum_mm(1.0, row.teeth, 1.0) - row.addendum) < 0.00005 ? 1 : 0;
  }
  EXPECT_EQ(same, 24 - 8);
}

// Span over teeth of module 1 and 20 degrees, the table of gear handbooks (from memory): teeth, spanned, mm.
struct PrintedSpan {
  int teeth;
  int spanned;
  double span_mm;
};
class RememberedSpan : public testing::TestWithParam<PrintedSpan> {};
TEST_P(RememberedSpan, IsThePrintedOne) {
  const PrintedSpan& row = GetParam();
  const SpurGear gear =
      spur_gear(row.teeth, pitch_of(GearPitchSystem::kModule, 1), find_tooth_form("20 deg metric").value())
          .value();
  EXPECT_EQ(gear.spanned, row.spanned);
  EXPECT_NEAR(gear.span.in(unit::millimetre), row.span_mm, 0.000051);
}
INSTANTIATE_TEST_SUITE_P(
    OutsideModuleOne, RememberedSpan,
    testing::Values(PrintedSpan{12, 2, 4.5963}, PrintedSpan{15, 2, 4.6383}, PrintedSpan{17, 2, 4.6663},
                    PrintedSpan{18, 3, 7.6324}, PrintedSpan{20, 3, 7.6604}, PrintedSpan{25, 3, 7.7305},
                    PrintedSpan{26, 3, 7.7445}, PrintedSpan{27, 4, 10.7106}, PrintedSpan{30, 4, 10.7526},
                    PrintedSpan{36, 5, 13.7888}, PrintedSpan{40, 5, 13.8448}, PrintedSpan{45, 6, 16.8670},
                    PrintedSpan{50, 6, 16.9370}, PrintedSpan{60, 7, 20.0292}, PrintedSpan{72, 9, 26.1015}));

// Involute functions, any gear handbook (from memory).
struct PrintedInvolute {
  double degrees;
  double involute;
};
class RememberedInvolute : public testing::TestWithParam<PrintedInvolute> {};
TEST_P(RememberedInvolute, IsThePrintedOne) {
  const double angle = Angle::of(GetParam().degrees, unit::degree).base();
  EXPECT_NEAR(involute(angle), GetParam().involute, 0.000000051);
}
INSTANTIATE_TEST_SUITE_P(RememberedFunctions, RememberedInvolute,
                         testing::Values(PrintedInvolute{14.5, 0.0055448}, PrintedInvolute{20, 0.0149044},
                                         PrintedInvolute{25, 0.0299753}, PrintedInvolute{30, 0.0537515}));

}  // namespace
}  // namespace sparewright::handbook
