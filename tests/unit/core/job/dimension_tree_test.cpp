// What each dimension is measured from, and places that cannot be worked out.
#include "core/part/dimension_tree.hpp"

#include <fmt/format.h>
#include <gmock/gmock.h>

#include "judged_job.hpp"

namespace sparewright {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;
using tests::job_with;
using tests::judged;
using tests::troubles_of;

std::string hole(const std::string& name, const std::string& x, const std::string& y) {
  return fmt::format(
      "[[feature]]\nname = \"{}\"\nkind = \"hole\"\nhow = \"drilled\"\ndiameter = \"0.250\"\nat.x = {}\nat.y "
      "= {}\n",
      name, x, y);
}

std::string from(const std::string& other) {
  return fmt::format("{{ size = \"0.500\", from = \"{}\" }}", other);
}

const std::string kStep =
    "[[feature]]\nname = \"step\"\nkind = \"flat\"\nleaves = \"0.800\"\n"
    "region = { along = \"x\", start = \"3.000\", towards = \"right end\" }\n";

const part::TreeDimension* row_of(const std::vector<part::TreeDimension>& rows, const std::string& figure) {
  for (const part::TreeDimension& row : rows) {
    if (row.figure == figure) return &row;
  }
  return nullptr;
}

TEST(DimensionTree, TellsFromWhatToWhat) {
  auto job = judged(job_with("[[feature]]\nname = \"skim\"\nkind = \"flat\"\nleaves = \"0.950\"\n" + kStep +
                             hole("one", "\"1\"", "\"1.5\"") + hole("two", from("one"), from("one")) +
                             hole("three", from("two"), "\"1.5\"") + "depth = \"0.500\"\n"));
  const auto rows = part::dimension_tree(job.job.subject.route.part);
  const auto* two = row_of(rows, "feature/two/x");
  ASSERT_NE(two, nullptr);
  EXPECT_EQ(two->from, "one");
  EXPECT_EQ(two->to, "its middle");
  EXPECT_EQ(two->links, 1);
  EXPECT_EQ(row_of(rows, "feature/three/x")->links, 2);
  EXPECT_EQ(row_of(rows, "feature/three/y")->links, 0);
  EXPECT_EQ(row_of(rows, "feature/one/y")->from, "front");
  EXPECT_EQ(row_of(rows, "feature/three/depth")->from, "top, as skim leaves it");
  EXPECT_EQ(row_of(rows, "feature/step/leaves")->from, "underside");
  EXPECT_EQ(row_of(rows, "feature/step/wall")->from, "left end");
  EXPECT_EQ(row_of(rows, "blank/length")->to, "right end");
}

// The drawing, the list and the metal go by the same numbers.
TEST(DimensionTree, EveryDimensionIsANumberOfTheLedger) {
  auto job =
      judged(job_with(kStep + hole("one", "\"1\"", "\"1.5\"") + hole("two", from("one"), from("back")) +
                      "[[feature]]\nname = \"well\"\nkind = \"pocket\"\nat.x = \"3\"\nat.y = \"1.5\"\n"
                      "length = \"1\"\nwidth = \"1/2\"\ndepth = \"1/4\"\ncorner_radius = \"1/8\"\n"));
  const auto rows = part::dimension_tree(job.job.subject.route.part);
  ASSERT_EQ(rows.size(), 3U + 2U + 2U * 3U + 6U);
  for (const part::TreeDimension& row : rows) {
    for (const std::string& name : {row.figure, row.figure + "/least", row.figure + "/most"})
      EXPECT_TRUE(job.ledger.get(name).known()) << name;
  }
}

TEST(DimensionTree, APlaceFromAFeatureThatHasNoneAlongThatAxisIsToldThere) {
  const std::string troubles =
      troubles_of(job_with(kStep + hole("one", "\"1\"", "\"1.5\"") + hole("two", "\"2\"", from("step"))));
  EXPECT_THAT(troubles, AllOf(HasSubstr("test.job.toml:"), HasSubstr("'y of two from' cannot be 'step'"),
                              HasSubstr("front or back, or what has a place along y: one")));
}

TEST(DimensionTree, AFlatHasAPlaceAcrossItsSideAndAtItsWall) {
  EXPECT_EQ(troubles_of(job_with(kStep + hole("one", from("step"), "\"1.5\""))), "");
  const std::string along_z =
      "[[feature]]\nname = \"side\"\nkind = \"hole\"\nhow = \"drilled\"\ninto = \"front\"\ndiameter = "
      "\"0.125\"\nat.x = \"2\"\nat.z = { size = \"0.400\", from = \"step\", towards = \"underside\" }\n";
  EXPECT_EQ(troubles_of(job_with(kStep + along_z)), "");
}

TEST(DimensionTree, ACircleIsWrittenOutAndToldWhereItIsMeasuredFrom) {
  const std::string text =
      job_with(hole("a", from("c"), "\"1\"") + hole("b", from("a"), "\"1\"") + hole("c", from("b"), "\"1\""));
  const std::string troubles = troubles_of(text);
  EXPECT_THAT(troubles, AllOf(HasSubstr("the place of a depends on itself: a -> c -> b -> a"),
                              HasSubstr("a chain that starts at a side of the work")));
  const auto line =
      1 + std::count(text.begin(), text.begin() + static_cast<long>(text.find("from = \"c\"")), '\n');
  EXPECT_THAT(troubles, HasSubstr(fmt::format("test.job.toml:{}:", line)));
}

TEST(DimensionTree, AFeatureFromItselfIsACircleOfOne) {
  EXPECT_THAT(troubles_of(job_with(hole("a", from("a"), "\"1\""))), HasSubstr("depends on itself: a -> a"));
}

// The hole starts on the step, and the step's wall is measured from the hole.
TEST(DimensionTree, ACircleThroughTheSurfaceAHoleStartsOnIsTold) {
  const std::string step =
      "[[feature]]\nname = \"step\"\nkind = \"flat\"\nleaves = \"0.800\"\n"
      "region = { along = \"x\", start = { size = \"0.5\", from = \"a\" }, towards = \"right end\" }\n";
  EXPECT_THAT(troubles_of(job_with(step + hole("a", "\"1\"", "\"1\""))),
              HasSubstr("the place of step depends on itself: step -> a -> step"));
}

TEST(DimensionTree, AMissingPlaceIsNamed) {
  EXPECT_THAT(
      troubles_of(job_with("[[feature]]\nname = \"a\"\nkind = \"hole\"\nhow = \"drilled\"\ndiameter = "
                           "\"0.25\"\nat.x = \"1\"\n")),
      AllOf(HasSubstr("needs the key 'y'"), Not(HasSubstr("needs the key 'z'"))));
}

}  // namespace
}  // namespace sparewright
