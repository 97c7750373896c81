#include "core/shape/witness.hpp"

#include <algorithm>
#include <array>
#include <numbers>

#include "core/shape/clearance.hpp"
#include "core/shape/material.hpp"
#include "core/shape/surface_points.hpp"

namespace sparewright::shape {
namespace {

// A witness may not end on an end face of the bar where its round side was asked for.
bool on_round_side(const Primitive& blank, const Point& p) {
  const Bounds ends = bounds(blank, frame_of(blank));
  const double z = frame_of(blank).to_local(p).z;
  return z > ends.low.z + kTouch_mm && z < ends.high.z - kTouch_mm;
}

bool on_surface(const Primitive& body, const Point& p) {
  return std::abs(clearance(body, p).distance_mm) <= kTouch_mm;
}

// Of the places where a ray leaves or enters a body the one nearest to where it is looked for.
template <typename Place>
std::optional<double> nearest_crossing(const Primitive& body, const Ray& ray, double wanted_mm,
                                       const Place& place) {
  std::optional<double> nearest;
  for_each_inside(body, ray, [&](const Interval& in) {
    const double at = place(in);
    if (!nearest || std::abs(at - wanted_mm) < std::abs(*nearest - wanted_mm)) nearest = at;
  });
  return nearest;
}

// Where a ray leaves a body near its start. One that starts at an edge of the body may touch it there and nowhere else.
std::optional<double> leaves(const Primitive& body, const Ray& ray, const Point& p) {
  if (const auto exit = nearest_crossing(body, ray, 0.0, [](const Interval& in) { return in.exit_mm; }))
    return exit;
  if (on_surface(body, p)) return 0.0;
  return std::nullopt;
}

std::optional<double> arrives(const WallSubject& subject, const Ray& ray, const Point& q) {
  if (subject.to_round_side) {
    const auto in_blank = inside(subject.blank, ray);
    return in_blank ? std::optional(in_blank->exit_mm) : std::nullopt;
  }
  const double wanted_mm = dot(q - ray.origin, ray.direction);
  if (const auto enter =
          nearest_crossing(subject.to, ray, wanted_mm, [](const Interval& in) { return in.enter_mm; }))
    return enter;
  if (on_surface(subject.to, q)) return wanted_mm;
  return std::nullopt;
}

// The metal that a stretch lies in, but for kTouch_mm at each end. It leaves off at the first cut into the stretch, which most
// of those tried have.
std::optional<Interval> metal_around(const WallSubject& subject, const Ray& ray, const Interval& stretch) {
  const double first_mm = stretch.enter_mm + kTouch_mm;
  const double last_mm = stretch.exit_mm - kTouch_mm;
  if (first_mm >= last_mm) {  // hardly a stretch: it may lie in either of two pieces
    std::vector<Interval> metal;
    metal_along(subject.blank, subject.air, ray, metal);
    const auto around = std::find_if(metal.begin(), metal.end(), [&](const Interval& m) {
      return m.enter_mm <= first_mm && m.exit_mm >= last_mm;
    });
    return around != metal.end() ? std::optional(*around) : std::nullopt;
  }
  auto metal = inside(subject.blank, ray);
  if (!metal || metal->enter_mm > first_mm || metal->exit_mm < last_mm) return std::nullopt;
  bool is_cut = false;
  for (const Primitive* body : subject.air) {
    for_each_inside(*body, ray, [&](const Interval& cut) {
      if (cut.length_mm() <= kSliver_mm) return;
      if (cut.exit_mm <= first_mm) {
        metal->enter_mm = std::max(metal->enter_mm, cut.exit_mm);
      } else if (cut.enter_mm >= last_mm) {
        metal->exit_mm = std::min(metal->exit_mm, cut.enter_mm);
      } else {
        is_cut = true;
      }
    });
    if (is_cut) return std::nullopt;
  }
  return metal;
}

// The point itself where it is inside a body, else the nearest of its surface.
Point onto(const Primitive& body, const Point& p) {
  const Clearance c = clearance(body, p);
  return c.distance_mm > 0.0 ? p - c.distance_mm * c.normal : p;
}

// Where along a-b a body comes nearest (or lies deepest): its clearance is convex along the line, so thirds
// close in.
Point nearest_along(const Primitive& body, const Point& a, const Point& b) {
  constexpr int kThirds = 60;
  double low = 0.0;
  double high = 1.0;
  for (int i = 0; i < kThirds; ++i) {
    const double s = low + (high - low) / 3;
    const double t = high - (high - low) / 3;
    if (clearance(body, between(a, b, s)).distance_mm <= clearance(body, between(a, b, t)).distance_mm) {
      high = t;
    } else {
      low = s;
    }
  }
  return between(a, b, (low + high) / 2);
}

// For every other cutter the half-space that the witness lies in and the cutter does not.
std::vector<Primitive> clear_of_others(const WallSubject& subject, const Witness& w) {
  std::vector<Primitive> all;
  for (const Primitive* other : subject.others) {
    const Point near = nearest_along(*other, w.from, w.to);
    const Clearance c = clearance(*other, near);
    all.emplace_back(HalfSpace{Frame::along(near - c.distance_mm * c.normal, -c.normal)});
  }
  return all;
}

std::optional<NearestPair> nearest_within(const WallSubject& subject, std::span<const Primitive> walls) {
  std::vector<const Primitive*> from{&subject.from, &subject.blank};
  std::vector<const Primitive*> to{&subject.to};
  if (!subject.to_outside) to.push_back(&subject.blank);
  for (const Primitive& wall : walls) {
    from.push_back(&wall);
    to.push_back(&wall);
  }
  return nearest_pair(from, to, ball_round(subject.blank));
}

// Draws a witness tight: within the convex part of the metal around it that no other cutter enters, the
// nearest pair is found exactly; around that pair the convex part is another one; so on while it gets
// shorter.
Witness drawn_tight(const WallSubject& subject, Witness best) {
  constexpr int kMostPulls = 12;
  if (!is_convex(subject.from) || !is_convex(subject.to))
    return best;  // then feeling the way is all there is
  for (int pull = 0; pull < kMostPulls; ++pull) {
    const auto pair = nearest_within(subject, clear_of_others(subject, best));
    if (!pair) break;
    if (pair->distance_mm <= kTouch_mm && !in_air_of(subject.others, pair->on_a)) {
      return {pair->on_a, pair->on_b, 0.0};
    }
    const auto tighter = witness_near(subject, pair->on_a, pair->on_b);
    if (!tighter || tighter->length_mm >= best.length_mm - kRegionAccuracy_mm) break;
    best = *tighter;
  }
  return best;
}

// The n-th of a fixed sequence of directions for both ends at once, spread evenly: where they go to, in units of a step.
// Source of the sequence: powers of 1/g, g^5 = g + 1, after M. Roberts, "The unreasonable effectiveness of quasirandom
// sequences" (2018).
std::array<double, 4> feeler(int n) {
  constexpr double kG = 1.1673039782614187;
  std::array<double, 4> out{};
  double power = 1.0;
  for (double& x : out) {
    power /= kG;
    const double turns = (n + 0.5) * power;
    x = 2.0 * (turns - std::floor(turns)) - 1.0;
  }
  return out;
}

// Feels its way: both ends moved sideways, by ever smaller steps as nothing shorter is found. Finds the way round edges
// that drawing tight catches on. The steps go from the first, halved, to just over the last.
Witness felt_out(const WallSubject& subject, Witness best, double first_step_mm, double last_step_mm) {
  constexpr int kFeelers = 48;
  int n = 0;
  double step_mm = first_step_mm;
  while (step_mm > last_step_mm && best.length_mm > kTouch_mm) {
    const Frame along = Frame::along(best.from, best.to - best.from);
    bool shorter = false;
    for (int i = 0; i < kFeelers && !shorter; ++i) {
      const auto [a, b, c, d] = feeler(n++);
      const Point from = onto(subject.from, best.from + step_mm * (a * along.x + b * along.y));
      const Point to = onto(subject.to, best.to + step_mm * (c * along.x + d * along.y));
      if (distance_mm(from, to) >= best.length_mm + 0.5 * step_mm) continue;  // hardly a shorter one
      const double enough_mm = best.length_mm - kRegionAccuracy_mm / 10;
      const auto w = witness_along(subject, from, to, enough_mm);
      shorter = w && w->length_mm < enough_mm;
      if (shorter) best = *w;
    }
    if (!shorter) step_mm /= 2;
  }
  return best;
}

double long_step_mm(const WallSubject& subject) {
  return ball_round(subject.blank).radius_mm / 32;
}

// A witness felt out by long steps already, made shorter still.
constexpr double kCoarse_mm = 0.02;
Witness shortened(const WallSubject& subject, const Witness& start) {
  constexpr int kMostRounds = 4;
  Witness best = start;
  for (int round = 0; round < kMostRounds; ++round) {
    const double first_mm = round == 0 ? kCoarse_mm : long_step_mm(subject);
    const Witness next = drawn_tight(subject, felt_out(subject, best, first_mm, kRegionAccuracy_mm));
    if (next.length_mm >= best.length_mm - kRegionAccuracy_mm) break;
    best = next;
  }
  return best;
}

// The points spread over a body that border on metal as far as the blank and the other cutters go.
std::vector<Point> bordering_points(const WallSubject& subject, const Primitive& body) {
  std::vector<Point> all = surface_points(body);
  std::erase_if(all, [&](const Point& p) {
    return clearance(subject.blank, p).distance_mm > kTouch_mm || in_air_of(subject.others, p);
  });
  return all;
}

struct Start {
  Point p;
  Point q;
  double distance_mm = 0.0;
};

// From every point straight to the nearest point of the other body, and from every point to every other: the
// first are better, but where the bodies slant away from each other they may all lead into the air.
std::vector<Start> starts(const WallSubject& subject) {
  std::vector<Start> all;
  const auto keep = [&](const Point& p, const Point& q) { all.push_back({p, q, distance_mm(p, q)}); };
  const std::vector<Point> from = bordering_points(subject, subject.from);
  const std::vector<Point> to = bordering_points(subject, subject.to);
  for (const Point& p : from)
    keep(p, onto(subject.to, p));
  for (const Point& q : to)
    keep(onto(subject.from, q), q);
  for (const Point& p : from) {
    for (const Point& q : to)
      keep(p, q);
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const auto& a, const auto& b) { return a.distance_mm < b.distance_mm; });
  return all;
}

void sort_by_length(std::vector<Witness>& all) {
  std::stable_sort(all.begin(), all.end(),
                   [](const auto& a, const auto& b) { return a.length_mm < b.length_mm; });
}

// The shortest few starts that lie in metal, none of them next to another.
std::vector<Witness> first_witnesses(const WallSubject& subject) {
  constexpr std::size_t kEnough = 8;
  constexpr double kApart = 0.05;  // of the ball round the blank
  const double apart_mm = kApart * ball_round(subject.blank).radius_mm;
  std::vector<Witness> found;
  const auto beside = [&](const Point& p, const Point& q) {
    return std::any_of(found.begin(), found.end(), [&](const Witness& w) {
      return distance_mm(w.from, p) < apart_mm && distance_mm(w.to, q) < apart_mm;
    });
  };
  for (const Start& start : starts(subject)) {
    if (beside(start.p, start.q)) continue;
    if (const auto w = witness_along(subject, start.p, start.q)) found.push_back(*w);
    if (found.size() == kEnough) break;
  }
  return found;
}

}  // namespace

std::optional<Witness> witness_along(const WallSubject& subject, const Point& p, const Point& q,
                                     double limit_mm) {
  if (!(distance_mm(p, q) > kTouch_mm)) return std::nullopt;
  const Ray ray = ray_through(p, q);
  const auto start_mm = leaves(subject.from, ray, p);
  const auto end_mm = arrives(subject, ray, q);
  if (!start_mm || !end_mm || *end_mm - *start_mm > limit_mm + 2 * kTouch_mm) return std::nullopt;
  const auto metal = metal_around(subject, ray, {*start_mm, *end_mm});
  if (!metal) return std::nullopt;
  const Interval stretch{std::max(metal->enter_mm, *start_mm), std::min(metal->exit_mm, *end_mm)};
  const Witness w{ray.at(stretch.enter_mm), ray.at(stretch.exit_mm), stretch.length_mm()};
  if (w.length_mm < 0.0 || (subject.to_round_side && !on_round_side(subject.blank, w.to)))
    return std::nullopt;
  return w;
}

std::optional<Witness> witness_near(const WallSubject& subject, const Point& p, const Point& q) {
  constexpr int kWays = 8;
  constexpr double kNudge_mm = kRegionAccuracy_mm;
  if (const auto w = witness_along(subject, p, q)) return w;
  if (!(distance_mm(p, q) > kTouch_mm)) return std::nullopt;
  const Frame along = Frame::along(p, q - p);
  for (int way = 0; way < kWays; ++way) {
    const double angle = 2 * std::numbers::pi * way / kWays;
    const Vector nudge = kNudge_mm * (std::cos(angle) * along.x + std::sin(angle) * along.y);
    if (const auto w = witness_along(subject, p + nudge, q + nudge)) return w;
  }
  return std::nullopt;
}

std::optional<NearestPair> nearest_in_blank(const WallSubject& subject) {
  return nearest_within(subject, {});
}

std::optional<Witness> shortest_witness(const WallSubject& subject, double limit_mm) {
  constexpr std::size_t kBest = 4;
  constexpr double kClearlyLonger_mm = 0.1;  // after the coarse steps: the fine ones gain far less
  std::vector<Witness> found = first_witnesses(subject);
  for (Witness& w : found)
    w = drawn_tight(subject, w);
  sort_by_length(found);
  found.resize(std::min(found.size(), kBest));
  for (Witness& w : found)
    w = felt_out(subject, w, long_step_mm(subject), kCoarse_mm);
  sort_by_length(found);
  std::erase_if(found, [least_mm = found.empty() ? 0.0 : found.front().length_mm](const Witness& w) {
    return w.length_mm > least_mm + kClearlyLonger_mm;
  });
  if (found.empty()) return std::nullopt;
  if (found.front().length_mm > limit_mm + kClearlyLonger_mm) return found.front();
  for (Witness& w : found)
    w = shortened(subject, w);
  sort_by_length(found);
  return found.front();
}

bool in_air_of(Region others, const Point& point) {
  return std::any_of(others.begin(), others.end(), [&](const Primitive* other) {
    return clearance(*other, point).distance_mm < -kTouch_mm;
  });
}

Ball ball_round(const Primitive& blank) {
  const Bounds b = bounds(blank);
  return {b.middle(), length_mm(b.size())};  // twice the radius needed: room for the feet on planes outside
}

}  // namespace sparewright::shape
