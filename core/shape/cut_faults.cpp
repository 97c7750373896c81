#include "core/shape/cut_faults.hpp"

#include <algorithm>
#include <array>

#include "core/shape/clearance.hpp"
#include "core/shape/guide_lines.hpp"
#include "core/shape/material.hpp"
#include "core/shape/region.hpp"
#include "core/shape/wall.hpp"
#include "core/shape/witness.hpp"

namespace sparewright::shape {
namespace {

constexpr int kThirds = 60;

// The least of a function of one variable on low..high: exact where it is convex.
template <typename Function>
double least_at(const Function& f, double low, double high) {
  for (int i = 0; i < kThirds; ++i) {
    const double s = low + (high - low) / 3;
    const double t = high - (high - low) / 3;
    if (f(s) <= f(t)) {
      high = t;
    } else {
      low = s;
    }
  }
  return (low + high) / 2;
}

SideMetal metal_at(const Primitive& blank, const Point& p) {
  return {-clearance(blank, p).distance_mm, p};
}

SideMetal less(const SideMetal& a, const SideMetal& b) {
  return b.least_mm < a.least_mm ? b : a;
}

// The clearance from the blank is convex along a line: its least lies at a third-point search's end.
SideMetal along(const Primitive& blank, const GuideLine& line) {
  if (!line.start_open && !line.end_open) return less(metal_at(blank, line.start), metal_at(blank, line.end));
  if (!line.start_open) return metal_at(blank, line.start);
  if (!line.end_open) return metal_at(blank, line.end);
  const auto out_mm = [&](double t) {
    return clearance(blank, between(line.start, line.end, t)).distance_mm;
  };
  return metal_at(blank, between(line.start, line.end, least_at(out_mm, 0.0, 1.0)));
}

SideMetal over(const Primitive& blank, const Patch& patch) {
  const auto at = [&](double s, double t) { return patch.corner + s * patch.u + t * patch.v; };
  const auto out_mm = [&](double s, double t) { return clearance(blank, at(s, t)).distance_mm; };
  const auto best_t = [&](double s) { return least_at([&](double t) { return out_mm(s, t); }, 0.0, 1.0); };
  const double s = least_at([&](double one) { return out_mm(one, best_t(one)); }, 0.0, 1.0);
  return metal_at(blank, at(s, best_t(s)));
}

// All round a side, then closed in on where it is least.
SideMetal round_side(const Primitive& blank, const Cut& cut) {
  constexpr int kRound = 120;
  constexpr double kStep_rad = 2 * std::numbers::pi / kRound;
  const auto at = [&](double angle) { return along(blank, side_line(cut.nominal, cut.open, angle)); };
  double least_angle = 0.0;
  SideMetal least = at(0.0);
  for (int i = 1; i < kRound; ++i) {
    const SideMetal here = at(i * kStep_rad);
    if (here.least_mm < least.least_mm) {
      least = here;
      least_angle = i * kStep_rad;
    }
  }
  const auto metal_mm = [&](double angle) { return at(angle).least_mm; };
  return less(least, at(least_at(metal_mm, least_angle - kStep_rad, least_angle + kStep_rad)));
}

}  // namespace

bool reaches(const Primitive& blank, const Primitive& body) {
  if (!is_convex(body)) return metal_within({blank, {}}, body).volume_mm3 > 0.0;
  const std::array<const Primitive*, 2> both{&body, &blank};
  return deepest(both, ball_round(blank)).depth_mm > kTouch_mm;
}

Bite bite_of(const Work& work, std::size_t cut, Effort effort) {
  const Primitive& body = work.cuts[cut].body;
  if (!reaches(work.blank, body)) return {Taken::kOutsideBlank, {}};
  const RayVolume volume = metal_within({work.blank, work.cuts.first(cut)}, body, effort);
  return {volume.volume_mm3 > 0.0 ? Taken::kMetal : Taken::kAlreadyAir, volume};
}

std::optional<SideMetal> side_metal(const Work& work, std::size_t cut) {
  const Cut& subject = work.cuts[cut];
  std::vector<SideMetal> all;
  if (has_round_side(subject.nominal)) all.push_back(round_side(work.blank, subject));
  for (const GuideLine& line : edge_lines(subject.nominal, subject.open))
    all.push_back(along(work.blank, line));
  for (const Patch& patch : lone_faces(subject.nominal, subject.open))
    all.push_back(over(work.blank, patch));
  for (const Point& point : shut_points(subject.nominal))
    all.push_back(metal_at(work.blank, point));
  if (all.empty()) return std::nullopt;
  return *std::min_element(all.begin(), all.end(),
                           [](const auto& a, const auto& b) { return a.least_mm < b.least_mm; });
}

bool breaks_out(const Work& work, std::size_t cut) {
  const auto side = side_metal(work, cut);
  return side && side->least_mm < -kTouch_mm;
}

std::optional<Point> metal_past_open_end(const Work& work, std::size_t cut) {
  const Cut& subject = work.cuts[cut];
  const Work before{work.blank, work.cuts.first(cut)};
  for (const OpenPoint& end : open_points(subject.nominal, subject.open)) {
    const Ray out{end.at, end.out};
    for (const Interval& metal : metal_along(before, out)) {
      const double first_mm = std::max(metal.enter_mm, 0.0);
      const double last_mm = std::min(metal.exit_mm, kOverrun_mm);
      if (last_mm - first_mm > kTouch_mm) return out.at((first_mm + last_mm) / 2);
    }
  }
  return std::nullopt;
}

}  // namespace sparewright::shape
