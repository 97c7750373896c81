// The chi-square distribution: whether readings agree as well as they should.
#pragma once

namespace sparewright::survey {

// Probability that a chi-square number of that many degrees of freedom (> 0) is not more than x (x >= 0).
// Accuracy: 1e-10 for up to 10,000 degrees of freedom (tests compare with SciPy).
// Source, from memory: the series of the incomplete gamma function, DLMF 8.7.1 (all of its terms are positive, so
// nothing cancels).
[[nodiscard]] double chi_square_below(double x, int degrees_of_freedom);

// The number that a chi-square number stays below with the probability given, in (0, 1); by bisection.
[[nodiscard]] double chi_square_limit(double probability, int degrees_of_freedom);

}  // namespace sparewright::survey
