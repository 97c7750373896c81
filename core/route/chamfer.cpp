// The lines of a chamfer on a straight edge: the flank of a 90 degree countersink, touched on the edge and let down.
#include <cmath>

#include <fmt/format.h>

#include "core/route/milled_cuts.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;
using shop::ToolKind;

// The countersink's middle stands outside the edge by this, so that the chamfer comes in the middle of its flank: from
// there to this and the chamfer's size. A choice made here, without a source.
double outside_mm(double tool_mm, double size_mm) {
  return (tool_mm / 2.0 - size_mm) / 2.0;
}

const shop::Tool* countersink_of(const Work& work) {
  const shop::Tool* tool = first_tool(work, ToolKind::kCountersink);
  return tool != nullptr ? tool : first_tool(work, ToolKind::kSpotDrill);
}

}  // namespace

void write_chamfer(MillBench& bench, const Work& work, const part::Formed& formed) {
  const std::string& feature = work.feature;
  const shop::Tool* tool = countersink_of(work);
  const Figure& size = to_make(bench, feature, "size", formed.sizes.at("size"));
  if (tool == nullptr || !tool->diameter || !size.known() || tool->diameter->base / 2.0 <= size.value) {
    bench.add_line(fmt::format("{}: chamfer", feature)).expect = "NOT KNOWN";
    return;
  }
  const bool side_is_up = formed.side == bench.orientation.up;
  const part::Face lateral = side_is_up ? *formed.edge : formed.side;
  const MachineAxis axis = machine_axis(bench, part::axis_of(lateral));
  const double out = (part::at_greater_end(lateral) ? 1.0 : -1.0) * inwards(bench.on, axis);
  const std::string name = fmt::format("{}/{}", feature, name_of(axis));
  const Figure& offset = stated_length(
      bench, name + " offset", out * outside_mm(tool->diameter->base, size.value),
      "outside the edge, so that the middle of the flank cuts (a choice made here, without a source)");
  const Dialled place =
      dial(bench, axis, name, bench.feature_figure(feature, side_is_up ? "edge at" : "starts at"), &offset);
  const std::string rpm = rpm_text(bench, fmt::format("{}/{}", feature, tool->name), *tool,
                                   handbook::Operation::kDrilling, tool->diameter->base);
  bench.take(*tool);
  bench.sheet.items.emplace_back(
      Note{fmt::format("{}: {} at the line's reading, raise the work until the flank just scrapes the edge, "
                       "Z collar to 0: the chamfer is "
                       "as large as what is gone down from there.",
                       feature, wheel_of(axis))});
  const MillCuts cuts = mill_cuts(bench);
  const int passes = std::max(1, static_cast<int>(std::ceil(size.value / cuts.quiet_mm - 1e-9)));
  for (int i = 1; i <= passes; ++i) {
    const std::string cut = fmt::format("{}/cut {}", feature, i);
    const Figure& down = bench.choice(fmt::format("{}/depth {}", feature, i), Kind::kLength,
                                      size.value * i / passes, "the metal in equal cuts", {&size});
    const DepthReading reading = depth_reading(bench, cut, down);
    Line& line = bench.add_line(
        fmt::format("{}: chamfer, {} down, along the edge", feature, bench.print.plain(reading.makes_mm)));
    put_reading(line, axis, place.reads);
    line.z_reads = reading.reads;
    line.rpm = rpm;
    line.feed = "hand, steady";
    const Figure& least = bench.feature_figure(feature, "size/least");
    const Figure& most = bench.feature_figure(feature, "size/most");
    line.expect = i == passes ? or_not_known(least, bench.print.limits(least.value, most.value, false))
                              : bench.print.plain(reading.makes_mm);
  }
}

}  // namespace sparewright::route
