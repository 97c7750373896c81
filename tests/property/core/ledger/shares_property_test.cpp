// Shares are vectors over the causes: sums, norms and products of them must behave so.
#include <cmath>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/ledger/share.hpp"
#include "property.hpp"

namespace sparewright::ledger {
namespace {

constexpr double kSumError = 1e-12;  // relative: the same products in another order

Shares drawn() {
  Shares shares;
  for (const int draw : *rc::gen::container<std::vector<int>>(rc::gen::inRange(-999, 1000))) {
    shares.push_back({std::string(1, static_cast<char>('a' + std::abs(draw) % 7)), draw / 8.0});
  }
  return in_order(shares);
}

bool is_in_order(const Shares& shares) {
  for (std::size_t i = 0; i < shares.size(); ++i) {
    if (shares[i].amount == 0.0 || (i > 0 && shares[i - 1].cause >= shares[i].cause)) return false;
  }
  return true;
}

Shares plus(Shares a, const Shares& b, double slope) {
  add_scaled(a, b, slope);
  return a;
}

TEST(SharesProperty, StayInOrder) {
  EXPECT_TRUE(tests::holds("a sum of shares is in order", [] {
    const Shares a = drawn();
    RC_ASSERT(is_in_order(a));
    RC_ASSERT(is_in_order(plus(a, drawn(), *rc::gen::element(-1.0, 0.5, 2.0))));
    RC_ASSERT(in_order(a) == a);
  }));
}

TEST(SharesProperty, AddInAnyOrder) {
  EXPECT_TRUE(tests::holds("a + b is b + a", [] {
    const Shares a = drawn();
    const Shares b = drawn();
    RC_ASSERT(plus(a, b, 1.0) == plus(b, a, 1.0));
  }));
}

TEST(SharesProperty, TakenTwiceLessOnceAreThemselves) {
  EXPECT_TRUE(tests::holds("2a - a is a, bit for bit", [] {
    const Shares a = drawn();
    RC_ASSERT(plus(plus({}, a, 2.0), a, -1.0) == a);
    RC_ASSERT(plus(a, a, -1.0).empty());
  }));
}

TEST(SharesProperty, TheVarianceOfASumHoldsTwiceTheCovariance) {
  EXPECT_TRUE(tests::holds("u2(a + b) = u2(a) + u2(b) + 2 cov(a, b)", [] {
    const Shares a = drawn();
    const Shares b = drawn();
    const double slope = *rc::gen::element(-2.0, 0.5, 3.0);
    const double variance = std::pow(standard_uncertainty(plus(a, b, slope)), 2.0);
    const double by_parts =
        covariance(a, a) + slope * slope * covariance(b, b) + 2.0 * slope * covariance(a, b);
    RC_ASSERT(std::abs(variance - by_parts) <= kSumError * (1.0 + covariance(a, a) + 9.0 * covariance(b, b)));
    RC_ASSERT(covariance(a, b) == covariance(b, a));
    RC_ASSERT(std::abs(covariance(a, b)) <=
              (1.0 + kSumError) * standard_uncertainty(a) * standard_uncertainty(b));
  }));
}

}  // namespace
}  // namespace sparewright::ledger
