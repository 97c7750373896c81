#include "solid/shelf.hpp"

#include <array>
#include <thread>

#include <gtest/gtest.h>

#include "solid/memory.hpp"
#include "solid/step.hpp"
#include "solid_samples.hpp"

namespace sparewright::solid {
namespace {

using shape::Cutter;
using shape::Recipe;
using tests::bracket_cutters;
using tests::kDown;
using tests::mm;
using tests::plate;

constexpr std::size_t kPlenty_bytes = 256U << 20U;

// The bracket with a last hole of some diameter: the feature under edit.
Recipe edited(double diameter_mm) {
  auto cutters = bracket_cutters();
  cutters.push_back(shape::through_hole("pin", {45.0, 30.0, 20.0}, kDown, tests::dia(diameter_mm), mm(20.0)));
  return plate(cutters);
}

// Any recipe whose last cut leaves no metal.
Recipe cut_away(std::vector<Cutter> cutters) {
  cutters.push_back({"everything", shape::HalfSpace{shape::Frame::at({0.0, 0.0, 30.0})}, shape::Open::kNone});
  return plate(cutters);
}

std::string step_of(const Solid& solid) {
  return write_step(solid, "part").value();
}
std::string step_from_scratch(const Recipe& recipe) {
  return step_of(tests::solid_of(recipe));
}
std::string step_of(const std::shared_future<Shelf::Answer>& answer) {
  const Shelf::Answer& made = answer.get();
  EXPECT_TRUE(made);
  return made ? step_of(*made) : std::string();
}

TEST(Shelf, CutsOnlyWhatIsNew) {
  Shelf shelf(kPlenty_bytes);
  const std::size_t cuts = edited(6.0).cuts().size();
  ASSERT_TRUE(shelf.solid(edited(6.0)).get());
  EXPECT_EQ(shelf.counts().cuts, cuts);
  ASSERT_TRUE(shelf.solid(edited(7.0)).get());
  ASSERT_TRUE(shelf.solid(edited(8.0)).get());
  EXPECT_EQ(shelf.counts().cuts, cuts + 2);
  ASSERT_TRUE(shelf.solid(edited(6.0)).get());
  ASSERT_TRUE(shelf.solid(edited(8.0).first(4)).get());
  EXPECT_EQ(shelf.counts().cuts, cuts + 2);
}

TEST(Shelf, GivesTheVerySolidsThatAreMadeFromScratch) {
  Shelf shelf(kPlenty_bytes);
  for (const double diameter : {6.0, 7.0, 6.5})
    EXPECT_EQ(step_of(shelf.solid(edited(diameter))), step_from_scratch(edited(diameter)));
  EXPECT_EQ(step_of(shelf.solid(edited(7.0).first(5))), step_from_scratch(edited(7.0).first(5)));
  EXPECT_EQ(step_of(shelf.solid(plate({}))), step_from_scratch(plate({})));
}

// The seam of a round blank lies on the solid: it must not depend on how many cuts are to come.
TEST(Shelf, RoundBarsGoOnAsTheyWouldFromScratch) {
  const auto bar = [](double last_mm) {
    std::vector<Cutter> cutters;
    for (const double x : {15.0, 40.0, 65.0}) {
      const double d = x == 65.0 ? last_mm : 8.0;
      cutters.push_back(shape::through_hole("cross", {x, 0.0, 25.0}, kDown, tests::dia(d), mm(50.0)));
    }
    return tests::round_bar(cutters);
  };
  Shelf shelf(kPlenty_bytes);
  ASSERT_TRUE(shelf.solid(bar(10.0).first(1)).get());
  EXPECT_EQ(step_of(shelf.solid(bar(10.0))), step_from_scratch(bar(10.0)));
  EXPECT_EQ(step_of(shelf.solid(bar(12.0))), step_from_scratch(bar(12.0)));
  EXPECT_EQ(shelf.counts().cuts, 4U);
}

TEST(Shelf, GoingOnLeavesTheBeginningAsItWas) {
  Shelf shelf(kPlenty_bytes);
  const Solid before = *shelf.solid(edited(6.0).first(8)).get();
  const std::string bytes = step_of(before);
  for (const double diameter : {5.0, 9.0, 11.0})
    ASSERT_TRUE(shelf.solid(edited(diameter)).get());
  EXPECT_EQ(step_of(before), bytes);
}

TEST(Shelf, StaysWithinItsBudget) {
  const std::size_t one = memory_bytes(tests::solid_of(edited(6.0)));
  const std::string six = step_from_scratch(edited(6.0));
  const std::string seven = step_from_scratch(edited(7.0));
  for (const std::size_t budget : {std::size_t{0}, one / 2, 4 * one}) {
    Shelf shelf(budget);
    for (const double diameter : {6.0, 7.0, 6.0}) {
      EXPECT_EQ(step_of(shelf.solid(edited(diameter))), diameter == 6.0 ? six : seven);
      EXPECT_LE(shelf.counts().kept_bytes, budget);
    }
    if (budget < one) {
      EXPECT_GE(shelf.counts().cuts, 3 + edited(6.0).cuts().size());
    }
  }
}

// Room for two or three states: the work before the last cut is among them, so an edit of the last feature is one cut.
TEST(Shelf, WithLittleRoomAnEditOfTheLastFeatureIsStillOneCut) {
  Shelf shelf(5 * memory_bytes(tests::solid_of(edited(6.0))) / 2);
  ASSERT_TRUE(shelf.solid(edited(6.0)).get());
  const std::uint64_t before = shelf.counts().cuts;
  ASSERT_TRUE(shelf.solid(edited(7.0)).get());
  ASSERT_TRUE(shelf.solid(edited(8.0)).get());
  EXPECT_EQ(shelf.counts().cuts, before + 2);
}

TEST(Shelf, FailsAsFromScratchAndTriesAgain) {
  Shelf shelf(kPlenty_bytes);
  const Recipe recipe = cut_away({bracket_cutters()[1]});
  const auto expected = make_solid(recipe);
  ASSERT_FALSE(expected);
  for (int i = 1; i <= 2; ++i) {
    const Shelf::Answer answer = shelf.solid(recipe).get();
    ASSERT_FALSE(answer);
    EXPECT_EQ(answer.error().code, base::Code::kKernel);
    EXPECT_EQ(answer.error().subject, expected.error().subject);
    EXPECT_EQ(answer.error().found, expected.error().found);
    EXPECT_EQ(shelf.counts().failures, static_cast<std::uint64_t>(i));
  }
  EXPECT_EQ(shelf.counts().cuts, 1U);  // the bore, once; the cut that fails is never kept
  EXPECT_TRUE(shelf.solid(recipe.first(1)).get());
}

TEST(Shelf, ServesSeveralThreadsAndMakesNothingTwice) {
  const std::array<double, 4> diameters{5.0, 6.0, 7.0, 8.0};
  std::array<std::string, 4> expected;
  for (std::size_t i = 0; i < 4; ++i)
    expected[i] = step_from_scratch(edited(diameters[i]));
  Shelf shelf(kPlenty_bytes);
  std::array<std::array<std::string, 4>, 4> got;
  std::vector<std::thread> threads;
  for (std::size_t t = 0; t < 4; ++t) {
    threads.emplace_back([&, t] {
      std::vector<std::shared_future<Shelf::Answer>> answers;
      for (std::size_t i = 0; i < 4; ++i)
        answers.push_back(shelf.solid(edited(diameters[(i + t) % 4])));
      for (std::size_t i = 0; i < 4; ++i)
        got[t][(i + t) % 4] = step_of(answers[i]);
    });
  }
  for (std::thread& thread : threads)
    thread.join();
  for (std::size_t t = 0; t < 4; ++t)
    EXPECT_EQ(got[t], expected);
  const Shelf::Counts counts = shelf.counts();
  EXPECT_EQ(counts.asked, 16U);
  EXPECT_EQ(counts.cuts, edited(5.0).cuts().size() + 3);
  EXPECT_EQ(counts.failures, 0U);
}

TEST(Shelf, WhatIsUnderWayIsShared) {
  Shelf shelf(0);  // nothing is kept, so only sharing can spare the second one its cuts
  const auto first = shelf.solid(edited(6.0));
  const auto second = shelf.solid(edited(6.0));
  ASSERT_TRUE(first.get() && second.get());
  const Shelf::Counts counts = shelf.counts();
  EXPECT_EQ(counts.cuts, (2 - counts.shared) * edited(6.0).cuts().size());
}

TEST(Shelf, ShutsDownWithWorkWaiting) {
  std::vector<std::shared_future<Shelf::Answer>> answers;
  {
    Shelf shelf(kPlenty_bytes);
    for (const double diameter : {5.0, 6.0, 7.0, 8.0})
      answers.push_back(shelf.solid(edited(diameter)));
  }
  int stopped = 0;
  for (const auto& answer : answers) {
    const Shelf::Answer& made = answer.get();
    if (made) continue;
    EXPECT_EQ(made.error().code, base::Code::kStopped);
    ++stopped;
  }
  std::printf("%d of 4 stopped\n", stopped);
}

TEST(Shelf, ShutsDownIdle) {
  const Shelf never_asked(kPlenty_bytes);
  Shelf asked(kPlenty_bytes);
  EXPECT_TRUE(asked.solid(plate({})).get());
}

TEST(MakeSolid, StopsWhereTheWatchSaysSo) {
  std::vector<std::size_t> seen;
  const auto made = make_solid(edited(6.0), std::nullopt, [&](std::size_t cuts, const Solid& work) {
    EXPECT_EQ(work.pieces(), 1);
    seen.push_back(cuts);
    return cuts < 3;
  });
  ASSERT_FALSE(made);
  EXPECT_EQ(made.error().code, base::Code::kStopped);
  EXPECT_EQ(seen, (std::vector<std::size_t>{1, 2, 3}));
}

}  // namespace
}  // namespace sparewright::solid
