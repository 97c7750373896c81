// The free end faced: to length where the length matters, else until it is clean.
#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/cutting/passes.hpp"
#include "core/route/lathe_bench.hpp"

namespace sparewright::route {
namespace {

using handbook::Operation;
using ledger::Figure;
using quantity::Kind;

// Along the axis. Common practice: 0.020 in (0.5 mm) deep at most in facing, two like cuts of 0.005 in to finish, nothing
// under 0.001 in.
double greatest_mm(const LatheBench& bench) {
  return bench.print.system() == quantity::UnitSystem::kMetric ? 0.5 : 0.020 * 25.4;
}
constexpr double kLike_mm = 0.005 * 25.4;
constexpr double kLeast_mm = 0.001 * 25.4;

struct Face {
  const Work& work;
  const shop::Tool& tool;
  std::string rpm;
  std::string feed;
};

const Figure& standing_length(LatheBench& bench, const std::string& feature) {
  const double way = bench.way();
  return bench.pen.work(
      feature + "/stands", Kind::kLength, "from end to end as it stands",
      [way](auto free, auto far) { return way * (far - free); }, *bench.end, *bench.far_end);
}

// How far from the raw end; the carriage's or the compound's collar where it is set by one.
std::string in_reads(LatheBench& bench, const std::string& name, const Figure& in) {
  if (bench.along_by == AlongBy::kStop) return "on by " + bench.print.fine(in.value);
  return along_reads(bench, name, in);
}

const Figure& in_from_end(LatheBench& bench, const std::string& name, const Figure& stands,
                          const Figure& left) {
  return bench.pen.work(
      name + " in", Kind::kLength, "what stands less what is left", [](auto s, auto l) { return s - l; },
      stands, left);
}

void face_clean(LatheBench& bench, const Face& face, const Figure& stands, const Figure& leaves) {
  const std::string& feature = face.work.feature;
  const Figure& off = in_from_end(bench, feature, stands, leaves);
  Line& line =
      bench.add_line(fmt::format("{}: face, {} off in cuts of {} at most", feature,
                                 bench.print.plain(off.value), bench.print.plain(greatest_mm(bench))));
  line.z_reads = in_reads(bench, feature, off);
  line.rpm = face.rpm;
  line.feed = face.feed;
  line.expect = "clean, " + limits_of(bench, feature, "leaves", false) + " long";
}

void stop_before_last(LatheBench& bench, const std::string& feature, double before_mm, double aim_mm) {
  const Figure& left = bench.choice(feature + "/left, about", Kind::kLength, before_mm - aim_mm,
                                    "what the cut before should leave");
  Stop stop;
  stop.says = fmt::format("STOP. {}: wipe, measure the length.", feature);
  stop.readings.push_back({"found, should be", bench.print.fine(before_mm)});
  stop.rule =
      fmt::format("Left to go = found less {}. It should be about {}; if it is half or double, do NOT cut.",
                  bench.print.fine(aim_mm), bench.print.fine(left.value));
  bench.sheet.items.emplace_back(std::move(stop));
}

// How long it is after sawing or parting off nobody knows to better than the cuts that are left.
void stop_before_first(LatheBench& bench, const std::string& feature, double stands_mm, double first_mm) {
  Stop stop;
  stop.says = fmt::format("STOP. {}: measure the length before the first cut.", feature);
  stop.readings.push_back({"found, should be about", bench.print.fine(stands_mm)});
  stop.rule = fmt::format(
      "To come off first = found less {}. The readings below are for {}: each is more by what is found over "
      "it.",
      bench.print.fine(first_mm), bench.print.fine(stands_mm));
  bench.sheet.items.emplace_back(std::move(stop));
}

// In whole divisions to the side where metal comes off, as long as that leaves enough.
const Figure& in_divisions(LatheBench& bench, const std::string& name, const Figure& in, double division_mm,
                           double most_in_mm) {
  if (division_mm <= 0.0) return in;
  constexpr double kSame = 1e-6;  // of a division
  const double up = std::ceil(in.value / division_mm - kSame) * division_mm;
  const double set = up <= most_in_mm ? up : std::floor(in.value / division_mm + kSame) * division_mm;
  return bench.choice(name + " set", Kind::kLength, set, "whole divisions, to the side where metal comes off",
                      {&in});
}

// Roughing in one line, then the two like cuts with the STOP between them.
void face_to_length(LatheBench& bench, const Face& face, const Figure& stands, const Figure& leaves) {
  const std::string& feature = face.work.feature;
  const shop::Collar* collar =
      lathe_collar(bench, bench.along_by == AlongBy::kCarriage ? kCarriage : kCompound);
  const double step =
      collar == nullptr || bench.along_by == AlongBy::kStop ? 0.0 : on_diameter_mm(*collar) / 2.0;
  const double like = step > 0.0 ? std::max(1.0, std::floor(kLike_mm / step)) * step : kLike_mm;
  const auto passes =
      cutting::share_out(stands.value, leaves.value, {greatest_mm(bench), like, kLeast_mm, 0.0});
  const std::size_t finishing = passes.two_like_last ? 2 : 1;
  const std::size_t count = passes.sizes_mm.size();
  double before = stands.value;
  const Figure& least = bench.feature_figure(feature, "leaves/least");
  stop_before_first(bench, feature, stands.value,
                    passes.sizes_mm[count > finishing ? count - finishing - 1 : 0]);
  for (std::size_t i = count > finishing ? count - finishing - 1 : 0; i < count; ++i) {
    const bool last = i + 1 == count;
    const bool rough = count - i > finishing;
    const double size = passes.sizes_mm[i];
    const std::string name = fmt::format("{}/cut {}", feature, i + 1);
    if (last && passes.two_like_last) stop_before_last(bench, feature, before, size);
    const Figure& after =
        bench.choice(name, Kind::kLength, size, "metal shared out, two like cuts last (common practice)",
                     {&stands, &leaves});
    const Figure& in = in_from_end(bench, name, stands, after);
    Line& line = bench.add_line(last ? fmt::format("{}: face to AIM {} long", feature, bench.print.fine(size))
                                : rough ? fmt::format("{}: face, {} off in cuts of {} at most", feature,
                                                      bench.print.plain(in.value),
                                                      bench.print.plain(greatest_mm(bench)))
                                        : fmt::format("{}: face", feature));
    line.z_reads =
        in_reads(bench, name, last ? in_divisions(bench, name, in, step, stands.value - least.value) : in);
    line.rpm = face.rpm;
    line.feed = face.feed;
    line.expect = last ? limits_of(bench, feature, "leaves", true) : bench.print.fine(size);
    line.to_fill = true;
    before = size;
  }
}

}  // namespace

void turn_face(LatheBench& bench, const Work& work, const part::Flat& flat) {
  const std::string& feature = work.feature;
  const Figure& leaves = size_to_make(bench, feature, "leaves", flat.leaves);
  const Figure& stands = standing_length(bench, feature);
  const shop::Tool* tool = tool_of_kind(work, shop::ToolKind::kTurningTool);
  const Figure* across = bench.outside.largest(bench.end->value, bench.end->value + bench.way());
  if (tool == nullptr || !leaves.known() || !stands.known() || across == nullptr) {
    bench.add_line(feature + ": face").expect = "NOT KNOWN";
    return;
  }
  bench.pen.work(
      feature + "/metal", Kind::kLength, "what is to come off the end", [](auto s, auto l) { return s - l; },
      stands, leaves);
  say_with_tool(bench, *tool, "touch the end, along to 0.");
  const std::string name = fmt::format("{}/{}", feature, tool->name);
  const Face face{work, *tool, rpm_text(bench, name, *tool, Operation::kTurningFinish, across->value),
                  feed_a_turn(bench, name, *tool, Operation::kTurningFinish)};
  if (is_close(flat.leaves, bench.feature_figure(feature, "leaves/least"),
               bench.feature_figure(feature, "leaves/most"))) {
    face_to_length(bench, face, stands, leaves);
  } else {
    face_clean(bench, face, stands, leaves);
  }
}

}  // namespace sparewright::route
