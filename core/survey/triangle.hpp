// Lower triangles of small and large symmetric tables, row by row.
#pragma once

#include "core/survey/matrix.hpp"

namespace sparewright::survey {

// The Cholesky factor of a symmetric table, its lower triangle read and replaced; above it nothing is touched. False, and the
// table of no use, where the square of a pivot is below the least allowed (more than 0).
[[nodiscard]] bool factor_in_place(Matrix& table, double least_square);

// The inverse of a lower triangle with nothing that is 0 along its diagonal.
[[nodiscard]] Matrix inverse_of(const Matrix& lower);

}  // namespace sparewright::survey
