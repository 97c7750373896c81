// A 60 degree centre in the free end.
#include <cmath>

#include <fmt/format.h>

#include "core/route/lathe_bench.hpp"

namespace sparewright::route {

void turn_centre_hole(LatheBench& bench, const Work& work, const part::Formed& centre) {
  const auto diameter = centre.sizes.find("diameter");
  const shop::Tool* tool = tool_of_kind(work, shop::ToolKind::kCentreDrill);
  if (tool == nullptr || diameter == centre.sizes.end()) {
    bench.add_line(work.feature + ": centre").expect = "NOT KNOWN";
    return;
  }
  const ledger::Figure& cone = size_to_make(bench, work.feature, "diameter", diameter->second);
  bench.take(*tool);
  Line& line = bench.add_line(fmt::format("{}, {}: until the cone is {} across", work.feature, tool->name,
                                          or_not_known(cone, bench.print.plain(cone.value))));
  line.rpm = rpm_text(bench, fmt::format("{}/{}", work.feature, tool->name), *tool,
                      handbook::Operation::kDrilling, cone.known() ? cone.value : 0.0);
  line.feed = "tail by hand, oil";
  line.expect = limits_of(bench, work.feature, "diameter", false);
}

}  // namespace sparewright::route
