#include "core/text/reading.hpp"

#include <string>
#include <vector>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/base/messages.hpp"
#include "text_samples.hpp"

namespace sparewright::text {
namespace {

using quantity::Kind;
using quantity::UnitSystem;
using samples::parsed;
using testing::ElementsAre;
using testing::HasSubstr;

enum class Way { kDrilled, kReamed };
constexpr std::array kWays{Meaning{"drilled", Way::kDrilled, "with a twist drill"},
                           Meaning{"reamed", Way::kReamed, "to size"}};

TEST(Reading, NumbersKeepWhatWasTyped) {
  const Document document = parsed("a = 0.7498\nb = \"0.7498\"\nc = \" 1-3/8\"\nd = 80\ne = \"34.9 mm\"\n");
  std::vector<std::string> typed;
  for (const Node node : document.root())
    typed.push_back(read_number(node, Kind::kLength, UnitSystem::kInch)->typed);
  EXPECT_THAT(typed, ElementsAre("0.7498", "0.7498", "1-3/8", "80", "34.9 mm"));
  EXPECT_EQ(read_number(*document.at("a"), Kind::kLength, UnitSystem::kInch)->places, 4);
  EXPECT_EQ(read_number(*document.at("d"), Kind::kLength, UnitSystem::kMetric)->base, 80.0);
}

std::string place_of_failure(std::string_view text) {
  const Document document = parsed(text);
  const auto number = read_number(document.root()[0], Kind::kLength, UnitSystem::kInch);
  return number ? "read" : base::to_string(number.error().place.value());
}

TEST(Reading, FailuresPointInsideTheQuotes) {
  EXPECT_EQ(place_of_failure("size = \"1.375 inn\""), "keeper.job.toml:1:15");
  EXPECT_EQ(place_of_failure("size = '1.375 inn'"), "keeper.job.toml:1:15");
  EXPECT_EQ(place_of_failure("size = \"1.375\\u0020inn\""), "keeper.job.toml:1:20");
  EXPECT_EQ(place_of_failure("\"é\" = \"1.375 \\u0069nn\""), "keeper.job.toml:1:14");
  EXPECT_EQ(place_of_failure("size = \"\"\"\n1.375 \\\n   inn\"\"\""), "keeper.job.toml:3:4");
  EXPECT_EQ(place_of_failure("size = 1_375"), "keeper.job.toml:1:9");
  EXPECT_EQ(place_of_failure("size = []"), "keeper.job.toml:1:8");
}

TEST(Reading, AFailureWithAPlaceKeepsIt) {
  base::Failure failure;
  failure.place = base::Place{"other", 7, 7};
  EXPECT_EQ(located(failure, parsed("a = 1").root()[0]).place->file, "other");
}

TEST(Reading, OtherTypesAreFailures) {
  const Document document = parsed("a = [1]\nb = 1.0\nc = \"x\"\nd = 1979-05-27\n");
  EXPECT_EQ(base::report(read_number(*document.at("a"), Kind::kDiameter, std::nullopt).error()),
            "keeper.job.toml:1:5: 'a' is a list\n    accepted: a diameter");
  EXPECT_EQ(base::report(read_whole(*document.at("b")).error()),
            "keeper.job.toml:2:5: 'b' is a decimal number\n    accepted: a whole number");
  EXPECT_EQ(read_truth(*document.at("c")).error().code, base::Code::kValueOfAnotherType);
  EXPECT_EQ(read_text(*document.at("b")).error().code, base::Code::kValueOfAnotherType);
  EXPECT_EQ(*read_typed(*document.at("b")), "1.0");
  EXPECT_EQ(read_typed(*document.at("d")).error().found, "a date or time");
}

TEST(Reading, WordsStandForValues) {
  const Document document = parsed("a = \"reamed\"\nb = \"drilld\"\n");
  EXPECT_EQ(*read_word(*document.at("a"), kWays), Way::kReamed);
  EXPECT_EQ(
      base::report(read_word(*document.at("b"), kWays).error()),
      "keeper.job.toml:2:5: 'b' cannot be 'drilld'\n    accepted: drilled, reamed (did you mean 'drilled'?)");
  EXPECT_THAT(words_of(std::get<WordOf>(word_of(kWays).sort()).words), ElementsAre("drilled", "reamed"));
}

TEST(TableReader, ReadsWhatIsThere) {
  const Document document = parsed(R"(
d = 0.5
drill = "#7"
fitted = "0.7500 -0.0002/-0.0004"
tolerance = "H7"
name = "bore"
formula = "bolt/2"
teeth = 24
blind = true
how = "reamed"
got = ["0.1", 0.2]
with = "reamer"
at = { x = 1 }
note = [ { says = "a" }, { says = "b" } ]
)");
  Problems problems;
  const TableReader in(document.root(), UnitSystem::kInch, problems);
  EXPECT_EQ(in.number("d", Kind::kDiameter)->base, 12.7);
  EXPECT_TRUE(std::holds_alternative<quantity::Designation>(*in.size("drill", Kind::kDiameter)));
  EXPECT_EQ(in.sized("fitted", Kind::kDiameter)->nominal.typed, "0.7500");
  EXPECT_TRUE(std::holds_alternative<quantity::FitClass>(in.tolerance("tolerance", Kind::kDiameter)->form));
  EXPECT_EQ(in.text("name"), "bore");
  EXPECT_EQ(in.typed("formula"), "bolt/2");
  EXPECT_EQ(in.typed("d"), "0.5");
  EXPECT_EQ(in.whole("teeth"), 24);
  EXPECT_EQ(in.truth("blind"), true);
  EXPECT_EQ(in.word("how", kWays), Way::kReamed);
  EXPECT_EQ(in.numbers("got", Kind::kLength).size(), 2U);
  EXPECT_THAT(in.texts("with"), ElementsAre("reamer"));
  EXPECT_EQ(in.table("at")->number("x", Kind::kCoordinate)->base, 25.4);
  EXPECT_EQ(in.tables("note")[1].text("says"), "b");
  EXPECT_EQ(in.table("d"), std::nullopt);
  EXPECT_TRUE(problems.empty());
}

TEST(TableReader, WhatIsNotThereIsNothingAndNoProblem) {
  const Document document = parsed("");
  Problems problems;
  const TableReader in(document.root(), std::nullopt, problems);
  EXPECT_EQ(in.number("d", Kind::kDiameter), std::nullopt);
  EXPECT_EQ(in.word("how", kWays), std::nullopt);
  EXPECT_TRUE(in.numbers("got", Kind::kLength).empty());
  EXPECT_EQ(in.table("at"), std::nullopt);
  EXPECT_TRUE(in.tables("note").empty());
  EXPECT_EQ(*problems.unless_any(5), 5);
}

TEST(TableReader, GoesOnAfterAProblemAndTellsAll) {
  const Document document =
      parsed("got = [\"1.0\", \"x\", 2, []]\nd = \"3 kg\"\nhow = \"drilled\"\nblind = 1\n");
  Problems problems;
  const TableReader in(document.root(), UnitSystem::kInch, problems);
  EXPECT_EQ(in.truth("blind"), std::nullopt);
  EXPECT_EQ(in.word("how", kWays), Way::kDrilled);
  EXPECT_EQ(in.number("d", Kind::kDiameter), std::nullopt);
  EXPECT_EQ(in.numbers("got", Kind::kLength).size(), 2U);
  const auto all = problems.unless_any(true);
  ASSERT_FALSE(all);
  std::vector<std::string> places;
  for (const base::Failure& failure : all.error())
    places.push_back(base::to_string(*failure.place));
  EXPECT_THAT(places, ElementsAre("keeper.job.toml:1:16", "keeper.job.toml:1:23", HasSubstr(":2:"),
                                  "keeper.job.toml:4:9"));
}

}  // namespace
}  // namespace sparewright::text
