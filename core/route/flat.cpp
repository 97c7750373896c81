// The lines that mill one flat.
#include <cmath>
#include <string_view>
#include <vector>

#include <fmt/format.h>

#include "core/cutting/passes.hpp"
#include "core/route/milled_cuts.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;
using shop::Tool;
using shop::ToolKind;

struct Walls {  // readings that put the cutter's edge on the wall, and short of it
  std::string rough_reads;
  std::string reads;
  std::vector<std::string> before;  // of the passes from the open side, the outermost first
  MachineAxis axis = MachineAxis::kX;

  [[nodiscard]] std::string_view wheel() const { return axis == MachineAxis::kX ? "X" : "Y"; }
};

// Passes step over from the open side, so that no more than step_mm of the cutter is ever in the metal.
void dial_steps_over(MillBench& bench, const std::string& name, const part::Flat& flat, const Figure& at,
                     double from_wall_mm, double step_mm, Walls& walls) {
  const part::Face open = part::face_at(flat.region->along, flat.region->towards_greater);
  const Figure& edge = bench.side(open);
  if (!edge.known() || !at.known() || !(step_mm > 0.0)) return;
  const double wide_mm = std::abs(edge.value - at.value);
  const int more = static_cast<int>(std::ceil(wide_mm / step_mm - 1e-9)) - 1;
  if (more > kMostPassesListed) return;
  const double way = from_wall_mm < 0.0 ? -1.0 : 1.0;
  for (int i = more; i >= 1; --i) {
    const Figure& offset =
        stated_length(bench, fmt::format("{} pass {} offset", name, more - i + 1),
                      from_wall_mm + way * step_mm * i, "the last pass, stepped back from it");
    walls.before.push_back(
        dial(bench, walls.axis, fmt::format("{} pass {}", name, more - i + 1), at, &offset).reads);
  }
}

Walls dial_wall(MillBench& bench, const std::string& feature, const part::Flat& flat, const Tool& mill,
                double step_mm) {
  Walls walls;
  const part::Axis along_part = flat.region->along;
  walls.axis =
      along(bench.orientation, MachineAxis::kX).axis == along_part ? MachineAxis::kX : MachineAxis::kY;
  // The cutter's centre lies half its diameter from the wall, on the side that is milled.
  const double side = (flat.region->towards_greater ? 1.0 : -1.0) * inwards(bench.on, walls.axis);
  const double wall_leave = mill_cuts(bench).wall_leave_mm;
  const double radius = mill.diameter ? mill.diameter->base / 2.0 : std::nan("");
  const std::string name = fmt::format("{}/{}", feature, name_of(walls.axis));
  const Figure& at = bench.feature_figure(feature, fmt::format("at {}", part::name_of(along_part)));
  const std::string how =
      mill.diameter_measured ? "half the cutter as measured" : "half the cutter as marked";
  const Dialled finish =
      dial(bench, walls.axis, name, at, &stated_length(bench, name + " offset", side * radius, how));
  const Dialled rough = dial(bench, walls.axis, name + " rough", at,
                             &stated_length(bench, name + " rough offset", side * (radius + wall_leave),
                                            how + ", and metal left on the wall"));
  dial_steps_over(bench, name, flat, at, side * (radius + wall_leave), step_mm, walls);
  walls.reads = finish.reads;
  walls.rough_reads = rough.reads;
  const Figure& offset = bench.pen.ask(fmt::format("{}/{} offset", bench.pen.stage(), name));
  const Figure& wall = bench.pen.work(
      name + " wall lands", Kind::kCoordinate, "cutter's centre less its radius",
      [](auto c, auto o) { return c - o; }, *finish.lands, offset);
  write_made(bench, walls.axis, feature, flat.region->start, wall);
  return walls;
}

void put(Line& line, const Walls& walls, bool last) {
  (walls.axis == MachineAxis::kX ? line.x_reads : line.y_reads) = last ? walls.reads : walls.rough_reads;
}

// The work lies on its underside, so what is left is found from above: by the step down from the side that is left
// standing, or down to the parallels where the whole side is milled.
void stop_before_last(MillBench& bench, const std::string& feature, bool leaves_a_step, double tall_mm,
                      double aim_mm, double like_mm) {
  Stop stop;
  stop.says = leaves_a_step
                  ? fmt::format("STOP. {}: wipe, measure the step down from the top.", feature)
                  : fmt::format("STOP. {}: wipe, measure what is left, down to the parallels.", feature);
  const double found_mm = leaves_a_step ? tall_mm - aim_mm - like_mm : aim_mm + like_mm;
  stop.readings.push_back({"found, should be", bench.print.plain(found_mm)});
  stop.rule = fmt::format(
      "Left to go = {}. It should be about {}; if it is half or double, do NOT cut. Z goes on from "
      "where it stands by what is left to go.",
      leaves_a_step ? bench.print.plain(tall_mm - aim_mm) + " less found"
                    : "found less " + bench.print.plain(aim_mm),
      bench.print.plain(like_mm));
  bench.sheet.items.emplace_back(std::move(stop));
}

void write_above_jaws(MillBench& bench, const std::string& feature, const Figure& wanted) {
  if (bench.on.holding.vise() == nullptr) return;
  bench.pen.work(
      feature + "/above jaws", Kind::kLength, "what is left above the sides it sits on, less what is gripped",
      [](auto left, auto gripped) { return left - gripped; }, wanted,
      bench.pen.ask(bench.pen.stage() + "/hold/gripped"));
}

void say_how(MillBench& bench, const std::string& feature, const part::Flat& flat, const Walls& walls,
             double step_over_mm) {
  const std::string touch = fmt::format(
      "{}: touch the top with the cutter, Z collar to 0. Feed against the cutter's turning.", feature);
  if (!flat.region) {
    bench.sheet.items.emplace_back(
        Note{fmt::format("{} Steps of {} at most.", touch, bench.print.plain(step_over_mm))});
    return;
  }
  bench.sheet.items.emplace_back(Note{touch});
  std::string passes;
  for (const std::string& reads : walls.before)
    passes += fmt::format("{}, then ", reads);
  bench.sheet.items.emplace_back(Note{fmt::format(
      "{}: at each depth from the open side, {} {}the line's reading. Set {} with the cutter clear of "
      "the work, and leave it there for the pass.",
      feature, walls.wheel(), passes, walls.wheel())});
}

}  // namespace

void write_flat(MillBench& bench, const Work& work, const part::Flat& flat) {
  const std::string& feature = work.feature;
  const Figure& wanted = to_make(bench, feature, "leaves", flat.leaves);
  const Figure& tall = bench.pen.ask(bench.pen.stage() + "/hold/height of work");
  const Tool* mill = first_tool(work, ToolKind::kEndMill);
  write_above_jaws(bench, feature, wanted);
  if (mill == nullptr || !wanted.known() || !tall.known()) {
    bench.add_line(fmt::format("{}: mill", feature)).expect = "NOT KNOWN";
    return;
  }
  const std::string name = fmt::format("{}/{}", feature, mill->name);
  const std::string rpm = rpm_text(bench, name, *mill, handbook::Operation::kMilling,
                                   mill->diameter ? mill->diameter->base : 0.0);
  const std::string feed = feed_text(bench, name, *mill);
  const MillCuts cuts = mill_cuts(bench);
  const auto passes = cutting::share_out(tall.value, wanted.value,
                                         {cuts.quiet_mm, cuts.like_mm, cuts.least_mm, cuts.step_mm});
  const Figure& step_over = bench.choice(feature + "/step over at most", Kind::kLength,
                                         kPassWidth * (mill->diameter ? mill->diameter->base : 0.0),
                                         "three quarters of the cutter");
  Walls walls;
  if (flat.region) walls = dial_wall(bench, feature, flat, *mill, step_over.value);
  bench.take(*mill);
  say_how(bench, feature, flat, walls, step_over.value);
  for (std::size_t i = 0; i < passes.sizes_mm.size(); ++i) {
    const bool last = i + 1 == passes.sizes_mm.size();
    const double size = passes.sizes_mm[i];
    if (last && passes.two_like_last)
      stop_before_last(bench, feature, flat.region.has_value(), tall.value, size,
                       passes.sizes_mm[i - 1] - size);
    const Figure& after =
        bench.choice(fmt::format("{}/cut {}", feature, i + 1), Kind::kLength, size,
                     "metal shared out, two like cuts last (common practice)", {&wanted, &tall});
    const Figure& depth = bench.pen.work(
        fmt::format("{}/depth {}", feature, i + 1), Kind::kLength, "top of the work less what is left",
        [](auto t, auto s) { return t - s; }, tall, after);
    if (last && flat.region) {
      // Coming back past the reading would run the cutter into the wall.
      bench.sheet.items.emplace_back(
          Note{fmt::format("{}: cutter clear above the work before {} goes back: half a turn beyond, up to "
                           "the line's reading. Down to depth beside the work, not on it.",
                           feature, walls.wheel())});
    }
    Line& line = bench.add_line(
        last ? fmt::format("{}: mill to AIM {}{}", feature, bench.print.plain(size),
                           flat.region ? ", then the wall" : "")
             : fmt::format("{}: mill{}", feature, flat.region ? ", finish left on the wall" : ""));
    if (flat.region) put(line, walls, last);
    const DepthReading reading = depth_reading(bench, fmt::format("{}/cut {}", feature, i + 1), depth);
    line.z_reads = reading.reads;
    line.rpm = rpm;
    line.feed = feed;
    const Figure& least = bench.feature_figure(feature, "leaves/least");
    const Figure& most = bench.feature_figure(feature, "leaves/most");
    line.expect = last          ? bench.print.limits(least.value, most.value, false)
                  : flat.region ? "down " + bench.print.plain(reading.makes_mm)
                                : bench.print.plain(tall.value - reading.makes_mm);
    line.to_fill = true;
  }
}

}  // namespace sparewright::route
