// Published level nets: heights stand for the faces of a part, height differences for step readings.
#include <cmath>

#include <gtest/gtest.h>

#include "core/survey/adjust.hpp"
#include "core/survey/chi_square.hpp"
#include "networks.hpp"

namespace sparewright::survey {
namespace {

using tests::adjusted;
using tests::lengths;
using tests::network_of;

constexpr double kMetre = 1000.0;  // mm; the books' heights are in metres

// --- C. D. Ghilani, P. R. Wolf, Adjustment Computations, 4th ed., 2006, section 12.6, example 12.1
// ------------------
Adjustment ghilani() {
  return adjusted(network_of(lengths({"B", "C", "D"}), {{"B - 437.596 m", 10.509 * kMetre, 6.0},
                                                        {"C - B", 5.360 * kMetre, 4.0},
                                                        {"D - C", -8.523 * kMetre, 5.0},
                                                        {"437.596 m - D", -7.348 * kMetre, 3.0},
                                                        {"D - B", -3.167 * kMetre, 4.0},
                                                        {"C - 437.596 m", 15.881 * kMetre, 12.0}}));
}

struct Height {
  std::size_t unknown;
  double printed_m;
};
class OutsideGhilaniHeights : public testing::TestWithParam<Height> {};
TEST_P(OutsideGhilaniHeights, AreThePrintedOnes) {
  EXPECT_NEAR(ghilani().unknowns[GetParam().unknown].value / kMetre, GetParam().printed_m, 0.00005);
}
INSTANTIATE_TEST_SUITE_P(Printed, OutsideGhilaniHeights,
                         testing::Values(Height{0, 448.1087}, Height{1, 453.4685}, Height{2, 444.9436}));

TEST(OutsideGhilani, VarianceFactorIsThePrintedOne) {
  // Printed 0.4233 from residuals rounded to 0.1 mm; 0.4240 unrounded (recomputed).
  const auto report = ghilani();
  EXPECT_EQ(report.degrees_of_freedom, 3);
  EXPECT_NEAR(report.chi_square / 3.0, 0.4233, 0.001);
  EXPECT_NEAR(report.chi_square, 1.27212, 0.000005);
  EXPECT_TRUE(report.agree());
  EXPECT_FALSE(report.at_odds->suspect);
}

// Recomputed from the printed input by an independent script: residuals fitted less read in mm, redundancies,
// and residuals over their standard uncertainty after adjustment.
struct GhilaniRow {
  std::size_t reading;
  double residual_mm;
  double redundancy;
  double w;
};
class OutsideGhilaniReadings : public testing::TestWithParam<GhilaniRow> {};
TEST_P(OutsideGhilaniReadings, Agree) {
  const auto report = ghilani();
  const Fit& fit = report.readings[GetParam().reading];
  EXPECT_NEAR(-fit.residual, GetParam().residual_mm, 0.005);
  EXPECT_NEAR(fit.redundancy, GetParam().redundancy, 0.0005);
  EXPECT_NEAR(std::abs(*fit.standardised), GetParam().w, 0.005);
  EXPECT_NEAR(*fit.standardised, *fit.odds, 1e-9);  // one and the same for independent readings
}
INSTANTIATE_TEST_SUITE_P(Recomputed, OutsideGhilaniReadings,
                         testing::Values(GhilaniRow{0, 3.71, 0.655, 0.76}, GhilaniRow{1, -0.24, 0.329, 0.11},
                                         GhilaniRow{2, -1.86, 0.509, 0.52}, GhilaniRow{3, 0.39, 0.188, 0.30},
                                         GhilaniRow{4, 1.89, 0.433, 0.72},
                                         GhilaniRow{5, -8.53, 0.886, 0.76}));

TEST(OutsideGhilani, StandardErrorsAreThoseRecomputed) {
  const auto report = ghilani();
  const double before[] = {3.52, 4.05, 2.70};  // mm, from the stated standard deviations
  for (std::size_t j = 0; j < 3; ++j)
    EXPECT_NEAR(report.unknowns[j].u, before[j], 0.005);
}

struct GhilaniError {
  std::size_t unknown;
  double scaled_mm;  // times the root of the variance factor
};
class OutsideGhilaniErrors : public testing::TestWithParam<GhilaniError> {};
TEST_P(OutsideGhilaniErrors, ScaledByHowWellTheyAgree) {
  const auto report = ghilani();
  const double s0 = std::sqrt(report.chi_square / report.degrees_of_freedom);
  EXPECT_NEAR(report.unknowns[GetParam().unknown].u * s0, GetParam().scaled_mm, 0.01);
}
INSTANTIATE_TEST_SUITE_P(Recomputed, OutsideGhilaniErrors,
                         testing::Values(GhilaniError{0, 2.30}, GhilaniError{1, 2.64},
                                         GhilaniError{2, 1.76}));

TEST(OutsideGhilani, LiesWithinTheTwoSidedLimits) {
  // 95 % of chi-square with 3 degrees of freedom: 0.216 to 9.348.
  EXPECT_NEAR(chi_square_limit(0.025, 3), 0.216, 0.0005);
  EXPECT_NEAR(chi_square_limit(0.975, 3), 9.348, 0.0005);
  const auto report = ghilani();
  EXPECT_GT(report.chi_square, 0.216);
  EXPECT_LT(report.chi_square, 9.348);
  double redundancy = 0.0;
  for (const Fit& fit : report.readings)
    redundancy += fit.redundancy;
  EXPECT_NEAR(redundancy, 3.0, 1e-9);
}

// --- "Level network adjustment and data snooping", Budapest University of Technology, Dept. of Geodesy
// --------------
struct SnoopingRow {
  std::size_t reading;
  double v_mm;
  double t;
  double w;
  double r;
};
Adjustment snooping() {
  return adjusted(network_of(lengths({"P1", "P2", "P3"}), {{"P2 - P1", -0.749 * kMetre, 0.7 * 1.1},
                                                           {"P3 - P1", -1.274 * kMetre, 0.7 * 1.8},
                                                           {"101.345 m - P1", -2.890 * kMetre, 0.7 * 1.4},
                                                           {"P3 - P2", -0.530 * kMetre, 0.7 * 1.5},
                                                           {"101.345 m - P2", -2.141 * kMetre, 0.7 * 1.9},
                                                           {"101.345 m - P3", -1.614 * kMetre, 0.7 * 0.9}}));
}
class OutsideSnooping : public testing::TestWithParam<SnoopingRow> {};
TEST_P(OutsideSnooping, GivesThePrintedRow) {
  const auto report = snooping();
  const Fit& fit = report.readings[GetParam().reading];
  const double m0 = std::sqrt(report.chi_square / report.degrees_of_freedom);
  EXPECT_NEAR(-fit.residual, GetParam().v_mm, 0.006);
  EXPECT_NEAR(std::abs(*fit.standardised), GetParam().w, 0.051);
  EXPECT_NEAR(std::abs(*fit.standardised) / m0, GetParam().t, 0.051);
  EXPECT_NEAR(fit.redundancy, GetParam().r, 0.051);
}
INSTANTIATE_TEST_SUITE_P(
    Printed, OutsideSnooping,
    testing::Values(SnoopingRow{0, 0.81, 1.1, 1.9, 0.3}, SnoopingRow{1, -2.18, 1.3, 2.1, 0.7},
                    SnoopingRow{2, 0.00, 0.0, 0.0, 0.5}, SnoopingRow{3, 2.01, 1.6, 2.6, 0.5},
                    SnoopingRow{4, -0.81, 0.4, 0.7, 0.7}, SnoopingRow{5, 0.18, 0.4, 0.6, 0.2}));

TEST(OutsideSnooping, WholeNetIsAsPrinted) {
  const auto report = snooping();
  const double heights[] = {104.2350, 103.4868, 102.9588};
  const double sd_mm[] = {1.13, 1.19, 0.91};
  const double m0 = std::sqrt(report.chi_square / report.degrees_of_freedom);
  for (std::size_t j = 0; j < 3; ++j) {
    EXPECT_NEAR(report.unknowns[j].value / kMetre, heights[j], 0.00005);
    EXPECT_NEAR(report.unknowns[j].u * m0, sd_mm[j], 0.006);
  }
  EXPECT_NEAR(report.chi_square, 8.217, 0.003);
  EXPECT_NEAR(m0, 1.65, 0.006);
  EXPECT_EQ(report.degrees_of_freedom, 3);
  EXPECT_FALSE(report.agree());  // 8.217 against 7.81
  EXPECT_EQ(report.at_odds->reading, 3U);
  EXPECT_NEAR(report.at_odds->odds, 2.59, 0.006);
  EXPECT_FALSE(report.at_odds->suspect);  // below 3.29
}

// --- E. M. Mikhail, F. Ackermann, Observations and Least Squares, 1976, table 7-1: printed input, answers
// recomputed -
struct MikhailHeight {
  std::size_t unknown;
  double height_m;
};
Adjustment mikhail() {
  const auto row = [](const char* equation, double difference_m, double length_km) {
    return tests::Row{equation, difference_m * kMetre, std::sqrt(0.1 * length_km) * kMetre};
  };
  return adjusted(
      network_of(lengths({"B", "C", "D", "E"}),
                 {row("B - 800 m", 25.42, 18.1), row("C - B", 10.34, 9.4), row("800 m - C", -35.20, 14.2),
                  row("D - B", -15.54, 17.6), row("E - D", 21.32, 13.5), row("C - E", 4.82, 9.9),
                  row("800 m - E", -31.02, 13.8), row("D - C", -26.11, 14.0)}));
}
class OutsideMikhail : public testing::TestWithParam<MikhailHeight> {};
TEST_P(OutsideMikhail, GivesTheHeight) {
  EXPECT_NEAR(mikhail().unknowns[GetParam().unknown].value / kMetre, GetParam().height_m, 0.00005);
}
INSTANTIATE_TEST_SUITE_P(Recomputed, OutsideMikhail,
                         testing::Values(MikhailHeight{0, 825.2206}, MikhailHeight{1, 835.5354},
                                         MikhailHeight{2, 809.5339}, MikhailHeight{3, 830.8460}));

struct MikhailResidual {
  std::size_t reading;
  double residual_m;  // adjusted less read
};
class OutsideMikhailResiduals : public testing::TestWithParam<MikhailResidual> {};
TEST_P(OutsideMikhailResiduals, AreThoseRecomputed) {
  EXPECT_NEAR(-mikhail().readings[GetParam().reading].residual / kMetre, GetParam().residual_m, 0.0006);
}
INSTANTIATE_TEST_SUITE_P(Recomputed, OutsideMikhailResiduals,
                         testing::Values(MikhailResidual{0, -0.199}, MikhailResidual{1, -0.025},
                                         MikhailResidual{2, -0.335}, MikhailResidual{3, -0.147},
                                         MikhailResidual{4, -0.008}, MikhailResidual{5, -0.131},
                                         MikhailResidual{6, 0.174}, MikhailResidual{7, 0.108}));

TEST(OutsideMikhail, ReferenceVarianceIsThatRecomputed) {
  const auto report = mikhail();
  EXPECT_EQ(report.degrees_of_freedom, 4);
  EXPECT_NEAR(report.chi_square / 4.0, 0.04043, 0.000005);
}

}  // namespace
}  // namespace sparewright::survey
