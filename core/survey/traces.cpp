#include "core/survey/traces.hpp"

#include <algorithm>
#include <cmath>

namespace sparewright::survey {

std::vector<double> Traces::trace(std::size_t reading) const {
  const auto own = white.row(reading);
  const auto follows = along.row(reading);
  std::vector<double> left(own.begin(), own.end());
  for (std::size_t k = 0; k < left.size(); ++k)
    left[k] -= dot(followed.row(k), follows);
  return left;
}

Matrix Traces::all() const {
  Matrix out(white.rows, white.columns);
  for (std::size_t i = 0; i < white.rows; ++i) {
    const std::vector<double> one = trace(i);
    std::copy(one.begin(), one.end(), out.row(i).begin());
  }
  return out;
}

void Traces::find_lengths() {
  lengths.assign(white.rows, 0.0);
  for (std::size_t i = 0; i < white.rows; ++i)
    find_length(i, kCheckedPart);
}

void Traces::find_length(std::size_t reading, double least_part) {
  // Below this part the difference of squares has lost too many figures, and the trace itself is made.
  constexpr double kPlain = 1e-2;
  const double before = dot(white.row(reading), white.row(reading));
  double left = before - dot(along.row(reading), along.row(reading));
  if (left < kPlain * before) {
    const std::vector<double> one = trace(reading);
    left = dot(one, one);
  }
  lengths[reading] = left > least_part * least_part * before ? std::sqrt(left) : 0.0;
}

double Traces::odds(std::size_t reading) const {
  // The misfits lie across what can be followed, so only the trace of W e_i meets them.
  return lengths[reading] > 0.0 ? dot(white.row(reading), misfit) / lengths[reading] : 0.0;
}

}  // namespace sparewright::survey
