// What explains misfits: a usual slip in one reading, a zero that many readings share, or two slips at once. Each is tried
// on the traces in closed form (the hat matrix), so all slips of all readings cost less than one solution; the best three are
// solved again with the readings put right.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/survey/adjust.hpp"
#include "core/survey/slips.hpp"

namespace sparewright::survey {

// A slip in one reading of the network.
struct SlipAt {
  std::size_t reading = 0;
  Slip slip;
  // What the reading, put right, still differs by from what the others say: base unit, and in standard uncertainties.
  double rest = 0.0;
  double rest_odds = 0.0;
};

struct Explanation {
  std::vector<SlipAt> slips;  // one, or two at once; of a shared zero the same for every reading it is in
  std::string zero;           // whose, where it is a shared zero: "caliper 8, outside jaws"
  double zero_error = 0.0;    // of a shared zero: read less true
  double chi_square = 0.0;    // that is left, solved again
  double usual = 0.0;         // natural logarithm of how usual it is

  // Natural logarithm of likelihood times how usual; only differences count.
  [[nodiscard]] double weight() const { return usual - chi_square / 2.0; }
};

// One that weighs so much less (natural logarithm) than the best is out of the question: 1 in 20, a choice made here,
// without a source.
inline constexpr double kOutweighs = 3.0;

// Explanations of what is at odds, the weightiest first, at most three. Empty where none explains it.
//
//   one slip       leaves its reading within kMostRest of what the others say, and no reading at odds
//   a shared zero  of two readings or more: as found, taken off twice or with the wrong sign; or out by any amount, where
//                  that explains plainly more than a misreading of any amount in one reading does
//   two slips      where no one slip, nor a shared zero, explains it; each leaves its reading as above. Only among the
//                  kMostPaired readings furthest out.
// A reading that no other checks explains nothing, nor does a slip so small against the doubt that none would do as well.
// network: as adjusted; read: one for each reading, in its order.
[[nodiscard]] std::vector<Explanation> explanations(const Network& network, const Adjustment& adjustment,
                                                    std::span<const AsRead> read);

// A slip put right leaves a sound reading this many standard uncertainties out once in 370 times (normal distribution).
inline constexpr double kMostRest = 3.0;

inline constexpr std::size_t kMostPaired = 60;

}  // namespace sparewright::survey
