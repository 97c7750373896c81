// Whether the numbers can be made with the tools and slides named for them: each a job just inside and one just outside.
#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "judged_job.hpp"

namespace sparewright {
namespace {

using ledger::State;
using testing::HasSubstr;
using tests::job_with;
using tests::judged;
using tests::plain_shop;
using tests::setup_with;

std::string hole(const std::string& x, const std::string& y, const std::string& rest) {
  return fmt::format("[[feature]]\nname = \"bore\"\nkind = \"hole\"\nat.x = {}\nat.y = {}\n{}\n", x, y, rest);
}

std::string made_with(const std::string& rest, const std::string& tools) {
  return job_with(hole("\"2\"", "\"1.5\"", rest) +
                  setup_with("[[setup.do]]\nmake = \"bore\"\nwith = [" + tools + "]\n"));
}

std::string tool(const std::string& name, const std::string& kind, const std::string& rest) {
  return fmt::format("[[tool]]\nname = \"{}\"\nkind = \"{}\"\n{}\n", name, kind, rest);
}

bool is_silent(tests::Judged& job, std::string_view check) {
  for (const auto& v : job.ledger.verdicts()) {
    if (v.check == check) return false;
  }
  return true;
}

// --- the cut is in the metal -------------------------------------------------------------------------------------
TEST(BiteCheck, AHoleOffThePartIsNo) {  // the block is 4 long
  const auto drilled = [](const std::string& x) {
    return job_with(hole(x, "\"1.5\"", "how = \"drilled\"\ndiameter = \"0.500\""));
  };
  for (const std::string x : {"\"4.26\"", "\"40\"", "\"-0.26\""}) {
    auto job = judged(drilled(x));
    const auto verdict = job.verdict("it cuts metal", "bore");
    EXPECT_EQ(verdict.state, State::kNo) << x;
    EXPECT_EQ(verdict.reason, "it lies outside the blank") << x;
  }
  auto inside = judged(drilled("\"3.74\""));
  EXPECT_TRUE(is_silent(inside, "it cuts metal"));
}

TEST(BiteCheck, AHoleWhereAllIsCutAwayIsNo) {
  const std::string wide =
      "[[feature]]\nname = \"wide\"\nkind = \"hole\"\nat.x = \"2\"\nat.y = \"1.5\"\nhow = "
      "\"drilled\"\ndiameter = \"0.500\"\n";
  auto job = judged(job_with(wide + hole("\"2\"", "\"1.5\"", "how = \"drilled\"\ndiameter = \"0.400\"")));
  EXPECT_THAT(job.verdict("it cuts metal", "bore").reason, HasSubstr("cut already"));
}

// --- the slides --------------------------------------------------------------------------------------------------
TEST(ReachCheck, TheSlideGoesThatFar) {  // 2 from the left end, 1.5 from the back
  const std::string text = made_with("how = \"drilled\"\ndiameter = \"0.500\"", "\"drill 1/2\"");
  const auto shop = [](const std::string& x) {
    std::string all = plain_shop();
    const std::string before = "quiet_cut = ";
    return all.insert(all.find(before), "travel = { x = \"" + x + "\", y = \"6\" }\n");
  };
  auto inside = judged(text, shop("2.01"));
  EXPECT_TRUE(is_silent(inside, "the slide goes that far"));
  auto outside = judged(text, shop("1.99"));
  EXPECT_EQ(outside.state("the slide goes that far", "op 10, x"), State::kNo);
}

// --- tools against the hole --------------------------------------------------------------------------------------
TEST(ToolSizeCheck, ADrillInsideAndOutsideTheLimits) {
  const auto with = [](const std::string& size) {
    return made_with("how = \"drilled\"\ndiameter = \"" + size + " ±0.005\"", "\"drill 1/2\"");
  };
  auto inside = judged(with("0.504"));
  EXPECT_NEAR(inside.margin_in("the drill has the size", "bore"), 0.001, 1e-9);
  auto outside = judged(with("0.506"));
  EXPECT_EQ(outside.state("the drill has the size", "bore"), State::kNo);
}

TEST(ToolSizeCheck, AReamerCannotBeSet) {
  const std::string shop = plain_shop() + tool("drill 31/64", "twist drill", "diameter = \"31/64\"") +
                           tool("worn reamer", "reamer", "diameter = \"0.4990\"");
  const std::string size =
      "how = \"reamed\"\ndiameter = { size = \"0.5005\", tol = \"±0.0010\", duty = \"fits\", with = \"fine\" "
      "}";
  auto inside = judged(made_with(size, "\"drill 31/64\", \"reamer\""), shop);
  EXPECT_EQ(inside.state("the reamer has the size", "bore"), State::kOk);
  auto outside = judged(made_with(size, "\"drill 31/64\", \"worn reamer\""), shop);
  EXPECT_EQ(outside.state("the reamer has the size", "bore"), State::kNo);
  EXPECT_NEAR(outside.margin_in("the reamer has the size", "bore"), -0.0005, 1e-9);
}

TEST(ToolSizeCheck, TheFitOfAReamedHoleIsTheReamers) {
  const std::string shop = plain_shop() + tool("drill 31/64", "twist drill", "diameter = \"31/64\"") +
                           tool("reamer 0.5015", "reamer", "diameter = \"0.5015\"");
  const std::string size =
      "how = \"reamed\"\ndiameter = { on = \"pin\", clearance = \"0.0010 to 0.0020\", with = \"fine\" }";
  auto inside = judged(made_with(size, "\"drill 31/64\", \"reamer 0.5015\""), shop);
  EXPECT_EQ(inside.state("fit as it can be measured", "bore"), State::kOk);
  EXPECT_NEAR(inside.inches("check/fit/bore/clearance as made"), 0.0015, 1e-9);
  auto outside = judged(made_with(size, "\"drill 31/64\", \"reamer\""), shop);  // 0.5000 on a pin of 0.5000
  EXPECT_EQ(outside.state("fit as it can be measured", "bore"), State::kNo);
}

TEST(ToolSizeCheck, TheFitOfADrilledHoleIsTheDrills) {
  const std::string size =
      "how = \"drilled\"\ndiameter = { on = \"pin\", clearance = \"0.0010 to 0.0020\", with = \"fine\" }";
  auto outside = judged(made_with(size, "\"drill 1/2\""));  // 0.5000 on a pin of 0.5000
  EXPECT_EQ(outside.state("fit as it can be measured", "bore"), State::kNo);
}

TEST(ToolingCheck, AFormInASetupIsNotKnown) {
  auto job =
      judged(job_with("[[feature]]\nname = \"way\"\nkind = \"dovetail\"\nalong = \"x\"\nat.x = \"2\"\nat.y = "
                      "\"1.5\"\nwidth = \"0.5\"\ndepth = \"0.2\"\nangle = \"60\"\n" +
                      setup_with("[[setup.do]]\nmake = \"way\"\nwith = [\"end mill\"]\n")));
  EXPECT_EQ(job.state("how it is cut", "way"), State::kNotKnown);
}

TEST(ToolSizeCheck, SomethingIsLeftForTheReamerAndNotTooMuch) {
  const std::string shop = plain_shop() + tool("drill 31/64", "twist drill", "diameter = \"31/64\"") +
                           tool("drill 7/16", "twist drill", "diameter = \"7/16\"");
  const std::string size = "how = \"reamed\"\ndiameter = \"0.500\"";
  auto inside = judged(made_with(size, "\"drill 31/64\", \"reamer\""), shop);
  EXPECT_EQ(inside.state("metal left for the reamer", "bore"), State::kOk);
  auto nothing = judged(made_with(size, "\"drill 1/2\", \"reamer\""), shop);
  EXPECT_EQ(nothing.state("metal left for the reamer", "bore"), State::kNo);
  auto too_much = judged(made_with(size, "\"drill 7/16\", \"reamer\""), shop);
  EXPECT_EQ(too_much.state("metal left for the reamer", "bore"), State::kNo);
}

TEST(ToolSizeCheck, TheTapHasTheThread) {
  const std::string shop = plain_shop() + tool("drill #7", "twist drill", "diameter = \"#7\"") +
                           tool("fine tap", "tap", "thread = \"1/4-28\"");
  const std::string thread = "how = \"tapped\"\nthread = \"1/4-20 UNC-2B\"";
  auto inside = judged(made_with(thread, "\"drill #7\", \"tap\""), shop);
  EXPECT_TRUE(is_silent(inside, "the tap has the thread"));
  auto outside = judged(made_with(thread, "\"drill #7\", \"fine tap\""), shop);
  EXPECT_EQ(outside.state("the tap has the thread", "bore"), State::kNo);
}

TEST(ToolSizeCheck, TheBarGoesIntoTheDrilledHole) {
  const auto shop = [](const std::string& least) {
    return plain_shop() + tool("bar", "boring head", "division = \"0.001\"\nleast_bore = \"" + least + "\"");
  };
  const std::string text = made_with("how = \"bored\"\ndiameter = \"0.600\"", "\"drill 1/2\", \"bar\"");
  auto inside = judged(text, shop("0.499"));
  EXPECT_EQ(inside.state("the boring bar goes in", "bore"), State::kOk);
  auto outside = judged(text, shop("0.501"));
  EXPECT_EQ(outside.state("the boring bar goes in", "bore"), State::kNo);
}

// --- doubt that must not cancel ----------------------------------------------------------------------------------
// The aim is printed as a number: what is not known of the pin stays a doubt of the fit.
TEST(Doubt, OfTheMateStaysInTheFit) {
  std::string text = job_with(hole("\"2\"", "\"1.5\"",
                                   "how = \"bored\"\ndiameter = { on = \"pin\", clearance = "
                                   "\"0.0100 to 0.0300\", with = \"fine\" }"));
  auto fine = judged(text);
  EXPECT_EQ(fine.state("fit as it can be measured", "bore"), State::kOk);
  text.replace(text.find("with = \"fine\"\ngot"), 13, "with = \"caliper\"");
  auto coarse = judged(text);
  const double pin = coarse.ledger.get("survey/pin").expanded();
  EXPECT_GT(pin, 0.0005 * 25.4);
  EXPECT_GE(coarse.ledger.get("check/fit/bore/clearance as made").expanded(), pin);
}

// A place measured from the front and picked up at the back: the width's own doubt comes in.
TEST(Doubt, OfTheWidthComesInWhereTheZeroIsOnTheOtherSide) {
  std::string job = made_with("how = \"drilled\"\ndiameter = \"0.500\"", "\"drill 1/2\"");
  const std::string blank = "size = { length = \"4\"";
  job.insert(job.find(blank), "found = { width = \"3.000\" }\nfound_with = \"caliper\"\n");
  auto from_front = judged(job);
  std::string from_back_text = job;
  from_back_text.replace(from_back_text.find("at.y = \"1.5\""), 12,
                         "at.y = { size = \"1.5\", from = \"back\" }");
  auto from_back = judged(from_back_text);
  const double front = from_front.ledger.get("op 10/bore/y made").expanded();
  const double back = from_back.ledger.get("op 10/bore/y made").expanded();
  EXPECT_GT(front, back + 0.0002 * 25.4);
}

// --- readings that cannot all be true ----------------------------------------------------------------------------
TEST(Repeats, ThatLieTooFarApartAreASeriousQuery) {
  const auto with = [](const std::string& got) {
    std::string text = job_with("");
    text.replace(text.find("\"0.500000\", \"0.500000\""), 22, got);
    return text;
  };
  // Good to 0.000002 and reads 0.000002: 0.000010 is explained.
  auto inside = judged(with("\"0.500000\", \"0.500010\""));
  EXPECT_TRUE(inside.ledger.queries().empty());
  auto outside = judged(with("\"0.500000\", \"0.500012\""));
  ASSERT_EQ(outside.ledger.queries().size(), 1U);
  EXPECT_TRUE(outside.ledger.queries().front().serious);
  EXPECT_THAT(outside.ledger.queries().front().says, HasSubstr("0.500012"));
}

// --- what is missing is named at its root ------------------------------------------------------------------------
TEST(NotKnown, NamesTheReadingThatIsABound) {
  std::string text = job_with(hole("\"2\"", "\"1.5\"",
                                   "how = \"bored\"\ndiameter = { size = \"0.5020\", tol = "
                                   "\"±0.0002\", mate = \"pin\", clearance = \"0.0010 to "
                                   "0.0030\", with = \"fine\" }"));
  text.replace(text.find("with = \"fine\"\ngot"), 13, "condition = \"worn\"\nwith = \"fine\"");
  auto job = judged(text);
  const auto verdict = job.verdict("fit, tight end", "bore");
  EXPECT_EQ(verdict.state, State::kNotKnown);
  EXPECT_THAT(verdict.missing, testing::ElementsAre("reading/pin"));
}

// --- names that would be two numbers' ------------------------------------------------------------------------------
TEST(Names, AFeatureMadeTwiceIsToldAtItsPlace) {
  const std::string drilled = hole("\"2\"", "\"1.5\"", "how = \"drilled\"\ndiameter = \"0.500\"");
  const std::string once = "[[setup.do]]\nmake = \"bore\"\nwith = [\"drill 1/2\"]\n";
  EXPECT_EQ(tests::troubles_of(job_with(drilled + setup_with(once))), "");
  EXPECT_THAT(tests::troubles_of(job_with(drilled + setup_with(once + once))),
              HasSubstr("each feature once"));
  std::string later = setup_with(once);
  later.replace(later.find("op = 10"), 7, "op = 20");
  EXPECT_THAT(tests::troubles_of(job_with(drilled + setup_with(once) + later)),
              HasSubstr("each feature once"));
}

TEST(Names, AToolNamedTwiceForAFeatureIsToldAtItsPlace) {
  EXPECT_THAT(tests::troubles_of(
                  made_with("how = \"drilled\"\ndiameter = \"0.500\"", "\"drill 1/2\", \"drill 1/2\"")),
              HasSubstr("each tool once"));
}

TEST(Names, OfAFeatureHaveALetterAndNoSlash) {
  for (const std::string name : {"", "bore/at x"}) {
    std::string text = hole("\"2\"", "\"1.5\"", "how = \"drilled\"\ndiameter = \"0.500\"");
    text.replace(text.find("\"bore\""), 6, "\"" + name + "\"");
    EXPECT_THAT(tests::troubles_of(job_with(text)), HasSubstr("without '/'"));
  }
}

// --- sizes that cannot be ----------------------------------------------------------------------------------------
TEST(Sizes, OfNothingOrLessAreToldAtTheirPlace) {
  for (const std::string depth : {"-0.500", "0"}) {
    const std::string told = tests::troubles_of(job_with(
        hole("\"2\"", "\"1.5\"", "how = \"drilled\"\ndiameter = \"0.500\"\ndepth = \"" + depth + "\"")));
    EXPECT_THAT(told, HasSubstr("depth is " + depth)) << told;
    EXPECT_THAT(told, HasSubstr("test.job.toml:")) << told;
  }
}

}  // namespace
}  // namespace sparewright
