// The survey once more without what is most at odds: what each dimension hangs on.
//
// Leaving aside, not weighing down: a weight that falls with the misfit (Huber, least absolute misfits) gives sizes whose
// doubt no longer follows from the readings', and does not say which reading it stopped believing. One reading is left
// aside at a time, the one furthest at odds, and the rest adjusted anew (W. Baarda, A Testing Procedure for Use in Geodetic
// Networks, 1968; repeated until the rest agrees, J. J. Kok, On Data Snooping and Multiple Outlier Testing, 1984; both named
// from memory).
#pragma once

#include <cstddef>
#include <vector>

#include "core/survey/measure_up.hpp"
#include "core/survey/network.hpp"

namespace sparewright::survey {

inline constexpr std::size_t kMostLeftAside = 3;

struct LeftAside {
  std::vector<std::size_t> readings;  // in the network given, in the order they were left aside
  MeasuredUp rest;                    // without them; its `used` and `set_aside` count in the network given
};

// Empty where the readings agree and none is a suspect, and where no reading checks another. Otherwise
//   one suspect            one entry: it alone where the rest then agrees, else with the next suspect of the rest, and
//                          so on, three at most, as long as one can be told to be the next
//   several that cannot be told apart   an entry for each of the first three: only one of them is true
// A rest that cannot be adjusted has no entry.
[[nodiscard]] std::vector<LeftAside> left_aside(const Network& network, const MeasuredUp& measured);

}  // namespace sparewright::survey
