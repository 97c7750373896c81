#include "core/survey/hole_pattern.hpp"

#include <cmath>
#include <numbers>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/survey/pattern_work.hpp"
#include "core/survey/placed_pattern.hpp"
#include "core/survey/stage.hpp"
#include "touches.hpp"

namespace sparewright::survey {
namespace {

using base::Code;
using testing::ElementsAre;
using testing::HasSubstr;

constexpr double kU = 0.03;  // mm
constexpr double kMade = kHolesMade_mm;
constexpr double kPi = std::numbers::pi;

PatternOdds found(const std::vector<double>& distances, std::optional<int> count = std::nullopt,
                  HoleLayout layout = HoleLayout::kCircle) {
  const auto odds = pattern_of(layout, distances, kU, kMade, count);
  EXPECT_TRUE(odds.has_value());
  return *odds;
}
double chord(double diameter, int holes, int steps) {
  return diameter * std::sin(kPi * steps / holes);
}

TEST(HolePattern, SixHolesByTwoKindsOfChords) {
  const auto odds = found({chord(80, 6, 1), chord(80, 6, 2), chord(80, 6, 3), chord(80, 6, 1)});
  const PatternGuess& best = odds.guesses.front();
  EXPECT_EQ(best.holes, 6);
  EXPECT_GT(best.odds, 0.9);
  EXPECT_NEAR(best.size, 80.0, 1e-9);
  EXPECT_THAT(best.steps, ElementsAre(1, 2, 3, 1));
  for (const double off : best.off)
    EXPECT_NEAR(off, 0.0, 1e-9);
  // Lengths 1/2, sqrt(3)/2, 1, 1/2: squares add up to 2.25, so u(D) = u/1.5; a chord across keeps u sqrt(1 - 1/2.25).
  EXPECT_NEAR(best.size_u, kU / 1.5, 1e-12);
  EXPECT_NEAR(best.off_u[2], kU * std::sqrt(1.0 - 1.0 / 2.25), 1e-12);
}

TEST(HolePattern, EveryUsualCountIsFoundFromItsChords) {
  for (const int holes : {3, 4, 5, 6, 7, 8, 9, 10, 12}) {
    std::vector<double> distances;
    for (int k = 1; 2 * k <= holes; ++k)
      distances.push_back(chord(120, holes, k) + (k % 2 == 0 ? kU / 2 : -kU / 2));
    if (holes == 3) distances.push_back(distances.front());
    if (holes == 3) distances.push_back(distances.front());
    const auto odds = found(distances);
    EXPECT_EQ(odds.guesses.front().holes, holes);
    EXPECT_NEAR(odds.guesses.front().size, 120.0, 0.2);
    EXPECT_LT(odds.no_pattern, 0.2);
  }
}

TEST(HolePattern, OddsAddUp) {
  for (const std::vector<double>& distances : {std::vector<double>{50.0}, {50.0, 70.7}, {31.0, 44.2, 58.9}}) {
    const auto odds = found(distances);
    double sum = odds.no_pattern;
    for (const PatternGuess& guess : odds.guesses)
      sum += guess.odds;
    EXPECT_NEAR(sum, 1.0, 0.03);  // those below a thousandth are left out
  }
}

TEST(HolePattern, OneDistanceIsNotEnoughAndWhatDecidesIsNamed) {
  const auto odds = found({50.0});
  EXPECT_LT(odds.guesses.front().odds, 0.5);
  ASSERT_GT(odds.guesses.size(), 1U);
  const auto decides = deciding(odds.guesses[0], odds.guesses[1], kU);
  ASSERT_TRUE(decides.has_value());
  EXPECT_GT(std::abs(decides->by_first - decides->by_second), 6.0 * kU);
  EXPECT_NEAR(odds.guesses.front().off_u.front(), 0.0, 1e-12);  // nothing checks it
}

TEST(HolePattern, EqualDistancesMoreThanAPatternHasPairsRuleItOut) {
  // Six alike: three holes have only three pairs, four only four to the next.
  const auto odds = found(std::vector<double>(6, 40.0));
  EXPECT_GE(odds.guesses.front().holes, 6);
  for (const PatternGuess& guess : odds.guesses)
    EXPECT_GE(guess.holes, 6);
}

TEST(HolePattern, ACountThatIsKnownLeavesTheRestToTheDistances) {
  const auto odds = found({chord(100, 8, 1), chord(100, 8, 3)}, 8);
  EXPECT_EQ(odds.guesses.front().holes, 8);
  EXPECT_THAT(odds.guesses.front().steps, ElementsAre(1, 3));
}

TEST(HolePattern, UnevenHolesAreInNoPattern) {
  const auto odds = found({31.3, 40.1, 52.9, 71.7, 36.6, 63.9});
  EXPECT_TRUE(odds.guesses.empty() || odds.no_pattern > odds.guesses.front().odds);
}

TEST(HolePattern, ARowIsFoundByItsPitch) {
  const auto odds = found({25.4, 76.2, 50.8, 25.42}, std::nullopt, HoleLayout::kRow);
  EXPECT_EQ(odds.guesses.front().holes, 4);
  EXPECT_NEAR(odds.guesses.front().size, 25.4, 0.01);
  EXPECT_THAT(odds.guesses.front().steps, ElementsAre(1, 3, 2, 1));
}

TEST(HolePattern, RefusesWhatIsNoDistance) {
  EXPECT_EQ(pattern_of(HoleLayout::kCircle, {}, kU, kMade).error().code, Code::kReadingsTooFew);
  const std::vector<double> zero{0.0};
  EXPECT_EQ(pattern_of(HoleLayout::kCircle, zero, kU, kMade).error().code, Code::kSizeNotPositive);
  EXPECT_EQ(
      pattern_of(HoleLayout::kCircle, std::vector<double>(kMostDistances + 1, 1.0), kU, kMade).error().code,
      Code::kTooMany);
}

// --- by their middles
std::vector<Point2> on_circle(double diameter, int places, double start_deg, const std::vector<int>& at) {
  std::vector<Point2> out;
  for (const int k : at) {
    const double angle = start_deg * kPi / 180.0 + 2.0 * kPi * k / places;
    out.push_back({10.0 + diameter / 2.0 * std::cos(angle), -20.0 + diameter / 2.0 * std::sin(angle)});
  }
  return out;
}

TEST(PlacedPattern, FiveOfSixHolesAreSixPlaces) {
  const auto found = placed_pattern(HoleLayout::kCircle, on_circle(90, 6, 15, {0, 1, 2, 4, 5}), kU, kMade);
  ASSERT_TRUE(found.has_value());
  EXPECT_EQ(found->places, 6);
  EXPECT_THAT(found->place, ElementsAre(0, 1, 2, 4, 5));
  EXPECT_GT(found->odds, 0.9);
  EXPECT_NEAR(found->size.value, 90.0, 1e-9);
  EXPECT_NEAR(found->x.value, 10.0, 1e-9);
  EXPECT_NEAR(found->y.value, -20.0, 1e-9);
  EXPECT_NEAR(found->start.value * 180.0 / kPi, 15.0, 1e-9);
}

TEST(PlacedPattern, AHoleOffItsPlaceIsOffByThatMuchLessWhatItMoves) {
  auto holes = on_circle(100, 8, 0, {0, 1, 2, 3, 4, 5, 6, 7});
  holes[0].y += 0.8;  // along the circle
  const auto found = placed_pattern(HoleLayout::kCircle, holes, kU, kMade);
  ASSERT_TRUE(found.has_value());
  EXPECT_EQ(found->places, 8);
  // The start takes an eighth of it, the middle (which moves by 2/8 x 0 + ...) hardly any of the radial part.
  EXPECT_GT(found->along[0].value, 0.45);
  EXPECT_LT(found->along[0].value, 0.8);
  double sum = 0.0;
  for (const FollowingNumber& one : found->along)
    sum += one.value;
  EXPECT_NEAR(sum, 0.0, 1e-9);
}

// Slopes against moving one middle by a little.
TEST(PlacedPattern, NumbersFollowTheMiddles) {
  for (const HoleLayout layout : {HoleLayout::kCircle, HoleLayout::kRow}) {
    std::vector<Point2> holes = layout == HoleLayout::kCircle
                                    ? on_circle(60, 5, 33, {0, 1, 2, 3, 4})
                                    : std::vector<Point2>{{0, 0}, {24, 7}, {48, 14}, {96, 28}};
    const auto before = placed_pattern(layout, holes, kU, kMade);
    ASSERT_TRUE(before.has_value());
    const double by = 1e-5;
    for (std::size_t c = 0; c < 2 * holes.size(); ++c) {
      auto moved = holes;
      (c % 2 == 0 ? moved[c / 2].x : moved[c / 2].y) += by;
      const auto after = placed_pattern(layout, moved, kU, kMade);
      const auto expect = [&](const FollowingNumber& a, const FollowingNumber& b) {
        EXPECT_NEAR((b.value - a.value) / by, a.slopes[c], 1e-4);
      };
      expect(before->x, after->x);
      expect(before->y, after->y);
      expect(before->size, after->size);
      expect(before->start, after->start);
      for (std::size_t i = 0; i < holes.size(); ++i) {
        expect(before->along[i], after->along[i]);
        expect(before->across[i], after->across[i]);
      }
    }
  }
}

TEST(PlacedPattern, ARowWithAGap) {
  const auto found =
      placed_pattern(HoleLayout::kRow, std::vector<Point2>{{0, 0}, {24, 7}, {48, 14}, {96, 28}}, kU, kMade);
  ASSERT_TRUE(found.has_value());
  EXPECT_EQ(found->places, 5);
  EXPECT_THAT(found->place, ElementsAre(0, 1, 2, 4));
  EXPECT_NEAR(found->size.value, 25.0, 1e-9);
  EXPECT_NEAR(found->start.value, std::atan2(7.0, 24.0), 1e-12);
}

TEST(PlacedPattern, RefusesTwoHolesAndHolesInOnePlace) {
  EXPECT_EQ(placed_pattern(HoleLayout::kCircle, std::vector<Point2>{{0, 0}, {1, 0}}, kU, kMade).error().code,
            Code::kReadingsTooFew);
  EXPECT_EQ(placed_pattern(HoleLayout::kCircle, std::vector<Point2>{{0, 0}, {10, 0}, {20, 0}}, kU, kMade)
                .error()
                .code,
            Code::kReadingsTooFew);
}

// --- as stages
TEST(PatternStages, TellTheCircleOfTouchedHolesAndWhichIsOff) {
  Survey survey = tests::readout_survey();
  HolePattern bolts{"bolts", HoleLayout::kCircle, {}, {{Told::kDiameter, "bolt_circle"}}};
  for (int k = 0; k < 6; ++k) {
    const double angle = kPi / 3.0 * k;
    // The fourth hole is 0.012 in off, along the circle.
    const double off = k == 3 ? -0.012 : 0.0;
    const std::string name(1, static_cast<char>('a' + k));
    survey.touched.push_back(
        tests::round_four(name, 5.0 + 2.0 * std::cos(angle), 4.0 + 2.0 * std::sin(angle) + off));
    bolts.of.push_back(name);
  }
  survey.patterns = {bolts};
  survey.dimensions = {{"bolt_circle", quantity::Kind::kDiameter}};
  ledger::Ledger ledger;
  auto stages = survey_stages(survey);
  ASSERT_TRUE(stages.has_value());
  ledger.declare(std::move(*stages));
  EXPECT_EQ(ledger.get("pattern/bolts/places").value, 6.0);
  EXPECT_NEAR(ledger.get("pattern/bolts/diameter").value, 4.0 * 25.4, 0.01);
  EXPECT_NEAR(ledger.get("survey/bolt_circle").value, ledger.get("pattern/bolts/diameter").value, 1e-9);
  // Both u and the tip: the middles of the holes know no tip, and the diameter of their circle no zero.
  for (const ledger::Share& share : ledger.get("pattern/bolts/diameter").shares) {
    EXPECT_FALSE(share.cause.text().starts_with("tip/")) << share.cause.text();
    EXPECT_LT(std::abs(share.amount), 0.01);
  }
  std::vector<std::string> off;
  for (const ledger::Query& query : ledger.queries()) {
    if (query.id.starts_with("hole off its place/")) off.push_back(query.id);
  }
  EXPECT_THAT(off, testing::Contains("hole off its place/bolts/d"));
  // The first hole's place goes by all six, so a sixth of it is taken up.
  EXPECT_NEAR(ledger.get("pattern/bolts/d along").value, 0.012 * 25.4 * 5.0 / 6.0, 0.001);
}

}  // namespace
}  // namespace sparewright::survey
