// Every function of dual.hpp against its closed form, and against a central difference.
#include "core/formula/dual.hpp"

#include <cmath>
#include <functional>
#include <limits>
#include <ostream>
#include <string>

#include <gtest/gtest.h>

namespace sparewright::formula {
namespace {

using One = Dual<1>;

// A central difference with step h errs by h^2 f'''/6 and by about 1e-16 |f|/h; with h = 1e-5 both stay under
// 1e-9 for the functions here, whose values and third derivatives stay under 10.
constexpr double kStep = 1e-5;
constexpr double kDifferenceError = 1e-9;

struct OfOne {
  std::string name;
  std::function<One(const One&)> dual;
  std::function<double(double)> plain;
  std::function<double(double)> slope;  // the closed form
  double at;
};

void PrintTo(const OfOne& row, std::ostream* out) {
  *out << row.name << " at " << row.at;
}

class DualOfOne : public testing::TestWithParam<OfOne> {};

TEST_P(DualOfOne, HasTheValueAndSlope) {
  const OfOne& row = GetParam();
  const One y = row.dual(One(row.at, {1.0}));
  EXPECT_EQ(y.value, row.plain(row.at));
  EXPECT_DOUBLE_EQ(y.slopes[0], row.slope(row.at));
  const double difference = (row.plain(row.at + kStep) - row.plain(row.at - kStep)) / (2.0 * kStep);
  EXPECT_NEAR(y.slopes[0], difference, kDifferenceError);
  EXPECT_DOUBLE_EQ(row.dual(One(row.at, {-2.5})).slopes[0], -2.5 * row.slope(row.at));  // the chain rule
  EXPECT_EQ(row.dual(One(row.at)).slopes[0], 0.0);                                      // of a constant
}

template <typename Call, typename Slope>
OfOne of_one(const std::string& name, const Call& call, const Slope& slope, double at) {
  return {name, [call](const One& x) { return One(call(x)); }, [call](double x) { return double{call(x)}; },
          slope, at};
}

// Found by their argument: these for a dual number, those of std for a double.
using std::abs, std::acos, std::asin, std::atan, std::cos, std::exp, std::log, std::pow, std::sin, std::sqrt,
    std::tan;

const OfOne kOfOne[] = {
    of_one(
        "sqrt(x)", [](auto x) { return sqrt(x); }, [](double x) { return 0.5 / std::sqrt(x); }, 2.25),
    of_one(
        "sin(x)", [](auto x) { return sin(x); }, [](double x) { return std::cos(x); }, 0.7),
    of_one(
        "cos(x)", [](auto x) { return cos(x); }, [](double x) { return -std::sin(x); }, 0.7),
    of_one(
        "tan(x)", [](auto x) { return tan(x); }, [](double x) { return 1.0 / (std::cos(x) * std::cos(x)); },
        0.7),
    of_one(
        "asin(x)", [](auto x) { return asin(x); }, [](double x) { return 1.0 / std::sqrt(1.0 - x * x); },
        -0.4),
    of_one(
        "acos(x)", [](auto x) { return acos(x); }, [](double x) { return -1.0 / std::sqrt(1.0 - x * x); },
        -0.4),
    of_one(
        "atan(x)", [](auto x) { return atan(x); }, [](double x) { return 1.0 / (1.0 + x * x); }, 1.3),
    of_one(
        "log(x)", [](auto x) { return log(x); }, [](double x) { return 1.0 / x; }, 1.7),
    of_one(
        "exp(x)", [](auto x) { return exp(x); }, [](double x) { return std::exp(x); }, 0.3),
    of_one(
        "pow(x, 3.0)", [](auto x) { return pow(x, 3.0); }, [](double x) { return 3.0 * x * x; }, 1.2),
    of_one(
        "pow(x, 2.0)", [](auto x) { return pow(x, 2.0); }, [](double x) { return 2.0 * x; }, -1.2),
    of_one(
        "pow(x, -2.0)", [](auto x) { return pow(x, -2.0); }, [](double x) { return -2.0 / (x * x * x); },
        1.2),
    of_one(
        "pow(x, 0.5)", [](auto x) { return pow(x, 0.5); }, [](double x) { return 0.5 / std::sqrt(x); }, 2.25),
    of_one(
        "pow(x, 1.0)", [](auto x) { return pow(x, 1.0); }, [](double /*x*/) { return 1.0; }, 0.0),
    of_one(
        "pow(x, 0.0)", [](auto x) { return pow(x, 0.0); }, [](double /*x*/) { return 0.0; }, 0.0),
    of_one(
        "abs(x)", [](auto x) { return abs(x); }, [](double /*x*/) { return 1.0; }, 0.6),
    of_one(
        "abs(x)", [](auto x) { return abs(x); }, [](double /*x*/) { return -1.0; }, -0.6),
    of_one(
        "-x", [](auto x) { return -x; }, [](double /*x*/) { return -1.0; }, 0.6),
    of_one(
        "x + x", [](auto x) { return x + x; }, [](double /*x*/) { return 2.0; }, 0.6),
    of_one(
        "x - 2.0 * x", [](auto x) { return x - 2.0 * x; }, [](double /*x*/) { return -1.0; }, 0.6),
    of_one(
        "x * x", [](auto x) { return x * x; }, [](double x) { return 2.0 * x; }, 0.6),
    of_one(
        "x / (1.0 + x)", [](auto x) { return x / (1.0 + x); },
        [](double x) { return 1.0 / ((1.0 + x) * (1.0 + x)); }, 0.6),
    of_one(
        "1.0 / x", [](auto x) { return 1.0 / x; }, [](double x) { return -1.0 / (x * x); }, 0.6),
    of_one(
        "3.0 - x", [](auto x) { return 3.0 - x; }, [](double /*x*/) { return -1.0; }, 0.6),
    of_one(
        "x + 3.0", [](auto x) { return x + 3.0; }, [](double /*x*/) { return 1.0; }, 0.6),
    of_one(
        "2.0 * x * 4.0", [](auto x) { return 2.0 * x * 4.0; }, [](double /*x*/) { return 8.0; }, 0.6),
    of_one(
        "x / 4.0", [](auto x) { return x / 4.0; }, [](double /*x*/) { return 0.25; }, 0.6),
};
INSTANTIATE_TEST_SUITE_P(Functions, DualOfOne, testing::ValuesIn(kOfOne));

TEST(Dual, SlopesOfTwoArgumentsStayApart) {
  const auto y = with_slopes([](auto a, auto b) { return a * b - a / b; }, 3.0, 2.0);
  EXPECT_DOUBLE_EQ(y.value, 4.5);
  EXPECT_DOUBLE_EQ(y.slopes[0], 2.0 - 0.5);
  EXPECT_DOUBLE_EQ(y.slopes[1], 3.0 + 0.75);
}

TEST(Dual, MinAndMaxFollowTheOneTheyTake) {
  const auto least = [](auto a, auto b) { return min(a, b); };
  const auto most = [](auto a, auto b) { return max(a, b); };
  using Slopes = std::array<double, 2>;
  EXPECT_EQ(with_slopes(least, 1.0, 2.0).slopes, (Slopes{1.0, 0.0}));
  EXPECT_EQ(with_slopes(least, 2.0, 1.0).slopes, (Slopes{0.0, 1.0}));
  EXPECT_EQ(with_slopes(most, 1.0, 2.0).slopes, (Slopes{0.0, 1.0}));
  EXPECT_EQ(with_slopes(most, 2.0, 1.0).slopes, (Slopes{1.0, 0.0}));
  EXPECT_EQ(with_slopes(least, 2.0, 2.0).slopes, (Slopes{1.0, 0.0}));  // of two equal ones the first
  EXPECT_EQ(with_slopes(most, 2.0, 2.0).slopes, (Slopes{1.0, 0.0}));
}

TEST(Dual, ABranchIsTakenByTheValue) {
  const auto bent = [](auto x) { return x < 1.0 ? x * x : 2.0 * x; };
  EXPECT_DOUBLE_EQ(with_slopes(bent, 0.5).slopes[0], 1.0);
  EXPECT_DOUBLE_EQ(with_slopes(bent, 1.5).slopes[0], 2.0);
  EXPECT_TRUE(One(1.0, {5.0}) == One(1.0, {7.0}));
  EXPECT_TRUE(One(1.0, {5.0}) >= One(1.0, {7.0}));
  EXPECT_FALSE(One(std::nan("")) <= One(1.0));
}

TEST(Dual, AnInfiniteSlopeStaysWithWhatMoves) {
  const auto y = with_slopes([](auto a, auto b) { return sqrt(a) + b; }, 0.0, 5.0);
  EXPECT_DOUBLE_EQ(y.value, 5.0);
  EXPECT_TRUE(std::isinf(y.slopes[0]));
  EXPECT_EQ(y.slopes[1], 1.0);
  EXPECT_EQ(sqrt(One(0.0)).slopes[0], 0.0);
  EXPECT_EQ(asin(One(1.0)).slopes[0], 0.0);
}

TEST(Dual, AFormulaMayHaveNoArgumentsOrNotUseThem) {
  EXPECT_EQ(with_slopes([] { return 4.0; }).value, 4.0);
  const auto y = with_slopes([](auto /*unused*/) { return 4.0; }, 1.0);
  EXPECT_EQ(y.value, 4.0);
  EXPECT_EQ(y.slopes[0], 0.0);
}

// A chord c and its height h: r = (c^2 + 4 h^2) / (8 h). By hand at c = 24, h = 3: r = 25.5, dr/dc = c/(4h) =
// 2, dr/dh = 1/2 - c^2/(8 h^2) = -7.5.
TEST(Dual, RadiusFromChordAndHeight) {
  const auto y = with_slopes([](auto c, auto h) { return (c * c + 4.0 * h * h) / (8.0 * h); }, 24.0, 3.0);
  EXPECT_DOUBLE_EQ(y.value, 25.5);
  EXPECT_DOUBLE_EQ(y.slopes[0], 2.0);
  EXPECT_DOUBLE_EQ(y.slopes[1], -7.5);
}

}  // namespace
}  // namespace sparewright::formula
