#include "core/survey/slips.hpp"

#include <cmath>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace sparewright::survey {
namespace {

using testing::HasSubstr;

constexpr double kInch = 25.4;

AsRead inches(const std::string& typed, double reading, std::string kind) {
  AsRead read;
  read.typed = typed;
  read.reading = reading * kInch;
  read.instrument_kind = std::move(kind);
  return read;
}

AsRead millimetres(const std::string& typed, double reading, std::string kind) {
  AsRead read = inches(typed, reading / kInch, std::move(kind));
  read.is_metric = true;
  return read;
}

// What is said of a slip that makes the reading wrong by that, to a millionth; empty where there is none.
std::string says(const AsRead& read, double shift) {
  for (const Slip& slip : usual_slips(read)) {
    if (std::abs(slip.shift - shift) < 1e-6) return slip.says;
  }
  return "";
}

TEST(Slips, ATurnOfTheThimble) {
  const AsRead read = inches("0.7250", 0.7250, "outside micrometer");
  EXPECT_EQ(says(read, -0.025 * kInch), "one turn of the thimble (0.025 in) was missed");
  EXPECT_EQ(says(read, 0.025 * kInch), "one turn of the thimble (0.025 in) was counted too many");
  EXPECT_EQ(says(millimetres("25.49", 25.49, "depth micrometer"), -0.5),
            "one turn of the thimble (0.5 mm) was missed");
}

TEST(Slips, ATurnOfTheCollarAsTheInstrumentSays) {
  AsRead read = inches("3.125", 3.125, "collar of the mill");
  EXPECT_EQ(says(read, -0.2 * kInch), "one turn of the collar (0.2 in) was missed");  // usual, none is said
  EXPECT_EQ(says(read, -0.1 * kInch), "one turn of the collar (0.1 in) was missed");
  read.turn = 0.1 * kInch;
  EXPECT_EQ(says(read, -0.2 * kInch), "");
  EXPECT_EQ(says(read, 0.1 * kInch), "one turn of the collar (0.1 in) was counted too many");
  AsRead metric = millimetres("31.20", 31.20, "dial indicator");
  EXPECT_EQ(says(metric, -1.0), "");
  metric.turn = 1.0;
  EXPECT_EQ(says(metric, -1.0), "one turn of the dial (1 mm) was missed");
}

TEST(Slips, ACaliperHasNoThimble) {
  EXPECT_EQ(says(inches("0.725", 0.725, "dial caliper"), -0.025 * kInch), "");
  EXPECT_THAT(says(inches("0.625", 0.625, "dial caliper"), -0.1 * kInch), HasSubstr("0.1 in"));
}

TEST(Slips, ARadiusForADiameterAndTheOtherWay) {
  EXPECT_THAT(says(inches("0.375", 0.375, "rule"), -0.375 * kInch), HasSubstr("a radius, not"));
  EXPECT_THAT(says(inches("0.750", 0.750, "rule"), 0.375 * kInch), HasSubstr("a diameter, not"));
}

// Found 0.0020 high: it counts as 0.7480. Read right it is 0.7500 (the person had taken it off), or 0.7520 (it was low).
TEST(Slips, AZeroTakenTwiceOrTheWrongWayRound) {
  AsRead read = inches("0.7500", 0.7480, "outside micrometer");
  read.zero_found = 0.0020 * kInch;
  EXPECT_THAT(says(read, -0.0020 * kInch), HasSubstr("taken off already"));
  EXPECT_THAT(says(read, -0.0040 * kInch), HasSubstr("other way round"));
}

// 0.7059 written for 0.7509: 0.0450 less.
TEST(Slips, TwoFiguresSwapped) {
  EXPECT_THAT(says(inches("0.7059", 0.7059, "comparator"), -0.0450 * kInch), HasSubstr("0.7509"));
}

TEST(Slips, InchesAndMillimetres) {
  EXPECT_THAT(says(inches("19.05", 19.05, "rule"), (19.05 - 0.75) * kInch), HasSubstr("in millimetres"));
  EXPECT_THAT(says(millimetres("0.75", 0.75, "rule"), 0.75 - 19.05), HasSubstr("in inches"));
}

TEST(Slips, AnAngleHasNoThimbleNorUnits) {
  AsRead read = inches("12.5", 0.0, "bevel micrometer");
  read.reading = 12.5 * 3.14159265358979 / 180.0;
  read.kind = quantity::Kind::kAngle;
  for (const Slip& slip : usual_slips(read))
    EXPECT_EQ(slip.rank, 3) << slip.says;
}

}  // namespace
}  // namespace sparewright::survey
