// The ways of measuring against printed numbers: each reading put in, the dimension has to come out.
#include "core/survey/ways.hpp"

#include <cmath>
#include <numbers>
#include <utility>

#include <gtest/gtest.h>

#include "core/survey/equation.hpp"
#include "surveys.hpp"

namespace sparewright::survey {
namespace {

using quantity::Kind;

constexpr double kInch = 25.4;
constexpr double kDegree = std::numbers::pi / 180.0;

// What a way reads, in mm, of dimensions with these values (mm, rad), named in the order of the way.
double reads(Way way, const std::vector<double>& values, std::optional<int> count = std::nullopt,
             std::optional<int> spanned = std::nullopt) {
  const WayRow& row = row_of(way);
  Reading reading = tests::reading("r", way, {}, "caliper", {"1"});
  std::vector<Dimension> dimensions;
  for (std::size_t i = 0; i < row.names; ++i) {
    dimensions.push_back({std::string(1, static_cast<char>('a' + i)), row.kinds.at(i)});
    reading.of.push_back(dimensions.back().name);
  }
  reading.count = count;
  reading.spanned = spanned;
  const auto equation = equation_of(reading, dimensions, quantity::UnitSystem::kInch);
  EXPECT_TRUE(equation.has_value());
  std::vector<double> in_its_order;
  for (const std::string& name : equation->names())
    in_its_order.push_back(values[static_cast<std::size_t>(name.front() - 'a')]);
  const auto y = equation->at(in_its_order);
  EXPECT_TRUE(y.has_value());
  return y->value;
}

// r = (c^2 + 4 h^2)/(8 h): Math Central, University of Regina, question QQ.09.06; c = 24, h = 3 give r = 25.5.
TEST(OutsideWays, HeightOfAnArc) {
  EXPECT_NEAR(reads(Way::kHeightOfArc, {25.5, 24.0}), 3.0, 1e-12);
}
TEST(OutsideWays, ChordOfAnArc) {
  EXPECT_NEAR(reads(Way::kChord, {25.5, 3.0}), 24.0, 1e-12);
}

// Basic pitch diameter of 1/2-13 UNC is 0.4500 in and 0.04441 in wires measure 0.51660 over them: M = E + 3 W - 0.86603 P,
// Machinery's Handbook, measuring screw threads over three wires (worked here from the formula).
TEST(OutsideWays, OverThreeWires) {
  const double p = kInch / 13.0;
  EXPECT_NEAR(reads(Way::kOverWires, {0.4500 * kInch, 0.04441 * kInch, p}) / kInch,
              0.4500 + 3 * 0.04441 - 0.86603 / 13.0, 1e-6);
}

// A gear of 104 teeth and diametral pitch 10 is 10.6 in over its teeth: Do = (N + 2)/P, Machinery's Handbook, spur gears.
TEST(OutsideWays, OverGearTeeth) {
  EXPECT_NEAR(reads(Way::kGearOutside, {kInch / 10.0}, 104) / kInch, 10.6, 1e-12);
}

// A 5 in sine bar at 30 degrees stands on 2.5000 in: Machinery's Handbook, constants of a 5 in sine bar.
TEST(OutsideWays, SineBar) {
  EXPECT_NEAR(reads(Way::kSineBar, {30.0 * kDegree, 5.0 * kInch}) / kInch, 2.5, 1e-12);
}

// Two discs against two straightedges: Machinery's Handbook, 31st ed., p. 701; the first three also in F. D. Jones, Turning
// and Boring. Tapers per foot on the centre line are twice a tangent of half the angle, square to one side the tangent.
struct PrintedDiscs {
  double small_in;
  double large_in;
  double angle_rad;
  double centres_in;
  double last_place;
};
class OutsideTwoDiscsWay : public testing::TestWithParam<PrintedDiscs> {};
TEST_P(OutsideTwoDiscsWay, ReadsTheCentres) {
  const PrintedDiscs& one = GetParam();
  EXPECT_NEAR(reads(Way::kTwoDiscs, {one.angle_rad, one.large_in * kInch, one.small_in * kInch}) / kInch,
              one.centres_in, one.last_place);
}
INSTANTIATE_TEST_SUITE_P(Handbook, OutsideTwoDiscsWay,
                         testing::Values(PrintedDiscs{1.25, 1.5, 2.0 * std::atan(0.75 / 24.0), 4.002, 5e-4},
                                         PrintedDiscs{1.0, 3.0, 20.0 * kDegree, 5.759, 5e-4},
                                         PrintedDiscs{1.0, 1.5, 2.0 * std::atan(1.2015 / 24.0), 5.0,
                                                      5e-4},  // the taper is the printed number
                                         PrintedDiscs{2.0, 3.0, std::atan(2.4367 / 12.0), 5.0, 5e-4},
                                         PrintedDiscs{2.0, 5.0, std::atan(6.9 / 12.0), 5.815, 5e-4}));

// Taper ring with balls of 40 and 32 mm: the large one stands 8 mm above the face, the top of the small one 76 mm below it;
// question bank, byjus.com, "Balls of diameter 40 mm and 32 mm", its answer worked out: 80 mm between the middles, included
// angle 5.732 deg. Whatever the face's diameter is, the two readings have to add up to 84 mm.
TEST(OutsideWays, BallsInATaperRing) {
  const double half = 5.732 / 2.0 * kDegree;
  for (const double face : {38.0, 42.0}) {
    const double proud = reads(Way::kBallOverTaper, {face, half, 40.0});
    const double down = reads(Way::kBallInTaper, {face, half, 32.0});
    EXPECT_NEAR(proud + down, 84.0, 0.01);  // the angle's last place is worth 0.007 mm
  }
}
// A ball touches the side where its middle is a radius away from it, and what is below the face is not above it.
TEST(OutsideWays, ABallTouchesTheSideOfItsTaper) {
  const double a = 4.0 * kDegree;
  const double down = reads(Way::kBallInTaper, {40.0, a, 36.0});
  const double middle = down + 18.0;
  EXPECT_NEAR((20.0 - middle * std::tan(a)) * std::cos(a), 18.0, 1e-9);
  EXPECT_NEAR(reads(Way::kBallOverTaper, {40.0, a, 36.0}), -down, 1e-9);
}

// 7:24 on the diameter: 24 down, 7 smaller. A disc of the diameter there has its edge 24 down.
TEST(OutsideWays, TapersByTheirDiametersAtADepth) {
  const double half = std::atan(7.0 / 48.0);
  EXPECT_NEAR(reads(Way::kTaperBoreAt, {70.0, half, 48.0}), 56.0, 1e-9);
  EXPECT_NEAR(reads(Way::kTaperShaftAt, {70.0, half, 24.0}), 63.0, 1e-9);
  EXPECT_NEAR(reads(Way::kDiscInTaper, {70.0, half, 56.0}), 48.0, 1e-9);
}

// Spans held from memory: module 1, 20 degrees, 20 teeth over 3 is 7.6604 mm in the tables; a handbook of gear makers has module
// 3, 24 teeth, shifted by 0.4 modules, over 4 as 32.8266 mm, of which the shift makes 2 x 0.4 x 3 sin 20 = 0.8208.
TEST(RememberedWays, GearSpans) {
  EXPECT_NEAR(reads(Way::kSpan20, {1.0}, 20, 3), 7.6604, 5e-5);
  EXPECT_NEAR(reads(Way::kSpan20, {3.0}, 24, 4) + 2.4 * std::sin(20.0 * kDegree), 32.8266, 5e-4);
}
// The jaws lie on the involutes of two teeth: each tooth more is one base pitch, and one tooth is its thickness on the base
// circle, r_b (pi/z + 2 inv a).
TEST(OutsideWays, GearSpansGrowByTheBasePitch) {
  for (const auto& [way, degrees] : {std::pair{Way::kSpan20, 20.0}, std::pair{Way::kSpan14, 14.5}}) {
    const double a = degrees * kDegree;
    const double base_radius = 2.0 * 30 / 2.0 * std::cos(a);
    const double one = base_radius * (std::numbers::pi / 30 + 2.0 * (std::tan(a) - a));
    EXPECT_NEAR(reads(way, {2.0}, 30, 1), one, 1e-9);
    EXPECT_NEAR(reads(way, {2.0}, 30, 4), one + 3.0 * std::numbers::pi * 2.0 * std::cos(a), 1e-9);
  }
}

// Three lobes: the swing in a 90 degree V-block is twice what the radius varies. Worked here: with r = R + e cos 3t the V
// rises by the mean of the two flanks' supports over sin 45; the indicator reads the top as well. Checked by turning it.
TEST(OutsideWays, ThreeLobesTurnedInAVBlock) {
  const double e = 0.01;
  double least = 1e9;
  double most = -1e9;
  for (int i = 0; i < 3600; ++i) {
    const double turn = i * 0.1 * kDegree;
    // Support function of the shape in a direction, to first order in e.
    const auto support = [&](double direction) { return 10.0 + e * std::cos(3.0 * (direction - turn)); };
    const double flank = (support(225.0 * kDegree) + support(315.0 * kDegree)) / 2.0;
    const double top = flank / std::sin(45.0 * kDegree) + support(90.0 * kDegree);
    least = std::min(least, top);
    most = std::max(most, top);
  }
  // 2 e is how much the radius varies in all, so the swing is 2 times that.
  EXPECT_NEAR(most - least, reads(Way::kThreeLobes, {2.0 * e}), 1e-6);
}

// A taper standing on its small end between rollers: drawn out with a compass, worked by the distance of a centre from a line.
TEST(OutsideWays, RollersTouchTheSideOfATaper) {
  const double angle = 3.0 * kDegree;
  for (const double raised : {0.0, 20.0}) {
    const double over = raised > 0.0 ? reads(Way::kOverRollersRaised, {30.0, angle, 8.0, raised})
                                     : reads(Way::kOverRollers, {30.0, angle, 8.0});
    const double x = over / 2.0 - 4.0;  // of a roller's middle, from the axis
    const double y = raised + 4.0;
    // The side runs from (15, 0) up and outwards at the angle to the axis.
    const double distance = (x - 15.0) * std::cos(angle) - y * std::sin(angle);
    EXPECT_NEAR(distance, 4.0, 1e-9);
  }
}

// Pins in the corners of a dovetail: D = 0.500, 60 degrees; male a = 2.000: x = 3.3660, female b = 3.000: y = 1.6340 (plane
// geometry, a pin that touches base and flank).
TEST(OutsideWays, DovetailOverAndBetweenPins) {
  EXPECT_NEAR(reads(Way::kDovetailOver, {2.0, 0.5, 60.0 * kDegree}), 3.3660, 5e-5);
  EXPECT_NEAR(reads(Way::kDovetailBetween, {3.0, 0.5, 60.0 * kDegree}), 1.6340, 5e-5);
}

}  // namespace
}  // namespace sparewright::survey
