// The lines of a hole for a taper pin or a spring pin, after its spot: drilled, a taper in steps, then reamed.
#include <cmath>

#include <fmt/format.h>

#include "core/handbook/drill_points.hpp"
#include "core/route/milled_cuts.hpp"

namespace sparewright::route {
namespace {

using handbook::Operation;
using ledger::Figure;
using quantity::Kind;
using shop::Tool;
using shop::ToolKind;

// A step drill leaves this on the diameter for the taper reamer. A choice made here, without a source.
constexpr double kLeftForReamer_mm = 0.1;

struct PinHole {
  const HoleWork& w;
  const std::string& name;
  const Figure& diameter;             // to make, at its large end
  const Figure* taper = nullptr;      // none: a spring pin's
  const Figure* small_end = nullptr;  // of a taper, on the far side
};

PinHole pin_hole(MillBench& bench, const HoleWork& w) {
  const std::string& name = w.work->feature;
  PinHole hole{w, name, to_make(bench, name, "diameter", w.formed->sizes.at("diameter"))};
  if (w.formed->form != part::Form::kTaperPinHole) return hole;
  hole.taper = &bench.feature_figure(name, "taper");
  hole.small_end = &bench.pen.work(
      name + "/small end", Kind::kDiameter, "the large end less its taper over the way through",
      [](auto d, auto taper, auto from, auto to) {
        using std::abs;
        return d - taper * abs(from - to);
      },
      hole.diameter, *hole.taper, bench.feature_figure(name, "starts at"),
      bench.side(part::opposite(w.formed->side)));
  bench.pen.work(
      name + "/drill through at most", Kind::kDiameter, "the small end, less what the reamer takes",
      [](auto d) { return d - kLeftForReamer_mm; }, *hole.small_end);
  return hole;
}

Line& line_at(MillBench& bench, const PinHole& hole, std::string says, const Tool& tool,
              Operation operation) {
  Line& line = bench.add_line(std::move(says));
  line.x_reads = hole.w.x.reads;
  line.y_reads = hole.w.y.reads;
  line.rpm = rpm_text(bench, fmt::format("{}/{}", hole.name, tool.name), tool, operation,
                      tool.diameter ? tool.diameter->base : 0.0);
  line.feed = "hand, oil";
  return line;
}

// A drill larger than the small end goes only so deep that the taper covers its step.
void drill_step(MillBench& bench, const PinHole& hole, const Tool& tool) {
  const std::string name = fmt::format("{}/{}", hole.name, tool.name);
  const Figure& drill = cutter_diameter(bench, name + " diameter", tool);
  const bool steps = hole.small_end != nullptr && hole.small_end->known() && drill.known() &&
                     drill.value > hole.small_end->value - kLeftForReamer_mm;
  if (!steps) {
    Line& line = line_at(bench, hole, fmt::format("{}, {}: through", hole.name, tool.name), tool,
                         Operation::kDrilling);
    line.expect = or_not_known(drill, bench.print.plain(drill.value));
    return;
  }
  const Figure& deep = bench.pen.work(
      name + " step", Kind::kLength, "as deep as the taper is wider than the drill and what is left to ream",
      [](auto large, auto d, auto taper) { return (large - d - kLeftForReamer_mm) / taper; }, hole.diameter,
      drill, *hole.taper);
  if (!deep.known() || deep.value <= 0.0) return;  // tool sizes say so
  bench.sheet.items.emplace_back(Note{
      fmt::format("{}: {} just touching the face with its point, Z collar to 0.", hole.name, tool.name)});
  const Figure& point =
      stated_length(bench, name + " point", handbook::point_length(tool.diameter->diameter()).base(),
                    "118 degree point, common practice");
  const Figure& travel = bench.pen.work(
      name + " travel", Kind::kLength, "depth at full diameter and the point",
      [](auto d, auto p) { return d + p; }, deep, point);
  const std::string z = depth_reading(bench, name, travel).reads;
  Line& line = line_at(
      bench, hole,
      fmt::format("{}, {}: {} deep at full diameter", hole.name, tool.name, bench.print.plain(deep.value)),
      tool, Operation::kDrilling);
  line.z_reads = z;
  line.expect = bench.print.plain(drill.value);
}

// The pin is the gauge: what is left on the diameter shows as so much more of it standing out.
void stop_with_pin(MillBench& bench, const PinHole& hole) {
  const Figure& proud = bench.pen.work(
      hole.name + "/pin stands out for 0.1 mm", Kind::kLength, "0.1 mm on the diameter over the taper",
      [](auto taper) { return kLeftForReamer_mm / taper; }, *hole.taper);
  Stop stop;
  stop.says = fmt::format("STOP. {}: short of size, wipe, try the pin by hand.", hole.name);
  stop.readings.push_back({"stands out more than it is to by", "______"});
  stop.rule = fmt::format(
      "For each {} it stands out too far, {} is left on the diameter. Ream on by that, and try again.",
      or_not_known(proud, bench.print.plain(proud.value)), bench.print.plain(kLeftForReamer_mm));
  bench.sheet.items.emplace_back(std::move(stop));
}

void ream(MillBench& bench, const PinHole& hole, const Tool& tool) {
  cutter_diameter(bench, fmt::format("{}/{} diameter", hole.name, tool.name), tool);
  if (hole.taper != nullptr) stop_with_pin(bench, hole);
  const Figure& least = bench.feature_figure(hole.name, "diameter/least");
  const Figure& most = bench.feature_figure(hole.name, "diameter/most");
  Line& line =
      line_at(bench, hole,
              fmt::format("{}, {}: {}", hole.name, tool.name,
                          hole.taper != nullptr ? "until the pin goes in as far as it is to" : "through"),
              tool, Operation::kReaming);
  line.expect = or_not_known(least, bench.print.limits(least.value, most.value, true));
  line.to_fill = true;
}

}  // namespace

void write_pin_hole(MillBench& bench, const HoleWork& w) {
  const PinHole hole = pin_hole(bench, w);
  for (const Tool& tool : w.work->tools) {
    const bool drills = tool.kind == ToolKind::kTwistDrill;
    if (!drills && tool.kind != ToolKind::kReamer) continue;
    bench.take(tool);
    drills ? drill_step(bench, hole, tool) : ream(bench, hole, tool);
  }
}

}  // namespace sparewright::route
