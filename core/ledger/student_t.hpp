// Student's t distribution.
#pragma once

namespace sparewright::ledger {

// The t for which a t-distributed number lies between -t and +t with the probability given.
// probability in (0, 1); degrees_of_freedom > 0, infinite allowed (the normal distribution).
// Accuracy: 1e-9 relative for degrees_of_freedom >= 1 (tests compare with SciPy and JCGM 100:2008, table G.2).
// Source: I_x(a, b) by its continued fraction, DLMF 8.17.22, run by the modified Lentz method; then bisection.
[[nodiscard]] double student_t_two_sided(double probability, double degrees_of_freedom);

// Probability that |t| of that many degrees of freedom is not more than t (t >= 0).
[[nodiscard]] double student_t_inside(double t, double degrees_of_freedom);

}  // namespace sparewright::ledger
