// Points and vectors in space.
//
// Coordinates of a Point, and of a Vector between two points, are millimetres in the frame its owner names
// (the part frame unless said otherwise). A Vector that is a direction is a pure number of length 1.
#pragma once

#include <cmath>

namespace sparewright::shape {

struct Vector {
  double x = 0.0;
  double y = 0.0;
  double z = 0.0;

  friend bool operator==(const Vector&, const Vector&) = default;
  friend constexpr Vector operator+(const Vector& a, const Vector& b) {
    return {a.x + b.x, a.y + b.y, a.z + b.z};
  }
  friend constexpr Vector operator-(const Vector& a, const Vector& b) {
    return {a.x - b.x, a.y - b.y, a.z - b.z};
  }
  friend constexpr Vector operator-(const Vector& a) { return {-a.x, -a.y, -a.z}; }
  friend constexpr Vector operator*(double k, const Vector& a) { return {k * a.x, k * a.y, k * a.z}; }
};

struct Point {
  double x = 0.0;
  double y = 0.0;
  double z = 0.0;

  friend bool operator==(const Point&, const Point&) = default;
  friend constexpr Vector operator-(const Point& a, const Point& b) {
    return {a.x - b.x, a.y - b.y, a.z - b.z};
  }
  friend constexpr Point operator+(const Point& a, const Vector& b) {
    return {a.x + b.x, a.y + b.y, a.z + b.z};
  }
  friend constexpr Point operator-(const Point& a, const Vector& b) {
    return {a.x - b.x, a.y - b.y, a.z - b.z};
  }
};

[[nodiscard]] constexpr double dot(const Vector& a, const Vector& b) {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

[[nodiscard]] constexpr Vector cross(const Vector& a, const Vector& b) {
  return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}

[[nodiscard]] inline double length_mm(const Vector& a) {
  return std::sqrt(dot(a, a));
}

[[nodiscard]] inline double distance_mm(const Point& a, const Point& b) {
  return length_mm(a - b);
}

// The direction of a. Precondition: a is not zero.
[[nodiscard]] inline Vector direction(const Vector& a) {
  return (1.0 / length_mm(a)) * a;
}

// The point a fraction t of the way from a to b.
[[nodiscard]] constexpr Point between(const Point& a, const Point& b, double t) {
  return a + t * (b - a);
}

}  // namespace sparewright::shape
