// What `measure` prints for the example, the shape of its JSON, and what it says of a reading that is out.
#include <numeric>
#include <set>
#include <string_view>
#include <utility>

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include "golden.hpp"
#include "program.hpp"

namespace sparewright {
namespace {

using nlohmann::json;
using testing::AllOf;
using testing::HasSubstr;
using testing::StartsWith;
using tests::ProgramTest;
using tests::Ran;

class Measure : public ProgramTest {};

const json& named(const json& rows, const std::string& name) {
  for (const json& row : rows) {
    if (row["name"] == name) return row;
  }
  throw std::runtime_error("no row " + name);
}

TEST_F(Measure, ReadsAsApproved) {
  const Ran ran = run("measure bracket.job.toml");
  EXPECT_EQ(ran.status, 0) << ran.err;
  EXPECT_TRUE(tests::golden("cli/bracket.measure.txt", ran.out));
}

TEST_F(Measure, HasItsShapeInJson) {
  const Ran ran = run("measure bracket.job.toml --json");
  ASSERT_EQ(ran.status, 0) << ran.err;
  const json printed = json::parse(ran.out);
  ASSERT_EQ(printed["sizes"].size(), 5U);
  ASSERT_EQ(printed["readings"].size(), 7U);
  for (const json& row : printed["sizes"]) {
    double parts = 0.0;
    for (const json& doubt : row["doubt_from"])
      parts += doubt["part"].get<double>();
    EXPECT_GT(parts, 0.93) << row["name"] << ": what is left out is less than 0.01 each";
    EXPECT_LE(parts, 1.0 + 1e-9);
    EXPECT_NEAR(row["expanded"].get<double>(), row["k"].get<double>() * row["u"].get<double>(), 1e-12);
  }
  // The two plugs: over 1.2805 and between 0.7185, half of their sum 0.9995 and their difference 0.5620 of two plugs.
  const json& centres = named(printed["sizes"], "screw_centres");
  EXPECT_NEAR(centres["value"].get<double>(), 0.9995, 0.0003);
  EXPECT_TRUE(centres["checked"].get<bool>());
  EXPECT_EQ(printed["agreement"]["spare_readings"], 1);
}

// 1.2805 read as 1.3305: two thimble turns, in a reading that the plugs and the reading between check.
TEST_F(Measure, SaysWhichReadingIsOut) {
  change("bracket.job.toml", "own.job.toml", "[\"1.280\", \"1.281\"]", "[\"1.330\", \"1.331\"]");
  const Ran ran = run("measure own.job.toml");
  EXPECT_EQ(ran.status, 1) << ran.err;
  EXPECT_THAT(ran.out, HasSubstr("they do NOT agree"));
  EXPECT_THAT(ran.out, HasSubstr("misread?"));
}

// Two repeats say too little of their scatter to draw it; one reading each leaves nothing to be scattered.
TEST_F(Measure, DrawsErrorsOrSaysWhatIsWanting) {
  const Ran two = run("measure bracket.job.toml --draws 2000");
  EXPECT_EQ(two.status, 1);
  EXPECT_THAT(two.err, AllOf(HasSubstr("draws: NOT KNOWN"), HasSubstr("well enough to be drawn")));
  EXPECT_THAT(two.out, HasSubstr("SIZES as the readings"));
  std::string once = read("bracket.job.toml");
  for (const auto& [many, one] :
       {std::pair{"[\"0.6248\", \"0.6247\", \"0.6248\"]", "\"0.6248\""},
        std::pair{"[\"0.632\", \"0.631\"]", "\"0.632\""}, std::pair{"[\"0.683\", \"0.684\"]", "\"0.683\""},
        std::pair{"[\"1.315\", \"1.316\"]", "\"1.315\""}, std::pair{"[\"0.719\", \"0.718\"]", "\"0.718\""},
        std::pair{"[\"1.280\", \"1.281\"]", "\"1.281\""}}) {
    const std::size_t at = once.find(many);
    ASSERT_NE(at, std::string::npos) << many;
    once.replace(at, std::string_view(many).size(), one);
  }
  write("once.job.toml", once);
  const Ran drawn = run("measure once.job.toml --draws 20000");
  EXPECT_THAT(drawn.out, HasSubstr("SIZES by 20000 draws"));
  EXPECT_THAT(drawn.out, testing::Not(HasSubstr("came to no answer")));
  const json printed = json::parse(run("measure once.job.toml --draws 20000 --json").out);
  EXPECT_EQ(printed["drawn"]["sizes"].size(), 5U);
  EXPECT_NEAR(named(printed["drawn"]["sizes"], "idler_pin")["mean"].get<double>(), 0.6248, 0.0001);
}

TEST_F(Measure, PrintsItsPicturesAsPdf) {
  const Ran ran = run("measure bracket.job.toml -o measured.pdf");
  EXPECT_EQ(ran.status, 0) << ran.err;
  EXPECT_THAT(read("measured.pdf"), StartsWith("%PDF"));
  const Ran wrong = run("measure bracket.job.toml -o measured.svg");
  EXPECT_EQ(wrong.status, 2);
  EXPECT_THAT(wrong.err, HasSubstr(".pdf"));
}

// An old part can be measured before anybody knows what the new one is made of.
class MeasureAlone : public Measure {
 protected:
  void SetUp() override {
    Measure::SetUp();
    write("old.job.toml",
          "[job]\ntitle = \"Old lever\"\nunits = \"in\"\nshop = \"farm.shop.toml\"\n" + pin_reading());
  }
  // The first reading of the example.
  std::string pin_reading() {
    const std::string job = read("bracket.job.toml");
    const std::size_t begin = job.find("[[reading]]");
    return job.substr(begin, job.find("[[reading]]", begin + 1) - begin);
  }
};

TEST_F(MeasureAlone, NeedsNoBlank) {
  const Ran ran = run("measure old.job.toml --json");
  ASSERT_EQ(ran.status, 0) << ran.out << ran.err;
  EXPECT_EQ(json::parse(ran.out)["sizes"].size(), 1U);
  EXPECT_EQ(run("measure old.job.toml -o old.pdf").status, 0);
  EXPECT_EQ(run("numbers old.job.toml").status, 0);
  EXPECT_THAT(run("sizes old.job.toml").out, HasSubstr("inch"));
}

TEST_F(MeasureAlone, ThereIsNothingToCheckOrToMake) {
  const Ran ran = run("check old.job.toml");
  EXPECT_EQ(ran.status, 1);
  EXPECT_THAT(ran.out, AllOf(HasSubstr("NOT KNOWN"), HasSubstr("the old part is only being measured")));
  for (const char* asked : {"sheets old.job.toml -o old.pdf", "drawing old.job.toml -o old.svg",
                            "solid old.job.toml -o old.step"}) {
    const Ran made = run(asked);
    EXPECT_EQ(made.status, 2) << asked;
    EXPECT_THAT(made.err, HasSubstr("needs the key 'blank'")) << asked;
  }
}

TEST_F(MeasureAlone, WhatIsMadeIsMadeOfSomething) {
  write("old.job.toml",
        read("old.job.toml") + "\n[[feature]]\nname = \"hole\"\nkind = \"hole\"\nhow = \"drilled\"\n");
  const Ran ran = run("measure old.job.toml");
  EXPECT_EQ(ran.status, 2);
  EXPECT_THAT(ran.err, AllOf(HasSubstr("'blank'"), HasSubstr("old.job.toml")));
}

}  // namespace
}  // namespace sparewright
