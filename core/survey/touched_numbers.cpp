#include "core/survey/touched_numbers.hpp"

#include <cmath>
#include <utility>

#include "core/survey/circle_fit.hpp"
#include "core/survey/flat_fit.hpp"

namespace sparewright::survey {
namespace {

using base::Result;

std::vector<double> times(std::span<const double> row, double factor) {
  std::vector<double> out(row.begin(), row.end());
  for (double& value : out)
    value *= factor;
  return out;
}

Result<TouchedNumbers> circle_numbers(TipSide side, const std::vector<std::vector<double>>& touches,
                                      double tip_diameter) {
  std::vector<Point2> points;
  for (const auto& touch : touches)
    points.push_back({touch[0], touch[1]});
  auto fit = fit_circle(points);
  if (!fit) return base::fail(fit.error());
  // The tip's middle goes round half a tip inside a hole and outside a boss.
  const double sign = side == TipSide::kInside ? 1.0 : -1.0;
  const double radius = fit->radius + sign * tip_diameter / 2.0;
  if (!(radius > 0.0))
    return base::fail(base::Code::kSizeNotPositive, "no larger than the tip that went round it",
                      "a smaller tip, or the side that was touched", "the boss");
  TouchedNumbers out;
  for (const Point2& u : fit->normals)
    out.normals.push_back({u.x, u.y});
  out.arc_rad = fit->arc_rad;
  out.numbers = {{Told::kX, fit->x, times(fit->slopes.row(0), 1.0), 0.0},
                 {Told::kY, fit->y, times(fit->slopes.row(1), 1.0), 0.0},
                 {Told::kDiameter, 2.0 * radius, times(fit->slopes.row(2), 2.0), sign},
                 {Told::kRadius, radius, times(fit->slopes.row(2), 1.0), sign / 2.0}};
  out.fit = std::move(*fit);
  return out;
}

Result<TouchedNumbers> flat_numbers(TouchedForm form, TipSide side,
                                    const std::vector<std::vector<double>>& touches, double tip_diameter) {
  auto fit = fit_flat(touches, axis_of(side));
  if (!fit) return base::fail(fit.error());
  // Along the axis the surface is half a tip times this away from where the tip's middle was.
  double squares = 1.0;
  for (const double rise : fit->rises)
    squares += rise * rise;
  const double length = std::sqrt(squares);
  const double half = (is_upward(side) ? -1.0 : 1.0) * tip_diameter / 2.0;
  TouchedNumbers out;
  out.normals.assign(touches.size(), fit->normal);
  ToldNumber at{Told::kAt, fit->at + half * length, times(fit->slopes.row(0), 1.0),
                (is_upward(side) ? -0.5 : 0.5) * length};
  for (std::size_t k = 0; k < fit->rises.size(); ++k) {
    const auto follows = fit->slopes.row(k + 1);
    for (std::size_t i = 0; i < follows.size(); ++i)
      at.follows[i] += half * fit->rises[k] / length * follows[i];
  }
  out.numbers.push_back(std::move(at));
  Touched shape;
  shape.form = form;
  shape.side = side;
  const std::vector<Told> told = told_of(shape);
  for (std::size_t k = 0; k < fit->rises.size(); ++k) {
    const double rise = fit->rises[k];
    out.numbers.push_back(
        {told[k + 1], std::atan(rise), times(fit->slopes.row(k + 1), 1.0 / (1.0 + rise * rise)), 0.0});
  }
  out.fit = std::move(*fit);
  return out;
}

}  // namespace

Result<TouchedNumbers> touched_numbers(TouchedForm form, TipSide side,
                                       const std::vector<std::vector<double>>& touches, double tip_diameter) {
  if (form == TouchedForm::kCircle) return circle_numbers(side, touches, tip_diameter);
  return flat_numbers(form, side, touches, tip_diameter);
}

}  // namespace sparewright::survey
