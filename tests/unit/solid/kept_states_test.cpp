#include "solid/kept_states.hpp"

#include <gtest/gtest.h>

#include "solid_samples.hpp"

namespace sparewright::solid {
namespace {

using shape::Recipe;

// 16 holes in a row; of another size, another recipe.
Recipe holes(double diameter_mm) {
  std::vector<shape::Cutter> cutters;
  for (int i = 0; i < 16; ++i) {
    cutters.push_back(shape::through_hole("hole", {5.0 + 6.0 * i, 30.0, 20.0}, tests::kDown,
                                          tests::dia(diameter_mm), tests::mm(20.0)));
  }
  return tests::plate(cutters);
}

class Kept : public testing::Test {
 protected:
  // Every state is one and the same solid here: only the bookkeeping is looked at.
  void keep_all(KeptStates& kept, const Recipe& recipe, std::uint64_t request) {
    for (std::size_t cuts = 1; cuts <= recipe.cuts().size(); ++cuts)
      kept.keep(recipe, {any_, cuts}, 10, request);
  }
  static std::vector<std::size_t> cuts_kept(KeptStates& kept, const Recipe& recipe) {
    std::vector<std::size_t> cuts;
    for (std::size_t i = 1; i <= recipe.cuts().size(); ++i) {
      const auto state = kept.longest(recipe.first(i), 0);
      if (state && state->cuts == i) cuts.push_back(i);
    }
    return cuts;
  }

  Solid any_ = tests::solid_of(tests::plate({}));
};

TEST_F(Kept, FindsTheLongestBeginning) {
  KeptStates kept(1000);
  EXPECT_FALSE(kept.longest(holes(3.0), 1));
  kept.keep(holes(3.0), {any_, 2}, 10, 1);
  kept.keep(holes(3.0), {any_, 5}, 10, 1);
  EXPECT_EQ(kept.longest(holes(3.0), 2)->cuts, 5U);
  EXPECT_EQ(kept.longest(holes(3.0).first(4), 2)->cuts, 2U);
  EXPECT_FALSE(kept.longest(holes(3.0).first(1), 2));
  EXPECT_FALSE(kept.longest(holes(3.5), 2));
}

TEST_F(Kept, KeepsNothingTwice) {
  KeptStates kept(1000);
  keep_all(kept, holes(3.0), 1);
  keep_all(kept, holes(3.0), 2);
  EXPECT_EQ(kept.size(), 16U);
  EXPECT_EQ(kept.bytes(), 160U);
}

TEST_F(Kept, ThinsOutWhatDoesNotFitAndKeepsTheEnd) {
  KeptStates kept(90);
  keep_all(kept, holes(3.0), 1);
  EXPECT_EQ(cuts_kept(kept, holes(3.0)), (std::vector<std::size_t>{2, 4, 6, 8, 10, 12, 14, 15, 16}));
  KeptStates few(40);
  keep_all(few, holes(3.0), 1);
  EXPECT_EQ(cuts_kept(few, holes(3.0)), (std::vector<std::size_t>{8, 12, 15, 16}));
  KeptStates one(10);
  keep_all(one, holes(3.0), 1);
  EXPECT_EQ(cuts_kept(one, holes(3.0)), (std::vector<std::size_t>{16}));
}

TEST_F(Kept, TheLeastRecentlyUsedGoFirst) {
  KeptStates kept(320);
  keep_all(kept, holes(3.0), 1);
  keep_all(kept, holes(3.5), 2);
  EXPECT_TRUE(kept.longest(holes(3.0), 3));  // used once more
  keep_all(kept, holes(4.0), 4);
  EXPECT_EQ(cuts_kept(kept, holes(3.0)).size(), 16U);
  EXPECT_EQ(cuts_kept(kept, holes(3.5)).size(), 0U);
  EXPECT_EQ(cuts_kept(kept, holes(4.0)).size(), 16U);
  EXPECT_EQ(kept.bytes(), 320U);
}

TEST_F(Kept, WhatIsLargerThanTheBudgetIsNotKept) {
  KeptStates kept(50);
  kept.keep(holes(3.0), {any_, 16}, 51, 1);
  EXPECT_EQ(kept.size(), 0U);
  EXPECT_EQ(kept.bytes(), 0U);
}

}  // namespace
}  // namespace sparewright::solid
