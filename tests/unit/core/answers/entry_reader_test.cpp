// Entries read one after the other: sizes with limits, lists, and the first failure that is kept.
#include "core/answers/entry_reader.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"

namespace sparewright::answers {
namespace {

using quantity::Length;
using testing::HasSubstr;

Question with(std::map<std::string, std::string> entries) {
  return {"", std::move(entries), nullptr, quantity::UnitSystem::kInch};
}

Band band(const std::string& text) {
  const Question question = with({{"size", text}});
  EntryReader read(question);
  const Band found = read.band("size");
  EXPECT_FALSE(read.failed()) << text << ": " << base::report(read.failure().value());
  return found;
}

std::string band_refused(const std::string& text) {
  const Question question = with({{"size", text}});
  EntryReader read(question);
  (void)read.band("size");
  EXPECT_TRUE(read.failed()) << text;
  return read.failed() ? base::report(read.failure().value()) : "";
}

TEST(EntryReader, ReadsASizeWithItsLimits) {
  for (const char* text : {"5.996 to 6.000 mm", "5.996 mm to 6.000 mm", "5.998 +- 0.002 mm",
                           "5.998 mm +/- 0.002 mm", "5.998 ± 0.002 mm"}) {
    EXPECT_NEAR(band(text).low.base(), 5.996, 1e-12) << text;
    EXPECT_NEAR(band(text).high.base(), 6.000, 1e-12) << text;
  }
  EXPECT_DOUBLE_EQ(band("1/2 in").low.base(), 12.7);
  EXPECT_DOUBLE_EQ(band("1/2 in").high.base(), 12.7);
  EXPECT_NEAR(band("0.500 in +- 1 thou").width().base(), 0.002 * 25.4, 1e-12);
}

TEST(EntryReader, RefusesLimitsThatCannotBe) {
  for (const char* text :
       {"6.0 to 5.9 mm", "6 +- -0.1 mm", "6 +- mm", "6", "0 mm", "1 mm, 2 mm", "", "to", "6 mm to"})
    EXPECT_THAT(band_refused(text), HasSubstr("--size")) << text;
}

TEST(EntryReader, AUnitBehindTheLastCountsForAll) {
  const Question question = with({{"front", "1.5, 38 mm, 1.4 in"}});
  EntryReader read(question);
  const std::vector<Length> found = read.lengths("front", 2, 4);
  ASSERT_FALSE(read.failed());
  ASSERT_EQ(found.size(), 3U);
  EXPECT_NEAR(found[0].base(), 38.1, 1e-12);
  EXPECT_NEAR(found[1].base(), 38.0, 1e-12);
  EXPECT_EQ(read.system(), quantity::UnitSystem::kInch);  // of the first one read
}

TEST(EntryReader, KeepsTheFirstFailure) {
  const Question question = with({{"length", "ten"}, {"width", "-1 mm"}, {"size", "2 in"}});
  EntryReader read(question);
  (void)read.size("length");
  EXPECT_EQ(read.size("size"), Length());
  (void)read.size("width");
  read.refuse("size", "nothing");
  ASSERT_TRUE(read.failed());
  EXPECT_THAT(base::report(read.failure().value()), HasSubstr("--length"));
}

TEST(EntryReader, TapersAndWords) {
  const Question question = with({{"taper", "7:24"}, {"foot", "0.6 in/ft"}, {"side", "hole"}});
  EntryReader read(question);
  EXPECT_DOUBLE_EQ(read.taper("taper"), 7.0 / 24.0);
  EXPECT_NEAR(read.taper("foot"), 0.05, 1e-12);
  EXPECT_EQ(read.word("side", {"shaft", "hole"}), "hole");
  EXPECT_EQ(read.word("kind", {"one", "halves"}), "one");
  ASSERT_FALSE(read.failed());
  EXPECT_EQ(read.word("side", {"left", "right"}), "hole");
  EXPECT_THAT(base::report(read.failure().value()), HasSubstr("left or right"));
}

}  // namespace
}  // namespace sparewright::answers
