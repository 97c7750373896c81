// The half section of a body of revolution: one description of cylinders, cones and drilled holes for every
// algorithm.
#pragma once

#include <array>
#include <span>

#include "core/shape/outline.hpp"
#include "core/shape/primitive.hpp"

namespace sparewright::shape {

// Corners (u = radius, v = local z), from the axis at the start, round the outside, to the axis at the end.
// The body lies left of every edge; the axis itself is no edge. Corners that coincide with their neighbour
// are left out.
class Profile {
 public:
  explicit Profile(const Cylinder& cylinder);
  explicit Profile(const Cone& cone);
  explicit Profile(const DrilledHole& hole);

  [[nodiscard]] std::span<const FlatPoint> corners() const { return {corners_.data(), count_}; }
  [[nodiscard]] double start_mm() const { return corners_.front().v; }
  [[nodiscard]] double end_mm() const { return corners_[count_ - 1].v; }
  [[nodiscard]] double greatest_radius_mm() const;

 private:
  void add(double radius_mm, double z_mm);

  std::array<FlatPoint, 4> corners_{};
  std::size_t count_ = 0;
};

template <typename Shape>
concept Turned = std::constructible_from<Profile, const Shape&>;

}  // namespace sparewright::shape
