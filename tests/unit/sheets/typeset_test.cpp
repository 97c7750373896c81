#include "sheets/typeset.hpp"

#include <gtest/gtest.h>

namespace sparewright::sheets {
namespace {

TEST(Typeset, SetsFractionsAsFractions) {
  EXPECT_EQ(typeset("3/8"), "3\u20448");
  EXPECT_EQ(typeset("drill 5/16 through"), "drill 5\u204416 through");
  EXPECT_EQ(typeset("1-3/8"), "1\u20093\u20448");
  EXPECT_EQ(typeset("to 3-5/16, 1-1/2."), "to 3\u20095\u204416, 1\u20091\u20442.");
  EXPECT_EQ(typeset("tap 3/8-16"), "tap 3\u20448-16");
  EXPECT_EQ(typeset("3/8\" \xC2\xB1"
                    "1/64"),
            "3\u20448\" \u00B11\u204464");
  EXPECT_EQ(typeset("(27/32)"), "(27\u204432)");
}

TEST(Typeset, LeavesWhatIsNoFractionAlone) {
  for (const char* text : {"2/4",  "3/5",       "9/8",       "1/128",      "0/8",   "3/8/2",  "1/2024",
                           "R1/4", "1/4x",      "a-3/8",     "3.1/8",      "1/8.5", "1/8/",   "/8",
                           "3/",   "\u00e91/4", "1/4\u00e9", "24/11/2026", "4-40",  "hole 1/"}) {
    EXPECT_EQ(typeset(text), text);
  }
}

TEST(Typeset, SetsRangesWithADash) {
  EXPECT_EQ(typeset("0.8750-0.8758"), "0.8750\u20130.8758");
  EXPECT_EQ(typeset("bore .625-.627, cold"), "bore .625\u2013.627, cold");
  for (const char* text : {"34-35", "0.5-13", "0.1-0.2-0.3", "M8-1.25", "0.5 - 0.6", "0.5-"}) {
    EXPECT_EQ(typeset(text), text);
  }
}

TEST(Typeset, SetsATimesSignBetweenFigures) {
  EXPECT_EQ(typeset("0.748 x 1.998 x 4.248"), "0.748 \u00D7 1.998 \u00D7 4.248");
  EXPECT_EQ(typeset("1-1/4 x 1/4"), "1\u20091\u20444 \u00D7 1\u20444");
  EXPECT_EQ(typeset("M8 x .5"), "M8 \u00D7 .5");
  for (const char* text : {"the x axis", "2 x axis", "3x4", "x 3"})
    EXPECT_EQ(typeset(text), text);
}

TEST(Typeset, KeepsAToleranceWithItsSize) {
  EXPECT_EQ(typeset("2.305 ±0.004"), "2.305\u00A0±0.004");
  EXPECT_EQ(typeset("all ±0.004"), "all ±0.004");
}

TEST(Typeset, KeepsWhatACollarShowsOnOneLine) {
  EXPECT_EQ(typeset("at each depth X 22t + 106, then 19t + 145"),
            "at each depth X 22t\u00A0+\u00A0106, then 19t\u00A0+\u00A0145");
  for (const char* text : {"at + 62", "5t +62", "5t * 62", "5t + so", "right + 5"})
    EXPECT_EQ(typeset(text), text);
}

TEST(Typeset, SetsMinusSigns) {
  EXPECT_EQ(typeset("-6t - 50"), "\u22126t\u00A0\u2212\u00A050");
  EXPECT_EQ(typeset("at -0.003 (-.5)"), "at \u22120.003 (\u2212.5)");
  EXPECT_EQ(typeset("-1/8"), "\u22121/8");
  for (const char* text : {"3/8-16", "a - b", "0.8750 - P", "hit - 5", "A-5", "- 5"}) {
    EXPECT_EQ(typeset(text).find("\u2212"), std::string::npos) << text;
  }
}

TEST(Typeset, TakesNothing) {
  EXPECT_EQ(typeset(""), "");
}

}  // namespace
}  // namespace sparewright::sheets
