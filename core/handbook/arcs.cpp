#include "core/handbook/arcs.hpp"

#include <algorithm>
#include <optional>

#include <fmt/format.h>

namespace sparewright::handbook {
namespace {

using quantity::Coordinate;
using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

struct Point {
  double x = 0.0;
  double y = 0.0;
};

Point operator-(Point a, Point b) {
  return {a.x - b.x, a.y - b.y};
}
double cross(Point a, Point b) {
  return a.x * b.y - a.y * b.x;
}

// What a touch's error along its radius does. The centre (x, y) and the radius r answer the three errors e_i by
// u_i . (x, y) + r = e_i, u_i being the directions from the centre to the touches; by Cramer's rule the column of touch i
// is the cross of the other two, u_j - u_k turned a right angle, over the determinant.
struct Magnified {
  double centre = 0.0;
  double radius = 0.0;
};
std::optional<Magnified> magnified(const std::array<Point, 3>& u) {
  const double determinant = cross(u[1] - u[0], u[2] - u[0]);
  if (!(std::abs(determinant) > 1.0 / kMostTouchMagnified / kMostTouchMagnified)) return std::nullopt;
  std::array<Point, 3> centre_by;
  Magnified out;
  for (std::size_t i = 0; i < 3; ++i) {
    const Point& a = u.at((i + 1) % 3);
    const Point& b = u.at((i + 2) % 3);
    centre_by.at(i) = {(a.y - b.y) / determinant, (b.x - a.x) / determinant};
    out.radius += std::abs(cross(a, b) / determinant);
  }
  // the longest of the sums with either sign for each touch
  for (const double second : {1.0, -1.0}) {
    for (const double third : {1.0, -1.0}) {
      out.centre =
          std::max(out.centre, std::hypot(centre_by[0].x + second * centre_by[1].x + third * centre_by[2].x,
                                          centre_by[0].y + second * centre_by[1].y + third * centre_by[2].y));
    }
  }
  if (out.centre > kMostTouchMagnified || out.radius > kMostTouchMagnified) return std::nullopt;
  return out;
}

tl::unexpected<base::Failure> too_few() {
  return base::fail(base::Code::kReadingsTooFew, "",
                    "three touches spread well round, best a third of a turn apart", "the circle");
}

}  // namespace

base::Result<CircleFromTouches> circle_from_touches(const std::array<Touch, 3>& touches, Diameter tip,
                                                    TouchedSide side) {
  if (!(tip >= Diameter())) {
    return base::fail(base::Code::kValueNotAccepted, fmt::format("{:.6g} mm", tip.in(unit::millimetre)),
                      "0 mm (a point) or more", "the diameter of the tip");
  }
  std::array<Point, 3> at;
  for (std::size_t i = 0; i < 3; ++i)
    at.at(i) = {(touches.at(i).x - touches[0].x).base(), (touches.at(i).y - touches[0].y).base()};
  const Point a = at[1];
  const Point b = at[2];
  const double twice_area = cross(a, b);
  if (twice_area == 0.0 || !std::isfinite(twice_area)) return too_few();
  const double a_sq = a.x * a.x + a.y * a.y;
  const double b_sq = b.x * b.x + b.y * b.y;
  const Point centre{(b.y * a_sq - a.y * b_sq) / (2.0 * twice_area),
                     (a.x * b_sq - b.x * a_sq) / (2.0 * twice_area)};
  const double path_mm = std::hypot(centre.x, centre.y);
  std::array<Point, 3> directions;
  for (std::size_t i = 0; i < 3; ++i)
    directions.at(i) = {(at.at(i).x - centre.x) / path_mm, (at.at(i).y - centre.y) / path_mm};
  const auto errors = magnified(directions);
  if (!errors) return too_few();
  const double tip_mm = tip.base() / 2.0;
  if (side == TouchedSide::kBoss && tip_mm >= path_mm) {
    return base::fail(base::Code::kValueNotAccepted, fmt::format("{:.6g} mm", tip.in(unit::millimetre)),
                      fmt::format("less than {:.6g} mm, the circle its centre was on", 2.0 * path_mm),
                      "the diameter of the tip");
  }
  CircleFromTouches out;
  out.x = touches[0].x + Length::of(centre.x, unit::millimetre);
  out.y = touches[0].y + Length::of(centre.y, unit::millimetre);
  out.diameter = Diameter::of(2.0 * (side == TouchedSide::kHole ? path_mm + tip_mm : path_mm - tip_mm),
                              unit::millimetre);
  out.centre_per_touch = errors->centre;
  out.diameter_per_touch = 2.0 * errors->radius;
  return out;
}

}  // namespace sparewright::handbook
