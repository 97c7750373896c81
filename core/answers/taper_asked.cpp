// Tapers worked out at the bench: all the ways of saying one, and a hub on a shaft of another taper.
#include <cmath>
#include <numbers>
#include <optional>

#include <fmt/format.h>

#include "core/answers/entry_reader.hpp"
#include "core/answers/quick.hpp"
#include "core/handbook/rotary_table.hpp"
#include "core/handbook/taper_formulas.hpp"
#include "core/handbook/taper_turning.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::answers {
namespace {

using quantity::Kind;
using quantity::Length;
using quantity::UnitSystem;
namespace unit = quantity::unit;

constexpr handbook::Source kSlideRise{"rise of a slide along the taper = travel x sine of the angle", "",
                                      handbook::Basis::kDerived};
constexpr handbook::Source kHubOnTaper{"two cones with one large end, geometry", "",
                                       handbook::Basis::kDerived};
constexpr handbook::Source kComparison{"one taper over the other", "", handbook::Basis::kDerived};
constexpr double kSameRatio =
    0.03;  // readings of a taper are no better. A choice made here, without a source

double taper_given(EntryReader& read) {
  if (read.has("taper")) return read.taper("taper");
  if (read.has("angle")) {
    const double angle = read.positive("angle", Kind::kAngle);
    if (!read.failed()) read.refuse_unless(std::tan(angle) <= 0.25, "angle", "up to 14 deg to the axis");
    return handbook::taper_from_angle(angle);
  }
  const Length large = read.size("large");
  const Length small = read.size("small");
  const Length over = read.size("over");
  if (read.failed()) return 0.0;
  const double taper = handbook::taper_of(large.base(), small.base(), over.base());
  read.refuse_unless(taper > 0.0, "small", "less than the large diameter");
  read.refuse_unless(taper <= 0.5, "over", "a taper up to 1:2");
  return taper;
}

std::string ratio_words(double taper) {
  return fmt::format("1:{}", quantity::fixed(1.0 / taper, 3));
}

void add_angle(TableWriter& writer, std::string what, double angle_rad, std::string note = {}) {
  const auto angle = quantity::Angle::from_base(angle_rad);
  writer.number(std::move(what), angle_rad, Kind::kAngle, 4, handbook::kTaperRule,
                fmt::format("{}{}{}", to_string(handbook::in_degrees_minutes_seconds(angle)),
                            note.empty() ? "" : ", ", note));
}

Table ways_table(double taper, UnitSystem system) {
  TableWriter writer("the taper, on the diameter", system);
  writer.number("1 in", 1.0 / taper, Kind::kNumber, 3, handbook::kTaperRule);
  writer.length("in a foot", Length::of(handbook::taper_per_foot(taper), unit::inch), handbook::kTaperRule);
  writer.number("for 1 of length", taper, Kind::kNumber, 5, handbook::kTaperRule);
  writer.number("for 1 of length, each side", taper / 2.0, Kind::kNumber, 5, handbook::kTaperRule);
  const double half = handbook::half_angle_rad(taper);
  add_angle(writer, "angle to the axis", half, "what a compound [top] slide is swung to");
  add_angle(writer, "included angle", 2.0 * half);
  return writer.take();
}

Table proof_table(double taper, const std::optional<Length>& over, UnitSystem system) {
  const double half = handbook::half_angle_rad(taper);
  const Length inch = Length::of(1.0, unit::inch);
  const Length one = system == UnitSystem::kInch ? inch : Length::of(25.0, unit::millimetre);
  const std::string travel = system == UnitSystem::kInch ? "1 in" : "25 mm";
  TableWriter writer("to prove the setting by", system);
  writer.length(fmt::format("indicator on the slide, {} of its travel", travel), one * std::sin(half),
                kSlideRise, "along a true bar between centres");
  writer.length(fmt::format("the same, {} along the bar", travel), one * (taper / 2.0),
                handbook::kTaperRules);
  if (over)
    writer.length(fmt::format("the diameter changes over {}", both_ways(*over, system)), *over * taper,
                  handbook::kTaperRule);
  const double wrong = std::atan(taper) / 2.0;
  writer.number("NOT half the angle of the whole taper", wrong, Kind::kAngle, 4, handbook::kTaperRule,
                "half the taper first, then its angle");
  return writer.take();
}

// What another name for it says of the readings.
std::string beside(double taper, double called) {
  const double ratio = taper / called;
  if (std::abs(ratio - 1.0) < kSameRatio) return fmt::format("agrees with {}", ratio_words(called));
  if (std::abs(ratio - 2.0) < 2.0 * kSameRatio)
    return fmt::format("twice {}: side and diameter confused?", ratio_words(called));
  if (std::abs(ratio - 0.5) < 0.5 * kSameRatio)
    return fmt::format("half of {}: side and diameter confused?", ratio_words(called));
  return fmt::format("not {}", ratio_words(called));
}

}  // namespace

base::Result<Answer> any_taper(const Question& question) {
  EntryReader read(question);
  const double taper = taper_given(read);
  const auto over = read.maybe_size("over");
  const auto called = read.has("called") ? std::optional(read.taper("called")) : std::nullopt;
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const double half = handbook::half_angle_rad(taper);
  Answer answer;
  answer.asked = fmt::format("a taper of {} on the diameter", ratio_words(taper));
  answer.says = fmt::format("{:.4f} deg to the axis, {:.4f} deg included", half / unit::degree.to_base(1.0),
                            2.0 * half / unit::degree.to_base(1.0));
  answer.tables.push_back(ways_table(taper, system));
  answer.tables.push_back(proof_table(taper, over, system));
  if (called) {
    TableWriter writer("what it was called", system);
    writer.number(ratio_words(*called), taper / *called, Kind::kNumber, 2, kComparison,
                  beside(taper, *called));
    answer.says += "; " + beside(taper, *called);
    answer.tables.push_back(writer.take());
  }
  if (read.has("large"))
    answer.assumed.emplace_back("both diameters were measured square to the axis, at the heights given");
  return answer;
}

base::Result<Answer> taper_pair(const Question& question) {
  EntryReader read(question);
  const double shaft = read.taper("shaft");
  const double hole = read.taper("hole");
  const Length length = read.size("length");
  if (read.failed()) return read.failure();
  const UnitSystem system = read.system();
  const double difference = hole - shaft;
  const Length at_small_end = length * difference;
  const bool same = std::abs(difference) < 1e-6;
  const bool hole_steeper = difference > 0.0;
  Answer answer;
  answer.asked = fmt::format("a hole of {} on a shaft of {}, {} long", ratio_words(hole), ratio_words(shaft),
                             both_ways(length, system));
  answer.says = same           ? "the tapers agree"
                : hole_steeper ? "bears at the small end alone"
                               : "bears at the large end alone";
  TableWriter writer("as they are", system);
  if (hole_steeper && !same) {
    writer.length("the hub stands back by", at_small_end / shaft, kHubOnTaper,
                  "from where equal tapers would seat it");
    writer.length("gap at the large end, each side", at_small_end / 2.0, kHubOnTaper);
  } else {
    writer.length("gap at the small end, each side", -at_small_end / 2.0, kHubOnTaper);
  }
  answer.tables.push_back(writer.take());
  TableWriter again("to bore the hole to the shaft's taper", system);
  again.length("off the small end, on the diameter", hole_steeper ? at_small_end : Length(), kHubOnTaper,
               "nothing at the large end: it seats where it would have");
  again.length("off the large end, on the diameter", hole_steeper ? Length() : -at_small_end, kHubOnTaper,
               hole_steeper ? "" : "it goes further on by as much as the shaft's taper makes of it");
  add_angle(again, "angle to the axis", handbook::half_angle_rad(shaft));
  answer.tables.push_back(again.take());
  answer.assumed.emplace_back("both have the same diameter at the large end");
  if (!same)
    answer.cautions.emplace_back(
        "Not to be drawn up as it is: it bears on a line, rocks and breaks its key. A keyway in the hole has "
        "to follow the new slope.");
  return answer;
}

}  // namespace sparewright::answers
