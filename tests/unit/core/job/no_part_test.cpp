// A job that only measures: no blank, so nothing that could be right or wrong with a new part.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "check_pairs.hpp"
#include "judged_job.hpp"

namespace sparewright {
namespace {

using testing::HasSubstr;
using tests::job_with;
using tests::judged;

TEST(NoPart, ItIsSaidThatNothingIsKnownOfTheNewPart) {
  std::string text = job_with("");
  text.erase(text.find("[blank]"));
  auto job = judged(text);
  EXPECT_FALSE(job.job.has_part);
  EXPECT_EQ(job.state("new part", "the job"), ledger::State::kNotKnown);
  EXPECT_EQ(job.ledger.verdicts().size(), 1U);
  EXPECT_NEAR(job.inches("survey/pin"), 0.5, 1e-12);
}

TEST(NoPart, WithABlankThereIsOne) {
  auto job = judged(job_with(""));
  EXPECT_TRUE(job.job.has_part);
  for (const ledger::Verdict& verdict : job.ledger.verdicts())
    EXPECT_NE(verdict.check, "new part");
}

TEST(BlindThread, AWholeDiameterIsAsUsual) {
  const auto deep = [](const std::string& depth) {
    return judged(job_with(tests::hole_text(
        "hole", "2", "1.5", "how = \"tapped\"\nthread = \"1/4-20 UNC-2B\"\ndepth = \"" + depth + "\"")));
  };
  auto usual = deep("0.551");  // 0.300 of lead and chips, 0.250 of thread
  EXPECT_EQ(usual.state("a blind thread has full thread", "hole"), ledger::State::kOk);
  auto less = deep("0.549");
  EXPECT_EQ(less.state("a blind thread has full thread", "hole"), ledger::State::kClose);
  auto none = deep("0.290");
  EXPECT_THAT(none.verdict("a blind thread has full thread", "hole").reason,
              HasSubstr("there is no full thread"));
}

}  // namespace
}  // namespace sparewright
