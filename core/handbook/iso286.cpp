#include "core/handbook/iso286.hpp"

#include <algorithm>
#include <array>
#include <optional>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

struct GradeRow {
  int grade;
  Diameter over;
  Diameter up_to;
  Length tolerance;
  Source source;
};
constexpr GradeRow kGrades[] = {
#include "generated/core/handbook/iso286_grades.inc"
};

struct DeviationRow {
  std::string_view letter;
  FitSide side;
  int grade_from;
  int grade_to;
  int delta_to;  // delta is added up to this grade; 0: never
  Diameter over;
  Diameter up_to;
  Length deviation;  // the one next to the nominal size
  Source source;
};
constexpr DeviationRow kDeviations[] = {
#include "generated/core/handbook/iso286_deviations.inc"
};

constexpr Source kHalfTheGrade{"ISO 286-1, js and JS: half the grade to either side", "", Basis::kPublished};

// Letters of ISO 286-1 (from memory); those without rows are known but not tabled here.
constexpr std::array<std::string_view, 28> kLetters{"a", "b", "c",  "cd", "d", "e",  "ef", "f", "fg", "g",
                                                    "h", "j", "js", "k",  "m", "n",  "p",  "r", "s",  "t",
                                                    "u", "v", "x",  "y",  "z", "za", "zb", "zc"};
constexpr int kLargestGrade = 18;

std::optional<GradeRow> grade_row(int grade, Diameter nominal) {
  for (const GradeRow& row : kGrades) {
    if (row.grade == grade && in_range(nominal, {row.over}, {row.up_to})) return row;
  }
  return std::nullopt;
}

const DeviationRow* deviation_row(const Iso286Zone& zone, Diameter nominal) {
  for (const DeviationRow& row : kDeviations) {
    if (row.side == zone.side && row.letter == zone.letter && zone.grade >= row.grade_from &&
        zone.grade <= row.grade_to && in_range(nominal, {row.over}, {row.up_to})) {
      return &row;
    }
  }
  return nullptr;
}

std::string zone_at(const Iso286Zone& zone, Diameter nominal) {
  return fmt::format("{} at {} mm", to_string(zone), nominal.in(unit::millimetre));
}

base::Result<FitDeviations> zone_not_tabled(const Iso286Zone& zone, Diameter nominal) {
  std::string letters;
  std::string_view last;
  for (const DeviationRow& row : kDeviations) {
    if (row.side != zone.side || row.letter == last) continue;
    last = row.letter;
    letters += std::string(last) + ", ";
  }
  letters += zone.side == FitSide::kHole ? "JS" : "js";
  return not_tabled("the ISO 286 zone", zone_at(zone, nominal),
                    letters + "; grades 1 to 14 where the standard has them; over 0 up to 500 mm");
}

// delta = ITn - IT(n-1).
Length delta(int grade, Diameter nominal) {
  const auto own = grade_row(grade, nominal);
  const auto finer = grade_row(grade - 1, nominal);
  return own && finer ? own->tolerance - finer->tolerance : Length();
}

// M6 over 250 up to 315 mm has ES = -9 um, where the rule gives -11 (ISO 286-1; Machine Drawing, table 15.3).
constexpr Length kM6Exception = Length::of(-9, unit::micrometre);
bool is_m6_exception(const Iso286Zone& zone, Diameter nominal) {
  return zone.side == FitSide::kHole && zone.letter == "M" && zone.grade == 6 &&
         in_range(nominal, {Diameter::of(250, unit::millimetre)}, {Diameter::of(315, unit::millimetre)});
}

// Zones a and b are not used at or below 1 mm (note of the tables read).
bool is_below_a_and_b(const Iso286Zone& zone, Diameter nominal) {
  const std::string letter = folded(zone.letter);
  return (letter == "a" || letter == "b") && nominal.in(unit::millimetre) <= 1.0 + kSizeSlackMm;
}

// A shaft's a to h and a hole's A to H are the limit nearest the nominal from the clearance side; the others
// from the interference side.
bool is_clearance_letter(const Iso286Zone& zone) {
  return folded(zone.letter).front() <= 'h';
}

}  // namespace

base::Result<Iso286Zone> read_iso286_zone(std::string_view text) {
  constexpr std::string_view kExamples = "a zone such as H7, g6, k6, JS7 or s6";
  const std::string_view typed = quantity::trimmed(text);
  std::size_t letters = 0;
  while (letters < typed.size() && quantity::is_letter(typed[letters]))
    ++letters;
  const std::string_view letter = typed.substr(0, letters);
  const auto grade = digits_at(typed.substr(letters), kLargestGrade);
  const bool hole = std::all_of(letter.begin(), letter.end(), quantity::is_upper);
  const bool shaft = std::all_of(letter.begin(), letter.end(), quantity::is_lower);
  const bool known = std::find(kLetters.begin(), kLetters.end(), folded(letter)) != kLetters.end();
  if (!known || !(hole || shaft) || !grade || letters + grade->taken != typed.size() || grade->value == 0 ||
      typed[letters] == '0') {
    return unknown(typed, "ISO 286 zone", {}, kExamples);
  }
  return Iso286Zone{hole ? FitSide::kHole : FitSide::kShaft, std::string(letter), grade->value};
}

std::string to_string(const Iso286Zone& zone) {
  return zone.letter + std::to_string(zone.grade);
}

base::Result<GradeWidth> iso286_tolerance(int grade, Diameter nominal) {
  if (const auto row = grade_row(grade, nominal)) return GradeWidth{row->tolerance, row->source};
  return not_tabled("the tolerance", fmt::format("IT{} at {} mm", grade, nominal.in(unit::millimetre)),
                    "IT1 to IT14, nominal sizes over 0 up to 500 mm");
}

base::Result<FitDeviations> iso286_deviations(const Iso286Zone& zone, Diameter nominal) {
  const auto grade = grade_row(zone.grade, nominal);
  if (!grade || is_below_a_and_b(zone, nominal)) return zone_not_tabled(zone, nominal);
  const Length width = grade->tolerance;
  if (folded(zone.letter) == "js")
    return FitDeviations{-(width / 2), width / 2, kHalfTheGrade, grade->source};
  const DeviationRow* row = deviation_row(zone, nominal);
  if (row == nullptr) return zone_not_tabled(zone, nominal);
  Length near = row->deviation;
  if (zone.grade <= row->delta_to) near = near + delta(zone.grade, nominal);
  if (is_m6_exception(zone, nominal)) near = kM6Exception;
  // A hole's A to H give EI, its J to U give ES; a shaft's a to h give es, its j to u give ei.
  const bool is_lower_limit = (zone.side == FitSide::kHole) == is_clearance_letter(zone);
  return FitDeviations{is_lower_limit ? near : near - width, is_lower_limit ? near + width : near,
                       row->source, grade->source};
}

base::Result<FitDeviations> iso286_deviations(std::string_view zone, Diameter nominal) {
  const auto read = read_iso286_zone(zone);
  if (!read) return tl::unexpected(read.error());
  return iso286_deviations(*read, nominal);
}

}  // namespace sparewright::handbook
