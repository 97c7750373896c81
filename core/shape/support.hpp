// The farthest points of a primitive, and the box it fits in.
#pragma once

#include "core/shape/primitive.hpp"

namespace sparewright::shape {

// The point of the primitive farthest along the direction (any length but zero). Of several the same one
// always. Precondition: finite, so not a half-space.
[[nodiscard]] Point farthest(const Primitive& primitive, const Vector& direction);

// Ranges along the three axes of some frame.
struct Bounds {
  Point low;
  Point high;

  [[nodiscard]] Vector size() const { return high - low; }
  [[nodiscard]] Point middle() const { return between(low, high, 0.5); }
  [[nodiscard]] bool empty() const { return !(low.x <= high.x && low.y <= high.y && low.z <= high.z); }
  friend bool operator==(const Bounds&, const Bounds&) = default;
};

// The tightest ranges along the axes of `frame` (the part frame unless given). Infinite for a half-space.
[[nodiscard]] Bounds bounds(const Primitive& primitive, const Frame& frame = {});

// What is in both; may be empty.
[[nodiscard]] Bounds common(const Bounds& a, const Bounds& b);

}  // namespace sparewright::shape
