#include "core/quantity/tolerance.hpp"

#include <algorithm>
#include <utility>

#include <fmt/format.h>

#include "core/base/hash.hpp"
#include "core/quantity/cut.hpp"
#include "core/quantity/designation.hpp"
#include "core/quantity/slip.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::quantity {
namespace {

using base::Code;
using base::fail;
using base::Failure;
using base::Result;

constexpr std::string_view kAccepted =
    "±0.002, +0.000/-0.001, +0.0010 to +0.0020, limits 0.8750 to 0.8758, a fit H7, g6 or RC4, or general";

// What the numbers of one text are read by. whole is that text, so that spans point into it.
struct Reader {
  std::string_view whole;
  Kind kind = Kind::kLength;
  std::optional<UnitSystem> system;
  std::optional<Unit> unit;  // of the size a tolerance belongs to, where that has one written

  [[nodiscard]] Reader of(Kind other) const {
    Reader reader = *this;
    reader.kind = other;
    return reader;
  }
};

tl::unexpected<Failure> bad(const Reader& reader, std::string_view part,
                            std::string_view accepted = kAccepted) {
  Failure f = slip(Code::kBadTolerance, reader.whole, part, std::string(accepted), reader.kind);
  f.subject = "the tolerance";
  return fail(std::move(f));
}

tl::unexpected<Failure> two_units(const Reader& reader, std::string_view part, const Unit& one,
                                  const Unit& other) {
  return fail(slip_of_unit(reader.whole, part, one.symbol, other.symbol, reader.kind));
}

// Failures of a piece are told where it stands in the whole.
tl::unexpected<Failure> moved(const Reader& reader, std::string_view part, Failure failure) {
  if (failure.span) failure.span->offset += span_of(reader.whole, part).offset;
  return fail(std::move(failure));
}

// part again, in a unit that was written elsewhere in the text. A fraction is inch by itself.
Result<Typed> read_in(const Reader& reader, std::string_view part, const Result<Typed>& bare,
                      const Unit& named) {
  if (bare && bare->places == Typed::kFraction && bare->unit != named && !is_zero(part)) {
    return two_units(reader, part, bare->unit, named);
  }
  auto number = read_number(fmt::format("{} {}", part, named.symbol), reader.kind, std::nullopt);
  if (!number) return moved(reader, part, std::move(number.error()));
  number->typed = part;
  return number;
}

bool wants_unit(const Result<Typed>& number) {
  return number ? !number->unit_given : number.error().code == Code::kUnitMissing;
}

Result<Typed> read_one(const Reader& reader, std::string_view part) {
  auto number = read_number(part, reader.kind, reader.system);
  if (reader.unit && wants_unit(number)) return read_in(reader, part, number, *reader.unit);
  if (!number) return moved(reader, part, std::move(number.error()));
  return number;
}

struct Pair {
  Typed first;
  Typed second;
};

// Two numbers; a unit written once at the end counts for both.
Result<Pair> read_pair(const Reader& reader, std::string_view first, std::string_view second) {
  auto a = read_number(first, reader.kind, reader.system);
  auto b = read_number(second, reader.kind, reader.system);
  if (!a && !wants_unit(a)) return moved(reader, first, std::move(a.error()));
  if (!b && !wants_unit(b)) return moved(reader, second, std::move(b.error()));
  if (wants_unit(a) && !wants_unit(b)) {
    if (b->compound) return two_units(reader, first, unit::foot, unit::inch);
    a = read_in(reader, first, a, b->unit);
  } else if (!wants_unit(a) && wants_unit(b) && is_zero(second)) {
    b = read_in(reader, second, b, a->unit);
  } else {
    a = read_one(reader, first);
    b = read_one(reader, second);
  }
  if (!a) return tl::unexpected(std::move(a.error()));
  if (!b) return tl::unexpected(std::move(b.error()));
  const bool differ = !b->unit_given && a->unit != b->unit && !is_zero(first) && !is_zero(second);
  if (differ) return two_units(reader, second, a->unit, b->unit);
  return Pair{std::move(*a), std::move(*b)};
}

Result<Tolerance> read_plus_minus(const Reader& reader, std::string_view text) {
  const std::string_view rest = trimmed(text.substr(plus_minus_at(text)));
  if (sign_at(rest) > 0) return bad(reader, text);
  auto width = read_one(reader, rest);
  if (!width) return tl::unexpected(std::move(width.error()));
  Deviations d{*width, std::move(*width)};
  d.lower.base = base::canonical(-d.lower.base);
  d.lower.typed.insert(0, "-");
  return Tolerance{std::move(d), std::string(text)};
}

Result<Tolerance> read_deviations(const Reader& reader, const Cut& cut, std::string_view text) {
  auto pair = read_pair(reader, cut.first, cut.second);
  if (!pair) return tl::unexpected(std::move(pair.error()));
  if (pair->first.base > pair->second.base) std::swap(pair->first, pair->second);
  return Tolerance{Deviations{std::move(pair->first), std::move(pair->second)}, std::string(text)};
}

Result<Tolerance> read_limits(const Reader& reader, const Cut& cut, std::string_view text) {
  auto pair = read_pair(reader, cut.first, cut.second);
  if (!pair) return tl::unexpected(std::move(pair.error()));
  if (pair->first.base > pair->second.base) {
    std::string accepted = fmt::format("{} to {}, the smaller limit first", cut.second, cut.first);
    const bool may_be_deviation = pair->second.base < pair->first.base / 2;
    if (may_be_deviation) accepted += fmt::format(", or {} +0/-{} for deviations", cut.first, cut.second);
    Failure f = slip(Code::kToleranceOrder, reader.whole, text, std::move(accepted), reader.kind);
    f.subject = "the tolerance";
    return fail(std::move(f));
  }
  return Tolerance{WrittenLimits{std::move(pair->first), std::move(pair->second)}, std::string(text)};
}

Kind deviation_kind(Kind kind) {
  return kind == Kind::kTemperature ? Kind::kTemperatureDifference : kind;
}

// H7, RC4, and what was meant for one: O7, H77, H7/g6. A capital first, or a class that is one.
bool has_form_of_fits(std::string_view text) {
  if (is_fit_class(text)) return true;
  return !text.empty() && is_upper(text.front()) && is_digit(text.back()) &&
         std::all_of(text.begin(), text.end(),
                     [](char c) { return is_letter(c) || is_digit(c) || c == '/'; });
}

bool is_fit_pair(std::string_view text) {
  const auto slash = text.find('/');
  return slash != std::string_view::npos && is_fit_class(text.substr(0, slash)) &&
         is_fit_class(text.substr(slash + 1));
}

// text is trimmed.
Result<Tolerance> read(const Reader& reader, std::string_view text) {
  const Reader of_deviations = reader.of(deviation_kind(reader.kind));
  if (text.empty() || text == "general") return Tolerance{GeneralTolerance{}, std::string(text)};
  if (is_fit_class(text)) return Tolerance{FitClass{std::string(text)}, std::string(text)};
  if (is_fit_pair(text))
    return bad(reader, text, "the class of this part alone, such as H7 for a hole or g6 for a shaft");
  if (plus_minus_at(text) > 0) return read_plus_minus(of_deviations, text);
  auto cut = cut_at_to(text);
  if (!cut && sign_at(text) == 0) cut = cut_at_dash(text);
  if (!cut) cut = cut_at_sign(text);
  if (!cut) {
    if (sign_at(text) == 0) return bad(reader, text);
    return bad(reader, text, "both deviations, such as +0.000/-0.002, or ±0.002");
  }
  const bool first_signed = sign_at(cut->first) > 0;
  const bool second_signed = sign_at(cut->second) > 0;
  if (!first_signed && !second_signed) return read_limits(reader, *cut, text);
  const bool both = (first_signed || is_zero(cut->first)) && (second_signed || is_zero(cut->second));
  if (!both) {
    return bad(reader, text,
               "a sign before each deviation, such as +0.001/-0.002, or limits as 0.8750 to 0.8758");
  }
  return read_deviations(of_deviations, *cut, text);
}

// Only limits: the size is their middle. None where the text is something else.
std::optional<Result<Sized>> read_sized_limits(const Reader& reader, std::string_view text) {
  if (sign_at(text) > 0 || plus_minus_at(text) > 0) return std::nullopt;
  auto cut = cut_at_to(text);
  if (!cut) cut = cut_at_dash(text);
  if (!cut || sign_at(cut->second) > 0) return std::nullopt;
  auto limits = read_limits(reader, *cut, text);
  if (!limits) {
    const Code code = limits.error().code;
    const bool surely_limits = code == Code::kToleranceOrder || code == Code::kTwoReadings;
    if (!surely_limits) return std::nullopt;
    return Result<Sized>(tl::unexpected(std::move(limits.error())));
  }
  const auto& both = std::get<WrittenLimits>(limits->form);
  Typed middle = both.low;
  middle.base = (both.low.base + both.high.base) / 2;
  middle.typed = text;
  return Result<Sized>(Sized{std::move(middle), std::move(*limits), std::string(text)});
}

// "0/-0.1" after a size: its zero has no sign, and it would else be taken for a second number.
bool starts_with_zero_deviation(std::string_view text) {
  const auto cut = cut_at_sign(text);
  return cut && is_zero(cut->first);
}

bool looks_like_tolerance(std::string_view text) {
  return sign_at(text) > 0 || plus_minus_at(text) > 0 || has_form_of_fits(text) || text == "general" ||
         starts_with_zero_deviation(text);
}

// "0.7500 -0.0002", ".250-28", "1 -3/8": a dash and one number after a size.
Result<Sized> lone_minus(const Reader& reader, std::string_view typed, std::string_view rest) {
  auto number = read_number(typed, reader.kind, reader.system);
  if (number || number.error().code != Code::kTwoReadings) {
    return bad(reader, rest, "both deviations, such as +0.000/-0.002, or ±0.002");
  }
  const std::string_view before = typed.substr(0, span_of(typed, rest).offset);
  if (trimmed(before).size() < before.size()) {
    number.error().accepted +=
        fmt::format(", or {} +0/-{} for deviations", trimmed(before), trimmed(rest.substr(minus_at(rest))));
  }
  return moved(reader, typed, std::move(number.error()));
}

// A unit that sizes are written in as well as their tolerances, and so no thou or um.
bool is_usual_unit(const Typed& number) {
  return number.unit_given && (number.unit == display_unit(number.kind, UnitSystem::kInch) ||
                               number.unit == display_unit(number.kind, UnitSystem::kMetric));
}

// The number of a tolerance whose unit counts: one with a unit written, else one that is not zero.
const Typed* number_of(const Tolerance& tolerance) {
  const auto* d = std::get_if<Deviations>(&tolerance.form);
  if (d == nullptr) return nullptr;
  return d->lower.unit_given || !is_zero(d->lower.typed) ? &d->lower : &d->upper;
}

}  // namespace

Result<Tolerance> read_tolerance(std::string_view text, Kind kind, std::optional<UnitSystem> system) {
  return read(Reader{text, kind, system, std::nullopt}, trimmed(text));
}

Result<Sized> read_sized(std::string_view text, Kind kind, std::optional<UnitSystem> system) {
  const std::string_view typed = trimmed(text);
  Reader reader{text, kind, system, std::nullopt};
  if (auto limits = read_sized_limits(reader, typed)) return std::move(*limits);

  const auto prefix = read_number_prefix(typed, kind, system);
  if (!prefix && prefix.error().code != Code::kUnitMissing) return moved(reader, typed, prefix.error());
  const std::size_t taken = prefix ? prefix->taken : prefix.error().span.value_or(base::Span{}).end();
  const std::string_view rest = trimmed(typed.substr(taken));
  if (!looks_like_tolerance(rest)) {
    auto whole =
        read_number(typed, kind, system);  // says what is wrong after the number, or is the number alone
    if (!whole) return moved(reader, typed, std::move(whole.error()));
    return Sized{std::move(*whole), Tolerance{}, std::string(typed)};
  }
  if (minus_at(rest) > 0 && !cut_at_to(rest) && !cut_at_sign(rest)) return lone_minus(reader, typed, rest);
  if (prefix && prefix->number.unit_given) reader.unit = prefix->number.unit;
  auto tolerance = read(reader, rest);
  if (!tolerance) return tl::unexpected(std::move(tolerance.error()));
  const Typed* beside = number_of(*tolerance);
  if (!prefix) {
    if (beside == nullptr || !is_usual_unit(*beside)) return moved(reader, typed, prefix.error());
    auto size =
        read_in(reader, trimmed(typed.substr(0, taken)), tl::unexpected(prefix.error()), beside->unit);
    if (!size) return tl::unexpected(std::move(size.error()));
    return Sized{std::move(*size), std::move(*tolerance), std::string(typed)};
  }
  const Typed& size = prefix->number;
  if (beside != nullptr && !size.unit_given && beside->unit != size.unit) {
    return two_units(reader, trimmed(typed.substr(0, taken)), size.unit, beside->unit);
  }
  return Sized{size, std::move(*tolerance), std::string(typed)};
}

}  // namespace sparewright::quantity
