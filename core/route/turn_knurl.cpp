// A knurl: what is turned for it, then the wheels.
#include <cmath>

#include <fmt/format.h>

#include "core/route/lathe_bench.hpp"

namespace sparewright::route {
namespace {

// Of the turning speed. Common practice.
constexpr double kShareOfSpeed = 0.5;

}  // namespace

void turn_knurl(LatheBench& bench, const Work& work, const part::Formed& knurl) {
  const auto& sizes = knurl.sizes;
  Diameter d;
  d.work = &work;
  d.feature = work.feature;
  d.dimension = &sizes.find("diameter")->second;
  d.tool = tool_of_kind(work, shop::ToolKind::kTurningTool);
  d.what = "turn for the knurl";
  const ledger::Figure& from_end =
      size_to_make(bench, work.feature, "from end", sizes.find("from end")->second);
  d.length = &size_to_make(bench, work.feature, "length", sizes.find("length")->second);
  const ledger::Figure& to =
      along_wanted(bench, work.feature + "/end of knurl", work.feature, {&from_end, d.length});
  const double at = bench.end->value + bench.way() * to.value;
  d.from = bench.outside.largest(at - bench.way() * d.length->value, at);
  d.last_along = d.rough_along = along_reads(bench, work.feature + "/end of knurl", to);
  const ledger::Figure& size = size_to_make(bench, work.feature, "diameter", *d.dimension);
  constexpr double kSame_mm = 0.02;  // the bar as it is
  if (d.from == nullptr || !size.known() || d.from->value > size.value + kSame_mm) write_diameter(bench, d);
  const shop::Tool* wheels = tool_of_kind(work, shop::ToolKind::kKnurlingTool);
  if (wheels == nullptr || !size.known()) {
    bench.add_line(work.feature + ": knurl").expect = "NOT KNOWN";
    return;
  }
  bench.take(*wheels);
  Line& line = bench.add_line(fmt::format(
      "{}, {}: half its width on, press until the ridges are sharp, then along; it does not start twice",
      work.feature, wheels->name));
  line.z_reads = d.last_along;
  line.rpm = rpm_text(bench, fmt::format("{}/{}", work.feature, wheels->name), *wheels,
                      handbook::Operation::kTurningRough, size.value, kShareOfSpeed);
  line.feed = "oil, brush the chips out";
  line.expect = "sharp, one track";
}

}  // namespace sparewright::route
