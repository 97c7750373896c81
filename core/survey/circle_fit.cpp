#include "core/survey/circle_fit.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <optional>
#include <string>
#include <utility>

namespace sparewright::survey {
namespace {

using base::Code;
using base::fail;
using base::Result;

// Settled where a step moves no distance by more than this part of the extent of the touches, or of the radius where that is
// more. (The middle of a short arc moves by more than that in rounding alone.)
constexpr double kSmallStep = 1e-13;
constexpr int kMostSteps = 200;
constexpr int kMostHalvings = 60;
// A circle larger than this many times the extent of its touches is a straight line to any instrument: its arc would be
// 5e-7 of the extent high.
constexpr double kLargestRadius = 1e6;
constexpr std::string_view kWanted = "three touches or more at places that are not in one straight line";

// About the mean of the touches, in units of their extent.
struct Frame {
  Point2 middle;
  double extent = 0.0;
  std::vector<Point2> touches;
};

Frame framed(std::span<const Point2> touches) {
  Frame frame;
  const auto n = static_cast<double>(touches.size());
  const Point2 first = touches.front();
  for (const Point2& p : touches) {
    frame.middle.x += (p.x - first.x) / n;
    frame.middle.y += (p.y - first.y) / n;
  }
  frame.middle = {frame.middle.x + first.x, frame.middle.y + first.y};
  for (const Point2& p : touches)
    frame.extent = std::max(frame.extent, std::hypot(p.x - frame.middle.x, p.y - frame.middle.y));
  for (const Point2& p : touches)
    frame.touches.push_back({(p.x - frame.middle.x) / frame.extent, (p.y - frame.middle.y) / frame.extent});
  return frame;
}

// The means of the products that Taubin's fit is worked from; z = x^2 + y^2.
struct Moments {
  double xx = 0.0;
  double yy = 0.0;
  double xy = 0.0;
  double xz = 0.0;
  double yz = 0.0;
  double zz = 0.0;
};

Moments moments_of(const Frame& frame) {
  Moments m;
  const auto n = static_cast<double>(frame.touches.size());
  for (const Point2& p : frame.touches) {
    const double z = p.x * p.x + p.y * p.y;
    m.xx += p.x * p.x / n;
    m.yy += p.y * p.y / n;
    m.xy += p.x * p.y / n;
    m.xz += p.x * z / n;
    m.yz += p.y * z / n;
    m.zz += z * z / n;
  }
  return m;
}

// Whether no touch lies off their main direction, as far as rounding lets one tell.
bool on_a_line(const Frame& frame, const Moments& m) {
  const double main = 0.5 * std::atan2(2.0 * m.xy, m.xx - m.yy);
  return std::all_of(frame.touches.begin(), frame.touches.end(), [&](const Point2& p) {
    return std::abs(p.y * std::cos(main) - p.x * std::sin(main)) <= kFitRank;
  });
}

struct Circle {
  double x = 0.0;
  double y = 0.0;
  double radius = 0.0;
};

// Taubin's fit: the smallest root of a cubic by Newton's method from 0.
Circle taubin(const Moments& m) {
  const double z = m.xx + m.yy;
  const double flat = m.xx * m.yy - m.xy * m.xy;
  const double spread = m.zz - z * z;
  const double a3 = 4.0 * z;
  const double a2 = -3.0 * z * z - m.zz;
  const double a1 = spread * z + 4.0 * flat * z - m.xz * m.xz - m.yz * m.yz;
  const double a0 = m.xz * (m.xz * m.yy - m.yz * m.xy) + m.yz * (m.yz * m.xx - m.xz * m.xy) - spread * flat;
  double root = 0.0;
  double value = a0;
  for (int i = 0; i < 100; ++i) {
    const double next = root - value / (a1 + root * (2.0 * a2 + 3.0 * a3 * root));
    const double there = a0 + next * (a1 + next * (a2 + next * a3));
    if (!std::isfinite(next) || std::abs(there) >= std::abs(value)) break;
    root = next;
    value = there;
  }
  const double twice = 2.0 * (root * root - root * z + flat);
  Circle circle;
  circle.x = (m.xz * (m.yy - root) - m.yz * m.xy) / twice;
  circle.y = (m.yz * (m.xx - root) - m.xz * m.xy) / twice;
  circle.radius = std::sqrt(circle.x * circle.x + circle.y * circle.y + z);
  return circle;
}

struct Misfit {
  std::vector<double> off;
  Matrix slopes;

  [[nodiscard]] double length() const { return std::sqrt(dot(off, off)); }
};

Misfit misfit_of(const Circle& circle, const std::vector<Point2>& touches) {
  Misfit out{{}, Matrix(touches.size(), 3)};
  for (std::size_t i = 0; i < touches.size(); ++i) {
    const double dx = touches[i].x - circle.x;
    const double dy = touches[i].y - circle.y;
    const double from = std::hypot(dx, dy);
    out.off.push_back(from - circle.radius);
    out.slopes.at(i, 0) = from > 0.0 ? -dx / from : 0.0;
    out.slopes.at(i, 1) = from > 0.0 ? -dy / from : 0.0;
    out.slopes.at(i, 2) = -1.0;
  }
  return out;
}

// How far a step moves the distance that moves furthest.
double moved(const Matrix& slopes, const std::vector<double>& step) {
  double most = 0.0;
  for (std::size_t i = 0; i < slopes.rows; ++i)
    most = std::max(most, std::abs(dot(slopes.row(i), step)));
  return most;
}

// Steps of Gauss and Newton, halved as long as they make the sum of squares larger. How many were taken; none where it
// does not settle on a circle.
std::optional<int> settle(Circle& circle, const std::vector<Point2>& touches) {
  Misfit now = misfit_of(circle, touches);
  for (int steps = 0; steps < kMostSteps; ++steps) {
    if (!fixes(now.slopes)) return std::nullopt;
    const std::vector<double> step = step_of(now.slopes, now.off);
    const double size = std::max(1.0, circle.radius);
    if (moved(now.slopes, step) <= kSmallStep * size) return steps;
    const double most = now.length() + kSmallStep * size;  // a step that changes nothing adds rounding
    double part = 1.0;
    Circle next;
    Misfit there;
    for (int half = 0; half < kMostHalvings; ++half, part /= 2.0) {
      next = {circle.x + part * step[0], circle.y + part * step[1], circle.radius + part * step[2]};
      there = misfit_of(next, touches);
      if (there.length() <= most) break;
    }
    circle = next;
    now = std::move(there);
    if (!(std::abs(circle.radius) < kLargestRadius)) return std::nullopt;
  }
  return std::nullopt;
}

double arc_of(const std::vector<Point2>& normals) {
  std::vector<double> turns;
  for (const Point2& u : normals)
    turns.push_back(std::atan2(u.y, u.x));
  std::sort(turns.begin(), turns.end());
  constexpr double kTurn = 2.0 * std::numbers::pi;
  double gap = turns.front() + kTurn - turns.back();
  for (std::size_t i = 1; i < turns.size(); ++i)
    gap = std::max(gap, turns[i] - turns[i - 1]);
  return kTurn - gap;
}

CircleFit report(const Circle& circle, const Frame& frame, int steps) {
  Misfit at = misfit_of(circle, frame.touches);
  for (double& off : at.off)
    off *= frame.extent;
  CircleFit fit;
  static_cast<OrthogonalFit&>(fit) = orthogonal_fit(std::move(at.off), std::move(at.slopes));
  fit.steps = steps;
  fit.x = frame.middle.x + circle.x * frame.extent;
  fit.y = frame.middle.y + circle.y * frame.extent;
  fit.radius = circle.radius * frame.extent;
  for (std::size_t i = 0; i < frame.touches.size(); ++i)
    fit.normals.push_back({-fit.equation_slopes.at(i, 0), -fit.equation_slopes.at(i, 1)});
  fit.arc_rad = arc_of(fit.normals);
  return fit;
}

}  // namespace

Result<CircleFit> fit_circle(std::span<const Point2> touches) {
  if (touches.size() > kMostTouches)
    return fail(Code::kTooMany, std::to_string(touches.size()) + " touches",
                "at most " + std::to_string(kMostTouches), "a circle");
  if (touches.size() < 3) return fail(touches_too_few("a circle", std::string(kWanted)));
  const Frame frame = framed(touches);
  const Moments moments = moments_of(frame);
  if (!(frame.extent > 0.0) || on_a_line(frame, moments))
    return fail(touches_too_few("a circle", std::string(kWanted)));
  Circle circle = taubin(moments);
  const bool starts = std::isfinite(circle.x) && std::isfinite(circle.y) && std::isfinite(circle.radius);
  const auto steps = starts ? settle(circle, frame.touches) : std::nullopt;
  if (!steps)
    return fail(Code::kReadingsDisagree, "the touches lie along a straight line", "touches further round",
                "a circle");
  return report(circle, frame, *steps);
}

}  // namespace sparewright::survey
