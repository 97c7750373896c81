// Answers of the handbook: the values stand in its own tests; here what is asked for comes out under its name.
#include <gtest/gtest.h>

#include "bench_questions.hpp"

namespace sparewright::answers {
namespace {

using tests::handbook;
using tests::refusal;
using tests::row;

TEST(HandbookDrill, HasItsSizeNeighboursAndTaps) {
  const auto answer = handbook("drill", "#7");
  ASSERT_TRUE(answer);
  EXPECT_EQ(answer->says, "0.2010 in (5.105 mm)");
  EXPECT_EQ(row(*answer, "13/64").value, "0.2031 in (5.159 mm)");
  EXPECT_EQ(row(*answer, "1/4-20 UNC").value, "75 %");
  EXPECT_FALSE(row(*answer, "diameter").source.text.empty());
}

TEST(HandbookDrill, NamesTheNearestWhereThereIsNoSuchDrill) {
  const auto answer = handbook("drill", "#81");
  ASSERT_FALSE(answer);
  EXPECT_NE(refusal(answer).find("#80"), std::string::npos);
}

TEST(HandbookSpeed, ReadsMaterialOperationAndToolInAnyOrder) {
  for (const char* words : {"1018 turning hss", "hss turning 1018", "turning 1018 hss"}) {
    const auto answer = handbook("speed", words);
    ASSERT_TRUE(answer) << words;
    EXPECT_NE(answer->asked.find("rough turning, high-speed steel"), std::string::npos) << answer->asked;
    EXPECT_GT(row(*answer, "in print, all sources").numbers.at(1),
              row(*answer, "in print, all sources").numbers.at(0));
  }
}

// rpm = 1000 v / (pi d): at 100 ft/min on 1 in, 382 rpm (by hand).
TEST(HandbookSpeed, GivesTheSpindleSpeedOnADiameter) {
  const auto answer = handbook("speed", "1018 drilling hss", {{"diameter", "1 in"}});
  ASSERT_TRUE(answer);
  const double start = row(*answer, "start at", "cutting speed").numbers.at(0);
  EXPECT_NEAR(row(*answer, "start at", "spindle").numbers.at(0), start * 12.0 / 3.14159265, 1.0);
}

TEST(HandbookSpeed, SaysWhatItNeeds) {
  EXPECT_FALSE(handbook("speed", "1018 hss"));
  EXPECT_FALSE(handbook("speed", "turning hss"));
  EXPECT_FALSE(handbook("speed", "unobtainium turning hss"));
}

}  // namespace
}  // namespace sparewright::answers
