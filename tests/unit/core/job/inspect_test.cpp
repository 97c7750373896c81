// The inspection sheet and the drawing of the finished part: only what can still be found on it, and as it can be touched.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/route/list_sheet.hpp"
#include "hand_work.hpp"
#include "lathe_job.hpp"
#include "part_text.hpp"

namespace sparewright {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::Not;
using tests::judged;

// What is measured, and what it must show; all sections.
std::vector<std::string> inspected(tests::Judged& job) {
  std::vector<std::string> rows;
  const auto sheet = job.ledger.value<route::ListSheet>("inspect/sheet");
  if (!sheet) return rows;
  for (const auto& section : sheet->sections) {
    for (const auto& row : section.table.rows)
      rows.push_back(row[1] + " | " + row[2]);
  }
  return rows;
}

std::string flat(const std::string& name, const std::string& side, const std::string& leaves) {
  return "[[feature]]\nname = \"" + name + "\"\nkind = \"flat\"\nside = \"" + side +
         "\"\nleaves = " + leaves + "\n";
}

// 80 long: faced to 79 on the right, parted off at 60 and faced there to 59.5.
TEST(Inspect, LeavesOutWhatWasCutAwayAgain) {
  auto job =
      judged(tests::lathe_job(
                 flat("first face", "right end", "\"79\"") +
                     "[[feature]]\nname = \"stub\"\nkind = \"chucking piece\"\nside = \"left end\"\nlength = "
                     "\"20\"\n" +
                     flat("second face", "left end",
                          R"({ size = "58", tol = "±0.05", duty = "fits", with = "micrometer 25-50" })"),
                 tests::lathe_work("first face", "\"R0.8\"")),
             tests::lathe_shop());
  const auto rows = inspected(job);
  EXPECT_THAT(rows, Contains(HasSubstr("second face, leaves | 57.950")));
  EXPECT_THAT(rows, Not(Contains(HasSubstr("first face"))));
  EXPECT_THAT(rows, Not(Contains(HasSubstr("stub"))));
}

TEST(Inspect, KeepsAFaceThatNothingIsCutFromAgain) {
  auto job = judged(tests::plate() + flat("skim", "top", "\"19\"") + flat("end", "right end", "\"98\"") +
                    "[[feature]]\nname = \"seat\"\nkind = \"hole\"\nhow = \"bored\"\nat.x = \"30\"\nat.y = "
                    "\"30\"\ndiameter = { size = \"20\", tol = \"H7\", duty = \"fits\", with = \"fine\" }\n");
  EXPECT_THAT(inspected(job), Contains("skim, leaves | 18.75-19.25"));
  EXPECT_THAT(inspected(job), Contains("end, leaves | 97.75-98.25"));
}

// A bush of bore 10 in a hole of 12, 30 from both sides: 30 less 5. Its outside and the hole are hidden once it is in.
std::string bushed(const std::string& setup) {
  return tests::plate() +
         "[[feature]]\nname = \"hub\"\nkind = \"hole\"\nhow = \"reamed\"\n"
         "at.x = { size = \"30\", tol = \"±0.1\", duty = \"locates\", with = \"caliper\" }\nat.y = \"30\"\n"
         "diameter = { size = \"12\", tol = \"H7\", duty = \"fits\", with = \"caliper\" }\n" +
         tests::form("bush",
                     "in = \"hub\"\nhow = \"pressed in\"\ndiameter = { size = \"12\", tol = \"s6\", duty = "
                     "\"fits\", with = \"caliper\" }\nlength = \"20\"\nbore = \"10\"") +
         setup;
}

TEST(Inspect, TouchesTheBushWhereItIsIn) {
  auto in =
      judged(bushed(tests::hand_setup(10, "bench", "top", tests::step("it", "\"press\", \"reamer 10\""))),
             tests::hand_shop());
  const auto rows = inspected(in);
  EXPECT_THAT(rows, Contains("left end to near edge of hub (bush 10.000) | 25.00 ±0.10"));
  EXPECT_THAT(rows, Not(Contains(HasSubstr("hub, top and bottom"))));
  EXPECT_THAT(rows, Not(Contains(HasSubstr("it | "))));
  auto apart = judged(bushed(""), tests::hand_shop());
  EXPECT_THAT(inspected(apart), Contains(HasSubstr("hub, top and bottom, two ways")));
  EXPECT_THAT(inspected(apart), Contains(HasSubstr("it | ")));
}

// Six holes of 5 on a circle of 40 round a bore of 20: 20 - 2.5 - 10 to its edge, and from one to the next a chord of
// 40 sin 30 = 20, less 5. The circle is good to 0.25 on diameter, the angle to 1 degree: 20 x 0.01745 = 0.349.
TEST(Inspect, MeasuresABoltCircleFromEdgeToEdge) {
  auto job = judged(
      tests::plate() +
      "[[feature]]\nname = \"bore\"\nkind = \"hole\"\nhow = \"bored\"\nat.x = \"50\"\nat.y = \"30\"\n"
      "diameter = { size = \"20\", tol = \"±0.1\" }\n"
      "[[feature]]\nname = \"seat\"\nkind = \"hole\"\nhow = \"drilled\"\nat.x = \"90\"\nat.y = \"30\"\n"
      "diameter = { size = \"8\", tol = \"±0.05\", duty = \"fits\", with = \"fine\" }\n"
      "[[feature]]\nname = \"bolts\"\nkind = \"hole\"\nhow = \"drilled\"\ninto = \"underside\"\ndiameter = "
      "\"5\"\nbolt_circle = { around = \"bore\", diameter = \"40\", count = 6 }\n");
  const auto rows = inspected(job);
  EXPECT_THAT(rows, Contains(HasSubstr("nearest edges, bore (20.000) and bolts 1 (5.000) | 7.50 ±0.12")));
  EXPECT_THAT(rows, Contains(HasSubstr("nearest edges, bolts 1 (5.000) and bolts 2 (5.000) | 15.00 ±0.34")));
  EXPECT_THAT(rows, Not(Contains(HasSubstr("degrees | "))));
  EXPECT_THAT(rows, Not(Contains(HasSubstr("along y"))));
}

}  // namespace
}  // namespace sparewright
