// The sheets of lists of a whole job: each number worked by hand from the job's text.
#include "core/route/lists.hpp"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/route/list_sheet.hpp"
#include "judged_job.hpp"

namespace sparewright {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using tests::job_with;
using tests::judged;
using tests::setup_with;

// The block is 4 x 3 x 1 in; the pin in hand is 0.5000.
constexpr const char* kFeatures = R"(
[[feature]]
name = "step"
kind = "flat"
side = "top"
leaves = "0.750"
region = { along = "x", start = "2.500", towards = "right end" }
[[feature]]
name = "bore"
kind = "hole"
how = "bored"
at.x = { size = "1.000", tol = "\u00b10.004", duty = "locates", with = "caliper" }
at.y = { size = "1.250", tol = "\u00b10.004", from = "back", duty = "locates", with = "caliper" }
diameter = { on = "pin", clearance = "+0.0010 to +0.0020", with = "fine" }
[[feature]]
name = "near hole"
kind = "hole"
how = "drilled"
diameter = "0.250"
at.x = "1.000"
at.y = { size = "1.000", tol = "\u00b10.010", from = "bore", towards = "front", duty = "locates", with = "caliper" }
[[feature]]
name = "tee"
kind = "slot"
side = "top"
along = "x"
at.x = "3.250"
at.y = { size = "1.500", tol = "\u00b10.005", duty = "locates", with = "caliper" }
length = "1.000"
width = "0.250"
depth = "0.100"
)";

route::ListSheet list(tests::Judged& job, std::string_view name) {
  const auto sheet = job.ledger.value<route::ListSheet>(route::list_path(name));
  EXPECT_TRUE(sheet != nullptr) << name;
  return sheet ? *sheet : route::ListSheet{};
}

TEST(MarkOut, GivesHeightsFromTheSideThatIsPickedUp) {
  auto job =
      judged(job_with(std::string(kFeatures) +
                      setup_with("[[setup.do]]\nmake = \"bore\"\nwith = [\"spot\", \"boring head\"]\n")));
  const route::ListSheet sheet = list(job, "mark out");
  ASSERT_EQ(sheet.sections.size(), 1U);
  // The setup picks up left end and back; what no setup makes stands on the left end or the front. One height, one line.
  EXPECT_THAT(
      sheet.sections[0].table.rows,
      ElementsAre(ElementsAre("top", "left end", "1.000", "bore, near hole"),
                  ElementsAre("top", "left end", "2.500", "step, wall"),
                  ElementsAre("top", "left end", "3.250", "tee"),
                  ElementsAre("top", "front", "0.750", "near hole"),  // 3 - 1.250 - 1.000
                  ElementsAre("top", "front", "1.500", "tee"), ElementsAre("top", "back", "1.250", "bore")));
  EXPECT_NEAR(job.inches("mark out/top/near hole/y"), 0.750, 1e-12);
}

TEST(MarkOut, HasNoLinesAcrossRoundWork) {
  const std::string text = R"([job]
title = "Pin"
units = "in"
[blank]
shape = "round bar"
material = "1018 cold drawn"
size = { diameter = "1", length = "4" }
[[feature]]
name = "cross hole"
kind = "hole"
how = "drilled"
diameter = "0.250"
at.x = "1.500"
at.y = "0.500"
)";
  auto job = judged(text);
  const route::ListSheet sheet = list(job, "mark out");
  ASSERT_EQ(sheet.sections.size(), 1U);
  EXPECT_THAT(sheet.sections[0].table.rows,
              ElementsAre(ElementsAre("top", "left end", "1.500", "cross hole")));
}

TEST(Inspect, GivesWhatAnInstrumentCanTouch) {
  auto job = judged(job_with(kFeatures));
  const route::ListSheet sheet = list(job, "inspect");
  ASSERT_FALSE(sheet.sections.empty());
  // The bore's limits are 0.5010 to 0.5020. The instrument is good to 0.000002, so the aim is its lower limit, printed
  // inwards: 0.5011; half of that off the place is the near edge: 1.000 - 0.250, 1.250 - 0.250.
  std::vector<std::string> rows;
  for (const auto& row : sheet.sections[0].table.rows)
    rows.push_back(row[1] + " | " + row[2] + " | " + row[4]);
  EXPECT_THAT(rows,
              ElementsAre("bore, top and bottom, two ways | 0.5010-0.5020 | fine",
                          HasSubstr("left end to near edge of bore"), HasSubstr("back to near edge of bore"),
                          HasSubstr("nearest edges, bore (0.5011) and near hole ("),
                          "front to near edge of tee (0.2500) | 1.375 ±0.005 | caliper"));
  EXPECT_NEAR(job.inches("inspect/bore/x near edge"), 1.000 - 0.5011 / 2.0, 1e-6);
  EXPECT_NEAR(job.inches("inspect/near hole/edge to bore"), 1.000 - 0.125 - 0.5011 / 2.0, 1e-6);
}

TEST(Inspect, IsNotThereWhereNothingMatters) {
  auto job = judged(job_with(""));
  EXPECT_THAT(list(job, "inspect").sections, IsEmpty());
  EXPECT_THAT(list(job, "mark out").sections, IsEmpty());
}

TEST(Fit, SaysHowTightTheMateGoes) {
  auto job = judged(job_with(kFeatures));
  EXPECT_NEAR(job.inches("fit/bore/least clearance"), 0.0010, 1e-9);
  EXPECT_NEAR(job.inches("fit/bore/most clearance"), 0.0020, 1e-9);
  const route::ListSheet sheet = list(job, "fit");
  EXPECT_THAT(sheet.sections.at(0).table.rows.at(1),
              ElementsAre("2", "pin into bore", "goes in by hand, 0.0010 to 0.0020 clear"));
  EXPECT_THAT(sheet.cautions, testing::Not(IsEmpty()));
}

std::string hole_in(const std::string& name, const std::string& rest) {
  return "[[feature]]\nname = \"" + name + "\"\nkind = \"hole\"\n" + rest;
}

std::vector<std::string> inspected(const std::string& features) {
  auto job = judged(job_with(features));
  std::vector<std::string> rows;
  const route::ListSheet sheet = list(job, "inspect");
  if (sheet.sections.empty()) return rows;
  for (const auto& row : sheet.sections[0].table.rows)
    rows.push_back(row[1] + " | " + row[2]);
  return rows;
}

// x = 1.000: half of the countersink, 0.250, hides the hole of 0.250.
TEST(Inspect, TouchesTheEdgeThatIsThere) {
  EXPECT_THAT(inspected(hole_in("sunk", R"(how = "countersunk"
diameter = "0.250"
countersink = { diameter = "0.500", angle = "82 deg" }
at.x = { size = "1.000", tol = "±0.005", duty = "locates", with = "caliper" }
at.y = "1"
)")),
              ElementsAre("left end to near edge of sunk (countersink 0.5000) | 0.750 ±0.005"));
}

TEST(Inspect, GivesTheMiddleOfAHoleThatLeans) {
  EXPECT_THAT(inspected(hole_in("oil", R"(how = "drilled"
diameter = "0.250"
leans = { towards = "right end", angle = "30 deg" }
at.x = { size = "1.000", tol = "±0.005", duty = "locates", with = "caliper" }
at.y = "1"
)")),
              ElementsAre("left end to the middle of oil, along x | 1.000 ±0.005"));
}

// A mate known to 0.0005 or so in a hole that may be 0.0001 larger is not sure to go in by hand.
TEST(Fit, DoesNotPromiseWhatIsNotKnown) {
  const std::string text = R"([[reading]]
name = "stud"
what = "outside"
of = "stud"
with = "caliper"
got = ["0.500", "0.500"]
)" + hole_in("bore", R"(how = "bored"
diameter = { size = "0.5006", tol = "±0.0005", with = "fine", duty = "fits", mate = "stud", clearance = "0.0000 to +0.0020" }
at.x = "1"
at.y = "1"
)");
  auto job = judged(job_with(text));
  EXPECT_NEAR(job.inches("fit/bore/least clearance"), 0.0001, 1e-9);
  EXPECT_THAT(list(job, "fit").sections.at(0).table.rows.at(1).at(2), HasSubstr("may be tight"));
}

// 0.6255 to 0.6265 in a hole of 0.6245 to 0.6250, and the other way round.
TEST(Fit, ABushGoesInBeforeItsBoreIsFinished) {
  const auto with = [](const std::string& outside, const std::string& how) {
    return job_with(
        hole_in("boss", R"(how = "bored"
diameter = { size = "0.6245", tol = "+0.0005/-0.0000" }
at.x = "1"
at.y = "1"
)") + "[[feature]]\nname = \"bush\"\nkind = \"bush\"\nin = \"boss\"\nhow = \"" +
        how + "\"\ndiameter = { size = \"" + outside +
        "\", tol = \"±0.0005\" }\nbore = { size = \"0.500\", tol = \"±0.001\" }\nlength = \"1\"\n");
  };
  const auto first_step = [&](const std::string& outside, const std::string& how) {
    auto job = judged(with(outside, how));
    return list(job, "fit").sections.at(0).table.rows.at(1).at(2);
  };
  EXPECT_THAT(first_step("0.6260", "pressed in"), HasSubstr("pressed, 0.0005 to 0.0020 tight"));
  EXPECT_THAT(first_step("0.6250", "pressed in"), HasSubstr("STOP: at the limits it does not stay"));
  EXPECT_THAT(first_step("0.6230", "bonded"), HasSubstr("bonded, 0.0010 to 0.0025 clear"));
  EXPECT_THAT(first_step("0.6250", "bonded"), HasSubstr("STOP: at the limits there is no room"));
}

TEST(Fit, APressIsTold) {
  const auto with = [](const std::string& clearance) {
    return job_with(
        "[[feature]]\nname = \"bore\"\nkind = \"hole\"\nhow = \"bored\"\nat.x = \"1\"\nat.y = \"1\"\n"
        "diameter = { on = \"pin\", clearance = \"" +
        clearance + "\", with = \"fine\" }\n");
  };
  auto pressed = judged(with("-0.0012 to -0.0004"));
  EXPECT_THAT(
      list(pressed, "fit").sections.at(0).table.rows.at(1).at(2),
      "pressed, 0.0004 to 0.0012 tight; the force is NOT KNOWN: what the mate is made of is not told");
  auto between = judged(with("-0.0004 to +0.0004"));
  EXPECT_THAT(list(between, "fit").sections.at(0).table.rows.at(1).at(2),
              HasSubstr("between 0.0004 tight and 0.0004 clear"));
}

// What the checks work out is what the fitting sheet says: the force of the press, the torque of a screw that is tapped here.
TEST(Fit, CarriesTheForceAndTheTorqueOfTheChecks) {
  auto job = judged(job_with(hole_in("boss", R"(how = "bored"
diameter = { size = "0.6245", tol = "+0.0005/-0.0000" }
at.x = "1"
at.y = "1"
)") + R"([[feature]]
name = "bush"
kind = "bush"
in = "boss"
how = "pressed in"
material = "SAE 660"
diameter = { size = "0.6260", tol = "±0.0005" }
bore = { size = "0.500", tol = "±0.001" }
length = "1"
)" + hole_in("screw", R"(how = "tapped"
thread = "5/16-18 UNC-2B"
screw = "5/16-18 x 1 socket head"
through = "1/4"
at.x = "3"
at.y = "1.5"
)")));
  const auto rows = list(job, "fit").sections.at(0).table.rows;
  const double pounds =
      job.ledger.get("check/press/bush/force at most").value / 4448.2216152605;  // mN of a pound
  EXPECT_THAT(rows.at(1).at(2), HasSubstr(fmt::format("up to {:.0f} lbf to push it in", pounds)));
  EXPECT_GT(pounds, 100.0);
  const double inch_pounds = job.ledger.get("check/screw tension/screw/torque").value / 112984.829;
  EXPECT_GT(inch_pounds, 10.0);
  bool told = false;
  for (const auto& row : rows)
    told = told || (row.at(1).find("5/16-18") != std::string::npos &&
                    row.at(2).find("across, to ") != std::string::npos);
  EXPECT_TRUE(told);
}

TEST(LayOut, NamesStockToolsAndInstruments) {
  auto job =
      judged(job_with(std::string(kFeatures) +
                      setup_with("[[setup.do]]\nmake = \"bore\"\nwith = [\"spot\", \"boring head\"]\n")));
  const route::ListSheet sheet = list(job, "lay out");
  ASSERT_EQ(sheet.sections.size(), 4U);  // no screws
  EXPECT_THAT(sheet.sections[0].table.rows,
              ElementsAre(ElementsAre("the part", "1018 cold drawn", "block 1 x 3", "4", "")));
  EXPECT_THAT(sheet.sections[1].ticks,
              ElementsAre("vise, parallels 1-1/2 x 1/8", "edge finder", "spot", "boring head"));
  EXPECT_THAT(sheet.sections[2].ticks, testing::Contains("dial indicator and its stand"));
  EXPECT_THAT(sheet.sections[3].ticks, ElementsAre("fine", "caliper"));  // in the order of the features
}

}  // namespace
}  // namespace sparewright
