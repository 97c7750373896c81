#include "core/survey/explanations.hpp"

#include <cmath>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "networks.hpp"

namespace sparewright::survey {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using tests::adjusted;
using tests::lengths;
using tests::network_of;

constexpr double kInch = 25.4;

// Every reading by an outside micrometer in inches.
std::vector<AsRead> by_micrometer(const Network& network) {
  std::vector<AsRead> all;
  for (const Observation& reading : network.readings) {
    AsRead& read = all.emplace_back();
    read.name = reading.name;
    read.reading = reading.value;
    read.typed = fmt::format("{:.4f}", reading.value / kInch);
    read.instrument_kind = "outside micrometer";
  }
  return all;
}

std::vector<Explanation> explained(const Network& network, const std::vector<AsRead>& read) {
  return explanations(network, adjusted(network), read);
}

// 1 in three times, the second a turn short and 0.0003 in off besides: the others say 1.0000, so 0.0003 is left.
TEST(Explanations, ATurnMissedAgreesToWhatIsLeft) {
  const auto network =
      network_of(lengths({"x"}),
                 {{"x", 1.0001 * kInch, 0.005}, {"x", 0.9753 * kInch, 0.005}, {"x", 0.9999 * kInch, 0.005}});
  const auto found = explained(network, by_micrometer(network));
  ASSERT_EQ(found.size(), 1U);
  ASSERT_EQ(found[0].slips.size(), 1U);
  EXPECT_EQ(found[0].slips[0].reading, 1U);
  EXPECT_THAT(found[0].slips[0].slip.says, HasSubstr("0.025 in) was missed"));
  EXPECT_NEAR(found[0].slips[0].rest, 0.0003 * kInch, 1e-9);
  // 0.00762 mm against a mean of two: over 0.005 * sqrt(3/2).
  EXPECT_NEAR(found[0].slips[0].rest_odds, 0.00762 / (0.005 * std::sqrt(1.5)), 1e-6);
  // The squares about the mean of 1.0001, 1.0003 and 0.9999.
  EXPECT_NEAR(found[0].chi_square, 8e-8 * kInch * kInch / 2.5e-5, 1e-6);
}

// Of two readings one is a turn out: either the first missed one or the second counted one too many.
TEST(Explanations, TwoReadingsAloneLeaveBothOpen) {
  const auto network = network_of(lengths({"x"}), {{"x", 1.0 * kInch, 0.005}, {"x", 1.025 * kInch, 0.005}});
  const auto found = explained(network, by_micrometer(network));
  ASSERT_EQ(found.size(), 2U);
  EXPECT_NEAR(found[0].weight(), found[1].weight(), 1e-9);
}

TEST(Explanations, NothingIsExplainedByAnAmountThatIsNoSlip) {
  const auto network = network_of(
      lengths({"x"}), {{"x", 1.0 * kInch, 0.005}, {"x", 1.0113 * kInch, 0.005}, {"x", 1.0 * kInch, 0.005}});
  EXPECT_THAT(explained(network, by_micrometer(network)), IsEmpty());
}

// Doubts of 0.02 in: 0.025 in is no more than they make up.
TEST(Explanations, NothingIsExplainedWhereTheDoubtSwallowsIt) {
  const auto network = network_of(
      lengths({"x"}),
      {{"x", kInch, 0.02 * kInch}, {"x", 0.975 * kInch, 0.02 * kInch}, {"x", kInch, 0.02 * kInch}});
  EXPECT_THAT(explained(network, by_micrometer(network)), IsEmpty());
}

// Two sizes and their sum, each twice; a turn short in one of x and a turn too many in one of the sum.
TEST(Explanations, TwoSlipsAtOnce) {
  const auto network = network_of(lengths({"x", "y"}), {{"x", 0.5 * kInch, 0.005},
                                                        {"x", 0.475 * kInch, 0.005},
                                                        {"x", 0.5001 * kInch, 0.005},
                                                        {"y", 0.75 * kInch, 0.005},
                                                        {"y", 0.75 * kInch, 0.005},
                                                        {"x + y", 1.25 * kInch, 0.005},
                                                        {"x + y", 1.275 * kInch, 0.005}});
  const auto found = explained(network, by_micrometer(network));
  ASSERT_FALSE(found.empty());
  ASSERT_EQ(found[0].slips.size(), 2U);
  EXPECT_EQ(found[0].slips[0].reading + found[0].slips[1].reading, 7U);
  for (const SlipAt& at : found[0].slips) {
    EXPECT_THAT(at.slip.says, HasSubstr(at.reading == 1 ? "was missed" : "too many"));
    EXPECT_LT(at.rest, 0.0002 * kInch);
  }
}

// A shaft and a bore by one instrument whose zero is 0.010 in out, and each by a sound one: no one reading is to blame.
class AZeroOut : public testing::Test {
 protected:
  AZeroOut() : network_(network_of(lengths({"a", "b", "c"}), rows())) {
    tests::share(network_, {0, 1, 2}, 0.002);
    read_ = by_micrometer(network_);
    for (const std::size_t i : {0U, 1U, 2U})
      read_[i].zero = "micrometer 2";
  }
  static std::vector<tests::Row> rows() {
    std::vector<tests::Row> all;
    for (const double out : {0.010, 0.0}) {
      for (const char* name : {"a", "b", "c"})
        all.push_back({name, (1.0 + out) * kInch, 0.005});
    }
    return all;
  }
  Network network_;
  std::vector<AsRead> read_;
};

TEST_F(AZeroOut, IsFoundByAnyAmount) {
  const auto found = explained(network_, read_);
  ASSERT_EQ(found.size(), 1U);
  EXPECT_EQ(found[0].zero, "micrometer 2");
  EXPECT_EQ(found[0].slips.size(), 3U);
  EXPECT_NEAR(found[0].zero_error, 0.010 * kInch, 1e-6);
  EXPECT_NEAR(found[0].chi_square, 0.0, 1e-6);
}

// Found -0.010 and taken off, though the person had done so already.
TEST_F(AZeroOut, IsNamedWhereItWasTakenOffTwice) {
  for (const std::size_t i : {0U, 1U, 2U})
    read_[i].zero_found = -0.010 * kInch;
  const auto found = explained(network_, read_);
  ASSERT_FALSE(found.empty());
  EXPECT_EQ(found[0].zero, "micrometer 2");
  EXPECT_THAT(found[0].slips[0].slip.says, HasSubstr("taken off already"));
  EXPECT_NEAR(found[0].zero_error, 0.010 * kInch, 1e-9);
}

}  // namespace
}  // namespace sparewright::survey
