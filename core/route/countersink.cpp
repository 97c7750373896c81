// The line of a countersink in a drilled hole: its flank touched on the hole's edge and let down.
#include <cmath>

#include <fmt/format.h>

#include "core/route/bench.hpp"

namespace sparewright::route {

using ledger::Figure;
using quantity::Kind;

void write_countersink(MillBench& bench, const HoleWork& w, const shop::Tool& tool) {
  if (!w.hole->countersink) return;
  const std::string& feature = w.work->feature;
  const std::string name = fmt::format("{}/{}", feature, tool.name);
  const Figure& wide = to_make(bench, feature, "countersink diameter", w.hole->countersink->diameter);
  const Figure& down = bench.pen.work(
      name + " down", Kind::kLength,
      "half of what it is wider than the hole, over the tangent of half its angle",
      [](auto c, auto d, auto angle) {
        using std::tan;
        return (c - d) / 2.0 / tan(angle / 2.0);
      },
      wide, bench.feature_figure(feature, "diameter"), bench.feature_figure(feature, "countersink angle"));
  bench.sheet.items.emplace_back(Note{fmt::format(
      "{}: raise the work until the {} just scrapes the edge of the hole all round, Z collar to 0.", feature,
      tool.name)});
  const DepthReading reading = depth_reading(bench, name, down);
  Line& line = place(bench.add_line(fmt::format("{}, {}: {} down, {} across", feature, tool.name,
                                                or_not_known(down, bench.print.plain(reading.makes_mm)),
                                                or_not_known(wide, bench.print.plain(wide.value)))),
                     w);
  line.z_reads = reading.reads;
  line.rpm = rpm_text(bench, name, tool, handbook::Operation::kDrilling, wide.known() ? wide.value : 0.0);
  line.feed = "hand, oil";
  line.expect = feature_limits(bench, w, "countersink diameter", false);
  line.to_fill = true;
}

}  // namespace sparewright::route
