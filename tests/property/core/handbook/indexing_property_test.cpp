// The searches for settings of a dividing head against trying every hole.
#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include <gtest/gtest.h>

#include "core/handbook/compound_indexing.hpp"
#include "core/handbook/differential_indexing.hpp"
#include "property.hpp"

namespace sparewright::handbook {
namespace {

using tests::holds;

IndexPlate random_plate(int circles, int most_apart) {
  IndexPlate plate{"plate", {}};
  int holes = *rc::gen::inRange(3, 16);
  for (int i = 0; i < circles; ++i) {
    plate.circles.push_back(holes);
    holes += *rc::gen::inRange(1, most_apart);
  }
  return plate;
}

TEST(IndexingProperty, PlainFindsEveryExactSettingOrTheNearest) {
  int exact = 0;
  EXPECT_TRUE(holds("plain indexing is what trying every hole finds", [&] {
    const IndexPlate plate = random_plate(5, 12);
    const int worm = *rc::gen::element(40, 60, 90, 5);
    const Ratio part = Ratio::of(1, *rc::gen::inRange(2, 200));
    Ratio least = Ratio::of(1);
    std::size_t settings = 0;  // that are exact
    for (const int circle : plate.circles) {
      for (int holes = 1; holes <= worm * circle; ++holes) {
        const Ratio off = magnitude(Ratio::of(holes, worm * circle) - part);
        if (off < least) least = off;
        settings += off == Ratio() ? 1U : 0U;
      }
    }
    const auto found = plain_indexing({worm, {plate}}, part).value();
    if (settings == 0) {
      RC_ASSERT(magnitude(found[0].moved - part) == least);
      return;
    }
    ++exact;
    const bool whole_turns = (part * Ratio::of(worm)).is_whole();
    RC_ASSERT(found.size() == (whole_turns ? 1U : settings));
    for (const PlainIndexing& one : found)
      RC_ASSERT(one.exact());
  }));
  EXPECT_GT(exact, 40);
}

// The nearest sum of moves on two circles that are both moved, by trying all up to two turns to and fro.
Ratio nearest_by_trying(int a, int b, const Ratio& crank) {
  Ratio least = Ratio::of(1000);
  for (int x = -2 * a; x <= 3 * a; ++x) {
    for (int y = -2 * b; y <= 2 * b; ++y)
      least = std::min(least, magnitude(Ratio::of(x, a) + Ratio::of(y, b) - crank));
  }
  return least;
}

TEST(IndexingProperty, CompoundFindsTheNearestSum) {
  int found_moves = 0;
  EXPECT_TRUE(holds("the nearest move on two circles is what trying every pair of holes finds", [&] {
    const IndexPlate plate = random_plate(2, 14);
    const int a = plate.circles[0];
    const int b = plate.circles[1];
    const Ratio part = Ratio::of(1, *rc::gen::inRange(40, 300));
    const Ratio crank = part * Ratio::of(40);
    const Ratio least = nearest_by_trying(a, b, crank);
    const auto moves = compound_indexing({40, {plate}}, part).value();
    if (moves.empty()) {  // then one circle alone does as well
      const Ratio one_circle =
          std::min(magnitude(Ratio::of((crank * Ratio::of(a)).nearest_whole(), a) - crank),
                   magnitude(Ratio::of((crank * Ratio::of(b)).nearest_whole(), b) - crank));
      RC_ASSERT(one_circle == least);
      return;
    }
    ++found_moves;
    const CompoundIndexing& move = moves[0];
    RC_ASSERT(magnitude(move.crank - crank) == least);
    RC_ASSERT(Ratio::of(move.turns) + Ratio::of(move.first_holes, move.first_circle) +
                  Ratio::of(move.second_holes, move.second_circle) ==
              move.crank);
    RC_ASSERT(move.first_holes > 0 && move.second_holes % move.second_circle != 0);
    // no way to make the same move turns less
    const int first = move.turns * move.first_circle + move.first_holes;
    const Ratio turning =
        Ratio::of(first, move.first_circle) + magnitude(Ratio::of(move.second_holes, move.second_circle));
    for (int x = -3 * a; x <= 3 * a; ++x) {
      const Ratio rest = (move.crank - Ratio::of(x, a)) * Ratio::of(b);
      if (rest.is_whole()) RC_ASSERT(magnitude(Ratio::of(x, a)) + magnitude(rest / Ratio::of(b)) >= turning);
    }
  }));
  EXPECT_GT(found_moves, 150);
}

TEST(IndexingProperty, DifferentialFindsTheNearestGears) {
  int exact = 0;
  EXPECT_TRUE(holds("differential indexing is what trying every hole and every pair of gears finds", [&] {
    const IndexPlate plate = random_plate(2, 10);
    const std::vector<int> gears =
        *rc::gen::container<std::vector<int>>(4, rc::gen::element(24, 28, 32, 40, 44, 48, 56, 64, 72));
    const int divisions = *rc::gen::inRange(30, 200);
    const Ratio part = Ratio::of(1, divisions);
    Ratio least = Ratio::of(1);
    for (const int circle : plate.circles) {
      for (int holes = 1; holes <= 50 * circle; ++holes) {
        const Ratio crank = Ratio::of(holes, circle);
        const Ratio x = Ratio::of(40) - crank / part;
        if (x == Ratio() || magnitude(x) > Ratio::of(kMostPlateTurns)) continue;
        for (std::size_t i = 0; i < 4; ++i) {
          for (std::size_t j = 0; j < 4; ++j) {
            if (i == j) continue;
            // the two gears left over: none, or as a second pair either way round
            std::array<std::size_t, 4> rest{};
            std::size_t count = 0;
            for (std::size_t k = 0; k < 4; ++k) {
              if (k != i && k != j) rest.at(count++) = k;
            }
            const Ratio pair = Ratio::of(gears[i], gears[j]);
            const Ratio second = Ratio::of(gears[rest[0]], gears[rest[1]]);
            for (const Ratio& ratio : {pair, pair * second, pair / second}) {
              const Ratio turns = x > Ratio() ? ratio : -ratio;
              least = std::min(least, magnitude(differential_move(40, crank, turns) - part));
            }
          }
        }
      }
    }
    const auto found = differential_indexing({40, {plate}}, divisions, gears).value();
    RC_ASSERT(found.empty() == (least == Ratio::of(1)));
    if (found.empty()) return;  // no move turns the plate so slowly
    RC_ASSERT(magnitude(found[0].moved - part) == least);
    exact += found[0].exact() ? 1 : 0;
  }));
  EXPECT_GT(exact, 10);
}

}  // namespace
}  // namespace sparewright::handbook
