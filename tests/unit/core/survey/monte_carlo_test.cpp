#include "core/survey/monte_carlo.hpp"

#include <cmath>

#include <gtest/gtest.h>

#include "core/survey/equation.hpp"
#include "surveys.hpp"

namespace sparewright {
namespace {

using quantity::Kind;
using survey::Way;

// A network with its causes: readings of an invented part, in millimetres.
struct Sample {
  survey::Network network;
  std::vector<ledger::Shares> causes;

  void read(const survey::Reading& reading, double value, ledger::Shares shares) {
    auto equation = survey::equation_of(reading, network.unknowns, quantity::UnitSystem::kMetric);
    ASSERT_TRUE(equation.has_value());
    network.readings.push_back({reading.name, value, std::move(*equation)});
    causes.push_back(ledger::in_order(std::move(shares)));
  }

  survey::MonteCarlo drawn(std::size_t draws, std::uint64_t seed = 7) {
    const std::size_t n = causes.size();
    network.covariance = survey::Matrix(n, n);
    for (std::size_t a = 0; a < n; ++a) {
      for (std::size_t b = 0; b < n; ++b)
        network.covariance.at(a, b) = ledger::covariance(causes[a], causes[b]);
    }
    adjusted = survey::adjust(network);
    EXPECT_TRUE(adjusted.has_value());
    const auto out = survey::monte_carlo({&network, &*adjusted, causes}, draws, seed);
    EXPECT_TRUE(out.has_value());
    return *out;
  }

  base::Result<survey::Adjustment> adjusted = base::fail(base::Code::kReadingsTooFew, "");
};

survey::Reading of(Way way, std::vector<std::string> names, const std::string& name) {
  return tests::reading(name, way, std::move(names), "caliper", {"1"});
}

// A zero that both readings share, and an own error each: centres 100 from over (113) and between (87) two pins of 13.
Sample two_pins() {
  Sample s;
  s.network.unknowns = {{"centres", Kind::kLength}, {"pin", Kind::kDiameter}};
  s.read(of(Way::kOverPins, {"centres", "pin", "pin"}, "over"), 113.02,
         {{"over/good to", 0.01}, {"zero", 0.02}});
  s.read(of(Way::kBetweenPins, {"centres", "pin", "pin"}, "between"), 87.01,
         {{"between/good to", 0.01}, {"zero", 0.02}});
  s.read(of(Way::kOutside, {"pin"}, "pin"), 13.0, {{"pin/own", 0.004}});
  return s;
}

TEST(MonteCarlo, SaysOfStraightEquationsWhatTheAdjustmentSays) {
  Sample s = two_pins();
  constexpr std::size_t kDraws = 200'000;
  const survey::MonteCarlo drawn = s.drawn(kDraws);
  EXPECT_EQ(drawn.unsettled, 0U);
  ASSERT_EQ(drawn.sizes.size(), 2U);
  for (std::size_t j = 0; j < 2; ++j) {
    const double u = s.adjusted->unknowns[j].u;
    const double of_mean = u / std::sqrt(double{kDraws});
    EXPECT_EQ(drawn.sizes[j].name, s.adjusted->unknowns[j].name);
    EXPECT_NEAR(drawn.sizes[j].spread.mean, s.adjusted->unknowns[j].value, 5.0 * of_mean);
    EXPECT_NEAR(drawn.sizes[j].spread.deviation, u, 5.0 * of_mean) << "more than u/sqrt(2 M)";
  }
}

TEST(MonteCarlo, GivesTheSameForTheSameSeedAlone) {
  Sample s = two_pins();
  const double once = s.drawn(2000, 1).sizes[0].spread.mean;
  EXPECT_EQ(once, s.drawn(2000, 1).sizes[0].spread.mean);
  EXPECT_NE(once, s.drawn(2000, 2).sizes[0].spread.mean);
}

// A shallow arc: height 0.5 over a chord of 30, r = (c^2 + 4 h^2)/(8 h) = 225.25 + 0.25... Two readings, two unknowns, so
// each draw of the height gives its radius by the formula; the mean lies above the radius of the mean by about
// r (u/h)^2 (1/h is bent), 225.25 * 0.04^2 = 0.36.
TEST(MonteCarlo, FindsWhatABentEquationDoes) {
  Sample s;
  s.network.unknowns = {{"nose", Kind::kRadius}, {"chord", Kind::kLength}};
  s.read(of(Way::kHeightOfArc, {"nose", "chord"}, "height"), 0.5, {{"height/own", 0.02}});
  s.read(of(Way::kOutside, {"chord"}, "chord"), 30.0, {{"chord/own", 1e-6}});
  constexpr std::size_t kDraws = 200'000;
  const survey::MonteCarlo drawn = s.drawn(kDraws);
  const double radius = (30.0 * 30.0 + 4.0 * 0.25) / (8.0 * 0.5);
  EXPECT_NEAR(s.adjusted->unknowns[0].value, radius, 1e-6);
  const survey::Spread& spread = drawn.sizes[0].spread;
  EXPECT_NEAR(spread.mean - radius, radius * 0.04 * 0.04, 0.15 * radius * 0.04 * 0.04);
  // The interval's ends are those of the height, 0.5 -+ 1.96 * 0.02, put through the formula.
  const auto radius_at = [](double h) { return (900.0 + 4.0 * h * h) / (8.0 * h); };
  EXPECT_NEAR(spread.low, radius_at(0.5 + 1.95996 * 0.02), 0.3);
  EXPECT_NEAR(spread.high, radius_at(0.5 - 1.95996 * 0.02), 0.3);
}

TEST(MonteCarlo, RefusesTooFewDrawsAndOpenSizes) {
  Sample s = two_pins();
  (void)s.drawn(2000);
  const auto few = survey::monte_carlo({&s.network, &*s.adjusted, s.causes}, 10, 1);
  ASSERT_FALSE(few.has_value());
  EXPECT_EQ(few.error().code, base::Code::kTooMany);
  s.network.unknowns.push_back({"lost", Kind::kLength});
  s.adjusted = survey::adjust(s.network);
  ASSERT_TRUE(s.adjusted.has_value());
  const auto open = survey::monte_carlo({&s.network, &*s.adjusted, s.causes}, 2000, 1);
  ASSERT_FALSE(open.has_value());
  EXPECT_EQ(open.error().code, base::Code::kReadingsTooFew);
  EXPECT_EQ(open.error().subject, "lost");
}

// What touches lie off by is one number behind all of them: eight parts of one scatter, five touches to spare. Together
// they are Student's t of five degrees, whose middle 95 % are 2.571 of its scale either way.
TEST(MonteCarlo, DrawsTheScatterOfTouchesAsOneNumber) {
  Sample s;
  s.network.unknowns = {{"hole", Kind::kLength}};
  ledger::Shares parts;
  for (int k = 1; k <= 8;
       ++k)  // as the touches hand it out: together five degrees by Welch and Satterthwaite
    parts.push_back({"touched/hole/scatter/" + std::to_string(k), 0.01 / std::sqrt(8.0), 5.0 / 8.0});
  s.read(of(Way::kOutside, {"hole"}, "hole"), 20.0, std::move(parts));
  const survey::Spread spread = s.drawn(200'000).sizes[0].spread;
  EXPECT_NEAR(spread.mean, 20.0, 0.0002);
  EXPECT_NEAR(spread.high - 20.0, 0.02571, 0.0006);
  EXPECT_NEAR(20.0 - spread.low, 0.02571, 0.0006);
}

TEST(MonteCarlo, DrawsNoScatterOfTwoRepeats) {
  Sample s = two_pins();
  s.causes[2].push_back({"reading/pin/scatter", 0.001, 1.0});
  s.causes[2] = ledger::in_order(s.causes[2]);
  s.network.covariance = survey::Matrix(3, 3);
  for (std::size_t a = 0; a < 3; ++a)
    s.network.covariance.at(a, a) = 1e-4;
  s.adjusted = survey::adjust(s.network);
  ASSERT_TRUE(s.adjusted.has_value());
  const auto drawn = survey::monte_carlo({&s.network, &*s.adjusted, s.causes}, 2000, 1);
  ASSERT_FALSE(drawn.has_value());
  EXPECT_EQ(drawn.error().code, base::Code::kReadingsTooFew);
  EXPECT_EQ(drawn.error().subject, "the scatter of 'pin' well enough to be drawn");
}

TEST(MonteCarlo, DrawsACauseAsItIsKnown) {
  using survey::Distribution;
  EXPECT_EQ(survey::distribution_of({"reading/a/scatter", 1.0, 2.0}), Distribution::kStudent);
  EXPECT_EQ(survey::distribution_of({"reading/a/good to", 1.0}), Distribution::kRectangular);
  EXPECT_EQ(survey::distribution_of({"instrument/m/outside jaws/zero", 1.0}), Distribution::kRectangular);
  EXPECT_EQ(survey::distribution_of({"reading/a/other", 1.0}), Distribution::kNormal);
}

}  // namespace
}  // namespace sparewright
