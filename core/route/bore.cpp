// The lines that bring a hole to size with a boring head.
#include <algorithm>

#include <fmt/format.h>

#include "core/cutting/passes.hpp"
#include "core/route/bench.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;
using shop::Tool;
using shop::ToolKind;

// Cuts of a boring head on a light mill, on diameter. Common practice: no more than 0.040 in roughing, two like cuts of
// 0.010 in to finish, nothing under 0.004 in.
struct BoringCuts {
  double greatest_mm = 0.0;
  double like_mm = 0.0;
  double least_mm = 0.0;
};
BoringCuts boring_cuts(quantity::UnitSystem system) {
  if (system == quantity::UnitSystem::kMetric) return {1.0, 0.25, 0.1};
  return {0.040 * 25.4, 0.010 * 25.4, 0.004 * 25.4};
}

// A hole that nothing was drilled in before is bored from the drill the list names last.
double bored_from_mm(const Work& work) {
  double largest = 0.0;
  for (const Tool& tool : work.tools) {
    if (tool.kind == ToolKind::kTwistDrill && tool.diameter) largest = std::max(largest, tool.diameter->base);
  }
  return largest;
}

// The figures are called "<cut> out" and "<cut> out divisions".
std::string head_out(const MillBench& bench, const Tool& head, const std::string& cut, const Figure& after,
                     double before_mm) {
  const Figure& out = bench.choice(cut + " out", Kind::kLength, after.value - before_mm,
                                   "this cut's size less the one before, on diameter", {&after});
  if (!head.division) return fmt::format("{} on diameter", bench.print.fine(out.value));
  const double per_division = head.division->base() * (head.reads_diameter ? 1.0 : 2.0);
  const Figure& divisions = bench.choice(cut + " out divisions", Kind::kNumber, out.value / per_division,
                                         "of the head's dial", {&out});
  return fmt::format("{} divisions, {} on diameter", quantity::fixed(divisions.value, 1),
                     bench.print.fine(out.value));
}

void stop_before_last(MillBench& bench, const HoleWork& w, const Figure& aim, double like_mm) {
  Stop stop;
  stop.says = fmt::format("STOP. {}: let it cool, wipe. Measure top and bottom, two ways.", w.work->feature);
  stop.readings.push_back({"found, should be", bench.print.fine(aim.value - like_mm)});
  stop.rule =
      fmt::format("Left to go = {} less found. It should be about {}; if it is half or double, do NOT cut.",
                  bench.print.fine(aim.value), bench.print.fine(like_mm));
  bench.sheet.items.emplace_back(std::move(stop));
}

// Nobody sets a bar to a size in a hole as drilled: what it made is measured, and the head goes on from there.
void stop_after_first(MillBench& bench, const HoleWork& w, double first_mm, double next_mm) {
  Stop stop;
  stop.says = fmt::format("STOP. {}: wipe, measure what the first cut made.", w.work->feature);
  stop.readings.push_back({"found, no more than", bench.print.fine(first_mm)});
  stop.rule =
      fmt::format("Head out for the next cut, on diameter = {} less found.", bench.print.fine(next_mm));
  bench.sheet.items.emplace_back(std::move(stop));
}

}  // namespace

void write_bore(MillBench& bench, const HoleWork& w, const Tool& head) {
  const std::string& feature = w.work->feature;
  const Figure& wanted = to_make(bench, feature, "diameter", w.hole->diameter);
  const double from = bored_from_mm(*w.work);
  const std::string rpm = rpm_text(bench, fmt::format("{}/{}", feature, head.name), head,
                                   handbook::Operation::kBoring, wanted.known() ? wanted.value : 0.0);
  if (!wanted.known() || from <= 0.0) {
    Line& line = place(bench.add_line(fmt::format("{}, {}", feature, head.name)), w);
    line.expect = "NOT KNOWN";
    return;
  }
  const BoringCuts cuts = boring_cuts(bench.print.system());
  const double step = head.division ? head.division->base() * (head.reads_diameter ? 1.0 : 2.0) : 0.0;
  const auto passes =
      cutting::share_out(from, wanted.value, {cuts.greatest_mm, cuts.like_mm, cuts.least_mm, step});
  bool first_is_measured = false;
  bench.sheet.items.emplace_back(Note{"LOCK X AND Y. Turn the boring head round once by hand before power."});
  for (std::size_t i = 0; i < passes.sizes_mm.size(); ++i) {
    const bool last = i + 1 == passes.sizes_mm.size();
    const double before = i == 0 ? from : passes.sizes_mm[i - 1];
    const double size = passes.sizes_mm[i];
    const std::string cut = fmt::format("{}/cut {}", feature, i + 1);
    const Figure& after = bench.choice(cut, Kind::kDiameter, size,
                                       "metal shared out, two like cuts last (common practice)", {&wanted});
    if (last && passes.two_like_last) stop_before_last(bench, w, wanted, size - before);
    const bool first = i == 0 && !last;
    Line& line = place(
        bench.add_line(
            last    ? fmt::format("{}: bore to AIM {}", feature, bench.print.fine(size))
            : first ? fmt::format("{}: bore, first cut: head out until it cuts all round, no larger than {}",
                                  feature, bench.print.fine(size))
            : first_is_measured && i == 1
                ? fmt::format("{}: bore, head out as worked out above; {} if the first cut made {}", feature,
                              head_out(bench, head, cut, after, before), bench.print.fine(before))
                : fmt::format("{}: bore, head out {}", feature, head_out(bench, head, cut, after, before))),
        w);
    line.rpm = rpm;
    line.feed = "quill, fine";
    line.expect = last ? feature_limits(bench, w, "diameter", is_fine(w.hole->diameter))
                       : fmt::format("{}{}", first ? "up to " : "", bench.print.fine(after.value));
    line.to_fill = true;
    const bool stops_anyway = passes.two_like_last && i + 2 == passes.sizes_mm.size();
    first_is_measured = first_is_measured || (first && !stops_anyway);
    if (first && !stops_anyway) stop_after_first(bench, w, size, passes.sizes_mm[i + 1]);
  }
  bench.sheet.items.emplace_back(Note{"UNLOCK X AND Y before the next place."});
}

}  // namespace sparewright::route
