// A plain table of numbers, row after row, so that the library that decomposes it stays in one file.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace sparewright::survey {

struct Matrix {
  std::size_t rows = 0;
  std::size_t columns = 0;
  std::vector<double> cells;  // rows * columns of them

  Matrix() = default;
  Matrix(std::size_t row_count, std::size_t column_count)
      : rows(row_count), columns(column_count), cells(row_count * column_count, 0.0) {}

  [[nodiscard]] double& at(std::size_t row, std::size_t column) { return cells[row * columns + column]; }
  [[nodiscard]] double at(std::size_t row, std::size_t column) const { return cells[row * columns + column]; }
  [[nodiscard]] std::span<double> row(std::size_t i) {
    return std::span(cells).subspan(i * columns, columns);
  }
  [[nodiscard]] std::span<const double> row(std::size_t i) const {
    return std::span(cells).subspan(i * columns, columns);
  }
};

// Sum of products. Equal lengths. Four sums side by side, so that no addition waits for the one before.
[[nodiscard]] inline double dot(std::span<const double> a, std::span<const double> b) {
  double sum0 = 0.0;
  double sum1 = 0.0;
  double sum2 = 0.0;
  double sum3 = 0.0;
  std::size_t i = 0;
  for (; i + 4 <= a.size(); i += 4) {
    sum0 += a[i] * b[i];
    sum1 += a[i + 1] * b[i + 1];
    sum2 += a[i + 2] * b[i + 2];
    sum3 += a[i + 3] * b[i + 3];
  }
  for (; i < a.size(); ++i)
    sum0 += a[i] * b[i];
  return (sum0 + sum1) + (sum2 + sum3);
}

// to += part * from, of one row or of two in one pass. Equal lengths.
inline void add_scaled(std::span<double> to, double part, std::span<const double> from) {
  for (std::size_t k = 0; k < to.size(); ++k)
    to[k] += part * from[k];
}
inline void add_scaled(std::span<double> to, double part, std::span<const double> from, double other_part,
                       std::span<const double> other) {
  for (std::size_t k = 0; k < to.size(); ++k)
    to[k] += part * from[k] + other_part * other[k];
}

}  // namespace sparewright::survey
