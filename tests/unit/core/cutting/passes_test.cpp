#include "core/cutting/passes.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/cutting/spindle.hpp"

namespace sparewright::cutting {
namespace {

using testing::DoubleNear;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::Pointwise;

constexpr double kTiny = 1e-9;
auto sizes(std::vector<double> wanted) {
  return Pointwise(DoubleNear(kTiny), wanted);
}

TEST(ShareOut, TwoLikeCutsLastAndAlikeRoughingBefore) {
  // From 10 to 13: two last cuts of 0.25, the other 2.5 in three cuts of at most 1.
  const auto passes = share_out(10.0, 13.0, {1.0, 0.25, 0.1});
  EXPECT_TRUE(passes.two_like_last);
  EXPECT_THAT(passes.sizes_mm, sizes({10.0 + 2.5 / 3, 10.0 + 5.0 / 3, 12.5, 12.75, 13.0}));
}

TEST(ShareOut, ShrinkingGoesTheOtherWay) {
  const auto passes = share_out(19.0, 12.7, {3.0, 0.25, 0.08});
  EXPECT_THAT(passes.sizes_mm, sizes({19.0 - 5.8 / 2, 13.2, 12.95, 12.7}));
}

TEST(ShareOut, NoRoughingWhereTwoLikeCutsAreAllThereIs) {
  EXPECT_THAT(share_out(10.0, 10.5, {1.0, 0.25, 0.1}).sizes_mm, sizes({10.25, 10.5}));
}

TEST(ShareOut, LessMetalIsHalved) {
  const auto passes = share_out(10.0, 10.3, {1.0, 0.25, 0.1});
  EXPECT_TRUE(passes.two_like_last);
  EXPECT_THAT(passes.sizes_mm, sizes({10.15, 10.3}));
}

TEST(ShareOut, HalvesThatWouldRubBecomeOneCut) {
  const auto passes = share_out(10.0, 10.15, {1.0, 0.25, 0.1});
  EXPECT_FALSE(passes.two_like_last);
  EXPECT_THAT(passes.sizes_mm, sizes({10.15}));
}

TEST(ShareOut, AWholeNumberOfRoughingCutsIsNotOneMore) {
  // 0.3 in cuts of 0.1: three, whatever the last bits say.
  EXPECT_EQ(share_out(0.0, 0.3 + 2 * 0.05, {0.1, 0.05, 0.01}).sizes_mm.size(), 5U);
}

TEST(ShareOut, NoMetalNoCuts) {
  EXPECT_THAT(share_out(10.0, 10.0, {1.0, 0.25, 0.1}).sizes_mm, IsEmpty());
}

TEST(Spindle, TheFastestThatIsNotTooFast) {
  const std::vector<double> speeds{80, 135, 210, 325, 660};
  EXPECT_DOUBLE_EQ(choose_speed(300.0, speeds).rpm, 210.0);
  EXPECT_DOUBLE_EQ(choose_speed(325.0, speeds).rpm, 325.0);
  EXPECT_DOUBLE_EQ(choose_speed(5000.0, speeds).rpm, 660.0);
  EXPECT_FALSE(choose_speed(80.0, speeds).too_fast);
}

TEST(Spindle, SlowerThanTheSlowestIsSaid) {
  const std::vector<double> speeds{80, 135};
  const auto choice = choose_speed(79.0, speeds);
  EXPECT_TRUE(choice.too_fast);
  EXPECT_DOUBLE_EQ(choice.rpm, 80.0);
}

}  // namespace
}  // namespace sparewright::cutting
