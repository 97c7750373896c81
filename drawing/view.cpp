#include "drawing/view.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <optional>

#include "core/shape/clearance.hpp"
#include "core/shape/material.hpp"
#include "core/shape/ray.hpp"
#include "drawing/one_line.hpp"
#include "drawing/view_curves.hpp"

namespace sparewright::drawing {
namespace {

using shape::FlatPoint;
using shape::Point;

enum class State { kNotThere, kHidden, kVisible };

// Looks along one sight.
class Looker {
 public:
  Looker(const shape::Work& work, const Sight& sight)
      : work_(work), sight_(sight), air_(shape::bodies(work.cuts)) {}

  // A line on the surface is seen where, right beside it, nothing stands before it.
  [[nodiscard]] State state(const ViewCurve& curve, double t) {
    const auto at = curve.at(t);
    if (!at) return State::kNotThere;
    const bool is_seen = any_beside(curve, t, *at, [](double in_front) { return in_front <= kInFront_mm; });
    return is_seen ? State::kVisible : State::kHidden;
  }

  // Whether metal right beside the line is the nearest to the eye there: not so where it lies under the outline's own edge.
  [[nodiscard]] bool is_nearest(const ViewCurve& curve, double t) {
    const auto at = curve.at(t);
    return at && any_beside(curve, t, *at, [](double in_front) {
             return std::isfinite(in_front) && in_front <= kInFront_mm;
           });
  }

 private:
  static constexpr double kBeside_mm = 2e-3;
  // Surfaces that rise towards the eye no steeper than ten times this hide nothing of the line at their foot.
  static constexpr double kInFront_mm = 0.02;

  // Whether that holds of how far the first metal stands before the line, on either side of it; less than anything where
  // there is none.
  template <typename Holds>
  [[nodiscard]] bool any_beside(const ViewCurve& curve, double t, const Point& at, const Holds& holds) {
    const FlatPoint seen = sight_.seen(at);
    const FlatPoint across = across_at(curve, t, seen);
    const double depth = sight_.depth(at);
    const auto in_front = [&](double side) {
      return first_metal({seen.u + side * across.u, seen.v + side * across.v}) - depth;
    };
    return holds(in_front(kBeside_mm)) || holds(in_front(-kBeside_mm));
  }

  // Square to the line as it is seen.
  [[nodiscard]] FlatPoint across_at(const ViewCurve& curve, double t, const FlatPoint& here) const {
    constexpr double kStep = 1e-4;
    for (const double step : {kStep, -kStep}) {
      const auto next = curve.at(std::clamp(t + step, 0.0, 1.0));
      if (!next) continue;
      const FlatPoint there = sight_.seen(*next);
      const double length = std::hypot(there.u - here.u, there.v - here.v);
      if (length > 1e-9) return {-(there.v - here.v) / length, (there.u - here.u) / length};
    }
    return {1.0, 0.0};
  }

  // The depth of the metal that is nearest the eye there.
  [[nodiscard]] double first_metal(const FlatPoint& at) {
    const shape::Ray ray{sight_.at(at, 0.0), sight_.towards};
    shape::metal_along(work_.blank, air_, ray, metal_);
    return metal_.empty() ? -std::numeric_limits<double>::infinity() : metal_.back().exit_mm;
  }

  const shape::Work& work_;
  const Sight& sight_;
  std::vector<const shape::Primitive*> air_;
  std::vector<shape::Interval> metal_;
};

// --- pieces of one state --------------------------------------------------------------------------------------------
struct Piece {
  double from = 0.0;
  double to = 0.0;
  Seen seen = Seen::kVisible;
  bool cut_here = false;
};

int samples_of(double length_mm) {
  constexpr double kApart_mm = 0.5;
  constexpr int kFewest = 40;
  constexpr int kMost = 400;
  return std::clamp(static_cast<int>(length_mm / kApart_mm), kFewest, kMost);
}

// A curve may not be there exactly at its end: a hair inside.
std::optional<Point> inside(const ViewCurve& curve, double t) {
  constexpr double kHair = 1e-6;
  for (const double nudge : {0.0, kHair, -kHair}) {
    if (const auto at = curve.at(std::clamp(t + nudge, 0.0, 1.0))) return at;
  }
  return std::nullopt;
}

// Where the state changes between two places that differ.
double change(Looker& looker, const ViewCurve& curve, double low, State at_low, double high) {
  const double enough = 0.005 / std::max(curve.length_mm, 0.01);
  while (high - low > enough) {
    const double middle = (low + high) / 2.0;
    (looker.state(curve, middle) == at_low ? low : high) = middle;
  }
  return at_low == State::kNotThere ? high : low;  // where the curve is there
}

// An end of the curve, or where it ceases to be there on the way to it from a place where it is.
double end_of(const ViewCurve& curve, double there, double end) {
  if (inside(curve, end)) return end;
  const double enough = 0.005 / std::max(curve.length_mm, 0.01);
  while (std::abs(end - there) > enough) {
    const double middle = (there + end) / 2.0;
    (curve.at(middle) ? there : end) = middle;
  }
  return there;
}

std::vector<Piece> pieces_of(Looker& looker, const ViewCurve& curve) {
  const int samples = samples_of(curve.length_mm);
  // Not at the very ends, where other edges meet.
  const auto place = [&](int i) { return (i + 0.5) / samples; };
  std::vector<Piece> pieces;
  State now = looker.state(curve, place(0));
  double start = now == State::kNotThere ? 0.0 : end_of(curve, place(0), 0.0);
  const auto finish = [&](double end) {
    if (now != State::kNotThere)
      pieces.push_back({start, end, now == State::kVisible ? Seen::kVisible : Seen::kHidden});
    start = end;
  };
  for (int i = 1; i < samples; ++i) {
    const State next = looker.state(curve, place(i));
    if (next == now) continue;
    finish(change(looker, curve, place(i - 1), now, place(i)));
    now = next;
  }
  finish(now == State::kNotThere ? 1.0 : end_of(curve, place(samples - 1), 1.0));
  return pieces;
}

bool lies_on(std::span<const shape::Cut> cuts, const Point& at) {
  constexpr double kOn_mm = 2e-3;
  return std::any_of(cuts.begin(), cuts.end(), [&](const shape::Cut& cut) {
    return std::abs(shape::clearance(cut.body, at).distance_mm) < kOn_mm;
  });
}

// --- putting them down ----------------------------------------------------------------------------------------------
class Sketch {
 public:
  explicit Sketch(const Sight& sight) : sight_(sight) {}

  void add(const ViewCurve& curve, const Piece& piece) {
    switch (curve.look) {
      case Look::kStraight:
        return add_straight(curve, piece);
      case Look::kArc:
        return add_arc(curve, piece);
      case Look::kPath:
        return add_path(curve, piece);
    }
  }

  [[nodiscard]] View done() && {
    view_.lines = one_line_each(lines_);
    view_.arcs = one_arc_each(arcs_);
    set_bounds();
    return std::move(view_);
  }

 private:
  // A circle seen from its edge runs there and back.
  void add_straight(const ViewCurve& curve, const Piece& piece) {
    std::vector<double> stops;
    for (const double turn : curve.turns) {
      if (turn > piece.from && turn < piece.to) stops.push_back(turn);
    }
    stops.push_back(piece.to);
    auto last = inside(curve, piece.from);
    for (const double stop : stops) {
      const auto next = inside(curve, stop);
      if (last && next)
        lines_.push_back({sight_.seen(*last), sight_.seen(*next), piece.seen, piece.cut_here});
      last = next;
    }
  }

  void add_arc(const ViewCurve& curve, const Piece& piece) {
    const auto angle = [&](double t) {
      const FlatPoint p = sight_.seen(*curve.at(t));
      return std::atan2(p.v - curve.centre.v, p.u - curve.centre.u);
    };
    const double from = angle(piece.from);
    const double nearly = angle(std::min(piece.from + 1e-3, piece.to));
    const bool counterclockwise = std::remainder(nearly - from, 2.0 * std::numbers::pi) > 0.0;
    const double sweep = (piece.to - piece.from) * curve.length_mm / curve.radius_mm;
    const double start = counterclockwise ? from : from - sweep;
    arcs_.push_back({curve.centre, curve.radius_mm, start, start + sweep, piece.seen, piece.cut_here});
  }

  void add_path(const ViewCurve& curve, const Piece& piece) {
    const int steps = samples_of(curve.length_mm * (piece.to - piece.from));
    ViewPath path;
    path.seen = piece.seen;
    path.cut_here = piece.cut_here;
    for (int i = 0; i <= steps; ++i) {
      if (const auto at = inside(curve, piece.from + (piece.to - piece.from) * i / steps))
        path.points.push_back(sight_.seen(*at));
    }
    if (path.points.size() > 1) view_.paths.push_back(std::move(path));
  }

  void set_bounds() {
    constexpr double kFar = std::numeric_limits<double>::infinity();
    view_.low = {kFar, kFar};
    view_.high = {-kFar, -kFar};
    const auto take = [&](const FlatPoint& p) {
      view_.low = {std::min(view_.low.u, p.u), std::min(view_.low.v, p.v)};
      view_.high = {std::max(view_.high.u, p.u), std::max(view_.high.v, p.v)};
    };
    for (const ViewLine& line : view_.lines) {
      take(line.from);
      take(line.to);
    }
    for (const ViewPath& path : view_.paths) {
      for (const FlatPoint& p : path.points)
        take(p);
    }
    for (const ViewArc& arc : view_.arcs) {
      constexpr int kRound = 64;
      for (int i = 0; i <= kRound; ++i) {
        const double angle = arc.from_rad + (arc.to_rad - arc.from_rad) * i / kRound;
        take(
            {arc.centre.u + arc.radius_mm * std::cos(angle), arc.centre.v + arc.radius_mm * std::sin(angle)});
      }
    }
  }

  const Sight& sight_;
  View view_;
  std::vector<ViewLine> lines_;
  std::vector<ViewArc> arcs_;
};

}  // namespace

View view_of(const shape::Work& work, const std::vector<solid::Edge>& edges, const Sight& sight,
             std::span<const shape::Cut> cut_here) {
  Looker looker(work, sight);
  Sketch sketch(sight);
  for (const auto& curves : {edge_curves(edges, sight), outline_curves(work, sight)}) {
    for (const ViewCurve& curve : curves) {
      for (Piece& piece : pieces_of(looker, curve)) {
        const double middle = (piece.from + piece.to) / 2.0;
        const auto at = curve.at(middle);
        piece.cut_here =
            at && lies_on(cut_here, *at) && (piece.seen == Seen::kHidden || looker.is_nearest(curve, middle));
        sketch.add(curve, piece);
      }
    }
  }
  return std::move(sketch).done();
}

}  // namespace sparewright::drawing
