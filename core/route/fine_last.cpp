// The last cut by the compound, set at a small angle: where a division of the cross slide is coarser than the limits.
#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "core/cutting/compound.hpp"
#include "core/route/lathe_bench.hpp"

namespace sparewright::route {
namespace {

using ledger::Figure;
using quantity::Kind;
using quantity::Length;

// The tool stays this far off a shoulder that is finished. A choice made here, without a source.
constexpr double kOffShoulder_mm = 0.1;

// To the side where metal comes off, unless that goes past the least size.
double divisions_of(double left_mm, double division_mm, double least_left_mm) {
  constexpr double kSame = 1e-6;
  const double up = std::ceil(left_mm / division_mm - kSame);
  return up * division_mm <= least_left_mm ? up : std::floor(left_mm / division_mm + kSame);
}

// Not known to half a division, and not better than the slide comes back.
const Figure& setting(LatheBench& bench, const Diameter& d, const shop::Collar& collar, double angle_rad) {
  const double back = collar.repeats_given ? collar.repeats.base() : collar.division().base();
  const double on_collar = std::hypot(from_half_width(collar.division().base() / 2.0), from_half_width(back));
  const double scale = on_diameter_mm(collar) / collar.division().base();
  return bench.error_root(d.feature + "/compound setting",
                          on_collar * cutting::diameter_of_slide_mm(scale / 2.0, angle_rad),
                          "half a division of the compound, and how well it comes back, on diameter");
}

void say_no_cut(LatheBench& bench, const Diameter& d) {
  bench.sheet.items.emplace_back(Note{fmt::format("{}: at size already; no last cut.", d.feature)});
}

}  // namespace

void write_fine_last(LatheBench& bench, const Diameter& d, const Figure& before, const std::string& rpm,
                     const std::string& feed) {
  const Figure& aim = size_to_make(bench, d.feature, d.local, *d.dimension);
  const Figure& least = bench.feature_figure(d.feature, d.local + "/least");
  const shop::Collar& collar = *lathe_collar(bench, kCompound);
  const double angle = bench.on.compound->base();
  const Figure& division = fine_division(bench, d.feature + "/compound");
  const Figure& left = bench.pen.work(
      d.feature + "/left to go", Kind::kLength, "before the last cut, less the aim",
      [](auto b, auto a) { return b - a; }, before, aim);
  if (!left.known() || !division.known() || left.value <= 0.0) return say_no_cut(bench, d);
  const Figure& divisions =
      bench.choice(d.feature + "/compound divisions", Kind::kNumber,
                   divisions_of(left.value, division.value, before.value - least.value),
                   "whole divisions, to the side where metal comes off", {&left, &division});
  bench.pen.work(
      d.feature + "/compound lands", Kind::kDiameter,
      "before it, less what the compound takes off, with the setting error",
      [](auto b, auto n, auto one, auto e) { return b - n * one + e; }, before, divisions, division,
      setting(bench, d, collar, angle));
  const double travel = divisions.value * on_diameter_mm(collar) / 2.0;
  const Figure& along =
      bench.choice(d.feature + "/compound along", Kind::kLength, cutting::along_of_slide_mm(travel, angle),
                   "how far the tool goes along the axis with it", {&divisions});
  const auto reading = shop::collar_reading(
      collar, Length::from_base(divisions.value * collar.division().base()), shop::feeds_in(collar));
  std::string z;
  if (d.length != nullptr) {
    const Figure& to = along_wanted(bench, d.feature + "/last", d.feature, {d.length},
                                    along.value + (d.has_shoulder ? kOffShoulder_mm : 0.0));
    z = along_reads(bench, d.feature + "/last", to);
  }
  const Figure& lands = bench.pen.ask(fmt::format("{}/{}/compound lands", bench.pen.stage(), d.feature));
  Line& line = bench.add_line(fmt::format(
      "{}: {} to AIM {}: [compound] in {:.0f} divisions, makes {}. It goes {} along too{}", d.feature, d.what,
      bench.print.fine(aim.value), divisions.value, bench.print.fine(lands.value),
      bench.print.plain(along.value), d.has_shoulder ? ": stay off the shoulder" : ""));
  line.y_reads = shop::printed(reading);
  line.z_reads = z;
  line.rpm = rpm;
  line.feed = feed;
  line.expect = limits_of(bench, d.feature, d.local, true);
  line.to_fill = true;
}

}  // namespace sparewright::route
