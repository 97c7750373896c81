#include "sheets/printable.hpp"

#include <gtest/gtest.h>

#include "invented_packet.hpp"

namespace sparewright::sheets {
namespace {

class PrintableText : public testing::Test {
 protected:
  std::string print(std::string_view text) {
    replaced_ = false;
    return printable(text, *press_, replaced_);
  }

  std::unique_ptr<Press> press_ = std::move(*Press::open());
  bool replaced_ = false;
};

TEST_F(PrintableText, KeepsWhatThePressHas) {
  for (const char* text :
       {"", "bore 0.875", "Größe, čárka, Ångström, Łódź", "Ø 12 ± 0.1 µm", "Вал", "\u2603"}) {
    EXPECT_EQ(print(text), text);
    EXPECT_FALSE(replaced_) << text;
  }
}

TEST_F(PrintableText, PrintsTheNumberOfALetterItHasNot) {
  EXPECT_EQ(print("a\u4e2db"), "aU+4E2Db");
  EXPECT_TRUE(replaced_);
  EXPECT_EQ(print("\U0001F6E0"), "U+1F6E0");
  EXPECT_EQ(print("\u202Eabc"), "U+202Eabc");  // turns the reading direction round
  EXPECT_EQ(print("a\u200Bb"), "aU+200Bb");    // has no width
  EXPECT_EQ(print("bell\a"), "bellU+0007");
}

TEST_F(PrintableText, PrintsTheNumberOfAByteThatIsNoLetter) {
  EXPECT_EQ(print("a\xFFz"), "a0xFFz");
  EXPECT_TRUE(replaced_);
  EXPECT_EQ(print("\xC3"), "0xC3");                          // cut off
  EXPECT_EQ(print("\xC0\xAF"), "0xC00xAF");                  // overlong
  EXPECT_EQ(print("\xED\xA0\x80"), "0xED0xA00x80");          // a surrogate
  EXPECT_EQ(print("\xF4\x90\x80\x80"), "0xF40x900x800x80");  // beyond the last letter
}

TEST_F(PrintableText, SetsLineEndsAndTabsAsSpaces) {
  EXPECT_EQ(print("a\nb\tc\r\nd"), "a b c  d");
  EXPECT_FALSE(replaced_);
}

TEST_F(PrintableText, WordsProductTextAndLeavesNamesAlone) {
  Packet packet = tests::invented_packet();
  packet.title = "the [vise] 3/8";
  packet.first.checks[0].subject = "[vise] 3/8";
  packet.setups[0].name = "in the [vise] 3/8";
  std::get<route::PlanView>(packet.setups[0].view).holes[0].name = "hole [vise] 3/8";
  packet.setups[0].hold = {"6 in [vise], 3/8 showing"};
  const Packet british = printable(packet, base::Dialect::kBritish, *press_).packet;
  EXPECT_EQ(british.title, packet.title);
  EXPECT_EQ(british.first.checks[0].subject, packet.first.checks[0].subject);
  EXPECT_EQ(british.setups[0].name, packet.setups[0].name);
  EXPECT_EQ(std::get<route::PlanView>(british.setups[0].view).holes[0].name,
            std::get<route::PlanView>(packet.setups[0].view).holes[0].name);
  EXPECT_EQ(british.setups[0].hold[0], "6 in vice, 3\u20448 showing");
  EXPECT_EQ(printable(packet, base::Dialect::kAmerican, *press_).packet.setups[0].hold[0],
            "6 in vise, 3\u20448 showing");
}

TEST_F(PrintableText, SaysOnWhichSheetALetterWasReplaced) {
  Packet packet = tests::invented_packet();
  packet.setups[1].if_wrong.emplace_back("\u4e2d");
  PrintablePacket printed = printable(packet, base::Dialect::kAmerican, *press_);
  EXPECT_FALSE(printed.head_replaced);
  EXPECT_FALSE(printed.first_replaced);
  EXPECT_EQ(printed.setups_replaced, (std::vector<bool>{false, true}));
  packet.title = "\u4e2d";
  packet.first.mates[0].how = "\u4e2d";
  printed = printable(packet, base::Dialect::kAmerican, *press_);
  EXPECT_TRUE(printed.head_replaced);
  EXPECT_TRUE(printed.first_replaced);
}

}  // namespace
}  // namespace sparewright::sheets
