#include "core/survey/triangle.hpp"

#include <cmath>
#include <vector>

#include <Eigen/Cholesky>

namespace sparewright::survey {
namespace {

// From this size on a library that goes block by block is faster than plain loops.
constexpr std::size_t kLarge = 100;

using Table = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

Eigen::Map<Table> view(Matrix& m) {
  return {m.cells.data(), static_cast<Eigen::Index>(m.rows), static_cast<Eigen::Index>(m.columns)};
}

bool factor_large(Matrix& table, double least_square) {
  Eigen::Map<Table> all = view(table);
  const Eigen::LLT<Eigen::Ref<Table>> factor(all);  // in place
  return factor.info() == Eigen::Success && all.diagonal().minCoeff() >= std::sqrt(least_square);
}

}  // namespace

bool factor_in_place(Matrix& table, double least_square) {
  if (table.rows >= kLarge) return factor_large(table, least_square);
  std::vector<double> over;  // one over each pivot: a division takes as long as many products
  for (std::size_t i = 0; i < table.rows; ++i) {
    const auto row = table.row(i);
    for (std::size_t j = 0; j < i; ++j)
      row[j] = (row[j] - dot(row.first(j), table.row(j).first(j))) * over[j];
    const double square = row[i] - dot(row.first(i), row.first(i));
    if (!(square >= least_square)) return false;
    row[i] = std::sqrt(square);
    over.push_back(1.0 / row[i]);
  }
  return true;
}

Matrix inverse_of(const Matrix& lower) {
  Matrix inverse(lower.rows, lower.rows);
  if (lower.rows >= kLarge) {
    Matrix from = lower;
    view(inverse).setIdentity();
    view(from).triangularView<Eigen::Lower>().solveInPlace(view(inverse));
    return inverse;
  }
  for (std::size_t i = 0; i < lower.rows; ++i) {
    const auto out = inverse.row(i);
    const auto from = lower.row(i);
    for (std::size_t k = 0; k < i; ++k)
      add_scaled(out.first(k + 1), -from[k], inverse.row(k).first(k + 1));
    const double own = 1.0 / from[i];
    for (std::size_t j = 0; j < i; ++j)
      out[j] *= own;
    out[i] = own;
  }
  return inverse;
}

}  // namespace sparewright::survey
