// A size between two limits that are themselves in doubt.
#include <cmath>

#include <gtest/gtest.h>

#include "core/ledger/ledger.hpp"
#include "core/survey/trial.hpp"

namespace sparewright::survey {
namespace {

// Two plugs as roots: the low one goes, the high one will not.
ledger::Figure enclosed(double low, const ledger::Shares& low_shares, double high,
                        const ledger::Shares& high_shares) {
  const auto root = [](double value, const ledger::Shares& shares, ledger::Bound bound) {
    ledger::Root one;
    one.kind = quantity::Kind::kLength;
    one.value = value;
    one.shares = shares;
    one.bound = bound;
    return one;
  };
  ledger::Ledger ledger;
  ledger.declare(
      {{"reading",
        {},
        [&](ledger::Pen& pen) {
          pen.root("goes", root(low, low_shares, ledger::Bound::kAtLeast));
          pen.root("will not", root(high, high_shares, ledger::Bound::kAtMost));
        }},
       trial_stage({{"bore", {{"goes", true}, {"will not", false}}}}, quantity::UnitSystem::kMetric)});
  return ledger.get("trial/bore");
}

struct Inexact {
  double half_width;  // of the rectangle
  double by;          // how far its limits may be out, both ways at once
};
class RememberedJcgm101Clause643 : public testing::TestWithParam<Inexact> {};

// JCGM 101:2008, 6.4.3.4, formula (4): limits a - d ... a + d and b - d ... b + d with a fixed middle have the variance
// (b - a)^2/12 + d^2/9 (from memory).
TEST_P(RememberedJcgm101Clause643, VarianceOfARectangleWithInexactLimits) {
  const auto [w, d] = GetParam();
  const double u = d / std::sqrt(3.0);
  const auto figure = enclosed(10.0 - w, {{"limits", -u}}, 10.0 + w, {{"limits", u}});
  EXPECT_NEAR(figure.u() * figure.u(), 4.0 * w * w / 12.0 + d * d / 9.0, 1e-15);
  EXPECT_NEAR(figure.value, 10.0, 1e-12);
}
INSTANTIATE_TEST_SUITE_P(Rectangles, RememberedJcgm101Clause643,
                         testing::Values(Inexact{0.05, 0.025}, Inexact{0.01, 0.001}, Inexact{0.02, 0.0}));

// Drawn many times: the limits normal and independent, the size anywhere between. Against it the standard uncertainty.
TEST(TrialsDrawn, AreAsWideAsTheFigureSays) {
  constexpr int kDraws = 400000;
  const double u_low = 0.002;
  const double u_high = 0.004;
  std::uint64_t state = 20261129;
  const auto uniform = [&] {  // splitmix64 (S. Vigna, public domain; from memory)
    state += 0x9E3779B97F4A7C15U;
    std::uint64_t z = state;
    z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9U;
    z = (z ^ (z >> 27U)) * 0x94D049BB133111EBU;
    return (static_cast<double>((z ^ (z >> 31U)) >> 11U) + 0.5) * 0x1p-53;
  };
  const auto normal = [&] {
    return std::sqrt(-2.0 * std::log(uniform())) * std::cos(6.283185307179586 * uniform());
  };
  double sum = 0.0;
  double squares = 0.0;
  for (int i = 0; i < kDraws; ++i) {
    const double low = 9.99 + u_low * normal();
    const double high = 10.01 + u_high * normal();
    const double size = low + uniform() * (high - low) - 10.0;
    sum += size;
    squares += size * size;
  }
  const double mean = sum / kDraws;
  const double drawn = std::sqrt(squares / kDraws - mean * mean);
  const auto figure = enclosed(9.99, {{"low", u_low}}, 10.01, {{"high", u_high}});
  // The standard deviation of a standard deviation of n draws is about 1/sqrt(2 n): 0.11 %; four of those.
  EXPECT_NEAR(figure.u() / drawn, 1.0, 4.0 / std::sqrt(2.0 * kDraws));
}

}  // namespace
}  // namespace sparewright::survey
