#include "core/handbook/cutting_speeds.hpp"

#include <optional>
#include <string>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Speed;
namespace unit = quantity::unit;

struct SpeedRow {
  PrintedOperation operation;
  ToolMaterial tool;
  WorkGroup group;
  std::optional<WorkGroup> also;
  Scope scope;
  std::string_view material;
  std::optional<double> brinell_low;
  std::optional<double> brinell_high;
  Speed low;
  Speed high;
  std::string_view note;
  Source source;
};
constexpr SpeedRow kSpeeds[] = {
#include "generated/core/handbook/cutting_speeds.inc"
};

std::vector<Printed<Speed>> speeds_in_print(const Work& work, Operation operation, ToolMaterial tool,
                                            Scope scope) {
  std::vector<Printed<Speed>> out;
  for (const SpeedRow& row : kSpeeds) {
    if (row.tool != tool || row.scope != scope || !covers(row.operation, operation)) continue;
    if (row.group != work.group && row.also != work.group) continue;
    if (!meets(work, row.brinell_low, row.brinell_high)) continue;
    out.push_back({row.low, row.high, row.material, row.note, row.source});
  }
  return out;
}

}  // namespace

base::Result<CuttingSpeed> cutting_speed(const Work& work, Operation operation, ToolMaterial tool) {
  for (const Scope scope : {Scope::kOwn, Scope::kGeneral}) {
    auto printed = speeds_in_print(work, operation, tool, scope);
    if (!printed.empty()) return spread_of(std::move(printed));
  }
  return not_tabled(
      "the cutting speed",
      fmt::format("{} {} with a {} tool", name_of(operation), name_of(work.group), name_of(tool)),
      "another tool or operation, or a speed written in the job");
}

}  // namespace sparewright::handbook
