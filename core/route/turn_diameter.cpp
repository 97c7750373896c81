// A diameter turned from the free end to a shoulder.
#include <cmath>

#include <fmt/format.h>

#include "core/route/lathe_bench.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;

// Left on a shoulder until the last cut, which draws out over it. Common practice.
constexpr double kShoulderLeave_mm = 0.25;

}  // namespace

void turn_diameter(LatheBench& bench, const Work& work, const part::Formed& turned) {
  const auto diameter = turned.sizes.find("diameter");
  const auto length = turned.sizes.find("length");
  if (diameter == turned.sizes.end() || length == turned.sizes.end())
    return;  // refused when the text was read
  Diameter d;
  d.work = &work;
  d.feature = work.feature;
  d.dimension = &diameter->second;
  d.tool = tool_of_kind(work, shop::ToolKind::kTurningTool);
  d.what = "turn";
  d.length = &size_to_make(bench, work.feature, "length", length->second);
  const Figure& shoulder = along_wanted(bench, work.feature + "/shoulder", work.feature, {d.length});
  const double at = bench.end->value + bench.way() * shoulder.value;
  d.from = bench.outside.largest(bench.end->value, at);
  const Figure* beyond = bench.outside.largest(at, at + bench.way());
  const Figure& aim = size_to_make(bench, work.feature, "diameter", *d.dimension);
  d.has_shoulder = beyond != nullptr && aim.known() && beyond->value > aim.value;
  if (d.tool == nullptr) {
    write_diameter(bench, d);
    return;
  }
  d.last_along = along_reads(bench, work.feature + "/shoulder", shoulder);
  d.rough_along = d.last_along;
  if (d.has_shoulder) {
    const Figure& rough =
        along_wanted(bench, work.feature + "/rough", work.feature, {d.length}, kShoulderLeave_mm);
    d.rough_along = along_reads(bench, work.feature + "/rough", rough);
    d.to_where = fmt::format(", to the shoulder {} in, draw out over it",
                             or_not_known(shoulder, bench.print.plain(shoulder.value)));
  }
  write_diameter(bench, d);
}

}  // namespace sparewright::route
