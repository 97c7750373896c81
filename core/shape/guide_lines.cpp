#include "core/shape/guide_lines.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/shape/profile.hpp"

namespace sparewright::shape {
namespace {

// One axis of a box: which coordinate, how long, and the flags of its two ends.
struct BoxAxis {
  Vector unit;
  double size_mm = 0.0;
  std::array<Open, 2> flags{};  // low, high
};

std::array<BoxAxis, 3> axes_of(const Box& b) {
  return {BoxAxis{{1.0, 0.0, 0.0}, b.size.x, {Open::kXLow, Open::kXHigh}},
          BoxAxis{{0.0, 1.0, 0.0}, b.size.y, {Open::kYLow, Open::kYHigh}},
          BoxAxis{{0.0, 0.0, 1.0}, b.size.z, {Open::kZLow, Open::kZHigh}}};
}

constexpr std::array<std::size_t, 2> kEnds{0, 1};

Vector at_end(const BoxAxis& axis, std::size_t end) {
  return (end == 0 ? 0.0 : axis.size_mm) * axis.unit;
}

std::vector<GuideLine> edges(const Box& b, Open open) {
  const auto axes = axes_of(b);
  std::vector<GuideLine> all;
  for (std::size_t i = 0; i < 3; ++i) {
    const BoxAxis& along = axes.at(i);
    const BoxAxis& one = axes.at((i + 1) % 3);
    const BoxAxis& other = axes.at((i + 2) % 3);
    for (const std::size_t e : kEnds) {
      for (const std::size_t f : kEnds) {
        if (has(open, one.flags.at(e)) || has(open, other.flags.at(f))) continue;
        const Point start = Point{} + at_end(one, e) + at_end(other, f);
        all.push_back({b.frame.to_world(start), b.frame.to_world(start + at_end(along, 1)),
                       has(open, along.flags[0]), has(open, along.flags[1])});
      }
    }
  }
  return all;
}

std::vector<GuideLine> edges(const Prism& p, Open open) {
  std::vector<GuideLine> all;
  for (const FlatPoint& corner : p.section) {
    all.push_back({p.frame.to_world(Point{corner.u, corner.v, 0.0}),
                   p.frame.to_world(Point{corner.u, corner.v, p.height_mm}), has(open, Open::kStart),
                   has(open, Open::kEnd)});
  }
  return all;
}

// At the corners, and spread over the arcs: between two of these a convex blank is further in by 1/3000 of the radius.
std::vector<GuideLine> edges(const ProfiledBody& p, Open open) {
  constexpr int kOnHalfCircle = 64;
  std::vector<GuideLine> all;
  for (std::size_t i = 0; i < p.contour.size(); ++i) {
    const ContourEdge e = edge(p.contour, i);
    const int count =
        e.is_arc() ? std::max(1, static_cast<int>(std::ceil(kOnHalfCircle * std::abs(e.bow)))) : 1;
    for (int k = 0; k < count; ++k) {
      const FlatPoint at = e.at(static_cast<double>(k) / count);
      all.push_back({p.frame.to_world(Point{at.u, at.v, 0.0}),
                     p.frame.to_world(Point{at.u, at.v, p.height_mm}), has(open, Open::kStart),
                     has(open, Open::kEnd)});
    }
  }
  return all;
}

template <typename Other>
std::vector<GuideLine> edges(const Other& /*round or endless*/, Open /*open*/) {
  return {};
}

// A grid over an end of a box, from corner to corner but not on the edges.
void add_face_points(std::vector<OpenPoint>& all, const Box& b, const std::array<BoxAxis, 3>& axes,
                     std::size_t i, std::size_t end) {
  constexpr int kAcross = 6;
  const BoxAxis& one = axes.at((i + 1) % 3);
  const BoxAxis& other = axes.at((i + 2) % 3);
  for (int s = 0; s < kAcross; ++s) {
    for (int t = 0; t < kAcross; ++t) {
      const Point local = Point{} + at_end(axes.at(i), end) + (one.size_mm * (s + 0.5) / kAcross) * one.unit +
                          (other.size_mm * (t + 0.5) / kAcross) * other.unit;
      all.push_back({b.frame.to_world(local), b.frame.to_world((end == 0 ? -1.0 : 1.0) * axes.at(i).unit)});
    }
  }
}

std::vector<OpenPoint> points(const Box& b, Open open) {
  const auto axes = axes_of(b);
  std::vector<OpenPoint> all;
  for (std::size_t i = 0; i < 3; ++i) {
    for (const std::size_t end : kEnds) {
      if (has(open, axes.at(i).flags.at(end))) add_face_points(all, b, axes, i, end);
    }
  }
  return all;
}

// Rings just inside the edge of a round end, half way and at the middle.
void add_round_end(std::vector<OpenPoint>& all, const Frame& frame, double radius_mm, double z_mm,
                   double way) {
  constexpr int kRound = 16;
  for (const double ring : {0.0, 0.5, 0.98}) {
    for (int i = 0; i < kRound; ++i) {
      const double angle = 2 * std::numbers::pi * (i + 0.5) / kRound;
      const Point local{ring * radius_mm * std::cos(angle), ring * radius_mm * std::sin(angle), z_mm};
      all.push_back({frame.to_world(local), way * frame.z});
      if (ring == 0.0) break;
    }
  }
}

template <Turned Shape>
std::vector<OpenPoint> points(const Shape& shape, Open open) {
  const Profile profile(shape);
  const auto corners = profile.corners();
  std::vector<OpenPoint> all;
  if (has(open, Open::kStart)) {
    add_round_end(all, shape.frame, corners[1].v == corners[0].v ? corners[1].u : 0.0, profile.start_mm(),
                  -1.0);
  }
  if (has(open, Open::kEnd) && !std::is_same_v<Shape, DrilledHole>) {
    const FlatPoint& rim = corners[corners.size() - 2];
    add_round_end(all, shape.frame, rim.v == profile.end_mm() ? rim.u : 0.0, profile.end_mm(), 1.0);
  }
  return all;
}

std::vector<OpenPoint> points(const Prism& p, Open open) {
  FlatPoint middle;
  const auto n = static_cast<double>(p.section.size());
  for (const FlatPoint& corner : p.section)
    middle = {middle.u + corner.u / n, middle.v + corner.v / n};
  std::vector<OpenPoint> all;
  for (const Open end : {Open::kStart, Open::kEnd}) {
    if (!has(open, end)) continue;
    const double z = end == Open::kStart ? 0.0 : p.height_mm;
    const Vector out = (end == Open::kStart ? -1.0 : 1.0) * p.frame.z;
    all.push_back({p.frame.to_world(Point{middle.u, middle.v, z}), out});
    for (const FlatPoint& c : p.section) {
      for (const double part : {0.5, 0.98}) {
        const Point local{middle.u + part * (c.u - middle.u), middle.v + part * (c.v - middle.v), z};
        all.push_back({p.frame.to_world(local), out});
      }
    }
  }
  return all;
}

std::vector<OpenPoint> points(const ProfiledBody& p, Open open) {
  constexpr int kAcross = 12;
  std::vector<OpenPoint> all;
  for (const FlatPoint& at : points_inside(p.contour, kAcross)) {
    if (has(open, Open::kStart)) all.push_back({p.frame.to_world(Point{at.u, at.v, 0.0}), -p.frame.z});
    if (has(open, Open::kEnd)) all.push_back({p.frame.to_world(Point{at.u, at.v, p.height_mm}), p.frame.z});
  }
  return all;
}

std::vector<OpenPoint> points(const TurnedBody& /*its contour has its overrun*/, Open /*open*/) {
  return {};
}

std::vector<OpenPoint> points(const HalfSpace& /*endless*/, Open /*open*/) {
  return {};
}

template <Turned Shape>
GuideLine line(const Shape& shape, Open open, double angle_rad) {
  const Profile profile(shape);
  const auto corners = profile.corners();
  // The first edge that is not an end face, and so never the point of a drill.
  const std::size_t first = corners[0].v == corners[1].v ? 1 : 0;
  const auto at = [&](const FlatPoint& c) {
    return shape.frame.to_world(Point{c.u * std::cos(angle_rad), c.u * std::sin(angle_rad), c.v});
  };
  const bool end_open = has(open, Open::kEnd) && !std::is_same_v<Shape, DrilledHole>;
  return {at(corners[first]), at(corners[first + 1]), has(open, Open::kStart), end_open};
}

template <typename Other>
GuideLine line(const Other& /*flat*/, Open /*open*/, double /*angle_rad*/) {
  return {};
}

}  // namespace

bool has_round_side(const Primitive& nominal) {
  return std::visit([](const auto& p) { return Turned<std::decay_t<decltype(p)>>; }, nominal);
}

GuideLine side_line(const Primitive& nominal, Open open, double angle_rad) {
  return std::visit([&](const auto& p) { return line(p, open, angle_rad); }, nominal);
}

std::vector<GuideLine> edge_lines(const Primitive& nominal, Open open) {
  return std::visit([&](const auto& p) { return edges(p, open); }, nominal);
}

std::vector<Patch> lone_faces(const Primitive& nominal, Open open) {
  const auto* b = std::get_if<Box>(&nominal);
  if (b == nullptr) return {};
  const auto axes = axes_of(*b);
  const auto both_open = [&](const BoxAxis& axis) {
    return has(open, axis.flags[0]) && has(open, axis.flags[1]);
  };
  std::vector<Patch> all;
  for (std::size_t i = 0; i < 3; ++i) {
    const BoxAxis& one = axes.at((i + 1) % 3);
    const BoxAxis& other = axes.at((i + 2) % 3);
    if (!both_open(one) || !both_open(other)) continue;
    for (const std::size_t end : kEnds) {
      if (has(open, axes.at(i).flags.at(end))) continue;
      all.push_back({b->frame.to_world(Point{} + at_end(axes.at(i), end)), b->frame.to_world(at_end(one, 1)),
                     b->frame.to_world(at_end(other, 1))});
    }
  }
  return all;
}

std::vector<Point> shut_points(const Primitive& nominal) {
  const auto* hole = std::get_if<DrilledHole>(&nominal);
  if (hole == nullptr) return {};
  return {hole->frame.to_world(Point{0.0, 0.0, Profile(*hole).end_mm()})};
}

std::vector<OpenPoint> open_points(const Primitive& nominal, Open open) {
  return std::visit([&](const auto& p) { return points(p, open); }, nominal);
}

}  // namespace sparewright::shape
