#include <algorithm>
#include <optional>

#include <fmt/format.h>

#include "core/answers/dividing.hpp"
#include "core/handbook/lookup.hpp"
#include "core/handbook/spur_gears.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using handbook::GearCandidate;
using handbook::OldGear;
using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;

constexpr handbook::Source kMisfit{"root mean square of the relative differences, depth counting a fifth", "",
                                   handbook::Basis::kDerived};
constexpr Length kAsGood = Length::of(1.0, quantity::unit::micrometre);  // less is printed as nothing
constexpr std::size_t kShown = 6;

// Puts the size of an entry, where it is there, into one of the gear's measurements.
template <class Size>
base::Result<void> take_size(const Question& question, std::string_view name, std::optional<Size>& into) {
  const auto size = maybe_size(question, name);
  if (!size) return tl::unexpected(size.error());
  if (*size) into = Size::from_base((*size)->base);
  return {};
}

base::Result<OldGear> read(const Question& question) {
  OldGear gear;
  const auto teeth = count_entry(question, "teeth", handbook::kLeastGearTeeth, handbook::kMostGearTeeth);
  if (!teeth) return tl::unexpected(teeth.error());
  gear.teeth = *teeth;
  if (find_entry(question, "mate-teeth") != nullptr) {
    const auto mate =
        count_entry(question, "mate-teeth", handbook::kLeastGearTeeth, handbook::kMostGearTeeth);
    if (!mate) return tl::unexpected(mate.error());
    gear.mate_teeth = *mate;
  }
  for (const auto& taken :
       {take_size(question, "outside", gear.outside), take_size(question, "centres", gear.centres),
        take_size(question, "depth", gear.whole_depth), take_size(question, "span", gear.span),
        take_size(question, "span-more", gear.span_one_more)}) {
    if (!taken) return tl::unexpected(taken.error());
  }
  return gear;
}

// "outside 0.0020 in (0.051 mm) under": each measurement against the candidate.
std::string off_words(const GearCandidate& one, UnitSystem system) {
  std::string words;
  const auto add = [&](std::string_view what, const std::optional<Length>& off) {
    if (!off) return;
    const Length by = off->base() < 0.0 ? -*off : *off;
    words += words.empty() ? "" : ", ";
    if (by < kAsGood) {
      words += fmt::format("{} as it should be", what);
    } else {
      words += fmt::format("{} {} {}", what, both_ways(by, system), off->base() < 0.0 ? "under" : "over");
    }
  };
  add("outside", one.outside_off);
  add("centres", one.centres_off);
  add("depth", one.depth_off);
  add("base pitch", one.base_pitch_off);
  return words;
}

std::string name_of(const GearCandidate& one) {
  return fmt::format("{}, {}", to_string(one.pitch), one.form.name);
}

UnitSystem system_of(const GearCandidate& one) {
  return one.pitch.system == handbook::GearPitchSystem::kModule ? UnitSystem::kMetric : UnitSystem::kInch;
}

Table candidates_table(const std::vector<GearCandidate>& found) {
  TableWriter writer("what it may have been, misfit in %", UnitSystem::kInch);
  for (std::size_t i = 0; i < std::min(found.size(), kShown); ++i)
    writer.number(name_of(found[i]), found[i].misfit * 100.0, Kind::kNumber, 2, kMisfit,
                  off_words(found[i], system_of(found[i])));
  return writer.take();
}

Table blank_table(const handbook::SpurGear& gear, UnitSystem system) {
  TableWriter writer("to cut it again", system);
  const handbook::Source& formulas = handbook::kSpurGearFormulas;
  writer.length("blank", gear.blank, formulas, "outside diameter");
  writer.length("pitch diameter", gear.pitch_diameter, formulas);
  writer.length("depth of cut", gear.whole_depth, formulas, "without backlash");
  writer.length("chordal thickness", gear.chordal_thickness, formulas);
  writer.length("chordal addendum", gear.chordal_addendum, formulas);
  writer.length(fmt::format("span over {} teeth", gear.spanned), gear.span, handbook::kSpanMeasurement);
  if (gear.cutter) {
    const std::string up_to =
        gear.cutter->up_to_teeth == 0 ? "a rack" : fmt::format("{}", gear.cutter->up_to_teeth);
    writer.words("cutter of the set of eight", fmt::format("No. {}", gear.cutter->number),
                 gear.cutter->source,
                 fmt::format("{} to {} teeth; module sets may count it {}", gear.cutter->from_teeth, up_to,
                             gear.cutter->continental_number()));
  }
  return writer.take();
}

// The pitches that these measurements do not tell from the best.
void add_doubts(const OldGear& gear, const std::vector<GearCandidate>& found, Answer& answer) {
  bool in_doubt = false;
  for (std::size_t i = 1; i < std::min(found.size(), kShown); ++i) {
    if (found[i].misfit - found.front().misfit >= handbook::kTellsApart) continue;
    in_doubt = true;
    answer.cautions.push_back(fmt::format("not told apart from {} by these measurements", name_of(found[i])));
  }
  if (in_doubt && !gear.span_one_more)
    answer.cautions.emplace_back("--span and --span-more together show the pressure angle");
  answer.cautions.emplace_back(
      "tops of teeth wear and were often turned small: try the centre distance before cutting");
}

base::Result<std::optional<Table>> angle_table(const OldGear& gear, const GearCandidate& best) {
  if (!gear.span || !gear.span_one_more) return std::optional<Table>();
  const auto hint = handbook::pressure_angle_hint(best.pitch.module(), *gear.span, *gear.span_one_more);
  if (!hint) return tl::unexpected(hint.error());
  TableWriter writer("pressure angle by the two spans", UnitSystem::kInch);
  writer.number("measured", hint->measured.base(), Kind::kAngle, 1, handbook::kSpanMeasurement);
  writer.number("nearest standard", hint->nearest.base(), Kind::kAngle, 1, handbook::kSpanMeasurement);
  return std::optional<Table>(writer.take());
}

}  // namespace

base::Result<Answer> old_gear(const Question& question) {
  const auto gear = read(question);
  if (!gear) return tl::unexpected(gear.error());
  const auto found = handbook::identify_spur_gear(*gear);
  if (!found) return tl::unexpected(found.error());
  if (found->empty())
    return handbook::not_tabled(
        "a standard gear", fmt::format("{} teeth with these sizes", gear->teeth),
        "a standard pitch within 2 %; look for a stub form of two pitches (6/8), a circular "
        "pitch of an old cast gear, or a shifted profile; of worn teeth `quick gear-pitch` tells "
        "what is near");
  const GearCandidate& best = found->front();
  Answer answer;
  answer.asked = fmt::format("spur gear of {} teeth", gear->teeth);
  answer.says = name_of(best);
  answer.tables.push_back(candidates_table(*found));
  const auto angle = angle_table(*gear, best);
  if (!angle) return tl::unexpected(angle.error());
  if (*angle) answer.tables.push_back(**angle);
  if (const auto again = handbook::spur_gear(gear->teeth, best.pitch, best.form))
    answer.tables.push_back(blank_table(*again, system_of(best)));
  add_doubts(*gear, *found, answer);
  return answer;
}

}  // namespace sparewright::answers
