#include "core/quantity/typed.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "core/base/hash.hpp"
#include "core/quantity/count.hpp"
#include "core/quantity/designation.hpp"
#include "core/quantity/slip.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::quantity {
namespace {

using base::Code;
using base::fail;
using base::Failure;
using base::Result;

constexpr double kLargestLengthMm = 1.0e6;  // a kilometre: no such part

// Whether a unit word goes on after its spelling, so that it is another one: in/rev, in2, in², mmx, ft-lb.
bool goes_on(std::string_view after, char last) {
  if (after.empty()) return false;
  if (is_letter(after[0])) return true;
  if (!is_letter(last)) return false;
  const bool letter_next = after.size() > 1 && is_letter(after[1]);
  return is_digit(after[0]) || after[0] == '_' || after.starts_with("²") || after.starts_with("³") ||
         after.starts_with("·") || ((after[0] == '/' || after[0] == '-') && letter_next);
}

// The longest spelling of a unit of the kind at the start of text, and the point of an abbreviation after it.
std::pair<std::optional<Unit>, std::size_t> unit_at(std::string_view text, Kind kind) {
  std::optional<Unit> best;
  std::size_t longest = 0;
  for (const UnitWords& words : units_of(kind)) {
    for (const std::string_view spelling : words.spellings) {
      const std::size_t size = spelling.size();
      if (size <= longest || !is_spelled(text.substr(0, size), spelling)) continue;
      if (goes_on(text.substr(size), spelling.back())) continue;
      best = words.unit;
      longest = size;
    }
  }
  if (longest > 0 && is_letter(text[longest - 1]) && text.substr(longest).starts_with('.')) {
    const std::string_view after = text.substr(longest + 1);
    if (after.empty() || blanks_at(after) > 0) ++longest;
  }
  return {best, longest};
}

struct Chain {  // units that may follow one another: 2 ft 3-1/2 in, 30° 15' 30"
  const Unit* larger;
  const Unit* smaller;
  double ratio;  // of the smaller in one of the larger
};
constexpr std::array kChains{Chain{&unit::foot, &unit::inch, 12}, Chain{&unit::degree, &unit::arc_minute, 60},
                             Chain{&unit::arc_minute, &unit::arc_second, 60}};

const Chain* find_chain(const Unit& larger, const Unit& smaller) {
  const auto* chain = std::find_if(kChains.begin(), kChains.end(), [&](const Chain& c) {
    return *c.larger == larger && *c.smaller == smaller;
  });
  return chain == kChains.end() ? nullptr : chain;
}

// The number and its unit as they stand at the start of a text.
struct Head {
  Count count;               // the last number
  std::optional<Unit> unit;  // the last unit
  double in_unit = 0.0;      // all of it, counted in that unit
  std::size_t taken = 0;     // bytes
  bool compound = false;
};

// Reads "3-1/2 in" after "2 ft", "15' 30"" after "30°"; adds to head.
std::optional<Failure> read_smaller_units(std::string_view text, Kind kind, bool negative, Head& head) {
  for (;;) {
    const std::string_view rest = text.substr(head.taken);
    const auto count = read_count(rest, kind);
    if (!count || count->has_sign) return std::nullopt;
    const std::size_t gap = blanks_at(rest.substr(count->taken));
    const auto [found, size] = unit_at(rest.substr(count->taken + gap), kind);
    const Chain* chain = found ? find_chain(*head.unit, *found) : nullptr;
    if (chain == nullptr) return std::nullopt;
    const std::size_t taken = head.taken + count->taken + gap + size;
    if (!head.count.is_whole || count->value >= chain->ratio) {
      return slip(Code::kNotANumber, text, trimmed(text.substr(0, taken)),
                  "a whole number of the larger unit, then less than one of it in the smaller", kind);
    }
    head.in_unit = head.in_unit * chain->ratio + (negative ? -count->value : count->value);
    head.count = *count;
    head.unit = *found;
    head.taken = taken;
    head.compound = true;
  }
}

Result<Head> read_head(std::string_view text, Kind kind) {
  if (auto before = slip_before_number(text, kind)) return fail(std::move(*before));
  const auto count = read_count(text, kind);
  if (!count) return tl::unexpected(count.error());
  Head head;
  head.count = *count;
  head.in_unit = count->value;
  head.taken = count->taken;
  const std::size_t gap = blanks_at(text.substr(count->taken));
  const auto [found, size] = unit_at(text.substr(count->taken + gap), kind);
  if (!found) return head;
  head.unit = *found;
  head.taken += gap + size;
  if (auto failed = read_smaller_units(text, kind, count->negative, head)) return fail(std::move(*failed));
  return head;
}

std::optional<Unit> unit_of_bare_number(const Count& count, Kind kind, std::optional<UnitSystem> system) {
  if (count.places == Typed::kFraction && is_length_like(kind)) return Unit(unit::inch);
  if (kind == Kind::kNumber) return Unit(unit::unity);
  return system ? bare_unit(kind, *system) : std::nullopt;
}

Result<Typed> finish(std::string_view text, const Head& head, Kind kind, std::optional<UnitSystem> system) {
  const std::string_view seen = trimmed(text.substr(0, head.taken));
  const auto named = head.unit ? head.unit : unit_of_bare_number(head.count, kind, system);
  if (!named) {
    return fail(slip(Code::kUnitMissing, text, seen, "the number and one of: " + spellings_of(kind), kind));
  }
  Typed number;
  number.base = base::canonical(named->to_base(head.in_unit));
  number.kind = kind;
  number.unit = *named;
  number.typed = seen;
  number.places = head.count.places;
  number.unit_given = head.unit.has_value();
  number.compound = head.compound;
  if (is_length_like(kind) && std::abs(number.base) > kLargestLengthMm) {
    return fail(slip(Code::kNumberTooLarge, text, seen, "at most 1 km", kind));
  }
  if (kind == Kind::kTemperature && number.base < 0.0) {
    return fail(slip(Code::kNotANumber, text, seen, "not below absolute zero, -273.15 degC", kind));
  }
  return number;
}

}  // namespace

Result<Prefix> read_number_prefix(std::string_view text, Kind kind, std::optional<UnitSystem> system) {
  const auto head = read_head(text, kind);
  if (!head) return tl::unexpected(head.error());
  auto number = finish(text, *head, kind, system);
  if (!number) return tl::unexpected(number.error());
  return Prefix{std::move(*number), head->taken};
}

Result<Typed> read_number(std::string_view text, Kind kind, std::optional<UnitSystem> system) {
  const auto head = read_head(text, kind);
  if (!head) return tl::unexpected(head.error());
  if (const std::string_view rest = trimmed(text.substr(head->taken)); !rest.empty()) {
    return fail(slip_after_number(text, rest, head->count, head->unit, kind));
  }
  return finish(text, *head, kind, system);
}

Result<Size> read_size(std::string_view text, Kind kind, std::optional<UnitSystem> system) {
  if (is_drill(text)) {
    const std::string_view typed = trimmed(text);
    const bool numbered = typed.front() == '#';
    Designation d;
    d.typed = typed;
    d.series = numbered ? Designation::Series::kNumberDrill : Designation::Series::kLetterDrill;
    d.name = numbered ? trimmed(typed.substr(1)) : typed.substr(typed.size() - 1);
    return Size(std::move(d));
  }
  auto number = read_number(text, kind, system);
  if (!number) return tl::unexpected(number.error());
  return Size(std::move(*number));
}

}  // namespace sparewright::quantity
