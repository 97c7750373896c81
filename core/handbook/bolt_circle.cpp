#include "core/handbook/bolt_circle.hpp"

#include <cmath>
#include <cstdint>
#include <numbers>

#include <fmt/format.h>

namespace sparewright::handbook {
namespace {

using quantity::Angle;
using quantity::Coordinate;
using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

tl::unexpected<base::Failure> bad_count(std::string_view what, std::int64_t found, int least) {
  return base::fail(base::Code::kValueNotAccepted, std::to_string(found),
                    fmt::format("{} to {} holes", least, kMostHolesInPattern), what);
}

tl::unexpected<base::Failure> not_positive(std::string_view what, Length size) {
  return base::fail(base::Code::kSizeNotPositive, fmt::format("{:.6g} mm", size.in(unit::millimetre)),
                    "a length of more than 0 mm", what);
}

}  // namespace

base::Result<std::vector<HolePosition>> bolt_circle(const BoltCircle& circle) {
  if (!(circle.diameter > Diameter()))
    return not_positive("the diameter of the circle", across(circle.diameter));
  if (circle.holes < 1 || circle.holes > kMostHolesInPattern)
    return bad_count("the number of holes", circle.holes, 1);
  const Length radius = reach(half(circle.diameter));
  std::vector<HolePosition> out;
  for (int i = 0; i < circle.holes; ++i) {
    const double angle = circle.first.base() + 2.0 * std::numbers::pi * i / circle.holes;
    out.push_back({i + 1, circle.x + radius * std::cos(angle), circle.y + radius * std::sin(angle)});
  }
  return out;
}

Length chord_between_holes(Diameter diameter, int holes, int apart) {
  return across(diameter) * std::abs(std::sin(std::numbers::pi * apart / holes));
}

base::Result<Diameter> bolt_circle_for_chord(Length chord, int holes) {
  if (!(chord > Length())) return not_positive("the distance of the holes", chord);
  if (holes < 2 || holes > kMostHolesInPattern) return bad_count("the number of holes", holes, 2);
  return as_diameter(chord / std::sin(std::numbers::pi / holes));
}

base::Result<std::vector<HolePosition>> hole_grid(const HoleGrid& grid) {
  const std::int64_t holes = std::int64_t{grid.columns} * grid.rows;
  if (grid.columns < 1 || grid.rows < 1 || holes > kMostHolesInPattern)
    return bad_count("the number of holes", holes, 1);
  if (grid.columns > 1 && !(grid.column_pitch > Length()))
    return not_positive("the distance of the columns", grid.column_pitch);
  if (grid.rows > 1 && !(grid.row_pitch > Length()))
    return not_positive("the distance of the rows", grid.row_pitch);
  const double cosine = std::cos(grid.turned.base());
  const double sine = std::sin(grid.turned.base());
  std::vector<HolePosition> out;
  for (int row = 0; row < grid.rows; ++row) {
    for (int column = 0; column < grid.columns; ++column) {
      const Length along = grid.column_pitch * column;
      const Length up = grid.row_pitch * row;
      out.push_back({row * grid.columns + column + 1, grid.x + (along * cosine - up * sine),
                     grid.y + (along * sine + up * cosine)});
    }
  }
  return out;
}

std::vector<HolePosition> from_datum(const std::vector<HolePosition>& holes, Coordinate x, Coordinate y,
                                     Angle turned) {
  const double cosine = std::cos(turned.base());
  const double sine = std::sin(turned.base());
  std::vector<HolePosition> out;
  for (const HolePosition& hole : holes) {
    const Length along = hole.x - x;
    const Length up = hole.y - y;
    out.push_back({hole.number, Coordinate() + (along * cosine + up * sine),
                   Coordinate() + (up * cosine - along * sine)});
  }
  return out;
}

}  // namespace sparewright::handbook
