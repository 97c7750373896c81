// Every form of number that is accepted.
#include "core/quantity/typed.hpp"

#include <cmath>
#include <numbers>
#include <ostream>

#include <gtest/gtest.h>

#include "core/base/messages.hpp"

namespace sparewright::quantity {
namespace {

constexpr auto kInchJob = UnitSystem::kInch;
constexpr auto kMetricJob = UnitSystem::kMetric;
constexpr std::nullopt_t kNoJob = std::nullopt;
constexpr int kFraction = Typed::kFraction;

struct Accepted {
  std::string text;
  Kind kind;
  std::optional<UnitSystem> job;
  double count;  // in unit
  Unit unit;
  int places;
  bool unit_given;
};

// NOLINTNEXTLINE(readability-identifier-naming): the name GoogleTest looks for
void PrintTo(const Accepted& row, std::ostream* out) {
  *out << name_of(row.kind) << " '" << row.text << "'";
}

class AcceptedNumber : public testing::TestWithParam<Accepted> {};

TEST_P(AcceptedNumber, IsReadAsMeant) {
  const Accepted& row = GetParam();
  const auto read = read_number(row.text, row.kind, row.job);
  ASSERT_TRUE(read) << base::report(read.error());
  EXPECT_EQ(read->base, row.unit.to_base(row.count));
  EXPECT_EQ(read->unit, row.unit);
  EXPECT_EQ(read->places, row.places);
  EXPECT_EQ(read->unit_given, row.unit_given);
  EXPECT_EQ(read->kind, row.kind);
  EXPECT_EQ(read->typed, row.text);
}

const Accepted kLengths[] = {
    {"1.375", Kind::kLength, kInchJob, 1.375, unit::inch, 3, false},
    {"1.375", Kind::kLength, kMetricJob, 1.375, unit::millimetre, 3, false},
    {"1.375 in", Kind::kLength, kNoJob, 1.375, unit::inch, 3, true},
    {"1.375 in", Kind::kLength, kMetricJob, 1.375, unit::inch, 3, true},
    {"1.375in", Kind::kLength, kNoJob, 1.375, unit::inch, 3, true},
    {"1.375in.", Kind::kLength, kNoJob, 1.375, unit::inch, 3, true},
    {"1.375 in.", Kind::kLength, kNoJob, 1.375, unit::inch, 3, true},
    {"1.375 IN", Kind::kLength, kNoJob, 1.375, unit::inch, 3, true},
    {"1.375 inch", Kind::kLength, kNoJob, 1.375, unit::inch, 3, true},
    {"1.375 Inches", Kind::kLength, kNoJob, 1.375, unit::inch, 3, true},
    {"1.375\"", Kind::kLength, kNoJob, 1.375, unit::inch, 3, true},
    {"1.375''", Kind::kLength, kNoJob, 1.375, unit::inch, 3, true},
    {"1.375″", Kind::kLength, kNoJob, 1.375, unit::inch, 3, true},
    {"1.375”", Kind::kLength, kNoJob, 1.375, unit::inch, 3, true},
    {"3/8", Kind::kLength, kNoJob, 0.375, unit::inch, kFraction, false},
    {"3/8", Kind::kLength, kMetricJob, 0.375, unit::inch, kFraction, false},
    {"3/8\"", Kind::kLength, kInchJob, 0.375, unit::inch, kFraction, true},
    {"3/8 in", Kind::kLength, kInchJob, 0.375, unit::inch, kFraction, true},
    {"9/8", Kind::kLength, kInchJob, 1.125, unit::inch, kFraction, false},
    {"0/8", Kind::kLength, kInchJob, 0.0, unit::inch, kFraction, false},
    {"1-3/8", Kind::kLength, kNoJob, 1.375, unit::inch, kFraction, false},
    {"1-3/8", Kind::kLength, kMetricJob, 1.375, unit::inch, kFraction, false},
    {"1 3/8", Kind::kLength, kNoJob, 1.375, unit::inch, kFraction, false},
    {"1 3/8\"", Kind::kLength, kNoJob, 1.375, unit::inch, kFraction, true},
    {"-1-3/8", Kind::kCoordinate, kInchJob, -1.375, unit::inch, kFraction, false},
    {"1/2 mm", Kind::kLength, kInchJob, 0.5, unit::millimetre, kFraction, true},
    {"1/2 m", Kind::kLength, kInchJob, 0.5, unit::metre, kFraction, true},
    {".0005", Kind::kLength, kInchJob, 0.0005, unit::inch, 4, false},
    {"0.0005", Kind::kLength, kInchJob, 0.0005, unit::inch, 4, false},
    {"3.", Kind::kLength, kInchJob, 3.0, unit::inch, 0, false},
    {"34.9 mm", Kind::kLength, kInchJob, 34.9, unit::millimetre, 1, true},
    {"34.9mm", Kind::kLength, kInchJob, 34.9, unit::millimetre, 1, true},
    {"34.9 MM", Kind::kDiameter, kInchJob, 34.9, unit::millimetre, 1, true},
    {"3.49 cm", Kind::kRadius, kNoJob, 3.49, unit::centimetre, 2, true},
    {"1.2 m", Kind::kLength, kNoJob, 1.2, unit::metre, 1, true},
    {"5 thou", Kind::kLength, kMetricJob, 5.0, unit::thou, 0, true},
    {"63 uin", Kind::kLength, kInchJob, 63.0, unit::microinch, 0, true},
    {"25 um", Kind::kLength, kInchJob, 25.0, unit::micrometre, 0, true},
    {"25 µm", Kind::kLength, kInchJob, 25.0, unit::micrometre, 0, true},
    {"25 microns", Kind::kLength, kInchJob, 25.0, unit::micrometre, 0, true},
    {"3'", Kind::kLength, kInchJob, 3.0, unit::foot, 0, true},
    {"3 ft", Kind::kLength, kInchJob, 3.0, unit::foot, 0, true},
    {"3-1/2 ft", Kind::kLength, kInchJob, 3.5, unit::foot, kFraction, true},
    {"2 ft 3-1/2 in", Kind::kLength, kNoJob, 27.5, unit::inch, kFraction, true},
    {"2' 3-1/2\"", Kind::kLength, kNoJob, 27.5, unit::inch, kFraction, true},
    {"3'2\"", Kind::kLength, kMetricJob, 38.0, unit::inch, 0, true},
    {"2 ft 3.125 in", Kind::kLength, kMetricJob, 27.125, unit::inch, 3, true},
    {"-2 ft 3 in", Kind::kCoordinate, kInchJob, -27.0, unit::inch, 0, true},
    {"-0 ft 3 in", Kind::kCoordinate, kInchJob, -3.0, unit::inch, 0, true},
    {"-0.5", Kind::kCoordinate, kInchJob, -0.5, unit::inch, 1, false},
    {"+0.5", Kind::kCoordinate, kInchJob, 0.5, unit::inch, 1, false},
    {"\u22120.5", Kind::kCoordinate, kInchJob, -0.5, unit::inch, 1, false},  // a real minus
    {"\u20130.5", Kind::kCoordinate, kInchJob, -0.5, unit::inch, 1, false},  // an en dash
    {"- 1/2", Kind::kCoordinate, kInchJob, -0.5, unit::inch, kFraction, false},
    {"1.375\u00A0in", Kind::kLength, kNoJob, 1.375, unit::inch, 3, true},  // no-break space
    {"1.375\u202Fin", Kind::kLength, kNoJob, 1.375, unit::inch, 3, true},  // narrow no-break space
    {"1.375\u2009in", Kind::kLength, kNoJob, 1.375, unit::inch, 3, true},  // thin space
    {"1\u00A03/8", Kind::kLength, kInchJob, 1.375, unit::inch, kFraction, false},
};
INSTANTIATE_TEST_SUITE_P(Lengths, AcceptedNumber, testing::ValuesIn(kLengths));

const Accepted kOthers[] = {
    {"28.5", Kind::kAngle, kInchJob, 28.5, unit::degree, 1, false},
    {"28.5", Kind::kAngle, kMetricJob, 28.5, unit::degree, 1, false},
    {"30 deg", Kind::kAngle, kNoJob, 30, unit::degree, 0, true},
    {"30°", Kind::kAngle, kNoJob, 30, unit::degree, 0, true},
    {"1-1/2 deg", Kind::kAngle, kNoJob, 1.5, unit::degree, kFraction, true},
    {"30° 15'", Kind::kAngle, kNoJob, 30 * 60 + 15, unit::arc_minute, 0, true},
    {"30° 15' 30\"", Kind::kAngle, kNoJob, (30 * 60 + 15) * 60 + 30, unit::arc_second, 0, true},
    {"30°15′30″", Kind::kAngle, kNoJob, (30 * 60 + 15) * 60 + 30, unit::arc_second, 0, true},
    {"-0° 30'", Kind::kAngle, kNoJob, -30, unit::arc_minute, 0, true},
    {"0.25 turn", Kind::kAngle, kNoJob, 0.25, unit::turn, 2, true},
    {"1.5 rad", Kind::kAngle, kNoJob, 1.5, unit::radian, 1, true},
    {"1.25", Kind::kNumber, kNoJob, 1.25, unit::unity, 2, false},
    {"3/8", Kind::kNumber, kNoJob, 0.375, unit::unity, kFraction, false},
    {"5 %", Kind::kNumber, kNoJob, 5, unit::percent, 0, true},
    {"2 in2", Kind::kArea, kNoJob, 2, unit::square_inch, 0, true},
    {"2 sq in", Kind::kArea, kNoJob, 2, unit::square_inch, 0, true},
    {"2 cm³", Kind::kVolume, kNoJob, 2, unit::cubic_centimetre, 0, true},
    {"3 lb", Kind::kMass, kNoJob, 3, unit::pound, 0, true},
    {"3 lb", Kind::kForce, kNoJob, 3, unit::pound_force, 0, true},
    {"0.284 lb/in3", Kind::kDensity, kNoJob, 0.284, unit::pound_per_cubic_inch, 3, true},
    {"7850 kg/m³", Kind::kDensity, kNoJob, 7850, unit::kilogram_per_cubic_metre, 0, true},
    {"12 min", Kind::kTime, kNoJob, 12, unit::minute, 0, true},
    {"68 degF", Kind::kTemperature, kNoJob, 68, unit::degree_fahrenheit, 0, true},
    {"68 F", Kind::kTemperature, kNoJob, 68, unit::degree_fahrenheit, 0, true},
    {"-10 °C", Kind::kTemperature, kNoJob, -10, unit::degree_celsius, 0, true},
    {"10 °C", Kind::kTemperatureDifference, kNoJob, 10, unit::celsius_difference, 0, true},
    {"36 ksi", Kind::kPressure, kNoJob, 36, unit::ksi, 0, true},
    {"36 KSI", Kind::kPressure, kNoJob, 36, unit::ksi, 0, true},
    {"250 N/mm²", Kind::kPressure, kNoJob, 250, unit::megapascal, 0, true},
    {"20 ft lbf", Kind::kTorque, kNoJob, 20, unit::foot_pound, 0, true},
    {"20 lb-ft", Kind::kTorque, kNoJob, 20, unit::foot_pound, 0, true},
    {"20 in-lb", Kind::kTorque, kNoJob, 20, unit::inch_pound, 0, true},
    {"20 N·m", Kind::kTorque, kNoJob, 20, unit::newton_metre, 0, true},
    {"1.5 hp", Kind::kPower, kNoJob, 1.5, unit::horsepower, 1, true},
    {"1.5 HP", Kind::kPower, kNoJob, 1.5, unit::horsepower, 1, true},
    {"90 sfm", Kind::kSpeed, kNoJob, 90, unit::foot_per_minute, 0, true},
    {"30 m/min", Kind::kSpeed, kNoJob, 30, unit::metre_per_minute, 0, true},
    {"660", Kind::kRotationalSpeed, kInchJob, 660, unit::rpm, 0, false},
    {"660 RPM", Kind::kRotationalSpeed, kNoJob, 660, unit::rpm, 0, true},
    {".003", Kind::kFeedPerTurn, kInchJob, 0.003, unit::inch_per_turn, 3, false},
    {"0.1 mm/rev", Kind::kFeedPerTurn, kInchJob, 0.1, unit::millimetre_per_turn, 1, true},
    {"4", Kind::kFeedRate, kInchJob, 4, unit::inch_per_minute, 0, false},
    {"100 mm/min", Kind::kFeedRate, kInchJob, 100, unit::millimetre_per_minute, 0, true},
};
INSTANTIATE_TEST_SUITE_P(OtherKinds, AcceptedNumber, testing::ValuesIn(kOthers));

TEST(ReadNumber, IgnoresBlanksAround) {
  const auto read = read_number(" \t1-3/8 in \u00A0\n", Kind::kLength, std::nullopt);
  ASSERT_TRUE(read);
  EXPECT_EQ(read->typed, "1-3/8 in");
  EXPECT_EQ(read->base, 34.925);
}

TEST(ReadNumber, GivesPositiveZero) {
  for (const char* text : {"-0", "\u22120.000", "-0/8", "-0 ft 0 in"}) {
    const auto read = read_number(text, Kind::kCoordinate, kInchJob);
    ASSERT_TRUE(read) << text;
    EXPECT_EQ(read->base, 0.0) << text;
    EXPECT_FALSE(std::signbit(read->base)) << text;
  }
}

TEST(ReadNumber, MarksACompoundNumber) {
  EXPECT_TRUE(read_number("2 ft 3 in", Kind::kLength, kNoJob)->compound);
  EXPECT_FALSE(read_number("2 ft", Kind::kLength, kNoJob)->compound);
}

TEST(ReadNumber, AcceptsTheLargestAndSmallestOfALength) {
  EXPECT_EQ(read_number("1000000 mm", Kind::kLength, kNoJob)->base, 1e6);
  EXPECT_EQ(read_number("0.00000000000001 mm", Kind::kLength, kNoJob)->base, 1e-14);
}

TEST(ReadNumber, TypedValueIsReadInItsRole) {
  const auto read = read_number("0.5", Kind::kDiameter, kInchJob);
  ASSERT_TRUE(read);
  EXPECT_EQ(read->diameter(), Diameter::of(0.5, unit::inch));
  EXPECT_EQ(read->length(), Length::of(0.5, unit::inch));
  EXPECT_EQ(read_number("180", Kind::kAngle, kInchJob)->angle(), Angle::from_base(std::numbers::pi));
}

TEST(ReadSize, TakesDrills) {
  struct Row {
    const char* text;
    Designation::Series series;
    const char* name;
    const char* typed;
  };
  for (const Row& row : {Row{"#7", Designation::Series::kNumberDrill, "7", "#7"},
                         Row{" # 29 ", Designation::Series::kNumberDrill, "29", "# 29"},
                         Row{"letter F", Designation::Series::kLetterDrill, "F", "letter F"},
                         Row{"LETTER  Z", Designation::Series::kLetterDrill, "Z", "LETTER  Z"}}) {
    const auto size = read_size(row.text, Kind::kDiameter, kInchJob);
    ASSERT_TRUE(size) << row.text;
    ASSERT_TRUE(std::holds_alternative<Designation>(*size)) << row.text;
    EXPECT_EQ(std::get<Designation>(*size), (Designation{row.series, row.name, row.typed}));
  }
}

TEST(ReadSize, TakesNumbersToo) {
  const auto size = read_size("3/8", Kind::kDiameter, kInchJob);
  ASSERT_TRUE(size);
  ASSERT_TRUE(std::holds_alternative<Typed>(*size));
  EXPECT_EQ(std::get<Typed>(*size).base, 9.525);
}

TEST(ReadNumberPrefix, SaysHowMuchItTook) {
  const auto prefix = read_number_prefix(" 0.625 in \u00B10.005", Kind::kLength, kInchJob);
  ASSERT_TRUE(prefix);
  EXPECT_EQ(prefix->taken, 9U);
  EXPECT_EQ(prefix->number.typed, "0.625 in");
  EXPECT_EQ(read_number_prefix("25 m6", Kind::kLength, kMetricJob)->taken, 2U);
  EXPECT_EQ(read_number_prefix("25 m 6", Kind::kLength, kMetricJob)->taken, 4U);
}

}  // namespace
}  // namespace sparewright::quantity
