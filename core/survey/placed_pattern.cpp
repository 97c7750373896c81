#include "core/survey/placed_pattern.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

#include <fmt/format.h>

#include "core/survey/flat_fit.hpp"
#include "core/survey/hole_pattern.hpp"
#include "core/survey/hole_places.hpp"

namespace sparewright::survey {
namespace {

using base::Code;
using base::fail;
using base::Result;

constexpr double kTurn = 2.0 * std::numbers::pi;

FollowingNumber coordinate(std::span<const Point2> middles, std::size_t hole, bool is_y) {
  FollowingNumber out = constant(is_y ? middles[hole].y : middles[hole].x, middles.size());
  out.slopes[2 * hole + (is_y ? 1 : 0)] = 1.0;
  return out;
}
FollowingNumber fitted(double value, std::span<const double> follows, const std::vector<Point2>& normals) {
  FollowingNumber out = constant(value, normals.size());
  for (std::size_t i = 0; i < normals.size(); ++i) {
    out.slopes[2 * i] = follows[i] * normals[i].x;
    out.slopes[2 * i + 1] = follows[i] * normals[i].y;
  }
  return out;
}

// From -180 to 180 degrees.
double folded(double angle) {
  return angle - kTurn * std::round(angle / kTurn);
}

void keep(PlacedPattern& out, const ChosenPlaces& chosen) {
  out.places = chosen.places.count;
  out.place = chosen.places.place;
  out.odds = chosen.odds;
  out.next_places = chosen.next_count;
  out.next_odds = chosen.next_odds;
  out.no_pattern_odds = chosen.no_pattern_odds;
}

Result<PlacedPattern> on_a_circle(std::span<const Point2> middles, double spread) {
  const auto fit = fit_circle(middles);
  if (!fit) return fail(fit.error());
  PlacedPattern out;
  out.x = fitted(fit->x, fit->slopes.row(0), fit->normals);
  out.y = fitted(fit->y, fit->slopes.row(1), fit->normals);
  const FollowingNumber radius = fitted(fit->radius, fit->slopes.row(2), fit->normals);
  out.size = 2.0 * radius;
  std::vector<FollowingNumber> angles;
  std::vector<double> values;
  for (std::size_t i = 0; i < middles.size(); ++i) {
    const FollowingNumber dx = coordinate(middles, i, false) + -1.0 * out.x;
    const FollowingNumber dy = coordinate(middles, i, true) + -1.0 * out.y;
    angles.push_back(angle_of(dx, dy));
    out.across.push_back(length_of(dx, dy) + -1.0 * radius);
    values.push_back(angles.back().value);
  }
  const auto chosen = chosen_places(out.layout, values, spread / fit->radius);
  if (!chosen)
    return fail(Code::kReadingsDisagree, "two holes would be at one place of it", "", "a bolt circle");
  keep(out, *chosen);
  const Places& places = chosen->places;
  out.start = constant(0.0, middles.size());
  for (std::size_t i = 0; i < middles.size(); ++i) {
    angles[i].value = folded(angles[i].value - places.start - places.step * places.place[i]);
    out.start = out.start + (1.0 / static_cast<double>(middles.size())) * angles[i];
  }
  for (FollowingNumber& angle : angles)
    out.along.push_back(product(radius, angle + -1.0 * out.start));
  out.start.value = folded(out.start.value + places.start);
  return out;
}

// Numbers of the row's line: the angle of the way it goes, and how far each middle lies along and to the left.
struct RowLine {
  FollowingNumber angle;
  std::vector<FollowingNumber> along;
  std::vector<FollowingNumber> left;
};

Result<RowLine> row_line(std::span<const Point2> middles) {
  std::vector<std::vector<double>> touches;
  double dx = 0.0;
  double dy = 0.0;
  for (const Point2& p : middles) {
    touches.push_back({p.x, p.y});
    dx = std::max(dx, std::abs(p.x - middles.front().x));
    dy = std::max(dy, std::abs(p.y - middles.front().y));
  }
  const std::size_t square = dx >= dy ? 1 : 0;  // the axis the row is square to
  const auto fit = fit_flat(touches, square);
  if (!fit) return fail(fit.error());
  std::vector<Point2> normals(middles.size(), Point2{fit->normal[0], fit->normal[1]});
  const FollowingNumber rise = fitted(fit->rises[0], fit->slopes.row(1), normals);
  const FollowingNumber one = constant(1.0, middles.size());
  RowLine out;
  const double way_x = middles.back().x - middles.front().x;
  const double way_y = middles.back().y - middles.front().y;
  out.angle = square == 1 ? angle_of(one, rise) : angle_of(rise, one);
  if (way_x * std::cos(out.angle.value) + way_y * std::sin(out.angle.value) < 0.0)
    out.angle.value = folded(out.angle.value + std::numbers::pi);
  const double c = std::cos(out.angle.value);
  const double s = std::sin(out.angle.value);
  FollowingNumber mean_left = constant(0.0, middles.size());
  for (std::size_t i = 0; i < middles.size(); ++i) {
    const FollowingNumber x = coordinate(middles, i, false) + -1.0 * coordinate(middles, 0, false);
    const FollowingNumber y = coordinate(middles, i, true) + -1.0 * coordinate(middles, 0, true);
    FollowingNumber along = c * x + s * y;
    FollowingNumber left = -s * x + c * y;
    const double along_value = along.value;
    for (std::size_t k = 0; k < along.slopes.size(); ++k) {
      along.slopes[k] += left.value * out.angle.slopes[k];
      left.slopes[k] -= along_value * out.angle.slopes[k];
    }
    out.along.push_back(std::move(along));
    mean_left = mean_left + (1.0 / static_cast<double>(middles.size())) * left;
    out.left.push_back(std::move(left));
  }
  for (FollowingNumber& left : out.left)
    left = left + -1.0 * mean_left;
  return out;
}

Result<PlacedPattern> in_a_row(std::span<const Point2> middles, double spread) {
  auto line = row_line(middles);
  if (!line) return fail(line.error());
  PlacedPattern out;
  out.layout = HoleLayout::kRow;
  std::vector<double> values;
  for (const FollowingNumber& one : line->along)
    values.push_back(one.value);
  const auto chosen = chosen_places(out.layout, values, spread);
  if (!chosen)
    return fail(Code::kReadingsDisagree, "two holes would be at one place of it", "", "a row of holes");
  keep(out, *chosen);
  const auto n = static_cast<double>(middles.size());
  double mean = 0.0;
  for (const int place : out.place)
    mean += place / n;
  double squares = 0.0;
  for (const int place : out.place)
    squares += (place - mean) * (place - mean);
  out.size = constant(0.0, middles.size());
  FollowingNumber middle = constant(0.0, middles.size());
  for (std::size_t i = 0; i < middles.size(); ++i) {
    out.size = out.size + ((out.place[i] - mean) / squares) * line->along[i];
    middle = middle + (1.0 / n) * line->along[i];
  }
  for (std::size_t i = 0; i < middles.size(); ++i)
    out.along.push_back(line->along[i] + -1.0 * middle + (mean - out.place[i]) * out.size);
  out.start = line->angle;
  const FollowingNumber& left = line->left.front();
  out.x = coordinate(middles, 0, false) + std::sin(line->angle.value) * left;
  out.y = coordinate(middles, 0, true) + -std::cos(line->angle.value) * left;
  out.across = std::move(line->left);
  return out;
}

}  // namespace

Result<PlacedPattern> placed_pattern(HoleLayout layout, std::span<const Point2> middles, double u,
                                     double made) {
  if (middles.size() < 3)
    return fail(touches_too_few("a pattern of holes", "the middles of three holes or more"));
  if (middles.size() > static_cast<std::size_t>(kMostPatternHoles))
    return fail(Code::kTooMany, fmt::format("{} holes", middles.size()),
                fmt::format("at most {}", kMostPatternHoles), "a pattern of holes");
  const double spread = std::sqrt(u * u + made * made);
  return layout == HoleLayout::kCircle ? on_a_circle(middles, spread) : in_a_row(middles, spread);
}

}  // namespace sparewright::survey
