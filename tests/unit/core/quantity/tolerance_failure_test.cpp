// Tolerances and toleranced sizes that are refused, with the words a user meets.
#include <ostream>
#include <string>

#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/quantity/tolerance.hpp"

namespace sparewright::quantity {
namespace {

using base::Code;

constexpr auto kInchJob = UnitSystem::kInch;
constexpr auto kMetricJob = UnitSystem::kMetric;
constexpr std::nullopt_t kNoJob = std::nullopt;
constexpr std::string_view kForms =
    "±0.002, +0.000/-0.001, +0.0010 to +0.0020, limits 0.8750 to 0.8758, a fit H7, g6 or RC4, or general";
constexpr std::string_view kBoth = "both deviations, such as +0.000/-0.002, or ±0.002";
constexpr std::string_view kSigns =
    "a sign before each deviation, such as +0.001/-0.002, or limits as 0.8750 to 0.8758";
constexpr std::string_view kEach = ", with the unit after each number";

struct Refused {
  std::string text;
  std::optional<UnitSystem> job;
  std::string span;
  Code code;
  std::string said;
};

// NOLINTNEXTLINE(readability-identifier-naming): the name GoogleTest looks for
void PrintTo(const Refused& row, std::ostream* out) {
  *out << "'" << row.text << "'";
}

void expect_told(const base::Failure& f, const Refused& row) {
  EXPECT_EQ(f.code, row.code) << base::code_name(f.code);
  EXPECT_EQ(base::report(f), row.said);
  ASSERT_TRUE(f.span);
  ASSERT_LE(f.span->end(), row.text.size());
  EXPECT_EQ(row.text.substr(f.span->offset, f.span->length), row.span);
}

std::string not_a_tolerance(std::string_view found, std::string_view accepted) {
  return "'" + std::string(found) + "' is not a tolerance\n    accepted: " + std::string(accepted);
}
std::string two(std::string_view found, std::string_view readings, std::string_view end = {}) {
  return "'" + std::string(found) + "' can be read in two ways\n    accepted: " + std::string(readings) +
         std::string(end);
}

class RefusedTolerance : public testing::TestWithParam<Refused> {};

TEST_P(RefusedTolerance, IsToldInTheseWords) {
  const Refused& row = GetParam();
  const auto read = read_tolerance(row.text, Kind::kLength, row.job);
  ASSERT_FALSE(read);
  expect_told(read.error(), row);
}

const Refused kTolerances[] = {
    {"0.002", kInchJob, "0.002", Code::kBadTolerance, not_a_tolerance("0.002", kForms)},
    {"+0.002", kInchJob, "+0.002", Code::kBadTolerance, not_a_tolerance("+0.002", kBoth)},
    {" ±-0.002", kInchJob, "±-0.002", Code::kBadTolerance, not_a_tolerance("±-0.002", kForms)},
    {"+0.1/0.2", kInchJob, "+0.1/0.2", Code::kBadTolerance, not_a_tolerance("+0.1/0.2", kBoth)},
    {"0.1/-0.2", kInchJob, "0.1/-0.2", Code::kBadTolerance, not_a_tolerance("0.1/-0.2", kSigns)},
    {"+0.000-0.001", kInchJob, "+0.000-0.001", Code::kBadTolerance, not_a_tolerance("+0.000-0.001", kBoth)},
    {"0.8750 -0.8758", kInchJob, "0.8750 -0.8758", Code::kBadTolerance,
     not_a_tolerance("0.8750 -0.8758", kSigns)},
    {"1-8", kInchJob, "1-8", Code::kBadTolerance, not_a_tolerance("1-8", kForms)},
    {"rc4", kInchJob, "rc4", Code::kBadTolerance, not_a_tolerance("rc4", kForms)},
    {"H7/g6", kInchJob, "H7/g6", Code::kBadTolerance,
     not_a_tolerance("H7/g6", "the class of this part alone, such as H7 for a hole or g6 for a shaft")},
    {"±", kInchJob, "", Code::kEmptyValue,
     "nothing is written where a length is wanted\n    accepted: a number such as 1.375, 1-3/8 or 34.9 mm"},
    {"0.8758-0.8750", kInchJob, "0.8758-0.8750", Code::kToleranceOrder,
     "'0.8758-0.8750' has its lower limit above its upper limit\n    accepted: 0.8750 to 0.8758, the smaller "
     "limit "
     "first"},
    {"  ±0,02", kMetricJob, "0,02", Code::kDecimalComma,
     "'0,02' has a comma in the number; write a decimal point\n    accepted: 0.02"},
    {"+0.01 / -0,02", kMetricJob, "0,02", Code::kDecimalComma,
     "'0,02' has a comma in the number; write a decimal point\n    accepted: 0.02"},
    {"+0.001/-0.002 furlong", kInchJob, "furlong", Code::kUnitUnknown,
     "'furlong' is not a unit of a length\n    accepted: in, mm, thou, uin, ft, um, cm, m"},
    {"±0.002", kNoJob, "0.002", Code::kUnitMissing,
     "'0.002' has no unit, and a length needs one here\n    accepted: the number and one of: in, mm, thou, "
     "uin, "
     "ft, um, cm, "
     "m"},
    {"0.8750 to 0.8758", kNoJob, "0.8750", Code::kUnitMissing,
     "'0.8750' has no unit, and a length needs one here\n    accepted: the number and one of: in, mm, thou, "
     "uin, "
     "ft, um, "
     "cm, m"},
    {"0.8750 in to 0.8758", kMetricJob, "0.8758", Code::kTwoReadings,
     two("0.8758", "0.8758 in or 0.8758 mm", kEach)},
    {"3/8 to 10", kMetricJob, "10", Code::kTwoReadings, two("10", "10 in or 10 mm", kEach)},
    {"3/8 to 10 mm", kMetricJob, "3/8", Code::kTwoReadings, two("3/8", "3/8 in or 3/8 mm", kEach)},
    {"1 to 2 ft 3 in", kInchJob, "1", Code::kTwoReadings, two("1", "1 ft or 1 in", kEach)},
};
INSTANTIATE_TEST_SUITE_P(Rows, RefusedTolerance, testing::ValuesIn(kTolerances));

class RefusedSize : public testing::TestWithParam<Refused> {};

TEST_P(RefusedSize, IsToldInTheseWords) {
  const Refused& row = GetParam();
  const auto read = read_sized(row.text, Kind::kLength, row.job);
  ASSERT_FALSE(read) << "was read as " << read->nominal.base;
  expect_told(read.error(), row);
}

const Refused kSizes[] = {
    {"", kInchJob, "", Code::kEmptyValue,
     "nothing is written where a length is wanted\n    accepted: a number such as 1.375, 1-3/8 or 34.9 mm"},
    {"1.000", kNoJob, "1.000", Code::kUnitMissing,
     "'1.000' has no unit, and a length needs one here\n    accepted: the number and one of: in, mm, thou, "
     "uin, "
     "ft, um, cm, "
     "m"},
    {" 1.000 H7", kNoJob, "1.000", Code::kUnitMissing,
     "'1.000' has no unit, and a length needs one here\n    accepted: the number and one of: in, mm, thou, "
     "uin, "
     "ft, um, cm, "
     "m"},
    {"0.7500 ±2 thou", kNoJob, "0.7500", Code::kUnitMissing,
     "'0.7500' has no unit, and a length needs one here\n    accepted: the number and one of: in, mm, thou, "
     "uin, "
     "ft, um, "
     "cm, m"},
    {"3/8-16", kInchJob, "3/8-16", Code::kThreadWhereLength,
     "'3/8-16' reads like a thread, and a length is wanted\n    accepted: the size alone, such as 3/8 in or "
     "9.5 mm"},
    {"#7", kInchJob, "#7", Code::kDesignationWhereLength,
     "'#7' is a drill or fit designation, and a length is wanted\n    accepted: the size itself, such as "
     "0.250 in or "
     "6.35 mm"},
    {"1,375 ±0.1", kInchJob, "1,375", Code::kDecimalComma,
     "'1,375' has a comma in the number; write a decimal point\n    accepted: 1.375, or 1375 where the comma "
     "parts the "
     "thousands"},
    // limits
    {"0.8758-0.8750", kInchJob, "0.8758-0.8750", Code::kToleranceOrder,
     "'0.8758-0.8750' has its lower limit above its upper limit\n    accepted: 0.8750 to 0.8758, the smaller "
     "limit "
     "first"},
    {"0.7500-0.0002", kInchJob, "0.7500-0.0002", Code::kToleranceOrder,
     "'0.7500-0.0002' has its lower limit above its upper limit\n    accepted: 0.0002 to 0.7500, the smaller "
     "limit "
     "first, or 0.7500 +0/-0.0002 for deviations"},
    {"0.5 in to 12", kMetricJob, "12", Code::kTwoReadings, two("12", "12 in or 12 mm", kEach)},
    // a dash and one number
    {"0.7500 -0.0002", kInchJob, "0.7500 -0.0002", Code::kTwoReadings,
     two("0.7500 -0.0002", "0.7500 to 0.0002 where limits are taken, or the difference written out",
         ", or 0.7500 +0/-0.0002 for deviations")},
    {"1 -3/8", kInchJob, "1 -3/8", Code::kTwoReadings,
     two("1 -3/8", "1-3/8 for the mixed number, or the difference written out",
         ", or 1 +0/-3/8 for deviations")},
    {"3/8-7/16", kInchJob, "3/8-7/16", Code::kTwoReadings,
     two("3/8-7/16", "3/8 to 7/16 where limits are taken, or the difference written out")},
    {" .250-28", kInchJob, ".250-28", Code::kTwoReadings,
     two(".250-28", ".250 to 28 where limits are taken, or the thread where a thread is taken")},
    {"24.5-25", kMetricJob, "24.5-25", Code::kTwoReadings,
     two("24.5-25", "24.5 to 25 where limits are taken, or the thread where a thread is taken")},
    {"0.7500 +0.0002", kInchJob, "+0.0002", Code::kBadTolerance, not_a_tolerance("+0.0002", kBoth)},
    // whose unit?
    {"25 ±0.002 in", kMetricJob, "25", Code::kTwoReadings, two("25", "25 mm or 25 in", kEach)},
    {"0.7500 ±2 thou", kInchJob, "0.7500", Code::kTwoReadings,
     two("0.7500", "0.7500 in or 0.7500 thou", kEach)},
    {"3/8 ±0.1", kMetricJob, "3/8", Code::kTwoReadings, two("3/8", "3/8 in or 3/8 mm", kEach)},
    {"10 ±1/64", kMetricJob, "10", Code::kTwoReadings, two("10", "10 mm or 10 in", kEach)},
    {" 10 mm ±1/64", kInchJob, "1/64", Code::kTwoReadings, two("1/64", "1/64 in or 1/64 mm", kEach)},
    // what stands after the size
    {"25 H7/g6", kMetricJob, "H7/g6", Code::kBadTolerance,
     not_a_tolerance("H7/g6", "the class of this part alone, such as H7 for a hole or g6 for a shaft")},
    {"25 O7", kMetricJob, "O7", Code::kBadTolerance, not_a_tolerance("O7", kForms)},
    {"25 RC14", kMetricJob, "RC14", Code::kBadTolerance, not_a_tolerance("RC14", kForms)},
    {" 0.7500 +0.001/bad", kInchJob, "+0.001/bad", Code::kBadTolerance, not_a_tolerance("+0.001/bad", kBoth)},
    {"0.7500 ±1 furlong", kInchJob, "furlong", Code::kUnitUnknown,
     "'furlong' is not a unit of a length\n    accepted: in, mm, thou, uin, ft, um, cm, m"},
    {"0.7500 furlong ±1", kInchJob, "furlong ±1", Code::kUnitUnknown,
     "'furlong ±1' is not a unit of a length\n    accepted: in, mm, thou, uin, ft, um, cm, m"},
    {"0.7500 0.001", kInchJob, "0.001", Code::kTrailingText,
     "'0.001' is left over after a length\n    accepted: one number, without blanks in it unless a fraction "
     "follows"},
};
INSTANTIATE_TEST_SUITE_P(Rows, RefusedSize, testing::ValuesIn(kSizes));

}  // namespace
}  // namespace sparewright::quantity
