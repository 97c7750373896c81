#include "core/quantity/count.hpp"

#include <algorithm>
#include <charconv>
#include <string>
#include <utility>

#include <tao/pegtl.hpp>

#include "core/base/hash.hpp"
#include "core/quantity/slip.hpp"
#include "core/quantity/spelling.hpp"
#include "core/quantity/typed.hpp"

namespace sparewright::quantity {
namespace {

using base::Code;
using base::fail;
using base::Result;

// The rules are named like the words of a grammar, in the manner of the library.
// NOLINTBEGIN(readability-identifier-naming)
namespace number_grammar {

using namespace tao::pegtl;  // NOLINT(google-build-using-namespace): the grammar reads as one

struct blank_mark : utf8::one<' ', '\t', '\r', '\n', 0xA0, 0x2009, 0x202F> {};
struct gap : star<blank_mark> {};
struct sign : utf8::one<'+', '-', 0x2010, 0x2011, 0x2013, 0x2212> {};
struct digits : plus<digit> {};
struct decimal : sor<seq<digits, opt<one<'.'>, star<digit>>>, seq<one<'.'>, digits>> {};
struct proper : seq<digits, one<'/'>, digits, not_at<one<'.'>>> {};
struct fraction : proper {};
struct mixed : seq<digits, sor<one<'-'>, plus<blank_mark>>, proper> {};
struct number : seq<gap, opt<sign, gap>, sor<mixed, fraction, decimal>> {};

// What was seen. An action runs as soon as its rule matches, even if the parser then turns back; so only
// whole alternatives of `number` have one.
struct Seen {
  std::string_view sign;
  std::string_view mixed;
  std::string_view fraction;
  std::string_view decimal;
};

template <typename Rule>
struct Action : nothing<Rule> {};

template <std::string_view Seen::*kField>
struct Keep {
  template <typename Input>
  static void apply(const Input& in, Seen& seen) {
    seen.*kField = std::string_view(in.begin(), in.size());
  }
};
template <>
struct Action<sign> : Keep<&Seen::sign> {};
template <>
struct Action<mixed> : Keep<&Seen::mixed> {};
template <>
struct Action<fraction> : Keep<&Seen::fraction> {};
template <>
struct Action<decimal> : Keep<&Seen::decimal> {};

}  // namespace number_grammar
// NOLINTEND(readability-identifier-naming)

constexpr std::ptrdiff_t kMostDigits = 15;  // beyond this a double does not hold what was typed

double to_double(std::string_view text) {
  double value = 0.0;
  std::from_chars(text.data(), text.data() + text.size(), value);
  return value;
}

bool too_many_digits(std::string_view text) {
  return std::count_if(text.begin(), text.end(), is_digit) > kMostDigits;
}

tl::unexpected<base::Failure> too_long(std::string_view text, std::string_view seen, Kind kind) {
  const std::string_view whole = seen.substr(0, seen.find('.'));
  if (too_many_digits(whole.substr(std::min(whole.find_first_not_of('0'), whole.size())))) {
    return fail(slip(Code::kNumberTooLarge, text, seen, {}, kind));
  }
  return fail(slip(Code::kNotANumber, text, seen, "a number of at most 15 digits", kind));
}

Result<Count> read_decimal(std::string_view text, std::string_view seen, Kind kind) {
  if (too_many_digits(seen)) return too_long(text, seen, kind);
  Count count;
  count.value = to_double(seen);
  const auto point = seen.find('.');
  count.is_whole = point == std::string_view::npos;
  count.places = count.is_whole ? 0 : static_cast<int>(seen.size() - point - 1);
  return count;
}

// "3/8", "1-3/8" or "1 3/8".
Result<Count> read_fraction(std::string_view text, std::string_view seen, bool mixed, Kind kind) {
  const std::string_view whole =
      mixed ? seen.substr(0, seen.find_first_not_of("0123456789")) : std::string_view{};
  const std::string_view bottom = seen.substr(seen.find('/') + 1);
  const std::size_t top_begin = mixed ? seen.find_first_of("0123456789", whole.size()) : 0;
  const std::string_view top = seen.substr(top_begin, seen.find('/') - top_begin);
  if (too_many_digits(whole) || too_many_digits(top) || too_many_digits(bottom))
    return too_long(text, seen, kind);
  if (to_double(bottom) == 0.0) {
    return fail(slip(Code::kBadFraction, text, seen, "a fraction such as 3/8 or 1-3/8", kind));
  }
  if (mixed && to_double(top) >= to_double(bottom)) {
    return fail(
        slip(Code::kBadFraction, text, seen, "less than one after the whole number, such as 1-3/8", kind));
  }
  Count count;
  count.value = to_double(whole) + to_double(top) / to_double(bottom);
  count.places = Typed::kFraction;
  return count;
}

}  // namespace

Result<Count> read_count(std::string_view text, Kind kind) {
  number_grammar::Seen seen;
  number_grammar::memory_input in(text.data(), text.data() + text.size(), "");
  if (!number_grammar::parse<number_grammar::number, number_grammar::Action>(in, seen)) {
    return fail(slip(Code::kNotANumber, text, trimmed(text), a_number_of(kind), kind));
  }
  auto count = !seen.mixed.empty()      ? read_fraction(text, seen.mixed, true, kind)
               : !seen.fraction.empty() ? read_fraction(text, seen.fraction, false, kind)
                                        : read_decimal(text, seen.decimal, kind);
  if (!count) return count;
  count->taken = in.byte();
  count->has_sign = !seen.sign.empty();
  count->negative = count->has_sign && seen.sign != "+";
  if (count->negative) count->value = base::canonical(-count->value);
  return count;
}

}  // namespace sparewright::quantity
