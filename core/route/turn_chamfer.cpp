// A chamfer of 45 degrees on the rim of the free end.
#include <fmt/format.h>

#include "core/route/lathe_bench.hpp"

namespace sparewright::route {

void turn_chamfer(LatheBench& bench, const Work& work, const part::Formed& chamfer) {
  const shop::Tool* tool = tool_of_kind(work, shop::ToolKind::kTurningTool);
  const ledger::Figure& size = size_to_make(bench, work.feature, "size", chamfer.sizes.find("size")->second);
  const ledger::Figure* rim = chamfer.sizes.contains("diameter")
                                  ? &bench.feature_figure(work.feature, "diameter")
                                  : bench.outside.largest(bench.end->value, bench.end->value + bench.way());
  if (tool == nullptr || rim == nullptr || !rim->known() || !size.known()) {
    bench.add_line(work.feature + ": chamfer").expect = "NOT KNOWN";
    return;
  }
  bench.take(*tool);
  forget_touch(bench);  // it is swung round for this
  // The edge lies at 45 degrees over the corner: going along by the chamfer's size takes it off as wide.
  const std::string reads = along_reads(bench, work.feature + "/size", size);
  Line& line = bench.add_line(fmt::format("{}: tool at 45 degrees, touch the corner, along to 0, on by {}",
                                          work.feature, bench.print.plain(size.value)));
  line.z_reads = bench.along_by == AlongBy::kStop ? "" : reads;
  line.rpm = rpm_text(bench, fmt::format("{}/{}", work.feature, tool->name), *tool,
                      handbook::Operation::kTurningFinish, rim->value);
  line.feed = "hand";
  line.expect = limits_of(bench, work.feature, "size", false);
}

}  // namespace sparewright::route
