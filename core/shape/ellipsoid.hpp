// The ellipsoid method: the least of a convex function, with proof, from slopes alone. Slow against methods
// that know more of the function, but it cannot be led astray by corners, ridges or flats, and here it has 3
// or 6 unknowns.
//
// Sources, named from memory: N. Shor, Cybernetics 13 (1977) 94-96; deep cuts as in R. Bland, D. Goldfarb, M. Todd, "The
// ellipsoid method: a survey", Operations Research 29 (1981) 1039-1091, section 4.
#pragma once

#include <array>
#include <cmath>
#include <cstddef>

namespace sparewright::shape {

// Holds every point not yet ruled out: (x - centre)^T P^-1 (x - centre) <= 1.
template <std::size_t N>
class Ellipsoid {
 public:
  using Coordinates = std::array<double, N>;

  Ellipsoid(const Coordinates& centre, double radius) : centre_(centre) {
    for (std::size_t i = 0; i < N; ++i)
      P_[i][i] = radius * radius;
  }

  [[nodiscard]] const Coordinates& centre() const { return centre_; }

  // How far slope * (x - centre) can still fall below 0 among the points that are left.
  [[nodiscard]] double reach(const Coordinates& slope) const {
    const Coordinates p = times(slope);
    double sum = 0.0;
    for (std::size_t i = 0; i < N; ++i)
      sum += slope[i] * p[i];
    return sum > 0.0 ? std::sqrt(sum) : 0.0;
  }

  // Rules out what has slope * (x - centre) > -depth. Nothing is left, and false returned, where depth is the
  // reach.
  bool cut(const Coordinates& slope, double depth) {
    constexpr auto n = static_cast<double>(N);
    const double whole = reach(slope);
    if (!(depth < whole)) return false;
    const double alpha = depth / whole;
    Coordinates step = times(slope);
    for (double& s : step)
      s /= whole;
    const double shrink = n * n / (n * n - 1.0) * (1.0 - alpha * alpha);
    const double flatten = 2.0 * (1.0 + n * alpha) / ((n + 1.0) * (1.0 + alpha));
    for (std::size_t i = 0; i < N; ++i) {
      centre_[i] -= (1.0 + n * alpha) / (n + 1.0) * step[i];
      for (std::size_t j = 0; j <= i; ++j) {
        P_[i][j] = shrink * (P_[i][j] - flatten * step[i] * step[j]);
        P_[j][i] = P_[i][j];
      }
    }
    return true;
  }

 private:
  [[nodiscard]] Coordinates times(const Coordinates& slope) const {
    Coordinates out{};
    for (std::size_t i = 0; i < N; ++i) {
      for (std::size_t j = 0; j < N; ++j)
        out[i] += P_[i][j] * slope[j];
    }
    return out;
  }

  Coordinates centre_;
  std::array<std::array<double, N>, N> P_{};
};

}  // namespace sparewright::shape
