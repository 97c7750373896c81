// The bench card: a quarter of a sheet with one answer on it.
#include "sheets/card.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "drawing/json.hpp"
#include "drawing_faults.hpp"
#include "golden.hpp"
#include "printed.hpp"

namespace sparewright::sheets {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;

Card bore() {
  Card card;
  card.title = "Cider press, idler bracket";
  card.revision = "B";
  card.asked = "feature/pivot bore/diameter/aim";
  card.answer = "0.6261 in";
  card.good_to = "0.0003 in, 19 times in 20";
  card.how = "least, inset by what the instrument does not know";
  card.source = "JCGM 100:2008, 6.2";
  card.rows = {{"feature/pivot bore/diameter/least", "0.6258 in", "the mate as measured plus the least"},
               {"reading/idler pin", "0.6248 in", "micrometer 0-1, mean of 3; as typed: 0.6248, 0.6247"},
               {"standard/3/8-16", "1-3/8 in", ""}};
  return card;
}

std::vector<Page> laid_out(const Card& card, const PaperOptions& options = {}) {
  auto all = card_pages(card, options);
  EXPECT_TRUE(all.has_value()) << base::report(all.error());
  return all ? std::move(*all) : std::vector<Page>{};
}

void expect_sound(const std::vector<Page>& all) {
  for (const Page& page : all)
    EXPECT_THAT(tests::drawing_faults(page.list, {0.0, 0.0, page.width_mm, page.height_mm}), IsEmpty());
}

double cap_of(const Page& page, std::string_view says) {
  for (const drawing::Element& element : page.list) {
    const auto* text = std::get_if<drawing::Text>(&element);
    if (text != nullptr && text->says == says) return text->style.cap_mm;
  }
  return 0.0;
}

TEST(Card, IsTheGoldenOne) {
  const auto all = laid_out(bore());
  ASSERT_EQ(all.size(), 1U);
  EXPECT_TRUE(tests::golden("sheets/card.txt", drawing::to_json(all.front().list)));
  expect_sound(all);
}

TEST(Card, PutsALongValueBelowItsNameAndBreaksAnEndlessOne) {
  Card card = bore();
  card.rows = {
      {"screw 2A", "", ""},
      {"pitch diameter", "0.3287 to 0.3331 in (8.349 to 8.461 mm)", "ASME B1.1"},
      {"stack", "1.0000 + 0.1500 + 0.1210 + 0.1007 + 0.1006 + 0.1005 + 0.1004 in (34.841 mm)", "[1]"}};
  card.notes = {"[1] gauge blocks"};
  const auto all = laid_out(card);
  expect_sound(all);
  EXPECT_GT(cap_of(all.front(), "0.3287 to 0.3331 in (8.349 to 8.461 mm)"), 0.0);
  EXPECT_GT(cap_of(all.front(), "[1] gauge blocks"), 0.0);
}

TEST(Card, IsAQuarterOfItsPaper) {
  const auto a6 = laid_out(bore());
  EXPECT_DOUBLE_EQ(a6.front().width_mm, 105.0);  // ISO 216, A6
  EXPECT_DOUBLE_EQ(a6.front().height_mm, 148.5);
  const auto quarter = laid_out(bore(), {Paper::kLetter, base::Dialect::kAmerican});
  EXPECT_NEAR(quarter.front().width_mm, 4.25 * 25.4, 1e-9);
  EXPECT_NEAR(quarter.front().height_mm, 5.5 * 25.4, 1e-9);
  expect_sound(quarter);
}

TEST(Card, SetsAShortAnswerLargeAndALongOneOnOneLineWhereItFits) {
  Card card = bore();
  EXPECT_DOUBLE_EQ(cap_of(laid_out(card).front(), "0.6261 in"), 9.0);
  card.answer = "0.625012 in to 0.625019 in";
  const double cap = cap_of(laid_out(card).front(), card.answer);
  EXPECT_LT(cap, 9.0);
  EXPECT_GE(cap, 3.8);
}

TEST(Card, NamesWhatIsNotKnown) {
  Card card = bore();
  card.answer = "NOT KNOWN";
  card.good_to.clear();
  card.missing = {"a reading of the idler pin"};
  const auto all = laid_out(card);
  EXPECT_GT(cap_of(all.front(), "not known: a reading of the idler pin"), 0.0);
  expect_sound(all);
}

TEST(Card, GoesOnToANextOneUnderTheSameHead) {
  Card card = bore();
  for (int i = 0; i < 30; ++i)
    card.rows.push_back({"reading/plug " + std::to_string(i), "0.2811 in", "micrometer 0-1"});
  const auto all = laid_out(card);
  ASSERT_GT(all.size(), 1U);
  EXPECT_GT(cap_of(all.front(), "Rev B   card 1 of " + std::to_string(all.size())), 0.0);
  EXPECT_GT(cap_of(all.back(), "reading/plug 29"), 0.0);
  expect_sound(all);
}

TEST(Card, HoldsLongAndStrangeTexts) {
  Card card = bore();
  card.title = std::string(300, 'M');
  card.asked = "feature/" + std::string(200, 'w') + "/\u4e00";
  card.answer = std::string(60, '8');
  card.rows.front().name = std::string(120, 'n');
  card.rows.front().value = std::string(24, '9');
  const auto all = laid_out(card);
  ASSERT_FALSE(all.empty());
  expect_sound(all);
  std::string told;
  for (const drawing::Element& element : all.front().list) {
    if (const auto* text = std::get_if<drawing::Text>(&element)) told += text->says + " ";
  }
  EXPECT_THAT(told, HasSubstr("U+4E00"));
  EXPECT_THAT(told, HasSubstr("stand for letters that this type does not have"));
}

TEST(Card, IsAPdfOfTheSameBytes) {
  const auto first = render_card(bore());
  ASSERT_TRUE(first.has_value());
  EXPECT_THAT(*first, testing::StartsWith("%PDF-"));
  EXPECT_EQ(*first, *render_card(bore()));
}

}  // namespace
}  // namespace sparewright::sheets
