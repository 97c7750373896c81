// Burrs taken off as a step of its own, between the works of a setup or after them.
#include <algorithm>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/route/list_sheet.hpp"
#include "hand_work.hpp"
#include "part_text.hpp"

namespace sparewright {
namespace {

using ledger::State;
using testing::HasSubstr;
using testing::IsEmpty;
using tests::hand_setup;
using tests::hand_shop;
using tests::items_of;
using tests::judged;
using tests::line_with;
using tests::plate;
using tests::sheet_of;
using tests::step;

const std::string kScraper = "[[tool]]\nname = \"scraper\"\nkind = \"deburring tool\"\n";

std::string hole(const std::string& name, const std::string& x) {
  return "[[feature]]\nname = \"" + name +
         "\"\nkind = \"hole\"\nhow = \"drilled\"\ndiameter = \"5\"\nat.y = \"30\"\nat.x = \"" + x + "\"\n";
}
std::string burrs(const std::string& whose, const std::string& tools = "\"scraper\"") {
  return "[[setup.do]]\ndeburr = " + whose + "\nwith = [" + tools + "]\n";
}
std::string job(const std::string& steps) {
  return plate() + hole("one", "30") + hole("other", "70") + hand_setup(10, "drill press", "top", steps);
}
const std::string kOne = step("one", "\"drill 5\"");
const std::string kOther = step("other", "\"drill 5\"");

std::size_t place_of(const std::vector<std::string>& items, const std::string& words) {
  for (std::size_t i = 0; i < items.size(); ++i) {
    if (items[i].find(words) != std::string::npos) return i;
  }
  ADD_FAILURE() << "nothing says '" << words << "'";
  return items.size();
}

TEST(Deburring, IsALineWhereTheTextHasIt) {
  auto made = judged(job(kOne + burrs("\"one\"") + kOther + burrs("\"all edges\"", "\"file\", \"scraper\"")),
                     hand_shop(kScraper));
  const auto sheet = sheet_of(made, 10);
  const auto items = items_of(sheet);
  EXPECT_LT(place_of(items, "one, drill 5"),
            place_of(items, "one: burrs off with scraper, 0.25 off a corner"));
  EXPECT_LT(place_of(items, "one: burrs off"), place_of(items, "mark and punch other"));
  EXPECT_GT(place_of(items, "all edges: burrs off with file, scraper"), place_of(items, "other, drill 5"));
  EXPECT_THAT(line_with(sheet, "all edges").says, HasSubstr("spindle stopped"));
  EXPECT_EQ(made.worse_than_close(), 0U);
}

TEST(Deburring, HasItsToolsLaidOut) {
  auto made = judged(job(kOne + kOther + burrs("\"all edges\"")), hand_shop(kScraper));
  const auto sheet = made.ledger.value<route::ListSheet>("lay out/sheet");
  ASSERT_TRUE(sheet);
  bool there = false;
  for (const auto& section : sheet->sections)
    there = there || std::find(section.ticks.begin(), section.ticks.end(), "scraper") != section.ticks.end();
  EXPECT_TRUE(there);
}

TEST(Deburring, WantsWhatIsCutByThen) {
  const char* check = "it is cut before its burrs come off";
  auto early = judged(job(kOne + burrs("[\"one\", \"other\"]") + kOther), hand_shop(kScraper));
  EXPECT_EQ(early.state(check, "other"), State::kNo);
  for (const ledger::Verdict& v : early.ledger.verdicts())
    EXPECT_FALSE(v.check == check && v.subject == "one");
  auto late = judged(job(kOne + kOther) + hand_setup(20, "bench", "top", burrs("[\"one\", \"other\"]")),
                     hand_shop(kScraper));
  EXPECT_EQ(late.worse_than_close(), 0U);
}

TEST(Deburring, RefusesWhatCannotBe) {
  const auto troubles = [](const std::string& steps) {
    return tests::troubles_of(job(kOne + steps), hand_shop(kScraper));
  };
  EXPECT_THAT(troubles(burrs("\"onne\"")), HasSubstr("onne"));
  EXPECT_THAT(troubles(burrs("\"one\"", "\"drill 5\"")),
              HasSubstr("a file, a deburring tool or a countersink"));
  EXPECT_THAT(troubles(burrs("[\"one\", \"one\"]")), HasSubstr("each feature once"));
  EXPECT_THAT(troubles("[[setup.do]]\ndeburr = \"one\"\n"), HasSubstr("'with'"));
  EXPECT_THAT(troubles("[[setup.do]]\ndeburr = \"one\"\nmake = \"other\"\nwith = [\"file\"]\n"),
              HasSubstr("one of make, join and deburr"));
  EXPECT_THAT(troubles(burrs("\"all edges\"")), IsEmpty());
}

}  // namespace
}  // namespace sparewright
