// The readings adjusted again and again, each time with other errors drawn from what is known of them: whether the sizes
// and their doubts, which come of straight lines through bent equations, can be trusted.
//
// Source: JCGM 101:2008, clauses 5 to 8 (propagation of distributions by a Monte Carlo method); clauses here and
// below from memory.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/ledger/share.hpp"
#include "core/survey/adjust.hpp"
#include "core/survey/draws.hpp"
#include "core/survey/network.hpp"

namespace sparewright::survey {

// What is drawn: a network, where its adjustment settled, and the causes behind each reading.
struct Drawing {
  const Network* network = nullptr;
  const Adjustment* adjustment = nullptr;
  std::vector<ledger::Shares> causes;  // of each reading
};

struct DrawnSize {
  std::string name;
  Spread spread;  // base unit
};

struct MonteCarlo {
  std::vector<DrawnSize> sizes;  // those that are fixed, in the order of the network
  std::size_t draws = 0;
  std::size_t unsettled = 0;  // draws that came to no answer, left out
};

// The distribution that stands for a cause, of its share's standard uncertainty (JCGM 101:2008, 6.4, table 1):
//   the scatter of repeats or touches                           Student's t, its scale the standard uncertainty; of the
//                                                               parts of one scatter together, for it is one number
//   within stated limits (good to, resolution, zero, ...)       rectangular
//   anything else                                               normal
[[nodiscard]] Distribution distribution_of(const ledger::Share& share);

// A scatter known from fewer says too little: Student's t has no variance below three.
inline constexpr double kFewestDegreesOfFreedom = 2.999;

inline constexpr std::size_t kFewestDraws = 1000;
inline constexpr std::size_t kMostDraws = 10'000'000;

// Same seed, same bits. Each draw is adjusted to the same exactness as adjust(): steps with the slopes where the adjustment
// settled and the misfits where the draw is, until a step moves no size by more than kDrawSettled of its doubt.
// Fails with kTooMany for fewer or more draws than above, with kReadingsTooFew where the readings leave a
// size open, or where a scatter is known from too few.
[[nodiscard]] base::Result<MonteCarlo> monte_carlo(const Drawing& drawing, std::size_t draws,
                                                   std::uint64_t seed);

inline constexpr double kDrawSettled = 1e-7;

}  // namespace sparewright::survey
