// `handbook` and `quick`: what they print, as JSON and as a card, and what they say to what they cannot answer.
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "golden.hpp"
#include "program.hpp"

namespace sparewright {
namespace {

using nlohmann::json;
using testing::HasSubstr;
using testing::StartsWith;
using tests::ProgramTest;
using tests::Ran;

class Questions : public ProgramTest {};

TEST_F(Questions, AThreadReadsAsApproved) {
  const Ran ran = run("handbook thread \"3/8-16 UNC-2A\"");
  EXPECT_EQ(ran.status, 0) << ran.err;
  EXPECT_TRUE(tests::golden("cli/handbook.thread.txt", ran.out));
}

TEST_F(Questions, WordsNeedNoQuotes) {
  const Ran ran = run("handbook speed 1018 turning hss");
  EXPECT_EQ(ran.status, 0) << ran.err;
  EXPECT_THAT(ran.out, StartsWith("steel 1018, cold drawn, rough turning, high-speed steel"));
}

TEST_F(Questions, HolesAreDialledOnTheShopsOwnMachine) {
  const Ran ran =
      run("quick holes --count 4 --circle \"2 in\" --x \"1.5 in\" --y \"1.5 in\" --shop farm.shop.toml --on "
          "\"knee mill\"");
  EXPECT_EQ(ran.status, 0) << ran.err;
  EXPECT_THAT(ran.out, HasSubstr("12 turns, to 100"));  // 2.500 in at 0.200 a turn, 200 divisions
}

TEST_F(Questions, JsonHasEveryNumberWithItsSource) {
  const Ran ran = run("handbook fit \"25 mm H7/g6\" --json");
  ASSERT_EQ(ran.status, 0) << ran.err;
  const json answer = json::parse(ran.out);
  EXPECT_EQ(answer["tables"][0]["heading"], "hole");
  const json& limits = answer["tables"][0]["lines"][0];
  EXPECT_EQ(limits["numbers"], json::array({25.0, 25.021}));  // ISO 286: H7, 18 to 30 mm, +21 um
  EXPECT_EQ(limits["unit"], "mm");
  EXPECT_THAT(limits["source"].get<std::string>(), HasSubstr("ISO 286"));
}

TEST_F(Questions, ListsAndLimitsAreReadFromTheCommandLine) {
  const Ran ran =
      run("quick sum --plus \"0, 1.11 mm\" --minus \"0.95 +- 0.01 mm\" --least \"0.60 mm\" --json");
  ASSERT_EQ(ran.status, 0) << ran.err;
  const json answer = json::parse(ran.out);
  EXPECT_EQ(answer["tables"][0]["lines"][0]["numbers"], json::array({0.16}));
  EXPECT_EQ(answer["tables"][0]["lines"][1]["numbers"], json::array({0.15, 0.17}));
  EXPECT_EQ(run("quick round --front \"50.00, 50.15 mm\" --limit \"0.015 mm\" -o card.pdf").status, 0);
  EXPECT_THAT(read("card.pdf"), StartsWith("%PDF-"));
}

TEST_F(Questions, ACardIsAPdf) {
  const Ran ran = run("handbook drill \"#7\" -o card.pdf");
  EXPECT_EQ(ran.status, 0) << ran.err;
  EXPECT_THAT(read("card.pdf"), StartsWith("%PDF-"));
  EXPECT_EQ(run("handbook drill \"#7\" -o card.txt").status, 2);
}

TEST_F(Questions, WhatIsNotKnownIsToldWithTheNearest) {
  const std::vector<std::pair<const char*, const char*>> asked{
      {"handbook thread \"3/4-11 UNC\"", "3/4-10 UNC"},
      {"handbook drill \"#81\"", "#80"},
      {"handbook fit \"25 mm H7/z6\"", "accepted"},
      {"handbook fit \"900 mm H7/g6\"", "500 mm"},
      {"handbook tap \"M8x1\" --percent=-5", "up to 100"},
      {"handbook thread \"M8x1-9z\"", "accepted"},
      {"quick pitch \"1.5 mm\" --screw \"8 tpi\" --gears 20", "accepted"},
      {"quick holes --count 0 --circle \"2 in\"", "--count"},
      {"quick holes --count 6 --circle 2", "has no unit"},
      {"quick play --hole \"6.1 to 6.0 mm\" --shaft \"6 mm\"", "--hole"},
      {"quick micrometer --thimble 25", "another line of the sleeve"},
  };
  for (const auto& [arguments, says] : asked) {
    const Ran ran = run(arguments);
    EXPECT_EQ(ran.status, 2) << arguments << '\n' << ran.out;
    EXPECT_THAT(ran.err, HasSubstr(says)) << arguments;
    EXPECT_EQ(ran.out, "") << arguments;
  }
}

}  // namespace
}  // namespace sparewright
