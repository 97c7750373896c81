// Which reading is misread, where one is: how far out the one furthest out is, how often sound readings would have one so
// far out, and which other readings may be the one instead.
//
// Each reading is tested alone (Baarda's w with the full covariance; traces.hpp); in sound readings each w is a normal
// number of standard deviation 1, and their correlations are the likenesses of the traces.
// Sources: W. Baarda, 1968, as there. The chance of the largest of correlated normal numbers by drawing under the condition
// that one of them is as large: A. B. Owen, Y. Maximov, M. Chertkov, Importance sampling the union of rare events,
// Electronic Journal of Statistics 13 (2019) 231-254; R. J. Adler, J. H. Blanchet, J. Liu, Annals of Applied Probability
// 22 (2012) 1167-1214 (both from memory).
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "core/survey/traces.hpp"

namespace sparewright::survey {

// The part of sets of sound readings in which some reading is called misread. A choice made here, without a source: once in a
// hundred jobs measured.
inline constexpr double kFalseAlarms = 0.01;

// Where one reading is misread, whatever by, the suspects hold it at least this often. A choice made here, without a source.
inline constexpr double kSuspectsHold = 0.99;

// Two readings cannot be told apart where errors in them leave misfits whose correlation is this close to 1.
inline constexpr double kAlike = 1e-9;

// The reading with the largest odds.
struct AtOdds {
  std::size_t reading = 0;
  std::vector<std::size_t> alike;  // others that explain the misfits as well: nothing tells them apart
  double odds = 0.0;               // of `reading`, never negative
  // How often sound readings would have one at least so far out. Known to kChanceError of itself where the decision
  // hangs on it; elsewhere, and of more than 400 readings, it is an upper bound.
  double chance = 1.0;
  bool suspect = false;  // chance below kFalseAlarms
};

inline constexpr double kChanceError = 0.05;

// None where no reading checks another.
[[nodiscard]] std::optional<AtOdds> find_at_odds(const Traces& traces);

// The readings that may be the misread one, if it is one alone: those an error in which leaves no other reading further out
// than sound readings leave one, kSuspectsHold of the time. The one with the largest odds first. Empty where no error in one
// reading explains the misfits. It does not ask whether any is misread at all: of sound readings nearly all are held.
// Guarantee: the misread reading is held at least kSuspectsHold of the time, however small the error and however alike
// others are (to first order; readings that nothing checks aside).
[[nodiscard]] std::vector<std::size_t> suspects(const Traces& traces);

// The largest odds of misfits v.
[[nodiscard]] double largest_odds(const Traces& traces, std::span<const double> misfit);

// How often sound readings would have one at least so far out, as AtOdds::chance says.
[[nodiscard]] double chance_of_largest(const Traces& traces, double odds);

}  // namespace sparewright::survey
