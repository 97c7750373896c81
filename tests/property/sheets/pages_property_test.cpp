// Whatever the setup says: every text is on its sheet, nothing overlaps, no line runs through words, nothing lies outside.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "core/base/words.hpp"
#include "drawing_faults.hpp"
#include "printed.hpp"
#include "random_setups.hpp"
#include "sheets/layout.hpp"

namespace sparewright::sheets {
namespace {

constexpr std::uint32_t kSeed = 1959;
constexpr int kSheets = 200;

FirstSheet random_first(tests::Dice& dice) {
  FirstSheet f;
  f.hand = tests::random_text(dice, 9);
  f.material = tests::random_text(dice, 3);
  f.blank = tests::random_text(dice, 5);
  f.sizes_in = "inches";
  for (int i = dice.whole(0, 5); i > 0; --i) {
    f.mates.push_back(
        {tests::random_text(dice, 3), "0.7498", tests::random_text(dice, 4), tests::random_text(dice, 9)});
  }
  f.sizes_that_matter = tests::random_texts(dice, 8, 6);
  f.the_rest = tests::random_text(dice, 12);
  for (int i = dice.whole(0, 40); i > 0; --i) {
    f.checks.push_back({tests::random_text(dice, 3), tests::random_text(dice, 3),
                        static_cast<ledger::State>(dice.whole(0, 3)), tests::random_text(dice, 2),
                        tests::random_text(dice, 12), dice.one_in(2) ? "" : tests::random_text(dice, 8)});
  }
  for (int i = dice.whole(0, 3); i > 0; --i) {
    f.queries.push_back({tests::random_text(dice, 8), tests::random_text(dice, 9),
                         tests::random_text(dice, 8), dice.one_in(2),
                         dice.one_in(2) ? "" : tests::random_text(dice, 9)});
  }
  f.cautions = tests::random_texts(dice, 2, 12);
  return f;
}

route::ListTable random_table(tests::Dice& dice) {
  route::ListTable table;
  const int columns = dice.whole(1, 5);
  for (int c = 0; c < columns; ++c)
    table.headings.push_back(dice.one_in(4) ? "" : "MUST SHOW");
  for (int r = dice.whole(0, 30); r > 0; --r) {
    table.rows.emplace_back();
    for (int c = 0; c < columns; ++c)
      table.rows.back().push_back(dice.one_in(6) ? "" : tests::random_text(dice, 8));
  }
  if (dice.one_in(2)) table.figures = static_cast<std::size_t>(dice.whole(0, columns - 1));
  table.to_fill = dice.one_in(2);
  table.ticks = dice.one_in(2);
  return table;
}

route::ListSheet random_list(tests::Dice& dice) {
  route::ListSheet sheet;
  sheet.tab = "LIST";
  sheet.name = tests::random_text(dice, 5);
  sheet.cautions = tests::random_texts(dice, 2, 12);
  sheet.is_signed = dice.one_in(2);
  for (int i = dice.whole(1, 4); i > 0; --i) {
    sheet.sections.push_back({dice.one_in(3) ? "" : tests::random_text(dice, 3),
                              tests::random_texts(dice, 2, 12),
                              dice.one_in(3) ? route::ListTable{} : random_table(dice),
                              tests::random_texts(dice, 9, 6), tests::random_texts(dice, 3, 12)});
  }
  return sheet;
}

std::string wanted(const std::string& text) {
  return tests::levelled(base::worded(text, base::Dialect::kAmerican));
}

// With words levelled on both sides: names keep their brackets, product text does not.
bool holds_text(const std::string& said, const std::string& text) {
  return said.find(wanted(text)) != std::string::npos ||
         said.find(tests::levelled(text)) != std::string::npos;
}

TEST(PagesProperty, EveryTextIsThereAndNothingOverlaps) {
  auto press = Press::open();
  ASSERT_TRUE(press.has_value());
  tests::Dice dice(kSeed);
  int sheets = 0;
  std::size_t texts = 0;
  std::size_t pages_of_sheets = 0;
  while (sheets < kSheets) {
    Packet packet{tests::random_text(dice, dice.one_in(10) ? 60 : 6), "B", random_first(dice), {}};
    for (int i = 0; i < 9; ++i)
      packet.setups.push_back(tests::random_setup(dice));
    packet.before.push_back(random_list(dice));
    packet.after.push_back(random_list(dice));
    const PaperOptions options{dice.one_in(2) ? Paper::kA4 : Paper::kLetter, base::Dialect::kAmerican};
    const auto all = laid_out(packet, options, **press);
    ASSERT_TRUE(all.has_value()) << base::report(all.error());
    for (std::size_t p = 0; p < all->size(); ++p) {
      const Page& page = (*all)[p];
      for (const std::string& fault :
           tests::drawing_faults(page.list, {0.0, 0.0, page.width_mm, page.height_mm})) {
        ADD_FAILURE() << "seed " << kSeed << ", after " << sheets << " sheets, page " << p + 1 << ": "
                      << fault;
      }
    }
    const std::string said = tests::said(*all);
    for (const std::string& text : tests::texts_of(packet)) {
      EXPECT_TRUE(holds_text(said, text)) << "seed " << kSeed << ", after " << sheets << " sheets: " << text;
      ++texts;
    }
    sheets += 12;
    pages_of_sheets += all->size();
  }
  EXPECT_GE(sheets, kSheets);
  EXPECT_GT(texts, 10'000U);
  EXPECT_GT(pages_of_sheets, 250U);  // some go on to a second page
}

}  // namespace
}  // namespace sparewright::sheets
