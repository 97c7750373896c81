// A casting from the text to its verdict: worked by hand, just enough metal and just not.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "judged_job.hpp"
#include "part_text.hpp"

namespace sparewright {
namespace {

using ledger::State;
using testing::HasSubstr;
using tests::judged;
using tests::troubles_of;

// 106 long as cast, 100 finished: the left end is cut to leave `first`, the right end takes the rest. The core stands 51
// from the cast left end, the bore 50 from the finished one.
std::string casting(const std::string& first, const std::string& uneven, const std::string& core = "20") {
  return R"([job]
title = "Test"
units = "mm"
[blank]
shape = "casting"
material = "not known"
size = { length = "106", width = "60", thickness = "20" }
found = { length = "106", width = "60", thickness = "20" }
found_with = "fine"
rough = [{ side = "left end", uneven = ")" +
         uneven + R"(" }, { side = "right end", uneven = "0.5" }]
cored = [{ name = "core", at = { x = "51", y = "30" }, diameter = ")" +
         core + R"(", finished_by = "bore" }]
[[feature]]
name = "left"
kind = "flat"
side = "left end"
leaves = { size = ")" +
         first + R"(", tol = "±0.1" }
[[feature]]
name = "right"
kind = "flat"
side = "right end"
leaves = { size = "100", tol = "±0.1" }
[[feature]]
name = "bore"
kind = "hole"
how = "bored"
at.x = { size = "50", from = "left end" }
at.y = "30"
diameter = { size = "26", tol = "±0.1" }
)";
}

TEST(Casting, CleansUpOrDoesNot) {
  auto inside = judged(casting("104.95", "1"));  // 1.05 comes off the left end, whose lowest spot is 1 deep
  EXPECT_EQ(inside.state("casting is shared out", "blank"), State::kOk);
  EXPECT_NEAR(inside.ledger.get("check/share out/blank/metal on left end").value, 0.05, 1e-9);
  // 4.95 off the right end less 0.5.
  EXPECT_NEAR(inside.ledger.get("check/share out/blank/metal on right end").value, 4.45, 1e-9);
  auto outside = judged(casting("105.05", "1"));
  EXPECT_EQ(outside.state("casting is shared out", "blank"), State::kNo);
}

// As it lies now 0.95 comes off the left end: 0.05 too little; 4.55 of the right end's 5.05 cuts; the bore stands at 50.95,
// 0.05 short of the core, with (25.9 - 20) / 2 = 2.95 round it. Moved by d they have -0.05 + d, 4.55 - d and
// 2.95 - (d - 0.05): left end and bore meet at d = 1.525 with 1.475, the right end has more. 2.475 then comes off the left.
TEST(Casting, TheBestSharingIsSaid) {
  const auto verdict = judged(casting("105.05", "1")).verdict("casting is shared out", "blank");
  EXPECT_THAT(verdict.todo, HasSubstr("take 2.4")) << verdict.todo;
  EXPECT_THAT(verdict.todo, HasSubstr("at least 1.4"));
}

TEST(Casting, NoSharingHelpsACoreThatIsTooLarge) {
  const auto verdict = judged(casting("103", "1", "26")).verdict("casting is shared out", "blank");
  EXPECT_EQ(verdict.state, State::kNo);
  EXPECT_THAT(verdict.todo, HasSubstr("no sharing cleans it up"));
}

TEST(Casting, TheCoreIsAirFromTheStart) {
  auto job = judged(casting("103", "1"));
  const auto recipe = job.ledger.value<shape::Recipe>(part::kRecipe);
  ASSERT_TRUE(recipe);
  EXPECT_EQ(recipe->cuts().front().feature, "core");
  EXPECT_EQ(job.state("least wall", "bore"), State::kOk);
}

TEST(Casting, IsRefusedWhereItCannotBe) {
  std::string plate = casting("103", "1");
  plate.replace(plate.find("\"casting\""), 9, "\"plate\"");
  EXPECT_THAT(troubles_of(plate), HasSubstr("a casting as the blank"));
  EXPECT_THAT(troubles_of(casting("103", "-1")), HasSubstr("0 or more"));
  EXPECT_THAT(troubles_of(casting("103", "1", "0")), HasSubstr("cored"));
  std::string other = casting("103", "1");
  other.replace(other.find("finished_by = \"bore\""), 20, "finished_by = \"boer\"");
  EXPECT_THAT(troubles_of(other), HasSubstr("boer"));
}

}  // namespace
}  // namespace sparewright
