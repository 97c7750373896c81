#include "drawing/long_break.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace sparewright::drawing {
namespace {

using shape::FlatPoint;

constexpr double kLong = 6.0;          // lengths over heights from where on a break is worth it
constexpr double kWorthIt = 0.35;      // of the length has to be plain
constexpr double kLeftEachSide = 0.1;  // of the plain stretch
constexpr double kGap = 0.3;           // of the height, between the waves
constexpr double kLevel_mm = 1e-6;

struct Stretch {
  double from = 0.0;
  double to = 0.0;
};

bool is_level(const ViewLine& line) {
  return std::abs(line.from.v - line.to.v) < kLevel_mm;
}

// What of the length has something in it.
class Busy {
 public:
  void add(double a, double b) { all_.push_back({std::min(a, b), std::max(a, b)}); }
  void add(double u) { add(u, u); }

  void add(const View& view) {
    for (const auto* lines : {&view.lines, &view.thin_lines}) {
      for (const ViewLine& line : *lines) {
        if (is_level(line)) {
          add(line.from.u);
          add(line.to.u);
        } else {
          add(line.from.u, line.to.u);
        }
      }
    }
    for (const auto* arcs : {&view.arcs, &view.thin_arcs}) {
      for (const ViewArc& arc : *arcs)
        add(arc.centre.u - arc.radius_mm, arc.centre.u + arc.radius_mm);
    }
    for (const ViewPath& path : view.paths) {
      for (const FlatPoint& p : path.points)
        add(path.points.front().u, p.u);
    }
  }

  // The longest stretch with nothing in it.
  [[nodiscard]] Stretch plain() && {
    std::sort(all_.begin(), all_.end(), [](const Stretch& a, const Stretch& b) { return a.from < b.from; });
    Stretch best;
    double reached = all_.empty() ? 0.0 : all_.front().to;
    for (const Stretch& one : all_) {
      if (one.from - reached > best.to - best.from) best = {reached, one.from};
      reached = std::max(reached, one.to);
    }
    return best;
  }

 private:
  std::vector<Stretch> all_;
};

std::vector<ViewLine> cut(const std::vector<ViewLine>& lines, const LongBreak& taken) {
  std::vector<ViewLine> out;
  for (ViewLine line : lines) {
    if (line.from.u > line.to.u) std::swap(line.from, line.to);
    const bool spans = line.from.u < taken.from_mm && line.to.u > taken.to_mm;
    if (spans) {  // along it
      out.push_back(line);
      out.back().to.u = taken.from_mm;
      line.from.u = taken.to_mm;
    }
    line.from = taken.shown(line.from);
    line.to = taken.shown(line.to);
    out.push_back(line);
  }
  return out;
}

// The outline where it is cut, for the waves.
void add_waves(View& view, const LongBreak& taken) {
  std::optional<Stretch> across;
  for (const ViewLine& line : view.lines) {
    const bool spans =
        std::min(line.from.u, line.to.u) < taken.from_mm && std::max(line.from.u, line.to.u) > taken.to_mm;
    if (!spans || line.seen != Seen::kVisible) continue;
    across = across ? Stretch{std::min(across->from, line.from.v), std::max(across->to, line.from.v)}
                    : Stretch{line.from.v, line.from.v};
  }
  if (!across) return;
  view.waves.push_back({taken.from_mm, across->from, across->to});
  view.waves.push_back({taken.from_mm + taken.gap_mm, across->from, across->to});
}

View broken(View view, const LongBreak& taken) {
  add_waves(view, taken);
  view.lines = cut(view.lines, taken);
  view.thin_lines = cut(view.thin_lines, taken);
  for (auto* arcs : {&view.arcs, &view.thin_arcs}) {
    for (ViewArc& arc : *arcs)
      arc.centre = taken.shown(arc.centre);
  }
  for (ViewPath& path : view.paths) {
    for (FlatPoint& p : path.points)
      p = taken.shown(p);
  }
  view.high = taken.shown(view.high);
  return view;
}

}  // namespace

PartViews with_break(const PartViews& views, const Marks& marks) {
  const double length = views.front.high.u - views.front.low.u;
  const double height = views.front.high.v - views.front.low.v;
  if (views.section_y_mm || !(length > kLong * height)) return views;
  Busy busy;
  busy.add(views.front);
  if (views.top) busy.add(*views.top);
  const Sight front = sight_of(ViewOf::kFront);
  for (const LengthMark& mark : marks.lengths) {
    busy.add(front.seen(mark.from).u);
    busy.add(front.seen(mark.to).u);
  }
  for (const NoteMark& note : marks.notes)
    busy.add(front.seen(note.at).u - note.radius_mm, front.seen(note.at).u + note.radius_mm);
  const Stretch plain = std::move(busy).plain();
  const double plain_mm = plain.to - plain.from;
  if (!(plain_mm > kWorthIt * length)) return views;
  PartViews out = views;
  out.broken =
      LongBreak{plain.from + kLeftEachSide * plain_mm, plain.to - kLeftEachSide * plain_mm, kGap * height};
  out.front = broken(out.front, *out.broken);
  if (out.top) out.top = broken(*out.top, *out.broken);
  return out;
}

}  // namespace sparewright::drawing
