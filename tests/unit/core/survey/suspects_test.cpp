#include "core/survey/suspects.hpp"

#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "networks.hpp"

namespace sparewright::survey {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::UnorderedElementsAre;
using tests::adjusted;
using tests::lengths;
using tests::network_of;

// Traces of unit length in two dimensions, at these angles in degrees: their odds are the parts of one plane normal number.
Traces plane(const std::vector<double>& degrees) {
  Traces traces;
  traces.white = Matrix(degrees.size(), degrees.size());
  traces.followed = Matrix(degrees.size(), 0);
  traces.along = Matrix(degrees.size(), 0);
  for (std::size_t i = 0; i < degrees.size(); ++i) {
    traces.white.at(i, 0) = std::cos(degrees[i] * 3.14159265358979323846 / 180.0);
    traces.white.at(i, 1) = std::sin(degrees[i] * 3.14159265358979323846 / 180.0);
    traces.lengths.push_back(1.0);
  }
  traces.misfit.assign(degrees.size(), 0.0);
  return traces;
}

// Two readings at right angles are independent: of two normal numbers one is beyond 2.7 with the chance
// 1 - (1 - 0.0069339)^2 = 0.0138197 (tables of the normal distribution).
TEST(Chance, OfTwoIndependentOnesIsThatOfOneOrTheOther) {
  EXPECT_NEAR(chance_of_largest(plane({0.0, 90.0}), 2.7), 0.0138197, 0.0138197 * kChanceError);
}

// Copies of one reading are one: beyond 2.7 with the chance 0.0069339, not seven times that.
TEST(Chance, OfCopiesIsThatOfOne) {
  EXPECT_NEAR(chance_of_largest(plane({0.0, 0.0, 0.0, 180.0, 0.0, 0.0, 0.0}), 2.7), 0.0069339,
              0.0069339 * kChanceError);
}

// So many directions that the largest is the length of the plane number: beyond 3.2 with the chance exp(-3.2^2/2) =
// 0.0059760 (Rayleigh's distribution).
TEST(Chance, OfAllDirectionsOfThePlaneIsRayleighs) {
  std::vector<double> degrees;
  for (int i = 0; i < 180; ++i)
    degrees.push_back(i);
  EXPECT_NEAR(chance_of_largest(plane(degrees), 3.2), 0.0059760, 0.0059760 * kChanceError);
}

TEST(Chance, IsABoundWhereItDecidesNothing) {
  EXPECT_NEAR(chance_of_largest(plane({0.0, 90.0}), 6.0), 2.0 * 1.9732e-9, 1e-12);
  EXPECT_EQ(chance_of_largest(plane({0.0, 90.0}), 0.5), 1.0);
}

// x three times, each to 0.01, the second 0.30 high: 0.295 over 0.01 * sqrt(3/2) = 24 of its doubts.
TEST(Suspects, OfAPlainMisreadingAreItAlone) {
  const auto report =
      adjusted(network_of(lengths({"x"}), {{"x", 10.0, 0.01}, {"x", 10.3, 0.01}, {"x", 10.01, 0.01}}));
  EXPECT_THAT(suspects(report.traces), ElementsAre(1));
  EXPECT_TRUE(report.at_odds->suspect);
}

// Of two readings of one size nothing tells which; of both, and one alone, neither.
TEST(Suspects, HoldThoseThatNothingTellsApart) {
  const auto report = adjusted(network_of(lengths({"x"}), {{"x", 10.0, 0.01}, {"x", 10.3, 0.01}}));
  EXPECT_THAT(suspects(report.traces), UnorderedElementsAre(0, 1));
}

// Two misread in opposite ways by much: no one error explains it.
TEST(Suspects, AreNoneWhereNoOneReadingExplains) {
  const auto report = adjusted(network_of(
      lengths({"x"}),
      {{"x", 10.0, 0.01}, {"x", 10.4, 0.01}, {"x", 9.6, 0.01}, {"x", 10.0, 0.01}, {"x", 10.0, 0.01}}));
  EXPECT_TRUE(report.at_odds->suspect);
  EXPECT_THAT(suspects(report.traces), IsEmpty());
}

// A chain x, y, x + y, each once: one spare reading, so all three errors look alike.
TEST(Suspects, OfOneSpareReadingAreAll) {
  const auto report =
      adjusted(network_of(lengths({"x", "y"}), {{"x", 10.0, 0.01}, {"y", 5.0, 0.02}, {"x + y", 15.2, 0.01}}));
  EXPECT_THAT(suspects(report.traces), UnorderedElementsAre(0, 1, 2));
  EXPECT_THAT(report.at_odds->alike, ElementsAre(1, 2));
}

TEST(Suspects, OfSoundReadingsAreNotCalledOut) {
  const auto report =
      adjusted(network_of(lengths({"x"}), {{"x", 10.0, 0.01}, {"x", 10.01, 0.01}, {"x", 9.99, 0.01}}));
  EXPECT_FALSE(report.at_odds->suspect);
  EXPECT_EQ(suspects(report.traces).size(), 3U);
}

}  // namespace
}  // namespace sparewright::survey
