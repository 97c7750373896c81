// An outside thread: its diameter turned, then cut with a die or a single-point tool.
#include <cmath>

#include <fmt/format.h>

#include "core/route/lathe_bench.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;

// A die is started on an end turned down to the root of the thread, or chamfered. Common practice.
void die_line(LatheBench& bench, const Work& work, const part::Formed& thread, const shop::Tool& die) {
  bench.take(die);
  Line& line = bench.add_line(
      fmt::format("{}, die {}: end chamfered, die square on the tail, spindle by hand, back every half turn",
                  work.feature, thread.thread));
  line.rpm = "by hand";
  line.feed = "oil";
  line.expect = "its nut goes on";
}

}  // namespace

void turn_thread(LatheBench& bench, const Work& work, const part::Formed& thread) {
  Diameter d;
  d.work = &work;
  d.feature = work.feature;
  d.dimension = &thread.sizes.find("diameter")->second;
  d.tool = tool_of_kind(work, shop::ToolKind::kTurningTool);
  d.what = "turn for the thread";
  d.length = &size_to_make(bench, work.feature, "length", thread.sizes.find("length")->second);
  const Figure& to = along_wanted(bench, work.feature + "/end of thread", work.feature, {d.length});
  const double at = bench.end->value + bench.way() * to.value;
  d.from = bench.outside.largest(bench.end->value, at);
  const Figure& size = size_to_make(bench, work.feature, "diameter", *d.dimension);
  d.last_along = d.rough_along = along_reads(bench, work.feature + "/end of thread", to);
  constexpr double kSame_mm = 0.02;  // turned already
  if (d.from == nullptr || !size.known() || d.from->value > size.value + kSame_mm) write_diameter(bench, d);
  const shop::Tool* die = tool_of_kind(work, shop::ToolKind::kDie);
  const shop::Tool* single = tool_of_kind(work, shop::ToolKind::kThreadingTool);
  if (die != nullptr) {
    die_line(bench, work, thread, *die);
  } else if (single != nullptr) {
    leave(bench, *part::find_feature(bench.route.part, work.feature));
    cut_single_point(bench, work, thread, *single);
  } else {
    bench.add_line(work.feature + ": thread").expect = "NOT KNOWN";
  }
}

}  // namespace sparewright::route
