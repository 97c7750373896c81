// Holes whose screws go through holes of a mate: whether the float there takes up what marks do not hold, and whether the
// drill that is put through the mate's hole fills it.
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "core/handbook/screw_size.hpp"
#include "core/judge/checks.hpp"

namespace sparewright::judge {
namespace {

using ledger::Figure;
using ledger::Origin;
using ledger::Pen;
using quantity::Kind;

// Where no screw is known that goes through, a drill this much smaller than the mate's hole still fills it. A choice made
// here, without a source.
constexpr double kStillFills_mm = 0.2;

// The diameter of the screw that goes through the mate's hole into this one; none where it is not said.
std::optional<handbook::ScrewSize> screw_of(const part::Hole& hole) {
  std::string text = hole.thread;
  if (text.empty() && hole.screw) text = hole.screw->designation;
  if (text.empty()) return std::nullopt;
  for (std::string one = text; !one.empty();
       one = one.substr(0, one.rfind(' '))) {  // "M8 socket head" to "M8"
    if (const auto size = handbook::read_screw_size(one)) return *size;
    if (one.find(' ') == std::string::npos) break;
  }
  return std::nullopt;
}

// How far a screw can lie off the middle of the mate's hole. Its figure is called "float of <feature>".
const Figure* float_of(Pen& pen, const part::Feature& feature, const part::Hole& hole) {
  const auto screw = screw_of(hole);
  if (!screw || !hole.mate_hole) return nullptr;
  return &pen.work(
      "float of " + feature.name, Kind::kLength, "half of what the mate's hole is wider than the screw",
      [](auto wide, auto thin) { return (wide - thin) / 2.0; },
      pen.ask(part::feature_path(feature.name) + "/mate hole"),
      limit(pen, "screw of " + feature.name, screw->nominal.base(), Origin::kStandard,
            fmt::format("nominal size of {}", screw->name)));
}

// --- two holes by marks -------------------------------------------------------------------------------------------
struct Pair {
  const Made& first;
  const Made& second;
};

// What is not known about how far apart the mate's holes are, as far as it went into these places.
const Figure& pitch_unknown(Pen& pen, const Pair& pair) {
  const auto& hole = std::get<part::Hole>(pair.first.feature.shape);
  const auto axes = part::axes_in(hole.into);
  const auto at = [&](const Made& made, part::Axis axis) -> const Figure& {
    return pen.ask(part::at_path(made.feature.name, axis));
  };
  const Figure& apart = pen.work(
      "apart", Kind::kLength, "centre to centre",
      [](auto ax, auto ay, auto bx, auto by) {
        using std::sqrt;
        return sqrt((ax - bx) * (ax - bx) + (ay - by) * (ay - by));
      },
      at(pair.first, axes[0]), at(pair.first, axes[1]), at(pair.second, axes[0]), at(pair.second, axes[1]));
  ledger::Root root;
  root.kind = Kind::kLength;
  root.origin = Origin::kStandard;
  root.source = "what is not known of the distance, 19 times in 20";
  if (apart.known()) root.value = apart.expanded();
  return pen.root("apart unknown", root);
}

void judge_pair(Pen& pen, const Subject& subject, const Pair& pair) {
  const route::Printing print(subject.route.system);
  const auto& one = std::get<part::Hole>(pair.first.feature.shape);
  const auto& other = std::get<part::Hole>(pair.second.feature.shape);
  const Figure* float_one = float_of(pen, pair.first.feature, one);
  const Figure* float_other = float_of(pen, pair.second.feature, other);
  if (float_one == nullptr || float_other == nullptr) return;
  const Figure& takes_up = pen.work(
      "float", Kind::kLength, "the float of both screws", [](auto a, auto b) { return a + b; }, *float_one,
      *float_other);
  const std::string good =
      fmt::format("{}/{}/place good to", route::setup_path(pair.second.setup), pair.second.feature.name);
  const auto root_sum = [](auto a, auto b, auto c) {
    using std::sqrt;
    return sqrt(a * a + b * b + c * c);
  };
  const Figure& unknown = pitch_unknown(pen, pair);
  const auto off = [&](const std::string& which) -> const Figure& {
    return pen.work("off" + which, Kind::kLength,
                    "both places and what is not known of their distance, root of squares", root_sum,
                    pen.ask(good + which), pen.ask(good + which), unknown);
  };
  const Figure& both = off("");
  const Figure& least = off("/least");
  const Figure& most = off("/most");
  pen.judge(
      {.check = "float takes up the marks",
       .subject = pair.second.feature.name,
       .figure = &both,
       .high = &takes_up,
       .reason = fmt::format("the screws float {} between {} and it; marks give {} to {}",
                             route::or_not_known(takes_up, print.plain(takes_up.value)),
                             pair.first.feature.name, route::or_not_known(least, print.plain(least.value)),
                             route::or_not_known(most, print.plain(most.value))),
       .source = "plain geometry; punched and drilled by hand, common practice",
       .todo = fmt::format("make {}, bolt it up and spot {} through the mate", pair.first.feature.name,
                           pair.second.feature.name)});
}

// --- a drill through the mate's hole ------------------------------------------------------------------------------
const shop::Tool* first_drill(const route::Work& work) {
  for (const shop::Tool& tool : work.tools) {
    if (tool.kind == shop::ToolKind::kTwistDrill) return &tool;
  }
  return nullptr;
}

void say_no_mate_hole(Pen& pen, const std::string& feature) {
  pen.state({.check = "the drill fills the mate's hole",
             .subject = feature,
             .state = ledger::State::kNotKnown,
             .reason = "the size of the mate's hole is not said",
             .source = "the job's text",
             .todo = "measure it and say mate_hole",
             .missing = {fmt::format("mate_hole of {}", feature)}});
}

void judge_spot(Pen& pen, const Subject& subject, const Made& made, const part::Hole& hole) {
  const route::Printing print(subject.route.system);
  const std::string& feature = made.feature.name;
  const shop::Tool* drill = first_drill(made.work);
  if (drill == nullptr || !drill->diameter) return;  // that a drill is missing is said elsewhere
  if (!hole.mate_hole) return say_no_mate_hole(pen, feature);
  const Figure& off = pen.ask(fmt::format("{}/{}/spot off at most", route::setup_path(made.setup), feature));
  const Figure* room = float_of(pen, made.feature, hole);
  if (room == nullptr)
    room = &limit(pen, "still fills", kStillFills_mm / 2.0, Origin::kDefault,
                  "a drill 0.2 mm smaller: a choice made here, without a source");
  const Figure& size = pen.ask(part::feature_path(feature) + "/mate hole");
  if (off.known() && off.value < -off.expanded()) {
    pen.state({.check = "the drill fills the mate's hole",
               .subject = feature,
               .state = ledger::State::kNo,
               .figure = std::string(off.name),
               .reason = fmt::format("{} does not go through the mate's hole of {}", drill->name,
                                     print.plain(size.value)),
               .source = "plain geometry",
               .todo = "use a drill of the hole's size",
               .missing = {}});
    return;
  }
  pen.judge(
      {.check = "the drill fills the mate's hole",
       .subject = feature,
       .figure = &off,
       .high = room,
       .reason = fmt::format("{} through a hole of {} can lie {} off its middle; the screw may lie {} off",
                             drill->name, route::or_not_known(size, print.plain(size.value)),
                             route::or_not_known(off, print.plain(off.value)),
                             route::or_not_known(*room, print.plain(room->value))),
       .source = "plain geometry",
       .todo = "spot with a drill of the hole's size, then drill the size wanted"});
}

}  // namespace

void add_mate_float_checks(const Shared& subject, Stages& stages) {
  const std::vector<Made> all = all_made(*subject);
  const Made* first = nullptr;
  for (const Made& made : all) {
    const part::Hole* hole = made.by_marks() ? made.drilled() : nullptr;
    if (hole == nullptr) continue;
    if (hole->placed_by == part::PlacedBy::kMate) {
      stages.push_back(
          check_stage(subject, "spot through the mate", made.work.feature,
                      [subject, made, hole](Pen& pen) { judge_spot(pen, *subject, made, *hole); }));
    }
    if (hole->placed_by != part::PlacedBy::kCoordinates || !hole->mate_hole) continue;
    const bool same_side = first != nullptr && std::get<part::Hole>(first->feature.shape).into == hole->into;
    if (!same_side) {
      first = &made;
      continue;
    }
    stages.push_back(
        check_stage(subject, "float", made.work.feature, [subject, one = *first, made](Pen& pen) {
          judge_pair(pen, *subject, {one, made});
        }));
  }
}

}  // namespace sparewright::judge
