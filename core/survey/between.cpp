#include "core/survey/between.hpp"

#include <cmath>
#include <numbers>
#include <vector>

#include <fmt/format.h>

namespace sparewright::survey {
namespace {

using ledger::Figure;
using ledger::Pen;
using quantity::Kind;

constexpr std::string_view kAxes = "xyz";

const Figure& figure_of(const BetweenForm& form, Told told, Pen& pen) {
  return pen.need(touched_path(form.name, told));
}

const Figure& middle_of(const BetweenForm& form, std::size_t axis, Pen& pen) {
  return pen.need(fmt::format("touched/{}/middle {}", form.name, kAxes[axis]));
}

// A point of a form: the middle of a circle, or where a face stands in the middle of its touches. One figure an axis.
std::vector<const Figure*> point_of(const BetweenForm& form, std::size_t axes, Pen& pen) {
  if (form.form == TouchedForm::kCircle)
    return {&figure_of(form, Told::kX, pen), &figure_of(form, Told::kY, pen)};
  std::vector<const Figure*> point;
  for (std::size_t axis = 0; axis < axes; ++axis) {
    const bool own = axis == axis_of(form.side);
    point.push_back(own ? &figure_of(form, Told::kAt, pen) : &middle_of(form, axis, pen));
  }
  return point;
}

// Angles from -180 to 180 degrees.
template <typename Scalar>
Scalar way(const Scalar& dx, const Scalar& dy, double dx_value, double dy_value) {
  using std::atan;
  if (std::abs(dx_value) >= std::abs(dy_value)) {
    const double whole = dx_value >= 0.0 ? 0.0 : dy_value >= 0.0 ? std::numbers::pi : -std::numbers::pi;
    return atan(dy / dx) + Scalar(whole);
  }
  return Scalar(dy_value > 0.0 ? std::numbers::pi / 2.0 : -std::numbers::pi / 2.0) - atan(dx / dy);
}

void write_circles(const BetweenForm& first, const BetweenForm& second, Pen& pen) {
  const Figure& x1 = figure_of(first, Told::kX, pen);
  const Figure& y1 = figure_of(first, Told::kY, pen);
  const Figure& x2 = figure_of(second, Told::kX, pen);
  const Figure& y2 = figure_of(second, Told::kY, pen);
  pen.work(
      "distance", Kind::kLength, "middle to middle",
      [](auto xa, auto ya, auto xb, auto yb) {
        using std::sqrt;
        return sqrt((xb - xa) * (xb - xa) + (yb - ya) * (yb - ya));
      },
      x1, y1, x2, y2);
  const double dx = x2.value - x1.value;
  const double dy = y2.value - y1.value;
  pen.work(
      "angle", Kind::kAngle, "the way from the first to the second, from x counterclockwise",
      [dx, dy](auto xa, auto ya, auto xb, auto yb) { return way(xb - xa, yb - ya, dx, dy); }, x1, y1, x2, y2);
}

// Square from a line, produced, to a point in x and y.
void write_from_line(const BetweenForm& line, const BetweenForm& other, Pen& pen) {
  const std::size_t own = axis_of(line.side);
  const auto point = point_of(other, 2, pen);
  pen.work(
      "distance", Kind::kLength, "square from the line",
      [](auto p, auto q, auto at, auto lean, auto middle) {
        using std::abs;
        using std::cos;
        using std::sin;
        return abs((p - at) * cos(lean) - (q - middle) * sin(lean));
      },
      *point[own], *point[1 - own], figure_of(line, Told::kAt, pen), figure_of(line, Told::kLean, pen),
      middle_of(line, 1 - own, pen));
}

void write_lines(const BetweenForm& first, const BetweenForm& second, Pen& pen) {
  write_from_line(first, second, pen);
  // A face square to x leans clockwise by its lean, one square to y counterclockwise.
  const bool parallel = axis_of(first.side) == axis_of(second.side);
  pen.work(
      "angle", Kind::kAngle, parallel ? "one lean less the other" : "a right angle less both leans",
      [parallel](auto a, auto b) {
        using std::abs;
        return parallel ? abs(a - b) : std::numbers::pi / 2.0 - a - b;
      },
      figure_of(first, Told::kLean, pen), figure_of(second, Told::kLean, pen));
}

constexpr std::array kLeans{Told::kLeanX, Told::kLeanY, Told::kLeanZ};

// Of a plane: its rises on the other axes, as figures of leans.
std::vector<const Figure*> leans_of(const BetweenForm& plane, Pen& pen) {
  std::vector<const Figure*> leans;
  for (std::size_t axis = 0; axis < kLeans.size(); ++axis) {
    if (axis != axis_of(plane.side)) leans.push_back(&figure_of(plane, kLeans.at(axis), pen));
  }
  return leans;
}

void write_plane_distance(const BetweenForm& first, const BetweenForm& second, Pen& pen) {
  const std::size_t own = axis_of(first.side);
  const std::size_t one = own == 0 ? 1 : 0;
  const std::size_t two = own == 2 ? 1 : 2;
  const auto point = point_of(second, 3, pen);
  const auto leans = leans_of(first, pen);
  pen.work(
      "distance", Kind::kLength, "square from the first plane to where the second stands",
      [](auto p, auto q, auto r, auto at, auto lean_q, auto lean_r, auto middle_q, auto middle_r) {
        using std::abs;
        using std::sqrt;
        using std::tan;
        const auto rise_q = tan(lean_q);
        const auto rise_r = tan(lean_r);
        return abs(p - at - rise_q * (q - middle_q) - rise_r * (r - middle_r)) /
               sqrt(1.0 + rise_q * rise_q + rise_r * rise_r);
      },
      *point[own], *point[one], *point[two], figure_of(first, Told::kAt, pen), *leans[0], *leans[1],
      middle_of(first, one, pen), middle_of(first, two, pen));
}

// Of two planes square to different axes u and v, w the third: normals (1, -a, -b) in u, v, w and (-c, 1, -d).
void write_plane_angle(const BetweenForm& first, const BetweenForm& second, Pen& pen) {
  const std::size_t u = axis_of(first.side);
  const std::size_t v = axis_of(second.side);
  const std::size_t w = 3 - u - v;
  const auto lean = [&](const BetweenForm& plane, std::size_t axis) -> const Figure& {
    return figure_of(plane, kLeans.at(axis), pen);
  };
  pen.work(
      "angle", Kind::kAngle, "between the planes, where they stand square 90 deg",
      [](auto a_lean, auto b_lean, auto c_lean, auto d_lean) {
        using std::acos;
        using std::sqrt;
        using std::tan;
        const auto a = tan(a_lean);
        const auto b = tan(b_lean);
        const auto c = tan(c_lean);
        const auto d = tan(d_lean);
        return acos((b * d - a - c) / (sqrt(1.0 + a * a + b * b) * sqrt(1.0 + c * c + d * d)) * -1.0);
      },
      lean(first, v), lean(first, w), lean(second, u), lean(second, w));
}

}  // namespace

std::vector<Told> told_between(const BetweenForm& first, const BetweenForm& second) {
  const bool planes = first.form == TouchedForm::kPlane;
  if (planes != (second.form == TouchedForm::kPlane)) return {};
  if (planes && axis_of(first.side) == axis_of(second.side)) return {Told::kDistance};
  if (planes) return {Told::kAngle};
  if (first.form != second.form) return {Told::kDistance};
  return {Told::kDistance, Told::kAngle};
}

void write_between(const BetweenForm& first, const BetweenForm& second, Pen& pen) {
  if (first.form == TouchedForm::kPlane) {
    if (axis_of(first.side) == axis_of(second.side)) return write_plane_distance(first, second, pen);
    return write_plane_angle(first, second, pen);
  }
  if (first.form == TouchedForm::kLine && second.form == TouchedForm::kLine)
    return write_lines(first, second, pen);
  if (first.form == TouchedForm::kCircle && second.form == TouchedForm::kCircle)
    return write_circles(first, second, pen);
  if (first.form == TouchedForm::kLine) return write_from_line(first, second, pen);
  write_from_line(second, first, pen);
}

}  // namespace sparewright::survey
