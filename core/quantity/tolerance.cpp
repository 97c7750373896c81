#include "core/quantity/tolerance.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <utility>

namespace sparewright::quantity {
namespace {

using base::Code;
using base::fail;
using base::Failure;
using base::Result;

constexpr std::string_view kAccepted =
    "±0.002, +0.000/-0.001, +0.0010 to +0.0020, limits 0.8750-0.8758, a fit H7, g6 or RC4, or general";

std::string_view trimmed(std::string_view text) {
  constexpr std::string_view kBlanks = " \t\r\n";
  const auto first = text.find_first_not_of(kBlanks);
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(kBlanks) - first + 1);
}

tl::unexpected<Failure> bad(std::string_view found) {
  Failure f;
  f.code = Code::kBadTolerance;
  f.subject = "the tolerance";
  f.found = found;
  f.accepted = kAccepted;
  f.span = base::Span{0, found.size()};
  return fail(std::move(f));
}

// The sign of plus-or-minus, in the ways it is typed; how many bytes it takes.
std::size_t plus_minus(std::string_view text) {
  for (const std::string_view spelling : {"±", "+/-", "+-"}) {
    if (text.starts_with(spelling)) return spelling.size();
  }
  return 0;
}

bool is_signed(std::string_view text) {
  return text.starts_with('+') || text.starts_with('-') || text.starts_with("\xE2\x88\x92");
}

bool is_fit_class(std::string_view text) {
  constexpr std::array<std::string_view, 5> kInchFits{"RC", "LC", "LT", "LN", "FN"};
  const auto letters = static_cast<std::size_t>(
      std::find_if(text.begin(), text.end(), [](unsigned char c) { return std::isalpha(c) == 0; }) - text.begin());
  if (letters == 0 || letters > 2 || letters == text.size() || text.size() > letters + 2) return false;
  const std::string_view head = text.substr(0, letters);
  const std::string_view tail = text.substr(letters);
  if (!std::all_of(tail.begin(), tail.end(), [](unsigned char c) { return std::isdigit(c) != 0; })) return false;
  if (std::find(kInchFits.begin(), kInchFits.end(), head) != kInchFits.end()) return true;
  return letters == 1 || std::isupper(static_cast<unsigned char>(head[0])) ==
                             std::isupper(static_cast<unsigned char>(head[1]));  // H, g, js, JS, zc
}

// Two numbers with a separator between; the unit of the second counts for the first where that has none.
struct Pair {
  Typed first;
  Typed second;
};

Result<Pair> read_pair(std::string_view first, std::string_view second, Kind kind, std::optional<UnitSystem> system) {
  auto b = read_number(second, kind, system);
  if (!b) return tl::unexpected(b.error());
  auto a = read_number(first, kind, system);
  if (b->unit_given && (!a || !a->unit_given)) {
    a = read_number(std::string(first) + " " + std::string(b->unit.symbol), kind, system);
    if (a) a->typed = trimmed(first);
  }
  if (!a) return tl::unexpected(a.error());
  return Pair{std::move(*a), std::move(*b)};
}

// "+0.000/-0.001", "+0.000 -0.001", "-0.0002 to -0.0004", "0.8750 to 0.8758", "0.8750-0.8758": where the second
// number starts and where the first ends.
struct Cut {
  std::size_t first_end = 0;
  std::size_t second_begin = 0;
};

std::optional<Cut> find_cut(std::string_view text) {
  if (const auto to = text.find(" to "); to != std::string_view::npos) return Cut{to, to + 4};
  if (is_signed(text)) {
    for (std::size_t i = 1; i < text.size(); ++i) {
      if (is_signed(text.substr(i)) && (text[i - 1] == '/' || text[i - 1] == ' ')) return Cut{i - 1, i};
    }
    return std::nullopt;
  }
  const auto dash = text.find('-');
  if (dash == std::string_view::npos || text.find('.') == std::string_view::npos) return std::nullopt;
  return Cut{dash, dash + 1};
}

Tolerance make(ToleranceForm form, std::string_view typed) { return Tolerance{std::move(form), std::string(typed)}; }

}  // namespace

Result<Tolerance> read_tolerance(std::string_view text, Kind kind, std::optional<UnitSystem> system) {
  text = trimmed(text);
  if (text.empty() || text == "general") return make(GeneralTolerance{}, text);
  if (is_fit_class(text)) return make(FitClass{std::string(text)}, text);
  if (const auto n = plus_minus(text)) {
    const std::string_view rest = trimmed(text.substr(n));
    if (is_signed(rest)) return bad(text);
    auto width = read_number(rest, kind, system);
    if (!width) return tl::unexpected(width.error());
    Deviations d{*width, *width};
    d.lower.base = -d.lower.base;
    return make(std::move(d), text);
  }
  const auto cut = find_cut(text);
  if (!cut) return bad(text);
  const std::string_view first = trimmed(text.substr(0, cut->first_end));
  const std::string_view second = trimmed(text.substr(cut->second_begin));
  if (first.empty() || second.empty() || is_signed(first) != is_signed(second)) return bad(text);
  auto pair = read_pair(first, second, kind, system);
  if (!pair) return tl::unexpected(pair.error());
  if (is_signed(first)) {  // a range of deviations may be written in either order
    if (pair->first.base > pair->second.base) std::swap(pair->first, pair->second);
    return make(Deviations{std::move(pair->first), std::move(pair->second)}, text);
  }
  if (pair->first.base > pair->second.base) {
    Failure f;
    f.code = Code::kToleranceOrder;
    f.subject = "the tolerance";
    f.found = text;
    f.accepted = "the smaller limit first";
    f.span = base::Span{0, text.size()};
    return fail(std::move(f));
  }
  return make(WrittenLimits{std::move(pair->first), std::move(pair->second)}, text);
}

Result<Sized> read_sized(std::string_view text, Kind kind, std::optional<UnitSystem> system) {
  const std::string_view typed = trimmed(text);
  if (!typed.empty() && !is_signed(typed) && find_cut(typed) && plus_minus(typed) == 0) {
    auto limits = read_tolerance(typed, kind, system);
    if (limits && std::holds_alternative<WrittenLimits>(limits->form)) {
      const auto& both = std::get<WrittenLimits>(limits->form);
      Typed middle = both.low;
      middle.base = (both.low.base + both.high.base) / 2;
      return Sized{std::move(middle), std::move(*limits), std::string(typed)};
    }
  }
  auto size = read_number_prefix(typed, kind, system);
  if (!size) return tl::unexpected(size.error());
  const std::string_view rest = trimmed(typed.substr(size->taken));
  if (rest.empty()) return Sized{std::move(size->number), Tolerance{}, std::string(typed)};
  const bool looks_like_tolerance = is_signed(rest) || plus_minus(rest) > 0 || is_fit_class(rest) || rest == "general";
  if (!looks_like_tolerance) {
    auto whole = read_number(typed, kind, system);  // says what is wrong after the number
    if (!whole) return tl::unexpected(whole.error());
  }
  auto tolerance = read_tolerance(rest, kind, system);
  if (!tolerance) return tl::unexpected(tolerance.error());
  return Sized{std::move(size->number), std::move(*tolerance), std::string(typed)};
}

}  // namespace sparewright::quantity
