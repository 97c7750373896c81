#include "core/base/words.hpp"

#include <gtest/gtest.h>

namespace sparewright::base {
namespace {

TEST(Worded, ChoosesTheDialect) {
  EXPECT_EQ(worded("grip it in the [vise]", Dialect::kAmerican), "grip it in the vise");
  EXPECT_EQ(worded("grip it in the [vise]", Dialect::kBritish), "grip it in the vice");
  EXPECT_EQ(worded("[bolt circle] on the [drill press]", Dialect::kBritish), "PCD on the pillar drill");
}

TEST(Worded, KeepsCapitals) {
  EXPECT_EQ(worded("[Compound] to 0", Dialect::kBritish), "Top slide to 0");
  EXPECT_EQ(worded("[COMPOUND] READS", Dialect::kBritish), "TOP SLIDE READS");
  EXPECT_EQ(worded("[COMPOUND] READS", Dialect::kAmerican), "COMPOUND READS");
  EXPECT_EQ(worded("[Bolt circle]", Dialect::kBritish), "PCD");
}

TEST(Worded, LeavesOtherBracketsAlone) {
  for (const auto dialect : {Dialect::kAmerican, Dialect::kBritish}) {
    EXPECT_EQ(worded("[[feature]] has no key 'at'", dialect), "[[feature]] has no key 'at'");
    EXPECT_EQ(worded("[ ] head, 10 in sweep", dialect), "[ ] head, 10 in sweep");
    EXPECT_EQ(worded("open [ only", dialect), "open [ only");
    EXPECT_EQ(worded("] closed first", dialect), "] closed first");
    EXPECT_EQ(worded("", dialect), "");
  }
}

TEST(Worded, DoesNotTouchUnmarkedWords) {
  EXPECT_EQ(worded("the vise as typed", Dialect::kBritish), "the vise as typed");
}

}  // namespace
}  // namespace sparewright::base
