// What each command prints for the example, its exit status, and the shape of its JSON.
#include <set>

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

std::set<std::string> keys_of(const json& object) {
  std::set<std::string> keys;
  for (const auto& [key, value] : object.items())
    keys.insert(key);
  return keys;
}

class Commands : public ProgramTest {};

TEST_F(Commands, CheckIsWellAndReadsAsApproved) {
  const Ran ran = run("check bracket.job.toml");
  EXPECT_EQ(ran.status, 0) << ran.err;
  EXPECT_TRUE(tests::golden("cli/bracket.check.txt", ran.out));
}

TEST_F(Commands, OrderReadsAsApproved) {
  const Ran ran = run("order bracket.job.toml");
  EXPECT_EQ(ran.status, 0) << ran.err;
  EXPECT_TRUE(tests::golden("cli/bracket.order.txt", ran.out));
}

TEST_F(Commands, NumbersReadAsApproved) {
  const Ran ran = run("numbers bracket.job.toml");
  EXPECT_EQ(ran.status, 0) << ran.err;
  EXPECT_TRUE(tests::golden("cli/bracket.numbers.txt", ran.out));
}

TEST_F(Commands, DimensionsReadAsApproved) {
  const Ran ran = run("dimensions bracket.job.toml");
  EXPECT_EQ(ran.status, 0) << ran.err;
  EXPECT_TRUE(tests::golden("cli/bracket.dimensions.txt", ran.out));
}

TEST_F(Commands, SizesReadAsApproved) {
  const Ran ran = run("sizes bracket.job.toml");
  EXPECT_EQ(ran.status, 0) << ran.err;
  EXPECT_TRUE(tests::golden("cli/bracket.sizes.txt", ran.out));
}

TEST_F(Commands, SizesHaveTheirShapeInJson) {
  change("bracket.job.toml", "own.job.toml", "# --- the new part",
         "[original.old_bore]\nmate = \"idler_pin\"\n[original.idler_pin]\nsize = \"0.6250 "
         "-0.0001/-0.0006\"\n#");
  const Ran ran = run("sizes own.job.toml --json");
  ASSERT_EQ(ran.status, 0) << ran.err;
  const json printed = json::parse(ran.out);
  ASSERT_EQ(printed["sizes"].size(), 5U);
  for (const json& row : printed["sizes"])
    EXPECT_EQ(keys_of(row),
              (std::set<std::string>{"name", "measured", "u", "bound", "unit", "missing", "proposed", "none",
                                     "settled", "decides", "accepted", "leaves_over", "least", "most", "duty",
                                     "mate_of", "disputed", "without", "in_question"}));
  const json& pin = printed["sizes"][0];
  EXPECT_EQ(pin["name"], "idler_pin");
  EXPECT_NEAR(pin["accepted"].get<double>(), 0.625, 1e-12);
  EXPECT_NEAR(pin["least"].get<double>(), 0.6244, 1e-12);
  EXPECT_EQ(pin["mate_of"], json::array({"pivot bore"}));
  EXPECT_EQ(keys_of(pin["proposed"][0]), (std::set<std::string>{"name", "number", "size", "leaves_over",
                                                                "chance", "odds", "may_be_it", "reason"}));
  ASSERT_EQ(printed["pairs"].size(), 2U);
  EXPECT_EQ(printed["pairs"][0]["hole"], "old_bore");
  EXPECT_EQ(printed["pairs"][0]["near"].size(), 8U);
  EXPECT_EQ(printed["pairs"][1]["hole"], "pivot bore");
  EXPECT_EQ(printed["pairs"][1]["near"].size(), 8U);
  EXPECT_EQ(run("why own.job.toml original/idler_pin/size").status, 0);
  EXPECT_THAT(run("sizes own.job.toml").out, HasSubstr("outranks the nominal 0.6250 in"));
}

// A lever drawn from one side only: the query is serious, and overruled it is printed and quiet.
TEST_F(Commands, ASeriousQueryCountsUntilItIsOverruled) {
  const std::filesystem::path jobs = std::filesystem::path(SPAREWRIGHT_SOURCE_DIR) / "tests" / "jobs";
  for (const char* text : {"keyed_lever.job.toml", "forms.shop.toml"})
    std::filesystem::copy(jobs / text, at(""));
  const Ran open = run("check keyed_lever.job.toml");
  EXPECT_EQ(open.status, 1) << open.err;
  EXPECT_THAT(open.out, HasSubstr("QUERY      serious: Which end was seen?"));
  EXPECT_THAT(open.out, HasSubstr("its name: mirror/part"));
  EXPECT_THAT(open.out, HasSubstr("0 NO, 0 NOT KNOWN"));
  write("own.job.toml",
        read("keyed_lever.job.toml") +
            "[[overrule]]\nquery = \"mirror/part\"\nbecause = \"seen on the baler itself\"\n");
  const Ran overruled = run("check own.job.toml");
  EXPECT_EQ(overruled.status, 0) << overruled.out << overruled.err;
  EXPECT_THAT(overruled.out, HasSubstr("QUERY      overruled: Which end was seen?"));
  EXPECT_THAT(overruled.out, HasSubstr("because: seen on the baler itself"));
  EXPECT_EQ(json::parse(run("check own.job.toml --json").out)["queries"][0]["state"], "overruled");
}

TEST_F(Commands, DimensionsHaveTheirShapeInJson) {
  const Ran ran = run("dimensions bracket.job.toml --json");
  ASSERT_EQ(ran.status, 0) << ran.err;
  const json printed = json::parse(ran.out);
  ASSERT_EQ(printed["dimensions"].size(), 18U);
  for (const json& row : printed["dimensions"])
    EXPECT_EQ(keys_of(row),
              (std::set<std::string>{"of", "dimension", "number", "from", "to", "links", "duty", "with",
                                     "nominal", "least", "most", "aim", "unit", "missing"}));
  const json& second = printed["dimensions"][14];
  EXPECT_EQ(second["number"], "feature/screw hole 2/x");
  EXPECT_EQ(second["from"], "pivot bore");
  EXPECT_EQ(second["links"], 1);
}

TEST_F(Commands, WhyLeadsToReadings) {
  const Ran ran = run("why bracket.job.toml 'feature/pivot bore/diameter/aim'");
  EXPECT_EQ(ran.status, 0) << ran.err;
  EXPECT_TRUE(tests::golden("cli/bracket.why-aim.txt", ran.out));
}

TEST_F(Commands, WhyWritesABenchCard) {
  ASSERT_EQ(run("why bracket.job.toml 'feature/pivot bore/diameter/aim' -o card.pdf").status, 0);
  ASSERT_EQ(std::system(("pdftotext -layout '" + at("card.pdf").string() + "'").c_str()), 0);
  EXPECT_TRUE(tests::golden("cli/bracket.card.txt", read("card.txt")));
}

TEST_F(Commands, ACardIsAPdfAndNothingElse) {
  const Ran ran = run("why bracket.job.toml survey/idler_pin -o card.docx");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, HasSubstr("'card.docx' is no kind of card file"));
  EXPECT_THAT(ran.err, HasSubstr(".pdf"));
  EXPECT_EQ(run("why bracket.job.toml 'feature/no such' -o card.pdf").status, 2);
  EXPECT_FALSE(std::filesystem::exists(at("card.pdf")));
}

TEST_F(Commands, SheetsReadAsApproved) {
  ASSERT_EQ(run("sheets bracket.job.toml -o sheet.pdf").status, 0);
  EXPECT_THAT(read("sheet.pdf"), StartsWith("%PDF-"));
  ASSERT_EQ(std::system(("pdftotext -layout '" + at("sheet.pdf").string() + "'").c_str()), 0);
  EXPECT_TRUE(tests::golden("cli/bracket.sheets.txt", read("sheet.txt")));
}

// The test jobs hold every form of a feature; each of them has been looked at as a picture.
TEST_F(Commands, EveryFormBecomesASolid) {
  const std::filesystem::path jobs = std::filesystem::path(SPAREWRIGHT_SOURCE_DIR) / "tests" / "jobs";
  for (const auto& entry : std::filesystem::directory_iterator(jobs))
    std::filesystem::copy(entry.path(), at(""));
  for (const std::string job : {"drive_shaft", "pump_cover", "shift_lever", "crank_pin", "pump_body"}) {
    const Ran check = run("check " + job + ".job.toml");
    EXPECT_EQ(check.status, 0) << check.out << check.err;
    const Ran solid = run("solid " + job + ".job.toml -o " + job + ".step");
    EXPECT_EQ(solid.status, 0) << solid.err;
    EXPECT_THAT(read(job + ".step"), StartsWith("ISO-10303-21;"));
  }
}

// They have faults, which the status tells; their shapes are sound all the same.
TEST_F(Commands, JobsWithTrapsBecomeSolids) {
  const std::filesystem::path jobs = std::filesystem::path(SPAREWRIGHT_SOURCE_DIR) / "tests" / "jobs";
  for (const auto& entry : std::filesystem::directory_iterator(jobs))
    std::filesystem::copy(entry.path(), at(""));
  for (const auto& [job, status] :
       {std::pair{"tension_arm", 1}, std::pair{"clamp_arm", 0}, std::pair{"drawn_bar_seat", 1}}) {
    const std::string name(job);
    EXPECT_EQ(run("solid " + name + ".job.toml -o " + name + ".step").status, status);
    EXPECT_THAT(read(name + ".step"), StartsWith("ISO-10303-21;"));
  }
}

TEST_F(Commands, TheDrawingIsWrittenInThreeKinds) {
  EXPECT_EQ(run("drawing bracket.job.toml -o bracket.svg").status, 0);
  EXPECT_THAT(read("bracket.svg"), StartsWith("<?xml"));
  ASSERT_EQ(std::system(("python3 -c 'import sys, xml.dom.minidom as m; m.parse(sys.argv[1])' '" +
                         at("bracket.svg").string() + "'")
                            .c_str()),
            0);
  EXPECT_EQ(run("drawing bracket.job.toml -o bracket.png").status, 0);
  EXPECT_THAT(read("bracket.png"), StartsWith("\x89PNG"));
  EXPECT_EQ(run("drawing bracket.job.toml -o bracket.json").status, 0);
  EXPECT_TRUE(tests::golden("cli/bracket.drawing.json", read("bracket.json")));
  EXPECT_THAT(run("drawing bracket.job.toml -o bracket.doc").err, HasSubstr(".svg, .png or .json"));
  EXPECT_THAT(run("drawing bracket.job.toml --sheet 2").err, HasSubstr("accepted: 1 to 1"));
}

TEST_F(Commands, OneSetupsSheetCanBePrintedAlone) {
  EXPECT_EQ(run("sheets bracket.job.toml --only 20 -o one.pdf").status, 0);
  ASSERT_EQ(
      std::system(
          ("pdftotext -layout '" + at("one.pdf").string() + "' '" + at("one.txt").string() + "'").c_str()),
      0);
  const std::string text = read("one.txt");
  EXPECT_THAT(text, HasSubstr("SHEET 6 of 9"));
  EXPECT_THAT(text, testing::Not(HasSubstr("SHEET 1 of 3")));
  const Ran other = run("sheets bracket.job.toml --only 30");
  EXPECT_EQ(other.status, 2);
  EXPECT_THAT(other.err, HasSubstr("accepted: 20"));
}

TEST_F(Commands, PiecesAreFilesOfTheirOwn) {
  const std::filesystem::path jobs = std::filesystem::path(SPAREWRIGHT_SOURCE_DIR) / "tests" / "jobs";
  for (const char* text : {"shift_lever.job.toml", "forms.shop.toml"})
    std::filesystem::copy(jobs / text, at(""));
  EXPECT_EQ(run("solid shift_lever.job.toml --piece 2").status, 0);
  EXPECT_THAT(read("shift_lever.2.step"), StartsWith("ISO-10303-21;"));
  EXPECT_EQ(run("solid shift_lever.job.toml --piece 'pivot bush'").status, 0);
  EXPECT_THAT(read("shift_lever.pivot-bush.step"), StartsWith("ISO-10303-21;"));
  const Ran third = run("solid shift_lever.job.toml --piece 3");
  EXPECT_EQ(third.status, 2);
  EXPECT_THAT(third.err, HasSubstr("accepted: 1 to 2"));
  EXPECT_THAT(run("solid shift_lever.job.toml --piece spindle").err, HasSubstr("pivot bush"));
}

TEST_F(Commands, SheetsAndSolidAreTheSameBytesEveryTime) {
  for (const char* command : {"sheets", "solid", "drawing"}) {
    const Ran first = run(std::string(command) + " bracket.job.toml -o -");
    const Ran second = run(std::string(command) + " bracket.job.toml -o -");
    EXPECT_EQ(first.status, 0);
    EXPECT_GT(first.out.size(), 1000U);
    EXPECT_EQ(first.out, second.out) << command;
  }
}

TEST_F(Commands, ABadVerdictIsStatusOne) {
  change("bracket.job.toml", "thin.job.toml", "size = \"1.062\"",
         "size = \"0.350\"");  // the bore nearly breaks out
  const Ran ran = run("check thin.job.toml");
  EXPECT_EQ(ran.status, 1) << ran.err;
  EXPECT_THAT(ran.out, HasSubstr("NO         least wall: pivot bore"));
}

TEST_F(Commands, JsonHasItsShape) {
  const Ran ran = run("numbers bracket.job.toml --json");
  ASSERT_EQ(ran.status, 0) << ran.err;
  const json printed = json::parse(ran.out);
  EXPECT_EQ(keys_of(printed), (std::set<std::string>{"numbers", "queries", "verdicts"}));
  ASSERT_GT(printed["numbers"].size(), 50U);
  for (const json& number : printed["numbers"]) {
    for (const char* key : {"name", "kind", "value", "unit", "u", "dof", "bound", "typed", "state", "formula",
                            "inputs", "source", "choice"}) {
      EXPECT_TRUE(number.contains(key)) << number["name"] << " has no " << key;
    }
    if (number["state"] == "known") {
      EXPECT_TRUE(number["value"].is_number()) << number["name"];
    }
  }
  ASSERT_GT(printed["verdicts"].size(), 10U);
  for (const json& verdict : printed["verdicts"]) {
    for (const char* key :
         {"check", "subject", "verdict", "figure", "limit", "margin", "reason", "source", "todo"}) {
      EXPECT_TRUE(verdict.contains(key)) << verdict["check"] << " has no " << key;
    }
    EXPECT_EQ(keys_of(verdict["limit"]), (std::set<std::string>{"high", "low"}));
  }
}

// Whatever a number comes from is a number of the list too: no trail leads to nowhere.
TEST_F(Commands, EveryInputIsANumber) {
  const json printed = json::parse(run("numbers bracket.job.toml --json").out);
  std::set<std::string> names;
  for (const json& number : printed["numbers"])
    names.insert(number["name"]);
  EXPECT_EQ(names.size(), printed["numbers"].size());
  for (const json& number : printed["numbers"]) {
    for (const json& input : number["inputs"])
      EXPECT_TRUE(names.contains(input)) << number["name"] << " from " << input;
  }
}

TEST_F(Commands, PublishedSchemasAreTheProgramsOwn) {
  for (const std::string text : {"job", "shop"}) {
    const auto published =
        std::filesystem::path(SPAREWRIGHT_SOURCE_DIR) / "docs/schemas" / (text + ".schema.json");
    EXPECT_EQ(run("schema " + text).out, tests::contents(published))
        << "write it anew: sparewright schema " << text << " > docs/schemas/" << text << ".schema.json";
  }
}

TEST_F(Commands, PublishedListsOfKeysAreTheProgramsOwn) {
  for (const std::string text : {"job", "shop"}) {
    const auto published = std::filesystem::path(SPAREWRIGHT_SOURCE_DIR) / "docs" / (text + "-text.md");
    EXPECT_EQ(run("keys " + text).out, tests::contents(published))
        << "write it anew: sparewright keys " << text << " > docs/" << text << "-text.md";
  }
}

TEST_F(Commands, HelpHasAnExampleEach) {
  for (const std::string command :
       {"check", "numbers", "why", "sheets", "order", "solid", "schema", "keys"}) {
    const Ran ran = run(command + " --help");
    EXPECT_EQ(ran.status, 0);
    EXPECT_THAT(ran.out, HasSubstr("Example: sparewright " + command));
  }
  EXPECT_EQ(run("--version").status, 0);
}

TEST_F(Commands, LetterPaperIsLetter) {
  ASSERT_EQ(run("sheets bracket.job.toml --paper Letter -o sheet.pdf").status, 0);
  ASSERT_EQ(
      std::system(("pdfinfo '" + at("sheet.pdf").string() + "' > '" + at("info").string() + "'").c_str()), 0);
  EXPECT_THAT(read("info"), HasSubstr("612 x 792 pts (letter)"));
}

}  // namespace
}  // namespace sparewright
