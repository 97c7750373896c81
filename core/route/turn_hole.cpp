// A hole on the axis: drilled, reamed and tapped from the tailstock; the boring bar has a file of its own.
#include <cmath>

#include <fmt/format.h>

#include "core/handbook/drill_points.hpp"
#include "core/route/hole_tools.hpp"
#include "core/route/lathe_bench.hpp"

namespace sparewright::route {
namespace {

using handbook::Operation;
using ledger::Figure;
using quantity::Kind;
using quantity::Length;
using shop::Tool;
using shop::ToolKind;

// How far a tool is run past the far end of a through hole. Common practice.
constexpr double kRunThrough_mm = 1.5;

struct OnAxis {
  const Work& work;
  const part::Hole& hole;
  bool touched = false;  // a drill's point has touched the face
};

std::string hole_limits(LatheBench& bench, const OnAxis& h) {
  return limits_of(bench, h.work.feature, "diameter", h.hole.diameter.duty == part::Duty::kFits);
}

// Where the full diameter ends, from the free end: a blind hole's depth, else the far end of the finished part.
const Figure& deep(LatheBench& bench, const OnAxis& h) {
  const std::string local = h.work.feature + "/deep";
  const Figure& written = bench.pen.ask(fmt::format("{}/{}", bench.pen.stage(), local));
  if (written.known()) return written;
  if (h.hole.depth) {
    return bench.pen.work(
        local, Kind::kLength, "its depth at full diameter", [](auto d) { return d; },
        bench.feature_figure(h.work.feature, "depth"));
  }
  const double way = bench.way();
  return bench.pen.work(
      local, Kind::kLength, "from the free end to the far end of the finished part",
      [way](auto free, auto far) { return way * (far - free); }, *bench.end,
      bench.side(part::opposite(bench.on.free_end)));
}

// More metal stands behind the finished part than a drill runs through.
bool ends_in_metal(const LatheBench& bench, const Figure& how_deep) {
  return bench.way() * (bench.far_end->value - bench.end->value) - how_deep.value > kRunThrough_mm;
}

const Figure& travel_of(LatheBench& bench, const OnAxis& h, const std::string& name, const Tool& drill) {
  ledger::Root point;
  point.kind = Kind::kLength;
  point.origin = ledger::Origin::kStandard;
  point.source = "118 degree point, common practice";
  if (drill.diameter) point.value = handbook::point_length(drill.diameter->diameter()).base();
  const double more = h.hole.depth ? 0.0 : kRunThrough_mm;
  return bench.pen.work(
      name + " travel", Kind::kLength,
      h.hole.depth ? "depth at full diameter and the point" : "to the far end, the point and 1.5 mm",
      [more](auto depth, auto tip) { return depth + tip + more; }, deep(bench, h),
      bench.pen.root(name + " point", point));
}

// The tailstock's collar from where the point touches the face; empty text where it has none.
std::string tailstock_reads(LatheBench& bench, const std::string& name, const Figure& travel) {
  const shop::Collar* collar = lathe_collar(bench, kTailstock);
  if (collar == nullptr || !travel.known()) return "";
  const auto reading =
      shop::collar_reading(*collar, Length::from_base(travel.value), shop::feeds_in(*collar));
  bench.choice(name + " tailstock turns", Kind::kNumber, static_cast<double>(reading.turns),
               "whole turns from the touch", {&travel});
  bench.choice(name + " tailstock division", Kind::kNumber, reading.division,
               "nearest division of the tailstock's collar", {&travel});
  return "tail " + shop::printed(reading);
}

void drill_line(LatheBench& bench, const OnAxis& h, const Tool& tool) {
  const std::string name = fmt::format("{}/{}", h.work.feature, tool.name);
  const Figure& how_deep = deep(bench, h);
  const bool stops = h.hole.depth || ends_in_metal(bench, how_deep);
  std::string reads;
  std::string depth = "through";
  if (stops) {
    const Figure& travel = travel_of(bench, h, name, tool);
    reads = tailstock_reads(bench, name, travel);
    const std::string in = or_not_known(travel, bench.print.plain(travel.value));
    depth = h.hole.depth ? fmt::format("{} deep at full diameter",
                                       or_not_known(how_deep, bench.print.plain(how_deep.value)))
                         : fmt::format("{} in, past where the part ends", in);
    say_with_tool(bench, tool,
                  reads.empty() ? fmt::format("mark it {} from its point.", in)
                                : "its point just touching the face, tailstock collar to 0.");
  }
  bench.take(tool);
  Line& line = bench.add_line(fmt::format("{}, {}: {}", h.work.feature, tool.name, depth));
  line.z_reads = reads;
  line.rpm =
      rpm_text(bench, name, tool, Operation::kDrilling, tool.diameter ? tool.diameter->base : std::nan(""));
  line.feed = "tail by hand, oil";
  const std::string leaves = drilled_expect(bench, name, tool);
  line.expect = is_last_size(h.work, tool) ? hole_limits(bench, h) : leaves;
}

void centre_line(LatheBench& bench, const OnAxis& h, const Tool& tool) {
  const std::string name = fmt::format("{}/{}", h.work.feature, tool.name);
  Line& line = bench.add_line(
      fmt::format("{}, {}: start it, no larger than the next drill", h.work.feature, tool.name));
  line.rpm =
      rpm_text(bench, name, tool, Operation::kDrilling, tool.diameter ? tool.diameter->base : std::nan(""));
  line.feed = "tail by hand, oil";
}

void ream_line(LatheBench& bench, const OnAxis& h, const Tool& tool) {
  const std::string name = fmt::format("{}/{}", h.work.feature, tool.name);
  tool_diameter(bench, name + " diameter", tool);
  Line& line = bench.add_line(
      fmt::format("{}, {}: free in the tailstock, never turned backwards", h.work.feature, tool.name));
  line.rpm =
      rpm_text(bench, name, tool, Operation::kReaming, tool.diameter ? tool.diameter->base : std::nan(""));
  line.feed = "tail by hand, oil";
  line.expect = hole_limits(bench, h);
  line.to_fill = true;
}

void tap_line(LatheBench& bench, const OnAxis& h, const Tool& tool) {
  const std::string thread = h.hole.thread.empty() ? tool.thread : h.hole.thread;
  std::string depth;
  if (h.hole.depth) {
    const Figure& drilled = bench.feature_figure(h.work.feature, "depth");
    depth = fmt::format("; blind: {} is all the drill left, stop short of it, clear the chips",
                        or_not_known(drilled, bench.print.plain(drilled.value)));
  }
  Line& line = bench.add_line(fmt::format("{}, tap {}, held square on the tail [center], spindle by hand{}",
                                          h.work.feature, thread, depth));
  line.rpm = "by hand";
  line.feed = "oil";
}

}  // namespace

void turn_hole(LatheBench& bench, const Work& work, const part::Hole& hole) {
  const OnAxis h{work, hole};
  for (const Tool& tool : work.tools) {
    if (tool.kind != ToolKind::kBoringBar && tool.kind != ToolKind::kTwistDrill) bench.take(tool);
    switch (tool.kind) {
      case ToolKind::kCentreDrill:
      case ToolKind::kSpotDrill:
        centre_line(bench, h, tool);
        break;
      case ToolKind::kTwistDrill:
        drill_line(bench, h, tool);
        break;
      case ToolKind::kReamer:
        ream_line(bench, h, tool);
        break;
      case ToolKind::kTap:
        tap_line(bench, h, tool);
        break;
      case ToolKind::kBoringBar:
        turn_bore(bench, work, hole, tool);
        break;
      default:
        break;  // has nothing to do in a hole on a lathe
    }
  }
}

}  // namespace sparewright::route
