// Whether a drill starts square: on a slope, over an edge or on a round side it wanders before it bites.
#include <array>
#include <cmath>
#include <limits>
#include <numbers>
#include <vector>

#include <fmt/format.h>

#include "core/judge/drill_work.hpp"
#include "core/shape/material.hpp"

namespace sparewright::judge {
namespace {

using ledger::Pen;

// Common practice: a degree or two is not felt, beyond some five degrees a drill walks even from a dimple.
constexpr double kSquare_rad = 2.0 / 180.0 * std::numbers::pi;
constexpr double kMost_rad = 5.0 / 180.0 * std::numbers::pi;
constexpr const char* kSource =
    "common practice: up to 2 degrees is square enough, past 5 degrees a drill walks";
constexpr double kFlat_mm = 1e-4;  // less than that from flat is flat

// How deep the drill meets metal, round the rim of its width.
constexpr std::size_t kRound = 32;
using Rim = std::array<double, kRound>;  // mm from the blank's outside; infinite over the air

Rim rim_of(const DrillWork& drill, double radius_mm) {
  constexpr double kJustInside = 1.0 - 1e-6;
  Rim rim{};
  const shape::Work before = drill.before();
  const shape::Cylinder way{drill.frame, radius_mm, drill.length_mm};
  const std::vector<const shape::Primitive*> air = shape::bodies(before.cuts, shape::bounds(way));
  std::vector<shape::Interval> metal;
  for (std::size_t i = 0; i < kRound; ++i) {
    const double angle = 2 * std::numbers::pi * static_cast<double>(i) / kRound;
    const shape::Vector out = std::cos(angle) * drill.frame.x + std::sin(angle) * drill.frame.y;
    shape::metal_along(before.blank, air, {drill.frame.origin + kJustInside * radius_mm * out, drill.frame.z},
                       metal);
    rim.at(i) = metal.empty() ? std::numeric_limits<double>::infinity() : metal.front().enter_mm;
  }
  return rim;
}

// What the drill leans on: how far it is from square, and how much a square surface bulges or is hollow under it.
struct Start {
  double slope_rad = 0.0;
  double bulge_mm = 0.0;
  bool over_air = false;     // some of its width meets no metal at all
  bool meets_metal = false;  // some of it does
};

Start start_of(const Rim& rim, double radius_mm) {
  Start start;
  double low = std::numeric_limits<double>::infinity();
  double high = -low;
  for (std::size_t i = 0; i < kRound; ++i) {
    const double here = rim.at(i);
    const double across = rim.at((i + kRound / 2) % kRound);
    start.over_air = start.over_air || std::isinf(here);
    if (std::isinf(here)) continue;
    start.meets_metal = true;
    low = std::min(low, here);
    high = std::max(high, here);
    if (!std::isinf(across))
      start.slope_rad = std::max(start.slope_rad, std::atan(std::abs(here - across) / (2 * radius_mm)));
  }
  if (start.meets_metal) start.bulge_mm = high - low;
  return start;
}

// The first twist drill; without an order of work the hole's own width.
double first_radius_mm(const Drilling& drilling, const DrillWork& drill) {
  for (const shop::Tool& tool : drilling.tools()) {
    if (tool.kind == shop::ToolKind::kTwistDrill && tool.diameter) return tool.diameter->base / 2;
  }
  return drill.radius_mm;
}

void say_over_air(Pen& pen, const Drilling& drilling) {
  pen.state(
      {.check = "drill starts square",
       .subject = drilling.feature.name,
       .state = ledger::State::kNo,
       .reason = "part of its width starts over the air",
       .source = "common practice: a drill needs metal all round its point to start",
       .todo = "drill before the metal beside it is cut away, clamp a piece of scrap there, or mill it"});
}

void say_round(Pen& pen, const Drilling& drilling) {
  const bool spotted = drilling.uses(shop::ToolKind::kSpotDrill);
  pen.state({.check = "drill starts square",
             .subject = drilling.feature.name,
             .state = spotted ? ledger::State::kOk : ledger::State::kClose,
             .reason = spotted
                           ? "it starts on a round side, on the centre line and from a spot drill's dimple"
                           : "it starts on a round side: on the centre line, but with no dimple to hold it",
             .source = "common practice",
             .todo = spotted ? "" : "use a spot drill or a drill guide first, or mill a small flat"});
}

// A hole that is meant to lean starts on a slope by design; how it is started is for the one who drills it.
void say_leaning(Pen& pen, const Drilling& drilling, double slope_rad) {
  pen.state({.check = "drill starts square",
             .subject = drilling.feature.name,
             .state = ledger::State::kClose,
             .reason = fmt::format("it leans: the surface is {:.1f} degrees from square to the drill",
                                   slope_rad / std::numbers::pi * 180.0),
             .source = kSource,
             .todo = "start it with an end mill or on a spot-face square to it, or in a guide"});
}

void judge_slope(Pen& pen, const Drilling& drilling, double slope_rad, double width_mm,
                 const route::Printing& print) {
  const auto angle = [&](std::string_view local, double rad, ledger::Origin origin,
                         std::string source) -> const ledger::Figure& {
    ledger::Root root;
    root.kind = quantity::Kind::kAngle;
    root.value = rad;
    root.origin = origin;
    root.source = std::move(source);
    return pen.root(local, std::move(root));
  };
  const double degrees = slope_rad / std::numbers::pi * 180.0;
  pen.judge(
      {.check = "drill starts square",
       .subject = drilling.feature.name,
       .figure = &angle("slope", slope_rad, ledger::Origin::kStandard, "by rays round the drill's width"),
       .high = &angle("most slope", kMost_rad, ledger::Origin::kDefault, "common practice"),
       .reason =
           fmt::format("one side of the drill meets metal {} before the other, {:.1f} degrees from square",
                       print.plain(width_mm * std::tan(slope_rad)), degrees),
       .source = kSource,
       .todo = "mill a flat or a spot-face first, or start it with an end mill or in a guide",
       .close_at_best = slope_rad > kSquare_rad});
}

void judge_start(Pen& pen, const Subject& subject, const Drilling& drilling) {
  // An end mill makes its own flat, and so does a spot-face.
  if (drilling.uses(shop::ToolKind::kEndMill) || drilling.hole().make == part::HoleMake::kSpotfaced) return;
  const auto drill = drill_work(pen, subject, drilling);
  if (!drill) return;
  const double radius = first_radius_mm(drilling, *drill);
  const Start start = start_of(rim_of(*drill, radius), radius);
  if (!start.meets_metal || (!start.over_air && start.bulge_mm < kFlat_mm)) return;
  if (start.over_air) return say_over_air(pen, drilling);
  if (start.slope_rad <= kSquare_rad) return say_round(pen, drilling);
  if (drilling.hole().lean) return say_leaning(pen, drilling, start.slope_rad);
  judge_slope(pen, drilling, start.slope_rad, 2 * radius, route::Printing(subject.route.system));
}

}  // namespace

void add_drill_start_checks(const Shared& subject, Stages& stages) {
  for (const Drilling& drilling : all_drillings(*subject)) {
    stages.push_back(check_stage(subject, "drill start", drilling.feature.name,
                                 [subject, drilling](Pen& pen) { judge_start(pen, *subject, drilling); }));
  }
}

}  // namespace sparewright::judge
