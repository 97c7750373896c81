// The standard fits nearest to the clearance of a pair.
#include "core/intent/pair.hpp"

#include <algorithm>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sparewright::intent {
namespace {

using handbook::FitDuty;
using handbook::FitStandard;
using testing::Contains;
using testing::Field;
using testing::StartsWith;

constexpr double kThou_mm = 0.0254;

const NearFit& of(const std::vector<NearFit>& all, FitDuty duty, FitStandard standard) {
  return *std::find_if(all.begin(), all.end(),
                       [&](const NearFit& f) { return f.duty == duty && f.standard == standard; });
}

// ANSI B4.1-1967 as in Machinery's Handbook, 31st ed., table 8a, over 0.71 to 1.19 in, thousandths of an inch of
// clearance: RC1 0.3-0.95, RC2 0.3-1.2, RC3 0.8-2.1, RC4 0.8-2.8.
TEST(NearFits, AClearanceOf12To16TenthsIsAPrecisionRunningFit) {
  const auto all = near_fits(0.75 * 25.4, {1.2 * kThou_mm, 1.6 * kThou_mm});
  ASSERT_EQ(all.size(), 8U);  // four duties of two standards
  const NearFit& running = of(all, FitDuty::kRunning, FitStandard::kAnsiB41);
  EXPECT_EQ(running.fit,
            "RC3");  // within RC3 and RC4; the middle of RC3, 1.45, is nearer to 1.4 than that of RC4, 1.8
  EXPECT_EQ(running.out_mm, 0.0);
  EXPECT_NEAR(running.has.least_mm, 0.8 * kThou_mm, 1e-9);
  EXPECT_NEAR(running.has.most_mm, 2.1 * kThou_mm, 1e-9);
  const NearFit& sliding = of(all, FitDuty::kSliding, FitStandard::kAnsiB41);
  EXPECT_EQ(sliding.fit, "RC2");
  EXPECT_NEAR(sliding.out_mm, 0.4 * kThou_mm, 1e-9);  // 1.6 less 1.2
  EXPECT_NEAR(of(all, FitDuty::kPress, FitStandard::kAnsiB41).out_mm, 1.8 * kThou_mm,
              1e-9);  // FN1: 0.2 tight at least
}

// The same tables: a clearance at the very end of RC3 is within, a tenth of a thousandth past it is out by so much.
TEST(NearFits, JustWithinAndJustOut) {
  const auto within = near_fits(0.75 * 25.4, {0.8 * kThou_mm, 2.1 * kThou_mm});
  EXPECT_EQ(of(within, FitDuty::kRunning, FitStandard::kAnsiB41).fit, "RC3");
  EXPECT_EQ(of(within, FitDuty::kRunning, FitStandard::kAnsiB41).out_mm, 0.0);
  const auto out = near_fits(0.75 * 25.4, {0.7 * kThou_mm, 0.75 * kThou_mm});
  EXPECT_EQ(of(out, FitDuty::kRunning, FitStandard::kAnsiB41).fit, "RC3");
  EXPECT_NEAR(of(out, FitDuty::kRunning, FitStandard::kAnsiB41).out_mm, 0.1 * kThou_mm, 1e-9);
}

// ISO 286 at 25 mm: H7 0/+21, g6 -7/-20: 7 to 41 um; h6: 0 to 34.
TEST(NearFits, AMetricSlidingFit) {
  const auto all = near_fits(25.0, {0.010, 0.040});
  const NearFit& sliding = of(all, FitDuty::kSliding, FitStandard::kIso286);
  EXPECT_TRUE(sliding.fit == "H7/g6" || sliding.fit == "G7/h6");
  EXPECT_EQ(sliding.out_mm, 0.0);
  EXPECT_NEAR(sliding.has.least_mm, 0.007, 1e-9);
  EXPECT_NEAR(sliding.has.most_mm, 0.041, 1e-9);
}

TEST(NearFits, WhatLiesWithinComesFirst) {
  const auto all = near_fits(25.0, {-0.030, -0.025});
  ASSERT_FALSE(all.empty());
  EXPECT_EQ(all.front().out_mm, 0.0);
  for (std::size_t i = 1; i < all.size(); ++i)
    EXPECT_GE(all[i].out_mm, all[i - 1].out_mm - 1e-6);
}

// RC3 at 3/4: hole 0.7500-0.7508, shaft 0.7487-0.7492.
TEST(MadeTo, APairInTheMiddleOfItsLimits) {
  const auto all = may_be_made_to(0.7504 * 25.4, 0.0001 * 25.4, 0.74895 * 25.4, 0.0001 * 25.4);
  EXPECT_THAT(all, Contains(Field(&MadeTo::fit, "3/4 in RC3")));
  EXPECT_TRUE(std::any_of(all.begin(), all.end(),
                          [](const MadeTo& m) { return m.fit == "3/4 in RC3" && m.certain; }));
  EXPECT_TRUE(may_be_made_to(30.0, 0.01, 20.0, 0.01).empty());  // no pair
}

}  // namespace
}  // namespace sparewright::intent
