#include "sheets/pages.hpp"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "drawing/json.hpp"
#include "drawing_faults.hpp"
#include "golden.hpp"
#include "invented_packet.hpp"
#include "printed.hpp"

namespace sparewright::sheets {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

std::string golden_text(const Page& page) {
  return fmt::format("page {:.1f} x {:.1f} mm\n{}", page.width_mm, page.height_mm,
                     drawing::to_json(page.list));
}

std::vector<std::string> faults(const std::vector<Page>& all) {
  std::vector<std::string> found;
  for (const Page& page : all) {
    for (std::string& fault : tests::drawing_faults(page.list, {0.0, 0.0, page.width_mm, page.height_mm})) {
      found.push_back(std::move(fault));
    }
  }
  return found;
}

std::vector<Page> laid_out(const Packet& packet, const PaperOptions& options = {}) {
  auto all = pages(packet, options);
  EXPECT_TRUE(all.has_value()) << base::report(all.error());
  return all ? std::move(*all) : std::vector<Page>{};
}

double largest_cap(const std::vector<Page>& all, std::string_view says) {
  double cap = 0.0;
  for (const Page& page : all) {
    for (const drawing::Element& element : page.list) {
      const auto* text = std::get_if<drawing::Text>(&element);
      if (text != nullptr && tests::levelled(text->says) == tests::levelled(says))
        cap = std::max(cap, text->style.cap_mm);
    }
  }
  return cap;
}

TEST(Pages, AreTheGoldenOnes) {
  const auto all = laid_out(tests::invented_packet());
  ASSERT_EQ(all.size(), 5U);  // the first sheet, what to lay out, two setups, inspection: each on one page
  EXPECT_TRUE(tests::golden("sheets/first_sheet.txt", golden_text(all[0])));
  EXPECT_TRUE(tests::golden("sheets/lay_out.txt", golden_text(all[1])));
  EXPECT_TRUE(tests::golden("sheets/bore_drill_and_tap.txt", golden_text(all[2])));
  EXPECT_TRUE(tests::golden("sheets/mill_the_step.txt", golden_text(all[3])));
  EXPECT_TRUE(tests::golden("sheets/inspect.txt", golden_text(all[4])));
}

TEST(Pages, SayEverything) {
  const Packet packet = tests::invented_packet();
  for (const Paper paper : {Paper::kA4, Paper::kLetter}) {
    const auto all = laid_out(packet, {paper, base::Dialect::kAmerican});
    const std::string said = tests::said(all);
    for (const std::string& text : tests::texts_of(packet)) {
      EXPECT_THAT(said, HasSubstr(tests::levelled(base::worded(text, base::Dialect::kAmerican))));
    }
    for (const char* text :
         {"SHEET 2 of 5", "Rev C", "one off", "SIZES THAT MATTER", "MACHINE", "CHECK", "HOLD", "PICK UP",
          "STOP", "BEFORE YOU", "UNCLAMP", "IF WRONG",
          "overruled, and why:", "NOT CHECKED FOR STRENGTH by a qualified person; local codes come first.",
          "1 NO, 1 NOT KNOWN, 1 CLOSE, 2 OK", "Sheet 4: op 30, Mill the idler step",
          "Sheet 5: INSPECT, the finished part"}) {
      EXPECT_THAT(said, HasSubstr(tests::levelled(text)));
    }
    EXPECT_THAT(faults(all), IsEmpty());
  }
}

TEST(Pages, HaveThePaperAskedFor) {
  const Page a4 = laid_out(tests::invented_packet()).front();
  EXPECT_EQ(a4.width_mm, 210.0);
  EXPECT_EQ(a4.height_mm, 297.0);
  const Page letter = laid_out(tests::invented_packet(), {Paper::kLetter, base::Dialect::kAmerican}).front();
  EXPECT_NEAR(letter.width_mm / 25.4, 8.5, 1e-12);
  EXPECT_NEAR(letter.height_mm / 25.4, 11.0, 1e-12);
}

TEST(Pages, SetTheFiguresToDialLargest) {
  const auto all = laid_out(tests::invented_packet());
  for (const char* reading : {"16t + 112", "4t + 199", "-6t - 35"}) {
    EXPECT_GE(largest_cap(all, reading), 3.5) << reading;
    EXPECT_LE(largest_cap(all, reading), 5.0) << reading;
    EXPECT_GT(largest_cap(all, reading), largest_cap(all, "660")) << reading;
  }
}

TEST(Pages, ChooseTheDialect) {
  const Packet packet = tests::invented_packet();
  EXPECT_THAT(tests::said(laid_out(packet, {Paper::kA4, base::Dialect::kBritish})), HasSubstr("6invice."));
  EXPECT_THAT(tests::said(laid_out(packet)), HasSubstr("6invise."));
}

TEST(Pages, GoOnToAFurtherPageUnderTheSameHead) {
  Packet packet = tests::invented_packet();
  packet.before.clear();
  packet.after.clear();
  auto& items = packet.setups[0].items;
  const auto once = items;
  while (items.size() < 200)
    items.insert(items.end(), once.begin(), once.end());
  const auto all = laid_out(packet);
  ASSERT_GT(all.size(), 7U);
  EXPECT_THAT(faults(all), IsEmpty());
  const std::string of = fmt::format("of {}", all.size() - 2);
  for (std::size_t page = 1; page + 1 < all.size();
       ++page) {  // between the first sheet and the second setup's
    const std::string said = tests::said({all[page]});
    EXPECT_THAT(said, HasSubstr("OP20"));
    EXPECT_THAT(said, HasSubstr("SHEET2of3"));
    EXPECT_THAT(said, HasSubstr(tests::levelled(fmt::format("page {} {}", page, of))));
    EXPECT_THAT(said, HasSubstr("NOTCHECKEDFORSTRENGTH"));
    if (page > 1) {
      EXPECT_THAT(said, HasSubstr("XREADS")) << page;
    }
  }
  EXPECT_THAT(tests::said({all.back()}), Not(HasSubstr("pageof")));
}

TEST(Pages, ReadWithoutAnythingToSay) {
  Packet packet;
  packet.setups.emplace_back().view.emplace<route::PlanView>();
  const auto all = laid_out(packet);
  ASSERT_EQ(all.size(), 2U);
  EXPECT_THAT(faults(all), IsEmpty());
  EXPECT_THAT(tests::said({all[0]}), HasSubstr("nochecks"));
  EXPECT_THAT(tests::said({all[1]}), HasSubstr("Nopicture:theworkinthepicture"));
  for (const char* absent : {"SIZES", "MACHINE", "XREADS", "UNCLAMP", "CAUTION", "IFWRONG"}) {
    EXPECT_THAT(tests::said(all), Not(HasSubstr(absent)));
  }
}

TEST(Pages, SetALongTitleSmallerAndWhole) {
  Packet packet = tests::invented_packet();
  for (const std::string& title :
       {std::string(300, 'W'), std::string("Lever for the long saw, ") + std::string(276, 'i')}) {
    packet.title = title;
    const auto all = laid_out(packet);
    EXPECT_THAT(faults(all), IsEmpty());
    EXPECT_THAT(tests::said({all[1]}), HasSubstr(tests::levelled(title)));
  }
}

TEST(Pages, PrintTheNumberOfALetterTheTypeHasNotAndSaySo) {
  Packet packet = tests::invented_packet();
  const std::string note = tests::levelled("Numbers like U+2603 stand for letters");
  EXPECT_THAT(tests::said(laid_out(packet)), Not(HasSubstr(note)));
  packet.setups[1].name = "\u4e2d";
  const auto all = laid_out(packet);
  EXPECT_THAT(tests::said({all[3]}), HasSubstr("U+4E2D"));
  EXPECT_THAT(tests::said({all[3]}), HasSubstr(note));
  for (const std::size_t other : {1U, 2U, 4U})
    EXPECT_THAT(tests::said({all[other]}), Not(HasSubstr(note)));
  EXPECT_THAT(tests::said({all[0]}), HasSubstr(note));  // it lists the sheets that follow
}

TEST(Pages, PutTheWorstFirst) {
  const auto said = tests::said({laid_out(tests::invented_packet()).front()});
  const auto at = [&](const char* word) { return said.find(tests::levelled(word)); };
  EXPECT_LT(at("drill breaks out"), at("The outside of the bushing"));
  EXPECT_LT(at("The outside of the bushing"), at("thread engagement"));
  EXPECT_LT(at("thread engagement"), at("fit with the mate"));
  EXPECT_LT(at("fit with the mate"), at("least wall"));
}

TEST(Pages, RefuseMoreThanThreeQueries) {
  Packet packet = tests::invented_packet();
  packet.first.queries.resize(4);
  const auto all = pages(packet);
  ASSERT_FALSE(all.has_value());
  EXPECT_EQ(all.error().code, base::Code::kTooMany);
  EXPECT_THAT(base::report(all.error()), HasSubstr("4 are given"));
}

TEST(Pages, RefuseATextHigherThanAPage) {
  Packet packet = tests::invented_packet();
  std::get<route::Line>(packet.setups[1].items[1]).says = std::string(9000, 'W');
  const auto all = pages(packet);
  ASSERT_FALSE(all.has_value());
  EXPECT_EQ(all.error().code, base::Code::kTooMany);
  EXPECT_THAT(base::report(all.error()), HasSubstr("sheet 4"));
}

TEST(Pages, LetALongTextRunOverPages) {
  Packet packet = tests::invented_packet();
  std::string endless;
  for (int i = 0; i < 3000; ++i)
    endless += fmt::format("mind the slack {}, ", i);
  packet.setups[1].hold = {endless};
  const auto all = laid_out(packet);
  EXPECT_GT(all.size(), 6U);
  EXPECT_THAT(faults(all), IsEmpty());
  EXPECT_THAT(tests::said(all), HasSubstr(tests::levelled(endless)));
}

}  // namespace
}  // namespace sparewright::sheets
