// A taper turned by the compound, set to its angle.
#include <cmath>

#include <fmt/format.h>

#include "core/handbook/taper_turning.hpp"
#include "core/route/lathe_bench.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;

std::string degrees(const Figure& angle) {
  return fmt::format("{:.2f} degrees", quantity::unit::degree.from_base(angle.value));
}

}  // namespace

void turn_taper(LatheBench& bench, const Work& work, const part::Formed& taper) {
  const std::string& feature = work.feature;
  const Figure& small =
      size_to_make(bench, feature, "small diameter", taper.sizes.find("small diameter")->second);
  const Figure& large =
      size_to_make(bench, feature, "large diameter", taper.sizes.find("large diameter")->second);
  const Figure& length = size_to_make(bench, feature, "length", taper.sizes.find("length")->second);
  const Figure& angle = bench.pen.work(
      feature + "/compound angle", Kind::kAngle, "half the taper, as an angle to the axis",
      [](auto d, auto e, auto l) { return handbook::angle_to_axis_rad(handbook::taper_of(e, d, l)); }, small,
      large, length);
  const Figure& travel = bench.pen.work(
      feature + "/compound travel", Kind::kLength, "length along the axis over the cosine of the angle",
      [](auto l, auto a) {
        using std::cos;
        return l / cos(a);
      },
      length, angle);
  Diameter d;
  d.work = &work;
  d.feature = feature;
  d.local = "small diameter";
  d.dimension = &taper.sizes.find("small diameter")->second;
  d.tool = tool_of_kind(work, shop::ToolKind::kTurningTool);
  d.what = "taper";
  const Figure& to = along_wanted(bench, feature + "/large end", feature, {&length});
  d.from = bench.outside.largest(bench.end->value, bench.end->value + bench.way() * to.value);
  if (d.tool != nullptr && travel.known() && angle.known()) {
    const shop::Collar* collar = lathe_collar(bench, kCompound);
    std::string reads = "by its travel";
    if (collar != nullptr) {
      const double shows = collar->reads == shop::CollarReads::kDiameter ? 2.0 : 1.0;
      reads = shop::printed(shop::collar_reading(*collar, quantity::Length::from_base(shows * travel.value),
                                                 shop::feeds_in(*collar)));
    }
    say_with_tool(
        bench, *d.tool,
        fmt::format("{}: [compound] {} to the axis, set with an indicator; [carriage] locked, tool exactly "
                    "at [center] height. Each cut by the [compound] alone: {} along it, reads {}. Try the "
                    "mate with blue before the last one.",
                    feature, degrees(angle), bench.print.plain(travel.value), reads));
    forget_touch(bench);
  }
  write_diameter(bench, d);
  if (d.tool == nullptr || !angle.known()) return;
  Stop stop;
  stop.says = fmt::format("STOP. {}: measure both ends.", feature);
  stop.readings.push_back({"small end", limits_of(bench, feature, "small diameter", false)});
  stop.readings.push_back({"large end", limits_of(bench, feature, "large diameter", false)});
  stop.rule = "One end right and the other not: the angle is off. Move it before anything more is cut.";
  bench.sheet.items.emplace_back(std::move(stop));
}

}  // namespace sparewright::route
