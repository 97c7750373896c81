#include "core/quantity/slip.hpp"

#include <algorithm>
#include <array>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include "core/base/nearest.hpp"
#include "core/quantity/designation.hpp"
#include "core/quantity/spelling.hpp"
#include "core/quantity/typed.hpp"
#include "core/quantity/unit.hpp"

namespace sparewright::quantity {
namespace {

using base::Code;
using base::Failure;

bool digit_or_point_at(std::string_view text) {
  return !text.empty() && (is_digit(text.front()) || text.front() == '.');
}

std::string_view first_word(std::string_view text) {
  std::size_t end = 0;
  while (end < text.size() && blanks_at(text.substr(end)) == 0)
    ++end;
  return text.substr(0, end);
}

// One-character fractions and the slash that only they use: U+00BC to U+00BE, U+2150 to U+215F, U+2044,
// U+2215.
bool printed_fraction_at(std::string_view text) {
  for (const std::string_view lead : {"\xC2\xBC", "\xC2\xBD", "\xC2\xBE", "\u2044", "\u2215"}) {
    if (text.starts_with(lead)) return true;
  }
  return text.size() >= 3 && text.starts_with("\xE2\x85") &&
         (static_cast<unsigned char>(text[2]) & 0xF0U) == 0x90U;
}

bool is_power_of_ten_at(std::string_view text) {
  if (!text.starts_with('e') && !text.starts_with('E')) return false;
  text.remove_prefix(1);
  text.remove_prefix(sign_at(text));
  return !text.empty() && is_digit(text.front());
}

bool measures_something(std::string_view unit_text) {
  for (int k = 0; k < kKinds; ++k) {
    if (find_unit(static_cast<Kind>(k), unit_text)) return true;
  }
  return false;
}

std::string units_near(std::string_view word, Kind kind) {
  constexpr std::size_t kShortestGuessed = 3;  // shorter words are all near to each other
  std::vector<std::string> spellings;
  for (const UnitWords& words : units_of(kind)) {
    spellings.insert(spellings.end(), words.spellings.begin(), words.spellings.end());
  }
  const std::string near = word.size() < kShortestGuessed ? std::string{} : base::nearest(word, spellings);
  const std::string known = spellings_of(kind);
  return near.empty() ? known : fmt::format("{} (did you mean '{}'?)", known, near);
}

Failure not_a_unit(std::string_view text, std::string_view rest, const Count& count, Kind kind) {
  const std::string_view word = first_word(rest);
  const std::string_view number = trimmed(text.substr(0, count.taken));
  if (is_length_like(kind)) {
    if (word == "mil" || word == "mils") {
      return slip(Code::kTwoReadings, text, trimmed(text), fmt::format("{0} thou or {0} mm", number), kind);
    }
    if (word == "tenth" || word == "tenths") {
      return slip(Code::kTwoReadings, text, trimmed(text),
                  "the size written out: a tenth of a thou is 0.0001 in, a tenth of a millimetre 0.1 mm",
                  kind);
    }
  }
  for (const std::string_view seen : {rest, word}) {
    if (measures_something(seen)) return slip(Code::kUnitOfAnotherKind, text, seen, spellings_of(kind), kind);
  }
  return slip(Code::kUnitUnknown, text, rest, units_near(word, kind), kind);
}

// "1 - 3/8", "0.8758-0.8750", "3'-2"": a dash between two numbers. dashed starts with the dash.
Failure two_numbers(std::string_view text, std::string_view dashed, const Count& count,
                    const std::optional<Unit>& named, Kind kind) {
  const std::string_view first = trimmed(text.substr(0, span_of(text, dashed).offset));
  const std::string_view second = trimmed(dashed.substr(minus_at(dashed)));
  const auto after = read_count(second, kind);
  std::string accepted;
  if (named && (*named == unit::foot || *named == unit::degree || *named == unit::arc_minute)) {
    accepted = fmt::format("{} {} for both together, or the difference written out", first, second);
  } else if (!named && after && count.is_whole && after->places == Typed::kFraction) {
    accepted = fmt::format("{}-{} for the mixed number, or the difference written out", first, second);
  } else if (!named && after && after->is_whole && !count.is_whole && is_length_like(kind)) {
    accepted =
        fmt::format("{} to {} where limits are taken, or the thread where a thread is taken", first, second);
  } else {
    accepted = fmt::format("{} to {} where limits are taken, or the difference written out", first, second);
  }
  return slip(Code::kTwoReadings, text, trimmed(text), std::move(accepted), kind);
}

// "1.375, or 1375 where the comma parts the thousands"
std::string without_comma(std::string_view run) {
  const auto comma = run.find(',');
  const auto last_comma = run.rfind(',');
  if (comma == last_comma && run.find('.') == std::string_view::npos) {
    const std::string_view before = run.substr(0, comma);
    const std::string_view after = run.substr(comma + 1);
    std::string out = fmt::format("{}.{}", before, after);
    const bool thousands =
        after.size() == 3 && !before.empty() && before.size() <= 3 && before.front() != '0';
    if (thousands) out += fmt::format(", or {}{} where the comma parts the thousands", before, after);
    return out;
  }
  return "one decimal point and no comma";
}

std::optional<Failure> comma_in_number(std::string_view text, Kind kind) {
  std::string_view run = trimmed(text);
  run.remove_prefix(sign_at(run));
  run.remove_prefix(blanks_at(run));
  run = run.substr(0, run.find_first_not_of("0123456789.,"));
  run = run.substr(0, run.find_last_not_of(",.") + 1);
  if (run.find(',') == std::string_view::npos) return std::nullopt;
  return slip(Code::kDecimalComma, text, run, without_comma(run), kind);
}

std::optional<Failure> named_size(std::string_view text, Kind kind) {
  const std::string_view all = trimmed(text);
  if (thread_at(text) > 0) {
    return slip(Code::kThreadWhereLength, text, all, "the size alone, such as 3/8 in or 9.5 mm", kind);
  }
  if (is_drill(all) || is_fit_class(all)) {
    return slip(Code::kDesignationWhereLength, text, all, "the size itself, such as 0.250 in or 6.35 mm",
                kind);
  }
  const bool one_letter = all.size() == 1 && is_letter(all.front());
  if (one_letter || all.starts_with("letter ")) {
    return slip(Code::kNotANumber, text, all,
                fmt::format("{}; where a drill is taken, its capital as in letter F", a_number_of(kind)),
                kind);
  }
  return std::nullopt;
}

}  // namespace

Failure slip(Code code, std::string_view text, std::string_view part, std::string accepted, Kind kind) {
  Failure f;
  f.code = code;
  f.subject = name_of(kind);
  f.found = part;
  f.accepted = std::move(accepted);
  f.span = span_of(text, part);
  return f;
}

std::string a_number_of(Kind kind) {
  if (is_length_like(kind)) return "a number such as 1.375, 1-3/8 or 34.9 mm";
  if (kind == Kind::kNumber) return "a number such as 1.375";
  return fmt::format("a number and one of: {}", spellings_of(kind));
}

std::optional<Failure> slip_before_number(std::string_view text, Kind kind) {
  const std::string_view all = trimmed(text);
  if (all.empty()) return slip(Code::kEmptyValue, text, text, a_number_of(kind), kind);
  if (is_length_like(kind)) {
    if (auto named = named_size(text, kind)) return named;
  }
  if (printed_fraction_at(all)) {
    return slip(Code::kBadFraction, text, all, "a fraction with a plain slash, such as 3/8 or 1-3/8", kind);
  }
  return comma_in_number(text, kind);
}

Failure slip_after_number(std::string_view text, std::string_view rest, const Count& count,
                          const std::optional<Unit>& named, Kind kind) {
  const std::string_view all = trimmed(text);
  if (const std::size_t dash = minus_at(rest)) {
    if (digit_or_point_at(trimmed(rest.substr(dash)))) return two_numbers(text, rest, count, named, kind);
  }
  if (named && is_digit(rest.front())) {
    return slip(Code::kTrailingText, text, rest, "one number, or feet and inches with a unit after each",
                kind);
  }
  if (named) return slip(Code::kTrailingText, text, rest, "the number and its unit alone", kind);
  if (rest.front() == '.') return slip(Code::kNotANumber, text, all, a_number_of(kind), kind);
  if (is_digit(rest.front())) {
    return slip(Code::kTrailingText, text, rest, "one number, without blanks in it unless a fraction follows",
                kind);
  }
  if ((rest.front() == '/' || rest.front() == '\\') && digit_or_point_at(rest.substr(1))) {
    return slip(Code::kBadFraction, text, all, "whole numbers with a slash between, such as 3/8 or 1-3/8",
                kind);
  }
  if (printed_fraction_at(rest)) {
    return slip(Code::kBadFraction, text, all, "a fraction with a plain slash, such as 3/8 or 1-3/8", kind);
  }
  if (is_power_of_ten_at(rest)) {
    return slip(Code::kNotANumber, text, all, "the number written out, such as 0.0005", kind);
  }
  return not_a_unit(text, rest, count, kind);
}

Failure slip_of_unit(std::string_view text, std::string_view part, std::string_view one_unit,
                     std::string_view other_unit, Kind kind) {
  return slip(Code::kTwoReadings, text, part,
              fmt::format("{0} {1} or {0} {2}, with the unit after each number", part, one_unit, other_unit),
              kind);
}

}  // namespace sparewright::quantity
