// Weighted least squares over readings that overlap: what each dimension is, how well it is known, and
// whether the readings agree. Pure: plain values in, a report out.
//
// Notation: y readings, S their covariance, f(x) what they should read, J its slopes, W with W S W' = 1.
// x makes (y - f(x))' inverse(S) (y - f(x)) least. Damped Gauss-Newton steps (Levenberg's damping, scaled by
// the columns of W J) from cold_start().
// Sources, named from memory: E. M. Mikhail, F. Ackermann, Observations and Least Squares, 1976 (adjustment with
// full covariance); D. W. Marquardt, SIAM J. 11 (1963) 431-441 (damping); W. Baarda, A Testing Procedure for
// Use in Geodetic Networks, 1968 (redundancy, test of one reading at a time). The forms used were worked out for
// this program and are checked against published networks and SciPy in the tests.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/base/hash.hpp"
#include "core/base/result.hpp"
#include "core/survey/matrix.hpp"
#include "core/survey/network.hpp"

namespace sparewright::survey {

// More than this and the plain n x n tables grow out of hand.
inline constexpr std::size_t kMostReadings = 3000;

// The largest a sound reading's `odds` should be, once in a thousand (normal distribution, two-sided). The
// usual limit of this test (Baarda 1968; from memory).
inline constexpr double kOddsLimit = 3.29;

// The readings as a whole agree where their chi-square is below what it stays under 19 times in 20.
inline constexpr double kAgreeProbability = 0.95;

// A reading is checked by the others where an error in it would leave at least this part of itself in the
// misfits.
inline constexpr double kCheckedPart = 1e-4;
// What is said to be exact is far finer than what it is checked by: for it this part is enough.
inline constexpr double kCheckedExactPart = 1e-7;

// What a reading puts into an unknown counts as rounding below this part of what the weightiest puts in.
inline constexpr double kFollowNoise = 1e-10;

// Two readings cannot be told apart where errors in them leave misfits whose correlation is this close to 1.
inline constexpr double kAlike = 1e-9;

// What the readings say of one unknown.
struct Found {
  std::string name;
  bool fixed = false;  // the readings fix it; where not, nothing below means anything
  double value = 0.0;  // base unit of its kind
  double u = 0.0;      // standard uncertainty, from the covariance given (not scaled by how well they agree)
  bool checked = false;                         // an error in any reading it hangs on would show in another
  std::vector<std::size_t> unchecked_readings;  // those it hangs on that no other reading checks
};

// What became of one reading.
struct Fit {
  std::string name;
  double fitted = 0.0;                 // what it should read, f(x)
  double residual = 0.0;               // the reading less that
  double residual_u = 0.0;             // standard uncertainty of the residual; 0 where it must come out 0
  std::optional<double> standardised;  // residual / residual_u, where that is not 0
  double redundancy = 0.0;             // the part of an error in it that shows in its own residual
  bool checked = false;                // an error in it would show
  // How many standard uncertainties the reading is out from what the others say of it; where it is checked.
  // It is the standardised residual where the readings are independent, and the sharper test where they are
  // not: with no other error, the misread reading has the largest.
  std::optional<double> odds;
  std::optional<double> error;  // by what the others say: reading less true, base unit; where checked
};

// Unknowns that hang together and are not fixed.
struct Gap {
  std::vector<std::size_t> unknowns;
  std::size_t readings_wanted = 1;  // so many more, of any of them
};

// The reading with the largest odds.
struct AtOdds {
  std::size_t reading = 0;
  std::vector<std::size_t> alike;  // others that explain the misfits as well: nothing tells them apart
  double odds = 0.0;               // of `reading`, never negative
  bool suspect = false;            // odds above kOddsLimit
};

struct Adjustment {
  std::vector<Found> unknowns;  // in the order of the network
  std::vector<Fit> readings;    // in the order of the network
  // unknowns x readings: how each unknown follows each reading, to first order; 0 where it is not fixed. What
  // is only rounding (below kFollowNoise of the weightiest reading) is 0.
  Matrix slopes;
  Matrix covariance;       // of the unknowns; 0 where not fixed
  Matrix equation_slopes;  // readings x unknowns: how what each should read follows each unknown
  double chi_square = 0.0;
  int degrees_of_freedom = 0;     // readings more than needed
  double chi_square_limit = 0.0;  // 0 where there are no degrees of freedom
  std::vector<Gap> gaps;
  Matrix gap_directions;          // unknowns x how many: ways the unknowns can move that no reading feels
  std::optional<AtOdds> at_odds;  // none where no reading checks another
  int steps = 0;                  // taken by the iteration
  bool mended = false;            // the covariance left a reading nothing of its own; see kOwnPart

  [[nodiscard]] bool agree() const { return degrees_of_freedom == 0 || chi_square <= chi_square_limit; }
};

// Guarantees
//   1. Starts cold: the same network gives the same bits. Reordering the readings moves values by less than
//      kAdjustError of their standard uncertainty.
//   2. An unknown is named not fixed exactly where some direction no reading feels moves it.
//   3. The redundancies sum to degrees_of_freedom.
//   4. One more reading never raises the standard uncertainty of any unknown (equations linear).
// Degenerate: no readings: every unknown is a gap. As many readings as unknowns: no odds, chi-square 0.
// Assumes: errors small against the bends of the equations; S right. Do not use for worn places
// (measure_up.hpp does).
// Fails with kNameUnknown, kTooMany (over kMostReadings), kDividesByZero or kOutsideDomain (an equation that
// cannot be worked out even at the start), kReadingsDisagree (no sizes come near the readings: the iteration
// does not settle).
[[nodiscard]] base::Result<Adjustment> adjust(const Network& network);

inline constexpr double kAdjustError = 1e-6;

// Equal where the reports are, bit for bit.
[[nodiscard]] base::Fingerprint fingerprint(const Adjustment& adjustment);

}  // namespace sparewright::survey
