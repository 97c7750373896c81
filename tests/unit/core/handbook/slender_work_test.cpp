// Slender work: the formulas against numbers worked by hand.
#include "core/handbook/slender_work.hpp"

#include <gtest/gtest.h>

namespace sparewright::handbook {
namespace {

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

}  // namespace
}  // namespace sparewright::handbook
