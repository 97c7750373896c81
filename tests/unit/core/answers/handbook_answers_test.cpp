// Answers of the handbook: the values stand in its own tests; here what is asked for comes out under its name.
#include <gtest/gtest.h>

#include "answer_rows.hpp"
#include "core/answers/subjects.hpp"
#include "core/base/messages.hpp"

namespace sparewright::answers {
namespace {

using tests::asked;
using tests::row;

base::Result<Answer> handbook(std::string_view subject, const Question& question) {
  return ask(handbook_subjects(), subject, question);
}

TEST(HandbookDrill, HasItsSizeNeighboursAndTaps) {
  const auto answer = handbook("drill", asked("#7"));
  ASSERT_TRUE(answer);
  EXPECT_EQ(answer->says, "0.2010 in (5.105 mm)");
  EXPECT_EQ(row(*answer, "13/64").value, "0.2031 in (5.159 mm)");
  EXPECT_EQ(row(*answer, "1/4-20 UNC").value, "75 %");
  EXPECT_FALSE(row(*answer, "diameter").source.text.empty());
}

TEST(HandbookDrill, NamesTheNearestWhereThereIsNoSuchDrill) {
  const auto answer = handbook("drill", asked("#81"));
  ASSERT_FALSE(answer);
  EXPECT_NE(base::report(answer.error()).find("#80"), std::string::npos);
}

TEST(HandbookSpeed, ReadsMaterialOperationAndToolInAnyOrder) {
  for (const char* words : {"1018 turning hss", "hss turning 1018", "turning 1018 hss"}) {
    const auto answer = handbook("speed", asked(words));
    ASSERT_TRUE(answer) << words;
    EXPECT_NE(answer->asked.find("rough turning, high-speed steel"), std::string::npos) << answer->asked;
    EXPECT_GT(row(*answer, "in print, all sources").numbers.at(1),
              row(*answer, "in print, all sources").numbers.at(0));
  }
}

// rpm = 1000 v / (pi d): at 100 ft/min on 1 in, 382 rpm (by hand).
TEST(HandbookSpeed, GivesTheSpindleSpeedOnADiameter) {
  Question question = asked("1018 drilling hss");
  question.entries["diameter"] = "1 in";
  const auto answer = handbook("speed", question);
  ASSERT_TRUE(answer);
  const double start = row(*answer, "start at", "cutting speed").numbers.at(0);
  EXPECT_NEAR(row(*answer, "start at", "spindle").numbers.at(0), start * 12.0 / 3.14159265, 1.0);
}

TEST(HandbookSpeed, SaysWhatItNeeds) {
  EXPECT_FALSE(handbook("speed", asked("1018 hss")));
  EXPECT_FALSE(handbook("speed", asked("turning hss")));
  EXPECT_FALSE(handbook("speed", asked("unobtainium turning hss")));
}

}  // namespace
}  // namespace sparewright::answers
