// The centre line that holes are symmetric about, by their middles.
//
// Notation: q the middles about their mean, as complex numbers; m(i) the hole that mirrors hole i (itself, where it is on the
// line). The line at the angle t that makes the sum of |q_m(i) - exp(2it) conj(q_i)|^2 least goes through the mean, and 2t is
// the argument of the sum of q_i q_m(i). Worked out here: the sum is constant less twice the real part of
// exp(2it) conj(sum of q_i q_m(i)).
#pragma once

#include <span>
#include <vector>

#include "core/base/result.hpp"
#include "core/survey/circle_fit.hpp"
#include "core/survey/following_number.hpp"

namespace sparewright::survey {

struct MirrorPattern {
  std::vector<int> mate;               // of each hole, by index; itself on the line
  int lines = 0;                       // centre lines that mirror the holes as well as can be told
  FollowingNumber x, y;                // the mean of the middles: a point of the line
  FollowingNumber angle;               // of the line, from x counterclockwise, over -90 up to 90 degrees
  std::vector<FollowingNumber> along;  // half of what each hole is off its mate's mirror image along the line
  std::vector<FollowingNumber> across;  // and across it
};

// spread: standard deviation of a middle, making included. Of several lines that leave every hole within kMirrored of that, the
// one nearest to x is told. Fails with kReadingsTooFew (fewer than three holes, two at one place), kTooMany, kReadingsDisagree
// (no line does).
[[nodiscard]] base::Result<MirrorPattern> mirror_pattern(std::span<const Point2> middles, double spread);

inline constexpr double kMirrored = 4.0;  // standard deviations; a choice made here, without a source

}  // namespace sparewright::survey
