// Diameters as the cross slide's collar shows them, and back to the diameter a reading makes.
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

// A line set to a mark is half a division out at most; the slide comes back within `repeats` when every move ends the
// same way (the shop's word, else one division: common practice). On the collar, not on diameter.
const Figure& setting_error(const LatheBench& bench, const shop::Collar& collar, const std::string& name) {
  const double back = collar.repeats_given ? collar.repeats.base() : collar.division().base();
  return bench.error_root(
      name + " setting", std::hypot(from_half_width(collar.division().base() / 2.0), from_half_width(back)),
      collar.repeats_given
          ? "half a division, and how well the slide comes back as the shop states it"
          : "half a division, and one division for how well the slide comes back (common practice)");
}

double divisions_of(const shop::Collar& collar, double on_diameter, bool has_limit, double keeps_room_mm) {
  const double division = on_diameter_mm(collar);
  constexpr double kSame = 1e-6;  // of a division
  const double exact = on_diameter / division;
  if (!has_limit) return std::floor(exact + 0.5 + kSame);
  // To the side where metal comes off, unless that goes past the limit there.
  const double up = std::ceil(exact - kSame);
  return up * division - on_diameter <= keeps_room_mm + kSame * division ? up : std::floor(exact + kSame);
}

}  // namespace

const shop::Collar* lathe_collar(const LatheBench& bench, std::string_view wheel) {
  const auto& collars = bench.setup.machine.collars;
  const auto found = collars.find(std::string(wheel));
  return found == collars.end() ? nullptr : &found->second;
}

double on_diameter_mm(const shop::Collar& collar) {
  return collar.division().base() * (collar.reads == shop::CollarReads::kDiameter ? 1.0 : 2.0);
}

bool has_fine_feed(const LatheBench& bench) {
  return bench.on.compound.has_value() && lathe_collar(bench, kCompound) != nullptr;
}

const Figure& fine_division(LatheBench& bench, const std::string& name) {
  const shop::Collar& collar = *lathe_collar(bench, kCompound);
  ledger::Root travel;
  travel.kind = Kind::kLength;
  travel.value = on_diameter_mm(collar) / 2.0;
  travel.origin = ledger::Origin::kChoice;
  travel.source = "the shop";
  ledger::Root angle;
  angle.kind = Kind::kAngle;
  angle.value = bench.on.compound->base();
  angle.origin = ledger::Origin::kChoice;
  angle.source = "the job's order of work";
  return bench.pen.work(
      name + " fine division", Kind::kLength, "one division of the compound, on diameter at its angle",
      [](auto s, auto a) { return cutting::diameter_of_slide_mm(s, a); },
      bench.pen.root(name + " compound division", travel), bench.pen.root(name + " compound angle", angle));
}

void say_with_tool(LatheBench& bench, const shop::Tool& tool, std::string says) {
  if (bench.in_spindle == tool.name) {
    bench.sheet.items.emplace_back(Note{fmt::format("{}: {}", tool.name, says)});
    return;
  }
  bench.in_spindle = tool.name;
  if (!says.empty() && says.front() >= 'a' && says.front() <= 'z')
    says.front() = static_cast<char>(says.front() - 'a' + 'A');
  bench.sheet.items.emplace_back(Note{fmt::format("TOOL: {}. {}", tool.name, says)});
}

void touch(LatheBench& bench, const shop::Tool& tool, const Figure& diameter, bool inside) {
  if (bench.touched_by == tool.name && bench.touched_at != nullptr) return bench.take(tool);
  bench.touched_by = tool.name;
  bench.touched_at = &diameter;
  const shop::Collar* cross = lathe_collar(bench, kCrossSlide);
  const std::string way =
      cross == nullptr
          ? "feeding in"
          : fmt::format("turning {}", shop::name_of(inside ? shop::opposite(shop::feeds_in(*cross))
                                                           : shop::feeds_in(*cross)));
  say_with_tool(bench, tool,
                fmt::format("touch the end, along to 0; touch the {} there, {}, {} to 0.",
                            or_not_known(diameter, bench.print.fine(diameter.value)), way,
                            has_fine_feed(bench) ? "cross and [compound]" : "cross"));
}

void forget_touch(LatheBench& bench) {
  bench.touched_at = nullptr;
}

CrossReading cross_reads(LatheBench& bench, const std::string& name, const Figure& size, double keeps_mm) {
  const shop::Collar* collar = lathe_collar(bench, kCrossSlide);
  if (collar == nullptr || bench.touched_at == nullptr || !size.known() || !bench.touched_at->known())
    return {"NOT KNOWN", size.value, nullptr};
  const Figure& zero = *bench.touched_at;
  const bool grows = size.value > zero.value;
  const Figure& infeed = bench.pen.work(
      name + " infeed", Kind::kLength, "from the diameter touched, on diameter",
      [](auto a, auto b) {
        using std::abs;
        return abs(a - b);
      },
      zero, size);
  const double division = on_diameter_mm(*collar);
  const double divisions =
      divisions_of(*collar, infeed.value, std::isfinite(keeps_mm), std::abs(size.value - keeps_mm));
  const shop::Turning way = grows ? shop::opposite(shop::feeds_in(*collar)) : shop::feeds_in(*collar);
  const auto reading =
      shop::collar_reading(*collar, Length::from_base(divisions * collar->division().base()), way);
  bench.choice(name + " turns", Kind::kNumber, static_cast<double>(reading.turns),
               "whole turns from the zero", {&infeed});
  bench.choice(name + " division", Kind::kNumber, reading.division, "of the cross slide's collar", {&infeed});
  const double rounding = divisions * division - infeed.value;
  bench.choice(name + " rounding", Kind::kLength, rounding, "what a whole division costs, on diameter",
               {&infeed});
  const Figure& set = bench.choice(name + " set", Kind::kLength, divisions * division,
                                   "whole divisions, on diameter", {&infeed});
  const double sign = grows ? 1.0 : -1.0;
  const double scale = division / collar->division().base();
  const Figure& lands = bench.pen.work(
      name + " lands", Kind::kDiameter,
      "the diameter touched and what the collar goes on, with the setting error",
      [sign, scale](auto d, auto in, auto e) { return d + sign * in + scale * e; }, zero, set,
      setting_error(bench, *collar, name));
  return {shop::printed(reading), lands.value, &lands};
}

}  // namespace sparewright::route
