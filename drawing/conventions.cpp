#include "drawing/conventions.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <fmt/format.h>

#include "core/handbook/metric_threads.hpp"
#include "core/handbook/unified_threads.hpp"

namespace sparewright::drawing {
namespace {

using part::Axis;
using part::Face;
using shape::FlatPoint;

constexpr double kGap_rad = std::numbers::pi / 2.0;  // the quarter left open

struct ThreadSize {
  double major_mm = 0.0;
  double pitch_mm = 0.0;
};

std::optional<ThreadSize> size_of(const std::string& written) {
  if (const auto unified = handbook::read_unified_thread(written))
    return ThreadSize{unified->major.base(), unified->pitch().base()};
  if (const auto metric = handbook::read_metric_thread(written))
    return ThreadSize{metric->major.base(), metric->pitch.base()};
  return std::nullopt;
}

// Depth of an outside thread of 60 degrees to its root: 17/24 of its sharp height (ASME B1.1 and ISO 68-1, from memory).
double minor_of(double major_mm, const ThreadSize& size) {
  constexpr double kDepth = 17.0 / 24.0 * 0.8660254;
  return major_mm - 2.0 * kDepth * size.pitch_mm;
}

class Conventions {
 public:
  Conventions(const part::Part& part, const ledger::Snapshot& figures, PartViews& views)
      : part_(part), figures_(figures), views_(views) {}

  void add_all() {
    for (const part::Feature& feature : part_.features) {
      if (const auto* hole = std::get_if<part::Hole>(&feature.shape)) {
        if (!hole->thread.empty() && !hole->lean && !hole->around_bar) add_tapped(feature, *hole);
      } else if (const auto* formed = std::get_if<part::Formed>(&feature.shape)) {
        if (formed->form == part::Form::kThread) add_outside(feature, *formed);
        if (formed->form == part::Form::kKnurl) add_knurl(feature, *formed);
      }
    }
  }

 private:
  [[nodiscard]] double value(const std::string& name) const { return value_or_nan(figures_, name); }
  [[nodiscard]] double size(const part::Feature& feature, std::string_view local) const {
    return value(fmt::format("{}/{}", part::feature_path(feature.name), local));
  }
  [[nodiscard]] double side(Face face) const { return value(part::side_path(part_, face)); }
  [[nodiscard]] double blank_middle(Axis axis) const {
    const auto at = [&](bool greater) {
      return value(fmt::format("blank/{}", part::name_of(part::face_at(axis, greater))));
    };
    return (at(false) + at(true)) / 2.0;
  }

  static bool all_known(std::initializer_list<double> values) {
    return std::all_of(values.begin(), values.end(), [](double v) { return std::isfinite(v); });
  }

  static void add_open_circle(View& view, const FlatPoint& centre, double radius) {
    view.thin_arcs.push_back({centre, radius, kGap_rad, 2.0 * std::numbers::pi, Seen::kVisible});
  }

  // --- on the outside of a bar ---
  struct Stretch {
    double near = 0.0;
    double far = 0.0;
  };
  [[nodiscard]] Stretch stretch_of(const part::Feature& feature, const part::Formed& formed) const {
    const double way = formed.side == Face::kLeftEnd ? 1.0 : -1.0;
    const double from_end = formed.sizes.contains("from end") ? size(feature, "from end") : 0.0;
    const double near = side(formed.side) + way * from_end;
    return {near, near + way * size(feature, "length")};
  }

  void add_outside(const part::Feature& feature, const part::Formed& formed) {
    const auto thread = size_of(formed.thread);
    const Stretch x = stretch_of(feature, formed);
    const double y = blank_middle(Axis::kY);
    const double z = blank_middle(Axis::kZ);
    if (!thread || views_.section_y_mm) return;
    const double radius = minor_of(size(feature, "diameter"), *thread) / 2.0;
    if (!all_known({x.near, x.far, y, z, radius}) || radius <= 0.0) return;
    for (const double v : {z + radius, z - radius})
      views_.front.thin_lines.push_back({{x.near, v}, {x.far, v}});
    if (views_.end && formed.side == Face::kRightEnd) add_open_circle(*views_.end, {y, z}, radius);
  }

  // Ridges at 30 degrees to the axis, both ways.
  void add_knurl(const part::Feature& feature, const part::Formed& formed) {
    const Stretch x = stretch_of(feature, formed);
    const double z = blank_middle(Axis::kZ);
    const double radius = size(feature, "diameter") / 2.0;
    if (!all_known({x.near, x.far, z, radius}) || views_.section_y_mm) return;
    const double low = std::min(x.near, x.far);
    const double high = std::max(x.near, x.far);
    const double slope = std::tan(std::numbers::pi / 6.0);
    const double rise = slope * (high - low);
    constexpr int kLines = 8;  // over the height: what the eye takes for a pattern
    const double apart = 2.0 * radius / kLines;
    if (!(apart > 0.0)) return;
    for (double start = z - radius - rise + apart / 2.0; start < z + radius; start += apart) {
      for (const bool rising : {true, false})
        add_ridge({low, high}, rising ? slope : -slope, rising ? start : start + rise,
                  {z - radius, z + radius});
    }
  }

  // The part of a line that lies within the height; at_near: where it starts.
  void add_ridge(const Stretch& x, double slope, double at_near, const Stretch& within) {
    const auto reaches = [&](double v) { return x.near + (v - at_near) / slope; };
    const double from = std::max(x.near, reaches(slope > 0.0 ? within.near : within.far));
    const double to = std::min(x.far, reaches(slope > 0.0 ? within.far : within.near));
    if (to - from < shape::kShortestSide_mm) return;
    const auto at = [&](double u) { return FlatPoint{u, at_near + slope * (u - x.near)}; };
    views_.front.thin_lines.push_back({at(from), at(to)});
  }

  // --- in a hole ---
  void add_tapped(const part::Feature& feature, const part::Hole& hole) {
    const auto thread = size_of(hole.thread);
    if (!thread) return;
    const double radius = thread->major_mm / 2.0;
    const auto at = [&](Axis axis) { return value(part::at_path(feature.name, axis)); };
    if (hole.into == Face::kTop && views_.top) {
      const FlatPoint centre{at(Axis::kX), at(Axis::kY)};
      if (all_known({centre.u, centre.v})) add_open_circle(*views_.top, centre, radius);
    } else if (hole.into == Face::kRightEnd && views_.end) {
      const FlatPoint centre{at(Axis::kY), at(Axis::kZ)};
      if (all_known({centre.u, centre.v})) add_open_circle(*views_.end, centre, radius);
    } else if (hole.into == Face::kFront && !views_.section_y_mm) {
      const FlatPoint centre{at(Axis::kX), at(Axis::kZ)};
      if (all_known({centre.u, centre.v})) add_open_circle(views_.front, centre, radius);
    }
    if (part::axis_of(hole.into) == Axis::kZ)
      add_in_section(feature, hole, radius, at(Axis::kX), at(Axis::kY));
  }

  void add_in_section(const part::Feature& feature, const part::Hole& hole, double radius, double x,
                      double y) {
    if (!views_.section_y_mm || !(std::abs(*views_.section_y_mm - y) < shape::kShortestSide_mm)) return;
    const double start = size(feature, "starts at");
    const double way = hole.into == Face::kTop ? -1.0 : 1.0;
    const double end = hole.depth ? start + way * size(feature, "depth") : side(part::opposite(hole.into));
    if (!all_known({x, start, end})) return;
    for (const double u : {x - radius, x + radius})
      views_.front.thin_lines.push_back({{u, start}, {u, end}});
  }

  const part::Part& part_;
  const ledger::Snapshot& figures_;
  PartViews& views_;
};

}  // namespace

void add_conventions(const part::Part& part, const ledger::Snapshot& figures, PartViews& views) {
  Conventions(part, figures, views).add_all();
}

}  // namespace sparewright::drawing
