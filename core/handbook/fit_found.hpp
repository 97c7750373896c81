// Which fit a hole and a shaft were made to, from their measured sizes.
#pragma once

#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/fits.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// A size as measured: it lies within `uncertainty` of `size` to either side, any value as likely as another.
// size > 0, uncertainty >= 0.
struct MeasuredSize {
  quantity::Diameter size;
  quantity::Length uncertainty;
};

// One fit a pair may have been made to.
struct FoundFit {
  Fit fit;
  quantity::Length hole_off;   // how far the measured hole lies outside its limits: + larger, - smaller, 0
                               // within
  quantity::Length shaft_off;  // the same of the shaft
  bool possible = false;       // both may lie within their limits, the uncertainty granted
  bool certain = false;        // both lie within by their whole uncertainty
  double likelihood = 0.0;     // for ordering alone; see fits_found
};

struct FitsFound {
  quantity::Length clearance;    // hole less shaft; negative is interference
  quantity::Length uncertainty;  // of the clearance: both uncertainties added, the worst case
  std::vector<FoundFit> iso286;  // nearest first, at most `most`
  std::vector<FoundFit> ansi_b41;
};

// The nearest fits of ISO 286 (the preferred ones of either basis) and of ANSI B4.1 (every class tabled), at
// nominal sizes near both parts: whole and half millimetres, 8ths to 64ths of an inch.
//
// Order: possible fits before others. Among those the more likely: the share of each uncertainty band within
// the limits over the width of the limits (what is drawn tighter and still fits is better evidence), times
// the step of the nominal sizes (a whole millimetre before a half, 1/8 in before 1/64). The others by how far
// both lie outside, less the uncertainty. A worn pair is found by its unworn part: look at both `off`.
//
// Guarantees: an exact pair at the middle of a fit's limits is found possible. Nothing is said of wear.
// Fails with kSizeNotPositive, and with kOutsideDomain where the two sizes are farther apart than any fit
// tabled (more than 5 % of the hole and 2 mm): they are no pair.
[[nodiscard]] base::Result<FitsFound> fits_found(const MeasuredSize& hole, const MeasuredSize& shaft,
                                                 std::size_t most = 3);

}  // namespace sparewright::handbook
