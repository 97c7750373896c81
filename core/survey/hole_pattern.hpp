// Patterns of holes from distances between them: which pattern explains the distances best, by odds.
//
// A layout of n holes has distances in classes: on a circle a hole to the k-th one on is D sin(180 deg k / n), k up to n/2;
// in a row k pitches, k up to n - 1. Which two holes a distance was taken between need not be said; each is taken to be
// between two others. For each layout and each way of giving the distances to classes, the size (D or the pitch) is the
// least squares one, and its odds are
//   how often such a layout is met x how many ways the pairs can fall so x what the misfits make of it,
// the size being anywhere in a decade with equal odds by its logarithm (Bayes' rule; the integral over the size by its
// second derivative, exact here since the distances are linear in it).
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/survey/touched.hpp"

namespace sparewright::survey {

inline constexpr int kMostPatternHoles = 24;
inline constexpr std::size_t kMostDistances = 60;

// How often a circle of so many holes is met, before anything is measured: 4, 6, 3 and 8 make up three in four. A guess of
// the trade (common practice), no counted figures.
[[nodiscard]] double how_often_met(HoleLayout layout, int holes);

// That holes are in no pattern of equal spacing at all: a guess like the others.
inline constexpr double kNoPattern = 0.05;

struct PatternGuess {
  HoleLayout layout = HoleLayout::kCircle;
  int holes = 0;
  double size = 0.0;          // circle: its diameter; row: its pitch
  double size_u = 0.0;        // standard uncertainty, from the readings' doubt
  std::vector<int> steps;     // of each distance: so many holes on
  std::vector<double> off;    // each distance less what the pattern makes it
  std::vector<double> off_u;  // what the readings' doubt alone makes of that
  double odds = 0.0;          // 0 to 1, of all patterns tried and of none
};

struct PatternOdds {
  std::vector<PatternGuess> guesses;  // the likeliest first; none below kLeastOdds
  double no_pattern = 0.0;            // odds that none holds
};
inline constexpr double kLeastOdds = 0.001;

// distances: base units, positive. u: standard uncertainty of one reading; made: standard deviation that the holes of a
// pattern were made with, which counts in the choice but not in off_u. count: where the holes were counted.
// Fails with kReadingsTooFew (none), kTooMany, kSizeNotPositive.
[[nodiscard]] base::Result<PatternOdds> pattern_of(HoleLayout layout, std::span<const double> distances,
                                                   double u, double made,
                                                   std::optional<int> count = std::nullopt);

// How a distance of so many steps is called: "a hole to the next", "a hole to the 3rd on", "straight across".
[[nodiscard]] std::string name_of_step(HoleLayout layout, int holes, int steps);

// The distance that tells the first guess from the second, and what each makes it; nothing where no distance does.
struct Deciding {
  std::string distance;
  double by_first = 0.0;
  double by_second = 0.0;
};
[[nodiscard]] std::optional<Deciding> deciding(const PatternGuess& first, const PatternGuess& second,
                                               double u);

// A distance of so many steps in the guess.
[[nodiscard]] double distance_in(const PatternGuess& guess, int steps);

}  // namespace sparewright::survey
