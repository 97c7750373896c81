// Holes whose place comes from the mate: spotted through its holes, drilled together with it, or dowelled when all else is
// in place. For those spotted through it no size of their place is marked or printed.
#include <fmt/format.h>

#include "core/route/desk.hpp"
#include "core/route/marks.hpp"

namespace sparewright::route {
namespace {

// The holes made before this one that hold the part to its mate.
std::vector<std::string> holes_before(const MarksBench& bench, const std::string& feature) {
  std::vector<std::string> names;
  for (const Setup& setup : bench.route.plan.setups) {
    for (const Work& work : setup.works) {
      if (work.feature == feature && !work.joins) return names;
      const part::Feature* made = part::find_feature(bench.route.part, work.feature);
      const auto* hole = made == nullptr ? nullptr : std::get_if<part::Hole>(&made->shape);
      if (hole != nullptr && !work.joins &&
          (hole->mate_hole || hole->placed_by != part::PlacedBy::kCoordinates))
        names.push_back(work.feature);
    }
  }
  return names;
}

void say(MarksBench& bench, std::string words) {
  bench.sheet.items.emplace_back(Note{std::move(words)});
}

void write_held_to_mate(MarksBench& bench, const std::string& feature) {
  const std::vector<std::string> before = holes_before(bench, feature);
  bench
      .add_line(before.empty() ? std::string("clamp it to its mate as it goes: no hole holds it there yet")
                               : fmt::format("bolt it to its mate by {}, lined up and tight", listed(before)))
      .expect = "nothing shifts";
}

void write_match_marks(MarksBench& bench) {
  bench.add_line("match-mark it and its mate, then take it off").expect = "marks on both";
}

// The drill fills the mate's hole, so its point can only be where that hole is.
void write_spotted(MarksBench& bench, const Work& work, const part::Hole& hole) {
  const std::string& feature = work.feature;
  const shop::Tool* drill = drill_through_mate(work);
  say(bench, fmt::format("{}: its place is where the mate's hole is. Nothing is marked for it.", feature));
  write_held_to_mate(bench, feature);
  if (drill == nullptr) {
    bench.add_line(fmt::format("{}: spot it through the mate's hole", feature)).expect = "NOT KNOWN";
    return;
  }
  const std::string name = fmt::format("{}/{}", feature, drill->name);
  const ledger::Figure& size = tool_diameter(bench, name + " through the mate", *drill);
  if (hole.mate_hole) {
    bench.pen.work(
        feature + "/spot off at most", quantity::Kind::kLength,
        "half of what the drill is smaller than the mate's hole",
        [](auto wide, auto narrow) { return (wide - narrow) / 2.0; },
        bench.feature_figure(feature, "mate hole"), size);
  }
  bench.take(*drill);
  Line& spot = bench.add_line(fmt::format(
      "spot {} through the mate's hole with {}: to a full cone, no deeper", feature, drill->name));
  spot.rpm = "by hand";
  spot.feed = "hand drill, square";
  spot.expect = "cone all round";
  write_match_marks(bench);
  Work rest = work;
  std::size_t drills = 0;
  for (const shop::Tool& tool : work.tools)
    drills += tool.kind == shop::ToolKind::kTwistDrill ? 1 : 0;
  if (drills > 1) std::erase_if(rest.tools, [&](const shop::Tool& tool) { return tool.name == drill->name; });
  write_drilled(bench, rest, hole);
  bench.add_line(fmt::format("{}: put it to its mate by the marks, all screws in by fingers", feature))
      .expect = "all start";
}

void write_together(MarksBench& bench, const Work& work, const part::Hole& hole) {
  const bool dowelled = hole.placed_by == part::PlacedBy::kDowelled;
  say(bench, fmt::format("{}: drilled through it and its mate in one: the lines only show where about.",
                         work.feature));
  if (dowelled) say(bench, fmt::format("{}: only when all else is lined up, tried and tight.", work.feature));
  write_held_to_mate(bench, work.feature);
  const std::vector<Mark> marks = marks_of(bench, work, hole);
  put(bench, bench.add_line(fmt::format("mark and punch {}: {}", work.feature, from_words(marks))), marks)
      .expect = "on the cross";
  write_drilled(bench, work, hole);
  if (!hole.thread.empty())
    say(bench, fmt::format("{}: the thread goes in this part alone; open the mate's hole up for the screw.",
                           work.feature));
  write_match_marks(bench);
}

}  // namespace

const shop::Tool* drill_through_mate(const Work& work) {
  return tool_of_kind(work, shop::ToolKind::kTwistDrill);
}

void write_through_mate(MarksBench& bench, const Work& work, const part::Hole& hole) {
  if (hole.placed_by == part::PlacedBy::kMate) return write_spotted(bench, work, hole);
  write_together(bench, work, hole);
}

}  // namespace sparewright::route
