// Uncertainty as shares of independent causes.
//
// A figure's standard uncertainty is the norm of its shares; the covariance of two figures is the dot product
// of theirs. One micrometer's zero error behind both a shaft and a bore is one cause: it cancels in their
// difference.
//
// Source: JCGM 100:2008 (GUM), 5.2.2 and annex F.1.2.3 for common causes; G.4.1 for the degrees of freedom.
#pragma once

#include <limits>
#include <vector>

#include "core/base/name.hpp"

namespace sparewright::ledger {

inline constexpr double kManyDegreesOfFreedom = std::numeric_limits<double>::infinity();

// What one cause contributes: slope times the standard uncertainty of the cause, with its sign, in the base
// unit of the figure. degrees_of_freedom says how well that uncertainty itself is known (n - 1 for the
// scatter of n repeats, infinite for a stated limit of error); where two shares of a cause meet, the smaller
// number counts.
struct Share {
  base::Name cause;
  double amount = 0.0;
  double degrees_of_freedom = kManyDegreesOfFreedom;

  friend bool operator==(const Share&, const Share&) = default;
};

// Sorted by cause, one entry a cause, no zero amounts.
using Shares = std::vector<Share>;

// The same shares as Shares are to be: sorted by cause, those of one cause added up, zeros left out.
[[nodiscard]] Shares in_order(Shares shares);

// slope * shares, added to sum. sum is sorted, shares must be; sum stays sorted.
void add_scaled(Shares& sum, const Shares& shares, double slope);

[[nodiscard]] double standard_uncertainty(const Shares& shares);
[[nodiscard]] double covariance(const Shares& a, const Shares& b);

// Effective degrees of freedom by Welch and Satterthwaite (JCGM 100:2008, G.2b). Infinite where every cause
// is well known or there is no uncertainty.
[[nodiscard]] double effective_degrees_of_freedom(const Shares& shares);

// The coverage factor k that holds the truth 19 times in 20: Student's t for the effective degrees of freedom,
// rounded down to a whole number but not below 1 (JCGM 100:2008, G.4.1 and G.4.2). 1.96 where every cause is well known.
[[nodiscard]] double coverage_factor(const Shares& shares);

// The half-width that holds the truth 19 times in 20: k times the standard uncertainty.
[[nodiscard]] double expanded_uncertainty(const Shares& shares);

}  // namespace sparewright::ledger
