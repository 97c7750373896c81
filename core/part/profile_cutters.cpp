// A profile milled out of the work, or the work milled round it.
#include <algorithm>
#include <cmath>
#include <limits>

#include <fmt/format.h>

#include "core/part/form_sizes.hpp"
#include "core/shape/fillet.hpp"

namespace sparewright::part {
namespace {

using shape::Contour;
using shape::Corner;
using shape::Cutter;
using shape::FlatPoint;
using shape::Frame;

// The corner points in the frame of the cutter.
std::vector<FlatPoint> corner_points(const Sizes& s, const Frame& frame) {
  const auto axes = axes_in(s.formed.side);
  std::vector<FlatPoint> points;
  for (std::size_t i = 0; i < s.formed.corners.size(); ++i) {
    shape::Vector at = frame.origin - shape::Point{};
    for (const Axis axis : axes)
      component(at, axis) = s.of(fmt::format("corner {}/at {}", i + 1, name_of(axis)));
    const shape::Point local = frame.to_local(shape::Point{at.x, at.y, at.z});
    points.push_back({local.x, local.y});
  }
  return points;
}

double twice_area(const std::vector<FlatPoint>& points) {
  double sum = 0.0;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const FlatPoint& a = points[i];
    const FlatPoint& b = points[(i + 1) % points.size()];
    sum += a.u * b.v - a.v * b.u;
  }
  return sum;
}

// Counterclockwise, whichever way it is written.
Contour contour_of(const Sizes& s, const Frame& frame) {
  const std::vector<FlatPoint> points = corner_points(s, frame);
  const std::vector<ProfileCorner>& written = s.formed.corners;
  const std::size_t n = points.size();
  const bool backwards = twice_area(points) < 0.0;
  std::vector<shape::FilletedCorner> corners;
  for (std::size_t k = 0; k < n; ++k) {
    const std::size_t i = backwards ? n - 1 - k : k;
    const std::size_t next = backwards ? (i + n - 1) % n : (i + 1) % n;
    const std::size_t owner = backwards ? next : i;  // of the edge from here to the next
    shape::FilletedCorner corner{points[i], 0.0, 0.0};
    if (written[i].fillet) corner.radius_mm = s.of(fmt::format("corner {}/fillet", i + 1));
    if (written[owner].arc) {
      const double bow =
          shape::bow_of(points[i], points[next], s.of(fmt::format("corner {}/arc", owner + 1)));
      corner.bow = written[owner].bulges ? bow : -bow;
    }
    corners.push_back(corner);
  }
  return shape::filleted_contour(corners);
}

// --- round the outside --------------------------------------------------------------------------------------------
struct Rectangle {
  FlatPoint low;
  FlatPoint high;
};

// What the two cutters reach out to: past the blank and past the profile.
Rectangle reach_of(const Sizes& s, const Frame& frame, const Contour& contour) {
  Rectangle reach{shape::farthest(contour, -1.0, 0.0), shape::farthest(contour, 1.0, 0.0)};
  reach.low.v = shape::farthest(contour, 0.0, -1.0).v;
  reach.high.v = shape::farthest(contour, 0.0, 1.0).v;
  for (const double end : {0.0, 1.0}) {
    shape::Vector at;
    for (const Axis axis : kAxes)
      component(at, axis) = s.side(face_at(axis, end > 0.0));
    const shape::Point local = frame.to_local(shape::Point{at.x, at.y, at.z});
    reach.low = {std::min(reach.low.u, local.x), std::min(reach.low.v, local.y)};
    reach.high = {std::max(reach.high.u, local.x), std::max(reach.high.v, local.y)};
  }
  constexpr double kOver_mm = shape::kOverrun_mm;
  return {{reach.low.u - kOver_mm, reach.low.v - kOver_mm},
          {reach.high.u + kOver_mm, reach.high.v + kOver_mm}};
}

// The contour from one of its points to another, the way it runs, turned about: it then runs back from `to` to `from`.
Contour backwards_between(const Contour& contour, const FlatPoint& from, const FlatPoint& to) {
  constexpr double kSame_mm = 1e-9;
  const auto is_at = [](const FlatPoint& a, const FlatPoint& b) {
    return std::abs(a.u - b.u) < kSame_mm && std::abs(a.v - b.v) < kSame_mm;
  };
  const auto on = [&](const FlatPoint& p) {  // the edge that starts at it or that it lies on
    std::size_t best = 0;
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < contour.size(); ++i) {
      const shape::ContourEdge e = shape::edge(contour, i);
      const FlatPoint near = e.nearest(p);
      const double away = std::hypot(near.u - p.u, near.v - p.v) + (is_at(e.to, p) ? kSame_mm : 0.0);
      if (away < least) {
        least = away;
        best = i;
      }
    }
    return best;
  };
  const std::size_t first = on(from);
  const std::size_t last = on(to);
  Contour way;  // forwards
  std::size_t i = first;
  FlatPoint start = from;
  for (std::size_t steps = 0; steps <= contour.size(); ++steps) {
    const shape::ContourEdge e = shape::edge(contour, i);
    const bool ends = i == last && (steps > 0 || first != last || !is_at(from, to));
    const FlatPoint end = ends ? to : e.to;
    if (!is_at(start, end)) {
      const double bow = e.is_arc() ? std::copysign(shape::bow_of(start, end, e.radius_mm), e.bow) : 0.0;
      way.push_back({start, bow});
    }
    if (ends) break;
    start = e.to;
    i = (i + 1) % contour.size();
  }
  Contour back;
  back.push_back({to, 0.0});
  for (std::size_t k = way.size(); k-- > 0;) {
    back.back().bow = -way[k].bow;
    back.push_back({way[k].at, 0.0});
  }
  return back;
}

// All round the profile, as two cutters that part at its ends along u.
std::vector<Cutter> round_outside(const Sizes& s, const Frame& frame, const Contour& contour) {
  const Rectangle reach = reach_of(s, frame, contour);
  const FlatPoint left = shape::farthest(contour, -1.0, 0.0);
  const FlatPoint right = shape::farthest(contour, 1.0, 0.0);
  Contour below;
  below.push_back({{reach.low.u, left.v}, 0.0});
  below.push_back({reach.low, 0.0});
  below.push_back({{reach.high.u, reach.low.v}, 0.0});
  below.push_back({{reach.high.u, right.v}, 0.0});
  for (const Corner& corner : backwards_between(contour, left, right))
    below.push_back(corner);
  Contour above;
  above.push_back({{reach.high.u, right.v}, 0.0});
  above.push_back({reach.high, 0.0});
  above.push_back({{reach.low.u, reach.high.v}, 0.0});
  above.push_back({{reach.low.u, left.v}, 0.0});
  for (const Corner& corner : backwards_between(contour, right, left))
    above.push_back(corner);
  std::vector<Cutter> cutters;
  cutters.push_back(as_cutter(s, shape::ProfiledBody{frame, below, depth_of(s)}, open_of(s)));
  cutters.push_back(as_cutter(s, shape::ProfiledBody{frame, above, depth_of(s)}, open_of(s)));
  return cutters;
}

}  // namespace

std::vector<Cutter> profile_cutters(const Sizes& s) {
  const Frame frame = on_side(s, axes_in(s.formed.side)[0]);
  const Contour contour = contour_of(s, frame);
  const bool sound = shape::fault_of(contour, shape::kShortestSide_mm).empty();
  if (s.formed.keeps_inside && sound) return round_outside(s, frame, contour);
  std::vector<Cutter> cutters;  // unsound, it is told when the recipe is made
  cutters.push_back(as_cutter(s, shape::ProfiledBody{frame, contour, depth_of(s)}, open_of(s)));
  return cutters;
}

}  // namespace sparewright::part
