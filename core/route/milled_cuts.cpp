#include "core/route/milled_cuts.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <fmt/format.h>

#include "core/handbook/feeds.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;
using shop::Tool;

constexpr double kInch_mm = 25.4;
constexpr double kMarked_mm = 0.002 * kInch_mm;
constexpr double kFraction_mm = kInch_mm / 128;  // half of a 64th

double known_to_mm(const Tool& tool) {
  if (!tool.diameter_measured) return kMarked_mm;
  const quantity::Typed& typed = *tool.diameter;
  if (typed.places == quantity::Typed::kFraction) return kFraction_mm;
  return typed.unit.to_base(std::pow(10.0, -typed.places)) / 2.0;
}

}  // namespace

MillCuts mill_cuts(const MillBench& bench) {
  const shop::Machine& machine = bench.setup.machine;
  MillCuts cuts{0.030 * kInch_mm, 0.010 * kInch_mm, 0.003 * kInch_mm, 0.010 * kInch_mm, 0.0};
  if (bench.print.system() == quantity::UnitSystem::kMetric) cuts = {0.75, 0.25, 0.08, 0.25, 0.0};
  if (machine.quiet_cut) cuts.quiet_mm = machine.quiet_cut->base();
  const auto knee = machine.collars.find("z");
  if (knee != machine.collars.end()) cuts.step_mm = knee->second.division().base();
  return cuts;
}

const Tool* first_tool(const Work& work, shop::ToolKind kind) {
  const auto found =
      std::find_if(work.tools.begin(), work.tools.end(), [&](const Tool& t) { return t.kind == kind; });
  return found == work.tools.end() ? nullptr : &*found;
}

std::string feed_text(MillBench& bench, const std::string& name, const Tool& mill) {
  const Figure& rpm = bench.pen.ask(fmt::format("{}/{} rpm", bench.pen.stage(), name));
  if (!rpm.known() || !bench.route.work || mill.flutes == 0 || !mill.diameter) return "hand, steady";
  const auto tooth = handbook::end_mill_feed(*bench.route.work, mill.material, mill.diameter->diameter());
  if (!tooth) return "hand, steady";
  ledger::Root root;
  root.kind = Kind::kLength;
  root.value = tooth->start.base();
  root.origin = ledger::Origin::kStandard;
  root.source = handbook::cite(tooth->printed.front().source);
  const Figure& per_tooth = bench.pen.root(name + " feed per tooth", root);
  const double teeth = mill.flutes;
  const Figure& rate = bench.pen.work(
      name + " feed", Kind::kFeedRate, "feed per tooth times teeth times turns",
      [teeth](auto f, auto n) { return f * teeth * (n / (2.0 * std::numbers::pi)); }, per_tooth, rpm);
  return quantity::shown(rate.value, Kind::kFeedRate, bench.print.system(),
                         bench.print.system() == quantity::UnitSystem::kInch ? 1 : 0);
}

const Figure& stated_length(Bench& bench, const std::string& local, double mm, std::string source) {
  ledger::Root root;
  root.kind = Kind::kLength;
  root.value = mm;
  root.origin = ledger::Origin::kChoice;
  root.source = std::move(source);
  return bench.pen.root(local, root);
}

const Figure& cutter_diameter(Bench& bench, const std::string& local, const Tool& tool) {
  ledger::Root root;
  root.kind = Kind::kDiameter;
  root.origin = tool.diameter_measured ? ledger::Origin::kReading : ledger::Origin::kChoice;
  root.source = fmt::format("{}, {}", tool.name,
                            tool.diameter_measured ? "as measured, to half of the last place it is written to"
                                                   : "as marked, 0.002 in either way (common practice)");
  if (tool.diameter) {
    root.value = tool.diameter->base;
    root.typed = tool.diameter->typed;
    root.shares = {{fmt::format("tool/{}/diameter", tool.name), from_half_width(known_to_mm(tool))}};
  }
  return bench.pen.root(local, root);
}

MachineAxis machine_axis(const MillBench& bench, part::Axis along_part) {
  return along(bench.orientation, MachineAxis::kX).axis == along_part ? MachineAxis::kX : MachineAxis::kY;
}

std::string_view wheel_of(MachineAxis axis) {
  return axis == MachineAxis::kX ? "X" : "Y";
}

void put_reading(Line& line, MachineAxis axis, const std::string& reads) {
  (axis == MachineAxis::kX ? line.x_reads : line.y_reads) = reads;
}

}  // namespace sparewright::route
