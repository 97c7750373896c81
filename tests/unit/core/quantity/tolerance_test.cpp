#include "core/quantity/tolerance.hpp"

#include <cmath>
#include <ostream>
#include <string>

#include <gtest/gtest.h>

#include "core/base/messages.hpp"

namespace sparewright::quantity {
namespace {

using base::Code;

constexpr auto kInchJob = UnitSystem::kInch;
constexpr auto kMetricJob = UnitSystem::kMetric;
constexpr std::nullopt_t kNoJob = std::nullopt;

// --- two numbers, read as deviations or limits
// --------------------------------------------------------------------
struct Two {
  std::string text;
  std::optional<UnitSystem> job;
  double low;
  Unit low_unit;
  double high;
  Unit high_unit;
};

// NOLINTNEXTLINE(readability-identifier-naming): the name GoogleTest looks for
void PrintTo(const Two& row, std::ostream* out) {
  *out << "'" << row.text << "'";
}

class DeviationsRead : public testing::TestWithParam<Two> {};

TEST_P(DeviationsRead, AreAsMeant) {
  const Two& row = GetParam();
  const auto read = read_tolerance(row.text, Kind::kLength, row.job);
  ASSERT_TRUE(read) << base::report(read.error());
  ASSERT_TRUE(std::holds_alternative<Deviations>(read->form));
  const auto& d = std::get<Deviations>(read->form);
  EXPECT_EQ(d.lower.base, row.low_unit.to_base(row.low));
  EXPECT_EQ(d.upper.base, row.high_unit.to_base(row.high));
  EXPECT_EQ(d.lower.unit, row.low_unit);
  EXPECT_EQ(d.upper.unit, row.high_unit);
  EXPECT_EQ(read->typed, row.text);
}

const Two kDeviations[] = {
    {"±0.002", kInchJob, -0.002, unit::inch, 0.002, unit::inch},
    {"±0.002 in", kMetricJob, -0.002, unit::inch, 0.002, unit::inch},
    {"± 0.05 mm", kInchJob, -0.05, unit::millimetre, 0.05, unit::millimetre},
    {"+/-0.002", kInchJob, -0.002, unit::inch, 0.002, unit::inch},
    {"+-.002", kInchJob, -0.002, unit::inch, 0.002, unit::inch},
    {"±1/64", kMetricJob, -0.015625, unit::inch, 0.015625, unit::inch},
    {"+0.000/-0.001", kInchJob, -0.001, unit::inch, 0.0, unit::inch},
    {"+0.000 / -0.001", kInchJob, -0.001, unit::inch, 0.0, unit::inch},
    {"+0.000 -0.001", kInchJob, -0.001, unit::inch, 0.0, unit::inch},
    {"-0.001/+0.000", kInchJob, -0.001, unit::inch, 0.0, unit::inch},
    {"-0.0002/-0.0004", kInchJob, -0.0004, unit::inch, -0.0002, unit::inch},
    {"−0.02/−0.04", kMetricJob, -0.04, unit::millimetre, -0.02, unit::millimetre},
    {"+0.0010 to +0.0020", kInchJob, 0.0010, unit::inch, 0.0020, unit::inch},
    {"+.0020 to +.0010", kInchJob, 0.0010, unit::inch, 0.0020, unit::inch},
    {"+1/32 / -1/64", kInchJob, -0.015625, unit::inch, 0.03125, unit::inch},
    {"+0.2/0", kMetricJob, 0.0, unit::millimetre, 0.2, unit::millimetre},
    {"0/-0.1", kMetricJob, -0.1, unit::millimetre, 0.0, unit::millimetre},
    {"0 to -0.1", kMetricJob, -0.1, unit::millimetre, 0.0, unit::millimetre},
    {"+0/-0.1", kMetricJob, -0.1, unit::millimetre, 0.0, unit::millimetre},
    {"+0/-0.1 mm", kInchJob, -0.1, unit::millimetre, 0.0, unit::millimetre},
    {"+0.001/-0.002 in", kMetricJob, -0.002, unit::inch, 0.001, unit::inch},
    {"+0.5 in/0", kMetricJob, 0.0, unit::inch, 0.5, unit::inch},
    {"+1/-2 thou", kNoJob, -2, unit::thou, 1, unit::thou},
    {"+1 thou/-0.05 mm", kNoJob, -0.05, unit::millimetre, 1, unit::thou},
};
INSTANTIATE_TEST_SUITE_P(Forms, DeviationsRead, testing::ValuesIn(kDeviations));

TEST(ReadDeviations, OfZeroAreNotNegative) {
  const auto read = read_tolerance("±0.000", Kind::kLength, kInchJob);
  ASSERT_TRUE(read);
  EXPECT_FALSE(std::signbit(std::get<Deviations>(read->form).lower.base));
}

TEST(ReadDeviations, KeepWhatWasTyped) {
  const auto read = read_tolerance(" +0.001 / -0.002 in ", Kind::kLength, kMetricJob);
  ASSERT_TRUE(read);
  EXPECT_EQ(read->typed, "+0.001 / -0.002 in");
  const auto& d = std::get<Deviations>(read->form);
  EXPECT_EQ(d.upper.typed, "+0.001");
  EXPECT_EQ(d.lower.typed, "-0.002 in");
  const auto width = read_tolerance("±.002", Kind::kLength, kInchJob);
  ASSERT_TRUE(width);
  const auto& both = std::get<Deviations>(width->form);
  EXPECT_EQ(both.lower.typed, "-.002");
  EXPECT_EQ(both.upper.typed, ".002");
}

TEST(ReadDeviations, OfATemperatureAreDifferences) {
  const auto read = read_tolerance("+10/-5 degC", Kind::kTemperature, kNoJob);
  ASSERT_TRUE(read) << base::report(read.error());
  const auto& d = std::get<Deviations>(read->form);
  EXPECT_EQ(d.lower.base, -5.0);
  EXPECT_EQ(d.upper.base, 10.0);
  EXPECT_EQ(d.upper.kind, Kind::kTemperatureDifference);
}

TEST(ReadDeviations, OfAnAngle) {
  const auto read = read_tolerance("±30'", Kind::kAngle, kInchJob);
  ASSERT_TRUE(read);
  EXPECT_EQ(std::get<Deviations>(read->form).upper.base, Angle::of(30, unit::arc_minute).base());
}

class LimitsRead : public testing::TestWithParam<Two> {};

TEST_P(LimitsRead, AreAsMeant) {
  const Two& row = GetParam();
  const auto read = read_tolerance(row.text, Kind::kLength, row.job);
  ASSERT_TRUE(read) << base::report(read.error());
  ASSERT_TRUE(std::holds_alternative<WrittenLimits>(read->form));
  const auto& limits = std::get<WrittenLimits>(read->form);
  EXPECT_EQ(limits.low.base, row.low_unit.to_base(row.low));
  EXPECT_EQ(limits.high.base, row.high_unit.to_base(row.high));

  const auto sized = read_sized(row.text, Kind::kLength, row.job);
  ASSERT_TRUE(sized) << base::report(sized.error());
  EXPECT_EQ(sized->nominal.base, (limits.low.base + limits.high.base) / 2);
  EXPECT_EQ(sized->nominal.typed, row.text);
  EXPECT_TRUE(std::holds_alternative<WrittenLimits>(sized->tolerance.form));
}

const Two kLimits[] = {
    {"0.8750-0.8758", kInchJob, 0.8750, unit::inch, 0.8758, unit::inch},
    {"0.8750 - 0.8758", kInchJob, 0.8750, unit::inch, 0.8758, unit::inch},
    {"0.8750\u20130.8758", kInchJob, 0.8750, unit::inch, 0.8758, unit::inch},
    {"0.8750 to 0.8758", kInchJob, 0.8750, unit::inch, 0.8758, unit::inch},
    {"0.8750-0.8758 in", kMetricJob, 0.8750, unit::inch, 0.8758, unit::inch},
    {"0.8750 to 0.8758 in", kNoJob, 0.8750, unit::inch, 0.8758, unit::inch},
    {"0.8750 in-0.8758 in", kMetricJob, 0.8750, unit::inch, 0.8758, unit::inch},
    {"3/8 to 0.380", kInchJob, 0.375, unit::inch, 0.380, unit::inch},
    {"1-3/8 to 1-1/2", kInchJob, 1.375, unit::inch, 1.5, unit::inch},
    {"24 to 25", kMetricJob, 24, unit::millimetre, 25, unit::millimetre},
    {"25.00-25.00", kMetricJob, 25, unit::millimetre, 25, unit::millimetre},
};
INSTANTIATE_TEST_SUITE_P(Forms, LimitsRead, testing::ValuesIn(kLimits));

// --- classes and none
// ---------------------------------------------------------------------------------------------
TEST(ReadTolerance, TakesFitClasses) {
  for (const char* name :
       {"H7", "g6", "js5", "JS9", "ZC11", "a11", "cd8", "h01", "H18", "RC4", "LC11", "LT6", "LN3", "FN5"}) {
    const auto read = read_tolerance(name, Kind::kLength, kInchJob);
    ASSERT_TRUE(read) << name;
    ASSERT_TRUE(std::holds_alternative<FitClass>(read->form)) << name;
    EXPECT_EQ(std::get<FitClass>(read->form), FitClass{name});
  }
}

TEST(ReadTolerance, RefusesWhatOnlyLooksLikeAFitClass) {
  for (const char* name : {"H19", "H77", "O7", "I7", "l6", "Q5", "W3", "Js6", "hH7", "rc4", "RC10", "LC12",
                           "FN6", "RC0", "H", "7H", "H007", "XX7"}) {
    const auto read = read_tolerance(name, Kind::kLength, kInchJob);
    ASSERT_FALSE(read) << name;
    EXPECT_EQ(read.error().code, Code::kBadTolerance) << name;
  }
}

TEST(ReadTolerance, TakesNoneAsGeneral) {
  for (const char* text : {"", "  ", "general"}) {
    const auto read = read_tolerance(text, Kind::kLength, kInchJob);
    ASSERT_TRUE(read);
    EXPECT_TRUE(std::holds_alternative<GeneralTolerance>(read->form));
  }
}

// --- a size with its tolerance
// ------------------------------------------------------------------------------------
struct Size {
  std::string text;
  std::optional<UnitSystem> job;
  double nominal;
  Unit unit;
  double lower;
  double upper;
  Unit deviation_unit;
};

// NOLINTNEXTLINE(readability-identifier-naming): the name GoogleTest looks for
void PrintTo(const Size& row, std::ostream* out) {
  *out << "'" << row.text << "'";
}

class SizedRead : public testing::TestWithParam<Size> {};

TEST_P(SizedRead, IsAsMeant) {
  const Size& row = GetParam();
  const auto read = read_sized(row.text, Kind::kDiameter, row.job);
  ASSERT_TRUE(read) << base::report(read.error());
  EXPECT_EQ(read->nominal.base, row.unit.to_base(row.nominal));
  EXPECT_EQ(read->nominal.unit, row.unit);
  ASSERT_TRUE(std::holds_alternative<Deviations>(read->tolerance.form));
  const auto& d = std::get<Deviations>(read->tolerance.form);
  EXPECT_EQ(d.lower.base, row.deviation_unit.to_base(row.lower));
  EXPECT_EQ(d.upper.base, row.deviation_unit.to_base(row.upper));
  EXPECT_EQ(read->typed, row.text);
}

const Size kSizes[] = {
    {"0.7500 -0.0002/-0.0004", kInchJob, 0.75, unit::inch, -0.0004, -0.0002, unit::inch},
    {"0.7500 -.0002 to -.0004", kInchJob, 0.75, unit::inch, -0.0004, -0.0002, unit::inch},
    {"0.7500-0.0002/-0.0004", kInchJob, 0.75, unit::inch, -0.0004, -0.0002, unit::inch},
    {"0.625 ±0.005", kInchJob, 0.625, unit::inch, -0.005, 0.005, unit::inch},
    {"0.625±0.005", kInchJob, 0.625, unit::inch, -0.005, 0.005, unit::inch},
    {"0.625 in ±0.005", kMetricJob, 0.625, unit::inch, -0.005, 0.005, unit::inch},
    {"0.625 in. ±0.005 in.", kMetricJob, 0.625, unit::inch, -0.005, 0.005, unit::inch},
    {"25.4 mm ±0.1", kInchJob, 25.4, unit::millimetre, -0.1, 0.1, unit::millimetre},
    {"25.4 mm +0.1/-0.2", kInchJob, 25.4, unit::millimetre, -0.2, 0.1, unit::millimetre},
    {"0.7500 in ±2 thou", kNoJob, 0.75, unit::inch, -2, 2, unit::thou},
    {"0.7500 ±0.002 in", kNoJob, 0.75, unit::inch, -0.002, 0.002, unit::inch},
    {"0.7500 ±0.002 in", kInchJob, 0.75, unit::inch, -0.002, 0.002, unit::inch},
    {"25 0/-0.1", kMetricJob, 25, unit::millimetre, -0.1, 0, unit::millimetre},
    {"25 +0.1/0", kMetricJob, 25, unit::millimetre, 0, 0.1, unit::millimetre},
    {"3/8 ±1/64", kMetricJob, 0.375, unit::inch, -0.015625, 0.015625, unit::inch},
    {"3/8 ±0.005", kInchJob, 0.375, unit::inch, -0.005, 0.005, unit::inch},
    {"1-3/8 -1/64/+1/32", kInchJob, 1.375, unit::inch, -0.015625, 0.03125, unit::inch},
    {"2 ft 3 in ±0.01", kMetricJob, 27, unit::inch, -0.01, 0.01, unit::inch},
};
INSTANTIATE_TEST_SUITE_P(Forms, SizedRead, testing::ValuesIn(kSizes));

TEST(ReadSized, TakesASizeAlone) {
  const auto read = read_sized(" 1.000 in ", Kind::kLength, kMetricJob);
  ASSERT_TRUE(read);
  EXPECT_EQ(read->nominal.base, 25.4);
  EXPECT_EQ(read->nominal.places, 3);
  EXPECT_TRUE(std::holds_alternative<GeneralTolerance>(read->tolerance.form));
  EXPECT_EQ(read->typed, "1.000 in");
  EXPECT_TRUE(std::holds_alternative<GeneralTolerance>(
      read_sized("1.000 general", Kind::kLength, kInchJob)->tolerance.form));
}

TEST(ReadSized, TakesASizeWithAClass) {
  for (const char* text : {"25 H7", "25H7", "25 mm H7"}) {
    const auto read = read_sized(text, Kind::kDiameter, kMetricJob);
    ASSERT_TRUE(read) << text;
    EXPECT_EQ(read->nominal.base, 25.0);
    ASSERT_TRUE(std::holds_alternative<FitClass>(read->tolerance.form));
    EXPECT_EQ(std::get<FitClass>(read->tolerance.form).name, "H7");
  }
  // m6 is a class and not six metres; h6, no hour
  EXPECT_EQ(std::get<FitClass>(read_sized("25 m6", Kind::kDiameter, kMetricJob)->tolerance.form).name, "m6");
  EXPECT_EQ(std::get<FitClass>(read_sized("25 h6", Kind::kDiameter, kMetricJob)->tolerance.form).name, "h6");
  EXPECT_EQ(read_sized("7/8 RC4", Kind::kDiameter, kMetricJob)->nominal.base, 22.225);
}

TEST(ReadSized, TakesNegativeCoordinates) {
  const auto read = read_sized("-0.5 ±0.01", Kind::kCoordinate, kInchJob);
  ASSERT_TRUE(read);
  EXPECT_EQ(read->nominal.base, -12.7);
}

TEST(ReadSized, TakesAnglesAndTemperatures) {
  const auto angle = read_sized("30° ±15'", Kind::kAngle, kInchJob);
  ASSERT_TRUE(angle);
  EXPECT_EQ(std::get<Deviations>(angle->tolerance.form).upper.base, Angle::of(15, unit::arc_minute).base());
  const auto room = read_sized("68 degF ±2", Kind::kTemperature, kNoJob);
  ASSERT_TRUE(room) << base::report(room.error());
  EXPECT_EQ(std::get<Deviations>(room->tolerance.form).upper.base,
            TemperatureDifference::of(2, unit::fahrenheit_difference).base());
}

}  // namespace
}  // namespace sparewright::quantity
