#include "core/route/deburr.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/route/desk.hpp"

namespace sparewright::route {
namespace {

using shop::MachineKind;

// No more comes off a corner that nobody dimensioned: 0.010 in, 0.25 mm. Common practice.
double most_off_mm(quantity::UnitSystem system) {
  return system == quantity::UnitSystem::kMetric ? 0.25 : 0.010 * 25.4;
}

std::string tools_of(const Deburring& burrs) {
  std::vector<std::string> names;
  for (const shop::Tool& tool : burrs.tools)
    names.push_back(tool.name);
  return listed(names);
}

void write_one(Bench& bench, const std::string& what, const Deburring& burrs) {
  const auto& off = bench.choice(fmt::format("burrs {}/most off", what), quantity::Kind::kLength,
                                 most_off_mm(bench.print.system()), "common practice");
  const MachineKind machine = bench.setup.machine.kind;
  const bool turns = machine != MachineKind::kBench && machine != MachineKind::kSaw;
  Line& line =
      bench.add_line(fmt::format("{}: burrs off with {}, {} off a corner at most{}", what, tools_of(burrs),
                                 bench.print.plain(off.value), turns ? "; spindle stopped" : ""));
  line.rpm = "by hand";
  line.expect = "no burr felt";
}

}  // namespace

bool deburrs_before(const Setup& setup, std::size_t work) {
  return std::any_of(setup.deburrings.begin(), setup.deburrings.end(),
                     [&](const Deburring& burrs) { return burrs.after == work; });
}

void write_deburring(Bench& bench, std::size_t place) {
  for (const Deburring& burrs : bench.setup.deburrings) {
    if (burrs.after != place) continue;
    if (burrs.features.empty()) write_one(bench, "all edges", burrs);
    for (const std::string& feature : burrs.features)
      write_one(bench, feature, burrs);
  }
}

}  // namespace sparewright::route
