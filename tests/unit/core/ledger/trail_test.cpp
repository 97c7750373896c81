// Where a number comes from, and what a root moves.
#include <cmath>
#include <string>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/ledger/ledger.hpp"
#include "stages.hpp"

namespace sparewright::ledger {
namespace {

using quantity::Kind;
using tests::length;
using tests::size_stage;
using tests::stage;
using tests::sum;

// "name(input, input)", with "..." for what was shown before.
std::string in_words(const Trail& trail) {
  std::string out = trail.figure.name;
  if (trail.shown_before) return out + "...";
  if (trail.inputs.empty()) return out;
  out += "(";
  for (std::size_t i = 0; i < trail.inputs.size(); ++i)
    out += (i > 0 ? ", " : "") + in_words(trail.inputs[i]);
  return out + ")";
}

Ledger job() {
  Ledger ledger;
  ledger.declare({size_stage("a", length(1.0, {{"a", 0.3}})), size_stage("b", length(2.0, {{"b", 0.4}})),
                  size_stage("c", length(4.0, {{"c", 1.2}})),
                  stage("ab",
                        [](Pen& pen) {
                          sum(pen, "x", {"b/size", "a/size"});
                        }),
                  stage("top", [](Pen& pen) {
                    sum(pen, "x", {"ab/x", "c/size", "ab/x"});
                    sum(pen, "y", {"c/size"});
                    sum(pen, "z", {"nobody/size"});
                  })});
  return ledger;
}

TEST(Why, GoesDownToTheRootsInTheOrderOfTheFormulas) {
  Ledger ledger = job();
  EXPECT_EQ(in_words(ledger.why("ab/x")), "ab/x(b/size, a/size)");
  EXPECT_EQ(in_words(ledger.why("a/size")), "a/size");
  const Trail trail = ledger.why("top/x");
  EXPECT_EQ(trail.figure.value, 1.0 + 2.0 + 4.0 + 1.0 + 2.0);
  EXPECT_EQ(trail.inputs.at(1).figure.value, 4.0);
}

TEST(Why, ShowsTheInputsOfAFigureOnce) {
  Ledger ledger = job();
  EXPECT_EQ(in_words(ledger.why("top/x")), "top/x(ab/x(b/size, a/size), c/size, ab/x...)");
  ledger.stage(stage("twice", [](Pen& pen) { sum(pen, "x", {"a/size", "a/size"}); }));
  EXPECT_EQ(in_words(ledger.why("twice/x")), "twice/x(a/size, a/size)");  // a root has no inputs to leave out
}

TEST(Why, OfWhatIsNotThere) {
  Ledger ledger = job();
  EXPECT_EQ(in_words(ledger.why("top/z")), "top/z(nobody/size)");
  EXPECT_FALSE(ledger.why("top/z").inputs.at(0).figure.known());
  EXPECT_EQ(in_words(ledger.why("nobody/size")), "nobody/size");
}

TEST(Why, FollowsNamesAsTheyAreNow) {
  Ledger ledger = job();
  EXPECT_EQ(in_words(ledger.why("ab/x")), "ab/x(b/size, a/size)");
  ledger.stage(stage("b", [](Pen& pen) { sum(pen, "size", {"c/size"}); }));
  EXPECT_EQ(in_words(ledger.why("ab/x")), "ab/x(b/size(c/size), a/size)");
}

TEST(MovedBy, GivesAmountAndPart) {
  Ledger ledger = job();
  // top/x = 2a + 2b + c: shares 0.6, 0.8, 1.2
  const double variance = 0.36 + 0.64 + 1.44;
  const std::vector<Moved> by_a = ledger.moved_by("a/size");
  ASSERT_EQ(by_a.size(), 2U);
  EXPECT_EQ(by_a[0].name, "ab/x");
  EXPECT_DOUBLE_EQ(by_a[0].amount, 0.3);
  EXPECT_DOUBLE_EQ(by_a[0].part, 0.36);
  EXPECT_EQ(by_a[1].name, "top/x");
  EXPECT_DOUBLE_EQ(by_a[1].amount, 0.6);
  EXPECT_DOUBLE_EQ(by_a[1].part, 0.36 / variance);
  const std::vector<Moved> by_c = ledger.moved_by("c/size");
  ASSERT_EQ(by_c.size(), 2U);
  EXPECT_EQ(by_c[1].name, "top/y");
  EXPECT_EQ(by_c[1].part, 1.0);  // exactly: it is the only root
}

TEST(MovedBy, ThePartsOfIndependentRootsAddUpToOne) {
  Ledger ledger = job();
  double parts = 0.0;
  for (const std::string root : {"a/size", "b/size", "c/size"}) {
    for (const Moved& moved : ledger.moved_by(root))
      parts += moved.name == "top/x" ? moved.part : 0.0;
  }
  EXPECT_DOUBLE_EQ(parts, 1.0);
}

TEST(MovedBy, ReachesThroughChoicesThoughTheyHaveNoSlope) {
  Ledger ledger;
  ledger.declare({size_stage("a", length(1.0, {{"a", 0.3}})), stage("s", [](Pen& pen) {
                    const Figure& choice =
                        pen.decide("choice", {.value = 2.0, .inputs = {&pen.ask("a/size")}});
                    pen.work(
                        "after", Kind::kNumber, "", [](auto x) { return 3.0 * x; }, choice);
                    pen.root("other", length(1.0, {{"a", 0.1}}));
                  })});
  const std::vector<Moved> moved = ledger.moved_by("a/size");
  ASSERT_EQ(moved.size(), 2U);  // not the root of its own, though it shares the cause
  EXPECT_EQ(moved[0].name, "s/after");
  EXPECT_EQ(moved[0].amount, 0.0);
  EXPECT_EQ(moved[0].part, 0.0);
}

TEST(MovedBy, NothingWhereThereIsNoSuchRoot) {
  Ledger ledger = job();
  EXPECT_TRUE(ledger.moved_by("nobody/size").empty());
  EXPECT_TRUE(ledger.moved_by("top/x").empty());
}

// One stage may write a long chain of figures by itself: the depth after cut 1, after cut 2, ...
TEST(LongChains, OfFiguresAreNoTroubleForTrails) {
  constexpr int kLinks = 10000;
  Ledger ledger;
  ledger.declare({size_stage("a", length(1.0, {{"a", 0.3}})), stage("s", [](Pen& pen) {
                    const Figure* last = &pen.ask("a/size");
                    for (int i = 0; i < kLinks; ++i) {
                      last = &pen.work(
                          fmt::format("{:05}", i), Kind::kLength, "", [](auto x) { return x; }, *last);
                    }
                  })});
  const Trail trail = ledger.why(fmt::format("s/{:05}", kLinks - 1));
  int depth = 0;
  for (const Trail* at = &trail; !at->inputs.empty(); at = &at->inputs.front())
    ++depth;
  EXPECT_EQ(depth, kLinks);
  EXPECT_EQ(ledger.moved_by("a/size").size(), static_cast<std::size_t>(kLinks));
}

}  // namespace
}  // namespace sparewright::ledger
