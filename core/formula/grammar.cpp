// The grammar of typed formulas: reads the text into steps in the order they run.
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <tao/pegtl.hpp>
#include <utility>

#include "core/formula/expression.hpp"
#include "core/quantity/typed.hpp"

namespace sparewright::formula {
namespace {

using base::Code;
using base::fail;
using base::Failure;
using base::Result;

namespace grammar {

using namespace tao::pegtl;  // NOLINT(google-build-using-namespace): the grammar reads as one

struct expression;

struct gap : star<space> {};
template <char C>
struct mark : seq<gap, one<C>, gap> {};

struct digits : plus<digit> {};
struct decimal : sor<seq<digits, opt<seq<one<'.'>, star<digit>>>>, seq<one<'.'>, digits>> {};
struct fraction : seq<digits, one<'/'>, digits, not_at<one<'.'>>> {};
struct mixed : seq<digits, one<'-'>, fraction> {};

// A unit is letters (in, mm, deg), a sign (", °), or letters with a power or a slash (in2, mm/rev).
struct unit_letters : plus<sor<alpha, utf8::one<0xB0, 0xB5, 0x3BC, 0xB2, 0xB3>>> {};
struct unit_word : seq<unit_letters, opt<digit>, opt<seq<one<'/'>, unit_letters, opt<digit>>>> {};
struct inch_mark : one<'"'> {};
struct written_unit : sor<inch_mark, unit_word> {};
struct magnitude : sor<mixed, fraction, decimal> {};
struct plain_magnitude : decimal {};  // after * / and ^, where 3/8 would be read as two operations
struct number : seq<magnitude, opt<seq<star<blank>, written_unit>>> {};
struct factor_number : seq<plain_magnitude, opt<seq<star<blank>, written_unit>>> {};

struct identifier : seq<sor<alpha, one<'_'>>, star<sor<alnum, one<'_', '.'>>>> {};
struct variable : seq<identifier> {};
struct call_open : seq<identifier, gap, one<'('>> {};
struct call : if_must<call_open, gap, expression, star<mark<','>, expression>, gap, one<')'>> {};
struct group : if_must<one<'('>, gap, expression, gap, one<')'>> {};
struct first_primary : sor<number, call, group, variable> {};
struct later_primary : sor<factor_number, call, group, variable> {};

struct exponent : seq<opt<one<'-'>>, digits> {};
struct power_mark : seq<gap, one<'^'>, gap> {};
struct to_power : if_must<power_mark, exponent> {};
template <typename Primary>
struct powered : seq<Primary, opt<to_power>> {};

struct minus_sign : sor<one<'-'>, string<'\xE2', '\x88', '\x92'>> {};
struct negated;
struct first_factor : sor<negated, powered<first_primary>> {};
struct negated : if_must<seq<minus_sign, gap>, first_factor> {};
struct later_factor : sor<negated, powered<later_primary>> {};

struct times : if_must<mark<'*'>, later_factor> {};
struct over : if_must<mark<'/'>, later_factor> {};
struct term : seq<first_factor, star<sor<times, over>>> {};
struct plus_term : if_must<mark<'+'>, term> {};
struct minus_mark : seq<gap, minus_sign, gap> {};
struct minus_term : if_must<minus_mark, term> {};
struct expression : seq<term, star<sor<plus_term, minus_term>>> {};
struct whole : seq<gap, must<expression, gap, eof>> {};

}  // namespace grammar

struct Call {
  std::string name;
  std::size_t waiting_before = 0;
};

struct ReadingState {
  std::vector<std::string> names;
  std::vector<Step> steps;
  std::vector<std::optional<quantity::Unit>> units;
  std::vector<bool> fractions;
  std::vector<std::size_t> waiting;                         // steps whose value has not been used yet
  std::vector<Call> calls;                                  // functions whose arguments are being read
  std::optional<Failure> failure;                           // the first one met inside an action

  void push(Step step, std::optional<quantity::Unit> unit = std::nullopt, bool is_fraction = false) {
    waiting.push_back(steps.size());
    steps.push_back(step);
    units.push_back(unit);
    fractions.push_back(is_fraction);
  }
  std::size_t pop() {
    const std::size_t step = waiting.back();
    waiting.pop_back();
    return step;
  }
  void note(Code code, base::Span span, std::string_view found, std::string_view accepted) {
    if (failure) return;
    Failure f;
    f.code = code;
    f.subject = "the formula";
    f.found = found;
    f.accepted = accepted;
    f.span = span;
    failure = std::move(f);
  }
  void unary(Operation operation) {
    const std::size_t a = pop();
    push({operation, a, 0, 0.0, steps[a].span});
  }
  void binary(Operation operation) {
    const std::size_t b = pop();
    const std::size_t a = pop();
    push({operation, a, b, 0.0, {steps[a].span.offset, steps[b].span.end() - steps[a].span.offset}});
  }
};

template <typename Input>
base::Span span_of(const Input& in) {
  return {in.position().byte, in.size()};
}

template <typename Rule>
struct Action : tao::pegtl::nothing<Rule> {};

// The kind whose unit is spelled so; a length first, so that " is inch.
std::optional<quantity::Unit> any_unit(std::string_view spelling) {
  if (const auto unit = quantity::find_unit(quantity::Kind::kLength, spelling)) return unit;
  for (int k = 0; k < quantity::kKinds; ++k) {
    if (const auto unit = quantity::find_unit(static_cast<quantity::Kind>(k), spelling)) return unit;
  }
  return std::nullopt;
}

// Where the number ends and the unit starts.
std::size_t magnitude_length(std::string_view text) {
  return std::min(text.find_first_not_of("0123456789./-"), text.size());
}

void read_number_step(std::string_view text, base::Span span, ReadingState& state) {
  const std::string_view digits = text.substr(0, magnitude_length(text));
  std::string_view unit_text = text.substr(digits.size());
  unit_text.remove_prefix(std::min(unit_text.find_first_not_of(" \t"), unit_text.size()));
  const bool is_fraction = digits.find('/') != std::string_view::npos;
  // A count of millimetres is the plain count: the base unit is 1 mm.
  const auto count = quantity::read_number(fmt::format("{} mm", digits), quantity::Kind::kLength, std::nullopt);
  if (!count) {
    state.note(count.error().code, span, text, count.error().accepted);
    return state.push({Operation::kConstant, 0, 0, 0.0, span});
  }
  std::optional<quantity::Unit> unit;
  if (!unit_text.empty()) {
    unit = any_unit(unit_text);
    if (!unit) {
      state.note(Code::kUnitUnknown, {span.end() - unit_text.size(), unit_text.size()}, unit_text,
                 fmt::format("{}, deg; between a number and a name write * or +",
                             quantity::spellings_of(quantity::Kind::kLength)));
    } else if (unit->offset != 0.0) {
      state.note(Code::kUnitUnknown, span, unit_text, "a unit without an offset");
    }
  } else if (is_fraction && digits.find('-') != std::string_view::npos) {
    state.note(Code::kFormulaSyntax, span, digits,
               fmt::format("{} in for the mixed number, or blanks around the minus", digits));
  }
  state.push({Operation::kConstant, 0, 0, count->base, span}, unit, is_fraction);
}

template <>
struct Action<grammar::number> {
  template <typename Input>
  static void apply(const Input& in, ReadingState& state) {
    read_number_step(in.string_view(), span_of(in), state);
  }
};
template <>
struct Action<grammar::factor_number> : Action<grammar::number> {};

template <>
struct Action<grammar::variable> {
  template <typename Input>
  static void apply(const Input& in, ReadingState& state) {
    const std::string name = in.string();
    if (name == "pi") return state.push({Operation::kConstant, 0, 0, std::numbers::pi, span_of(in)}, quantity::unit::unity);
    const auto known = std::find(state.names.begin(), state.names.end(), name);
    const auto index = static_cast<std::size_t>(known - state.names.begin());
    if (known == state.names.end()) state.names.push_back(name);
    state.push({Operation::kName, index, 0, 0.0, span_of(in)});
  }
};

struct Function {
  std::string_view name;
  Operation operation;
  std::size_t arguments;
};
constexpr std::array kFunctions{
    Function{"sqrt", Operation::kSqrt, 1}, Function{"sin", Operation::kSin, 1},   Function{"cos", Operation::kCos, 1},
    Function{"tan", Operation::kTan, 1},   Function{"asin", Operation::kAsin, 1}, Function{"acos", Operation::kAcos, 1},
    Function{"atan", Operation::kAtan, 1}, Function{"abs", Operation::kAbs, 1},   Function{"min", Operation::kMin, 2},
    Function{"max", Operation::kMax, 2},
};
constexpr std::string_view kFunctionNames = "sqrt, sin, cos, tan, asin, acos, atan, abs, min, max";

template <>
struct Action<grammar::call_open> {
  template <typename Input>
  static void apply(const Input& in, ReadingState& state) {
    const std::string text = in.string();
    state.calls.push_back({text.substr(0, text.find_first_of(" \t\r\n(")), state.waiting.size()});
  }
};

template <>
struct Action<grammar::call> {
  template <typename Input>
  static void apply(const Input& in, ReadingState& state) {
    const Call call = state.calls.back();
    state.calls.pop_back();
    const std::size_t given = state.waiting.size() - call.waiting_before;
    const auto* function =
        std::find_if(kFunctions.begin(), kFunctions.end(), [&](const Function& f) { return f.name == call.name; });
    const base::Span span = span_of(in);
    if (function == kFunctions.end() || function->arguments != given) {
      state.note(Code::kFormulaSyntax, span, in.string_view(),
                 fmt::format("{}; min and max take two numbers, the others one", kFunctionNames));
      state.waiting.resize(call.waiting_before);
      return state.push({Operation::kConstant, 0, 0, 0.0, span});
    }
    if (given == 2) {
      state.binary(function->operation);
    } else {
      state.unary(function->operation);
    }
    state.steps.back().span = span;
  }
};

template <>
struct Action<grammar::group> {
  template <typename Input>
  static void apply(const Input& in, ReadingState& state) {
    state.steps[state.waiting.back()].span = span_of(in);
  }
};

template <>
struct Action<grammar::to_power> {
  template <typename Input>
  static void apply(const Input& in, ReadingState& state) {
    const std::string_view text = in.string_view();
    const auto digits = text.find_first_of("-0123456789");
    const auto exponent = quantity::read_number(text.substr(digits), quantity::Kind::kNumber, std::nullopt);
    if (!exponent || std::abs(exponent->base) > kLargestExponent) {
      state.note(Code::kFormulaSyntax, span_of(in), text, "a whole exponent from -6 to 6");
      return;
    }
    state.unary(Operation::kPower);
    state.steps.back().constant = exponent->base;
    state.steps.back().span.length = span_of(in).end() - state.steps.back().span.offset;
  }
  static constexpr double kLargestExponent = 6.0;
};

template <Operation kOperation>
struct BinaryAction {
  template <typename Input>
  static void apply(const Input& /*in*/, ReadingState& state) {
    state.binary(kOperation);
  }
};
template <>
struct Action<grammar::times> : BinaryAction<Operation::kMultiply> {};
template <>
struct Action<grammar::over> : BinaryAction<Operation::kDivide> {};
template <>
struct Action<grammar::plus_term> : BinaryAction<Operation::kAdd> {};
template <>
struct Action<grammar::minus_term> : BinaryAction<Operation::kSubtract> {};
template <>
struct Action<grammar::negated> {
  template <typename Input>
  static void apply(const Input& in, ReadingState& state) {
    state.unary(Operation::kNegate);
    state.steps.back().span = span_of(in);
  }
};

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
  at = std::min(at, text.size());
  f.found = at < text.size() ? text.substr(at) : std::string_view("its end");
  f.accepted = fmt::format("numbers, names, + - * / ^, brackets, and {}", kFunctionNames);
  f.span = base::Span{at, text.size() - at};
  return f;
}

}  // namespace

Result<Expression> Expression::read(std::string_view text) {
  if (text.find_first_not_of(" \t\r\n") == std::string_view::npos) return fail(Code::kEmptyValue, text, {}, "a formula");
  if (text.size() > kLongestFormula || deepest_nesting(text) > kDeepestNesting) {
    return fail(Code::kTooMany, "it is too long or nested too deep", "at most 500 characters and 40 brackets deep",
                "the formula");
  }
  ReadingState state;
  grammar::memory_input in(text.data(), text.data() + text.size(), "");
  try {
    if (!tao::pegtl::parse<grammar::whole, Action>(in, state)) return fail(syntax_failure(text, 0));
  } catch (const tao::pegtl::parse_error& error) {
    return fail(state.failure ? *state.failure : syntax_failure(text, error.positions().front().byte));
  }
  if (state.failure) return fail(*state.failure);
  Expression expression;
  expression.typed_ = text;
  expression.names_ = std::move(state.names);
  expression.steps_ = std::move(state.steps);
  expression.units_ = std::move(state.units);
  expression.fractions_ = std::move(state.fractions);
  return expression;
}

}  // namespace sparewright::formula
