// A hole on the axis brought to size with a boring bar in the tool post.
#include <algorithm>
#include <iterator>

#include <fmt/format.h>

#include "core/route/hole_tools.hpp"
#include "core/route/lathe_bench.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using shop::Tool;
using shop::ToolKind;

// The largest drill before the bar; the bore of a tube where nothing was drilled.
const Figure* bored_from(LatheBench& bench, const Work& work) {
  const Tool* largest = nullptr;
  for (const Tool& tool : work.tools) {
    if (tool.kind != ToolKind::kTwistDrill || !tool.diameter) continue;
    if (largest == nullptr || tool.diameter->base > largest->diameter->base) largest = &tool;
  }
  if (largest != nullptr)
    return &bench.pen.ask(fmt::format("{}/{}/{} diameter", bench.pen.stage(), work.feature, largest->name));
  return bench.route.part.blank.bore ? &bench.pen.ask("blank/bore") : nullptr;
}

// How far past the far end of the part the bar is run where metal stands behind it. Common practice.
constexpr double kPastTheEnd_mm = 1.5;

// Right through, or past where the part will be cut off.
std::string runs_to(LatheBench& bench, const std::string& feature, const Figure& deep) {
  const double behind = bench.way() * (bench.far_end->value - bench.end->value) - deep.value;
  if (!(behind > kPastTheEnd_mm)) return ", through";
  const Figure& in = bench.pen.work(
      feature + "/bored in", quantity::Kind::kLength, "to where the part ends, and 1.5 mm",
      [](auto d) { return d + kPastTheEnd_mm; }, deep);
  return fmt::format(", {} in, past where the part ends", bench.print.plain(in.value));
}

}  // namespace

void turn_bore(LatheBench& bench, const Work& work, const part::Hole& hole, const Tool& bar) {
  Diameter d;
  d.work = &work;
  d.feature = work.feature;
  d.dimension = &hole.diameter;
  d.tool = &bar;
  d.inside = true;
  d.what = "bore";
  d.from = bored_from(bench, work);
  if (hole.depth) {
    d.length = &bench.feature_figure(work.feature, "depth");
    const Figure& bottom = along_wanted(bench, work.feature + "/bottom", work.feature, {d.length});
    d.last_along = along_reads(bench, work.feature + "/bottom", bottom);
    d.rough_along = d.last_along;
  } else {
    d.length = &bench.pen.ask(fmt::format("{}/{}/deep", bench.pen.stage(), work.feature));
    d.to_where = runs_to(bench, work.feature, *d.length);
  }
  const bool reamed_after = std::any_of(work.tools.begin(), work.tools.end(),
                                        [](const Tool& tool) { return tool.kind == ToolKind::kReamer; });
  if (reamed_after) {
    bench.take(bar);
    Line& line = bench.add_line(fmt::format("{}: bore true, a light cut, for the reamer", work.feature));
    line.rpm = rpm_text(bench, fmt::format("{}/{}", work.feature, bar.name), bar,
                        handbook::Operation::kBoring, d.from != nullptr ? d.from->value : 0.0);
    line.feed =
        feed_a_turn(bench, fmt::format("{}/{}", work.feature, bar.name), bar, handbook::Operation::kBoring);
    return;
  }
  write_diameter(bench, d);
}

}  // namespace sparewright::route
