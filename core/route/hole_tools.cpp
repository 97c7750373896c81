#include "core/route/hole_tools.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/handbook/drilled_holes.hpp"

namespace sparewright::route {

using ledger::Figure;
using quantity::Kind;
using shop::Tool;
using shop::ToolKind;

bool is_last_size(const Work& work, const Tool& tool) {
  const auto found = std::find_if(work.tools.begin(), work.tools.end(),
                                  [&](const Tool& other) { return other.name == tool.name; });
  return std::none_of(found == work.tools.end() ? found : std::next(found), work.tools.end(),
                      [](const Tool& later) {
                        return later.kind == ToolKind::kTwistDrill || later.kind == ToolKind::kReamer ||
                               later.kind == ToolKind::kBoringHead || later.kind == ToolKind::kBoringBar ||
                               later.kind == ToolKind::kTap;
                      });
}

const Figure& tool_diameter(Bench& bench, const std::string& name, const Tool& tool) {
  ledger::Root root;
  root.kind = Kind::kDiameter;
  root.origin = tool.diameter_measured ? ledger::Origin::kReading : ledger::Origin::kChoice;
  root.source = fmt::format("{}, {}", tool.name, tool.diameter_measured ? "as measured" : "as marked");
  if (tool.diameter) {
    root.value = tool.diameter->base;
    root.typed = tool.diameter->typed;
  }
  return bench.pen.root(name, root);
}

std::string drilled_expect(Bench& bench, const std::string& name, const Tool& tool) {
  const Figure& drill = tool_diameter(bench, name + " diameter", tool);
  if (!drill.known()) return "NOT KNOWN";
  const auto limits = handbook::drilled_hole_limits(quantity::Diameter::from_base(drill.value));
  if (!limits) return "";
  const auto deviation = [&](const char* which, double base) -> const Figure& {
    ledger::Root root;
    root.kind = Kind::kLength;
    root.value = base;
    root.origin = ledger::Origin::kStandard;
    root.source = handbook::cite(limits->source);
    return bench.pen.root(fmt::format("{} {}", name, which), root);
  };
  const auto plus = [](auto d, auto e) { return d + e; };
  const Figure& least =
      bench.pen.work(name + " leaves at least", Kind::kDiameter, "drill and its usual limits", plus, drill,
                     deviation("lower limit", limits->lower.base()));
  const Figure& most = bench.pen.work(name + " leaves at most", Kind::kDiameter, "drill and its usual limits",
                                      plus, drill, deviation("upper limit", limits->upper.base()));
  return bench.print.limits(least.value, most.value, false);
}

const shop::Tool* tool_of_kind(const Work& work, shop::ToolKind kind) {
  const auto found =
      std::find_if(work.tools.begin(), work.tools.end(), [&](const shop::Tool& t) { return t.kind == kind; });
  return found == work.tools.end() ? nullptr : &*found;
}

}  // namespace sparewright::route
