#include "core/shape/metal_bounds.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <vector>

#include "core/shape/material.hpp"

namespace sparewright::shape {
namespace {

constexpr double kBeside_mm = 1e-6;       // from a face, so that a ray does not run in it
constexpr std::size_t kMostSamples = 96;  // along one axis

using Component = double Point::*;
constexpr std::array<Component, 3> kPoint{&Point::x, &Point::y, &Point::z};
constexpr std::array<double Vector::*, 3> kVector{&Vector::x, &Vector::y, &Vector::z};

// What is known of the faces along one axis: where they are, and the middle lines of what is round.
struct Marks {
  std::vector<double> faces;
  std::vector<double> middles;
};

// The corners of a contour, carried round the axis of a turned body or standing in a profiled one.
void mark_corners(const Primitive& body, std::size_t axis, Marks& marks) {
  const auto at = [&](double x, double y, double z) {
    marks.faces.push_back(frame_of(body).to_world(Point{x, y, z}).*kPoint.at(axis));
  };
  if (const auto* turned = std::get_if<TurnedBody>(&body)) {
    for (const Corner& corner : turned->half_section) {
      for (const double u : {-corner.at.u, corner.at.u}) {
        at(u, 0.0, corner.at.v);
        at(0.0, u, corner.at.v);
      }
    }
  } else if (const auto* profiled = std::get_if<ProfiledBody>(&body)) {
    for (const Corner& corner : profiled->contour)
      at(corner.at.u, corner.at.v, profiled->height_mm / 2);
  }
}

void mark(const Primitive& body, std::size_t axis, Marks& marks) {
  const Bounds b = bounds(body);
  marks.faces.push_back(b.low.*kPoint.at(axis));
  marks.faces.push_back(b.high.*kPoint.at(axis));
  marks.middles.push_back(frame_of(body).origin.*kPoint.at(axis));
  mark_corners(body, axis, marks);
}

// Where rays run along one of the other axes.
std::vector<double> samples(const Work& work, std::size_t axis) {
  Marks marks;
  mark(work.blank, axis, marks);
  const double low = marks.faces[0];
  const double high = marks.faces[1];
  for (const Cut& cut : work.cuts)
    mark(cut.body, axis, marks);
  std::sort(marks.faces.begin(), marks.faces.end());
  std::vector<double> all;
  double last = low;
  const auto strip = [&](double to) {
    if (to - last < 4 * kBeside_mm) return;
    for (const double at : {last + kBeside_mm, (last + to) / 2, to - kBeside_mm})
      all.push_back(at);
    last = to;
  };
  for (const double face : marks.faces)
    strip(std::clamp(face, low, high));
  strip(high);
  for (const double middle : marks.middles) {
    if (middle > low && middle < high) all.push_back(middle + kBeside_mm / 8);
  }
  std::sort(all.begin(), all.end());
  all.erase(std::unique(all.begin(), all.end()), all.end());
  if (all.size() <= kMostSamples) return all;
  std::vector<double> thinned;
  for (std::size_t i = 0; i < kMostSamples; ++i)
    thinned.push_back(all[i * (all.size() - 1) / (kMostSamples - 1)]);
  return thinned;
}

// Hands over every stretch of metal along the rays of one axis, as its two ends.
template <typename Use>
void along(const Work& work, std::size_t axis, Use use) {
  const std::size_t across = (axis + 1) % 3;
  const std::size_t over = (axis + 2) % 3;
  Vector direction{0.0, 0.0, 0.0};
  direction.*kVector.at(axis) = 1.0;
  std::vector<Interval> metal;
  const std::vector<double> columns = samples(work, over);
  for (const double row : samples(work, across)) {
    Bounds slab = bounds(work.blank);
    slab.low.*kPoint.at(across) = row;
    slab.high.*kPoint.at(across) = row;
    const std::vector<const Primitive*> air = bodies(work.cuts, slab);
    for (const double column : columns) {
      Ray ray{{}, direction};
      ray.origin.*kPoint.at(across) = row;
      ray.origin.*kPoint.at(over) = column;
      metal_along(work.blank, air, ray, metal);
      if (!metal.empty()) use(ray.at(metal.front().enter_mm), ray.at(metal.back().exit_mm));
    }
  }
}

}  // namespace

Bounds metal_bounds(const Work& work) {
  constexpr double kFar = std::numeric_limits<double>::infinity();
  Bounds box{{kFar, kFar, kFar}, {-kFar, -kFar, -kFar}};
  for (std::size_t axis = 0; axis < 3; ++axis) {
    along(work, axis, [&](const Point& first, const Point& last) {
      const Component c = kPoint.at(axis);
      box.low.*c = std::min(box.low.*c, first.*c);
      box.high.*c = std::max(box.high.*c, last.*c);
    });
  }
  return box;
}

double metal_radius_mm(const Work& work, int axis, const Point& through) {
  const auto one = static_cast<std::size_t>((axis + 1) % 3);
  const auto other = static_cast<std::size_t>((axis + 2) % 3);
  double radius = 0.0;
  const auto reach = [&](const Point& p) {
    radius = std::max(radius, std::hypot(p.*kPoint.at(one) - through.*kPoint.at(one),
                                         p.*kPoint.at(other) - through.*kPoint.at(other)));
  };
  for (const std::size_t rays : {one, other}) {
    along(work, rays, [&](const Point& first, const Point& last) {
      reach(first);
      reach(last);
    });
  }
  return radius;
}

}  // namespace sparewright::shape
