#include "core/shape/meeting.hpp"

#include <algorithm>
#include <vector>

#include "core/shape/clearance.hpp"
#include "core/shape/material.hpp"
#include "core/shape/support.hpp"

namespace sparewright::shape {
namespace {

constexpr int kAcross = 24;

// What of a ray lies in both bodies, and would be metal without them.
std::optional<Point> common_along(const WallSubject& subject, const Primitive& place, const Ray& ray,
                                  std::vector<Interval>& metal) {
  metal_along(place, subject.others, ray, metal);
  if (metal.empty()) return std::nullopt;
  std::optional<Point> found;
  for_each_inside(subject.from, ray, [&](const Interval& a) {
    for_each_inside(subject.to, ray, [&](const Interval& b) {
      for (const Interval& m : metal) {
        const double first = std::max({a.enter_mm, b.enter_mm, m.enter_mm});
        const double last = std::min({a.exit_mm, b.exit_mm, m.exit_mm});
        if (!found && last - first > kTouch_mm) found = ray.at((first + last) / 2);
      }
    });
  });
  return found;
}

// The rays of a square field along z, given by its origin's corner and its sides.
std::optional<Point> common_in_field(const WallSubject& subject, const Primitive& place, const Frame& corner,
                                     double width_mm, double depth_mm) {
  std::vector<Interval> metal;
  for (int i = 0; i < kAcross; ++i) {
    for (int k = 0; k < kAcross; ++k) {
      const Point at{(k + 0.5) / kAcross * width_mm, (i + 0.5) / kAcross * depth_mm, 0.0};
      if (auto found = common_along(subject, place, {corner.to_world(at), corner.z}, metal)) return found;
    }
  }
  return std::nullopt;
}

}  // namespace

Primitive meeting_place(const WallSubject& subject) {
  constexpr double kThin_mm = 0.01;
  if (!subject.to_outside) return subject.blank;
  const Vector out = -frame_of(subject.to).z;
  return placed(subject.blank, Frame::at(Point{} + kThin_mm * out));
}

std::optional<Point> meeting_in_metal(const WallSubject& subject, const Primitive& place) {
  const Bounds box = common(common(bounds(subject.from), bounds(subject.to)), bounds(place));
  if (box.empty()) return std::nullopt;
  return common_in_field(subject, place, Frame::at(box.low), box.size().x, box.size().y);
}

std::optional<Point> meeting_at_touch(const WallSubject& subject, const Primitive& place,
                                      const Point& touching) {
  const Vector through = clearance(subject.to, touching).normal;
  for (const double half_mm : {1.0, 0.1}) {
    const Frame corner = Frame::along(touching, through).shifted({-half_mm, -half_mm, 0.0});
    if (auto found = common_in_field(subject, place, corner, 2 * half_mm, 2 * half_mm)) return found;
  }
  return std::nullopt;
}

}  // namespace sparewright::shape
