#include "core/quantity/typed.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <limits>
#include <tao/pegtl.hpp>
#include <utility>

namespace sparewright::quantity {
namespace {

using base::Code;
using base::fail;
using base::Failure;
using base::Result;

namespace grammar {

using namespace tao::pegtl;  // NOLINT(google-build-using-namespace): the grammar reads as one

struct blanks : star<space> {};
struct digits : plus<digit> {};
struct sign : sor<one<'+', '-'>, string<'\xE2', '\x88', '\x92'>> {};  // U+2212 is a minus too
struct decimal : sor<seq<digits, opt<seq<one<'.'>, star<digit>>>>, seq<one<'.'>, digits>> {};
struct numerator : digits {};
struct denominator : digits {};
struct fraction : seq<numerator, one<'/'>, denominator> {};
struct whole : digits {};
struct mixed : seq<whole, sor<one<'-'>, plus<blank>>, fraction> {};
struct magnitude : sor<mixed, seq<fraction, not_at<one<'.'>>>, decimal> {};
struct signed_magnitude : seq<blanks, opt<sign>, magnitude> {};

// 3/8-16, 1/4-20, 10-24, M8x1: what reads like a thread.
struct unified_thread : seq<opt<one<'#'>>, sor<fraction, digits>, one<'-'>, digits, not_at<one<'/', '.'>>> {};
struct metric_thread : seq<one<'M'>, decimal, opt<blanks, one<'x', 'X'>, blanks, decimal>> {};
struct thread : seq<blanks, sor<unified_thread, metric_thread>> {};

struct drill_number : digits {};
struct drill_letter : upper {};
struct number_drill : seq<one<'#'>, blanks, drill_number> {};
struct letter_drill : seq<istring<'l', 'e', 't', 't', 'e', 'r'>, plus<blank>, drill_letter> {};
struct drill : seq<blanks, sor<number_drill, letter_drill>, blanks, eof> {};

struct decimal_comma : seq<blanks, opt<sign>, digits, one<','>, digits> {};

template <typename Rule>
struct Action : nothing<Rule> {};

struct Magnitude {
  bool negative = false;
  bool is_fraction = false;
  std::string whole_text;
  std::string numerator_text;
  std::string denominator_text;
  std::string decimal_text;
};

template <>
struct Action<sign> {
  template <typename Input>
  static void apply(const Input& in, Magnitude& m) {
    m.negative = in.string() != "+";
  }
};
template <>
struct Action<decimal> {
  template <typename Input>
  static void apply(const Input& in, Magnitude& m) {
    m.decimal_text = in.string();
  }
};
template <>
struct Action<whole> {
  template <typename Input>
  static void apply(const Input& in, Magnitude& m) {
    m.whole_text = in.string();
  }
};
template <>
struct Action<numerator> {
  template <typename Input>
  static void apply(const Input& in, Magnitude& m) {
    m.numerator_text = in.string();
  }
};
template <>
struct Action<denominator> {
  template <typename Input>
  static void apply(const Input& in, Magnitude& m) {
    m.denominator_text = in.string();
  }
};
template <>
struct Action<mixed> {
  template <typename Input>
  static void apply(const Input& /*in*/, Magnitude& m) {
    m.is_fraction = true;
  }
};
template <>
struct Action<fraction> {
  template <typename Input>
  static void apply(const Input& /*in*/, Magnitude& m) {
    m.is_fraction = true;
  }
};

// How many bytes at the start of text the rule takes; 0 where it does not match.
template <typename Rule>
std::size_t taken(std::string_view text) {
  memory_input in(text.data(), text.data() + text.size(), "");
  return parse<Rule>(in) ? in.byte() : 0;
}

}  // namespace grammar

constexpr std::size_t kMostDigits = 15;         // beyond this a double does not hold what was typed
constexpr double kLargestLengthMm = 1.0e6;      // a kilometre: no such part

double to_double(std::string_view text) {
  double value = 0.0;
  std::from_chars(text.data(), text.data() + text.size(), value);
  return value;
}

bool too_many_digits(std::string_view text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(),
                                                [](char c) { return c >= '0' && c <= '9'; })) > kMostDigits;
}

Failure failure(Code code, std::string_view found, std::string accepted, Kind kind, base::Span span) {
  Failure f;
  f.code = code;
  f.subject = name_of(kind);
  f.found = found;
  f.accepted = std::move(accepted);
  f.span = span;
  return f;
}

struct Count {  // of some unit
  double value = 0.0;
  int places = 0;
  std::size_t taken = 0;
  bool negative = false;
};

// The number alone, no unit.
Result<Count> read_count(std::string_view text, Kind kind) {
  grammar::Magnitude m;
  grammar::memory_input in(text.data(), text.data() + text.size(), "");
  if (!grammar::parse<grammar::signed_magnitude, grammar::Action>(in, m)) {
    return fail(failure(Code::kNotANumber, text, "a number such as 1.375, 1-3/8 or .0005", kind, {0, text.size()}));
  }
  Count count;
  count.taken = in.byte();
  count.negative = m.negative;
  const std::string_view seen = text.substr(0, count.taken);
  const base::Span span{0, count.taken};
  if (m.is_fraction) {
    for (const std::string& part : {m.whole_text, m.numerator_text, m.denominator_text}) {
      if (too_many_digits(part)) return fail(failure(Code::kNumberTooLarge, seen, {}, kind, span));
    }
    const double top = to_double(m.numerator_text);
    const double bottom = to_double(m.denominator_text);
    const bool mixed = !m.whole_text.empty();
    if (bottom == 0.0 || (mixed && top >= bottom)) {
      return fail(failure(Code::kBadFraction, seen, "a fraction such as 3/8 or 1-3/8", kind, span));
    }
    count.value = (mixed ? to_double(m.whole_text) : 0.0) + top / bottom;
    count.places = Typed::kFraction;
  } else {
    if (too_many_digits(m.decimal_text)) return fail(failure(Code::kNumberTooLarge, seen, {}, kind, span));
    count.value = to_double(m.decimal_text);
    const auto point = m.decimal_text.find('.');
    count.places = point == std::string::npos ? 0 : static_cast<int>(m.decimal_text.size() - point - 1);
  }
  return count;
}

std::size_t blanks_at(std::string_view text) { return grammar::taken<grammar::blanks>(text); }

// The longest spelling of a unit of the kind at the start of text that is not the start of a longer word.
std::pair<std::optional<Unit>, std::size_t> unit_at(std::string_view text, Kind kind) {
  std::optional<Unit> best;
  std::size_t longest = 0;
  for (const UnitWords& words : units_of(kind)) {
    for (const std::string_view spelling : words.spellings) {
      if (spelling.size() <= longest || !text.starts_with(spelling)) continue;
      const char next = text.size() > spelling.size() ? text[spelling.size()] : ' ';
      const char last = spelling.back();
      const bool is_word = (last >= 'a' && last <= 'z') || (last >= 'A' && last <= 'Z');
      const bool goes_on = (next >= 'a' && next <= 'z') || (next >= 'A' && next <= 'Z') ||
                           (next >= '0' && next <= '9') || next == '_' || next == '/';
      if (is_word && goes_on) continue;
      best = words.unit;
      longest = spelling.size();
    }
  }
  return {best, longest};
}

bool measures_something(std::string_view unit_text) {
  for (int k = 0; k < kKinds; ++k) {
    if (find_unit(static_cast<Kind>(k), unit_text)) return true;
  }
  return false;
}

std::string_view trimmed(std::string_view text) {
  constexpr std::string_view kBlanks = " \t\r\n";
  const auto first = text.find_first_not_of(kBlanks);
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(kBlanks) - first + 1);
}

struct Smaller {  // units that may follow one another: 2 ft 3-1/2 in, 30° 15' 30"
  const Unit* larger;
  const Unit* smaller;
};
constexpr Smaller kChains[] = {{&unit::foot, &unit::inch}, {&unit::degree, &unit::arc_minute}, {&unit::arc_minute, &unit::arc_second}};

bool may_follow(const Unit& larger, const Unit& smaller) {
  return std::any_of(std::begin(kChains), std::end(kChains),
                     [&](const Smaller& c) { return *c.larger == larger && *c.smaller == smaller; });
}

// Reads "3-1/2 in" after "2 ft", "15' 30"" after "30°"; adds to typed.
void read_smaller_units(std::string_view text, Kind kind, bool negative, Prefix& prefix) {
  Unit last = prefix.number.unit;
  for (;;) {
    const std::string_view rest = text.substr(prefix.taken);
    const auto count = read_count(rest, kind);
    if (!count || count->negative || rest.substr(blanks_at(rest)).starts_with('+')) return;
    std::size_t taken = count->taken + blanks_at(rest.substr(count->taken));
    const auto [found, found_size] = unit_at(rest.substr(taken), kind);
    if (!found || !may_follow(last, *found)) return;
    prefix.number.base += (negative ? -1.0 : 1.0) * found->to_base(count->value);
    prefix.taken += taken + found_size;
    last = *found;
  }
}

Failure unit_missing(std::string_view text, Kind kind, std::size_t taken) {
  return failure(Code::kUnitMissing, trimmed(text.substr(0, taken)), "the number and one of: " + spellings_of(kind),
                 kind, {0, taken});
}

Result<Unit> unit_of_bare_number(const Count& count, std::string_view text, Kind kind,
                                 std::optional<UnitSystem> system) {
  if (count.places == Typed::kFraction && is_length_like(kind)) return Unit(unit::inch);
  if (kind == Kind::kNumber) return Unit(unit::unity);
  const auto bare = system ? bare_unit(kind, *system) : std::nullopt;
  if (!bare) return fail(unit_missing(text, kind, count.taken));
  return *bare;
}

// What stands after a number and is not a unit of the kind.
Failure not_a_unit(std::string_view rest, Kind kind, std::size_t offset) {
  const std::string_view word = trimmed(rest);
  const base::Span span{offset + blanks_at(rest), word.size()};
  const Code code = measures_something(word) ? Code::kUnitOfAnotherKind : Code::kUnitUnknown;
  return failure(code, word, spellings_of(kind), kind, span);
}

// Text that is no number at all, told apart by what it looks like.
std::optional<Failure> looks_like_something_else(std::string_view text, Kind kind) {
  const base::Span whole{0, text.size()};
  if (trimmed(text).empty()) return failure(Code::kEmptyValue, text, spellings_of(kind), kind, whole);
  if (const auto n = grammar::taken<grammar::decimal_comma>(text)) {
    return failure(Code::kDecimalComma, trimmed(text), "a decimal point, as in 1.375", kind, {0, n});
  }
  if (!is_length_like(kind)) return std::nullopt;
  if (grammar::taken<grammar::thread>(text) > 0) {
    return failure(Code::kThreadWhereLength, trimmed(text), "a length such as 3/8 in or 9.5 mm", kind, whole);
  }
  if (grammar::taken<grammar::drill>(text) > 0) {
    return failure(Code::kDesignationWhereLength, trimmed(text), "a length such as 0.201 in or 5.1 mm", kind, whole);
  }
  return std::nullopt;
}

}  // namespace

Result<Prefix> read_number_prefix(std::string_view text, Kind kind, std::optional<UnitSystem> system) {
  if (auto other = looks_like_something_else(text, kind)) return fail(std::move(*other));
  const auto count = read_count(text, kind);
  if (!count) return tl::unexpected(count.error());

  Prefix prefix;
  prefix.taken = count->taken;
  const std::string_view rest = text.substr(count->taken);
  const std::size_t gap = blanks_at(rest);
  const auto [found, found_size] = unit_at(rest.substr(gap), kind);
  if (found) {
    prefix.number.unit = *found;
    prefix.number.unit_given = found_size > 0;
    prefix.taken += found_size > 0 ? gap + found_size : 0;
  } else {
    auto bare = unit_of_bare_number(*count, text, kind, system);
    if (!bare) return tl::unexpected(bare.error());
    prefix.number.unit = *bare;
  }
  prefix.number.kind = kind;
  prefix.number.places = count->places;
  prefix.number.base = prefix.number.unit.to_base(count->negative ? -count->value : count->value);
  if (found) read_smaller_units(text, kind, count->negative, prefix);
  prefix.number.typed = trimmed(text.substr(0, prefix.taken));
  if (is_length_like(kind) && std::abs(prefix.number.base) > kLargestLengthMm) {
    return fail(failure(Code::kNumberTooLarge, prefix.number.typed, "at most 1 km", kind, {0, prefix.taken}));
  }
  return prefix;
}

Result<Typed> read_number(std::string_view text, Kind kind, std::optional<UnitSystem> system) {
  auto prefix = read_number_prefix(text, kind, system);
  const std::size_t taken = prefix ? prefix->taken : prefix.error().code == Code::kUnitMissing
                                                         ? prefix.error().span.value_or(base::Span{}).length
                                                         : text.size();
  const std::string_view rest = text.substr(taken);
  if (!trimmed(rest).empty()) {
    if (prefix && prefix->number.unit_given) {
      return fail(failure(Code::kTrailingText, trimmed(rest), "the number and its unit alone", kind,
                          {taken + blanks_at(rest), trimmed(rest).size()}));
    }
    return fail(not_a_unit(rest, kind, taken));
  }
  if (!prefix) return tl::unexpected(prefix.error());
  return prefix->number;
}

Result<Size> read_size(std::string_view text, Kind kind, std::optional<UnitSystem> system) {
  if (grammar::taken<grammar::drill>(text) > 0) {
    const std::string_view typed = trimmed(text);
    Designation d;
    d.typed = typed;
    d.series = typed.front() == '#' ? Designation::Series::kNumberDrill : Designation::Series::kLetterDrill;
    d.name = typed.front() == '#' ? trimmed(typed.substr(1)) : typed.substr(typed.size() - 1);
    return Size(std::move(d));
  }
  auto number = read_number(text, kind, system);
  if (!number) return tl::unexpected(number.error());
  return Size(std::move(*number));
}

}  // namespace sparewright::quantity
