#include "core/shape/roots.hpp"

#include <array>
#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sparewright::shape {
namespace {

using testing::DoubleNear;
using testing::ElementsAre;
using testing::IsEmpty;

TEST(RealRoots, OfStraightsAndParabolas) {
  EXPECT_THAT(real_roots(std::array{6.0, -2.0}), ElementsAre(3.0));
  EXPECT_THAT(real_roots(std::array{6.0, -5.0, 1.0}), ElementsAre(2.0, 3.0));
  EXPECT_THAT(real_roots(std::array{1.0, 0.0, 1.0}), IsEmpty());
  EXPECT_THAT(real_roots(std::array{5.0}), IsEmpty());
  EXPECT_THAT(real_roots(std::array{6.0, -5.0, 1.0, 0.0, 0.0}), ElementsAre(2.0, 3.0));
  // 1e8 and 1e-8: the usual formula loses the small one.
  EXPECT_THAT(real_roots(std::array{1.0, -1e8, 1.0}),
              ElementsAre(DoubleNear(1e-8, 1e-23), DoubleNear(1e8, 1e-7)));
}

TEST(RealRoots, OfFourthDegree) {
  // (x + 2)(x - 1)(x - 3)(x - 10)
  EXPECT_THAT(real_roots(std::array{-60.0, 56.0, 15.0, -12.0, 1.0}),
              ElementsAre(DoubleNear(-2.0, 1e-12), DoubleNear(1.0, 1e-12), DoubleNear(3.0, 1e-12),
                          DoubleNear(10.0, 1e-12)));
  // (x^2 + 1)(x - 4)(x + 4)
  EXPECT_THAT(real_roots(std::array{-16.0, 0.0, -15.0, 0.0, 1.0}),
              ElementsAre(DoubleNear(-4.0, 1e-12), DoubleNear(4.0, 1e-12)));
  EXPECT_THAT(real_roots(std::array{16.0, 0.0, 1.0, 0.0, 1.0}), IsEmpty());
}

}  // namespace
}  // namespace sparewright::shape
