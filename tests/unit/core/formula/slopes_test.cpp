// The slopes of every operation of a typed formula: exact cases by hand, and where min, max and abs bend.
#include <cmath>
#include <ostream>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "formula_names.hpp"

namespace sparewright::formula {
namespace {

using quantity::Kind;

struct Row {
  std::string text;
  std::vector<double> values;  // of its names, as they appear
  double value;
  std::vector<double> slopes;
  Kind wanted = Kind::kLength;
};

void PrintTo(const Row& row, std::ostream* out) {
  *out << "'" << row.text << "'";
}

class SlopesByHand : public testing::TestWithParam<Row> {};

TEST_P(SlopesByHand, AreExact) {
  const Row& row = GetParam();
  const auto formula = read_and_bind(row.text, row.wanted);
  ASSERT_TRUE(formula) << base::report(formula.error());
  const auto y = formula->at(row.values);
  ASSERT_TRUE(y) << base::report(y.error());
  EXPECT_DOUBLE_EQ(y->value, row.value);
  ASSERT_EQ(y->slopes.size(), row.slopes.size());
  for (std::size_t i = 0; i < row.slopes.size(); ++i)
    EXPECT_DOUBLE_EQ(y->slopes[i], row.slopes[i]) << i;
}

const Row kRows[] = {
    {"centres + high", {60.0, 3.0}, 63.0, {1.0, 1.0}},
    {"centres - high", {60.0, 3.0}, 57.0, {1.0, -1.0}},
    {"high - high", {3.0}, 0.0, {0.0}},
    {"2*high - high", {3.0}, 3.0, {1.0}},
    {"-high", {3.0}, -3.0, {-1.0}},
    {"count*high", {4.0, 3.0}, 12.0, {3.0, 4.0}},
    {"high/count", {3.0, 4.0}, 0.75, {0.25, -0.1875}},
    {"high^3", {2.0}, 8.0, {12.0}, Kind::kVolume},
    {"high^-2*high^3", {2.0}, 2.0, {1.0}},
    {"high^0*centres", {0.0, 60.0}, 60.0, {0.0, 1.0}},
    {"high^1", {0.0}, 0.0, {1.0}},
    {"sqrt(area)", {2.25}, 1.5, {1.0 / 3.0}},
    {"sin(angle)", {0.5}, std::sin(0.5), {std::cos(0.5)}, Kind::kNumber},
    {"cos(angle)", {0.5}, std::cos(0.5), {-std::sin(0.5)}, Kind::kNumber},
    {"tan(angle)", {0.5}, std::tan(0.5), {1.0 / (std::cos(0.5) * std::cos(0.5))}, Kind::kNumber},
    {"asin(count)", {0.6}, std::asin(0.6), {1.25}, Kind::kAngle},
    {"acos(count)", {0.6}, std::acos(0.6), {-1.25}, Kind::kAngle},
    {"atan(count)", {2.0}, std::atan(2.0), {0.2}, Kind::kAngle},
    {"abs(high)", {3.0}, 3.0, {1.0}},
    {"abs(high)", {-3.0}, 3.0, {-1.0}},
    {"abs(high)", {0.0}, 0.0, {1.0}},
    {"min(high, centres)", {3.0, 60.0}, 3.0, {1.0, 0.0}},
    {"min(high, centres)", {60.0, 3.0}, 3.0, {0.0, 1.0}},
    {"min(high, centres)", {3.0, 3.0}, 3.0, {1.0, 0.0}},
    {"max(high, centres)", {3.0, 60.0}, 60.0, {0.0, 1.0}},
    {"max(high, centres)", {60.0, 3.0}, 60.0, {1.0, 0.0}},
    {"max(high, centres)", {3.0, 3.0}, 3.0, {1.0, 0.0}},
    // a radius from chord and height: r = (c^2 + 4 h^2)/(8 h), dr/dc = c/(4h), dr/dh = 1/2 - c^2/(8 h^2)
    {"(centres^2 + 4*high^2)/(8*high)", {24.0, 3.0}, 25.5, {2.0, -7.5}},
    // a name used often is still one name
    {"high*high/high + high - high", {3.0}, 3.0, {1.0}},
    {"0.5 in", {}, 12.7, {}},
};
INSTANTIATE_TEST_SUITE_P(Slopes, SlopesByHand, testing::ValuesIn(kRows));

}  // namespace
}  // namespace sparewright::formula
