// Screws, keyseats, grooves, glands and pins: what is asked for comes out under its name.
#include <gtest/gtest.h>

#include "bench_questions.hpp"

namespace sparewright::answers {
namespace {

using tests::handbook;
using tests::refusal;
using tests::row;

constexpr double kLastInchPlace = 0.00011;
constexpr double kLastMetricPlace = 0.0011;

TEST(HandbookScrew, HasHeadHolesStrengthAndTorque) {
  const auto answer = handbook("screw", "5/16-18 socket head");
  ASSERT_TRUE(answer);
  EXPECT_NE(answer->says.find("tap drill letter F"), std::string::npos) << answer->says;
  EXPECT_NEAR(row(*answer, "key").numbers.at(0), 0.25, kLastInchPlace);
  EXPECT_NEAR(row(*answer, "tap drill, letter F").numbers.at(0), 0.257, kLastInchPlace);
  EXPECT_LT(row(*answer, "clearance, close").numbers.at(0), row(*answer, "clearance, loose").numbers.at(0));
  EXPECT_FALSE(row(*answer, "counterbore, ASME B18.3 appendix").source.text.empty());
}

// Stress area (pi/4) (0.3125 - 0.9743/18)^2 = 0.05243 in2, by 180,000 psi of A574: 9437 lbf.
TEST(HandbookScrew, BreaksAtStrengthTimesStressArea) {
  const auto answer = handbook("screw", "5/16-18 socket head");
  ASSERT_TRUE(answer);
  EXPECT_NEAR(row(*answer, "stress area").numbers.at(0), 0.05243, 0.00001);
  EXPECT_NEAR(row(*answer, "breaks at").numbers.at(0), 9437.0, 2.0);
}

// The preload at the mean factor lies within what the spread of factors leaves.
TEST(HandbookScrew, ShowsTheSpreadOfTheTorque) {
  const auto answer = handbook("screw", "M8 socket head", {{"grade", "8.8"}});
  ASSERT_TRUE(answer);
  const double wanted = row(*answer, "preload wanted").numbers.at(0);
  EXPECT_LT(row(*answer, "preload that torque may leave").numbers.at(0), wanted);
  EXPECT_GT(row(*answer, "preload that torque may leave").numbers.at(1), wanted);
  EXPECT_EQ(row(*answer, "torque").unit, "N m");
  ASSERT_FALSE(answer->cautions.empty());
  EXPECT_NE(answer->cautions.front().find("proof load"), std::string::npos);
}

TEST(HandbookScrew, SaysWhatItDoesNotKnow) {
  const auto plain = handbook("screw", "1/2-13 hex");
  ASSERT_TRUE(plain);
  EXPECT_THROW((void)row(*plain, "proof load"), std::runtime_error);
  ASSERT_FALSE(plain->assumed.empty());
  EXPECT_NE(plain->assumed.back().find("no grade"), std::string::npos);
  EXPECT_NO_THROW((void)row(*plain, "spotface under the head"));
  EXPECT_NE(refusal(handbook("screw", "5/16-18")).find("socket head"), std::string::npos);
  EXPECT_NE(refusal(handbook("screw", "5/16-18 socket head", {{"grade", "A575"}})).find("A574"),
            std::string::npos);
}

// The head gives way before the thread, and a set screw is not tightened to a preload.
TEST(HandbookScrew, HeadsThatCarryLessThanTheThreadAreSaid) {
  const auto button = handbook("screw", "M8 button head", {{"grade", "10.9"}});
  ASSERT_TRUE(button);
  ASSERT_FALSE(button->cautions.empty());
  EXPECT_NE(button->cautions.front().find("carry less"), std::string::npos);
  const auto set = handbook("screw", "M8 set screw", {{"grade", "12.9"}});
  ASSERT_TRUE(set);
  EXPECT_THROW((void)row(*set, "torque"), std::runtime_error);
}

TEST(HandbookScrew, EveryHeadHasItsRows) {
  for (const char* words : {"M8 button head", "1/4-20 flat head", "#10-24 flat head machine screw", "M8 hex",
                            "1/4-20 set screw", "M6 shcs"}) {
    const auto answer = handbook("screw", words);
    ASSERT_TRUE(answer) << words;
    EXPECT_GE(answer->tables.front().rows.size(), 5U) << words;
  }
}

// DIN 6885: 30 mm has 8 x 7, 4 +0.2 deep; 26 mm over the back.
TEST(HandbookKey, MetricKeyseatFromTheCrestAndOverTheBack) {
  const auto answer = handbook("key", "30 mm");
  ASSERT_TRUE(answer);
  EXPECT_EQ(answer->tables.front().heading, "parallel key 8 x 7");
  EXPECT_NEAR(row(*answer, "depth from the crest").numbers.at(0), 4.0, kLastMetricPlace);
  EXPECT_NEAR(row(*answer, "over the back").numbers.at(0), 25.8, kLastMetricPlace);
  EXPECT_NEAR(row(*answer, "over the back").numbers.at(1), 26.0, kLastMetricPlace);
  EXPECT_EQ(row(*answer, "over the back").unit, "mm");
}

// Machinery's Handbook: 1 in shaft, 1/4 in square key, S 0.859, T 1.114 in.
TEST(HandbookKey, InchKeyseatsParallelAndWoodruff) {
  const auto answer = handbook("key", "1 in");
  ASSERT_TRUE(answer);
  const auto& square = row(*answer, "over the back", "square key 1/4 x 1/4");
  EXPECT_NEAR(square.numbers.back(), 0.859, 0.0006);
  EXPECT_EQ(row(*answer, "406").note.substr(0, 28), "cutter 3/4 in by 1/8 in wide");
}

// Least height 0.308 less half the width; the arc over 3/16 in of a 1 in shaft is 0.0089 in high.
TEST(HandbookKey, OneWoodruffKeyseatInFull) {
  const auto answer = handbook("key", "1 in", {{"woodruff", "606"}});
  ASSERT_TRUE(answer);
  EXPECT_NEAR(row(*answer, "depth at the side").numbers.at(0), 0.308 - 0.09375, kLastInchPlace);
  const Row& deep = row(*answer, "depth from the crest");
  EXPECT_NEAR(deep.numbers.at(0), 0.308 - 0.09375 + 0.00887, kLastInchPlace);
  EXPECT_NEAR(deep.numbers.at(1) - deep.numbers.at(0), 0.005, kLastInchPlace);
  EXPECT_FALSE(refusal(handbook("key", "1 in", {{"woodruff", "6060"}})).empty());
  EXPECT_FALSE(refusal(handbook("key", "1/8 in", {{"woodruff", "1212"}})).empty());
}

TEST(HandbookKey, WantsAUnitAndATabledSize) {
  EXPECT_FALSE(refusal(handbook("key", "30")).empty());
  EXPECT_FALSE(refusal(handbook("key", "900 mm")).empty());
  EXPECT_FALSE(refusal(handbook("key", "-30 mm")).empty());
}

// h12 at 23.9 mm: 0/-0.21.
TEST(HandbookRing, GrooveOfAShaft) {
  const auto answer = handbook("ring", "25 mm shaft");
  ASSERT_TRUE(answer);
  ASSERT_EQ(answer->tables.size(), 1U);
  EXPECT_NEAR(row(*answer, "groove diameter").numbers.at(0), 23.69, kLastMetricPlace);
  EXPECT_NEAR(row(*answer, "groove diameter").numbers.at(1), 23.9, kLastMetricPlace);
  EXPECT_NEAR(row(*answer, "groove width").numbers.at(1), 1.44, kLastMetricPlace);
}

TEST(HandbookRing, GivesBothWhereNothingIsNamed) {
  const auto answer = handbook("ring", "25 mm");
  ASSERT_TRUE(answer);
  EXPECT_EQ(answer->tables.size(), 2U);
  EXPECT_FALSE(answer->assumed.empty());
  EXPECT_GT(row(*answer, "groove diameter", "internal ring of DIN 472").numbers.at(0), 25.0);
}

TEST(HandbookRing, NamesTheNearestSizes) {
  EXPECT_NE(refusal(handbook("ring", "23 mm shaft")).find("22"), std::string::npos)
      << refusal(handbook("ring", "23 mm shaft"));
  EXPECT_FALSE(refusal(handbook("ring", "shaft")).empty());
}

// Section 0.139 +-0.004: thickest in the shallowest gland (0.143 - 0.119)/0.143 = 17 %.
TEST(HandbookORing, GlandByDashNumberAndBySection) {
  for (const char* words : {"214", "-214", "0.139 in"}) {
    const auto answer = handbook("oring", words);
    ASSERT_TRUE(answer) << words;
    EXPECT_NEAR(row(*answer, "depth", "gland, reciprocating").numbers.at(0), 0.119, kLastInchPlace) << words;
    EXPECT_NEAR(row(*answer, "squeeze, %", "gland, reciprocating").numbers.at(1), 17.0, 1.0) << words;
  }
  EXPECT_FALSE(refusal(handbook("oring", "900")).empty());
  EXPECT_NE(refusal(handbook("oring", "0.150 in")).find("0.139"), std::string::npos)
      << refusal(handbook("oring", "0.150 in"));
}

// 0.250 in less 1.5/48.
TEST(HandbookPin, SmallEndOfATaperPin) {
  const auto answer = handbook("pin", "taper pin 4", {{"length", "1-1/2 in"}});
  ASSERT_TRUE(answer);
  EXPECT_NEAR(row(*answer, "small end").numbers.at(0), 0.21875, kLastInchPlace);
  EXPECT_NE(refusal(handbook("pin", "taper pin 4", {{"length", "13 in"}})).find("--length"),
            std::string::npos);
  EXPECT_FALSE(refusal(handbook("pin", "taper pin 4", {{"length", "0 in"}})).empty());
}

TEST(HandbookPin, DowelsAndSpringPins) {
  const auto dowel = handbook("pin", "1/4 in dowel");
  ASSERT_TRUE(dowel);
  EXPECT_LT(row(*dowel, "hole it is pressed into").numbers.at(0), row(*dowel, "pin").numbers.at(0));
  const auto spring = handbook("pin", "spring pin 6 mm");
  ASSERT_TRUE(spring);
  EXPECT_EQ(row(*spring, "hole").unit, "mm");
  EXPECT_NE(refusal(handbook("pin", "1/4 in")).find("dowel"), std::string::npos);
}

}  // namespace
}  // namespace sparewright::answers
