// Lobed work in a vee block: the factor against the work turned step by step.
#include "core/handbook/vee_block.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

namespace sparewright::handbook {
namespace {

constexpr double kPi = std::numbers::pi;

// Slow twin: the work is turned step by step in the vee, its centre found from the two contacts.
double swing_by_turning(int lobes, double vee_rad) {
  const double off = 1e-3;
  const double to_contact = (kPi - vee_rad) / 2.0;
  const auto out = [&](double at) { return off * std::cos(lobes * at); };
  double low = 1.0;
  double high = -1.0;
  constexpr int kSteps = 7200;
  for (int i = 0; i < kSteps; ++i) {
    const double turned = 2.0 * kPi * i / kSteps;
    const double down = -kPi / 2.0 + turned;
    const double rise = (out(down - to_contact) + out(down + to_contact)) / (2.0 * std::cos(to_contact));
    const double shows = rise + out(kPi / 2.0 + turned);
    low = std::min(low, shows);
    high = std::max(high, shows);
  }
  return (high - low) / (2.0 * off);
}

TEST(VeeBlock, ShowsWhatTurningShows) {
  for (const double vee : {60.0, 72.0, 90.0, 108.0, 120.0}) {
    for (int lobes = 2; lobes <= 12; ++lobes)
      EXPECT_NEAR(vee_swing_factor(lobes, vee * kPi / 180.0), swing_by_turning(lobes, vee * kPi / 180.0),
                  1e-5)
          << lobes << " lobes in " << vee;
  }
  EXPECT_NEAR(vee_swing_factor(3, kPi / 2.0), 2.0, 1e-12);
  EXPECT_NEAR(vee_swing_factor(3, kPi / 3.0), 3.0, 1e-12);
  EXPECT_NEAR(vee_swing_factor(2, kPi / 2.0), 1.0, 1e-12);
  EXPECT_NEAR(vee_swing_factor(7, kPi / 2.0), 0.0, 1e-12);
}

}  // namespace
}  // namespace sparewright::handbook
