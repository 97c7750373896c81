#include "core/survey/whitening.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/survey/triangle.hpp"

namespace sparewright::survey {
namespace {

// One over the standard uncertainties, with a stand-in for those that are nothing.
std::vector<double> weights_of(const Matrix& covariance, bool& mended) {
  std::vector<double> deviations;
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < covariance.rows; ++i) {
    const double deviation = std::sqrt(std::fmax(0.0, covariance.at(i, i)));
    deviations.push_back(deviation);
    if (deviation > 0.0) least = std::fmin(least, deviation);
  }
  const double stand_in = std::isfinite(least) ? kOwnPart * least : 1.0;
  for (double& deviation : deviations) {
    if (deviation > 0.0) continue;
    deviation = stand_in;
    mended = true;
  }
  for (double& deviation : deviations)
    deviation = 1.0 / deviation;
  return deviations;
}

// The readings sorted into groups that have no covariance with one another.
std::vector<Whitening::Group> grouped(const Matrix& covariance) {
  std::vector<Whitening::Group> groups;
  std::vector<char> placed(covariance.rows, 0);
  for (std::size_t first = 0; first < covariance.rows; ++first) {
    if (placed[first] != 0) continue;
    auto& members = groups.emplace_back().readings;
    members.push_back(first);
    placed[first] = 1;
    for (std::size_t at = 0; at < members.size(); ++at) {
      const auto row = covariance.row(members[at]);
      for (std::size_t other = 0; other < row.size(); ++other) {
        if (row[other] == 0.0 || placed[other] != 0) continue;
        placed[other] = 1;
        members.push_back(other);
      }
    }
    std::sort(members.begin(), members.end());
  }
  return groups;
}

// The Cholesky factor of a group's correlation, mended where a reading has nothing of its own.
Matrix factored(const Matrix& covariance, const std::vector<std::size_t>& members,
                const std::vector<double>& weights, bool& mended) {
  const std::size_t n = members.size();
  const auto correlation = [&](double own) {
    Matrix table(n, n);
    for (std::size_t a = 0; a < n; ++a) {
      const auto from = covariance.row(members[a]);
      for (std::size_t b = 0; b < a; ++b)
        table.at(a, b) = from[members[b]] * weights[members[a]] * weights[members[b]];
      table.at(a, a) = own;
    }
    return table;
  };
  Matrix factor = correlation(1.0);
  // A pivot is what a reading has that the readings before it do not share.
  if (factor_in_place(factor, kOwnPart * kOwnPart)) return factor;
  mended = true;
  // n rounding errors may stand against it, so a large network needs a larger part.
  double part =
      std::fmax(kOwnPart * kOwnPart, 16.0 * static_cast<double>(n) * std::numeric_limits<double>::epsilon());
  for (factor = correlation(1.0 + part); !factor_in_place(factor, part / 16.0);
       factor = correlation(1.0 + part))
    part *= 2.0;
  return factor;
}

}  // namespace

Whitening::Whitening(const Matrix& covariance) : groups_(grouped(covariance)) {
  const std::vector<double> weights = weights_of(covariance, mended_);
  for (Group& group : groups_) {
    const std::size_t n = group.readings.size();
    if (n == 1) {
      group.white = Matrix(1, 1);
      group.white.at(0, 0) = weights[group.readings[0]];
      continue;
    }
    group.white = inverse_of(factored(covariance, group.readings, weights, mended_));
    for (std::size_t a = 0; a < n; ++a) {
      const auto row = group.white.row(a);
      for (std::size_t b = 0; b <= a; ++b)
        row[b] *= weights[group.readings[b]];
    }
  }
}

void Whitening::apply(Matrix& rows) const {
  // From the last reading of a group to the first, since each needs those before it as they were.
  for (const Group& group : groups_) {
    for (std::size_t a = group.readings.size(); a-- > 0;) {
      const auto out = rows.row(group.readings[a]);
      const double own = group.white.at(a, a);
      for (double& cell : out)
        cell *= own;
      const auto parts = group.white.row(a);
      const auto before = [&](std::size_t b) { return rows.row(group.readings[b]); };
      std::size_t b = 0;
      for (; b + 1 < a; b += 2)
        add_scaled(out, parts[b], before(b), parts[b + 1], before(b + 1));
      if (b < a) add_scaled(out, parts[b], before(b));
    }
  }
}

}  // namespace sparewright::survey
