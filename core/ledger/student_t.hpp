// Student's t distribution.
#pragma once

namespace sparewright::ledger {

// The t for which a t-distributed number lies between -t and +t with the probability given.
// probability in [0, 1); degrees_of_freedom > 0, infinite allowed (the normal distribution).
// Accuracy: kStudentTError relative for degrees_of_freedom >= 1 and probability <= 0.9999.
[[nodiscard]] double student_t_two_sided(double probability, double degrees_of_freedom);

// Probability that |t| of that many degrees of freedom is not more than t (t >= 0).
// Accuracy: kStudentTError.
[[nodiscard]] double student_t_inside(double t, double degrees_of_freedom);

inline constexpr double kStudentTError = 1e-11;

}  // namespace sparewright::ledger
