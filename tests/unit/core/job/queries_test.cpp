// Queries: for each a job on which it is asked, one just inside, and sound ones; their words, and how they are overruled.
#include <filesystem>
#include <fstream>
#include <sstream>

#include <gmock/gmock.h>

#include "judged_job.hpp"

namespace sparewright {
namespace {

using ledger::Query;
using testing::HasSubstr;
using testing::StartsWith;
using tests::job_with;
using tests::Judged;
using tests::judged;
using tests::plain_shop;
using tests::setup_with;

std::vector<Query> queries_of(Judged& job) {
  return job::queries(job.job, job.ledger.queries());
}
std::vector<Query> queries_of(const std::string& text, const std::string& shop = plain_shop()) {
  auto job = judged(text, shop);
  return queries_of(job);
}

// The only query of a job, which is to have that name; fails the test where there is another or none.
Query only(const std::vector<Query>& all, const std::string& id) {
  if (all.size() != 1 || all.front().id != id) {
    ADD_FAILURE() << all.size() << " queries" << (all.empty() ? "" : ", the first " + all.front().id);
    return {};
  }
  const Query& query = all.front();
  std::istringstream words(query.says + " " + query.happens + " " + query.todo);
  std::size_t count = 0;
  for (std::string word; words >> word;)
    ++count;
  EXPECT_LT(count, 25U) << words.str();
  EXPECT_FALSE(query.about.empty());
  return query;
}

std::string file(const std::string& folder, const std::string& name) {
  std::ifstream in(std::filesystem::path(SPAREWRIGHT_SOURCE_DIR) / folder / name, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

std::string without(std::string text, const std::string& line) {
  const auto at = text.find(line);
  if (at == std::string::npos) {
    ADD_FAILURE() << line;
    return text;
  }
  return text.erase(at, line.size());
}

// --- an accepted size moves a size past its tolerance ---------------------------------------------------------------------

// Centres read 6.0025 by caliper: (6.6275 + 5.3775) / 2.
std::string arm(const std::string& accepted, const std::string& tolerance) {
  return job_with(
      "[[reading]]\nwhat = \"over pins\"\nof = [\"centres\", \"pin\", \"pin\"]\nwith = \"caliper\"\ngot = "
      "[\"6.5025\"]\n"
      "[original]\ncentres = \"" +
          accepted +
          "\"\n"
          "[[feature]]\nname = \"pivot bore\"\nkind = \"hole\"\nhow = \"drilled\"\nat.x = \"1.5\"\nat.y = "
          "\"1.5\"\n"
          "diameter = \"1/2\"\n"
          "[[feature]]\nname = \"stud hole\"\nkind = \"hole\"\nhow = \"drilled\"\ndiameter = \"1/2\"\nat.y = "
          "\"1.5\"\n"
          "at.x = { size = \"centres\", from = \"pivot bore\"" +
          tolerance + " }\n",
      R"({ length = "9", width = "3", thickness = "1" })");
}

TEST(Queries, AnAcceptedSizeThatMovesAHolePastItsTolerance) {
  const Query query = only(queries_of(arm("6.000", ", tol = \"±0.002\"")), "moved/stud hole x");
  EXPECT_TRUE(query.serious);
  EXPECT_THAT(query.says,
              HasSubstr("centres read 6.0025, accepted 6.0000: stud hole x moves 0.0025, 0.0020 allowed"));
  EXPECT_THAT(query.todo, HasSubstr("6.0025"));
}

TEST(Queries, AnAcceptedSizeThatStaysWithinTheTolerance) {
  EXPECT_TRUE(queries_of(arm("6.000", ", tol = \"±0.003\"")).empty());
  EXPECT_TRUE(queries_of(arm("6.0006", ", tol = \"±0.002\"")).empty());        // moved 0.0019
  EXPECT_FALSE(queries_of(arm("6.0004", ", tol = \"±0.002\"")).empty());       // moved 0.0021
  EXPECT_TRUE(queries_of(arm("6.000", ", tol = \"+0.004/-0.001\"")).empty());  // that way it may
  EXPECT_FALSE(queries_of(arm("6.000", ", tol = \"+0.001/-0.004\"")).empty());
}

TEST(Queries, PastAToleranceThatIsNotItsOwnIsNotSerious) {
  EXPECT_TRUE(queries_of(arm("6.000", "")).empty());  // ±0.005, three places
  EXPECT_FALSE(only(queries_of(arm("5.995", "")), "moved/stud hole x").serious);
}

TEST(Queries, AnAcceptedSizeWithLimitsOfItsOwn) {
  const auto with = [](const std::string& accepted) {
    return queries_of(job_with("[original]\npin = \"" + accepted + "\"\n"));  // read 0.5000
  };
  EXPECT_TRUE(with("0.5000 +0.0000/-0.0005").empty());
  EXPECT_TRUE(with("0.5004 -0.0002/-0.0006").empty());                             // 0.4998 to 0.5002
  const Query query = only(with("0.5010 -0.0004/-0.0008"), "moved/original pin");  // 0.5002 to 0.5006
  EXPECT_TRUE(query.serious);
  EXPECT_THAT(query.says, HasSubstr("0.0002 outside"));
}

TEST(Queries, WearIsNoMove) {
  const auto worn = [](const std::string& accepted) {
    return queries_of(
        job_with("[[reading]]\nwhat = \"outside\"\nof = \"stub\"\nwith = \"fine\"\ngot = [\"0.7450\"]\n"
                 "condition = \"worn\"\n[original]\nstub = \"" +
                 accepted + "\"\n"));
  };
  EXPECT_TRUE(worn("0.7500 ±0.0005").empty());                                   // it has worn 0.005
  EXPECT_EQ(only(worn("0.7400 ±0.0005"), "moved/original stub").serious, true);  // it cannot have grown
}

// --- radius for diameter -----------------------------------------------------------------------------------------------------

std::string hole_on_pin(const std::string& diameter) {
  return job_with(
      "[[feature]]\nname = \"bore\"\nkind = \"hole\"\nhow = \"bored\"\nat.x = \"2\"\nat.y = \"1.5\"\n"
      "diameter = { size = \"" +
      diameter +
      "\", tol = \"±0.0005\", mate = \"pin\", "
      "clearance = \"+0.0010 to +0.0020\", with = \"fine\" }\n");
}

TEST(Queries, AHoleHalfOfItsMateOrTwice) {
  const Query half = only(queries_of(hole_on_pin("0.2508")), "radius/bore");
  EXPECT_THAT(half.says, HasSubstr("bore is 0.2508, half of pin at 0.5000"));
  EXPECT_THAT(half.todo, HasSubstr("0.5016"));
  EXPECT_FALSE(half.serious);  // it can still be bored out
  EXPECT_TRUE(only(queries_of(hole_on_pin("1.003")), "radius/bore").serious);
  EXPECT_TRUE(queries_of(hole_on_pin("0.5015")).empty());
  EXPECT_FALSE(queries_of(hole_on_pin("0.2574")).empty());  // doubled 0.5148: 3 % of 0.5000 is 0.015
  EXPECT_TRUE(queries_of(hole_on_pin("0.2580")).empty());   // doubled 0.5160
}

std::string bushing(const std::string& diameter, const std::string& more = "") {
  return job_with(
      "[[reading]]\nwhat = \"inside\"\nof = \"old_bore\"\nwith = \"fine\"\ngot = [\"0.6300\"]\n" + more +
      "[[feature]]\nname = \"bore\"\nkind = \"hole\"\nhow = \"bored\"\nat.x = \"2\"\nat.y = \"1.5\"\n"
      "diameter = \"" +
      diameter + "\"\n");
}

TEST(Queries, AHoleHalfOfTheOldOne) {
  const Query query = only(queries_of(bushing("0.3150")), "radius/bore");
  EXPECT_THAT(query.says, HasSubstr("half of old_bore at 0.6300"));
  EXPECT_TRUE(queries_of(bushing("0.6262")).empty());
  // Where another measured size is as large, the hole may be that one.
  EXPECT_TRUE(queries_of(bushing("0.3150",
                                 "[[reading]]\nwhat = \"inside\"\nof = \"oil_hole\"\nwith = \"fine\"\n"
                                 "got = [\"0.3130\"]\n"))
                  .empty());
}

std::string turned(const std::string& bar, const std::string& diameter, const std::string& length,
                   const std::string& found = "") {
  return "[job]\ntitle = \"Shaft\"\nunits = \"in\"\nhand = \"not handed\"\n[blank]\nshape = \"round bar\"\n"
         "material = \"1018 cold drawn\"\nsize = { length = \"4\", diameter = \"" +
         bar + "\" }\n" + found +
         "[[feature]]\nname = \"seat\"\nkind = \"turned\"\nside = \"right end\"\ndiameter = \"" + diameter +
         "\"\nlength = \"" + length + "\"\n";
}

TEST(Queries, APartTurnedToHalfItsBar) {
  const Query query = only(queries_of(turned("1-1/8", "0.5000", "4")), "radius/seat");
  EXPECT_TRUE(query.serious);
  EXPECT_THAT(query.todo, HasSubstr("1.0000"));
  EXPECT_TRUE(queries_of(turned("1-1/8", "0.5000", "3")).empty());  // a flange is left
  EXPECT_TRUE(queries_of(turned("1-1/8", "0.4700", "4")).empty());  // 0.94 is less than 0.85 of 1.125, 0.956
  EXPECT_FALSE(queries_of(turned("1-1/8", "0.4800", "4")).empty());
  EXPECT_TRUE(queries_of(turned("1-1/8", "0.9990", "4")).empty());
}

// --- mirror image ------------------------------------------------------------------------------------------------------------

// 4.250 x cos 28 = 3.7525, 4.250 x sin 28 = 1.9953; in the mirror 2 x 1.9953 = 3.9905 away.
TEST(Queries, ALeverDrawnFromAPhotographOfOneSide) {
  const std::string text = file("tests/jobs", "keyed_lever.job.toml");
  const std::string shop = file("tests/jobs", "forms.shop.toml");
  auto job = judged(text, shop);
  const Query query = only(queries_of(job), "mirror/part");
  EXPECT_TRUE(query.serious);
  EXPECT_EQ(query.says, "Which end was seen? pin hole is X +3.753, Y +1.995 from bore");
  EXPECT_EQ(query.happens, "Mirrored it lies 3.991 away; boss bars turning over.");
  EXPECT_EQ(job.worse_than_close(), 0U);  // no check sees it

  const std::string drawn = "drawn_from = \"a photograph of the back\"\n";
  EXPECT_TRUE(queries_of(without(text, drawn), shop).empty());
  std::string in_hand = without(text, drawn);
  in_hand.replace(in_hand.find("as drawn"), 8, "sketched from a photo of the back");
  EXPECT_EQ(only(queries_of(in_hand, shop), "mirror/part").says, query.says);
  std::string said = text;
  said.insert(said.find("turn_over"), "side_seen = \"underside\"\n");
  EXPECT_TRUE(queries_of(said, shop).empty());
}

TEST(Queries, AFlatLeverHasNoMirrorImage) {
  std::string text = file("tests/jobs", "keyed_lever.job.toml");
  const auto boss = text.find("# 3/8 proud");
  text.erase(boss, text.find("[[feature]]\nname     = \"bore\"") - boss);
  EXPECT_TRUE(queries_of(text, file("tests/jobs", "forms.shop.toml")).empty());
}

// --- larger than before the cut ----------------------------------------------------------------------------------------------

TEST(Queries, ASeatLargerThanItsBar) {
  // Read 0.9985, and the seat at least 1.0001.
  const std::string found = "found = { length = \"4\", diameter = \"0.9985\" }\nfound_with = \"fine\"\n";
  const Query query = only(queries_of(turned("1", "1.0003 ±0.0002", "1", found)), "larger/seat");
  EXPECT_TRUE(query.serious);
  EXPECT_THAT(query.says, HasSubstr("seat is to be 1.0003, and the bar is 0.9985"));
  EXPECT_TRUE(queries_of(turned("1", "0.9980 ±0.0002", "1", found)).empty());
  // Drawn bar of 1 in is 1.000 at most (ASTM A108, low carbon): the seat's least size counts.
  EXPECT_TRUE(queries_of(turned("1", "1.0020 ±0.0025", "1")).empty());   // 0.9995
  EXPECT_FALSE(queries_of(turned("1", "1.0030 ±0.0025", "1")).empty());  // 1.0005
}

TEST(Queries, WhatWasTurnedAwayDoesNotComeBack) {
  const std::string step = turned("1", "0.750", "2");
  const auto journal = [&](const std::string& diameter, const std::string& length) {
    return queries_of(
        step + "[[feature]]\nname = \"journal\"\nkind = \"turned\"\nside = \"right end\"\ndiameter = \"" +
        diameter + "\"\nlength = \"" + length + "\"\n");
  };
  EXPECT_THAT(only(journal("0.875", "1"), "larger/journal").says,
              HasSubstr("journal is to be 0.8750, where seat has turned 0.7500"));
  EXPECT_TRUE(journal("0.625", "1").empty());
  EXPECT_TRUE(journal("0.875", "3").empty());  // beyond the step there is metal
}

TEST(Queries, AFlatThatLeavesMoreThanThereIs) {
  const auto flat = [](const std::string& leaves) {
    return queries_of(
        job_with("[[feature]]\nname = \"face\"\nkind = \"flat\"\nleaves = \"" + leaves + "\"\n"));
  };
  EXPECT_THAT(only(flat("1.020 ±0.005"), "larger/face").says, HasSubstr("and the stock is 1.0000"));
  EXPECT_TRUE(flat("1.004 ±0.005").empty());  // 0.999 will do
  EXPECT_TRUE(flat("0.900").empty());
}

std::string bored(const std::string& diameter) {
  return job_with(
      "[[feature]]\nname = \"bore\"\nkind = \"hole\"\nhow = \"bored\"\nat.x = \"2\"\nat.y = \"1.5\"\n"
      "diameter = { size = \"" +
      diameter + "\", tol = \"±0.001\", duty = \"fits\", with = \"fine\" }\n" +
      setup_with("[[setup.do]]\nmake = \"bore\"\nwith = [\"spot\", \"drill 1/2\", \"boring head\"]\n"));
}

TEST(Queries, ABoreSmallerThanItsDrill) {
  const Query query = only(queries_of(bored("0.4900")), "larger/bore");
  EXPECT_TRUE(query.serious);
  EXPECT_THAT(query.says, HasSubstr("bore is to be 0.4900, and drill 1/2 makes 0.5000"));
  EXPECT_TRUE(queries_of(bored("0.5200")).empty());
  EXPECT_TRUE(queries_of(bored("0.4995")).empty());   // at most 0.5005
  EXPECT_FALSE(queries_of(bored("0.4985")).empty());  // at most 0.4995
}

TEST(Queries, ABoreSmallerThanTheTubesOrItsCore) {
  const auto tube = [](const std::string& diameter) {
    return queries_of(
        "[job]\ntitle = \"Sleeve\"\nunits = \"in\"\nhand = \"not handed\"\n[blank]\nshape = \"tube\"\n"
        "material = \"1018 cold drawn\"\nsize = { length = \"4\", diameter = \"2\", bore = \"1.250\" }\n"
        "[[feature]]\nname = \"bore\"\nkind = \"hole\"\nhow = \"bored\"\ninto = \"right end\"\n"
        "at.y = \"1\"\nat.z = \"1\"\ndiameter = \"" +
        diameter + "\"\n");
  };
  EXPECT_THAT(only(tube("1.2400 ±0.002"), "larger/bore").says, HasSubstr("the tube's bore is 1.2500"));
  EXPECT_TRUE(tube("1.2600 ±0.002").empty());
  std::string pump = file("tests/jobs", "pump_body.job.toml");
  EXPECT_TRUE(queries_of(pump, file("tests/jobs", "forms.shop.toml")).empty());
  pump.replace(pump.find("48 H8"), 5, "38 H8");  // cored 40
  EXPECT_THAT(only(queries_of(pump, file("tests/jobs", "forms.shop.toml")), "larger/barrel").says,
              HasSubstr("its core is 40.000"));
}

// --- sound jobs, and overruling ------------------------------------------------------------------------------------------------

TEST(Queries, NoneOnSoundJobs) {
  EXPECT_TRUE(queries_of(file("examples", "bracket.job.toml"), file("examples", "farm.shop.toml")).empty());
  for (const char* name : {"crank_pin", "drive_shaft", "pump_body", "pump_cover", "shift_lever"}) {
    const auto all = queries_of(file("tests/jobs", std::string(name) + ".job.toml"),
                                file("tests/jobs", "forms.shop.toml"));
    EXPECT_TRUE(all.empty()) << name << ": " << all.front().says;
  }
}

TEST(Queries, AnOverruledOneHasItsReasonAndIsClosed) {
  const std::string overrule =
      "[[overrule]]\nquery = \"moved/stud hole x\"\nbecause = \"the maker's list says 6 inches\"\n";
  const auto all = queries_of(arm("6.000", ", tol = \"±0.002\"") + overrule);
  const Query query = only(all, "moved/stud hole x");
  EXPECT_EQ(query.state, ledger::QueryState::kOverruled);
  EXPECT_EQ(query.reason, "the maker's list says 6 inches");
}

TEST(Queries, AnOverrulingThatMeetsNothingIsAskedAbout) {
  const auto all = queries_of(job_with("[[overrule]]\nquery = \"moved/no such\"\nbecause = \"so\"\n"));
  ASSERT_EQ(all.size(), 1U);
  EXPECT_THAT(all.front().says, HasSubstr("'moved/no such' is overruled"));
  EXPECT_FALSE(all.front().serious);
}

TEST(Queries, OverrulingWantsAReason) {
  EXPECT_THAT(tests::troubles_of(job_with("[[overrule]]\nquery = \"moved/x\"\nbecause = \" \"\n")),
              HasSubstr("in words"));
  EXPECT_THAT(tests::troubles_of(job_with("[[overrule]]\nquery = \"moved/x\"\n")), HasSubstr("because"));
  const std::string one = "[[overrule]]\nquery = \"moved/x\"\nbecause = \"so\"\n";
  EXPECT_THAT(tests::troubles_of(job_with(one + one)), HasSubstr("there twice"));
}

}  // namespace
}  // namespace sparewright
