// The lines that make one hole, after its spot.
#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/handbook/drill_points.hpp"
#include "core/handbook/feeds.hpp"
#include "core/route/bench.hpp"
#include "core/route/hole_tools.hpp"

namespace sparewright::route {
namespace {

using handbook::Operation;
using ledger::Figure;
using quantity::Kind;
using shop::Tool;
using shop::ToolKind;

// How far a tool is run past the far side of a through hole. Common practice.
constexpr double kRunThrough_mm = 1.5;

double diameter_mm(const Tool& tool) {
  return tool.diameter ? tool.diameter->base : std::nan("");
}

std::string depth_words(MillBench& bench, const HoleWork& w, const char* figure, bool full_diameter) {
  if (!w.hole->depth && std::string_view(figure) == "depth") return "through";
  const Figure& depth = bench.feature_figure(w.work->feature, figure);
  return fmt::format("{} deep{}", or_not_known(depth, bench.print.plain(depth.value)),
                     full_diameter ? " at full diameter" : "");
}

void touch_off(MillBench& bench, const HoleWork& w, const Tool& tool) {
  bench.sheet.items.emplace_back(Note{fmt::format(
      "{}: {} just touching the face with its point, Z collar to 0.", w.work->feature, tool.name)});
}

// The reading of a blind hole, from where the drill's point touches the face: the point goes ahead of the full diameter.
std::string blind_reads(MillBench& bench, const HoleWork& w, const std::string& name, const Tool& tool) {
  ledger::Root point;
  point.kind = Kind::kLength;
  point.origin = ledger::Origin::kStandard;
  point.source = "118 degree point, common practice";
  if (tool.diameter) point.value = handbook::point_length(tool.diameter->diameter()).base();
  const Figure& travel = bench.pen.work(
      name + " travel", Kind::kLength, "depth at full diameter and the point",
      [](auto depth, auto tip) { return depth + tip; }, bench.feature_figure(w.work->feature, "depth"),
      bench.pen.root(name + " point", point));
  return depth_reading(bench, name, travel).reads;
}

// How deep the work is along the hole, from where it starts to where it comes out.
const Figure& through_length(MillBench& bench, const HoleWork& w) {
  return bench.pen.work(
      w.work->feature + "/length", Kind::kLength, "from where it starts to the far side",
      [](auto a, auto b) {
        using std::abs;
        return abs(a - b);
      },
      bench.feature_figure(w.work->feature, "starts at"), bench.side(part::opposite(w.hole->into)));
}

void drill_line(MillBench& bench, const HoleWork& w, const Tool& tool) {
  const std::string name = fmt::format("{}/{}", w.work->feature, tool.name);
  if (w.hole->depth) touch_off(bench, w, tool);
  const std::string z = w.hole->depth ? blind_reads(bench, w, name, tool) : std::string();
  Line& line = place(bench.add_line(fmt::format("{}, {}: {}", w.work->feature, tool.name,
                                                depth_words(bench, w, "depth", true))),
                     w);
  line.z_reads = z;
  line.rpm = rpm_text(bench, name, tool, Operation::kDrilling, diameter_mm(tool));
  line.feed = "hand, oil";
  const std::string leaves = drilled_expect(bench, name, tool);
  line.expect =
      is_last_size(*w.work, tool) ? feature_limits(bench, w, "diameter", is_fine(w.hole->diameter)) : leaves;
}

void ream_line(MillBench& bench, const HoleWork& w, const Tool& tool) {
  tool_diameter(bench, fmt::format("{}/{} diameter", w.work->feature, tool.name), tool);
  Line& line = place(bench.add_line(fmt::format("{}, {}: {}", w.work->feature, tool.name,
                                                depth_words(bench, w, "depth", false))),
                     w);
  line.rpm = rpm_text(bench, fmt::format("{}/{}", w.work->feature, tool.name), tool, Operation::kReaming,
                      diameter_mm(tool));
  line.feed = "hand, oil";
  line.expect = feature_limits(bench, w, "diameter", is_fine(w.hole->diameter));
  line.to_fill = true;
}

void counterbore_line(MillBench& bench, const HoleWork& w, const Tool& tool) {
  if (!w.hole->counterbore) return;
  tool_diameter(bench, fmt::format("{}/{} diameter", w.work->feature, tool.name), tool);
  bench.sheet.items.emplace_back(
      Note{fmt::format("{}: touch the face with the {}, Z collar to 0.", w.work->feature, tool.name)});
  const Figure& depth = to_make(bench, w.work->feature, "counterbore depth", w.hole->counterbore->depth);
  Line& line = place(bench.add_line(fmt::format("{}, {}: to {} deep", w.work->feature, tool.name,
                                                or_not_known(depth, bench.print.plain(depth.value)))),
                     w);
  line.z_reads = depth_reading(bench, fmt::format("{}/{}", w.work->feature, tool.name), depth).reads;
  line.rpm = rpm_text(bench, fmt::format("{}/{}", w.work->feature, tool.name), tool, Operation::kDrilling,
                      diameter_mm(tool));
  line.feed = "hand, oil";
  line.expect = "depth " + feature_limits(bench, w, "counterbore depth", false);
  line.to_fill = true;
}

void tap_line(MillBench& bench, const HoleWork& w, const Tool& tool) {
  const std::string thread = w.hole->thread.empty() ? tool.thread : w.hole->thread;
  std::string depth;
  if (w.hole->depth) {
    const Figure& drilled = bench.feature_figure(w.work->feature, "depth");
    depth = fmt::format("; blind: {} is all the drill left, stop short of it, clear the chips",
                        or_not_known(drilled, bench.print.plain(drilled.value)));
  }
  Line& line = place(bench.add_line(fmt::format("{}, tap {}, started in the spindle by hand{}",
                                                w.work->feature, thread, depth)),
                     w);
  line.rpm = "by hand";
  line.feed = "oil";
}

// Room for the deepest tool below the work, and between the widest and the parallels.
void write_room(MillBench& bench, const HoleWork& w) {
  double below = 0.0;
  for (const Tool& tool : w.work->tools) {
    if (tool.kind == ToolKind::kSpotDrill || tool.kind == ToolKind::kCounterbore ||
        tool.kind == ToolKind::kCountersink)
      continue;
    double tip = 0.0;
    if (tool.kind == ToolKind::kTwistDrill && tool.diameter) {
      tip = handbook::point_length(tool.diameter->diameter()).base();
    }
    below = std::max(below, tip + kRunThrough_mm);
  }
  const std::string& feature = w.work->feature;
  const auto stated = [&](const std::string& local, double base, std::string source) -> const Figure& {
    ledger::Root root;
    root.kind = Kind::kLength;
    root.value = base;
    root.origin = ledger::Origin::kDefault;
    root.source = std::move(source);
    return bench.pen.root(local, root);
  };
  if (w.hole->depth) {
    const Figure& tip =
        stated(feature + "/past the depth", below - kRunThrough_mm, "point of the largest drill");
    bench.pen.work(
        feature + "/below", Kind::kLength, "depth and drill point, less the metal there is",
        [](auto depth, auto point, auto metal) { return depth + point - metal; },
        bench.feature_figure(feature, "depth"), tip, through_length(bench, w));
    return;
  }
  stated(feature + "/below", below, "point of the largest drill and 1.5 mm run through (common practice)");

  if (bench.on.holding.vise() == nullptr) return;  // packing stands where nothing goes through
  const Along y = along(bench.orientation, MachineAxis::kY);
  const Figure& at = bench.feature_figure(feature, fmt::format("at {}", part::name_of(y.axis)));
  const Figure& radius = bench.pen.work(
      feature + "/radius", Kind::kRadius, "half the largest diameter made through",
      [](auto d) { return d / 2.0; }, bench.feature_figure(feature, "diameter"));
  const Figure& parallel = stated(feature + "/parallel", bench.on.holding.under.thickness.base(),
                                  "thickness of a parallel, hard against the jaw");
  const auto room = [](auto place, auto jaw, auto r, auto t) {
    using std::abs;
    return abs(place - jaw) - r - t;
  };
  if (sits_on_middle(bench)) {
    bench.pen.work(
        feature + "/to parallel", Kind::kLength, "place to the middle, less radius and the pair of parallels",
        [](auto place, auto low, auto high, auto r, auto t) {
          using std::abs;
          return abs(place - (low + high) / 2.0) - r - t;
        },
        at, bench.side(part::face_at(y.axis, false)), bench.side(part::face_at(y.axis, true)), radius,
        parallel);
    return;
  }
  const part::Face away = bench.orientation.away;
  const Figure& fixed =
      bench.pen.work(feature + "/to fixed parallel", Kind::kLength, "place to jaw, less radius and parallel",
                     room, at, bench.side(away), radius, parallel);
  const Figure& moving =
      bench.pen.work(feature + "/to moving parallel", Kind::kLength, "place to jaw, less radius and parallel",
                     room, at, bench.side(part::opposite(away)), radius, parallel);
  bench.pen.work(
      feature + "/to parallel", Kind::kLength, "the nearer parallel",
      [](auto a, auto b) {
        using std::min;
        return min(a, b);
      },
      fixed, moving);
}

}  // namespace

Line& place(Line& line, const HoleWork& w) {
  line.x_reads = w.x.reads;
  line.y_reads = w.y.reads;
  return line;
}

std::string feature_limits(const Bench& bench, const HoleWork& w, const char* figure, bool fine) {
  const Figure& least = bench.feature_figure(w.work->feature, fmt::format("{}/least", figure));
  const Figure& most = bench.feature_figure(w.work->feature, fmt::format("{}/most", figure));
  return or_not_known(least, bench.print.limits(least.value, most.value, fine));
}

bool is_fine(const part::Dimension& d) {
  return d.duty == part::Duty::kFits;
}

void write_hole(MillBench& bench, const HoleWork& w) {
  write_room(bench, w);
  for (const Tool& tool : w.work->tools) {
    if (tool.kind != ToolKind::kSpotDrill && tool.kind != ToolKind::kEdgeFinder) bench.take(tool);
    switch (tool.kind) {
      case ToolKind::kTwistDrill:
        drill_line(bench, w, tool);
        break;
      case ToolKind::kReamer:
        ream_line(bench, w, tool);
        break;
      case ToolKind::kCounterbore:
      case ToolKind::kEndMill:
        counterbore_line(bench, w, tool);
        break;
      case ToolKind::kCountersink:
        write_countersink(bench, w, tool);
        break;
      case ToolKind::kBoringHead:
        write_bore(bench, w, tool);
        break;
      case ToolKind::kTap:
        tap_line(bench, w, tool);
        break;
      default:
        break;  // has nothing to do in a hole on a mill
    }
  }
}

}  // namespace sparewright::route
