// Feed screws and their nuts: lost motion, two pitches beside each other, a nut for a screw of no standard.
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "core/answers/entry_reader.hpp"
#include "core/answers/quick.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;
namespace unit = quantity::unit;

constexpr handbook::Source kTurns{"lost motion over the lead", "", handbook::Basis::kDerived};
constexpr handbook::Source kSpans{"so many pitches from crest to crest", "", handbook::Basis::kDerived};
constexpr handbook::Source kNutRoom{
    "0.25 mm clear at crest and root of a feed screw, as trapezoidal threads up to 5 mm pitch have", "",
    handbook::Basis::kFromMemory};
constexpr handbook::Source kNutGroove{
    "the groove of the nut narrows by twice the clearance x tangent of half the angle beyond the screw's "
    "crest",
    "", handbook::Basis::kDerived};
constexpr handbook::Source kBarRoom{"bar, depth of thread and room to draw back", "",
                                    handbook::Basis::kDerived};
constexpr Length kNutClearance = Length::of(0.25, unit::millimetre);

// The lead screw's pitch, and its system where no length was read.
Length pitch_of(EntryReader& read, const Question& question, std::string_view name,
                UnitSystem* system = nullptr) {
  const auto pitch = pitch_entry(question, name);
  if (!pitch) {
    read.keep(pitch.error());
    return {};
  }
  if (system != nullptr) *system = pitch->system;
  return pitch->pitch;
}

}  // namespace

base::Result<Answer> backlash(const Question& question) {
  constexpr int kMostDivisions = 1000;
  EntryReader read(question);
  const Length lost = read.size("lost");
  const Length lead = pitch_of(read, question, "lead");
  const auto divisions =
      read.has("divisions") ? std::optional(read.count("divisions", 2, kMostDivisions)) : std::nullopt;
  const std::string reads = read.word("dial", {"travel", "diameter"});
  const auto nut = read.maybe_size("nut");
  const auto new_nut = read.maybe_size("new-nut");
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const Length axial = reads == "diameter" ? lost / 2.0 : lost;
  const double turns = axial / lead;
  const bool too_much = turns >= 1.0;
  Answer answer;
  answer.asked =
      fmt::format("lost motion of {} on a lead of {}", both_ways(lost, system), both_ways(lead, system));
  answer.says = too_much ? fmt::format("NO: {:.2f} turns is more than the nut could have and hold", turns)
                         : fmt::format("{:.2f} of a turn", turns);
  TableWriter writer("lost motion", system);
  writer.length("along the screw", axial, kTurns);
  writer.number("turns of the handle", turns, Kind::kNumber, 2, kTurns);
  if (divisions) writer.number("divisions of the dial", turns * *divisions, Kind::kNumber, 1, kTurns);
  if (reads == "travel") writer.length("along the screw, if the dial reads diameter", lost / 2.0, kTurns);
  answer.tables.push_back(writer.take());
  if (nut || new_nut) {
    TableWriter engaged("threads in mesh", system);
    if (nut) engaged.number("in the nut", *nut / lead, Kind::kNumber, 2, kTurns);
    if (new_nut) engaged.number("in the new one", *new_nut / lead, Kind::kNumber, 2, kTurns);
    if (nut && new_nut)
      engaged.number("more thread, per cent", (*new_nut / *nut - 1.0) * 100.0, Kind::kNumber, 0, kTurns);
    answer.tables.push_back(engaged.take());
  }
  if (!read.has("dial")) answer.assumed.emplace_back("the dial reads travel, not diameter");
  if (too_much)
    answer.cautions.emplace_back(
        "More than a lead: end float of the collar is in it, or a dial that reads diameter. Measure the "
        "float "
        "alone, with an indicator against the end of the screw.");
  answer.cautions.emplace_back(
      "Not all of it is the nut: try the end float of the screw before a nut is made.");
  return answer;
}

base::Result<Answer> pitches(const Question& question) {
  constexpr int kMost = 100;
  EntryReader read(question);
  UnitSystem system = question.system;
  const auto first = handbook::read_pitch(question.words);
  if (!first) return tl::unexpected(first.error());
  system = first->system;
  const Length against = pitch_of(read, question, "against");
  const int count = read.count_or("count", 1, kMost, 10);
  const auto length = read.maybe_size("over");
  const auto play = read.maybe_size("play");
  if (read.failed()) return read.failure();
  const Length pitch = first->pitch;
  const Length a_turn = magnitude(pitch - against);
  Answer answer;
  answer.asked = fmt::format("pitch {} against {}", both_ways(pitch, system), both_ways(against, system));
  answer.says = fmt::format("{} pitches span {}, the other {}", count, both_ways(pitch * count, system),
                            both_ways(against * count, system));
  TableWriter writer("to tell them apart", system);
  writer.length(fmt::format("{} pitches", count), pitch * count, kSpans);
  writer.length(fmt::format("{} of the other", count), against * count, kSpans);
  writer.length("difference", a_turn * count, kSpans);
  if (length) {
    writer.number("threads in that length", *length / pitch, Kind::kNumber, 2, kSpans);
    writer.number("of the other", *length / against, Kind::kNumber, 2, kSpans);
  }
  answer.tables.push_back(writer.take());
  if (a_turn > Length::of(1e-7, unit::millimetre)) {
    TableWriter mesh("one screwed into the other", system);
    mesh.length("out of step, for each thread", a_turn, kSpans);
    if (play)
      mesh.number("binds after threads, about", *play / a_turn, Kind::kNumber, 1, kSpans,
                  "when the play along the axis is used up");
    mesh.number("a whole thread out after", std::min(pitch, against) / a_turn, Kind::kNumber, 1, kSpans,
                "threads");
    answer.tables.push_back(mesh.take());
  }
  answer.assumed.emplace_back("measure from crest to the same side of a crest, over as many as there are");
  return answer;
}

base::Result<Answer> odd_nut(const Question& question) {
  EntryReader read(question);
  const Length major = read.size("major");
  const Length root = read.size("root");
  const Length crest = read.size("crest");
  const double angle = read.positive("angle", Kind::kAngle);
  const Length pitch = pitch_of(read, question, "pitch");
  const auto bar = read.maybe_size("bar");
  const Length clear = read.maybe_size("clearance").value_or(kNutClearance);
  if (!read.failed()) {
    read.refuse_unless(root < major, "root", "less than the major diameter");
    read.refuse_unless(crest < pitch, "crest", "less than the pitch");
    read.refuse_unless(angle < unit::degree.to_base(90.0), "angle", "between the flanks, under 90 deg");
  }
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const Length tip = crest - clear * (2.0 * std::tan(angle / 2.0));
  if (!(tip > Length()))
    return base::fail(base::Code::kValueNotAccepted, both_ways(crest, system),
                      "a crest that is wider than the clearance narrows it", "--crest");
  const Length bore = root + clear * 2.0;
  const Length nut_major = major + clear * 2.0;
  const Length depth = (nut_major - bore) / 2.0;
  Answer answer;
  answer.asked = fmt::format("nut for a screw of {} over its crests, pitch {}, flanks {:g} deg",
                             both_ways(major, system), both_ways(pitch, system),
                             quantity::rounded(angle / unit::degree.to_base(1.0), 2));
  answer.says = fmt::format("tool tip {} wide, bore {}", both_ways(tip, system), both_ways(bore, system));
  TableWriter writer("the nut", system);
  writer.length("bore", bore, kNutRoom, "the screw's root and twice the clearance");
  writer.length("thread out to", nut_major, kNutRoom);
  writer.length("depth of thread, each side", depth, kNutRoom, "a dial that reads diameter goes twice that");
  answer.tables.push_back(writer.take());
  TableWriter tool("the tool", system);
  tool.number("between its flanks", angle, Kind::kAngle, 1, kNutGroove);
  tool.length("tip, no wider than", tip, kNutGroove,
              "then shift it sideways until the screw turns without shake");
  if (bar) {
    const Length draws_back = *bar + depth + clear;
    tool.length("a bar that thick needs a bore over", draws_back, kBarRoom,
                draws_back > bore ? "NO: it rubs as it is drawn back" : "");
    if (draws_back > bore)
      answer.cautions.emplace_back("The bar does not fit the bore with its tool drawn back.");
  }
  answer.tables.push_back(tool.take());
  if (!read.has("clearance"))
    answer.assumed.push_back(fmt::format("{} clear at crest and root", both_ways(clear, system)));
  answer.cautions.emplace_back(
      "The screw is worn: measure its crest where it is least worn, and try the nut over its whole length.");
  return answer;
}

}  // namespace sparewright::answers
