#include <cmath>
#include <numbers>

#include "drawing/view_curves.hpp"

namespace sparewright::drawing {
namespace {

using shape::FlatPoint;
using shape::Point;

constexpr double kSquare = 1e-9;  // sine of an angle that is none

double apart(const FlatPoint& a, const FlatPoint& b) {
  return std::hypot(a.u - b.u, a.v - b.v);
}

std::optional<ViewCurve> curve(const solid::EdgeLine& line, const Sight& sight) {
  ViewCurve c;
  c.length_mm = apart(sight.seen(line.from), sight.seen(line.to));
  if (c.length_mm < shape::kShortestSide_mm) return std::nullopt;  // seen from its end
  c.at = [line](double t) { return std::optional(shape::between(line.from, line.to, t)); };
  return c;
}

std::optional<ViewCurve> curve(const solid::EdgeArc& arc, const Sight& sight) {
  ViewCurve c;
  c.length_mm = arc.radius_mm * arc.sweep_rad;
  const shape::Vector side = shape::cross(arc.axis, arc.start);
  c.at = [arc, side](double t) {
    const double angle = t * arc.sweep_rad;
    return std::optional(arc.centre + arc.radius_mm * (std::cos(angle) * arc.start + std::sin(angle) * side));
  };
  const double facing = shape::dot(arc.axis, sight.towards);
  if (1.0 - std::abs(facing) < kSquare) {
    c.look = Look::kArc;
    c.centre = sight.seen(arc.centre);
    c.radius_mm = arc.radius_mm;
  } else if (std::abs(facing) > kSquare) {
    c.look = Look::kPath;
  } else {
    const shape::Vector along = shape::cross(arc.axis, sight.towards);
    const double first = std::atan2(shape::dot(side, along), shape::dot(arc.start, along));
    for (int half = -2; half <= 3; ++half) {
      const double t = (first + half * std::numbers::pi) / arc.sweep_rad;
      if (t > 0.0 && t < 1.0) c.turns.push_back(t);
    }
  }
  return c;
}

std::optional<ViewCurve> curve(const solid::EdgePath& path, const Sight&) {
  std::vector<double> lengths{0.0};
  for (std::size_t i = 1; i < path.points.size(); ++i)
    lengths.push_back(lengths.back() + shape::distance_mm(path.points[i - 1], path.points[i]));
  ViewCurve c;
  c.look = Look::kPath;
  c.length_mm = lengths.back();
  if (c.length_mm < shape::kShortestSide_mm) return std::nullopt;
  c.at = [points = path.points, lengths](double t) {
    const double wanted = t * lengths.back();
    std::size_t i = 1;
    while (i + 1 < points.size() && lengths[i] < wanted)
      ++i;
    const double step = lengths[i] - lengths[i - 1];
    return std::optional(
        shape::between(points[i - 1], points[i], step > 0.0 ? (wanted - lengths[i - 1]) / step : 0.0));
  };
  return c;
}

}  // namespace

std::vector<ViewCurve> edge_curves(const std::vector<solid::Edge>& edges, const Sight& sight) {
  std::vector<ViewCurve> curves;
  constexpr double kTurnsAway = 1e-6;
  for (const solid::Edge& edge : edges) {
    if (edge.is_smooth && std::abs(shape::dot(edge.out, sight.towards)) > kTurnsAway) continue;
    auto one = std::visit([&](const auto& e) { return curve(e, sight); }, edge.curve);
    if (one) curves.push_back(std::move(*one));
  }
  return curves;
}

}  // namespace sparewright::drawing
