// What a measured size was made to: which sizes are proposed, what settles them, what would decide where they are not.
#include "core/intent/original.hpp"

#include <algorithm>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sparewright::intent {
namespace {

using ledger::Bound;
using quantity::Kind;
using quantity::UnitSystem;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;

constexpr double kInch_mm = 25.4;
constexpr double kEven = 0.5;

MeasuredUp inches(double size, double unknown, Role role = Role::kOther, Kind kind = Kind::kLength,
                  Bound bound = Bound::kExact) {
  return {size * kInch_mm, unknown * kInch_mm, bound, kind, role};
}

Proposals alone(const MeasuredUp& measured, double chance_of_inch = kEven) {
  return proposals({{measured, std::nullopt, std::nullopt}}, chance_of_inch).front();
}

const Candidate* named(const Proposals& p, const std::string& name) {
  const auto found = std::find_if(p.candidates.begin(), p.candidates.end(),
                                  [&](const Candidate& c) { return c.name == name; });
  return found == p.candidates.end() ? nullptr : &*found;
}

std::string first(const Proposals& p) {
  return p.candidates.empty() ? "" : p.candidates.front().name;
}

TEST(OriginalSize, AWholeInchStandsOut) {
  const Proposals p = alone(inches(6.0025, 0.0012), 0.7);
  EXPECT_EQ(first(p), "6 in");
  EXPECT_NEAR(p.candidates.front().off_mm / kInch_mm, 0.0025, 1e-12);
  EXPECT_FALSE(p.candidates.front().may_be_it);  // 0.0025 is more than 0.0012
  EXPECT_EQ(p.candidates.front().series.front(), "a whole inch");
  EXPECT_GT(p.chance_of_inch, 0.7);
}

TEST(OriginalSize, AMetricShaftIsABearingsSeatToo) {
  const Proposals p = alone({24.998, 0.004, Bound::kExact, Kind::kDiameter, Role::kShaft}, 0.3);
  EXPECT_EQ(first(p), "25 mm");
  EXPECT_TRUE(p.is_settled);
  EXPECT_THAT(p.candidates.front().series, Contains(HasSubstr("bore of bearing")));
  EXPECT_LT(p.chance_of_inch, 0.3);
}

// 25 mm is 0.9843 and 63/64 is 0.9844 in: on an inch machine a shaft at 0.9840 is no 64th for all that.
TEST(OriginalSize, ABearingIsMetricOnAnInchMachine) {
  const Proposals p = alone(inches(0.9841, 0.0003, Role::kShaft, Kind::kDiameter), 0.9);
  EXPECT_EQ(first(p), "25 mm");
}

TEST(OriginalSize, AHoleMayBeADrillAShaftMayNot) {
  EXPECT_EQ(first(alone(inches(0.2020, 0.0002, Role::kHole, Kind::kDiameter), 0.95)), "#7");
  EXPECT_EQ(named(alone(inches(0.2020, 0.0002, Role::kShaft, Kind::kDiameter), 0.95), "#7"), nullptr);
}

// ASME B1.1: a 1/4-20 UNC-2A screw is 0.2408 to 0.2489 in over its crests.
TEST(OriginalSize, AScrewLiesBelowItsNominalSize) {
  const Proposals p = alone(inches(0.2440, 0.0004, Role::kShaft, Kind::kDiameter), 0.95);
  const auto screw = std::find_if(p.candidates.begin(), p.candidates.end(), [](const Candidate& c) {
    return std::abs(c.size_mm - 0.25 * kInch_mm) < 1e-9;
  });
  ASSERT_NE(screw, p.candidates.end());
  EXPECT_EQ(screw->series.front(), "outside of a thread");
  EXPECT_EQ(screw->made, "as a screw is cut");
  EXPECT_THAT(screw->name, HasSubstr("1/4-"));
}

TEST(OriginalSize, AWidthMayBeAKeysADiameterMayNot) {
  const Proposals width = alone(inches(0.2495, 0.0005, Role::kShaft), 0.9);
  ASSERT_FALSE(width.candidates.empty());
  EXPECT_THAT(width.candidates.front().series, Contains(std::string("width of an inch key")));
  const Proposals diameter = alone(inches(0.2495, 0.0005, Role::kShaft, Kind::kDiameter), 0.9);
  ASSERT_FALSE(diameter.candidates.empty());
  EXPECT_THAT(diameter.candidates.front().series, Not(Contains(std::string("width of an inch key"))));
}

TEST(OriginalSize, PipeTubePinAndTaper) {
  // 1/2 pipe is 0.840 in outside (ASME B36.10), a No. 2 Morse taper 0.700 in at its large end.
  EXPECT_EQ(first(alone(inches(0.8400, 0.0015, Role::kShaft, Kind::kDiameter), 0.9)), "1/2 pipe");
  EXPECT_THAT(alone(inches(0.7000, 0.0005, Role::kHole, Kind::kDiameter), 0.9).candidates.size(),
              testing::Gt(0U));
  const Proposals dowel = alone(inches(0.2502, 0.0001, Role::kShaft, Kind::kDiameter), 0.9);
  EXPECT_THAT(dowel.candidates.front().series, Contains(std::string("dowel pin")));
}

TEST(OriginalSize, PitchesAndModules) {
  EXPECT_EQ(first(alone(inches(0.05002, 0.0004, Role::kPitch))), "20 threads per inch");
  EXPECT_EQ(first(alone({1.2508, 0.004, Bound::kExact, Kind::kLength, Role::kPitch})), "1.25 mm");
  EXPECT_EQ(first(alone({1.9985, 0.002, Bound::kExact, Kind::kLength, Role::kModule})), "module 2");
  EXPECT_EQ(first(alone(inches(0.06245, 0.0001, Role::kModule))), "16 DP");
}

TEST(OriginalSize, WearOnlyTakesMetalOff) {
  const Proposals shaft = alone(inches(0.9970, 0.0002, Role::kShaft, Kind::kDiameter, Bound::kAtLeast), 0.9);
  EXPECT_EQ(first(shaft), "1 in");
  for (const Candidate& c : shaft.candidates)
    EXPECT_GE(c.size_mm, 0.9955 * kInch_mm) << c.name;  // less what is driven in is over its size
  const Proposals hole = alone(inches(0.9970, 0.0002, Role::kHole, Kind::kDiameter, Bound::kAtMost), 0.9);
  EXPECT_EQ(named(hole, "1 in"), nullptr);
  const Proposals broken = alone(inches(1.0, 0.001, Role::kShaft, Kind::kDiameter, Bound::kNeither));
  EXPECT_TRUE(broken.candidates.empty());
  EXPECT_EQ(broken.none, 1.0);
  EXPECT_FALSE(broken.is_settled);
  EXPECT_THAT(decider_of(broken, UnitSystem::kInch), HasSubstr("across a break"));
}

// 16 mm is 0.6299 in, 5/8 0.6250: a worn bore at 0.6315 by itself, with what goes in it, and with what it was accepted as.
TEST(OriginalSize, WhatGoesInItSaysWhatAHoleWas) {
  const MeasuredUp bore = inches(0.6315, 0.0010, Role::kHole, Kind::kDiameter, Bound::kAtMost);
  const MeasuredUp pin = inches(0.6248, 0.0002, Role::kShaft, Kind::kDiameter);
  EXPECT_EQ(first(alone(bore, 0.3)), "16 mm");
  const auto both = proposals({{bore, std::nullopt, 1}, {pin, std::nullopt, 0}}, 0.3);
  EXPECT_EQ(first(both[0]), "5/8 in");
  EXPECT_TRUE(both[0].candidates.front().as_mate);
  EXPECT_EQ(both[0].measured.size_mm, bore.size_mm);
  const auto accepted = proposals({{bore, std::nullopt, 1}, {pin, 16.0, 0}}, 0.3);
  EXPECT_EQ(first(accepted[0]), "16 mm");
  EXPECT_EQ(first(accepted[1]), "5/8 in");  // its own acceptance says nothing of what it was
}

// 0.3745 in, half a thousandth under 3/8 and over 9.5 mm: what else is on the part tells.
TEST(OriginalSize, APartIsInchOrMetricAsAWhole) {
  const MeasuredUp doubtful = inches(0.3745, 0.0020, Role::kHole, Kind::kDiameter);
  const auto with = [&](double a_mm, double b_mm) {
    const auto sound = [](double mm) {
      return MeasuredUp{mm, 0.01, Bound::kExact, Kind::kLength, Role::kOther};
    };
    return proposals({{doubtful, {}, {}}, {sound(a_mm), {}, {}}, {sound(b_mm), {}, {}}}, kEven).front();
  };
  const Proposals metric = with(40.0, 17.0);
  EXPECT_EQ(first(metric), "9.5 mm");
  EXPECT_LT(metric.chance_of_inch, 0.05);
  const Proposals inch = with(1.875 * kInch_mm, 0.4375 * kInch_mm);
  EXPECT_EQ(first(inch), "3/8 in");
  EXPECT_GT(inch.chance_of_inch, 0.95);
}

TEST(OriginalSize, TheReadingThatWouldDecideIsNamed) {
  // A worn place: beside the wear. Between 4 mm (0.1575) and 5/32 (0.1563): a finer reading.
  const Proposals worn = alone(inches(0.960, 0.001, Role::kShaft, Kind::kDiameter, Bound::kAtLeast));
  ASSERT_FALSE(worn.is_settled);
  EXPECT_EQ(worn.decider, Decider::kUnwornPlace);
  const Proposals coarse = alone(inches(0.1569, 0.002, Role::kShaft, Kind::kDiameter));
  ASSERT_FALSE(coarse.is_settled);
  ASSERT_EQ(coarse.decider, Decider::kFinerReading);
  EXPECT_LT(coarse.good_to_mm, 0.001 * kInch_mm);
  EXPECT_THAT(decider_of(coarse, UnitSystem::kInch), HasSubstr("would decide"));
  const Proposals settled = alone({24.998, 0.004, Bound::kExact, Kind::kDiameter, Role::kShaft});
  EXPECT_EQ(decider_of(settled, UnitSystem::kMetric), "");
}

TEST(OriginalSize, AtMostThreeTheLikeliestFirst) {
  for (double size = 0.11; size < 9.0; size += 0.0317) {
    const Proposals p = alone(inches(size, 0.002));
    EXPECT_LE(p.candidates.size(), kMostCandidates);
    double sum = p.none;
    for (std::size_t i = 0; i < p.candidates.size(); ++i) {
      sum += p.candidates[i].chance;
      if (i > 0) {
        EXPECT_LE(p.candidates[i].chance, p.candidates[i - 1].chance);
      }
    }
    EXPECT_LE(sum, 1.0 + 1e-9);
  }
  const Proposals far = alone(inches(0.7113, 0.2));
  EXPECT_FALSE(far.is_settled);  // nothing can be told of a size so badly known
}

TEST(OriginalSize, TheReasonHasTheNumbers) {
  const Proposals p = alone(inches(6.0025, 0.00125), 0.9);
  EXPECT_THAT(reason_of(p.candidates.front(), p.measured, UnitSystem::kInch),
              HasSubstr("; 0.0025 over, as a length is cut; 2.0 times what the readings leave open"));
  const Proposals near = alone(inches(0.7499, 0.0005), 0.9);
  EXPECT_THAT(reason_of(near.candidates.front(), near.measured, UnitSystem::kInch),
              HasSubstr("0.0001 under, within what the readings leave open"));
}

TEST(OddsOf, AsTheTradeSaysThem) {
  EXPECT_EQ(odds_of(0.95), "19 to 1 on");
  EXPECT_EQ(odds_of(0.2), "4 to 1 against");
  EXPECT_EQ(odds_of(0.5), "even");
  EXPECT_EQ(odds_of(0.6), "1.5 to 1 on");
  EXPECT_EQ(odds_of(1.0), "more than 1000 to 1 on");
  EXPECT_EQ(odds_of(0.0), "more than 1000 to 1 against");
}

TEST(MachineIsInch, ByCountryAndAge) {
  const double silent = chance_of_inch({}, UnitSystem::kInch);
  EXPECT_GT(chance_of_inch({Country::kAmerica, 1940}, UnitSystem::kMetric), silent);
  EXPECT_GT(chance_of_inch({Country::kBritain, 1955}, UnitSystem::kMetric), 0.9);
  EXPECT_LT(chance_of_inch({Country::kBritain, 1990}, UnitSystem::kInch), 0.5);
  EXPECT_LT(chance_of_inch({Country::kContinent, {}}, UnitSystem::kInch), 0.1);
  EXPECT_LT(chance_of_inch({}, UnitSystem::kMetric), silent);
}

}  // namespace
}  // namespace sparewright::intent
