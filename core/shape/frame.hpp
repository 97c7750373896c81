// A frame: an origin and three axes at right angles, right-handed. Also a rigid motion: the one that carries
// the part frame onto it.
#pragma once

#include "core/shape/vector.hpp"

namespace sparewright::shape {

// All geometry that goes into a recipe lies on this grid, so that equal sizes reached by different sums are
// equal.
inline constexpr double kGrid_mm = 1e-6;         // one nanometre; a micrometer reads a thousand times coarser
inline constexpr double kDirectionGrid = 1e-12;  // on the components of an axis: 1e-9 mm at 1 m reach

struct Frame {
  Point origin;
  Vector x{1.0, 0.0, 0.0};
  Vector y{0.0, 1.0, 0.0};
  Vector z{0.0, 0.0, 1.0};

  friend bool operator==(const Frame&, const Frame&) = default;

  [[nodiscard]] static Frame at(const Point& origin);

  // z runs along the given vector (any length, not zero). x is the part axis that z leans to least (X before
  // Y before Z where two are equal), made square to z: along +Z it is the part frame itself.
  [[nodiscard]] static Frame along(const Point& origin, const Vector& z);

  // z as in along; x as near to the given vector as it can be. Precondition: the two are not parallel.
  [[nodiscard]] static Frame along(const Point& origin, const Vector& z, const Vector& x);

  [[nodiscard]] Point to_world(const Point& local) const;
  [[nodiscard]] Vector to_world(const Vector& local) const;
  [[nodiscard]] Point to_local(const Point& world) const;
  [[nodiscard]] Vector to_local(const Vector& world) const;

  // This frame, given in outer's coordinates, in the coordinates outer itself is given in.
  [[nodiscard]] Frame in(const Frame& outer) const;
  // The motion that undoes this one: inverse().in(*this) is the part frame.
  [[nodiscard]] Frame inverse() const;
  // Turned about its own z, x towards y.
  [[nodiscard]] Frame turned(double angle_rad) const;
  // The origin moved by a vector given in this frame.
  [[nodiscard]] Frame shifted(const Vector& local) const;
};

// The nearest multiple of kGrid_mm; never -0.
[[nodiscard]] double snapped(double value_mm);
[[nodiscard]] Point snapped(const Point& point);
// Origin and axes on their grids, the axes made square again.
[[nodiscard]] Frame snapped(const Frame& frame);

}  // namespace sparewright::shape
