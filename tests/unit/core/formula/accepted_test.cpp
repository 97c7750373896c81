// Every form a formula may take, and the number it gives. Lengths in the inch job unless a row says
// otherwise.
#include <ostream>
#include <string>

#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "formula_names.hpp"

namespace sparewright::formula {
namespace {

using quantity::Kind;
using quantity::UnitSystem;

constexpr double kInch = 25.4;
constexpr double kDegree = 3.14159265358979323846 / 180.0;

// What the names stand for, in base units.
double value_of(std::string_view name) {
  if (name == "centres") return 60.0;
  if (name == "pin") return 6.0;
  if (name == "stud") return 10.0;
  if (name == "r") return 4.0;
  if (name == "x") return 15.0;
  if (name == "y") return 40.0;
  if (name == "high") return 3.0;
  if (name == "slot.left") return 7.0;
  if (name == "angle") return 0.5;
  if (name == "area") return 144.0;
  if (name == "count") return 3.0;
  return 1000.0;
}

struct Accepted {
  std::string text;
  double value;  // base unit
  Kind wanted = Kind::kLength;
  UnitSystem system = UnitSystem::kInch;
};

void PrintTo(const Accepted& row, std::ostream* out) {
  *out << "'" << row.text << "'";
}

class AcceptedFormula : public testing::TestWithParam<Accepted> {};

TEST_P(AcceptedFormula, GivesTheNumber) {
  const Accepted& row = GetParam();
  const auto formula = read_and_bind(row.text, row.wanted, row.system);
  ASSERT_TRUE(formula) << base::report(formula.error());
  std::vector<double> values;
  for (const std::string& name : formula->names())
    values.push_back(value_of(name));
  const auto y = formula->at(values);
  ASSERT_TRUE(y) << base::report(y.error());
  EXPECT_DOUBLE_EQ(y->value, row.value);
  EXPECT_EQ(formula->kind(), row.wanted);
  EXPECT_EQ(formula->typed(), row.text);
}

const Accepted kArithmetic[] = {
    {"centres", 60.0},
    {"centres + pin/2 + stud/2", 68.0},
    {"centres+pin/2+stud/2", 68.0},
    {" centres\t+ pin / 2 ", 63.0},
    {"centres\n + high", 63.0},
    {"centres - high - high", 54.0},
    {"centres - (high - high)", 60.0},
    {"centres / 2 / 3", 10.0},
    {"centres * 2 / 3", 40.0},
    {"centres / (2 / 3)", 90.0},
    {"-high", -3.0},
    {"- high + centres", 57.0},
    {"centres - -high", 63.0},
    {"centres * -count", -180.0},
    {"centres / -count", -20.0},
    {"-high^2", -9.0, Kind::kArea},
    {"(-high)^2", 9.0, Kind::kArea},
    {"high^2", 9.0, Kind::kArea},
    {"high ^ 2", 9.0, Kind::kArea},
    {"high^-1 * high^2", 3.0},
    {"high^0 * centres", 60.0},
    {"2 * high^2 / centres", 0.3},
    {"((((high))))", 3.0},
    {"slot.left + high", 10.0},
    {"centres \u2212 high", 57.0},       // a minus sign
    {"centres \u2013 high", 57.0},       // an en dash
    {"centres\u00A0+\u202Fhigh", 63.0},  // blanks as pages print them
};
INSTANTIATE_TEST_SUITE_P(Arithmetic, AcceptedFormula, testing::ValuesIn(kArithmetic));

const Accepted kNumbers[] = {
    // a bare number beside a length takes the job's unit; a fraction is inch in a metric job too
    {"centres + 0.5", 60.0 + 0.5 * kInch},
    {"centres + 0.5", 60.5, Kind::kLength, UnitSystem::kMetric},
    {"0.5 + centres", 60.5, Kind::kLength, UnitSystem::kMetric},
    {"centres + .5", 60.0 + 0.5 * kInch},
    {"centres + 2.", 60.0 + 2.0 * kInch},
    {"centres - -0.5", 60.0 + 0.5 * kInch},
    {"centres + 3/8", 60.0 + 0.375 * kInch},
    {"centres + 3/8", 60.0 + 0.375 * kInch, Kind::kLength, UnitSystem::kMetric},
    {"centres - 3/8", 60.0 - 0.375 * kInch},
    {"centres-3/8", 60.0 - 0.375 * kInch},
    {"centres + 1 3/8", 60.0 + 1.375 * kInch, Kind::kLength, UnitSystem::kMetric},
    {"max(high, 0.5)", 0.5 * kInch},
    {"min(0.5, high)", 3.0},
    {"centres - 2*(0.5 + high)", 60.0 - 2.0 * (0.5 * kInch + 3.0)},
    // alone it is what the job wants
    {"0.5", 0.5 * kInch},
    {"12.5", 12.5, Kind::kDiameter, UnitSystem::kMetric},
    {"-0.5", -0.5 * kInch, Kind::kCoordinate},
    {"3/8", 0.375 * kInch, Kind::kLength, UnitSystem::kMetric},
    {"1-3/8", 1.375 * kInch},
    {" 1-3/8 ", 1.375 * kInch, Kind::kLength, UnitSystem::kMetric},
    {"1 3/8", 1.375 * kInch},
    {"30", 30.0 * kDegree, Kind::kAngle},
    {"0.25", 0.25, Kind::kNumber},
    {"3/8", 0.375, Kind::kNumber},
    // with a unit
    {"centres + 3/8 in", 60.0 + 0.375 * kInch},
    {"centres + 3/8\"", 60.0 + 0.375 * kInch},
    {"centres + 3/8 \u2033", 60.0 + 0.375 * kInch},
    {"centres + 3/8 \u201D", 60.0 + 0.375 * kInch},
    {"centres + 1-3/8 in", 60.0 + 1.375 * kInch},
    {"centres+1-3/8in", 60.0 + 1.375 * kInch},
    {"1-3/8 in", 1.375 * kInch},
    {"1-3/8 in - 0.5", 0.875 * kInch},
    {"centres + 12.5 mm", 72.5},
    {"centres + 5 thou", 60.127},
    {"centres + 25 um", 60.025},
    {"centres + 25 \u00B5m", 60.025},
    {"centres + 2 ft", 60.0 + 24.0 * kInch},
    {"centres + 0.5 in.", 60.0 + 0.5 * kInch},
    {"0.5 in. + centres", 60.0 + 0.5 * kInch},
    {"centres + 0.5 IN", 60.0 + 0.5 * kInch},
    {"angle + 30 deg", 0.5 + 30.0 * kDegree, Kind::kAngle},
    {"angle + 30\u00B0", 0.5 + 30.0 * kDegree, Kind::kAngle},
    {"angle + 30", 0.5 + 30.0 * kDegree, Kind::kAngle},
    {"angle + 0.25 turn", 0.5 + 90.0 * kDegree, Kind::kAngle},
    {"area + 2 in2", 144.0 + 2.0 * kInch* kInch, Kind::kArea},
    {"area + 2 in\u00B2", 144.0 + 2.0 * kInch* kInch, Kind::kArea},
    {"force/area + 2 N/mm2", 1000.0 / 144.0 + 2000.0, Kind::kPressure},
    {"30000000 psi", 30000000.0 * 8896443230521.0 / 1290320000000.0, Kind::kPressure},
    {"centres * 5 percent", 3.0},
    // a slash belongs to the unit only where there is such a unit
    {"3 in/high", kInch, Kind::kNumber},
    {"3 in / high", kInch, Kind::kNumber},
    {"25.4 mm/2", 12.7},
    {"10 mm/min * 3 min", 30.0},
    // digits around a slash without blanks are one number
    {"4*3/8 in", 1.5 * kInch},
    {"3/8 in * 4", 1.5 * kInch},
    {"2*1 3/8 in", 2.75 * kInch},
    {"count*3/8", 1.125, Kind::kNumber},
    {"centres/(3/8)", 160.0},
    {"centres / 3 / 8", 2.5},
    {"centres/1.5/8", 5.0},
    {"centres/2.5/1.5", 16.0},
};
INSTANTIATE_TEST_SUITE_P(Numbers, AcceptedFormula, testing::ValuesIn(kNumbers));

const Accepted kFunctions[] = {
    {"sqrt(area)", 12.0},
    {"sqrt (area)", 12.0},
    {"sqrt(high^2 + (4 mm)^2)", 5.0},
    {"sqrt(2.25)", 1.5, Kind::kNumber},
    {"sin(30 deg)*high", 0.49999999999999994 * 3.0},
    {"cos(0 deg)*high", 3.0},
    {"tan(45 deg)*high", 0.99999999999999989 * 3.0},
    {"asin(high/(6 mm))", 30.0 * kDegree, Kind::kAngle},
    {"acos(0.5)", 60.0 * kDegree, Kind::kAngle},
    {"atan(high/high)", 45.0 * kDegree, Kind::kAngle},
    {"abs(high - centres)", 57.0},
    {"min(high, centres)", 3.0},
    {"max(high, centres)", 60.0},
    {"min( high , max(centres,high) )", 3.0},
    {"pi * high", 3.0 * 3.14159265358979323846},
    {"2*pi*count", 6.0 * 3.14159265358979323846, Kind::kNumber},
};
INSTANTIATE_TEST_SUITE_P(Functions, AcceptedFormula, testing::ValuesIn(kFunctions));

TEST(Formula, NamesStandInTheOrderOfTheirFirstAppearance) {
  const auto formula = read_and_bind("stud/2 + pin/2 - stud/2 + centres - pin/2");
  ASSERT_TRUE(formula);
  EXPECT_EQ(formula->names(), (std::vector<std::string>{"stud", "pin", "centres"}));
  EXPECT_EQ(Expression::read("stud + pin")->names(), (std::vector<std::string>{"stud", "pin"}));
}

TEST(Formula, FunctionNamesWithoutBracketsAreNames) {
  const auto expression = Expression::read("min + max(sin, 1)");
  ASSERT_TRUE(expression);
  EXPECT_EQ(expression->names(), (std::vector<std::string>{"min", "sin"}));
}

TEST(Formula, TheLongestAndTheDeepestAreRead) {
  std::string longest = "centres";
  while (longest.size() + 7 <= kLongestFormula)
    longest += " + high";
  longest.resize(kLongestFormula, ' ');
  EXPECT_TRUE(Expression::read(longest));
  const std::string deepest = std::string(kDeepestNesting, '(') + "high" + std::string(kDeepestNesting, ')');
  EXPECT_TRUE(Expression::read(deepest));
}

TEST(Formula, FingerprintsDifferWhereTheFormulasDo) {
  const auto print = [](std::string_view text, Kind wanted = Kind::kLength,
                        UnitSystem system = UnitSystem::kInch) {
    return read_and_bind(text, wanted, system)->fingerprint();
  };
  EXPECT_EQ(print("centres + 0.5"), print("centres + 0.5"));
  EXPECT_NE(print("centres + 0.5"), print("centres + 0.5", Kind::kLength, UnitSystem::kMetric));
  EXPECT_NE(print("centres + 0.5"), print("centres + 0.5", Kind::kDiameter));
  EXPECT_NE(print("centres + 0.5"), print("centres - 0.5"));
  EXPECT_NE(print("centres + 0.5"), print("high + 0.5"));
}

}  // namespace
}  // namespace sparewright::formula
