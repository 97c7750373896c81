#include "drawing/one_line.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <utility>

namespace sparewright::drawing {
namespace {

using shape::FlatPoint;

constexpr double kRound_rad = 2.0 * std::numbers::pi;

struct Stretch {
  double from = 0.0;
  double to = 0.0;
};

// In order, apart, gaps of less than `near` closed.
std::vector<Stretch> joined(std::vector<Stretch> all, double near) {
  std::sort(all.begin(), all.end(), [](const Stretch& a, const Stretch& b) { return a.from < b.from; });
  std::vector<Stretch> out;
  for (const Stretch& one : all) {
    if (!out.empty() && one.from <= out.back().to + near) {
      out.back().to = std::max(out.back().to, one.to);
    } else {
      out.push_back(one);
    }
  }
  return out;
}

// What of `all` is in none of `taken`; pieces shorter than `near` are dropped. Both in order and apart.
std::vector<Stretch> less(const std::vector<Stretch>& all, const std::vector<Stretch>& taken, double near) {
  std::vector<Stretch> out;
  for (const Stretch& one : all) {
    double from = one.from;
    for (const Stretch& t : taken) {
      if (t.to <= from || t.from >= one.to) continue;
      if (t.from - from > near) out.push_back({from, t.from});
      from = std::max(from, t.to);
    }
    if (one.to - from > near) out.push_back({from, one.to});
  }
  return out;
}

// What stands before what on one line or circle.
struct Kind {
  Seen seen = Seen::kVisible;
  bool cut_here = false;
};
constexpr std::array kKinds{Kind{Seen::kVisible, true}, Kind{Seen::kVisible, false},
                            Kind{Seen::kHidden, true}, Kind{Seen::kHidden, false}};

// The stretches of one line or circle, of each kind.
struct Track {
  std::array<std::vector<Stretch>, kKinds.size()> of_kind;

  void add(const Kind& kind, Stretch stretch) {
    const std::size_t i = (kind.seen == Seen::kVisible ? 0U : 2U) + (kind.cut_here ? 0U : 1U);
    of_kind.at(i).push_back(stretch);
  }
  void settle(double near) {
    std::vector<Stretch> taken;
    for (std::vector<Stretch>& all : of_kind) {
      all = less(joined(std::move(all), near), taken, near);
      taken.insert(taken.end(), all.begin(), all.end());
      taken = joined(std::move(taken), 0.0);
    }
  }
};

// An endless line: the way along (towards +u, or +v where it is upright), and how far left of the origin it runs.
struct Endless {
  FlatPoint along;
  double off = 0.0;
  Track track;

  [[nodiscard]] double place(const FlatPoint& p) const { return p.u * along.u + p.v * along.v; }
  [[nodiscard]] FlatPoint at(double place) const {
    return {place * along.u - off * along.v, place * along.v + off * along.u};
  }
  [[nodiscard]] double beside(const FlatPoint& p) const { return p.v * along.u - p.u * along.v - off; }
  [[nodiscard]] bool holds(const ViewLine& line) const {
    return std::abs(beside(line.from)) < kOneLine_mm && std::abs(beside(line.to)) < kOneLine_mm;
  }
};

Endless endless(const ViewLine& line, double length) {
  Endless e;
  e.along = {(line.to.u - line.from.u) / length, (line.to.v - line.from.v) / length};
  const bool backwards = e.along.u < -1e-9 || (std::abs(e.along.u) <= 1e-9 && e.along.v < 0.0);
  if (backwards) e.along = {-e.along.u, -e.along.v};
  e.off = line.from.v * e.along.u - line.from.u * e.along.v;
  return e;
}

struct Circle {
  FlatPoint centre;
  double radius = 0.0;
  Track track;
};

// Between 0 and a full turn, in two where it runs over 0.
void add_turned(Track& track, const ViewArc& arc) {
  const Kind kind{arc.seen, arc.cut_here};
  if (arc.to_rad - arc.from_rad >= kRound_rad - 1e-9) return track.add(kind, {0.0, kRound_rad});
  const double from = arc.from_rad - kRound_rad * std::floor(arc.from_rad / kRound_rad);
  const double to = from + arc.to_rad - arc.from_rad;
  track.add(kind, {from, std::min(to, kRound_rad)});
  if (to > kRound_rad) track.add(kind, {0.0, to - kRound_rad});
}

// Two pieces that meet at 0 are one.
void close_at_start(std::vector<Stretch>& stretches, double near) {
  if (stretches.size() < 2 || stretches.front().from > near || stretches.back().to < kRound_rad - near)
    return;
  stretches.front().from = stretches.back().from - kRound_rad;
  stretches.pop_back();
}

}  // namespace

std::vector<ViewLine> one_line_each(const std::vector<ViewLine>& lines) {
  // Long ones first: their direction is the surer.
  std::vector<std::pair<double, const ViewLine*>> by_length;
  for (const ViewLine& line : lines)
    by_length.emplace_back(std::hypot(line.to.u - line.from.u, line.to.v - line.from.v), &line);
  std::stable_sort(by_length.begin(), by_length.end(),
                   [](const auto& a, const auto& b) { return a.first > b.first; });
  std::vector<Endless> all;
  for (const auto& [length, line] : by_length) {
    if (length < kOneLine_mm) continue;
    auto found =
        std::find_if(all.begin(), all.end(), [one = line](const Endless& e) { return e.holds(*one); });
    if (found == all.end()) found = all.insert(all.end(), endless(*line, length));
    const double a = found->place(line->from);
    const double b = found->place(line->to);
    found->track.add({line->seen, line->cut_here}, {std::min(a, b), std::max(a, b)});
  }
  std::vector<ViewLine> out;
  for (Endless& e : all) {
    e.track.settle(kOneLine_mm);
    for (std::size_t i = 0; i < kKinds.size(); ++i) {
      for (const Stretch& s : e.track.of_kind.at(i))
        out.push_back({e.at(s.from), e.at(s.to), kKinds.at(i).seen, kKinds.at(i).cut_here});
    }
  }
  return out;
}

std::vector<ViewArc> one_arc_each(const std::vector<ViewArc>& arcs) {
  std::vector<Circle> all;
  for (const ViewArc& arc : arcs) {
    auto found = std::find_if(all.begin(), all.end(), [&](const Circle& c) {
      return std::hypot(c.centre.u - arc.centre.u, c.centre.v - arc.centre.v) < kOneLine_mm &&
             std::abs(c.radius - arc.radius_mm) < kOneLine_mm;
    });
    if (found == all.end()) found = all.insert(all.end(), Circle{arc.centre, arc.radius_mm, {}});
    add_turned(found->track, arc);
  }
  std::vector<ViewArc> out;
  for (Circle& c : all) {
    const double near = kOneLine_mm / std::max(c.radius, kOneLine_mm);
    c.track.settle(near);
    for (std::size_t i = 0; i < kKinds.size(); ++i) {
      auto& stretches = c.track.of_kind.at(i);
      close_at_start(stretches, near);
      for (const Stretch& s : stretches)
        out.push_back({c.centre, c.radius, s.from, s.to, kKinds.at(i).seen, kKinds.at(i).cut_here});
    }
  }
  return out;
}

}  // namespace sparewright::drawing
