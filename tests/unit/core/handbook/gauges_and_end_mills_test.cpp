#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/handbook/end_mills.hpp"
#include "core/handbook/sheet_gauges.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Length;
using testing::HasSubstr;
namespace unit = quantity::unit;

double inches(GaugeSystem system, const char* number) {
  return gauge_thickness(system, number)->thickness.in(unit::inch);
}

TEST(SheetGauges, AmericanWire) {
  constexpr auto kAwg = GaugeSystem::kAmericanWire;
  EXPECT_NEAR(inches(kAwg, "4/0"), 0.4600, 5e-5);
  EXPECT_NEAR(inches(kAwg, "0000"), 0.4600, 5e-5);
  EXPECT_NEAR(inches(kAwg, "0"), 0.3249, 5e-5);
  EXPECT_NEAR(inches(kAwg, "10"), 0.1019, 5e-5);
  EXPECT_NEAR(inches(kAwg, "18"), 0.0403, 5e-5);
  EXPECT_NEAR(inches(kAwg, "36"), 0.0050, 1e-12);
}

TEST(SheetGauges, SteelSheet) {
  constexpr auto kSteel = GaugeSystem::kManufacturersStandard;
  EXPECT_NEAR(inches(kSteel, "3"), 0.2391, 5e-5);
  EXPECT_NEAR(inches(kSteel, "10"), 0.1345, 5e-5);
  EXPECT_NEAR(inches(kSteel, "16"), 0.0598, 5e-5);
  EXPECT_NEAR(inches(kSteel, "20"), 0.0359, 5e-5);
  EXPECT_NEAR(inches(kSteel, "30"), 0.0120, 5e-5);
}

TEST(SheetGauges, ThicknessOfASheetAtHand) {
  const auto near = nearest_gauge(GaugeSystem::kManufacturersStandard, Length::of(0.060, unit::inch)).value();
  EXPECT_EQ(near.gauge.number, "16");
  EXPECT_NEAR(near.off.in(unit::thou), 0.22, 0.01);
  EXPECT_EQ(nearest_gauge(GaugeSystem::kAmericanWire, Length::of(0.051, unit::inch))->gauge.number, "16");
  EXPECT_EQ(nearest_gauge(GaugeSystem::kAmericanWire, Length()).error().code, base::Code::kSizeNotPositive);
}

TEST(SheetGauges, NumbersThatAreNone) {
  for (const char* number : {"", "41", "5/0", "00000", "-1", "x"})
    EXPECT_EQ(gauge_thickness(GaugeSystem::kAmericanWire, number).error().code, base::Code::kNameUnknown)
        << number;
  EXPECT_THAT(base::report(gauge_thickness(GaugeSystem::kManufacturersStandard, "2").error()),
              HasSubstr("3 to 30"));
}

TEST(EndMills, ByDiameter) {
  const auto half = end_mill(quantity::Diameter::of(0.5, unit::inch)).value();
  EXPECT_NEAR(half.shank.in(unit::inch), 0.5, 1e-9);
  EXPECT_EQ(half.source.basis, Basis::kFromMemory);
  for (const EndMill& one : end_mills()) {
    EXPECT_LE(one.flute_of_two, one.flute_of_four);
    EXPECT_LT(one.flute_of_four, one.overall);
    EXPECT_LE(one.diameter, one.shank);
  }
  EXPECT_EQ(end_mill(quantity::Diameter::of(0.4, unit::inch)).error().code, base::Code::kNotTabled);
}

}  // namespace
}  // namespace sparewright::handbook
