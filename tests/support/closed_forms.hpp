// Pieces of metal whose volume, centre and flat faces have a closed form, and parts put together from them.
//
// Source of the forms: any book of mensuration (Machinery's Handbook, "Volumes of Solids"; the circular segment and the
// centroids of half discs there under "Areas of Plane Figures"; Pappus's rule for rings). They are written out here once
// more and know nothing of the product's.
#pragma once

#include <cmath>
#include <numbers>
#include <string>
#include <utility>
#include <vector>

#include "core/shape/cutters.hpp"
#include "shape_samples.hpp"

namespace sparewright::tests {

inline constexpr double kPi = std::numbers::pi;

// A piece of metal there is or, with a negative volume, is not.
struct Piece {
  double volume_mm3 = 0.0;
  shape::Point centre;
};

// The skin in one plane: a point of the plane, the way out of the metal.
struct FlatFace {
  shape::Point on;
  shape::Vector out;
  double area_mm2 = 0.0;
};

struct ClosedForm {
  std::string name;
  shape::Primitive blank;
  std::vector<shape::Cutter> cutters;
  std::vector<Piece> pieces;
  std::vector<FlatFace> faces;
  int lumps = 1;

  [[nodiscard]] double volume_mm3() const {
    double sum = 0.0;
    for (const Piece& piece : pieces)
      sum += piece.volume_mm3;
    return sum;
  }
  [[nodiscard]] shape::Point centre() const {
    shape::Vector moment;
    for (const Piece& piece : pieces)
      moment = moment + piece.volume_mm3 * (piece.centre - shape::Point{});
    return shape::Point{} + (1.0 / volume_mm3()) * moment;
  }
};

inline Piece gone(const Piece& p) {
  return {-p.volume_mm3, p.centre};
}
inline Piece box_piece(const shape::Point& low, const shape::Point& high) {
  const shape::Vector s = high - low;
  return {s.x * s.y * s.z, between(low, high, 0.5)};
}
inline double disc(double d) {
  return kPi / 4 * d * d;
}
inline Piece cylinder_piece(const shape::Point& start, const shape::Vector& axis, double d, double length) {
  return {disc(d) * length, start + (length / 2) * axis};
}
inline Piece cone_piece(const shape::Point& base, const shape::Vector& to_point, double d, double height) {
  return {disc(d) * height / 3, base + (height / 4) * to_point};
}
// Something of one section, carried along for a height.
inline Piece carried(double area_mm2, double height, const shape::Point& middle) {
  return {area_mm2 * height, middle};
}

// A hexagon whose corners are rounded to a nanometre, as the product rounds them: two trapezia beside its middle line.
inline double hexagon(double across_flats) {
  constexpr double kNanometres = 1e6;
  const auto rounded = [](double x) { return std::round(x * kNanometres) / kNanometres; };
  const double side = across_flats / std::sqrt(3.0);
  return across_flats * (rounded(side) + rounded(side / 2));
}

// The segment of a disc above a line `high` over its middle: area, chord, and how high its centroid lies.
struct Segment {
  double area = 0.0;
  double chord = 0.0;
  double centroid = 0.0;
};
inline Segment segment(double radius, double high) {
  const double half = std::acos(high / radius);
  Segment s;
  s.area = radius * radius * (half - std::sin(half) * std::cos(half));
  s.chord = 2 * radius * std::sin(half);
  s.centroid = s.chord * s.chord * s.chord / (12 * s.area);
  return s;
}
// How far the centroid of half a disc lies from its straight side.
inline double half_disc_centroid(double radius) {
  return 4.0 * radius / (3.0 * kPi);
}
// A section carried round an axis, its centroid at that radius.
inline double swept(double area_mm2, double centroid_radius) {
  return 2.0 * kPi * centroid_radius * area_mm2;
}

inline quantity::Angle deg(double count) {
  return quantity::Angle::of(count, quantity::unit::degree);
}

}  // namespace sparewright::tests
