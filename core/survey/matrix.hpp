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

// Sum of products. Equal lengths.
[[nodiscard]] inline double dot(std::span<const double> a, std::span<const double> b) {
  double sum = 0.0;
  for (std::size_t i = 0; i < a.size(); ++i)
    sum += a[i] * b[i];
  return sum;
}

}  // namespace sparewright::survey
