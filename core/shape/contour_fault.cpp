// Whether a contour can be the edge of metal.
#include <cmath>
#include <vector>

#include <fmt/format.h>

#include "core/shape/contour.hpp"

namespace sparewright::shape {
namespace {

double apart_mm(const FlatPoint& a, const FlatPoint& b) {
  return std::hypot(a.u - b.u, a.v - b.v);
}

bool is_on(const ContourEdge& e, const FlatPoint& p, double near_mm) {
  return apart_mm(e.nearest(p), p) <= near_mm;
}

// Where the straight line through an edge's ends meets that of another straight, or a circle.
std::vector<FlatPoint> line_meets(const ContourEdge& line, const ContourEdge& other) {
  const double du = line.to.u - line.from.u;
  const double dv = line.to.v - line.from.v;
  const auto at = [&](double t) { return FlatPoint{line.from.u + t * du, line.from.v + t * dv}; };
  if (!other.is_arc()) {
    const double eu = other.to.u - other.from.u;
    const double ev = other.to.v - other.from.v;
    const double across = du * ev - dv * eu;
    if (across == 0.0) return {};  // parallel: an end of one lies on the other, or they do not meet
    return {at(((other.from.u - line.from.u) * ev - (other.from.v - line.from.v) * eu) / across)};
  }
  const double length2 = du * du + dv * dv;
  const double cu = other.centre.u - line.from.u;
  const double cv = other.centre.v - line.from.v;
  const double foot = (cu * du + cv * dv) / length2;
  const double off = (cu * dv - cv * du) / std::sqrt(length2);
  const double half2 = other.radius_mm * other.radius_mm - off * off;
  if (half2 < 0.0) return {};
  const double half = std::sqrt(half2 / length2);
  return {at(foot - half), at(foot + half)};
}

std::vector<FlatPoint> circles_meet(const ContourEdge& a, const ContourEdge& b) {
  const double d = apart_mm(a.centre, b.centre);
  if (d == 0.0) return {};
  const double along = (d * d + a.radius_mm * a.radius_mm - b.radius_mm * b.radius_mm) / (2.0 * d);
  const double half2 = a.radius_mm * a.radius_mm - along * along;
  if (half2 < 0.0) return {};
  const double half = std::sqrt(half2);
  const double u = (b.centre.u - a.centre.u) / d;
  const double v = (b.centre.v - a.centre.v) / d;
  const FlatPoint foot{a.centre.u + along * u, a.centre.v + along * v};
  return {{foot.u - half * v, foot.v + half * u}, {foot.u + half * v, foot.v - half * u}};
}

std::vector<FlatPoint> meetings(const ContourEdge& a, const ContourEdge& b) {
  std::vector<FlatPoint> all{a.from, a.to, b.from, b.to};
  const std::vector<FlatPoint> inner = a.is_arc() && b.is_arc() ? circles_meet(a, b)
                                       : a.is_arc()             ? line_meets(b, a)
                                                                : line_meets(a, b);
  all.insert(all.end(), inner.begin(), inner.end());
  return all;
}

// Two edges meet somewhere else than in the corners they share.
bool meet(const Contour& contour, std::size_t i, std::size_t j, double near_mm) {
  const ContourEdge a = edge(contour, i);
  const ContourEdge b = edge(contour, j);
  const bool b_follows = i + 1 == j;
  const bool a_follows = i == 0 && j + 1 == contour.size();
  for (const FlatPoint& p : meetings(a, b)) {
    if (!is_on(a, p, near_mm) || !is_on(b, p, near_mm)) continue;
    const bool shared =
        (b_follows && apart_mm(p, b.from) <= near_mm) || (a_follows && apart_mm(p, a.from) <= near_mm);
    if (!shared) return true;
  }
  return false;
}

}  // namespace

std::string fault_of(const Contour& contour, double shortest_mm) {
  if (contour.size() < 2) return "a profile of fewer than two edges";
  for (std::size_t i = 0; i < contour.size(); ++i) {
    const ContourEdge e = edge(contour, i);
    if (!(apart_mm(e.from, e.to) >= shortest_mm))
      return fmt::format("a profile with no length at corner {}", i + 1);
    if (!(std::abs(e.bow) <= 1.0))
      return fmt::format("an arc of more than half a circle at corner {}", i + 1);
  }
  for (std::size_t i = 0; i < contour.size(); ++i) {
    for (std::size_t j = i + 1; j < contour.size(); ++j) {
      if (meet(contour, i, j, shortest_mm / 2.0))
        return fmt::format("a profile that crosses itself at corners {} and {}", i + 1, j + 1);
    }
  }
  return area_mm2(contour) > 0.0 ? "" : "a profile that runs clockwise";
}

}  // namespace sparewright::shape
