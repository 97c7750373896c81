// The part cut off the piece it was held by.
#include <cmath>

#include <fmt/format.h>

#include "core/route/lathe_bench.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;

// What is left for facing the parted end: where it comes off less where that end lies when all is done.
const Figure& left_to_face(LatheBench& bench, const std::string& feature, part::Face side) {
  const double way = bench.way();
  return bench.pen.work(
      feature + "/left to face", Kind::kLength, "where it comes off less the finished end",
      [way](auto off, auto finished) { return way * (off - finished); },
      bench.feature_figure(feature, "at x"), bench.side(side));
}

// A hole on the axis that is there by then and reaches past the place: the name of it, or nothing.
std::string bored_there(LatheBench& bench, const Work& parting, double at_mm) {
  for (const Setup& setup : bench.route.plan.setups) {
    const bool here = setup.op == bench.setup.op;
    for (const Work& work : setup.works) {
      if (here && work.feature == parting.feature) return {};
      const part::Feature* feature = part::find_feature(bench.route.part, work.feature);
      const auto* hole = feature == nullptr ? nullptr : std::get_if<part::Hole>(&feature->shape);
      if (hole == nullptr || work.joins || part::axis_of(hole->into) != part::Axis::kX) continue;
      const Figure& off = bench.pen.ask(fmt::format("op {}/{}/off the axis", setup.op, work.feature));
      if (!part::is_on_axis(*hole) && !(off.known() && off.value <= kOnAxis_mm)) continue;
      if (!hole->depth) return work.feature;
      const double starts = bench.feature_figure(work.feature, "starts at").value;
      const double deep = bench.feature_figure(work.feature, "depth").value;
      const double ends = starts + (part::at_greater_end(hole->into) ? -deep : deep);
      if ((starts - at_mm) * (ends - at_mm) < 0.0) return work.feature;
    }
    if (here) break;
  }
  return {};
}

// Where the parting tool has nothing more to cut: in a bore, a tube's or one made before, or in the middle.
std::string parts_to(LatheBench& bench, const Work& work, double at_mm) {
  const std::string bore = bored_there(bench, work, at_mm);
  if (!bore.empty()) return "into " + bore;
  return bench.route.part.blank.bore ? "into the bore of the tube" : "to the middle";
}

}  // namespace

void part_off(LatheBench& bench, const Work& work, const part::Formed& piece) {
  const std::string& feature = work.feature;
  const shop::Tool* tool = tool_of_kind(work, shop::ToolKind::kPartingTool);
  const Figure& at = bench.feature_figure(feature, "at x");
  const Figure* outside = bench.outside.largest(at.value, at.value + bench.way());
  if (tool == nullptr || !tool->width || !at.known() || outside == nullptr) {
    bench.add_line(feature + ": part off").expect = "NOT KNOWN";
    return;
  }
  const double way = bench.way();
  const Figure& length = bench.pen.work(
      feature + "/length parted", Kind::kLength, "from the free end to where it comes off",
      [way](auto off, auto free) { return way * (off - free); }, at, *bench.end);
  ledger::Root width;
  width.kind = Kind::kLength;
  width.value = tool->width->base();
  width.origin = ledger::Origin::kChoice;
  width.source = "the shop, " + tool->name;
  // The tool touched the end with its edge nearer the headstock; the other one makes the length.
  const Figure& wanted = bench.pen.work(
      feature + "/parting wanted", Kind::kLength, "its length and the width of the tool",
      [](auto l, auto w) { return l + w; }, length, bench.pen.root(feature + "/width of tool", width));
  const Figure& to_face = left_to_face(bench, feature, piece.side);
  touch(bench, *tool, *outside);
  Line& line = bench.add_line(fmt::format(
      "{}: part off {}, {} long{}", feature, parts_to(bench, work, at.value), bench.print.plain(length.value),
      to_face.known() && to_face.value > 0.0
          ? fmt::format(", {} of it to face", bench.print.plain(to_face.value))
          : ""));
  line.z_reads = along_reads(bench, feature + "/parting", wanted);
  const std::string name = fmt::format("{}/{}", feature, tool->name);
  line.rpm = rpm_text(bench, name, *tool, handbook::Operation::kParting, outside->value);
  line.feed = feed_a_turn(bench, name, *tool, handbook::Operation::kParting);
  line.expect = bench.print.plain(length.value);
  forget_touch(bench);
}

}  // namespace sparewright::route
