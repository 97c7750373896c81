#include "sheets/press.hpp"

#include <gtest/gtest.h>

namespace sparewright::sheets {
namespace {

using drawing::Face;
using drawing::TextStyle;

class PressTest : public testing::Test {
 protected:
  std::unique_ptr<Press> press_ = std::move(*Press::open());
};

TEST_F(PressTest, MeasuresInProportion) {
  const double small = press_->measure("16t + 112", {2.5, Face::kBold}).width_mm;
  EXPECT_NEAR(press_->measure("16t + 112", {5.0, Face::kBold}).width_mm, 2.0 * small, 0.01);
  EXPECT_GT(small, press_->measure("16t + 112", {2.5, Face::kRegular}).width_mm);
  EXPECT_EQ(press_->measure("", {2.5, Face::kBold}).width_mm, 0.0);
}

TEST_F(PressTest, LinesOfOneStyleAreEquallyHigh) {
  const TextStyle style{2.5, Face::kRegular};
  const auto plain = press_->measure("aceno", style);
  for (const char* text : {"", "Hdlg", "0.8750", "jpqy"}) {
    EXPECT_EQ(press_->measure(text, style).above_mm, plain.above_mm);
    EXPECT_EQ(press_->measure(text, style).below_mm, plain.below_mm);
  }
  EXPECT_GE(plain.above_mm, style.cap_mm);
  EXPECT_GT(press_->measure("\u1eba", style).above_mm, plain.above_mm);  // two marks on a capital
}

TEST_F(PressTest, SetsTheFiguresOfAFractionSmall) {
  const TextStyle style{2.5, Face::kRegular};
  const double fraction = press_->measure("3\u20448", style).width_mm;
  EXPECT_LT(fraction, press_->measure("3/8", style).width_mm);
  EXPECT_GT(fraction, press_->measure("3", style).width_mm);
}

TEST_F(PressTest, HasLatinAndTradeSignsInBothFaces) {
  for (const char32_t letter : U"Az09ÅçřŁőØµ±×½″′°–—\u2009\u2044\u2007\u00A0\u2205\u2300") {
    if (letter == U'\0') break;
    EXPECT_TRUE(press_->has(letter)) << static_cast<unsigned>(letter);
  }
  for (const char32_t letter : {U'\u4e2d', U'\n', U'\u202e', U'\u00ad', U'\ue000', U'\U0001F6E0'}) {
    EXPECT_FALSE(press_->has(letter)) << static_cast<unsigned>(letter);
  }
}

}  // namespace
}  // namespace sparewright::sheets
