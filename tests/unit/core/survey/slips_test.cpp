#include "core/survey/slips.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sparewright::survey {
namespace {

using testing::HasSubstr;

constexpr double kInch = 25.4;

// A reading in inches that is out by so much, known to a standard uncertainty of 0.0003 in.
Misread inches(const std::string& typed, double reading, double error,
               std::string kind = "outside micrometer") {
  return {
      typed, reading * kInch, error * kInch, 0.0003 * kInch, quantity::Kind::kLength, false, std::move(kind),
      0.0};
}

// 0.7250 read where 0.7502 is true: a turn of 0.025 leaves 0.0002.
TEST(Slips, ATurnOfTheThimbleMissedIsNamedWithWhatItLeaves) {
  const auto found = slips(inches("0.7250", 0.7250, -0.0252));
  ASSERT_FALSE(found.empty());
  EXPECT_THAT(found.front().says, HasSubstr("0.025 in) was missed"));
  EXPECT_NEAR(found.front().rest / kInch, 0.0002, 1e-9);
  EXPECT_NEAR(found.front().odds, 2.0 / 3.0, 1e-9);
}

TEST(Slips, ATurnTooManyAndAHalfMillimetre) {
  EXPECT_THAT(slips(inches("0.7752", 0.7752, 0.0251)).front().says, HasSubstr("counted too many"));
  const Misread metric{"25.49", 25.49, -0.502, 0.004, quantity::Kind::kLength, true, "outside micrometer",
                       0.0};
  EXPECT_THAT(slips(metric).front().says, HasSubstr("0.5 mm"));
}

TEST(Slips, ACaliperHasNoThimble) {
  EXPECT_TRUE(slips(inches("0.725", 0.725, -0.0252, "dial caliper")).empty());
  EXPECT_THAT(slips(inches("0.625", 0.625, -0.1001, "dial caliper")).front().says, HasSubstr("0.1 in"));
}

TEST(Slips, ARadiusForADiameterAndTheOtherWay) {
  EXPECT_THAT(slips(inches("0.375", 0.375, -0.3752, "rule")).front().says, HasSubstr("a radius, not"));
  EXPECT_THAT(slips(inches("0.750", 0.750, 0.3751, "rule")).front().says, HasSubstr("a diameter, not"));
}

TEST(Slips, AZeroTakenTheWrongWayRound) {
  Misread misread = inches("0.7500", 0.7480, -0.0040);
  misread.zero_found = 0.0020 * kInch;
  EXPECT_THAT(slips(misread).front().says, HasSubstr("other way round"));
}

// 0.7059 written for 0.7509: 0.0450 less.
TEST(Slips, TwoFiguresSwapped) {
  const auto found = slips(inches("0.7059", 0.7059, -0.0450, "comparator"));
  ASSERT_FALSE(found.empty());
  EXPECT_THAT(found.front().says, HasSubstr("0.7509"));
}

TEST(Slips, InchesAndMillimetres) {
  EXPECT_THAT(slips(inches("19.05", 19.05, 19.05 - 0.75, "rule")).front().says, HasSubstr("in millimetres"));
  const Misread metric{"0.75", 0.75, 0.75 - 19.05, 0.01, quantity::Kind::kLength, true, "rule", 0.0};
  EXPECT_THAT(slips(metric).front().says, HasSubstr("in inches"));
}

TEST(Slips, SayNothingWhereNoneExplainsItOrTheDoubtSwallowsAll) {
  EXPECT_TRUE(slips(inches("0.7500", 0.7500, -0.0113)).empty());
  Misread vague = inches("0.7500", 0.7500, -0.0250);
  vague.error_u = 0.02 * kInch;
  EXPECT_TRUE(slips(vague).empty());
  vague.error_u = 0.0;
  EXPECT_TRUE(slips(vague).empty());
}

}  // namespace
}  // namespace sparewright::survey
