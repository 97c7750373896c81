#include "drawing/geometry.hpp"

#include <algorithm>
#include <cmath>

namespace sparewright::drawing {
namespace {

double turn(Point a, Point b, Point c) {
  return (b.x_mm - a.x_mm) * (c.y_mm - a.y_mm) - (b.y_mm - a.y_mm) * (c.x_mm - a.x_mm);
}

// Narrows [enter, leave] to where start + t * step lies between low and high.
bool narrowed(double start, double step, double low, double high, double& enter, double& leave) {
  if (step == 0.0) return start > low && start < high;
  const double a = (low - start) / step;
  const double b = (high - start) / step;
  enter = std::max(enter, std::min(a, b));
  leave = std::min(leave, std::max(a, b));
  return enter < leave;
}

}  // namespace

double distance(Point a, Point b) {
  const double dx = a.x_mm - b.x_mm;
  const double dy = a.y_mm - b.y_mm;
  return std::sqrt(dx * dx + dy * dy);  // paper is small: no need of hypot, which takes ten times as long
}

double distance(const Segment& segment, Point point) {
  const double dx = segment.to.x_mm - segment.from.x_mm;
  const double dy = segment.to.y_mm - segment.from.y_mm;
  const double square = dx * dx + dy * dy;
  if (square == 0.0) return distance(segment.from, point);
  const double along = (point.x_mm - segment.from.x_mm) * dx + (point.y_mm - segment.from.y_mm) * dy;
  const double t = std::clamp(along / square, 0.0, 1.0);
  return distance(Point{segment.from.x_mm + t * dx, segment.from.y_mm + t * dy}, point);
}

double distance(const Box& box, Point point) {
  const Point nearest{std::clamp(point.x_mm, box.left_mm, box.right_mm),
                      std::clamp(point.y_mm, box.top_mm, box.bottom_mm)};
  return distance(nearest, point);
}

Point moved(Point point, Point by) {
  return {point.x_mm + by.x_mm, point.y_mm + by.y_mm};
}

Box moved(const Box& box, Point by) {
  return {box.left_mm + by.x_mm, box.top_mm + by.y_mm, box.right_mm + by.x_mm, box.bottom_mm + by.y_mm};
}

Box grown(const Box& box, double by_mm) {
  return {box.left_mm - by_mm, box.top_mm - by_mm, box.right_mm + by_mm, box.bottom_mm + by_mm};
}

bool holds(const Box& outer, const Box& inner) {
  return inner.left_mm >= outer.left_mm - kTouch_mm && inner.right_mm <= outer.right_mm + kTouch_mm &&
         inner.top_mm >= outer.top_mm - kTouch_mm && inner.bottom_mm <= outer.bottom_mm + kTouch_mm;
}

bool overlap(const Box& a, const Box& b) {
  return std::min(a.right_mm, b.right_mm) - std::max(a.left_mm, b.left_mm) > kTouch_mm &&
         std::min(a.bottom_mm, b.bottom_mm) - std::max(a.top_mm, b.top_mm) > kTouch_mm;
}

bool crosses(const Segment& segment, const Box& box) {
  double enter = 0.0;
  double leave = 1.0;
  const Box inside = grown(box, -kTouch_mm);
  return narrowed(segment.from.x_mm, segment.to.x_mm - segment.from.x_mm, inside.left_mm, inside.right_mm,
                  enter, leave) &&
         narrowed(segment.from.y_mm, segment.to.y_mm - segment.from.y_mm, inside.top_mm, inside.bottom_mm,
                  enter, leave);
}

bool cross(const Segment& a, const Segment& b) {
  const double from = turn(a.from, a.to, b.from);
  const double to = turn(a.from, a.to, b.to);
  const double other_from = turn(b.from, b.to, a.from);
  const double other_to = turn(b.from, b.to, a.to);
  if (from * to < 0.0 && other_from * other_to < 0.0) return true;
  return distance(a, b.from) < kTouch_mm || distance(a, b.to) < kTouch_mm ||
         distance(b, a.from) < kTouch_mm || distance(b, a.to) < kTouch_mm;
}

bool crosses(const Segment& segment, const Disc& disc) {
  return distance(segment, disc.centre) < disc.radius_mm;
}

}  // namespace sparewright::drawing
