// Sizes as accounts of repairs give them, and what they turned out to be. What the readings were good to is taken from the
// instruments named: a micrometer or bore gauge 0.0005 in, a calliper 0.002 in.
#include <gtest/gtest.h>

#include "core/intent/original.hpp"

namespace sparewright::intent {
namespace {

using ledger::Bound;
using quantity::Kind;
using quantity::UnitSystem;

constexpr double kInch_mm = 25.4;

MeasuredUp inches(double size, double unknown, Role role, Kind kind = Kind::kDiameter,
                  Bound bound = Bound::kExact) {
  return {size * kInch_mm, unknown * kInch_mm, bound, kind, role};
}

std::string first(const Proposals& p) {
  return p.candidates.empty() ? "" : p.candidates.front().name;
}

std::vector<Proposals> together(const std::vector<MeasuredUp>& all) {
  std::vector<ToPropose> asked;
  for (const MeasuredUp& one : all)
    asked.push_back({one, std::nullopt, std::nullopt});
  return proposals(asked, chance_of_inch({}, UnitSystem::kInch));
}

// electric-booger.blogspot.com/2012/09/coupler-conundrum.html: a motor shaft of 0.982 in by micrometer, taken for one inch,
// was 25 mm (0.9843).
TEST(OutsideAccounts, AMotorShaftThatIsNotAnInch) {
  EXPECT_EQ(first(together({inches(0.982, 0.0005, Role::kShaft)}).front()), "25 mm");
}

// pounceatron.dreamhosters.com/lathe/atw/countershaft.html: a scored countershaft of 1-3/8 in, down about 0.010 in.
TEST(OutsideAccounts, AScoredCountershaft) {
  const auto found =
      together({inches(1.365, 0.0005, Role::kShaft, Kind::kDiameter, Bound::kAtLeast),
                inches(1.750, 0.002, Role::kShaft), inches(3.0, 0.002, Role::kOther, Kind::kLength)});
  EXPECT_EQ(first(found[0]), "1-3/8 in");
  EXPECT_EQ(first(found[1]), "1-3/4 in");
}

// hobby-machinist.com, thread "Help with gear", January 2022: 104 teeth, 10.6 in over them, 10 DP.
TEST(OutsideAccounts, ALathesMainGear) {
  EXPECT_EQ(first(together({inches(10.6 / 106.0, 0.004 / 106.0, Role::kModule, Kind::kLength)}).front()),
            "10 DP");
}

// metalworkforums.com, thread 180076: thumb screws of 3 mm and 0.6 mm pitch, not the usual 0.5; the pitch over five threads.
TEST(OutsideAccounts, ThumbScrewsOfAnOddPitch) {
  const auto found = together({inches(2.96 / kInch_mm, 0.002, Role::kShaft),
                               inches(0.6 / kInch_mm, 0.002 / 5.0, Role::kPitch, Kind::kLength)});
  EXPECT_EQ(first(found[1]), "0.6 mm");
  EXPECT_EQ(found[0].candidates.front().size_mm, 3.0);
  EXPECT_LT(found[0].chance_of_inch, 0.1);
}

// warhammer.mcc.virginia.edu/ty/7x10/hint-gears2.html: change gears measured in inches on a comparator, circular pitch 0.1245,
// bore 0.4735, keyway 0.1151 wide; they are module 1 with bores of 12 mm and keyways of 3 mm.
TEST(OutsideAccounts, ChangeGearsReadInInches) {
  constexpr double kPi = 3.14159265358979;
  const auto found =
      together({inches(0.1245 / kPi, 0.001 / kPi, Role::kModule, Kind::kLength),
                inches(0.4735, 0.002, Role::kHole), inches(0.1151, 0.002, Role::kHole, Kind::kLength)});
  EXPECT_EQ(first(found[0]), "module 1");
  EXPECT_EQ(first(found[1]), "12 mm");
  EXPECT_LT(found[0].chance_of_inch, 0.1);
}

}  // namespace
}  // namespace sparewright::intent
