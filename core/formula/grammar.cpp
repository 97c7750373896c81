// The grammar of typed formulas.
#include <algorithm>

#include <fmt/format.h>
#include <tao/pegtl.hpp>

#include "core/formula/reading.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::formula {
namespace {

using base::Code;
using base::fail;
using base::Failure;
using base::Result;

namespace grammar {

using namespace tao::pegtl;  // NOLINT(google-build-using-namespace): the grammar reads as one

struct expression;

struct blank_mark : utf8::one<' ', '\t', '\r', '\n', 0xA0, 0x2009, 0x202F> {};
struct gap : star<blank_mark> {};
template <char C>
struct mark : seq<gap, one<C>, gap> {};
struct minus_sign : utf8::one<'-', 0x2010, 0x2011, 0x2013, 0x2212> {};

struct digits : plus<digit> {};
struct decimal : sor<seq<digits, opt<one<'.'>, star<digit>>>, seq<one<'.'>, digits>> {};
struct fraction : seq<digits, one<'/'>, digits, not_at<one<'.'>>> {};
struct mixed : seq<digits, sor<minus_sign, plus<blank_mark>>, fraction> {};
struct magnitude : sor<mixed, fraction, decimal> {};

// A unit is letters (in, mm, deg), a sign (", °), letters with a power (in2), or two of them with a slash
// (mm/rev). 3 in/pin is 3 in over pin: the slash belongs to the unit only where there is such a unit.
struct unit_letter : sor<alpha, utf8::one<0xB0, 0xB2, 0xB3, 0xB5, 0xB7, 0x3BC>> {};
struct unit_word : seq<plus<unit_letter>, opt<digit>> {};
struct inch_mark : utf8::one<'"', 0x2033, 0x201D> {};
struct ratio_unit : seq<unit_word, one<'/'>, unit_word> {};
struct plain_unit : sor<inch_mark, unit_word> {};
struct full_stop : seq<one<'.'>, not_at<sor<alnum, one<'.', '_'>>>> {};  // 1.375 in.
struct written_unit : seq<sor<ratio_unit, plain_unit>, opt<full_stop>> {};
template <Standing S>
struct number : seq<magnitude, opt<seq<gap, written_unit>>> {};

struct identifier : seq<sor<alpha, one<'_'>>, star<sor<alnum, one<'_', '.'>>>> {};
struct variable : identifier {};
struct call_open : seq<identifier, gap, one<'('>> {};
struct argument : if_must<mark<','>, expression> {};
struct call : if_must<call_open, gap, expression, star<argument>, gap, one<')'>> {};
struct bracket : if_must<one<'('>, gap, expression, gap, one<')'>> {};
template <Standing S>
struct primary : sor<number<S>, call, bracket, variable> {};

struct exponent : seq<opt<one<'-'>>, digits> {};
struct power_mark : seq<gap, one<'^'>, gap> {};
struct to_power : if_must<power_mark, exponent> {};
template <Standing S>
struct powered : seq<primary<S>, opt<to_power>> {};
template <Standing S>
struct negated : if_must<seq<minus_sign, gap>, powered<S>> {};
template <Standing S>
struct factor : sor<negated<S>, powered<S>> {};

struct times : if_must<mark<'*'>, factor<Standing::kAfterTimes>> {};
struct over : if_must<mark<'/'>, factor<Standing::kAfterOver>> {};
struct term : seq<factor<Standing::kFirst>, star<sor<times, over>>> {};
struct plus_term : if_must<mark<'+'>, term> {};
struct minus_term : if_must<seq<gap, minus_sign, gap>, term> {};
struct expression : seq<term, star<sor<plus_term, minus_term>>> {};
struct whole : must<gap, expression, gap, eof> {};

}  // namespace grammar

// Every rule that has an action is one the parser does not turn back from.
template <typename Rule>
struct Action : tao::pegtl::nothing<Rule> {};

template <void (Reading::*kTakes)(base::Span)>
struct Takes {
  template <typename Input>
  static void apply(const Input& in, Reading& reading) {
    (reading.*kTakes)({in.position().byte, in.size()});
  }
};
template <>
struct Action<grammar::magnitude> : Takes<&Reading::magnitude> {};
template <>
struct Action<grammar::plain_unit> : Takes<&Reading::unit> {};
template <>
struct Action<grammar::variable> : Takes<&Reading::name> {};
template <>
struct Action<grammar::call_open> : Takes<&Reading::open_call> {};
template <>
struct Action<grammar::call> : Takes<&Reading::close_call> {};
template <>
struct Action<grammar::bracket> : Takes<&Reading::bracket> {};
template <>
struct Action<grammar::to_power> : Takes<&Reading::power> {};
template <Standing S>
struct Action<grammar::negated<S>> : Takes<&Reading::negate> {};

template <>
struct Action<grammar::ratio_unit> {
  template <typename Input>
  static bool apply(const Input& in, Reading& reading) {
    return reading.known_unit({in.position().byte, in.size()});
  }
};
template <Standing S>
struct Action<grammar::number<S>> {
  template <typename Input>
  static void apply(const Input& in, Reading& reading) {
    reading.number({in.position().byte, in.size()}, S);
  }
};

template <Operation kOperation>
struct Joins {
  static void apply0(Reading& reading) { reading.binary(kOperation); }
};
template <>
struct Action<grammar::times> : Joins<Operation::kMultiply> {};
template <>
struct Action<grammar::over> : Joins<Operation::kDivide> {};
template <>
struct Action<grammar::plus_term> : Joins<Operation::kAdd> {};
template <>
struct Action<grammar::minus_term> : Joins<Operation::kSubtract> {};

int deepest_nesting(std::string_view text) {
  int depth = 0;
  int deepest = 0;
  for (const char c : text) {
    if (c == '(') deepest = std::max(deepest, ++depth);
    if (c == ')') --depth;
  }
  return deepest;
}

Failure syntax_failure(std::string_view text, std::size_t at) {
  Failure f;
  f.code = Code::kFormulaSyntax;
  f.subject = "the formula";
  f.found = at < text.size() ? text.substr(at) : std::string_view("its end");
  f.accepted =
      fmt::format("numbers, names, + - * /, ^ with a whole number, brackets, and {}", function_names());
  f.span = base::Span{at, text.size() - at};
  const bool between_digits = at > 0 && at + 1 < text.size() && quantity::is_digit(text[at - 1]) &&
                              text[at] == ',' && quantity::is_digit(text[at + 1]);
  if (between_digits) {
    const auto begin = text.find_last_not_of("0123456789", at - 1) + 1;
    const auto end = std::min(text.find_first_not_of("0123456789", at + 1), text.size());
    f.code = Code::kDecimalComma;
    f.span = base::Span{begin, end - begin};
    f.found = text.substr(begin, end - begin);
    f.accepted = "a decimal point, as in 1.375";
  }
  return f;
}

std::optional<Failure> refused_unread(std::string_view text) {
  Failure f;
  f.subject = "the formula";
  f.span = base::Span{0, text.size()};
  if (quantity::trimmed(text).empty()) {
    f.code = Code::kEmptyValue;
    f.subject = "a formula";
    return f;
  }
  f.code = Code::kTooMany;
  if (text.size() > kLongestFormula) {
    f.found = fmt::format("it has {} characters", text.size());
    f.accepted = fmt::format("at most {}", kLongestFormula);
    return f;
  }
  if (const int depth = deepest_nesting(text); depth > kDeepestNesting) {
    f.found = fmt::format("its brackets are {} deep", depth);
    f.accepted = fmt::format("at most {}", kDeepestNesting);
    return f;
  }
  return std::nullopt;
}

}  // namespace

Result<Expression> Expression::read(std::string_view text) {
  if (auto refused = refused_unread(text)) return fail(std::move(*refused));
  Reading reading(text);
  grammar::memory_input in(text.data(), text.data() + text.size(), "");
  try {
    tao::pegtl::parse<grammar::whole, Action>(in, reading);
  } catch (const tao::pegtl::parse_error& error) {
    return fail(reading.failure() ? *reading.failure()
                                  : syntax_failure(text, error.positions().front().byte));
  }
  if (reading.failure()) return fail(*reading.failure());
  Expression expression;
  expression.typed_ = text;
  expression.names_ = reading.names();
  expression.steps_ = reading.steps();
  return expression;
}

}  // namespace sparewright::formula
