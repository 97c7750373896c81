// Work on threads: cutting one on the lathe, what a screw's stub leaves round a drill, how much thread holds.
#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <variant>

#include <fmt/format.h>

#include "core/answers/entry_reader.hpp"
#include "core/answers/quick.hpp"
#include "core/base/messages.hpp"
#include "core/handbook/drills.hpp"
#include "core/handbook/single_point_threads.hpp"
#include "core/handbook/thread_dial.hpp"
#include "core/handbook/thread_engagement.hpp"
#include "core/handbook/thread_reliefs.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using handbook::ThreadSide;
using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;
namespace unit = quantity::unit;

constexpr handbook::Source kSlide{"depth over the cosine of the slide's angle", "",
                                  handbook::Basis::kDerived};
constexpr handbook::Source kCoreLeft{"half of drill less core: further off, some of the core stays", "",
                                     handbook::Basis::kDerived};
constexpr handbook::Source kThreadCut{"half of major diameter less drill: further off, it leaves the thread",
                                      "", handbook::Basis::kDerived};
constexpr handbook::Source kInMesh{"length over pitch", "", handbook::Basis::kDerived};

bool is_metric(const handbook::AnyThread& thread) {
  return std::holds_alternative<handbook::MetricThread>(thread) ||
         std::holds_alternative<handbook::TrapezoidalThread>(thread);
}

// What cannot be told is a line that says so and why.
Table relief_table(const handbook::AnyThread& thread, ThreadSide side, UnitSystem system) {
  TableWriter writer("groove for the thread to run out in", system);
  const auto relief = handbook::thread_relief(thread, side);
  if (!relief) {
    writer.words("relief", "NOT KNOWN", kInMesh, base::sentence(relief.error()));
    return writer.take();
  }
  writer.range("wide", relief->width_least, relief->width_most, relief->source);
  writer.length(side == ThreadSide::kScrew ? "turned to, at most" : "bored to, at least", relief->diameter,
                relief->source);
  return writer.take();
}

base::Result<Table> dial_table(EntryReader& read, const Question& question, Length lead, UnitSystem system) {
  const auto screw = pitch_entry(question, "screw");
  if (!screw) return tl::unexpected(screw.error());
  handbook::ThreadDial dial;
  dial.wheel_teeth = read.count_or("dial-teeth", 4, 200, dial.wheel_teeth);
  dial.lines = read.count_or("dial-lines", 1, 64, dial.lines);
  if (read.failed()) return read.failure();
  const auto lines = handbook::dial_lines(screw->pitch, lead, dial);
  if (!lines) return tl::unexpected(lines.error());
  TableWriter writer("thread dial: close the half-nuts", system);
  std::string says = "keep them closed, run the lathe back";
  if (lines->any_place) {
    says = "at any place";
  } else if (lines->every) {
    says =
        *lines->every == 1 ? "at any line" : fmt::format("at every line {} on from the first", *lines->every);
  } else if (lines->turns) {
    says = fmt::format("at the same line, after {} whole turns of the dial", *lines->turns);
  }
  writer.words("at", says, lines->source,
               "with gears that only come near the pitch: keep them closed whatever the dial says");
  writer.length("carriage moves, from line to line", lines->travel_per_line, lines->source);
  return writer.take();
}

}  // namespace

base::Result<Answer> chase(const Question& question) {
  const auto thread = handbook::read_thread(question.words);
  if (!thread) return tl::unexpected(thread.error());
  EntryReader read(question);
  const bool hole = read.word("side", {"screw", "hole"}) == "hole";
  const ThreadSide side = hole ? ThreadSide::kHole : ThreadSide::kScrew;
  handbook::ThreadDepth depth = handbook::thread_depth(*thread, side);
  if (const auto flat = read.maybe_size("flat"); flat && !read.failed()) {
    const auto own = handbook::depth_for_tool(depth, *flat);
    if (own)
      depth = *own;
    else
      read.keep(own.error());
  }
  const double usual = handbook::usual_compound_angle(depth).base();
  const double angle = read.maybe_number("slide", Kind::kAngle).value_or(usual);
  if (!read.failed())
    read.refuse_unless(angle >= 0.0 && angle <= depth.flank_angle.base() / 2.0, "slide",
                       "from 0 to half the angle of the thread, from square to the axis");
  if (read.failed()) return read.failure();
  const handbook::ThreadShape shape = handbook::shape_of(*thread);
  const UnitSystem system = is_metric(*thread) ? UnitSystem::kMetric : UnitSystem::kInch;
  const Length start = hole ? across(shape.minor) : across(shape.major);
  const Length end = hole ? start + depth.depth * 2.0 : start - depth.depth * 2.0;
  Answer answer;
  answer.asked = fmt::format("cut {} {} with a single point", shape.name, hole ? "in a hole" : "on a screw");
  answer.assumed = handbook::assumed_of(*thread);
  answer.says =
      fmt::format("{} deep, {} on the slide", both_ways(depth.depth, system),
                  both_ways(Length::from_base(handbook::slide_travel_mm(depth.depth.base(), angle)), system));
  TableWriter writer("to cut", system);
  writer.length(hole ? "bore first" : "turn first", start, shape.source);
  writer.length("depth, square to the axis", depth.depth, depth.source);
  writer.length("slide goes, in all", Length::from_base(handbook::slide_travel_mm(depth.depth.base(), angle)),
                kSlide,
                fmt::format("set {} deg from square to the axis",
                            quantity::fixed(angle / unit::degree.to_base(1.0), 1)));
  writer.length(hole ? "thread out to" : "root", end, depth.source);
  writer.length("tool, flat of its nose", depth.nose, depth.source);
  writer.number("tool, between its flanks", depth.flank_angle.base(), Kind::kAngle, 1, depth.source);
  answer.tables.push_back(writer.take());
  answer.tables.push_back(relief_table(*thread, side, system));
  if (read.has("screw")) {
    auto dial = dial_table(read, question, shape.lead(), system);
    if (!dial) return tl::unexpected(dial.error());
    answer.tables.push_back(std::move(*dial));
  }
  if (!read.has("slide"))
    answer.assumed.emplace_back("slide set half a degree less than half the thread's angle");
  answer.cautions = {"Cut a scratch first and measure it over ten threads.",
                     "Mark the work against a jaw before anything is screwed on to try: work that slips has "
                     "lost its thread.",
                     std::string(kKeyOut)};
  return answer;
}

base::Result<Answer> stub(const Question& question) {
  const auto thread = handbook::read_thread(question.words);
  if (!thread) return tl::unexpected(thread.error());
  const auto name = text_entry(question, "drill");
  if (!name) return tl::unexpected(name.error());
  const auto drill = handbook::find_drill(*name);
  if (!drill) return tl::unexpected(drill.error());
  const handbook::ThreadShape shape = handbook::shape_of(*thread);
  const UnitSystem system = is_metric(*thread) ? UnitSystem::kMetric : UnitSystem::kInch;
  const handbook::ThreadDepth depth = handbook::thread_depth(*thread, ThreadSide::kScrew);
  const Length major = across(shape.major);
  const Length core = major - depth.depth * 2.0;
  const Length size = across(drill->diameter);
  const Length to_core = (size - core) / 2.0;
  const Length to_thread = (major - size) / 2.0;
  Answer answer;
  answer.asked = fmt::format("{} broken off, drilled {}", shape.name, drill->name);
  answer.assumed = handbook::assumed_of(*thread);
  answer.says = to_thread <= Length() ? "NO: the drill cuts the hole's thread away"
                : to_core >= Length()
                    ? fmt::format("within {} of its middle", both_ways(to_core, system))
                    : fmt::format("a shell {} thick is left of the core", both_ways(-to_core, system));
  TableWriter writer("the stub", system);
  writer.length("core of the screw", core, depth.source);
  writer.length("drill", size, drill->source);
  if (to_core >= Length())
    writer.length("off the middle, before core is left on one side", to_core, kCoreLeft);
  else
    writer.length("shell left of the core, each side", -to_core, kCoreLeft,
                  "off its middle by as much the drill meets the thread's root");
  writer.length("off the middle, before it cuts beyond the thread", std::max(Length(), to_thread),
                kThreadCut);
  writer.length("shell of the thread, each side, at its crests", std::max(Length(), to_thread), kThreadCut,
                "to be picked out");
  answer.tables.push_back(writer.take());
  answer.cautions = {
      "Find the stub's middle on a machine, work clamped; by eye it is off by more than that.",
      "A broken extractor or tap is harder than a drill: think of the next size of thread, or of a bush, and "
      "of the metal round the hole, before the next step."};
  return answer;
}

base::Result<Answer> engage(const Question& question) {
  const auto thread = handbook::read_screw_thread(question.words);
  if (!thread) return tl::unexpected(thread.error());
  EntryReader read(question);
  const Length length = read.size("length");
  const std::string* screw = find_entry(question, "screw");
  const std::string* hole = find_entry(question, "hole");
  if (read.failed()) return read.failure();
  const UnitSystem system = thread->is_metric() ? UnitSystem::kMetric : UnitSystem::kInch;
  const double threads = length / thread->pitch;
  const double diameters = length / across(thread->major);
  Answer answer;
  answer.asked = fmt::format("{} of {} in mesh", both_ways(length, system), thread->name);
  answer.assumed = thread->assumed;
  answer.says = fmt::format("{:.1f} threads, {:.2f} diameters", threads, diameters);
  TableWriter writer("in mesh", system);
  writer.number("threads", threads, Kind::kNumber, 1, kInMesh, "full ones: take off leads and chamfers");
  writer.number("diameters", diameters, Kind::kNumber, 2, kInMesh);
  for (const handbook::EngagementRule& rule : handbook::engagement_rules())
    writer.length(fmt::format("rule for {}", rule.hole), rule.of(thread->major), rule.source,
                  length >= rule.of(thread->major) ? "" : "more than there is");
  answer.tables.push_back(writer.take());
  if (screw != nullptr || hole != nullptr) {
    const auto named = handbook::least_engagement(question.words, screw == nullptr ? "mild steel" : *screw,
                                                  hole == nullptr ? "mild steel" : *hole);
    if (!named) return tl::unexpected(named.error());
    const auto strips = handbook::stripping(named->thread, length, named->screw.tensile, named->hole.tensile);
    if (!strips) return tl::unexpected(strips.error());
    TableWriter force("what gives way, and at what pull", system);
    force.number("the screw breaks", strips->screw.base(), Kind::kForce, 0, named->screw.source,
                 named->screw.name);
    force.number("the screw's thread strips", strips->screw_thread.base(), Kind::kForce, 0,
                 strips->areas.source);
    force.number("the hole's thread strips", strips->hole_thread.base(), Kind::kForce, 0,
                 strips->areas.source, named->hole.name);
    force.length("so that the screw breaks first", named->engagement.least, strips->areas.source);
    force.length("the same, a screw as strong as they come", named->engagement.for_strong_screw,
                 strips->areas.source, "what to cut");
    answer.tables.push_back(force.take());
    answer.says += fmt::format(": {} first", name_of(strips->first));
    if (screw == nullptr) answer.assumed.emplace_back("a screw of mild steel");
    if (hole == nullptr) answer.assumed.emplace_back("the hole in mild steel");
    answer.assumed.insert(answer.assumed.end(), named->assumed.begin(), named->assumed.end());
  }
  answer.cautions.emplace_back(
      "Pull alone: no shock, no bending, no turning to and fro. NOT CHECKED by a qualified "
      "person.");
  return answer;
}

}  // namespace sparewright::answers
