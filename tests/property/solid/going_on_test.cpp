// The work after k cuts depends on the first k cuts alone, whatever ways the cuts had to be made in: gone on from there,
// a recipe gives the very solid it gives from scratch. Judged by the bytes of the STEP files.
#include <cstdio>

#include <gtest/gtest.h>

#include "random_shapes.hpp"
#include "solid/make_solid.hpp"
#include "solid/step.hpp"

namespace sparewright::solid {
namespace {

const shape::Vector kSize{60.0, 40.0, 25.0};

std::string step_of(const base::Result<CheckedSolid>& made) {
  return made ? write_step(made->solid, "part").value()
              : "failed: " + made.error().subject + made.error().found;
}

struct Ways {
  int usual = 0;
  int other_seam = 0;
  int fuzzy = 0;
  int other_order = 0;

  void add(const std::vector<CutReport>& cuts) {
    for (const CutReport& cut : cuts) {
      usual += cut.way == Way::kAsUsual ? 1 : 0;
      other_seam += cut.way == Way::kOtherSeam ? 1 : 0;
      fuzzy += cut.way == Way::kFuzzy ? 1 : 0;
      other_order += cut.way == Way::kOtherOrder ? 1 : 0;
    }
  }
};

// Every state on the way, once from the whole recipe and once from its beginning alone, and the end from every state.
void expect_the_same_from_anywhere(const shape::Recipe& recipe, Ways& ways) {
  std::vector<Solid> states;
  const auto whole = make_solid(recipe, std::nullopt, [&](std::size_t, const Solid& work) {
    states.push_back(work);
    return true;
  });
  const std::string bytes = step_of(whole);
  if (whole) ways.add(whole->cuts);
  for (std::size_t cuts = 1; cuts < recipe.cuts().size() && cuts <= states.size(); ++cuts) {
    const Solid& state = states[cuts - 1];
    EXPECT_EQ(step_of(make_solid(recipe.first(cuts))), write_step(state, "part").value()) << cuts;
    EXPECT_EQ(step_of(make_solid(recipe, Begun{state, cuts})), bytes) << cuts;
  }
}

shape::Recipe random_part(int seed, int cutters) {
  tests::Random random(static_cast<std::uint64_t>(seed));
  const auto recipe =
      shape::Recipe::make({"block", shape::Box{{}, kSize}}, tests::grid_cutters(random, cutters, kSize));
  EXPECT_TRUE(recipe);
  return recipe.value();
}

TEST(GoingOn, GivesTheSameBytesFromAnyState) {
  // Found by a search: among the first 400 seeds this alone has a cut, its sixth, that needs another order.
  constexpr int kNeedsAnotherOrder = 367;
  Ways ways;
  for (const int seed : {kNeedsAnotherOrder, 1})
    expect_the_same_from_anywhere(random_part(seed, 8), ways);
  std::printf("cuts: %d as usual, %d other seam, %d fuzzy, %d other order\n", ways.usual, ways.other_seam,
              ways.fuzzy, ways.other_order);
  EXPECT_GT(ways.usual, 0);
  EXPECT_GT(ways.other_order, 0);
}

}  // namespace
}  // namespace sparewright::solid
