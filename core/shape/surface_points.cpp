#include "core/shape/surface_points.hpp"

#include <algorithm>

#include "core/shape/profile.hpp"

namespace sparewright::shape {
namespace {

double middle_of(int i, int n) {
  return (i + 0.5) / n;
}

std::vector<Point> points(const HalfSpace& /*endless*/) {
  return {};
}

std::vector<Point> points(const Box& b) {
  constexpr int kAcross = 6;
  std::vector<Point> all;
  for (int i = 0; i < kAcross; ++i) {
    for (int j = 0; j < kAcross; ++j) {
      const double s = middle_of(i, kAcross);
      const double t = middle_of(j, kAcross);
      for (const double end : {0.0, 1.0}) {
        all.push_back({end * b.size.x, s * b.size.y, t * b.size.z});
        all.push_back({s * b.size.x, end * b.size.y, t * b.size.z});
        all.push_back({s * b.size.x, t * b.size.y, end * b.size.z});
      }
    }
  }
  return all;
}

std::vector<Point> points(const Prism& p) {
  constexpr int kPerSide = 6;
  constexpr int kUp = 6;
  FlatPoint middle;
  const auto n = static_cast<double>(p.section.size());
  for (const FlatPoint& corner : p.section)
    middle = {middle.u + corner.u / n, middle.v + corner.v / n};
  std::vector<Point> all;
  for (std::size_t i = 0; i < p.section.size(); ++i) {
    const FlatPoint& a = p.section[i];
    const FlatPoint& b = p.section[i + 1 == p.section.size() ? 0 : i + 1];
    for (int k = 0; k < kPerSide; ++k) {
      const double s = middle_of(k, kPerSide);
      const FlatPoint on{a.u + s * (b.u - a.u), a.v + s * (b.v - a.v)};
      for (int up = 0; up < kUp; ++up)
        all.push_back({on.u, on.v, middle_of(up, kUp) * p.height_mm});
      for (const double inwards : {0.3, 0.8}) {
        const FlatPoint in{on.u + inwards * (middle.u - on.u), on.v + inwards * (middle.v - on.v)};
        all.push_back({in.u, in.v, 0.0});
        all.push_back({in.u, in.v, p.height_mm});
      }
    }
  }
  return all;
}

// So many along each edge that all of them together come to about a number.
int for_each_edge(const Contour& contour, int together) {
  return std::max(1, together / static_cast<int>(contour.size()));
}

std::vector<Point> points(const ProfiledBody& p) {
  constexpr int kRound = 24;
  constexpr int kUp = 5;
  constexpr int kAcross = 10;
  std::vector<Point> all;
  const int along = for_each_edge(p.contour, kRound);
  for (std::size_t i = 0; i < p.contour.size(); ++i) {
    for (int k = 0; k < along; ++k) {
      const FlatPoint on = edge(p.contour, i).at(middle_of(k, along));
      for (int up = 0; up < kUp; ++up)
        all.push_back({on.u, on.v, middle_of(up, kUp) * p.height_mm});
    }
  }
  for (const FlatPoint& at : points_inside(p.contour, kAcross)) {
    all.push_back({at.u, at.v, 0.0});
    all.push_back({at.u, at.v, p.height_mm});
  }
  return all;
}

std::vector<Point> points(const TurnedBody& t) {
  constexpr int kRound = 18;
  constexpr int kAlong = 15;
  std::vector<Point> all;
  const int along = for_each_edge(t.half_section, kAlong);
  for (std::size_t i = 0; i < t.half_section.size(); ++i) {
    for (int k = 0; k < along; ++k) {
      const FlatPoint on = edge(t.half_section, i).at(middle_of(k, along));
      if (on.u == 0.0) continue;
      for (int turn = 0; turn < kRound; ++turn) {
        const double angle = 2 * std::numbers::pi * turn / kRound;
        all.push_back({on.u * std::cos(angle), on.u * std::sin(angle), on.v});
      }
    }
  }
  return all;
}

template <Turned Shape>
std::vector<Point> points(const Shape& shape) {
  constexpr int kRound = 18;
  constexpr int kAlong = 5;
  const Profile profile(shape);
  const auto corners = profile.corners();
  std::vector<Point> all;
  for (std::size_t i = 0; i + 1 < corners.size(); ++i) {
    for (int k = 0; k < kAlong; ++k) {
      const double s = middle_of(k, kAlong);
      const double radius = corners[i].u + s * (corners[i + 1].u - corners[i].u);
      const double z = corners[i].v + s * (corners[i + 1].v - corners[i].v);
      for (int turn = 0; turn < kRound; ++turn) {
        const double angle = 2 * std::numbers::pi * turn / kRound;
        all.push_back({radius * std::cos(angle), radius * std::sin(angle), z});
      }
    }
  }
  return all;
}

}  // namespace

std::vector<Point> surface_points(const Primitive& primitive) {
  std::vector<Point> all = std::visit([](const auto& p) { return points(p); }, primitive);
  for (Point& p : all)
    p = frame_of(primitive).to_world(p);
  return all;
}

}  // namespace sparewright::shape
