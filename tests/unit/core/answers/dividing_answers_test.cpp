// Dividing heads, change gears and old gears.
#include <algorithm>

#include <gtest/gtest.h>

#include "bench_questions.hpp"

namespace sparewright::answers {
namespace {

using tests::handbook;
using tests::refusal;
using tests::row;

TEST(HandbookIndex, WholeTurnsNeedNoPlate) {
  const auto answer = handbook("index", "10");
  ASSERT_TRUE(answer);
  EXPECT_EQ(answer->says, "4 turns, any circle");
}

// 40/36 = 1-1/9: 3 holes on 27, of the circles that do the one with most holes.
TEST(HandbookIndex, PlainWhereACircleDoes) {
  const auto answer = handbook("index", "36");
  ASSERT_TRUE(answer);
  EXPECT_EQ(answer->says, "1 turn and 3 holes on 27, plate 2");
  ASSERT_EQ(answer->tables.size(), 1U);
  for (const Row& one : answer->tables.front().rows)
    EXPECT_EQ(one.note, "exact");
}

TEST(HandbookIndex, DifferentialWhereNoCircleDoes) {
  const auto answer = handbook("index", "57");
  ASSERT_TRUE(answer);
  EXPECT_TRUE(answer->says.starts_with("differential: ")) << answer->says;
  EXPECT_NE(answer->tables.front().rows.front().note.find("exact; the plate turns"), std::string::npos);
  EXPECT_EQ(answer->tables.back().heading, "plain");
  EXPECT_NE(answer->tables.back().rows.front().note.find("off by"), std::string::npos);
}

// 22.5 degrees is 1/16 of a turn: 2-1/2 turns on 40:1.
TEST(HandbookIndex, TakesAnAngle) {
  const auto answer = handbook("index", "22.5 deg");
  ASSERT_TRUE(answer);
  EXPECT_TRUE(answer->says.starts_with("2 turns and ")) << answer->says;
}

TEST(HandbookIndex, AnAngleNoCircleGivesHasANearestSetting) {
  const auto answer = handbook("index", "17.123 deg");
  ASSERT_TRUE(answer);
  EXPECT_FALSE(answer->says.empty());
  EXPECT_FALSE(answer->tables.empty());
}

TEST(HandbookIndex, TakesTheWormAndThePlatesGiven) {
  const auto answer = handbook("index", "36", {{"worm", "90"}});
  ASSERT_TRUE(answer);
  EXPECT_TRUE(answer->says.starts_with("2 turns and ")) << answer->says;
  EXPECT_NE(refusal(handbook("index", "36", {{"worm", "0"}})).find("--worm"), std::string::npos);
  EXPECT_NE(refusal(handbook("index", "36", {{"plates", "two sided"}})).find("two-sided"), std::string::npos);
  EXPECT_FALSE(refusal(handbook("index", "1")).empty());
  EXPECT_FALSE(refusal(handbook("index", "many")).empty());
}

// 1.25 mm on 8 tpi: 1.25/3.175 = 50/127.
TEST(HandbookGears, FindsTheExactTrain) {
  const auto metric =
      handbook("gears", "1.25 mm", {{"screw", "8 tpi"}, {"gears", "20,24,30,40,50,60,80,127"}});
  ASSERT_TRUE(metric);
  EXPECT_EQ(metric->says, "50 : 127, exact");
  const auto inch = handbook("gears", "11 tpi", {{"screw", "8 tpi"}, {"gears", "40 55"}, {"most", "2"}});
  ASSERT_TRUE(inch);
  EXPECT_EQ(inch->says, "40 : 55, exact");
  EXPECT_NE(inch->tables.front().rows.front().note.find("11 threads per inch"), std::string::npos);
}

// 20/63 of 3.175 mm is 1.007937 mm: 0.7937 % too long.
TEST(HandbookGears, SaysHowFarOffTheNearestIs) {
  const auto answer = handbook("gears", "1 mm", {{"screw", "8 tpi"}, {"gears", "20,63"}, {"most", "2"}});
  ASSERT_TRUE(answer);
  EXPECT_EQ(answer->says, "20 : 63, long by 0.00781 in (0.1984 mm) in 25 mm");
  EXPECT_NEAR(row(*answer, "20 : 63").numbers.at(0), 1.00794, 0.00001);
}

TEST(HandbookGears, NamesTheEntryThatIsWrong) {
  const std::map<std::string, std::string> good{{"screw", "8 tpi"}, {"gears", "20,63"}};
  const auto with = [&](const char* name, const char* value) {
    auto entries = good;
    entries[name] = value;
    return refusal(handbook("gears", "1 mm", entries));
  };
  EXPECT_NE(with("screw", "8").find("--screw"), std::string::npos);
  EXPECT_NE(with("screw", "8").find("8 tpi"), std::string::npos) << with("screw", "8");
  EXPECT_NE(with("screw", "0 tpi").find("--screw"), std::string::npos);
  EXPECT_NE(with("gears", "20,x").find("--gears"), std::string::npos);
  EXPECT_FALSE(with("gears", "20").empty());
  EXPECT_FALSE(with("gears", "").empty());
  EXPECT_NE(with("most", "3").find("2, 4 or 6"), std::string::npos);
  EXPECT_FALSE(refusal(handbook("gears", "fast", good)).empty());
  EXPECT_FALSE(refusal(handbook("gears", "x tpi", good)).empty());
  EXPECT_NE(refusal(handbook("gears", "1 mm")).find("--screw"), std::string::npos);
}

// 20:40 and so on: 16 threads on a screw of 8 want 1 to 2.
TEST(HandbookGears, TakeTheBoxAndTheBanjoOfALatheInTheShop) {
  shop::Shop shop;
  shop.change_gears.push_back(
      {"lathe", {quantity::Length::of(3.175, quantity::unit::millimetre), {20, 30, 40, 60}, {}}});
  const auto answer = handbook("gears", "16 tpi", {{"on", "lathe"}}, &shop);
  ASSERT_TRUE(answer);
  EXPECT_NE(answer->says.find("exact"), std::string::npos) << answer->says;
  EXPECT_NE(refusal(handbook("gears", "1 mm", {{"on", "lath"}}, &shop)).find("lathe"), std::string::npos);
  EXPECT_NE(refusal(handbook("gears", "1 mm", {{"on", "lathe"}})).find("--shop"), std::string::npos);
}

TEST(HandbookGears, SayWhereEachStudStandsOnTheBanjo) {
  using quantity::Length;
  namespace unit = quantity::unit;
  handbook::Banjo banjo;
  banjo.module = Length::of(1.25, unit::millimetre);
  banjo.centres = Length::of(150.0, unit::millimetre);
  banjo.slots = {{Length::of(30.0, unit::millimetre), Length::of(140.0, unit::millimetre), {}}};
  banjo.fixed_collar = banjo.screw_collar = banjo.stud_collar =
      quantity::Diameter::of(20.0, unit::millimetre);
  shop::Shop shop;
  shop.change_gears.push_back(
      {"lathe", {Length::of(3.175, unit::millimetre), {20, 30, 40, 50, 60, 80}, banjo}});
  const auto answer = handbook("gears", "16 tpi", {{"on", "lathe"}}, &shop);
  ASSERT_TRUE(answer) << answer.error().accepted;
  const bool tells = std::any_of(answer->tables.begin(), answer->tables.end(), [](const Table& table) {
    return table.heading.find("banjo") != std::string::npos && table.rows.back().what == "narrowest gap";
  });
  EXPECT_TRUE(tells);
}

TEST(HandbookIndex, TakesTheHeadOfTheShop) {
  shop::Shop shop;
  shop.indexing_heads.push_back({"head", {60, {{"plate 1", {49}}}}});
  const auto answer = handbook("index", "7", {{"on", "head"}}, &shop);
  ASSERT_TRUE(answer);
  EXPECT_EQ(answer->says, "8 turns and 28 holes on 49, plate 1");  // 60/7 = 8 + 4/7, 4/7 = 28/49
}

// (32 + 2)/4.250 in = 8 DP.
TEST(HandbookGear, FindsThePitchOfAnOldGear) {
  const auto answer = handbook("gear", "", {{"teeth", "32"}, {"outside", "4.248 in"}});
  ASSERT_TRUE(answer);
  EXPECT_TRUE(answer->says.starts_with("8 DP")) << answer->says;
  EXPECT_NEAR(row(*answer, "blank").numbers.at(0), 4.25, 0.00011);
  EXPECT_GT(answer->cautions.size(), 1U);  // the outside does not tell pressure angles apart
}

// Module 2, 20 degrees: base pitch 2 pi cos 20 = 5.904 mm.
TEST(HandbookGear, TwoSpansTellThePressureAngle) {
  const auto answer = handbook(
      "gear", "", {{"teeth", "30"}, {"outside", "64 mm"}, {"span", "21.505 mm"}, {"span-more", "27.409 mm"}});
  ASSERT_TRUE(answer);
  EXPECT_TRUE(answer->says.starts_with("module 2, 20 deg")) << answer->says;
  EXPECT_NEAR(row(*answer, "nearest standard").numbers.at(0), 20.0, 0.01);
}

TEST(HandbookGear, WantsTeethAndASize) {
  EXPECT_NE(refusal(handbook("gear", "")).find("--teeth"), std::string::npos);
  EXPECT_NE(refusal(handbook("gear", "", {{"teeth", "3"}, {"outside", "4 in"}})).find("--teeth"),
            std::string::npos);
  EXPECT_FALSE(refusal(handbook("gear", "", {{"teeth", "32"}})).empty());
  EXPECT_NE(refusal(handbook("gear", "", {{"teeth", "32"}, {"outside", "4"}})).find("--outside"),
            std::string::npos);
  EXPECT_FALSE(refusal(handbook("gear", "", {{"teeth", "32"}, {"outside", "0.001 in"}})).empty());
}

}  // namespace
}  // namespace sparewright::answers
