// Standard sizes near to a measured one: how striking each is, worked by hand as the step over twice the distance.
#include "core/intent/original.hpp"

#include <algorithm>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sparewright::intent {
namespace {

using ledger::Bound;
using quantity::Kind;
using testing::Contains;
using testing::HasSubstr;
using testing::StartsWith;

constexpr double kInch_mm = 25.4;

MeasuredUp inches(double size, double unknown, Role role = Role::kOther, Kind kind = Kind::kLength,
                  Bound bound = Bound::kExact) {
  return {size * kInch_mm, unknown * kInch_mm, bound, kind, role};
}

const Candidate* named(const std::vector<Candidate>& all, const std::string& name) {
  const auto found = std::find_if(all.begin(), all.end(), [&](const Candidate& c) { return c.name == name; });
  return found == all.end() ? nullptr : &*found;
}

TEST(OriginalSize, AWholeInchStandsOut) {
  const auto all = candidates(inches(6.0025, 0.0012));
  ASSERT_FALSE(all.empty());
  EXPECT_EQ(all.front().name, "6 in");
  EXPECT_NEAR(all.front().once_in, 200.0, 1e-6);  // 1 / (2 x 0.0025)
  EXPECT_NEAR(all.front().off_mm / kInch_mm, 0.0025, 1e-12);
  EXPECT_FALSE(all.front().may_be_it);  // 0.0025 is more than 0.0012
  EXPECT_EQ(all.front().series.front(), "a whole inch");
}

TEST(OriginalSize, WhatTheReadingsLeaveOpenCountsAsTheDistance) {
  const auto all = candidates(inches(0.7499, 0.0005, Role::kShaft, Kind::kDiameter));
  ASSERT_FALSE(all.empty());
  EXPECT_EQ(all.front().name, "3/4 in");
  EXPECT_NEAR(all.front().once_in, 250.0, 1e-6);  // 0.25 / (2 x 0.0005)
  EXPECT_TRUE(all.front().may_be_it);
  EXPECT_EQ(named(all, "48/64 in"), nullptr);  // one size, one name
}

TEST(OriginalSize, AMetricShaftIsAPreferredNumberAndABearingsBore) {
  const auto all = candidates({24.998, 0.004, Bound::kExact, Kind::kDiameter, Role::kShaft});
  ASSERT_FALSE(all.empty());
  EXPECT_EQ(all.front().name, "25 mm");
  EXPECT_THAT(all.front().series, Contains(HasSubstr("bore of bearing")));
  EXPECT_THAT(all.front().series, Contains(std::string("fives of millimetres")));
  EXPECT_NEAR(all.front().once_in, 25.0 * 0.258925412 / 0.008, 1e-3);  // R10: 10^(1/10) - 1 = 0.2589
}

TEST(OriginalSize, AHoleMayBeADrillAShaftMayNot) {
  const auto hole = candidates(inches(0.2010, 0.0002, Role::kHole, Kind::kDiameter));
  ASSERT_NE(named(hole, "#7"), nullptr);  // 0.204 and 0.199 beside it: 0.0025 apart, once in 0.0025 / 0.0004
  EXPECT_NEAR(named(hole, "#7")->once_in, 6.25, 1e-6);
  EXPECT_EQ(named(candidates(inches(0.2010, 0.0002, Role::kShaft, Kind::kDiameter)), "#7"), nullptr);
}

TEST(OriginalSize, AWidthMayBeAKeysADiameterMayNot) {
  const auto width = candidates(inches(0.2495, 0.0005));
  ASSERT_FALSE(width.empty());
  EXPECT_THAT(width.front().series, Contains(std::string("width of an inch key")));
  const auto diameter = candidates(inches(0.2495, 0.0005, Role::kOther, Kind::kDiameter));
  ASSERT_FALSE(diameter.empty());
  EXPECT_THAT(diameter.front().series, testing::Not(Contains(std::string("width of an inch key"))));
}

TEST(OriginalSize, WearOnlyTakesMetalOff) {
  const auto shaft = candidates(inches(0.9970, 0.0002, Role::kShaft, Kind::kDiameter, Bound::kAtLeast));
  ASSERT_FALSE(shaft.empty());
  EXPECT_EQ(shaft.front().name, "1 in");
  for (const Candidate& c : shaft)
    EXPECT_GE(c.size_mm, 0.9968 * kInch_mm) << c.name;
  const auto hole = candidates(inches(0.9970, 0.0002, Role::kHole, Kind::kDiameter, Bound::kAtMost));
  EXPECT_EQ(named(hole, "1 in"), nullptr);
  for (const Candidate& c : hole)
    EXPECT_LE(c.size_mm, 0.9972 * kInch_mm) << c.name;
  EXPECT_TRUE(candidates(inches(1.0, 0.001, Role::kShaft, Kind::kDiameter, Bound::kNeither)).empty());
}

// ISO 286: grade 11 over 10 to 18 mm is 0.110 mm wide.
TEST(OriginalSize, ASoundSizeWasMadeWithinGrade11) {
  const auto off = [](double mm, Bound bound) {
    return named(candidates({16.0 + mm, 0.001, bound, Kind::kDiameter, Role::kHole}), "16 mm") != nullptr;
  };
  EXPECT_TRUE(off(0.110, Bound::kExact));
  EXPECT_FALSE(off(0.112, Bound::kExact));
  EXPECT_TRUE(off(0.112, Bound::kAtMost));  // a worn hole was smaller
}

TEST(OriginalSize, TheMatesSizeComesFirst) {
  // A worn bore at 0.6315: 16 mm is nearer, but what goes in it is 5/8.
  const MeasuredUp bore = inches(0.6315, 0.0010, Role::kHole, Kind::kDiameter, Bound::kAtMost);
  EXPECT_EQ(candidates(bore).front().name, "16 mm");
  const auto with_mate = candidates(bore, 0.625 * kInch_mm);
  EXPECT_EQ(with_mate.front().name, "5/8 in");
  EXPECT_TRUE(with_mate.front().as_mate);
  // A sound bore at 0.6320 is 0.178 mm over 5/8, more than the 0.110 mm of grade 11: a loose pair.
  const MeasuredUp loose = inches(0.6320, 0.0010, Role::kHole, Kind::kDiameter);
  EXPECT_EQ(named(candidates(loose), "5/8 in"), nullptr);
  EXPECT_EQ(candidates(loose, 0.625 * kInch_mm).front().name, "5/8 in");
}

TEST(OriginalSize, AtMostThreeAndOnlyWhatIsStriking) {
  for (double size = 0.11; size < 9.0; size += 0.0317) {
    const auto all = candidates(inches(size, 0.002));
    EXPECT_LE(all.size(), kMostCandidates);
    for (std::size_t i = 0; i < all.size(); ++i) {
      EXPECT_GE(all[i].once_in, 2.0);
      if (i > 0) {
        EXPECT_LE(all[i].once_in, all[i - 1].once_in);
      }
    }
  }
  EXPECT_TRUE(candidates(inches(0.7113, 0.2)).empty());  // nothing can be told of a size so badly known
}

TEST(OriginalSize, TheReasonHasTheNumbers) {
  const MeasuredUp measured = inches(6.0025, 0.00125);
  EXPECT_EQ(reason_of(candidates(measured).front(), measured, quantity::UnitSystem::kInch),
            "a whole inch, 0.100 in steps; so near once in 200; 0.0025 over: 2.0 times what the readings "
            "leave open");
  const MeasuredUp near = inches(0.7499, 0.0005);
  EXPECT_THAT(reason_of(candidates(near).front(), near, quantity::UnitSystem::kInch),
              HasSubstr("0.0001 under: within what the readings leave open"));
}

}  // namespace
}  // namespace sparewright::intent
