#include "core/quantity/display.hpp"

#include <cmath>

#include <gtest/gtest.h>

namespace sparewright::quantity {
namespace {

Length inches(double count) {
  return Length::of(count, unit::inch);
}

TEST(Rounded, TakesHalvesAwayFromZero) {
  EXPECT_EQ(rounded(0.00005, 4), 0.0001);
  EXPECT_EQ(rounded(-0.00005, 4), -0.0001);
  EXPECT_EQ(rounded(0.00015, 4), 0.0002);
  EXPECT_EQ(rounded(1.0005, 3), 1.001);
  EXPECT_EQ(rounded(2.675, 2), 2.68);  // stored a little below the half that was typed
  EXPECT_EQ(rounded(0.5, 0), 1.0);
  EXPECT_EQ(rounded(2.5, 0), 3.0);
}

TEST(Rounded, CountsOnlyAMillionthBelowTheHalfAsTheHalf) {
  EXPECT_EQ(rounded(0.00004999995, 4), 0.0001);
  EXPECT_EQ(rounded(0.000049999, 4), 0.0);
}

TEST(Fixed, PrintsExactlyThePlaces) {
  EXPECT_EQ(fixed(0.625, 4), "0.6250");
  EXPECT_EQ(fixed(15.875, 2), "15.88");
  EXPECT_EQ(fixed(-1.0, 0), "-1");
  EXPECT_EQ(fixed(999.99995, 4), "1000.0000");
}

TEST(Fixed, NeverPrintsMinusZero) {
  EXPECT_EQ(fixed(-0.00001, 4), "0.0000");
  EXPECT_EQ(fixed(-0.0, 2), "0.00");
  EXPECT_EQ(signed_fixed(-0.00001, 4), "+0.0000");
}

TEST(SignedFixed, AlwaysHasASign) {
  EXPECT_EQ(signed_fixed(0.001, 4), "+0.0010");
  EXPECT_EQ(signed_fixed(-0.0005, 4), "-0.0005");
  EXPECT_EQ(signed_fixed(0.0, 4), "+0.0000");
}

TEST(FixedDeathTest, RefusesAFractionsPlaces) {
  EXPECT_DEATH(static_cast<void>(fixed(0.375, -1)), "places");
}

TEST(Nearest64th, IsReduced) {
  EXPECT_EQ(to_string(nearest_64th(inches(1.375))), "1-3/8");
  EXPECT_EQ(to_string(nearest_64th(inches(3.0 / 64))), "3/64");
  EXPECT_EQ(to_string(nearest_64th(inches(2.0))), "2");
  EXPECT_EQ(to_string(nearest_64th(inches(-0.125))), "-1/8");
  EXPECT_EQ(to_string(nearest_64th(inches(0.0))), "0");
  EXPECT_EQ(to_string(nearest_64th(inches(-1.375))), "-1-3/8");
}

TEST(Nearest64th, CarriesIntoTheNextInch) {
  EXPECT_EQ(to_string(nearest_64th(inches(0.9999))), "1");
  EXPECT_EQ(to_string(nearest_64th(inches(-0.9999))), "-1");
  EXPECT_EQ(to_string(nearest_64th(inches(-0.001))), "0");
}

TEST(Nearest64th, TellsItsError) {
  const InchFraction f = nearest_64th(inches(0.376));
  EXPECT_EQ(to_string(f), "3/8");
  EXPECT_NEAR(f.error.in(unit::inch), -0.001, 1e-15);
  EXPECT_EQ(nearest_64th(inches(0.375)).error.base(), 0.0);
}

TEST(Nearest64th, TakesHalvesAwayFromZero) {
  EXPECT_EQ(to_string(nearest_64th(inches(1.0 / 128))), "1/64");
  EXPECT_EQ(to_string(nearest_64th(inches(-1.0 / 128))), "-1/64");
  EXPECT_EQ(to_string(nearest_64th(inches(0.007))), "0");
}

TEST(Shown, PrintsTheUnitOfKindAndSystem) {
  EXPECT_EQ(shown(15.875, Kind::kDiameter, UnitSystem::kInch, 4), "0.6250 in");
  EXPECT_EQ(shown(15.875, Kind::kDiameter, UnitSystem::kMetric, 2), "15.88 mm");
  EXPECT_EQ(shown(RotationalSpeed::of(660, unit::rpm).base(), Kind::kRotationalSpeed, UnitSystem::kInch, 0),
            "660 rpm");
  EXPECT_EQ(shown(Temperature::of(20, unit::degree_celsius).base(), Kind::kTemperature, UnitSystem::kInch, 0),
            "68 degF");
  EXPECT_EQ(shown(3.14159, Kind::kNumber, UnitSystem::kMetric, 2), "3.14");
}

TEST(UsualPlaces, AreThoseOfTheTrade) {
  EXPECT_EQ(usual_places(Kind::kDiameter, UnitSystem::kInch), 4);
  EXPECT_EQ(usual_places(Kind::kDiameter, UnitSystem::kMetric), 3);
  EXPECT_EQ(usual_places(Kind::kRotationalSpeed, UnitSystem::kInch), 0);
  for (int k = 0; k < kKinds; ++k) {
    for (const auto system : {UnitSystem::kInch, UnitSystem::kMetric}) {
      const int places = usual_places(static_cast<Kind>(k), system);
      EXPECT_TRUE(places >= 0 && places <= 6);
    }
  }
}

TEST(ThreeWays, ShowsAllThree) {
  EXPECT_EQ(three_ways(inches(1.375)), "1.3750 in = 1-3/8 = 34.925 mm");
  EXPECT_EQ(three_ways(inches(0.376)), "0.3760 in = 3/8 + 0.0010 = 9.550 mm");
  EXPECT_EQ(three_ways(inches(0.374)), "0.3740 in = 3/8 - 0.0010 = 9.500 mm");
  EXPECT_EQ(three_ways(Length::of(25.0, unit::millimetre)), "0.9843 in = 63/64 - 0.0001 = 25.000 mm");
}

}  // namespace
}  // namespace sparewright::quantity
