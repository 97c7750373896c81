// A mill-drill with a round column: its head swings when it is raised.
#include <set>

#include "core/route/bench.hpp"

namespace sparewright::route {

void say_round_column(MillBench& bench) {
  if (bench.setup.machine.kind != shop::MachineKind::kMillDrill) return;
  std::set<std::string> tools{bench.on.x.edge_finder.name, bench.on.y.edge_finder.name};
  for (const Work& work : bench.setup.works) {
    for (const shop::Tool& tool : work.tools)
      tools.insert(tool.name);
  }
  if (tools.size() < 2) return;
  bench.sheet.machine.emplace_back(
      "Round column: raise the head and X and Y are lost. Set it so that the longest tool goes in and the "
      "quill "
      "reaches with the shortest; else pick up again after it is moved. How far the tools stand out is not "
      "known here.");
}

}  // namespace sparewright::route
