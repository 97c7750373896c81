// Change gears, dividing heads and gauge blocks in a shop text.
#include <gmock/gmock.h>

#include "core/base/messages.hpp"
#include "core/job/job.hpp"

namespace sparewright::job {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
namespace unit = quantity::unit;

base::ResultOrAll<ShopText> shop_with(const std::string& more, const std::string& in_shop = {}) {
  const auto document = text::Document::parse(
      "[shop]\ntitle = \"test\"\nunits = \"in\"\n" + in_shop + "\n" + more, "test.shop.toml");
  EXPECT_TRUE(document);
  return read_shop(*document);
}

std::string refusal(const std::string& more, const std::string& in_shop = {}) {
  const auto shop = shop_with(more, in_shop);
  if (shop) return "";
  std::string all;
  for (const base::Failure& failure : shop.error())
    all += base::report(failure) + "\n";
  return all;
}

std::string lathe(const std::string& screw, const std::string& gears, const std::string& more = {}) {
  return "[[change_gears]]\nname = \"lathe\"\nlead_screw = \"" + screw + "\"\ngears = " + gears + "\n" +
         more + "\n";
}

TEST(ChangeGearText, TakesThreadsToTheInchAndLengths) {
  const auto inch = shop_with(lathe("8 tpi", "[20, 40, 40]"));
  ASSERT_TRUE(inch);
  EXPECT_DOUBLE_EQ(inch->shop.change_gears.at(0).gearing.screw_lead.in(unit::millimetre), 3.175);
  EXPECT_THAT(inch->shop.change_gears.at(0).gearing.gears, ElementsAre(20, 40, 40));
  EXPECT_FALSE(inch->shop.change_gears.at(0).gearing.banjo);
  const auto metric = shop_with(lathe("4 mm", "[20, 40]"));
  ASSERT_TRUE(metric);
  EXPECT_DOUBLE_EQ(metric->shop.change_gears.at(0).gearing.screw_lead.in(unit::millimetre), 4.0);
}

TEST(ChangeGearText, ReadsTheBanjo) {
  const auto shop = shop_with(lathe(
      "8 tpi", "[20, 40]",
      "banjo = { module = \"1.25 mm\", centres = \"150 mm\", stud_collar = \"26 mm\", slots = [{ nearest = "
      "\"35 mm\", "
      "farthest = \"130 mm\" }, { nearest = \"35 mm\", farthest = \"110 mm\", turned = \"40 deg\" }] }"));
  ASSERT_TRUE(shop);
  const auto& banjo = shop->shop.change_gears.at(0).gearing.banjo;
  ASSERT_TRUE(banjo);
  EXPECT_DOUBLE_EQ(banjo->module.in(unit::millimetre), 1.25);
  ASSERT_EQ(banjo->slots.size(), 2U);
  EXPECT_DOUBLE_EQ(banjo->slots[1].turned.in(unit::degree), 40.0);
}

TEST(ChangeGearText, RefusesWhatIsNoBoxNoScrewAndNoBanjo) {
  EXPECT_THAT(refusal(lathe("8 tpi", "[20]")), HasSubstr("gears"));
  EXPECT_THAT(refusal(lathe("8 tpi", "[20, 4000]")), HasSubstr("4000"));
  EXPECT_THAT(refusal(lathe("0 tpi", "[20, 40]")), HasSubstr("lead_screw"));
  EXPECT_THAT(refusal(lathe("coarse", "[20, 40]")), HasSubstr("test.shop.toml:7"));
  EXPECT_THAT(
      refusal(lathe("8 tpi", "[20, 40]",
                    "banjo = { module = \"1 mm\", centres = \"150 mm\", slots = [{ nearest = \"90 mm\", "
                    "farthest = \"35 mm\" }] }")),
      HasSubstr("test.shop.toml:9"));
}

TEST(DividingHeadText, ReadsWormAndPlates) {
  const auto shop =
      shop_with("[[dividing_head]]\nname = \"head\"\nworm = 40\nplates = [[15, 16], [21, 23, 27]]\n");
  ASSERT_TRUE(shop);
  const auto& head = shop->shop.indexing_heads.at(0).head;
  EXPECT_EQ(head.worm, 40);
  ASSERT_EQ(head.plates.size(), 2U);
  EXPECT_THAT(head.plates[1].circles, ElementsAre(21, 23, 27));
  EXPECT_THAT(refusal("[[dividing_head]]\nname = \"head\"\nworm = 0\nplates = [[15]]\n"), HasSubstr("worm"));
  EXPECT_THAT(refusal("[[dividing_head]]\nname = \"head\"\nworm = 40\nplates = [[1]]\n"),
              HasSubstr("test.shop.toml"));
}

TEST(GaugeBlockText, NamesASetTheHandbookKnows) {
  const auto shop = shop_with("", "gauge_blocks = \"81-piece inch\"");
  ASSERT_TRUE(shop);
  EXPECT_EQ(shop->shop.gauge_blocks, "81-piece inch");
  EXPECT_THAT(refusal("", "gauge_blocks = \"8-piece inch\""), HasSubstr("81-piece inch"));
}

}  // namespace
}  // namespace sparewright::job
