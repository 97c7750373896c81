#include "core/survey/corrected.hpp"

#include <cmath>

#include <gtest/gtest.h>

#include "surveys.hpp"

namespace sparewright::survey {
namespace {

using tests::instrument;
using tests::reading;
using tests::typed;

constexpr double kInch = 25.4;
const double kRoot3 = std::sqrt(3.0);
constexpr double kHand = 1e-14;

const ledger::Share* find(const ledger::Shares& shares, std::string_view cause) {
  for (const ledger::Share& share : shares) {
    if (share.cause.text() == cause) return &share;
  }
  return nullptr;
}

TEST(Corrected, RepeatsGiveTheirMeanAndItsScatter) {
  // 0.7498, 0.7497, 0.7498: mean 0.74976667; s^2 = (2*(1/3)^2 + (2/3)^2)/2 = 1/3 in units of (0.0001)^2, so
  // s/sqrt(3) = 0.0001/3.
  const auto as_it_counts =
      corrected(reading("pin", Way::kOutside, {"p"}, "mic", {"0.7498", "0.7497", "0.7498"}),
                instrument("mic", "0.0002", "0.0001"));
  EXPECT_NEAR(as_it_counts.value, (0.7497 + 0.0002 / 3.0) * kInch, kHand * 100);
  const auto* scatter = find(as_it_counts.shares, "reading/pin/scatter");
  ASSERT_NE(scatter, nullptr);
  EXPECT_NEAR(scatter->amount, 0.0001 / 3.0 * kInch, kHand);
  EXPECT_EQ(scatter->degrees_of_freedom, 2.0);
  EXPECT_EQ(as_it_counts.typed, "0.7498, 0.7497, 0.7498");
}

TEST(Corrected, ResolutionAndPermissibleErrorAreRectangles) {
  const auto as_it_counts = corrected(reading("pin", Way::kOutside, {"p"}, "mic", {"0.7498", "0.7498"}),
                                      instrument("mic", "0.0002", "0.0001"));
  EXPECT_NEAR(find(as_it_counts.shares, "reading/pin/resolution")->amount, 0.00005 / kRoot3 * kInch, kHand);
  EXPECT_NEAR(find(as_it_counts.shares, "reading/pin/good to")->amount, 0.0002 / kRoot3 * kInch, kHand);
  EXPECT_EQ(find(as_it_counts.shares, "reading/pin/scatter"),
            nullptr);  // equal repeats: the resolution speaks
}

TEST(Corrected, OneReadingHasNoScatterAndSaysSo) {
  auto one = reading("pin", Way::kOutside, {"p"}, "mic", {"0.7498"});
  one.place = "inboard of the worn band";
  const auto as_it_counts = corrected(one, instrument("mic", "0.0002", "0.0001"));
  EXPECT_EQ(find(as_it_counts.shares, "reading/pin/scatter"), nullptr);
  EXPECT_EQ(as_it_counts.source,
            "mic, outside jaws, at: inboard of the worn band; read once, so its scatter is not known");
}

TEST(Corrected, TheZeroFoundIsTakenOff) {
  auto caliper = instrument("caliper", "0.001", "0.001");
  caliper.zero_found = typed("-0.002");
  const auto as_it_counts = corrected(reading("pin", Way::kOutside, {"p"}, "caliper", {"0.748"}), caliper);
  EXPECT_NEAR(as_it_counts.value, 0.750 * kInch, kHand * 100);
  EXPECT_NE(as_it_counts.source.find("less -0.002, its reading at zero"), std::string::npos);
}

TEST(ZeroError, IsStatedOrHalfAStepOrTheWholePermissibleError) {
  auto caliper = instrument("caliper", "0.001", "0.0005");
  auto zero = zero_error_of(caliper, Jaws::kOutside);
  EXPECT_EQ(zero.cause, "instrument/caliper/outside jaws/zero");
  EXPECT_TRUE(zero.is_default);
  EXPECT_NEAR(zero.within, 0.001 * kInch, kHand);

  caliper.zero_checked = true;
  zero = zero_error_of(caliper, Jaws::kOutside);
  EXPECT_TRUE(zero.is_default);
  EXPECT_NEAR(zero.within, 0.00025 * kInch, kHand);

  caliper.zero_within = typed("0.0003");
  zero = zero_error_of(caliper, Jaws::kOutside);
  EXPECT_FALSE(zero.is_default);
  EXPECT_NEAR(zero.within, 0.0003 * kInch, kHand);
}

TEST(ZeroError, OfAPairComesBeforeThatOfTheInstrument) {
  auto caliper = instrument("caliper", "0.001", "0.0005");
  caliper.zero_found = typed("0.0010");
  caliper.jaw_pairs = {{Jaws::kOutside, {}, {}}, {Jaws::kInside, typed("0.0020"), typed("0.0007")}};
  EXPECT_NEAR(zero_error_of(caliper, Jaws::kOutside).found, 0.0010 * kInch, kHand);
  EXPECT_NEAR(zero_error_of(caliper, Jaws::kInside).found, 0.0020 * kInch, kHand);
  EXPECT_NEAR(zero_error_of(caliper, Jaws::kInside).within, 0.0007 * kInch, kHand);
}

TEST(ZeroError, IsSharedByReadingsOfOnePairOnly) {
  const auto caliper = instrument("caliper", "0.001", "0.001");
  const auto a = corrected(reading("a", Way::kOutside, {"x"}, "caliper", {"1"}), caliper);
  const auto b = corrected(reading("b", Way::kOutside, {"y"}, "caliper", {"2"}), caliper);
  const auto c = corrected(reading("c", Way::kInside, {"y"}, "caliper", {"2"}), caliper);
  const double zero = 0.001 / kRoot3 * kInch;
  EXPECT_NEAR(ledger::covariance(a.shares, b.shares), zero * zero, kHand);
  EXPECT_EQ(ledger::covariance(a.shares, c.shares), 0.0);
}

}  // namespace
}  // namespace sparewright::survey
