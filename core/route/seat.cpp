// The lines of a seat for the point of a set screw.
#include <cmath>

#include <fmt/format.h>

#include "core/route/milled_cuts.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;
using shop::ToolKind;

const shop::Tool* pointed_tool(const Work& work) {
  for (const ToolKind kind : {ToolKind::kCountersink, ToolKind::kSpotDrill, ToolKind::kTwistDrill}) {
    if (const shop::Tool* tool = first_tool(work, kind)) return tool;
  }
  return nullptr;
}

}  // namespace

void write_dimple(MillBench& bench, const Work& work, const part::Formed& formed) {
  const std::string& feature = work.feature;
  const Dialled x = dial_place(bench, MachineAxis::kX, feature, formed.at);
  const Dialled y = dial_place(bench, MachineAxis::kY, feature, formed.at);
  const shop::Tool* tool = pointed_tool(work);
  const Figure& depth = to_make(bench, feature, "depth", formed.sizes.at("depth"));
  if (tool == nullptr) {
    bench.add_line(fmt::format("{}: seat", feature)).expect = "NOT KNOWN";
    return;
  }
  const Figure& mouth = bench.pen.work(
      feature + "/mouth", Kind::kDiameter, "twice the depth times the tangent of half the angle",
      [](auto d, auto angle) {
        using std::tan;
        return 2.0 * d * tan(angle / 2.0);
      },
      depth, bench.feature_figure(feature, "angle"));
  bench.take(*tool);
  bench.sheet.items.emplace_back(
      Note{fmt::format("{}: {} just touching with its point, Z collar to 0.", feature, tool->name)});
  Line& line = bench.add_line(fmt::format("{}: {}, point {} down", feature, tool->name,
                                          or_not_known(depth, bench.print.plain(depth.value))));
  line.x_reads = x.reads;
  line.y_reads = y.reads;
  line.z_reads = depth_reading(bench, fmt::format("{}/{}", feature, tool->name), depth).reads;
  line.rpm = rpm_text(bench, fmt::format("{}/{}", feature, tool->name), *tool, handbook::Operation::kDrilling,
                      mouth.known() ? mouth.value : 0.0);
  line.feed = "hand, oil";
  line.expect = or_not_known(mouth, bench.print.plain(mouth.value) + " across");
  line.to_fill = true;
}

}  // namespace sparewright::route
