// Slender work and vee blocks: the formulas against numbers worked another way.
#include "core/handbook/slender_work.hpp"

#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "core/handbook/vee_block.hpp"

namespace sparewright::handbook {
namespace {

constexpr double kPi = std::numbers::pi;

// 20 lbf on 1/2 x 16 in between centres, 30e6 psi: 20 x 4096 / (48 x 30e6 x 0.003068) = 0.01854.
TEST(SlenderWork, GivesAsTheTextbookSays) {
  const double second = second_moment_of_round(0.5);
  EXPECT_NEAR(second, 0.003068, 1e-6);
  EXPECT_NEAR(bend_between_centres(20.0, 16.0, 30e6, second), 0.01854, 1e-5);
  EXPECT_NEAR(bend_free(20.0, 16.0, 30e6, second) / bend_between_centres(20.0, 16.0, 30e6, second), 16.0,
              1e-9);
  EXPECT_NEAR(
      bend_chuck_and_centre(20.0, 16.0, 30e6, second) / bend_between_centres(20.0, 16.0, 30e6, second),
      7.0 / 16.0, 1e-9);
}

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
