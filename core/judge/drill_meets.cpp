// Whether a drill meets a hole that is there before it: one met with the edge only pushes it aside and breaks it.
#include <algorithm>
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "core/judge/drill_work.hpp"
#include "core/shape/wall.hpp"

namespace sparewright::judge {
namespace {

using ledger::Origin;
using ledger::Pen;

constexpr const char* kSource =
    "common practice: a drill that meets another hole with less than half its diameter is pushed aside and "
    "breaks";

struct Line {
  shape::Point at;
  shape::Vector along;  // length 1
};

bool are_parallel(const Line& a, const Line& b) {
  constexpr double kParallel = 1e-6;  // sine of the angle between them
  return shape::length_mm(shape::cross(a.along, b.along)) < kParallel;
}

double apart_mm(const Line& a, const Line& b) {
  const shape::Vector between = b.at - a.at;
  const shape::Vector square = shape::cross(a.along, b.along);
  if (are_parallel(a, b)) return shape::length_mm(between - shape::dot(between, a.along) * a.along);
  return std::abs(shape::dot(between, shape::direction(square)));
}

// A hole cut before, where the drill runs into it in metal.
struct Met {
  std::string name;
  bool parallel = false;
  double apart_mm = 0.0;    // the two middle lines
  double overlap_mm = 0.0;  // how much of the drill's width runs in it, at the most its diameter
};

std::optional<double> radius_of(const shape::Primitive& body) {
  if (const auto* cylinder = std::get_if<shape::Cylinder>(&body)) return cylinder->radius_mm;
  if (const auto* drilled = std::get_if<shape::DrilledHole>(&body)) return drilled->radius_mm;
  return std::nullopt;
}

std::optional<Met> meeting(const DrillWork& drill, std::size_t other) {
  const shape::Cut& cut = drill.recipe->cuts()[other];
  const auto radius = radius_of(cut.nominal);
  if (!radius) return std::nullopt;
  const Line own{drill.frame.origin, drill.frame.z};
  const shape::Frame& frame = shape::frame_of(cut.nominal);
  const Line its{frame.origin, frame.z};
  Met met{cut.feature, are_parallel(own, its), apart_mm(own, its)};
  met.overlap_mm = std::min(drill.radius_mm + *radius - met.apart_mm, 2 * drill.radius_mm);
  if (met.overlap_mm <= shape::kTouch_mm) return std::nullopt;
  if (met.parallel && met.apart_mm < shape::kTouch_mm) return std::nullopt;  // it follows the other
  if (shape::wall_between(drill.with(), drill.cut, other).kind != shape::WallKind::kOpen) return std::nullopt;
  return met;
}

// One of them for each hole: the cut it runs deepest into.
std::vector<Met> all_met(const Subject& subject, const DrillWork& drill) {
  std::vector<Met> all;
  for (std::size_t other = 0; other < drill.cut; ++other) {
    const auto met = meeting(drill, other);
    if (!met) continue;
    const std::string& name = met->name;
    const part::Feature* feature = part::find_feature(subject.route.part, name);
    if (feature == nullptr || !std::holds_alternative<part::Hole>(feature->shape)) continue;
    const auto before = std::find_if(all.begin(), all.end(), [&](const Met& m) { return m.name == name; });
    if (before == all.end()) {
      all.push_back(*met);
    } else if (met->overlap_mm > before->overlap_mm) {
      *before = *met;
    }
  }
  return all;
}

void judge_crossing(Pen& pen, const Subject& subject, const Drilling& drilling, const DrillWork& drill,
                    const Met& met) {
  const route::Printing print(subject.route.system);
  const bool whole = met.overlap_mm >= 2 * drill.radius_mm;
  const auto& overlap = limit(pen, met.name + "/overlap", met.overlap_mm, Origin::kStandard,
                              "its radius and the other's less the way between their middle lines");
  const auto& half = limit(pen, met.name + "/half its diameter", drill.radius_mm, Origin::kDefault, kSource);
  pen.judge({.check = fmt::format("drill meets {}", met.name),
             .subject = drilling.feature.name,
             .figure = &overlap,
             .low = &half,
             .reason = fmt::format(
                 "it crosses {} with {} of its {} width: see that the two are meant to meet", met.name,
                 whole ? "all" : print.plain(met.overlap_mm), print.plain(2 * drill.radius_mm)),
             .source = kSource,
             .todo = met.overlap_mm < drill.radius_mm
                         ? fmt::format(
                               "move it onto the middle of {} or clear of it, or plug {} while it is drilled",
                               met.name, met.name)
                         : "where they meet, feed lightly and clear the burr",
             .margin = met.name + "/margin",
             .close_at_best = true});
}

void say_alongside(Pen& pen, const Drilling& drilling, const Met& met) {
  const bool bored = drilling.hole().make == part::HoleMake::kBored;
  pen.state({.check = fmt::format("drill meets {}", met.name),
             .subject = drilling.feature.name,
             .state = bored ? ledger::State::kClose : ledger::State::kNo,
             .reason = fmt::format("it runs alongside {} with one side in the air", met.name),
             .source = "common practice: a drill needs metal all round; a boring bar cuts on one side",
             .todo = fmt::format("plug {} while it is drilled, or bore or mill it", met.name)});
}

void judge_meetings(Pen& pen, const Subject& subject, const Drilling& drilling) {
  const auto drill = drill_work(pen, subject, drilling);
  if (!drill) return;
  for (const Met& met : all_met(subject, *drill))
    met.parallel ? say_alongside(pen, drilling, met) : judge_crossing(pen, subject, drilling, *drill, met);
}

}  // namespace

void add_drill_meets_checks(const Shared& subject, Stages& stages) {
  for (const Drilling& drilling : all_drillings(*subject)) {
    stages.push_back(check_stage(subject, "drill meets", drilling.feature.name,
                                 [subject, drilling](Pen& pen) { judge_meetings(pen, *subject, drilling); }));
  }
}

}  // namespace sparewright::judge
