// What errors in the readings leave in the misfits. Every test of a misreading, of one reading, of two at once or of a
// cause that many share, is worked out from these in closed form, without solving again.
//
// Notation as in whitening.hpp. P takes off what moving the unknowns can follow; the trace of reading i, t_i = P W e_i, is
// what an error of 1 in it leaves in the whitened misfits v = P W y. Readings less by s_i leave v - sum of s_i t_i.
// Source: W. Baarda, A Testing Procedure for Use in Geodetic Networks, 1968 (from memory); the forms with full covariance
// were worked out for this program.
#pragma once

#include <cstddef>
#include <vector>

#include "core/survey/matrix.hpp"

namespace sparewright::survey {

struct Traces {
  Matrix white;     // readings x n: row i is W e_i
  Matrix followed;  // n x rank: the directions that moving the unknowns can follow; orthonormal
  Matrix along;     // readings x rank: how far W e_i goes along them
  std::vector<double>
      lengths;  // |t_i|: the odds an error of 1 in reading i comes to; 0 where no other checks it
  std::vector<double> misfit;  // v

  void find_lengths();  // from the three tables; kCheckedPart
  // Of one reading, checked where an error leaves at least that part of itself.
  void find_length(std::size_t reading, double least_part);

  // The test of one reading (Baarda's w): its misfit along its trace. 0 where no other checks it.
  [[nodiscard]] double odds(std::size_t reading) const;
  // t_i, and all of them, row after row.
  [[nodiscard]] std::vector<double> trace(std::size_t reading) const;
  [[nodiscard]] Matrix all() const;
};

// A reading is checked by the others where an error in it would leave at least this part of itself in the misfits.
inline constexpr double kCheckedPart = 1e-4;
// What is said to be exact is far finer than what it is checked by: for it this part is enough.
inline constexpr double kCheckedExactPart = 1e-7;

}  // namespace sparewright::survey
