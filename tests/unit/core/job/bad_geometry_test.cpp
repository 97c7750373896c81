// Geometry that cannot be meant: always a message or a verdict that names the feature, never a crash.
#include <numbers>

#include <fmt/format.h>
#include <gmock/gmock.h>

#include "judged_job.hpp"

namespace sparewright {
namespace {

using ledger::State;
using testing::HasSubstr;
using tests::job_with;
using tests::judged;
using tests::troubles_of;

std::string feature(const std::string& name, const std::string& kind, const std::string& rest) {
  return fmt::format("[[feature]]\nname = \"{}\"\nkind = \"{}\"\n{}\n", name, kind, rest);
}

std::string drilled(const std::string& name, const std::string& x, const std::string& y,
                    const std::string& rest = "diameter = \"0.250\"") {
  return feature(name, "hole", fmt::format("how = \"drilled\"\nat.x = {}\nat.y = {}\n{}", x, y, rest));
}

// Whether some verdict says NO of it.
bool is_refused(tests::Judged& job, const std::string& subject) {
  for (const ledger::Verdict& v : job.ledger.verdicts()) {
    if (v.subject == subject && v.state == State::kNo) return true;
  }
  return false;
}

double cubic_inches(tests::Judged& job) {
  return job.ledger.get("part/volume").value / (25.4 * 25.4 * 25.4);
}

TEST(BadGeometry, AFeatureOutsideTheBlank) {
  auto job = judged(job_with(drilled("lost", "\"9\"", "\"1\"")));
  const auto verdict = job.verdict("it cuts metal", "lost");
  EXPECT_EQ(verdict.state, State::kNo);
  EXPECT_THAT(verdict.reason, HasSubstr("outside the blank"));
}

TEST(BadGeometry, AHoleDeeperThanThePart) {
  auto job = judged(job_with(drilled("deep", "\"2\"", "\"1.5\"", "diameter = \"0.250\"\ndepth = \"3\"")));
  EXPECT_TRUE(is_refused(job, "deep"));
  EXPECT_THAT(job.verdict("least wall", "deep").reason, HasSubstr("breaks out at underside"));
}

TEST(BadGeometry, ASlitWiderThanItsHole) {
  auto job = judged(job_with(drilled("bore", "\"2\"", "\"1.5\"") +
                             feature("slit", "slit", "in = \"bore\"\nside = \"left end\"\nwidth = \"0.5\"")));
  // A strip of 2 by 0.5 up to the middle of the hole, and the half of the hole that lies beyond it.
  const double half_hole = std::numbers::pi * 0.125 * 0.125 / 2.0;
  EXPECT_NEAR(cubic_inches(job), 12.0 - 2.0 * 0.5 - half_hole, 1e-3);
}

TEST(BadGeometry, ASlitInAHoleThatIsNotInThePart) {
  auto job = judged(job_with(drilled("bore", "\"9\"", "\"9\"") +
                             feature("slit", "slit", "in = \"bore\"\nside = \"front\"\nwidth = \"0.1\"")));
  EXPECT_TRUE(is_refused(job, "bore"));
  EXPECT_TRUE(is_refused(job, "slit"));
}

TEST(BadGeometry, ATaperOfNoAngle) {
  std::string text = job_with(feature("taper", "taper",
                                      "side = \"left end\"\nsmall_diameter = \"1\"\n"
                                      "large_diameter = \"1\"\nlength = \"2\""),
                              R"({ length = "4", diameter = "2" })");
  const std::string block = "shape = \"block\"";
  auto job = judged(text.replace(text.find(block), block.size(), "shape = \"round bar\""));
  EXPECT_NEAR(cubic_inches(job), std::numbers::pi * (2.0 * 1.0 + 2.0 * 0.25), 1e-2);
}

TEST(BadGeometry, TwoFeaturesInOnePlace) {
  auto job = judged(job_with(drilled("one", "\"2\"", "\"1.5\"") + drilled("same", "\"2\"", "\"1.5\"")));
  EXPECT_TRUE(is_refused(job, "one") || is_refused(job, "same"));
}

TEST(BadGeometry, NothingIsLeft) {
  auto job = judged(job_with(feature("all", "flat", "leaves = \"0.0001\"") +
                             feature("rest", "flat", "side = \"underside\"\nleaves = \"0.00005\"") +
                             drilled("bore", "\"2\"", "\"1.5\"")));
  EXPECT_TRUE(is_refused(job, "rest"));  // 0.005 of doubt is a hundred times what it leaves
  // A sheet of a micrometre with a hole in it, seen only by the rays that go through it.
  EXPECT_NEAR(cubic_inches(job), 4.0 * 3.0 * 0.00005 - std::numbers::pi / 64.0 * 0.00005, 1e-6);
}

TEST(BadGeometry, ABadSizeIsToldWhereItStands) {
  EXPECT_THAT(troubles_of(job_with(drilled("bore", "\"2\"", "\"1.5\"", "diameter = \"0\""))),
              HasSubstr("more than 0"));
  EXPECT_THAT(
      troubles_of(job_with(drilled("bore", "\"2\"", "\"1.5\"", "diameter = \"1/4\"\ndepth = \"-1\""))),
      HasSubstr("more than 0"));
}

TEST(BadGeometry, AChainTooLongIsToldAndNotFollowed) {
  std::string features = drilled("hole 0", "\"0.1\"", "\"1.5\"");
  for (int i = 1; i <= 1000; ++i)
    features += drilled(fmt::format("hole {}", i),
                        fmt::format("{{ size = \"0.001\", from = \"hole {}\" }}", i - 1), "\"1.5\"");
  EXPECT_THAT(troubles_of(job_with(features)), HasSubstr("401 features, each measured from the next"));
}

// Holes of 0.020 in rows 0.070 apart: the walls between them are 0.050, less two places of ±0.005.
std::string rows_of_holes(int count) {
  std::string features;
  for (int i = 0; i < count; ++i)
    features += drilled(fmt::format("hole {}", i), fmt::format("\"{:.3f}\"", 0.200 + 0.070 * (i % 50)),
                        fmt::format("\"{:.3f}\"", 0.100 + 0.070 * static_cast<double>(i / 50)),
                        "diameter = \"0.020 ±0.000\"");
  return job_with(features);
}

TEST(BadGeometry, TwoThousandFeaturesAreWorkedOutWhereTheyAreAsked) {
  auto job = judged(rows_of_holes(2000));
  EXPECT_NEAR(job.inches("check/wall/hole 1234/margin"), 0.050 - 0.010 - 0.0625, 1e-6);
  EXPECT_NEAR(job.inches("part/least wall/thickness"), 0.050, 1e-6);
}

TEST(BadGeometry, EveryOneOfManyFeaturesHasItsVerdict) {
  auto job = judged(rows_of_holes(200));
  std::size_t refused = 0;
  for (const ledger::Verdict& v : job.ledger.verdicts())
    if (v.check == "least wall" && v.state == State::kNo) ++refused;
  EXPECT_EQ(refused, 200U);
}

}  // namespace
}  // namespace sparewright
