// Outlines of round surfaces. On a surface of revolution the way out of it at angle p is (nu cos p, nu sin p, nv); it is
// square to the way towards the eye (tx, ty, tz) where nu |t| cos(p - q) = -nv tz, with |t| and q of (tx, ty).
#include <cmath>
#include <type_traits>

#include "core/shape/material.hpp"
#include "core/shape/profile.hpp"
#include "drawing/view_curves.hpp"

namespace sparewright::drawing {
namespace {

using shape::Contour;
using shape::FlatPoint;
using shape::Frame;
using shape::Point;
using shape::Vector;

// Near enough to be on the surface and far enough to be off it.
constexpr double kBeside_mm = 1e-3;
constexpr double kAlongTheAxis = 1e-9;

// A place on a body's own surface and the way out of the body there.
struct Spot {
  Point at;
  Vector out;
};
using Spots = std::function<std::optional<Spot>(double)>;

// Whether the body's surface is the work's: metal on one side, air on the other.
bool is_surface(const shape::Work& work, const Spot& spot, bool is_blank) {
  const bool inside = shape::is_metal(work, spot.at - kBeside_mm * spot.out);
  const bool outside = shape::is_metal(work, spot.at + kBeside_mm * spot.out);
  return is_blank ? inside && !outside : outside && !inside;
}

class Gatherer {
 public:
  Gatherer(const shape::Work& work, const Sight& sight, std::vector<ViewCurve>& curves)
      : work_(work), sight_(sight), curves_(curves) {}

  void add(const shape::Primitive& body, bool is_blank) {
    is_blank_ = is_blank;
    std::visit([&](const auto& b) { add_body(b); }, body);
  }

 private:
  template <typename Body>
  void add_body(const Body& body) {
    if constexpr (shape::Turned<Body>) {
      Contour contour;
      const shape::Profile profile(body);  // named, so that its corners outlive the loop's head
      for (const FlatPoint& corner : profile.corners())
        contour.push_back({corner, 0.0});
      add_turned(body.frame, contour);
    } else if constexpr (std::is_same_v<Body, shape::TurnedBody>) {
      add_turned(body.frame, body.half_section);
    } else if constexpr (std::is_same_v<Body, shape::ProfiledBody>) {
      add_profiled(body);
    }
  }

  void keep(Spots spots, Look look, double length_mm) {
    ViewCurve c;
    c.look = look;
    c.length_mm = length_mm;
    c.at = [work = work_, is_blank = is_blank_, spots = std::move(spots)](double t) -> std::optional<Point> {
      const auto spot = spots(t);
      if (!spot || !is_surface(work, *spot, is_blank)) return std::nullopt;
      return spot->at;
    };
    curves_.push_back(std::move(c));
  }

  void add_turned(const Frame& frame, const Contour& contour) {
    const Vector t = frame.to_local(sight_.towards);
    const double across = std::hypot(t.x, t.y);
    if (across < kAlongTheAxis) return;
    const double q = std::atan2(t.y, t.x);
    for (std::size_t i = 0; i < contour.size(); ++i) {
      const shape::ContourEdge e = shape::edge(contour, i);
      const bool on_axis =
          e.from.u < shape::kShortestSide_mm && e.to.u < shape::kShortestSide_mm && !e.is_arc();
      const double length = std::hypot(e.to.u - e.from.u, e.to.v - e.from.v);
      if (on_axis || length < shape::kShortestSide_mm) continue;
      for (const double side : {1.0, -1.0})
        keep([=](double s) { return spot_on(frame, e, s, t.z, across, q, side); },
             e.is_arc() ? Look::kPath : Look::kStraight, length);
    }
  }

  static std::optional<Spot> spot_on(const Frame& frame, const shape::ContourEdge& e, double s, double tz,
                                     double across, double q, double side) {
    const FlatPoint p = e.at(s);
    const Vector out = e.is_arc() ? way_out(e, p) : Vector{e.to.v - e.from.v, e.from.u - e.to.u, 0.0};
    const double length = std::hypot(out.x, out.y);
    const double nu = out.x / length;
    const double nv = out.y / length;
    const double cosine = -nv * tz / (nu * across);
    if (!(std::abs(cosine) <= 1.0)) return std::nullopt;
    const double angle = q + side * std::acos(cosine);
    const Vector round{std::cos(angle), std::sin(angle), 0.0};
    return Spot{frame.to_world(Point{p.u * round.x, p.u * round.y, p.v}),
                frame.to_world(Vector{nu * round.x, nu * round.y, nv})};
  }

  static Vector way_out(const shape::ContourEdge& e, const FlatPoint& p) {
    const double way = e.bow > 0.0 ? 1.0 : -1.0;
    return {way * (p.u - e.centre.u), way * (p.v - e.centre.v), 0.0};
  }

  void add_profiled(const shape::ProfiledBody& body) {
    const Vector t = body.frame.to_local(sight_.towards);
    const double across = std::hypot(t.x, t.y);
    if (across < kAlongTheAxis) return;
    for (std::size_t i = 0; i < body.contour.size(); ++i) {
      const shape::ContourEdge e = shape::edge(body.contour, i);
      if (!e.is_arc()) continue;
      for (const double side : {1.0, -1.0}) {
        const FlatPoint on{e.centre.u - side * t.y / across * e.radius_mm,
                           e.centre.v + side * t.x / across * e.radius_mm};
        if (!e.spans(on)) continue;
        const Vector out = shape::direction(body.frame.to_world(way_out(e, on)));
        keep(
            [=](double s) {
              return std::optional(Spot{body.frame.to_world(Point{on.u, on.v, s * body.height_mm}), out});
            },
            Look::kStraight, body.height_mm);
      }
    }
  }

  shape::Work work_;
  const Sight& sight_;
  std::vector<ViewCurve>& curves_;
  bool is_blank_ = true;
};

}  // namespace

std::vector<ViewCurve> outline_curves(const shape::Work& work, const Sight& sight) {
  std::vector<ViewCurve> curves;
  Gatherer gatherer(work, sight, curves);
  gatherer.add(work.blank, true);
  for (const shape::Cut& cut : work.cuts)
    gatherer.add(cut.body, false);
  return curves;
}

}  // namespace sparewright::drawing
