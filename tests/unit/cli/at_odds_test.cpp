// What is said of sizes that hang on readings at odds, in question or touched; all of it invented.
#include <cstdlib>

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "program.hpp"

namespace sparewright {
namespace {

using nlohmann::json;
using testing::AllOf;
using testing::HasSubstr;
using testing::Not;
using tests::ProgramTest;
using tests::Ran;

const json& named(const json& rows, const std::string& name) {
  for (const json& row : rows) {
    if (row["name"] == name) return row;
  }
  throw std::runtime_error("no row " + name);
}

// The part of a text from the line that begins with the name to the next line that is not indented.
std::string block_of(const std::string& text, const std::string& name) {
  std::size_t begin = text.starts_with(name + " ") ? 0 : text.find("\n" + name + " ");
  if (begin == std::string::npos) return "";
  if (begin != 0) ++begin;
  std::size_t end = text.find('\n', begin);
  while (end != std::string::npos && end + 1 < text.size() && text[end + 1] == ' ')
    end = text.find('\n', end + 1);
  return text.substr(begin, end - begin);
}

constexpr const char* kShop = R"([shop]
title = "Mill repair"
units = "in"

[[instrument]]
name    = "micrometer 0-1"
kind    = "outside micrometer"
reads   = "0.001"
good_to = "0.0002"
zero    = "0"
to      = "1"

[[instrument]]
name    = "caliper 6"
kind    = "dial caliper"
reads   = "0.001"
good_to = "0.001"
zero    = "0"
to      = "6"

[[instrument]]
name    = "caliper 8"
kind    = "vernier caliper"
reads   = "0.001"
good_to = "0.001"
zero    = "0"
to      = "8"

[[instrument]]
name    = "collars"
kind    = "collar of the mill"
reads   = "0.001"
good_to = "0.001"
turn    = "0.100"
zero    = "0"

[[tool]]
name     = "edge finder 0.200"
kind     = "edge finder"
diameter = "0.200"
)";

class AtOdds : public ProgramTest {
 protected:
  void SetUp() override {
    ProgramTest::SetUp();
    write("mill.shop.toml", kShop);
  }
  static std::string reading(const std::string& name, const std::string& of, const std::string& with,
                             const std::string& got) {
    return "[[reading]]\nname = \"" + name + "\"\nwhat = \"thickness\"\nof = \"" + of + "\"\nwith = \"" +
           with + "\"\ngot = [" + got + "]\n";
  }
  static std::string bore(const std::string& touches) {
    return "[[touched]]\nname = \"bore\"\nform = \"circle\"\nwith = \"collars\"\ntip = \"edge finder "
           "0.200\"\n"
           "side = \"inside\"\ntouches = [" +
           touches + "]\nx = \"bore_x\"\ndiameter = \"bore_dia\"\n";
  }
  void job(const std::string& readings) {
    write("old.job.toml",
          "[job]\ntitle = \"Roller stand\"\nunits = \"in\"\nshop = \"mill.shop.toml\"\n" + readings);
  }
  // A lug of 0.500 read a thimble turn too thick by micrometer; the caliper reads it right, twice.
  void lug_at_odds() {
    job(reading("lug by micrometer", "lug", "micrometer 0-1", "\"0.525\", \"0.525\"") +
        reading("lug by caliper", "lug", "caliper 6", "\"0.500\"") +
        reading("lug once more", "lug", "caliper 6", "\"0.500\"") +
        reading("cap", "cap", "caliper 8", "\"1.250\""));
  }
  std::string sheet() {
    const Ran ran = run("measure old.job.toml -o old.pdf");
    sheet_status_ = ran.status;
    EXPECT_EQ(std::system(("cd '" + at(".").string() + "' && pdftotext -raw old.pdf old.txt").c_str()), 0)
        << ran.err;
    std::string text = read("old.txt");
    for (char& c : text)
      c = c == '\n' ? ' ' : c;
    return text;
  }
  int sheet_status_ = -1;
};

constexpr const char* kWithout = "as it comes out without lug by micrometer: 0.5000 in";

TEST_F(AtOdds, ADisputedSizeIsNotCalledChecked) {
  lug_at_odds();
  const Ran ran = run("measure old.job.toml");
  EXPECT_EQ(ran.status, 1);
  const std::string lug = block_of(ran.out, "lug");
  EXPECT_THAT(lug, AllOf(HasSubstr("it hangs on readings at odds"), HasSubstr("DISPUTED"),
                         HasSubstr(kWithout), Not(HasSubstr("checked by another"))));
  EXPECT_THAT(block_of(ran.out, "cap"), Not(HasSubstr("DISPUTED")));
  const json printed = json::parse(run("measure old.job.toml --json").out);
  const json& row = named(printed["sizes"], "lug");
  EXPECT_TRUE(row["disputed"].get<bool>());
  EXPECT_FALSE(row["checked"].get<bool>());
  EXPECT_NEAR(row["without"][0]["value"].get<double>(), 0.5, 1e-9);
  EXPECT_FALSE(named(printed["sizes"], "cap")["disputed"].get<bool>());
  // Read right all agree, and it is checked.
  change("old.job.toml", "old.job.toml", "\"0.525\", \"0.525\"", "\"0.500\", \"0.500\"");
  const Ran right = run("measure old.job.toml");
  EXPECT_EQ(right.status, 0) << right.out;
  EXPECT_THAT(block_of(right.out, "lug"),
              AllOf(HasSubstr("; checked by another reading"), Not(HasSubstr("DISPUTED"))));
}

TEST_F(AtOdds, TheSheetHasWhatItComesToWithout) {
  lug_at_odds();
  EXPECT_THAT(sheet(),
              AllOf(HasSubstr("DISPUTED"), HasSubstr(kWithout), HasSubstr("it hangs on readings at odds")));
  EXPECT_EQ(sheet_status_, 1);
}

TEST_F(AtOdds, OriginalSizesOfADisputedOneSaySo) {
  lug_at_odds();
  const Ran ran = run("sizes old.job.toml");
  EXPECT_EQ(ran.status, 1);
  EXPECT_THAT(block_of(ran.out, "lug"),
              AllOf(HasSubstr("DISPUTED"), HasSubstr(std::string(kWithout) + "\n     1/2 in "),
                    HasSubstr("proposed of the disputed size:"),
                    HasSubstr("NOT KNOWN; the readings at odds, cleared up, would decide")));
  EXPECT_THAT(block_of(ran.out, "cap"), Not(HasSubstr("DISPUTED")));
  EXPECT_THAT(ran.out, HasSubstr("serious: misread? 'lug by micrometer'"));
  const json printed = json::parse(run("sizes old.job.toml --json").out);
  const json& lug = named(printed["sizes"], "lug");
  EXPECT_TRUE(lug["disputed"].get<bool>());
  EXPECT_FALSE(lug["settled"].get<bool>());
  EXPECT_EQ(lug["without"][0]["made_to"]["name"], "1/2 in");
  EXPECT_EQ(named(printed["sizes"], "cap")["without"].size(), 0U);
  EXPECT_EQ(printed["queries"].size(), 1U);
  // The size proposed without it has a trail.
  EXPECT_THAT(run("why old.job.toml \"original/lug/without/lug by micrometer/proposed 1\"").out,
              HasSubstr("= 0.5000 in"));
}

// Nothing but one of two fixes it: each without the other.
TEST_F(AtOdds, WhereTheyCannotTellWhichItIsGivenWithoutEach) {
  job(reading("lug one way", "lug", "caliper 6", "\"0.525\"") +
      reading("lug the other", "lug", "caliper 6", "\"0.500\""));
  const std::string lug = block_of(run("sizes old.job.toml").out, "lug");
  EXPECT_THAT(lug, AllOf(HasSubstr("without lug one way: 0.5000 in\n     1/2 in"),
                         HasSubstr("without lug the other: 0.5250 in")));
}

TEST_F(AtOdds, RepeatsATurnApartPutTheSizeInQuestion) {
  job(reading("lug", "lug", "micrometer 0-1", "\"0.5000\", \"0.5255\"") +
      reading("lug by caliper", "lug", "caliper 6", "\"0.500\"") +
      reading("cap", "cap", "caliper 8", "\"1.250\""));
  const Ran ran = run("measure old.job.toml");
  EXPECT_EQ(ran.status, 1);
  EXPECT_THAT(ran.out,
              HasSubstr("0.0255 in apart; agrees to 0.0005 in with one turn of the thimble (0.025 in)"));
  EXPECT_THAT(block_of(ran.out, "lug"), AllOf(HasSubstr("it hangs on a reading in question"),
                                              HasSubstr("IN QUESTION: see the query 'repeats apart/lug'"),
                                              Not(HasSubstr("checked by another"))));
  EXPECT_THAT(block_of(ran.out, "cap"), Not(HasSubstr("IN QUESTION")));
  const Ran sizes = run("sizes old.job.toml");
  EXPECT_THAT(block_of(sizes.out, "lug"), AllOf(HasSubstr("IN QUESTION: see the query 'repeats apart/lug'"),
                                                HasSubstr("would decide"), Not(HasSubstr("DISPUTED"))));
  EXPECT_THAT(sizes.out, HasSubstr("its name: repeats apart/lug"));
}

constexpr const char* kFive =
    R"(["2.500", "1.000"], ["2.300", "1.400"], ["2.000", "1.500"], ["1.500", "1.000"], ["2.000", "0.500"])";

TEST_F(AtOdds, TouchesAreListedAmongTheReadings) {
  job(bore(kFive));
  const Ran ran = run("measure old.job.toml");
  EXPECT_EQ(ran.status, 0) << ran.out;
  const std::string listed = ran.out.substr(ran.out.find("\nREADINGS\n"));
  EXPECT_THAT(
      block_of(listed, "bore"),
      AllOf(HasSubstr("circle of 5 touches inside, collars, edge finder 0.200; gives bore_x (x), bore_dia "
                      "(diameter)"),
            HasSubstr("form error 0.0000 in; furthest off 0.0000 in")));
  const json printed = json::parse(run("measure old.job.toml --json").out);
  const json& row = named(printed["touched"], "bore");
  EXPECT_EQ(row["touches"].size(), 5U);
  EXPECT_EQ(row["touches"][1][1], "1.400");
  EXPECT_EQ(row["gives"][1]["what"], "diameter");
  EXPECT_EQ(row["gives"][1]["dimension"], "bore_dia");
  EXPECT_NEAR(row["form_error"].get<double>(), 0.0, 1e-9);
  EXPECT_THAT(sheet(),
              HasSubstr("bore: circle of 5 touches inside, collars, edge finder 0.200; gives bore_x (x), "
                        "bore_dia (diameter); form error 0.0000 in"));
  // Three touches check nothing.
  job(bore(R"(["2.500", "1.000"], ["2.000", "1.500"], ["1.500", "1.000"])"));
  EXPECT_THAT(run("measure old.job.toml").out, HasSubstr("form error NOT KNOWN: no touch to spare"));
  EXPECT_TRUE(
      named(json::parse(run("measure old.job.toml --json").out)["touched"], "bore")["form_error"].is_null());
}

TEST_F(AtOdds, ATouchATurnOutIsSerious) {
  std::string out = kFive;
  out.replace(out.find("1.400"), 5, "1.500");
  job(bore(out) + reading("cap", "cap", "caliper 8", "\"1.250\""));
  const Ran ran = run("measure old.job.toml");
  EXPECT_EQ(ran.status, 1);
  EXPECT_THAT(ran.out,
              HasSubstr("with y of touch 2 at 1.4000 in, one turn of the collar (0.1 in) less; the diameter "
                        "then 1.2000 in"));
  EXPECT_THAT(block_of(ran.out, "bore_dia"), HasSubstr("IN QUESTION: see the query 'misread touch/bore'"));
  EXPECT_THAT(block_of(ran.out, "cap"), Not(HasSubstr("IN QUESTION")));
  EXPECT_THAT(block_of(run("sizes old.job.toml").out, "bore_dia"), HasSubstr("IN QUESTION"));
  EXPECT_THAT(sheet(), HasSubstr("IN QUESTION: see the query 'misread touch/bore'"));
  EXPECT_EQ(sheet_status_, 1);
}

TEST_F(AtOdds, TouchesAloneAreListedToo) {
  std::string touches = bore(kFive);
  touches.erase(touches.find("x = \"bore_x\""));
  job(touches);
  const Ran ran = run("measure old.job.toml");
  EXPECT_THAT(ran.out, AllOf(HasSubstr("The job has no measured sizes."), HasSubstr("gives no size")));
}

TEST_F(AtOdds, WhyOffersTheNamesThatEndSo) {
  lug_at_odds();
  const Ran lug = run("why old.job.toml lug");
  EXPECT_EQ(lug.status, 2);
  EXPECT_THAT(lug.err, HasSubstr("did you mean 'survey/lug'"));
  job(bore(kFive));
  EXPECT_THAT(run("why old.job.toml diameter").err, HasSubstr("did you mean 'touched/bore/diameter'?"));
  EXPECT_THAT(run("why old.job.toml \"proposed 1 leaves over\"").err,
              AllOf(HasSubstr("did you mean '"), HasSubstr("/proposed 1 leaves over'")));
  EXPECT_THAT(run("why old.job.toml bore/diameter").err, HasSubstr("'touched/bore/diameter'?"));
  EXPECT_THAT(run("why old.job.toml survey/bore_dai").err, HasSubstr("did you mean 'survey/bore_dia'?"));
  EXPECT_THAT(run("why old.job.toml quill").err, HasSubstr("the names that `numbers` lists"));
  // More than three end so in a whole part.
  EXPECT_THAT(run("why bracket.job.toml least").err, HasSubstr(" more end so"));
}

}  // namespace
}  // namespace sparewright
