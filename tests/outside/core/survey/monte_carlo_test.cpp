// The draws and what is made of them, against the worked examples of JCGM 101:2008 (Supplement 1 to the GUM) and of NIST
// Technical Note 1900, as their numbers are quoted in the documentation of the R package `propagate`; what is from memory is in
// the suite Remembered. Tolerances: half a unit of the last figure printed, and five standard deviations of what so many
// draws leave open (of a standard uncertainty u/sqrt(2 M), of a limit of the interval sqrt(p (1 - p) / M) over the density
// there, taken from the spread itself).
#include <cmath>
#include <functional>
#include <numbers>
#include <vector>

#include <gtest/gtest.h>

#include "core/survey/draws.hpp"

namespace sparewright {
namespace {

using survey::Distribution;
using survey::Draws;
using survey::Spread;

constexpr std::size_t kDraws = 400'000;

// One input: its middle, and what it is multiplied by.
struct Input {
  Distribution distribution = Distribution::kNormal;
  double middle = 0.0;
  double deviation = 1.0;
  double degrees_of_freedom = 0.0;
};

// Half-width of a rectangle to its standard deviation: JCGM 100:2008, 4.3.7.
Input rectangle(double low, double high) {
  return {Distribution::kRectangular, (low + high) / 2.0, (high - low) / 2.0 / std::numbers::sqrt3};
}
Input normal(double middle, double deviation) {
  return {Distribution::kNormal, middle, deviation};
}
Input student(double middle, double scale, double degrees_of_freedom) {
  return {Distribution::kStudent, middle, scale, degrees_of_freedom};
}

Spread spread_of(const std::vector<Input>& inputs,
                 const std::function<double(const std::vector<double>&)>& of, double probability = 0.95) {
  Draws draws(20'251'101);
  std::vector<std::vector<double>> columns;
  for (const Input& input : inputs) {
    columns.emplace_back(kDraws);
    draws.fill(columns.back(), input.distribution, input.degrees_of_freedom);
    for (double& one : columns.back())
      one = input.middle + input.deviation * one;
  }
  std::vector<double> out;
  std::vector<double> row(inputs.size());
  for (std::size_t d = 0; d < kDraws; ++d) {
    for (std::size_t i = 0; i < row.size(); ++i)
      row[i] = columns[i][d];
    out.push_back(of(row));
  }
  return survey::spread_of(out, probability);
}

double sum(const std::vector<double>& x) {
  double total = 0.0;
  for (const double one : x)
    total += one;
  return total;
}

// JCGM 101:2008, 9.2.2: four normal inputs of standard deviation 1: u 2.00, 95 % within -3.92 to 3.92.
TEST(OutsideMonteCarlo, SumOfFourNormals) {
  const Spread s = spread_of({normal(0, 1), normal(0, 1), normal(0, 1), normal(0, 1)}, sum);
  EXPECT_NEAR(s.mean, 0.0, 0.005 + 0.016);
  EXPECT_NEAR(s.deviation, 2.00, 0.005 + 0.011);
  EXPECT_NEAR(s.low, -3.92, 0.005 + 0.042);
  EXPECT_NEAR(s.high, 3.92, 0.005 + 0.042);
}

// JCGM 101:2008, 9.2.3: four rectangles of standard deviation 1: u 2.00, 95 % within -3.88 to 3.88.
TEST(OutsideMonteCarlo, SumOfFourRectangles) {
  const Input one = rectangle(-std::numbers::sqrt3, std::numbers::sqrt3);
  const Spread s = spread_of({one, one, one, one}, sum);
  EXPECT_NEAR(s.deviation, 2.00, 0.005 + 0.011);
  EXPECT_NEAR(s.low, -3.88, 0.005 + 0.036);
  EXPECT_NEAR(s.high, 3.88, 0.005 + 0.036);
}

// JCGM 101:2008, 9.2.4: the fourth ten times as wide: u 10.1, 95 % within -17.0 to 17.0 (the law of propagation says 19.9; that from memory).
TEST(OutsideMonteCarlo, OneRectangleMuchWider) {
  const Input one = rectangle(-std::numbers::sqrt3, std::numbers::sqrt3);
  const Input wide = rectangle(-10.0 * std::numbers::sqrt3, 10.0 * std::numbers::sqrt3);
  const Spread s = spread_of({one, one, one, wide}, sum);
  EXPECT_NEAR(s.deviation, 10.1, 0.05 + 0.056);
  EXPECT_NEAR(s.low, -17.0, 0.05 + 0.05);
  EXPECT_NEAR(s.high, 17.0, 0.05 + 0.05);
}

// JCGM 101:2008, 9.3, a weight compared with another in air, mg and kg/m3: u 0.0754, shortest 95 % 1.0834 to 1.3825
// (from memory; that interval is flat, its ends wander by some 0.003).
TEST(RememberedMonteCarlo, MassCalibration) {
  const Spread s =
      spread_of({normal(100'000.000, 0.050), normal(1.234, 0.020), rectangle(1.10, 1.30),
                 rectangle(7000, 9000), rectangle(7950, 8050)},
                [](const std::vector<double>& x) {
                  return (x[0] + x[1]) * (1.0 + (x[2] - 1.2) * (1.0 / x[3] - 1.0 / x[4])) - 100'000.0;
                });
  EXPECT_NEAR(s.mean, 1.2341, 0.00005 + 0.0006);
  EXPECT_NEAR(s.deviation, 0.0754, 0.00005 + 0.0005);
  EXPECT_NEAR(s.shortest_low, 1.0834, 0.006);
  EXPECT_NEAR(s.shortest_high, 1.3825, 0.006);
}

// JCGM 101:2008, 9.4 (from memory): the sum of two squares, times 1e-6. The law of propagation gives u 0 at x1 = 0.
TEST(RememberedMonteCarlo, SquaresOfSmallNumbersAtNothing) {
  const Spread s = spread_of({normal(0, 5), normal(0, 5)},
                             [](const std::vector<double>& x) { return x[0] * x[0] + x[1] * x[1]; });
  EXPECT_NEAR(s.mean, 50.0, 0.5 + 0.4);
  EXPECT_NEAR(s.deviation, 50.0, 0.5 + 0.6);
  EXPECT_NEAR(s.shortest_low, 0.0, 0.5);
  EXPECT_NEAR(s.shortest_high, 150.0, 0.5 + 1.8);
}

TEST(RememberedMonteCarlo, SquaresOfSmallNumbersAtTen) {
  const Spread s = spread_of({normal(10, 5), normal(0, 5)},
                             [](const std::vector<double>& x) { return x[0] * x[0] + x[1] * x[1]; });
  EXPECT_NEAR(s.mean, 150.0, 0.5 + 0.9);
  EXPECT_NEAR(s.deviation, 112.0, 0.5 + 1.0);
  EXPECT_NEAR(s.shortest_high, 367.0, 0.5 + 3.5);
}

TEST(RememberedMonteCarlo, SquaresOfSmallNumbersAtFifty) {
  const Spread s = spread_of({normal(50, 5), normal(0, 5)},
                             [](const std::vector<double>& x) { return x[0] * x[0] + x[1] * x[1]; });
  EXPECT_NEAR(s.mean, 2551.0, 0.5 + 4.0);
  EXPECT_NEAR(s.deviation, 502.0, 0.5 + 3.0);
}

// JCGM 101:2008, 9.5 (the end gauge of GUM H.1), nm: 838, u 36. Table 10: limits that are themselves not exact are drawn
// first, then between them (6.4.3.4).
TEST(OutsideMonteCarlo, EndGauge) {
  const double root3 = std::numbers::sqrt3;
  const std::vector<Input> inputs{
      student(50'000'623, 25, 18),
      student(215, 6, 24),
      student(0, 4, 5),
      student(0, 7, 8),
      rectangle(9.5e-6, 13.5e-6),
      normal(-0.1, 0.2),
      {Distribution::kArcsine, 0.0, 0.5 / std::numbers::sqrt2},
      rectangle(0.9e-6, 1.1e-6),                       // half-width of the difference of expansion
      {Distribution::kRectangular, 0.0, 1.0 / root3},  // where between its limits
      rectangle(0.025, 0.075),                         // of the difference of temperature
      {Distribution::kRectangular, 0.0, 1.0 / root3},
  };
  const Spread s = spread_of(
      inputs,
      [](const std::vector<double>& x) {
        const double ls = x[0];
        const double d = x[1] + x[2] + x[3];
        const double theta = x[5] + x[6];
        const double da = x[7] * x[8];
        const double dt = x[9] * x[10];
        return (ls * (1.0 + x[4] * (theta - dt)) + d) / (1.0 + (x[4] + da) * theta) - 50'000'000.0;
      },
      0.99);
  EXPECT_NEAR(s.mean, 838.0, 0.5 + 0.3);
  EXPECT_NEAR(s.deviation, 36.0, 0.5 + 0.3);
}

// NIST Technical Note 1900 (2015), example E3, falling-ball viscometer: 5.82 mPa s, u 1.11, 95 % within 4.05 to 8.39 (the
// straight line gives 5.69).
TEST(OutsideMonteCarlo, Viscosity) {
  const Spread s = spread_of(
      {normal(4.63, 0.0463), normal(61, 6.1), normal(36.6, 5.49), normal(2217, 0.5), normal(1180, 0.5),
       normal(810, 0.5)},
      [](const std::vector<double>& x) { return x[0] * x[1] * (x[3] - x[4]) / (x[2] * (x[3] - x[5])); });
  EXPECT_NEAR(s.mean, 5.82, 0.005 + 0.009);
  EXPECT_NEAR(s.deviation, 1.11, 0.005 + 0.02);
  EXPECT_NEAR(s.low, 4.05, 0.005 + 0.02);
  EXPECT_NEAR(s.high, 8.39, 0.005 + 0.05);
}

// EA-4/02 M:2013, S10 (from memory), a vernier caliper at 150 mm, um: the division of 0.05 mm (+-25) and play, Abbe error and
// force (+-50) outweigh the rest, the sum is a trapezoid and k is 1.83, not 2: U 0.06 mm.
TEST(RememberedMonteCarlo, VernierCaliper) {
  const Spread s =
      spread_of({rectangle(-0.8, 0.8), rectangle(-3.45, 3.45), rectangle(-25, 25), rectangle(-50, 50)}, sum);
  const double half = (s.high - s.low) / 2.0;
  EXPECT_NEAR(s.deviation, 32.3, 0.05 + 0.2) << "printed 33, from rows rounded up";
  EXPECT_NEAR(half / s.deviation, 1.83, 0.005 + 0.01);
  EXPECT_NEAR(half, 60.0, 5.0);
}

// Deaver, Managing calibration confidence in the real world, NCSL 1995: a process of standard deviation 4 in +-8, measured
// to 1: 0.8 % are taken that are out, 1.5 % refused that are in.
TEST(OutsideMonteCarlo, TakenAndRefusedWrongly) {
  Draws draws(7);
  std::vector<double> made(kDraws);
  std::vector<double> error(kDraws);
  draws.fill(made, Distribution::kNormal);
  draws.fill(error, Distribution::kNormal);
  double taken = 0.0;
  double refused = 0.0;
  for (std::size_t d = 0; d < kDraws; ++d) {
    const bool is_in = std::abs(4.0 * made[d]) <= 8.0;
    const bool reads_in = std::abs(4.0 * made[d] + error[d]) <= 8.0;
    if (reads_in && !is_in) taken += 1.0 / kDraws;
    if (!reads_in && is_in) refused += 1.0 / kDraws;
  }
  EXPECT_NEAR(taken, 0.008, 0.0005 + 0.0008);
  EXPECT_NEAR(refused, 0.015, 0.0005 + 0.001);
}

// NPL report DEM-ES-011, 9.2: ln x, x between 0.1 and 1.1. By integration: mean -0.6649, u 0.6062, shortest 95 % -1.897 to
// 0.0953 (= ln 1.1).
TEST(OutsideMonteCarlo, LogarithmOfARectangle) {
  const Spread s =
      spread_of({rectangle(0.1, 1.1)}, [](const std::vector<double>& x) { return std::log(x[0]); });
  EXPECT_NEAR(s.mean, -0.6649, 0.0048);
  EXPECT_NEAR(s.deviation, 0.6062, 0.004);
  EXPECT_NEAR(s.shortest_low, -1.897, 0.012);
  EXPECT_NEAR(s.shortest_high, std::log(1.1), 1e-3);
}

}  // namespace
}  // namespace sparewright
