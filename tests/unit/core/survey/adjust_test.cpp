#include "core/survey/adjust.hpp"

#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "networks.hpp"

namespace sparewright::survey {
namespace {

using base::Code;
using quantity::Kind;
using testing::ElementsAre;
using testing::IsEmpty;
using tests::adjusted;
using tests::lengths;
using tests::network_of;
using tests::share;

constexpr double kHand = 1e-12;  // rounding of a few operations on numbers below 10

// Two pins a and b, one thickness each, and the centres between them.
std::vector<Dimension> pins_and_centres() {
  return {{"a", Kind::kDiameter}, {"b", Kind::kDiameter}, {"centres", Kind::kLength}};
}

TEST(AdjustByHand, OverAndBetweenPinsGiveCentresWithoutThePins) {
  // (over + between)/2 = (6.6275 + 5.3775)/2; the pins go out, and only their sum is known: over - between =
  // a/2+b/2.
  const auto report = adjusted(network_of(
      pins_and_centres(), {{"centres + a/2 + b/2", 6.6275, 0.001}, {"centres - a/2 - b/2", 5.3775, 0.001}}));
  EXPECT_TRUE(report.unknowns[2].fixed);
  EXPECT_NEAR(report.unknowns[2].value, 6.0025, kHand);
  EXPECT_NEAR(report.unknowns[2].u, 0.001 / std::sqrt(2.0), kHand);
  EXPECT_FALSE(report.unknowns[2].checked);
  EXPECT_THAT(report.unknowns[2].unchecked_readings, ElementsAre(0, 1));
  ASSERT_EQ(report.gaps.size(), 1U);
  EXPECT_THAT(report.gaps[0].unknowns, ElementsAre(0, 1));
  EXPECT_EQ(report.gaps[0].readings_wanted, 1U);
  EXPECT_EQ(report.degrees_of_freedom, 0);
  EXPECT_FALSE(report.at_odds.has_value());
}

TEST(AdjustByHand, PinsOfEqualWeightLeaveCentresTheMean) {
  // With a = 0.7498 and b = 0.4985 known too: over - 0.62415 = 6.00335, between + 0.62415 = 6.00165; equal
  // weights again give 6.0025, and the half difference 0.00085 goes into the pins.
  const auto report = adjusted(network_of(pins_and_centres(), {{"a", 0.7498, 0.001},
                                                               {"b", 0.4985, 0.001},
                                                               {"centres + a/2 + b/2", 6.6275, 0.001},
                                                               {"centres - a/2 - b/2", 5.3775, 0.001}}));
  EXPECT_NEAR(report.unknowns[2].value, 6.0025, kHand);
  // Half the sum of the pins s = (a+b)/2: from the pins 0.62415 with variance 2/4, from over and between
  // (6.6275-5.3775)/2 = 0.625 with variance 2/4 (in units of 0.001^2): the mean 0.624575; each pin takes
  // half.
  EXPECT_NEAR(report.unknowns[0].value, 0.7498 + 0.000425, kHand);
  EXPECT_NEAR(report.unknowns[1].value, 0.4985 + 0.000425, kHand);
  EXPECT_EQ(report.degrees_of_freedom, 1);
  // chi-square: the discrepancy 0.00085 over its standard uncertainty sqrt(0.5 + 0.5) * 0.001, squared.
  EXPECT_NEAR(report.chi_square, 0.85 * 0.85, 1e-9);
  EXPECT_TRUE(report.agree());
  EXPECT_TRUE(report.unknowns[2].fixed);
  // An error of over alone moves centres and shows: all four are checked, and with one spare reading none can
  // be told from another.
  EXPECT_TRUE(report.unknowns[2].checked);
  ASSERT_TRUE(report.at_odds.has_value());
  EXPECT_EQ(report.at_odds->reading, 0U);
  EXPECT_THAT(report.at_odds->alike, ElementsAre(1, 2, 3));
  EXPECT_NEAR(report.at_odds->odds, 0.85, 1e-9);
  EXPECT_FALSE(report.at_odds->suspect);
}

TEST(AdjustByHand, ASharedZeroMovesTheCentres) {
  // One pin d, over and between, all u = 1 by themselves (numbers in thousandths): readings d, o = c + d, b =
  // c - d. A caliper zero z of variance 3 is shared by d and o but not by b. Independent: c and d from normal
  // equations c = (o + b)/2, d = (r + o - b)/3 with residuals alike: c = 6.0025 here.
  const auto unknowns = lengths({"c", "d"});
  auto network = network_of(unknowns, {{"d", 0.620, 1.0}, {"c + d", 6.6275, 1.0}, {"c - d", 5.3775, 1.0}});
  EXPECT_NEAR(adjusted(network).unknowns[0].value, 6.0025, kHand);

  // Shared: the one condition is t = o - b - 2 r = 6.6275 - 5.3775 - 1.24 = 0.01 (row B = (-2, 1, -1)).
  // S = [[4,3,0],[3,4,0],[0,0,1]]; S B' = (-8+3, -6+4, -1) = (-5, -2, -1); B S B' = 10 - 2 + 1 = 9.
  // Corrections v = S B' t / 9 = (-5, -2, -1) * 0.01/9; adjusted y - v: o + 0.02/9, b + 0.01/9;
  // c = (o + b)/2 = 6.0025 + 0.015/9.
  share(network, {0, 1}, std::sqrt(3.0));
  const auto report = adjusted(network);
  EXPECT_NEAR(report.unknowns[0].value, 6.0025 + 0.015 / 9.0, kHand);
  EXPECT_NEAR(report.unknowns[1].value, 0.620 + 0.05 / 9.0, kHand);
  EXPECT_NEAR(report.chi_square, 0.01 * 0.01 / 9.0, kHand);
  EXPECT_NEAR(report.readings[0].residual, -0.05 / 9.0, kHand);
  // Residual variances: (S B')(B S)/9 on the diagonal: 25/9, 4/9, 1/9.
  EXPECT_NEAR(report.readings[0].residual_u, 5.0 / 3.0, kHand);
  EXPECT_NEAR(report.readings[2].residual_u, 1.0 / 3.0, kHand);
  // Redundancies: diagonal of S B' B / 9: (-5)(-2)/9, (-2)(1)/9, (-1)(-1)/9: they sum to 1, one of them
  // negative.
  EXPECT_NEAR(report.readings[0].redundancy, 10.0 / 9.0, kHand);
  EXPECT_NEAR(report.readings[1].redundancy, -2.0 / 9.0, kHand);
  EXPECT_NEAR(report.readings[2].redundancy, 1.0 / 9.0, kHand);
  // Variance of c = (o + b)/2 - (C S B')^2 / 9 with C = (0, 1/2, 1/2): C S C' = 4/4 + 1/4, C S B' = -1.5.
  EXPECT_NEAR(report.unknowns[0].u, std::sqrt(1.25 - 2.25 / 9.0), kHand);
}

TEST(AdjustByHand, ATotallySharedZeroCancelsInADifference) {
  // Two lengths read with one caliper whose zero is far worse than its steps: the difference is what stays
  // sharp.
  auto network = network_of(lengths({"long", "short"}), {{"long", 50.0, 0.01}, {"short", 20.0, 0.01}});
  share(network, {0, 1}, 1.0);
  const auto report = adjusted(network);
  const double difference =
      report.covariance.at(0, 0) + report.covariance.at(1, 1) - 2 * report.covariance.at(0, 1);
  EXPECT_NEAR(report.unknowns[0].u, std::hypot(1.0, 0.01), 1e-9);
  EXPECT_NEAR(std::sqrt(difference), 0.01 * std::sqrt(2.0), 1e-9);
}

TEST(AdjustByHand, ARadiusFromChordAndHeight) {
  // r = (c^2 + 4 h^2)/(8 h) for c = 24, h = 3 is 25.5; slopes of r: 2 by c, -7.5 by h (see the outside test).
  // Read the other way: the chord is what a radius and a height make it, c = sqrt(8 r h - 4 h^2).
  const auto report =
      adjusted(network_of(lengths({"r", "h"}), {{"sqrt(8*r*h - 4*h^2)", 24.0, 0.01}, {"h", 3.0, 0.002}}));
  EXPECT_NEAR(report.unknowns[0].value, 25.5, 1e-9);
  EXPECT_NEAR(report.slopes.at(0, 0), 2.0, 1e-9);
  EXPECT_NEAR(report.slopes.at(0, 1), -7.5, 1e-9);
  EXPECT_NEAR(report.unknowns[0].u, std::hypot(0.02, 0.015), 1e-9);
}

TEST(AdjustGaps, NoReadingsLeaveEverythingOpen) {
  const auto report = adjusted(network_of(lengths({"x", "y"}), {}));
  ASSERT_EQ(report.gaps.size(), 2U);
  EXPECT_THAT(report.gaps[0].unknowns, ElementsAre(0));
  EXPECT_THAT(report.gaps[1].unknowns, ElementsAre(1));
  EXPECT_FALSE(report.unknowns[0].fixed);
  EXPECT_EQ(report.degrees_of_freedom, 0);
}

TEST(AdjustGaps, ADifferenceAloneFixesNeitherEnd) {
  const auto report = adjusted(network_of(lengths({"x", "y", "z"}), {{"x - y", 3.0, 0.1}, {"z", 2.0, 0.1}}));
  EXPECT_FALSE(report.unknowns[0].fixed);
  EXPECT_FALSE(report.unknowns[1].fixed);
  EXPECT_TRUE(report.unknowns[2].fixed);
  ASSERT_EQ(report.gaps.size(), 1U);
  EXPECT_THAT(report.gaps[0].unknowns, ElementsAre(0, 1));
}

TEST(AdjustGaps, TwoReadingsAreWantedWhereTwoWaysAreOpen) {
  const auto report = adjusted(network_of(lengths({"x", "y", "z"}), {{"x + y + z", 30.0, 0.1}}));
  ASSERT_EQ(report.gaps.size(), 1U);
  EXPECT_THAT(report.gaps[0].unknowns, ElementsAre(0, 1, 2));
  EXPECT_EQ(report.gaps[0].readings_wanted, 2U);
}

TEST(AdjustGaps, HowFineAReadingIsHasNothingToDoWithWhatIsFixed) {
  // b + c to a millionth of what a + b is read to: still nothing fixes a, b or c.
  const auto report =
      adjusted(network_of(lengths({"a", "b", "c"}), {{"a + b", 10.0, 1.0}, {"b + c", 11.0, 1e-6}}));
  ASSERT_EQ(report.gaps.size(), 1U);
  EXPECT_THAT(report.gaps[0].unknowns, ElementsAre(0, 1, 2));
}

TEST(AdjustGaps, SpareReadingsOfAnOpenPairStillCheckEachOther) {
  // x + y three times: neither is fixed, yet the third reading is plainly out.
  const auto report = adjusted(network_of(
      lengths({"x", "y"}), {{"x + y", 10.0, 0.01}, {"x + y", 10.01, 0.01}, {"x + y", 10.5, 0.01}}));
  EXPECT_FALSE(report.unknowns[0].fixed);
  EXPECT_EQ(report.degrees_of_freedom, 2);
  ASSERT_TRUE(report.at_odds.has_value());
  EXPECT_EQ(report.at_odds->reading, 2U);
  EXPECT_TRUE(report.at_odds->suspect);
  EXPECT_NEAR(*report.readings[2].error, 0.495, 1e-9);  // against the mean of the other two
}

TEST(AdjustChecks, AReadingThatStandsAloneIsNotChecked) {
  const auto report =
      adjusted(network_of(lengths({"x", "y"}), {{"x", 10.0, 0.01}, {"x", 10.02, 0.01}, {"y", 5.0, 0.01}}));
  EXPECT_TRUE(report.unknowns[0].checked);
  EXPECT_FALSE(report.unknowns[1].checked);
  EXPECT_THAT(report.unknowns[1].unchecked_readings, ElementsAre(2));
  EXPECT_FALSE(report.readings[2].odds.has_value());
  EXPECT_FALSE(report.readings[2].standardised.has_value());
}

TEST(AdjustChecks, AThirdReadingSettlesWhichOfTheOthersIsOut) {
  const auto report =
      adjusted(network_of(lengths({"x"}), {{"x", 10.0, 0.01}, {"x", 10.3, 0.01}, {"x", 10.01, 0.01}}));
  ASSERT_TRUE(report.at_odds.has_value());
  EXPECT_EQ(report.at_odds->reading, 1U);
  EXPECT_THAT(report.at_odds->alike, IsEmpty());
  // 0.3 against 0.005: 0.295 over 0.01 * sqrt(3/2).
  EXPECT_NEAR(report.at_odds->odds, 0.295 / (0.01 * std::sqrt(1.5)), 1e-6);
  EXPECT_FALSE(report.agree());
}

TEST(AdjustChecks, ASharedZeroDoesNotMakeALoneReadingChecked) {
  auto network = network_of(lengths({"x", "y"}), {{"x", 10.0, 0.01}, {"x", 10.02, 0.01}, {"y", 5.0, 0.01}});
  share(network, {0, 2}, 0.02);
  EXPECT_FALSE(adjusted(network).readings[2].checked);
}

TEST(AdjustDegenerate, AnExactReadingIsMet) {
  const auto report = adjusted(network_of(lengths({"x"}), {{"x", 10.0, 0.0}, {"x", 10.3, 0.1}}));
  EXPECT_TRUE(report.mended);
  EXPECT_NEAR(report.unknowns[0].value, 10.0, 1e-9);
  EXPECT_NEAR(report.unknowns[0].u, 0.0, 1e-6);
}

TEST(AdjustDegenerate, TwoCopiesOfOneErrorCountOnce) {
  // x read twice with no error but a common one: as good as one reading, and the mean of the two.
  auto network = network_of(lengths({"x"}), {{"x", 10.0, 0.0}, {"x", 10.0, 0.0}});
  share(network, {0, 1}, 0.1);
  const auto report = adjusted(network);
  EXPECT_TRUE(report.mended);
  EXPECT_NEAR(report.unknowns[0].value, 10.0, 1e-9);
  EXPECT_NEAR(report.unknowns[0].u, 0.1, 1e-6);
}

TEST(AdjustDegenerate, NoErrorAnywhereIsPlainLeastSquares) {
  const auto report = adjusted(network_of(lengths({"x"}), {{"x", 10.0, 0.0}, {"x", 11.0, 0.0}}));
  EXPECT_NEAR(report.unknowns[0].value, 10.5, kHand);
}

TEST(AdjustDegenerate, ContradictoryReadingsAreSaidToBe) {
  const auto report = adjusted(network_of(lengths({"x"}), {{"x", 10.0, 0.01}, {"x", 254.0, 0.01}}));
  EXPECT_FALSE(report.agree());
  EXPECT_THAT(report.at_odds->alike, ElementsAre(1));
  EXPECT_TRUE(report.at_odds->suspect);
}

TEST(AdjustDegenerate, AnEquationThatCanNeverGiveTheReadingDoesNotHang) {
  // sqrt(x^2 + (3 mm)^2) is never 1 mm: the nearest is x = 0, where the slope is nothing.
  const auto adjustment = adjust(network_of(lengths({"x"}), {{"sqrt(x^2 + (3 mm)^2)", 1.0, 0.01}}));
  if (adjustment) {
    EXPECT_GT(adjustment->chi_square, 1e4);
  } else {
    EXPECT_EQ(adjustment.error().code, Code::kReadingsDisagree);
  }
}

TEST(AdjustDegenerate, TooManyReadingsAreRefused) {
  const std::vector<tests::Row> rows(kMostReadings + 1, {"x", 1.0, 0.1});
  const auto adjustment = adjust(network_of(lengths({"x"}), rows));
  ASSERT_FALSE(adjustment.has_value());
  EXPECT_EQ(adjustment.error().code, Code::kTooMany);
}

TEST(AdjustDegenerate, AnUnknownNameIsRefused) {
  auto network = network_of(lengths({"bore"}), {{"bore", 1.0, 0.1}});
  network.unknowns = lengths({"bors"});
  const auto adjustment = adjust(network);
  ASSERT_FALSE(adjustment.has_value());
  EXPECT_EQ(adjustment.error().code, Code::kNameUnknown);
}

}  // namespace
}  // namespace sparewright::survey
