// A second opinion on misreadings: the likeliest single error, by arithmetic of its own.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>
#include <vector>

#include "shop_networks.hpp"

namespace sparewright::tests {

// The traces of errors worked out once more from the equations at the truth, by means of its own: Cholesky's factor of the
// covariance, columns made square to one another twice (Gram and Schmidt).
class BlunderJudge {
 public:
  explicit BlunderJudge(const ShopSet& set)
      : n_(set.network.readings.size()), covariance_(set.network.covariance), factor_(n_, n_) {
    for (std::size_t i = 0; i < n_; ++i) {
      for (std::size_t j = 0; j <= i; ++j) {
        double sum = covariance_.at(i, j);
        for (std::size_t k = 0; k < j; ++k)
          sum -= factor_.at(i, k) * factor_.at(j, k);
        factor_.at(i, j) = i == j ? std::sqrt(sum) : sum / factor_.at(j, j);
      }
    }
    for (std::size_t j = 0; j < set.slopes.slopes.columns; ++j) {
      std::vector<double> column;
      for (std::size_t i = 0; i < n_; ++i)
        column.push_back(set.slopes.slopes.at(i, j));
      column = without_movable(white(column));
      const double length = std::sqrt(survey::dot(column, column));
      for (double& each : column)
        each /= length;
      movable_.push_back(std::move(column));
    }
    for (std::size_t i = 0; i < n_; ++i) {
      std::vector<double> error(n_, 0.0);
      error[i] = 1.0;
      traces_.push_back(without_movable(white(error)));
    }
  }

  [[nodiscard]] double u(std::size_t i) const { return std::sqrt(covariance_.at(i, i)); }
  [[nodiscard]] double length(std::size_t i) const { return std::sqrt(survey::dot(traces_[i], traces_[i])); }
  [[nodiscard]] bool checked(std::size_t i) const { return length(i) * u(i) > 1e-3; }

  // The part of an error in the reading that shows in its own residual: of 1 - J K, that is S times the traces' products.
  [[nodiscard]] double redundancy(std::size_t i) const {
    double sum = 0.0;
    for (std::size_t k = 0; k < n_; ++k)
      sum += covariance_.at(i, k) * survey::dot(traces_[k], traces_[i]);
    return sum;
  }
  [[nodiscard]] double nearest_rival(std::size_t i) const {
    double most = 0.0;
    for (std::size_t k = 0; k < n_; ++k) {
      if (k != i && checked(k))
        most = std::max(most, std::abs(survey::dot(traces_[i], traces_[k])) / (length(i) * length(k)));
    }
    return most;
  }

  // The misfits of these errors.
  [[nodiscard]] std::vector<double> misfit(const std::vector<double>& errors) const {
    return without_movable(white(errors));
  }
  // The likeliest single error: of any size; or, better still, of a size known in standard uncertainties, either way.
  [[nodiscard]] std::size_t likeliest(const std::vector<double>& misfit, double known_size = 0.0) const {
    std::size_t best = 0;
    double most = -std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < n_; ++i) {
      if (!checked(i)) continue;
      const double along = std::abs(survey::dot(traces_[i], misfit));
      const double size = known_size * u(i);
      const double gained = size > 0.0 ? size * along - size * size * length(i) * length(i) / 2.0
                                       : along * along / (length(i) * length(i)) / 2.0;
      if (gained > most + 1e-9) {
        most = gained;
        best = i;
      }
    }
    return best;
  }
  // How far apart, in standard deviations, the misfits are that these two errors leave.
  [[nodiscard]] double apart(std::size_t a, double error_a, std::size_t b, double error_b) const {
    double squares = 0.0;
    for (std::size_t k = 0; k < n_; ++k) {
      const double difference = error_a * traces_[a][k] - error_b * traces_[b][k];
      squares += difference * difference;
    }
    return std::sqrt(squares);
  }
  [[nodiscard]] bool same(std::size_t a, std::size_t b) const {
    return a == b || std::abs(survey::dot(traces_[a], traces_[b])) >= (1.0 - 1e-9) * length(a) * length(b);
  }

 private:
  [[nodiscard]] std::vector<double> white(std::vector<double> values) const {
    for (std::size_t i = 0; i < n_; ++i) {
      for (std::size_t k = 0; k < i; ++k)
        values[i] -= factor_.at(i, k) * values[k];
      values[i] /= factor_.at(i, i);
    }
    return values;
  }
  [[nodiscard]] std::vector<double> without_movable(std::vector<double> values) const {
    for (int twice = 0; twice < 2; ++twice) {
      for (const auto& column : movable_) {
        const double along = survey::dot(column, values);
        for (std::size_t k = 0; k < n_; ++k)
          values[k] -= along * column[k];
      }
    }
    return values;
  }

  std::size_t n_;
  survey::Matrix covariance_;
  survey::Matrix factor_;
  std::vector<std::vector<double>> movable_;
  std::vector<std::vector<double>> traces_;
};

}  // namespace sparewright::tests
