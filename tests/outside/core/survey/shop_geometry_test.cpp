// Published shop geometry, solved backwards where it can be: the formula is the reading's equation, and the
// adjustment has to find the dimension from it.
#include <cmath>
#include <numbers>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/survey/adjust.hpp"
#include "core/survey/corrected.hpp"
#include "networks.hpp"
#include "surveys.hpp"

namespace sparewright::survey {
namespace {

using quantity::Kind;
using tests::adjusted;
using tests::lengths;
using tests::network_of;

constexpr double kInch = 25.4;
constexpr double kDegree = std::numbers::pi / 180.0;

// r = (c^2 + 4 h^2)/(8 h) for chord c and height h: Math Central, University of Regina, question QQ.09.06.
// First-order slopes dr/dc = c/(4 h), dr/dh = 1/2 - c^2/(8 h^2), derived from it: c = 24, h = 3 give r
// = 25.5, 2 and -7.5.
TEST(OutsideShopGeometry, RadiusFromChordAndHeight) {
  const std::vector<Dimension> unknowns{{"r", Kind::kRadius}, {"c", Kind::kLength}, {"h", Kind::kLength}};
  const auto report = adjusted(
      network_of(unknowns, {{"c", 24.0, 0.02}, {"h", 3.0, 0.01}, {"r - (c^2 + 4*h^2)/(8*h)", 0.0, 1e-6}}));
  EXPECT_NEAR(report.unknowns[0].value, 25.5, 1e-9);
  EXPECT_NEAR(report.slopes.at(0, 0), 2.0, 1e-9);
  EXPECT_NEAR(report.slopes.at(0, 1), -7.5, 1e-9);
  EXPECT_NEAR(report.unknowns[0].u, std::hypot(0.04, 0.075), 1e-9);
}

// Centres of two holes from the webs, O outside to outside and I inside to inside: C = (O + I)/2 whatever the
// holes are, and O - I = d1 + d2. Plane geometry.
TEST(OutsideShopGeometry, CentresFromTheWebsOfTwoHoles) {
  const std::vector<Dimension> unknowns{{"C", Kind::kLength}, {"d", Kind::kDiameter}};
  const auto report =
      adjusted(network_of(unknowns, {{"C + d/2 + d/2", 62.0, 0.02}, {"C - d/2 - d/2", 38.0, 0.02}}));
  EXPECT_NEAR(report.unknowns[0].value, 50.0, 1e-12);
  EXPECT_NEAR(report.unknowns[1].value, 12.0, 1e-12);
}

// Machinery's Handbook, 31st ed., p. 703, V groove over two pins: X = Z + 2 R (1 + csc((a+b)/2)
// cos((a-b)/2)); R = 0.500, Z = 1.824, a = 45 deg, b = 35 deg give X = 4.374. Here Z is found from X.
TEST(OutsideShopGeometry, VGrooveOverTwoPins) {
  const std::vector<Dimension> unknowns{{"Z", Kind::kLength}};
  const auto report = adjusted(
      network_of(unknowns, {{"Z + 2*0.5 in*(1 + cos(5 deg)/sin(40 deg))", 4.374 * kInch, 0.001 * kInch}}));
  EXPECT_NEAR(report.unknowns[0].value / kInch, 1.824, 0.0005);
}

// Machinery's Handbook, 31st ed., p. 701 (the first two also in Jones, Turning and Boring): two disks of the
// diameters d and D, centres apart, in a taper of an included angle: sin(angle/2) = (D - d)/(2 centres). The
// angle is found from the disks, the printed centre distance and the geometry.
struct Disks {
  double small_in;
  double large_in;
  double centres_in;
  double angle_deg;
};
class OutsideTwoDisks : public testing::TestWithParam<Disks> {};
TEST_P(OutsideTwoDisks, GiveTheAngle) {
  const Disks& disks = GetParam();
  const std::vector<Dimension> unknowns{{"angle", Kind::kAngle}};
  const auto report = adjusted(
      network_of(unknowns, {{fmt::format("({} in - {} in)/(2*sin(angle/2))", disks.large_in, disks.small_in),
                             disks.centres_in * kInch, 0.01}}));
  // The printed centres are rounded to 0.001 in of 4 to 6, so the angle is good to half of that part.
  EXPECT_NEAR(report.unknowns[0].value / kDegree / disks.angle_deg, 1.0, 0.0005 / disks.centres_in);
}
const double kThreeQuarterTaper = 2.0 * std::atan(0.75 / 24.0) / kDegree;  // 3/4 in per ft on the diameter
const double kTaper12015 = 2.0 * std::atan(1.2015 / 24.0) / kDegree;       // disks 1 and 1.5, centres 5
INSTANTIATE_TEST_SUITE_P(Handbook, OutsideTwoDisks,
                         testing::Values(Disks{1.25, 1.5, 4.002, kThreeQuarterTaper},
                                         Disks{1.0, 3.0, 5.759, 20.0}, Disks{1.0, 1.5, 5.0, kTaper12015}));

// Taper ring with two balls of 40 and 32 mm, the large 8 mm above the face, the top of the small 76 mm below
// it: centre distance 80 mm, included angle 5.732 deg (geometry of a question bank's example, worked out).
TEST(OutsideShopGeometry, TaperRingWithTwoBalls) {
  const std::vector<Dimension> unknowns{{"angle", Kind::kAngle}};
  const auto report = adjusted(
      network_of(unknowns, {{"(40 mm - 32 mm)/2/sin(angle/2) - 40 mm/2 + 8 mm + 32 mm/2", 84.0, 0.02}}));
  EXPECT_NEAR(report.unknowns[0].value / kDegree, 5.732, 0.0005);
}

// Dovetail over pins (plane geometry): x = a + D (1 + 1/tan(alpha/2)); D = 0.500, alpha = 60 deg, a = 2.000
// give x = 3.3660. Both the width and the angle are found, from two sizes of pins.
TEST(OutsideShopGeometry, DovetailOverTwoSizesOfPins) {
  const std::vector<Dimension> unknowns{{"a", Kind::kLength}, {"alpha", Kind::kAngle}};
  const double over_small = 2.0 + 0.25 * (1.0 + 1.0 / std::tan(30.0 * kDegree));
  const auto report = adjusted(
      network_of(unknowns, {{"a + 0.5 in*(1 + 1/tan(alpha/2))", 3.3660254 * kInch, 0.001 * kInch},
                            {"a + 0.25 in*(1 + 1/tan(alpha/2))", over_small * kInch, 0.001 * kInch}}));
  EXPECT_NEAR(report.unknowns[0].value / kInch, 2.0, 1e-6);
  EXPECT_NEAR(report.unknowns[1].value / kDegree, 60.0, 1e-5);
}

// W. Gander, G. H. Golub, R. Strebel, BIT 34 (1994) 558-578: the circle nearest to six points, centre
// (4.7398, 2.9835), radius 4.7142, as distances from the centre less the radius that should be nothing.
TEST(OutsideShopGeometry, CircleThroughSixPoints) {
  const double points[][2] = {{1, 7}, {2, 6}, {5, 8}, {7, 7}, {9, 5}, {3, 7}};
  std::vector<tests::Row> rows;
  for (const auto& p : points) {
    rows.push_back({fmt::format("sqrt((x - {} mm)^2 + (y - {} mm)^2) - r", p[0], p[1]), 0.0, 1.0});
  }
  const auto report = adjusted(network_of(lengths({"x", "y", "r"}), rows));
  EXPECT_NEAR(report.unknowns[0].value, 4.7398, 0.00005);
  EXPECT_NEAR(report.unknowns[1].value, 2.9835, 0.00005);
  EXPECT_NEAR(report.unknowns[2].value, 4.7142, 0.00005);
  EXPECT_NEAR(report.chi_square, 1.22760, 0.000005);  // recomputed, not printed
}

// JCGM 100:2008, 4.4.3: twenty readings, mean 100.145, s 1.489, s of the mean 0.333, 19 degrees of freedom.
// (There in degrees Celsius, here in mm.)
TEST(OutsideGum, TwentyRepeatsOf443) {
  auto twenty = tests::reading(
      "t", Way::kOutside, {"x"}, "any",
      {"96.90 mm",  "98.18 mm",  "98.25 mm",  "98.61 mm",  "99.03 mm",  "99.49 mm",  "99.56 mm",
       "99.74 mm",  "99.89 mm",  "100.07 mm", "100.33 mm", "100.42 mm", "100.68 mm", "100.95 mm",
       "101.11 mm", "101.20 mm", "101.57 mm", "101.84 mm", "102.36 mm", "102.72 mm"});
  const auto as_it_counts = corrected(twenty, tests::instrument("any", "1 mm", "0.01 mm"));
  EXPECT_NEAR(as_it_counts.value, 100.145, 0.0005);
  for (const ledger::Share& share : as_it_counts.shares) {
    if (share.cause != "reading/t/scatter") continue;
    EXPECT_NEAR(share.amount, 0.333, 0.0005);
    EXPECT_NEAR(share.amount * std::sqrt(20.0), 1.489, 0.0005);
    EXPECT_EQ(share.degrees_of_freedom, 19.0);
    return;
  }
  FAIL() << "no scatter";
}

// EA-4/02 (1999), S10, a vernier caliper: resolution 0.05 mm gives 14.4 um (15 printed), mechanical effects
// of
// +-50 um give 28.9 um (29 printed). From memory.
TEST(RememberedEuropeanAccreditation, CaliperOfS10) {
  const auto as_it_counts = corrected(tests::reading("block", Way::kOutside, {"x"}, "caliper", {"150.10 mm"}),
                                      tests::instrument("caliper", "0.05 mm", "0.05 mm"));
  double resolution = 0.0;
  double mechanical = 0.0;
  for (const ledger::Share& share : as_it_counts.shares) {
    if (share.cause == "reading/block/resolution") resolution = share.amount;
    if (share.cause == "reading/block/good to") mechanical = share.amount;
  }
  EXPECT_NEAR(resolution, 0.0144, 0.00005);
  EXPECT_NEAR(mechanical, 0.0289, 0.00005);
}

}  // namespace
}  // namespace sparewright::survey
