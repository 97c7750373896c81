#include "core/part/sharing.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>

namespace sparewright::part {
namespace {

double metal_at(const SharedFace& face, const shape::Vector& shift) {
  return face.metal_mm - shape::dot(outward(face.side), shift);
}

double metal_at(const SharedHole& hole, const shape::Vector& shift) {
  const shape::Vector off = hole.off + shift;
  const auto axes = axes_in(hole.into);
  return hole.metal_mm - std::hypot(component(off, axes[0]), component(off, axes[1]));
}

// The least of the sides along one axis.
double least_along(const std::vector<SharedFace>& faces, Axis axis, const shape::Vector& shift) {
  double least = std::numeric_limits<double>::infinity();
  for (const SharedFace& face : faces) {
    if (axis_of(face.side) == axis) least = std::min(least, metal_at(face, shift));
  }
  return least;
}

struct Search {
  const std::vector<SharedFace>& faces;
  const std::vector<SharedHole>& holes;
  double reach_mm = 0.0;

  [[nodiscard]] double worth(const shape::Vector& shift) const {
    constexpr double kOpen = 1e-4;  // so little that it decides only what the worst place leaves open
    double sum = least_metal(faces, holes, shift);
    for (const Axis axis : kAxes) {
      const double along = least_along(faces, axis, shift);
      if (std::isfinite(along)) sum += kOpen * along;
    }
    return sum;
  }

  // The best along this axis and the free ones after it; shift is left there.
  double climb(const std::array<bool, 3>& free_axes, std::size_t axis, shape::Vector& shift) const {
    constexpr int kThirds = 30;  // (2/3)^30 of the reach: half a micrometre in 0.1 m
    if (axis == kAxes.size()) return worth(shift);
    if (!free_axes.at(axis)) return climb(free_axes, axis + 1, shift);
    double low = -reach_mm;
    double high = reach_mm;
    const auto at = [&](double place) {
      component(shift, kAxes.at(axis)) = place;
      return climb(free_axes, axis + 1, shift);
    };
    for (int i = 0; i < kThirds; ++i) {
      const double a = low + (high - low) / 3.0;
      const double b = high - (high - low) / 3.0;
      if (at(a) < at(b)) {
        low = a;
      } else {
        high = b;
      }
    }
    return at((low + high) / 2.0);
  }
};

}  // namespace

double least_metal(const std::vector<SharedFace>& faces, const std::vector<SharedHole>& holes,
                   const shape::Vector& shift_mm) {
  double least = std::numeric_limits<double>::infinity();
  for (const SharedFace& face : faces)
    least = std::min(least, metal_at(face, shift_mm));
  for (const SharedHole& hole : holes)
    least = std::min(least, metal_at(hole, shift_mm));
  return least;
}

Sharing best_sharing(const std::vector<SharedFace>& faces, const std::vector<SharedHole>& holes,
                     const std::array<bool, 3>& free_axes) {
  double reach = 0.0;
  for (const SharedFace& face : faces)
    reach += std::abs(face.metal_mm);
  for (const SharedHole& hole : holes)
    reach += std::abs(hole.metal_mm) + shape::length_mm(hole.off);
  const Search search{faces, holes, reach};
  Sharing best;
  search.climb(free_axes, 0, best.shift_mm);
  best.least_mm = least_metal(faces, holes, best.shift_mm);
  return best;
}

}  // namespace sparewright::part
