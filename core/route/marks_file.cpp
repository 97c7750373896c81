// What is filed at the bench: a side to its line, an edge, an outline; and a thread cut with a die.
#include <cmath>

#include <fmt/format.h>

#include "core/route/marks.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;
using shop::ToolKind;

// What the rough file leaves for the smooth one, and the most that anybody files off before it is sawn or milled. Common
// practice.
double left_for_smooth_mm(quantity::UnitSystem system) {
  return system == quantity::UnitSystem::kMetric ? 0.2 : 0.008 * 25.4;
}
constexpr double kMostFiled_mm = 1.0;

// How far a side filed to a scribed line lies from it, from a careful hand to a usual one: 0.05 to 0.1 mm, 0.002 to
// 0.004 in. From memory.
void write_filed_good_to(MarksBench& bench, const std::string& feature) {
  const bool metric = bench.print.system() == quantity::UnitSystem::kMetric;
  const double least = metric ? 0.05 : 0.002 * 25.4;
  const double most = metric ? 0.10 : 0.004 * 25.4;
  ledger::Root root;
  root.kind = Kind::kLength;
  root.value = (least + most) / 2.0;
  root.origin = ledger::Origin::kDefault;
  root.source = fmt::format("filed to a line: {} to {}, from memory", bench.print.nominal(least),
                            bench.print.nominal(most));
  root.shares = {{"the hand that files", from_half_width((most - least) / 2.0)}};
  bench.pen.root(feature + "/filed good to", root);
}

const Figure& left_for_smooth(MarksBench& bench, const std::string& feature) {
  return bench.choice(feature + "/left for the smooth file", Kind::kLength,
                      left_for_smooth_mm(bench.print.system()), "common practice");
}

// Where the side lies before it is filed, in the order of the text.
const Figure& metal_to_file(MarksBench& bench, const std::string& feature, const part::Flat& flat) {
  std::size_t index = 0;
  while (index < bench.route.part.features.size() && bench.route.part.features[index].name != feature)
    ++index;
  return bench.pen.work(
      feature + "/metal to file", Kind::kLength, "from the side as it is to the line",
      [](auto side, auto at) {
        using std::abs;
        return abs(side - at);
      },
      bench.pen.ask(part::side_path_before(bench.route.part, flat.side, index)),
      bench.pen.ask(part::at_path(feature, part::axis_of(flat.side))));
}

Line& file_line(MarksBench& bench, std::string says) {
  Line& line = bench.add_line(std::move(says));
  line.rpm = "by hand";
  return line;
}

// "2.00 from both sides"
std::string edge_size(const MarksBench& bench, const std::string& feature, const char* local) {
  const Figure& size = bench.feature_figure(feature, local);
  return or_not_known(size, bench.print.plain(size.value));
}

void mark_corner(MarksBench& bench, const std::string& feature, const part::Formed& outline,
                 std::size_t index) {
  const part::ProfileCorner& corner = outline.corners[index];
  const std::string name = fmt::format("{}/corner {}", feature, index + 1);
  std::vector<Mark> marks;
  for (const part::Axis axis : part::axes_in(outline.side)) {
    const Figure& at =
        bench.feature_figure(feature, fmt::format("corner {}/at {}", index + 1, part::name_of(axis)));
    marks.push_back(mark_at(bench, fmt::format("{}/{}", name, part::name_of(axis)), feature, axis, at));
  }
  std::string says = fmt::format("mark corner {} of {}: {}", index + 1, feature, from_words(marks));
  const auto radius = [&](const char* local) {
    const Figure& r = bench.feature_figure(feature, fmt::format("corner {}/{}", index + 1, local));
    return or_not_known(r, bench.print.plain(r.value));
  };
  if (corner.fillet) says += fmt::format("; rounded to radius {}", radius("fillet"));
  if (corner.arc)
    says += fmt::format("; on to the next by an arc of {}, {}", radius("arc"),
                        corner.bulges ? "bulging out" : "hollow");
  put(bench, bench.add_line(std::move(says)), marks).expect = "on the cross";
}

}  // namespace

void write_filed_flat(MarksBench& bench, const Work& work, const part::Flat& flat) {
  const std::string& feature = work.feature;
  const part::Face kept = part::opposite(flat.side);
  const Figure& wanted = to_make(bench, feature, "leaves", flat.leaves);
  const Figure& leave = left_for_smooth(bench, feature);
  const Figure& metal = metal_to_file(bench, feature, flat);
  write_filed_good_to(bench, feature);
  put(bench,
      bench.add_line(fmt::format("mark {}: a line all round, from the {}", feature, part::name_of(kept))),
      {{part::axis_of(flat.side), kept, &wanted}})
      .expect = "line meets";
  if (metal.known() && metal.value > kMostFiled_mm)
    bench.sheet.items.emplace_back(
        Note{fmt::format("{}: {} is much to file. Saw or mill most of it off first.", feature,
                         bench.print.plain(metal.value))});
  const Figure& rough = bench.pen.work(
      feature + "/rough filed to", Kind::kLength, "what is to be left, and what the smooth file takes",
      [](auto size, auto more) { return size + more; }, wanted, leave);
  Line& coarse = file_line(bench, fmt::format("{}: rough file across, {} left above the line", feature,
                                              bench.print.plain(leave.value)));
  coarse.expect = or_not_known(rough, bench.print.plain(rough.value));
  coarse.to_fill = true;
  Stop stop;
  stop.says = fmt::format("STOP. {}: wipe, measure at its four corners, square on all sides.", feature);
  stop.readings.push_back({"found, should be", coarse.expect});
  stop.rule = "File where it is high. Light under the square is high beside it.";
  bench.sheet.items.emplace_back(std::move(stop));
  Line& fine = file_line(bench, fmt::format("{}: smooth file, draw-file to the line", feature));
  fine.expect = limits_of(bench, feature, flat.leaves, "leaves");
  fine.to_fill = true;
}

void write_filed_edge(MarksBench& bench, const Work& work, const part::Formed& edge) {
  const std::string& feature = work.feature;
  const bool rounded = edge.form == part::Form::kRoundedEdge;
  const char* local = rounded ? "radius" : "size";
  bench
      .add_line(fmt::format("mark {}: {} from the edge along both sides", feature,
                            edge_size(bench, feature, local)))
      .expect = "two lines";
  Line& line = file_line(bench, rounded ? fmt::format("{}: file flats, then roll the file over them", feature)
                                        : fmt::format("{}: file at 45 degrees down to both lines", feature));
  line.expect = limits_of(bench, feature, edge.sizes.at(local), local);
}

void write_filed_outline(MarksBench& bench, const Work& work, const part::Formed& outline) {
  const std::string& feature = work.feature;
  for (std::size_t i = 0; i < outline.corners.size(); ++i)
    mark_corner(bench, feature, outline, i);
  const bool sawn = tool_of_kind(work, ToolKind::kSawBlade) != nullptr;
  const char* side = outline.keeps_inside ? "outside" : "inside";
  if (sawn || !outline.keeps_inside) {
    Line& line = bench.add_line(
        outline.keeps_inside
            ? fmt::format("{}: saw outside the lines, all of them left standing", feature)
            : fmt::format("{}: drill hole by hole inside the lines, cut the rest out", feature));
    line.expect = "lines stand";
  }
  Line& line = file_line(bench, fmt::format("{}: file to the lines from the {}", feature, side));
  line.expect = "half the line left";
}

void write_die(MarksBench& bench, const Work& work, const part::Formed& thread) {
  const std::string& feature = work.feature;
  file_line(bench, fmt::format("{}: file a lead-in on the end, as deep as the thread", feature)).expect =
      "even all round";
  const Figure& length = bench.feature_figure(feature, "length");
  Line& line = file_line(
      bench, fmt::format(
                 "{}, die {}: opened wide first, square to the work; half a turn on, a quarter back; {} long",
                 feature, thread.thread, or_not_known(length, bench.print.plain(length.value))));
  line.feed = "oil";
  line.expect = "nut goes on";
  bench.sheet.items.emplace_back(Note{fmt::format(
      "{}: close the die a little and go over it again until the nut goes on without shake.", feature)});
}

}  // namespace sparewright::route
