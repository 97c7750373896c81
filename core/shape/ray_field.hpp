// Fields of parallel rays: the pattern that volumes and centres of gravity are measured with.
//
// Source of the pattern: a Fibonacci lattice, S. Zaremba, "Good lattice points, discrepancy, and numerical
// integration", Annali di Matematica 73 (1966) 293-317, four times with fixed shifts.
#pragma once

#include <array>
#include <cstddef>

#include "core/shape/ray.hpp"
#include "core/shape/support.hpp"

namespace sparewright::shape {

// How many rays a pattern has. Each step takes about four times as long and comes about four times as near.
enum class Effort { kQuick, kUsual, kCareful, kPainstaking };
[[nodiscard]] std::size_t rays_of_pattern(Effort effort);

// So many patterns that know nothing of each other: the scatter of what they find tells the error.
inline constexpr std::size_t kPatterns = 4;

// Parallel rays: the unit square carried over a rectangle, or over a disc about the local z axis.
struct RayField {
  Frame frame;     // the rays run along its z
  FlatPoint low;   // of the rectangle
  FlatPoint size;  // of the rectangle, where radius_mm is 0
  double radius_mm = 0.0;

  [[nodiscard]] double area_mm2() const;
  // s and t from 0 to 1; equal areas of the square go to equal areas of the field.
  [[nodiscard]] Ray ray(double s, double t) const;
};

// One field along each axis of a body's frame, local z first, over what lies within `here` (ranges along those
// axes); a body of revolution that these do not cut short gets a disc there.
[[nodiscard]] std::array<RayField, 3> fields_over(const Primitive& body, const Bounds& here);

// A place in the unit square. No pattern has a ray on an edge, a middle line or another's ray. The same on every run.
// Precondition: pattern < kPatterns, ray < rays_of_pattern(effort).
struct SquarePoint {
  double s = 0.0;
  double t = 0.0;
};
[[nodiscard]] SquarePoint lattice_point(Effort effort, std::size_t pattern, std::size_t ray);

// How far the mean of what the patterns found may lie from the truth, 99 times in 100, by their scatter.
[[nodiscard]] double error_of_mean(const std::array<double, kPatterns>& found);

}  // namespace sparewright::shape
