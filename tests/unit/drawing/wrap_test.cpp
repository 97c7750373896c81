#include "drawing/wrap.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "fixed_ruler.hpp"

namespace sparewright::drawing {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

constexpr TextStyle kStyle{2.5, Face::kRegular};  // 2 mm a character
const tests::FixedRuler kRuler;

std::vector<std::string> wrapped(std::string_view text, int characters) {
  return wrap(kRuler, text, kStyle, 2.0 * characters);
}

TEST(Wrap, BreaksAtSpaces) {
  EXPECT_THAT(wrapped("one two three", 13), ElementsAre("one two three"));
  EXPECT_THAT(wrapped("one two three", 12), ElementsAre("one two", "three"));
  EXPECT_THAT(wrapped("one two three", 5), ElementsAre("one", "two", "three"));
}

TEST(Wrap, TakesARunOfSpacesAsOne) {
  EXPECT_THAT(wrapped("  one   two ", 20), ElementsAre("one two"));
}

TEST(Wrap, GivesNoLinesForNoText) {
  EXPECT_THAT(wrapped("", 5), IsEmpty());
  EXPECT_THAT(wrapped("   ", 5), IsEmpty());
}

TEST(Wrap, BreaksAWordThatIsTooLong) {
  EXPECT_THAT(wrapped("a bcdefgh i", 3), ElementsAre("a", "bcd", "efg", "h i"));
  EXPECT_THAT(wrapped("abc", 0), ElementsAre("a", "b", "c"));
}

TEST(Wrap, KeepsCharactersAndTheirMarksWhole) {
  EXPECT_THAT(wrapped("äöü", 1), ElementsAre("ä", "ö", "ü"));
  EXPECT_THAT(wrapped("e\u0301e\u0301", 2), ElementsAre("e\u0301", "e\u0301"));
}

TEST(Wrap, DoesNotBreakAtANoBreakSpace) {
  EXPECT_THAT(wrapped("5t\u00A0+\u00A062 and", 8), ElementsAre("5t\u00A0+\u00A062", "and"));
}

TEST(Wrap, BreaksARangeAfterItsDash) {
  EXPECT_THAT(wrapped("at 0.875\u20130.876", 9), ElementsAre("at 0.875\u2013", "0.876"));
  EXPECT_THAT(wrapped("at 0.875\u20130.876", 14), ElementsAre("at 0.875\u20130.876"));
}

TEST(Wrap, BreaksAfterAHyphenBetweenLettersOnly) {
  EXPECT_THAT(wrapped("cross-slide", 6), ElementsAre("cross-", "slide"));
  EXPECT_THAT(wrapped("tap 3/8-16", 6), ElementsAre("tap", "3/8-16"));
}

TEST(WrapEven, KeepsTheNumberOfLinesAndEvensThem) {
  EXPECT_THAT(wrap(kRuler, "hole 1 to hole 2", kStyle, 30.0), ElementsAre("hole 1 to hole", "2"));
  EXPECT_THAT(wrap_even(kRuler, "hole 1 to hole 2", kStyle, 30.0), ElementsAre("hole 1 to", "hole 2"));
  EXPECT_THAT(wrap_even(kRuler, "short", kStyle, 30.0), ElementsAre("short"));
}

TEST(LongestWord, IsTheWidestUnbrokenPiece) {
  EXPECT_DOUBLE_EQ(longest_word(kRuler, "on the cross", kStyle), 10.0);
  EXPECT_DOUBLE_EQ(longest_word(kRuler, "0.875\u20130.8765", kStyle), 12.0);
  EXPECT_DOUBLE_EQ(longest_word(kRuler, "", kStyle), 0.0);
}

}  // namespace
}  // namespace sparewright::drawing
