#include "core/shape/wall.hpp"

#include <algorithm>
#include <array>

#include "core/shape/blank_face.hpp"
#include "core/shape/clearance.hpp"
#include "core/shape/distance.hpp"
#include "core/shape/material.hpp"
#include "core/shape/meeting.hpp"
#include "core/shape/witness.hpp"

namespace sparewright::shape {
namespace {

Wall ruled_out(double at_least_mm) {
  return {WallKind::kThickEnough, at_least_mm, at_least_mm, {}, {}};
}
Wall open_at(const Point& p) {
  return {WallKind::kOpen, 0.0, 0.0, p, p};
}
Wall proven_by(const Witness& w, double at_least_mm) {
  return {w.length_mm > kTouch_mm ? WallKind::kMetal : WallKind::kTangent, w.length_mm,
          std::min(at_least_mm, w.length_mm), w.from, w.to};
}

std::optional<Point> where_open(const WallSubject& subject) {
  const Primitive place = meeting_place(subject);
  const std::array<const Primitive*, 3> all{&subject.from, &subject.to, &place};
  const Deepest deep = deepest(all, ball_round(subject.blank));
  if (deep.depth_mm <= kTouch_mm) return std::nullopt;
  if (!in_air_of(subject.others, deep.point)) return deep.point;
  return meeting_in_metal(subject, place);
}

// Where one of the two is not convex, rays and the search are all there is. The distance of the convex bodies around them
// rules thin walls out all the same.
Wall sampled_wall(const WallSubject& subject, double at_least_mm, double limit_mm) {
  const Primitive place = meeting_place(subject);
  if (const auto p = meeting_in_metal(subject, place)) return open_at(*p);
  if (const auto w = shortest_witness(subject, limit_mm)) {
    const Wall wall = proven_by(*w, at_least_mm);
    if (wall.kind != WallKind::kTangent) return wall;
    const auto p = meeting_at_touch(subject, place, w->from);
    return p ? open_at(*p) : wall;
  }
  return {WallKind::kNothingBetween, 0.0, at_least_mm, {}, {}};
}

Wall wall_of(const WallSubject& subject, double limit_mm) {
  const Distance apart = distance(subject.from, subject.to);
  if (apart.at_least_mm >= limit_mm) return ruled_out(apart.at_least_mm);
  if (!is_convex(subject.from) || !is_convex(subject.to))
    return sampled_wall(subject, apart.at_least_mm, limit_mm);
  if (apart.distance_mm <= kTouch_mm) {
    if (const auto p = where_open(subject)) return open_at(*p);
  } else if (const auto w = witness_near(subject, apart.on_a, apart.on_b)) {
    return proven_by(*w, apart.at_least_mm);
  }
  if (const auto pair = nearest_in_blank(subject)) {
    const double at_least_mm = std::max(apart.at_least_mm, pair->distance_mm - kWallAccuracy_mm);
    if (at_least_mm >= limit_mm) return ruled_out(at_least_mm);
    if (pair->distance_mm <= kTouch_mm && !in_air_of(subject.others, pair->on_a)) {
      return proven_by({pair->on_a, pair->on_b, 0.0}, 0.0);
    }
    if (const auto w = witness_near(subject, pair->on_a, pair->on_b)) return proven_by(*w, at_least_mm);
  }
  if (const auto w = shortest_witness(subject, limit_mm)) return proven_by(*w, apart.at_least_mm);
  return {WallKind::kNothingBetween, 0.0, apart.at_least_mm, {}, {}};
}

std::vector<const Primitive*> bodies_but(const Work& work, std::size_t one, std::size_t other) {
  std::vector<const Primitive*> all;
  for (std::size_t i = 0; i < work.cuts.size(); ++i) {
    if (i != one && i != other) all.push_back(&work.cuts[i].body);
  }
  return all;
}

Wall towards(const Work& work, std::size_t cut, const HalfSpace& beyond, bool round, double limit_mm) {
  const Primitive outside = beyond;
  const WallSubject subject{
      work.blank, work.cuts[cut].body, outside, bodies(work.cuts), bodies_but(work, cut, cut), true, round};
  return wall_of(subject, limit_mm);
}

// --- the round side
// -----------------------------------------------------------------------------------------------

// How far a body stays inside the plane that touches the side in this direction; negative where it reaches
// beyond.
double gap_mm(const Primitive& blank, const Primitive& body, double angle_rad) {
  if (std::holds_alternative<HalfSpace>(body)) return -std::numeric_limits<double>::infinity();
  const HalfSpace beyond = beyond_side(blank, angle_rad);
  return clearance(beyond, farthest(body, -beyond.frame.z)).distance_mm;
}

// The directions in which a body comes nearest to the round side, nearest first: a look all round, then
// closed in on.
std::vector<double> nearest_directions(const Primitive& blank, const Primitive& body) {
  constexpr int kRound = 180;
  constexpr int kThirds = 50;
  constexpr double kStep_rad = 2 * std::numbers::pi / kRound;
  const auto gap = [&](double angle) { return gap_mm(blank, body, angle); };
  std::array<double, kRound> seen{};
  for (std::size_t i = 0; i < kRound; ++i)
    seen.at(i) = gap(kStep_rad * static_cast<double>(i));
  std::vector<double> angles;
  for (std::size_t i = 0; i < kRound; ++i) {
    if (seen.at(i) > seen.at((i + 1) % kRound) || seen.at(i) >= seen.at((i + kRound - 1) % kRound)) continue;
    double low = kStep_rad * (static_cast<double>(i) - 1);
    double high = kStep_rad * (static_cast<double>(i) + 1);
    for (int k = 0; k < kThirds; ++k) {
      const double s = low + (high - low) / 3;
      const double t = high - (high - low) / 3;
      (gap(s) <= gap(t) ? high : low) = gap(s) <= gap(t) ? t : s;
    }
    angles.push_back((low + high) / 2);
  }
  if (angles.empty()) {  // the same all round: on the axis, or endless
    const Vector into = frame_of(blank).to_local(-frame_of(body).z);
    angles.push_back(std::atan2(into.y, into.x));
  }
  std::stable_sort(angles.begin(), angles.end(), [&](double a, double b) { return gap(a) < gap(b); });
  return angles;
}

// Draws the touching plane after the witness: it is moved to where the witness left the bar, as long as that
// helps.
Wall settled(const Work& work, std::size_t cut, double angle_rad, double limit_mm) {
  constexpr int kMostMoves = 12;
  Wall best = towards(work, cut, beyond_side(work.blank, angle_rad), true, limit_mm);
  for (int move = 0; move < kMostMoves && best.kind == WallKind::kMetal; ++move) {
    const Point end = frame_of(work.blank).to_local(best.to);
    const HalfSpace beyond = beyond_side(work.blank, std::atan2(end.y, end.x));
    const Wall next = towards(work, cut, beyond, true, limit_mm);
    if (next.kind != WallKind::kMetal || next.least_mm >= best.least_mm - kRegionAccuracy_mm) break;
    best = next;
  }
  return best;
}

bool is_wall(const Wall& w) {
  return w.kind == WallKind::kMetal || w.kind == WallKind::kTangent;
}

Wall to_round_side(const Work& work, std::size_t cut, double limit_mm) {
  constexpr std::size_t kMostDirections = 6;
  const Primitive& body = work.cuts[cut].body;
  std::vector<double> angles = nearest_directions(work.blank, body);
  const double at_least_mm = std::max(0.0, gap_mm(work.blank, body, angles.front()));
  if (at_least_mm >= limit_mm) return ruled_out(at_least_mm);
  angles.resize(std::min(angles.size(), kMostDirections));
  Wall best;
  for (const double angle : angles) {
    const Wall one = settled(work, cut, angle, limit_mm);
    if (one.kind == WallKind::kOpen) return one;
    if (is_wall(one) && (!is_wall(best) || one.least_mm < best.least_mm)) best = one;
    if (one.kind == WallKind::kThickEnough && !is_wall(best)) best = one;
  }
  best.at_least_mm = std::min(at_least_mm, best.least_mm);
  return best;
}

}  // namespace

Wall wall_between(const Work& work, std::size_t one, std::size_t other, double limit_mm) {
  const WallSubject subject{work.blank, work.cuts[one].body, work.cuts[other].body, bodies(work.cuts),
                            bodies_but(work, one, other)};
  return wall_of(subject, limit_mm);
}

std::vector<FaceWall> walls_to_outside(const Work& work, std::size_t cut, double limit_mm) {
  std::vector<FaceWall> all;
  for (const BlankFace& face : faces(work.blank)) {
    const Wall wall =
        face.round ? to_round_side(work, cut, limit_mm) : towards(work, cut, face.outside, false, limit_mm);
    all.push_back({face.name, wall});
  }
  return all;
}

}  // namespace sparewright::shape
