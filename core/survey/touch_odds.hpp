// Whether touches lie on their form as well as their doubts allow.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/survey/orthogonal_fit.hpp"

namespace sparewright::survey {

// The largest a sound touch's odds should be, once in a thousand (normal distribution, two-sided): the usual limit of this
// test (W. Baarda, A Testing Procedure for Use in Geodetic Networks, 1968; from memory).
inline constexpr double kTouchOddsLimit = 3.29;
// And of all of them together, as often.
inline constexpr double kTouchesAgree = 0.999;

struct TouchOdds {
  std::vector<std::optional<double>>
      odds;            // what a touch lies off, over what that may be; none where it has to be met
  double total = 0.0;  // squares of what they lie off over their doubts
  std::optional<std::size_t> worst;  // the touch with the largest odds, either way; none where none has any
  bool is_alone = false;             // no other has the same

  [[nodiscard]] bool has_misread() const;
  // Those but the worst lie on a form of their own: to first order, and for touches of one doubt.
  [[nodiscard]] bool others_agree(int spare) const;
  // None is out, nor all in sum.
  [[nodiscard]] bool agree(int spare) const;
};

// doubts: standard uncertainty of each touch along its normal.
[[nodiscard]] TouchOdds touch_odds(const OrthogonalFit& fit, const std::vector<double>& doubts);

}  // namespace sparewright::survey
