// Points of a plane reckoned with as vectors. Used inside this room only.
#pragma once

#include <cmath>

#include "core/shape/outline.hpp"

namespace sparewright::shape {

[[nodiscard]] constexpr FlatPoint operator-(const FlatPoint& a, const FlatPoint& b) {
  return {a.u - b.u, a.v - b.v};
}
[[nodiscard]] constexpr FlatPoint operator+(const FlatPoint& a, const FlatPoint& b) {
  return {a.u + b.u, a.v + b.v};
}
[[nodiscard]] constexpr FlatPoint operator*(double k, const FlatPoint& a) {
  return {k * a.u, k * a.v};
}
[[nodiscard]] constexpr double cross(const FlatPoint& a, const FlatPoint& b) {
  return a.u * b.v - a.v * b.u;
}
[[nodiscard]] constexpr double dot(const FlatPoint& a, const FlatPoint& b) {
  return a.u * b.u + a.v * b.v;
}
[[nodiscard]] inline double length(const FlatPoint& a) {
  return std::sqrt(dot(a, a));  // nothing here is near the ends of the numbers, and hypot is slow
}

}  // namespace sparewright::shape
