// Straight lines through bodies with a contour: every place where the line can cross a face is found, and between two
// such places its middle says whether it is inside. A place too many does no harm.
#include <algorithm>
#include <array>
#include <cmath>

#include "core/shape/local_ray.hpp"
#include "core/shape/roots.hpp"

namespace sparewright::shape {
namespace {

// A stretch shorter than this is where two crossings are one.
constexpr double kApart_mm = 1e-10;
constexpr std::size_t kUsualCrossings = 16;  // room taken at once

// The stretches between crossings whose middles are inside, joined where they meet.
template <typename IsInside>
std::vector<Interval> stretches(std::vector<double> crossings, const IsInside& is_inside) {
  std::sort(crossings.begin(), crossings.end());
  std::vector<Interval> all;
  for (std::size_t i = 0; i + 1 < crossings.size();) {
    std::size_t next = i + 1;  // the next crossing that is one of its own
    while (next + 1 < crossings.size() && crossings[next] - crossings[i] < kApart_mm)
      ++next;
    const Interval one{crossings[i], crossings[next]};
    if (one.length_mm() >= kApart_mm && is_inside(one.enter_mm + one.length_mm() / 2.0)) {
      const bool goes_on = !all.empty() && one.enter_mm - all.back().exit_mm < kApart_mm;
      if (goes_on) {
        all.back().exit_mm = one.exit_mm;
      } else {
        all.push_back(one);
      }
    }
    i = next;
  }
  return all;
}

// Crossings beyond an edge's ends are left out, but for this share of it: a place too many costs a look, one too few a wall.
constexpr double kBeyondEnds = 1e-6;

bool is_near_end(const ContourEdge& e, const FlatPoint& p) {
  const double near2 = e.radius_mm * e.radius_mm * 1e-6;
  const auto away2 = [&](const FlatPoint& end) {
    return (p.u - end.u) * (p.u - end.u) + (p.v - end.v) * (p.v - end.v);
  };
  return away2(e.from) < near2 || away2(e.to) < near2;
}

// Whether the line may meet the edge between two corners: an arc lies no farther from its chord than its height, and a
// line that has both corners on one side, farther away than that, misses it.
bool may_meet(const LocalRay& r, const FlatPoint& from, const FlatPoint& to, double bow) {
  constexpr double kBarelyMore = 1.0 + 1e-6;
  const auto side = [&](const FlatPoint& p) { return r.d.x * (p.v - r.o.y) - r.d.y * (p.u - r.o.x); };
  const double a = side(from);
  const double b = side(to);
  if (a * b <= 0.0) return true;
  const double du = to.u - from.u;
  const double dv = to.v - from.v;
  const double chord2 = du * du + dv * dv;
  const double reach2 = (0.25 * bow * bow + kBeyondEnds * kBeyondEnds) * chord2;
  const double flat2 = r.d.x * r.d.x + r.d.y * r.d.y;
  return std::min(a * a, b * b) <= kBarelyMore * reach2 * flat2;
}

// The line u = o.x + t d.x, v = o.y + t d.y and one edge.
void cross_flat(std::vector<double>& crossings, const LocalRay& r, const ContourEdge& e) {
  if (e.is_arc()) {
    const double u = r.o.x - e.centre.u;
    const double v = r.o.y - e.centre.v;
    for (const double t : QuadraticRoots(u * u + v * v - e.radius_mm * e.radius_mm,
                                         2.0 * (u * r.d.x + v * r.d.y), r.d.x * r.d.x + r.d.y * r.d.y)) {
      const FlatPoint on_circle{r.o.x + t * r.d.x, r.o.y + t * r.d.y};
      if (e.spans(on_circle) || is_near_end(e, on_circle)) crossings.push_back(t);
    }
    return;
  }
  const double du = e.to.u - e.from.u;
  const double dv = e.to.v - e.from.v;
  const double across = du * r.d.y - dv * r.d.x;
  if (across * across < kParallel * kParallel * (du * du + dv * dv)) return;
  const double along =
      (r.d.y * (r.o.x - e.from.u) - r.d.x * (r.o.y - e.from.v)) / across;  // 0 to 1 on the edge
  if (along < -kBeyondEnds || along > 1.0 + kBeyondEnds) return;
  crossings.push_back((dv * (r.o.x - e.from.u) - du * (r.o.y - e.from.v)) / across);
}

// The face a straight edge makes: a plane, or a cone or cylinder with radius w0 + w1 s along the ray.
void cross_straight(std::vector<double>& crossings, const AboutAxis& ray, const ContourEdge& e) {
  if (e.from.v == e.to.v) {
    if (std::abs(ray.dz) >= kParallel) crossings.push_back((e.from.v - ray.z) / ray.dz);
    return;
  }
  const double slope = (e.to.u - e.from.u) / (e.to.v - e.from.v);
  const double w0 = e.from.u + slope * (ray.z - e.from.v);
  const double w1 = slope * ray.dz;
  for (const double s : QuadraticRoots(ray.least2 - w0 * w0, -2.0 * w0 * w1, ray.flat - w1 * w1)) {
    const double along = (ray.z + s * ray.dz - e.from.v) / (e.to.v - e.from.v);
    if (along >= -kBeyondEnds && along <= 1.0 + kBeyondEnds) crossings.push_back(s);
  }
}

// The ring an arc makes: (rho^2 + h^2 + R^2 - r^2)^2 = 4 R^2 rho^2, with rho the distance from the axis and h the height
// above the ring's middle plane, both quadratic in s. Each root is drawn onto sqrt((rho - R)^2 + h^2) = r, which keeps its
// digits where the fourth powers do not. About a point of the axis (R = 0) the ring is a ball and all roots are double, so
// that rounding hides them; near one the ball's own roots are drawn onto the ring too.
void cross_arc(std::vector<double>& crossings, const AboutAxis& ray, const ContourEdge& e) {
  const double R = e.centre.u;
  const double h0 = ray.z - e.centre.v;
  const double a = ray.flat + ray.dz * ray.dz;
  const double b = 2.0 * h0 * ray.dz;
  const double c = ray.least2 + h0 * h0 + R * R - e.radius_mm * e.radius_mm;
  const double k = 4.0 * R * R;
  const std::array quartic{c * c - k * ray.least2, 2.0 * b * c, b * b + 2.0 * a * c - k * ray.flat,
                           2.0 * a * b, a * a};
  constexpr int kDraws = 3;
  constexpr double kNearlyBall = 1e-3;
  std::vector<double> starts = real_roots(quartic);
  if (std::abs(R) <= kNearlyBall * e.radius_mm) {
    for (const double s : QuadraticRoots(c, b, a))
      starts.push_back(s);
  }
  for (double s : starts) {
    for (int draw = 0; draw < kDraws; ++draw) {
      const FlatPoint p = ray.at(s);
      const double out = std::hypot(p.u - R, p.v - e.centre.v);
      if (out == 0.0 || p.u == 0.0) break;
      const double slope = ((p.u - R) * ray.flat * s / p.u + (p.v - e.centre.v) * ray.dz) / out;
      if (slope == 0.0 || std::abs(out - e.radius_mm) > e.radius_mm) break;
      s -= (out - e.radius_mm) / slope;
    }
    crossings.push_back(s);
  }
}

}  // namespace

std::vector<Interval> stretches_inside(const ProfiledBody& body, const Ray& ray) {
  const LocalRay r = in_frame(ray, body.frame);
  std::vector<double> crossings;
  crossings.reserve(kUsualCrossings);
  if (std::abs(r.d.z) >= kParallel) {
    crossings.push_back(-r.o.z / r.d.z);
    crossings.push_back((body.height_mm - r.o.z) / r.d.z);
  } else if (!(r.o.z >= 0.0 && r.o.z < body.height_mm)) {
    return {};
  }
  if (r.d.x * r.d.x + r.d.y * r.d.y >= kParallel * kParallel) {
    for (std::size_t i = 0; i < body.contour.size(); ++i) {
      const Corner& corner = body.contour[i];
      const FlatPoint& next = body.contour[i + 1 == body.contour.size() ? 0 : i + 1].at;
      if (may_meet(r, corner.at, next, corner.bow)) cross_flat(crossings, r, edge(body.contour, i));
    }
  }
  return stretches(std::move(crossings), [&](double t) {
    const Point p = r.at(t);
    return p.z >= 0.0 && p.z <= body.height_mm && contains(body.contour, {p.x, p.y});
  });
}

std::vector<Interval> stretches_inside(const TurnedBody& body, const Ray& ray) {
  const AboutAxis about = about_axis(in_frame(ray, body.frame));
  std::vector<double> crossings;
  crossings.reserve(kUsualCrossings);
  for (std::size_t i = 0; i < body.half_section.size(); ++i) {
    const ContourEdge e = edge(body.half_section, i);
    if (e.is_arc()) {
      cross_arc(crossings, about, e);
    } else {
      cross_straight(crossings, about, e);
    }
  }
  std::vector<Interval> all =
      stretches(std::move(crossings), [&](double s) { return contains(body.half_section, about.at(s)); });
  for (Interval& one : all)
    one = {one.enter_mm + about.nearest, one.exit_mm + about.nearest};
  return all;
}

}  // namespace sparewright::shape
