// Gauge blocks and the sine bar.
#include <gtest/gtest.h>

#include "bench_questions.hpp"

namespace sparewright::answers {
namespace {

using tests::handbook;
using tests::refusal;
using tests::row;

// 0.1007 ends in the 7, so 1.271 is left: 0.121 of the thousandths, then 1.15 of 1 and 0.15.
TEST(HandbookStack, TakesTheFewestBlocks) {
  const auto answer = handbook("stack", "1.3717 in");
  ASSERT_TRUE(answer);
  ASSERT_FALSE(answer->tables.front().rows.empty());
  for (const Row& one : answer->tables.front().rows) {
    EXPECT_NEAR(one.numbers.at(0), 1.3717, 1e-9);
    EXPECT_EQ(one.note, "exact");
    EXPECT_NE(one.what.find("0.1007"), std::string::npos) << one.what;
  }
  EXPECT_FALSE(answer->assumed.empty());
}

TEST(HandbookStack, TakesTheSetAndTheWearBlocksGiven) {
  const auto answer = handbook("stack", "25.4 mm", {{"set", "88-piece metric"}, {"wear", "2 mm"}});
  ASSERT_TRUE(answer);
  EXPECT_NE(answer->says.find("2 x 2.0000 wear"), std::string::npos) << answer->says;
  EXPECT_NE(refusal(handbook("stack", "1 in", {{"set", "81 piece inch"}})).find("81-piece inch"),
            std::string::npos);
  EXPECT_FALSE(refusal(handbook("stack", "1")).empty());
  EXPECT_FALSE(refusal(handbook("stack", "0.01 in")).empty());
  EXPECT_FALSE(refusal(handbook("stack", "0 in")).empty());
}

// 5 sin 30 = 2.5.
TEST(HandbookSine, StackOfAnAngle) {
  const auto answer = handbook("sine", "30 deg", {{"length", "5 in"}});
  ASSERT_TRUE(answer);
  EXPECT_EQ(answer->says, "stack 2.5000 in (63.500 mm)");
  EXPECT_NEAR(row(*answer, "the bar stands at").numbers.at(0), 30.0, 1e-9);
  EXPECT_NE(refusal(handbook("sine", "30 deg")).find("--length"), std::string::npos);
  EXPECT_FALSE(refusal(handbook("sine", "80 deg", {{"length", "5 in"}})).empty());
  EXPECT_FALSE(refusal(handbook("sine", "30", {{"length", "5 in"}})).empty());
}

}  // namespace
}  // namespace sparewright::answers
