#include "core/formula/reading.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <utility>

#include <fmt/format.h>

#include "core/quantity/count.hpp"
#include "core/quantity/spelling.hpp"
#include "core/quantity/typed.hpp"

namespace sparewright::formula {
namespace {

using base::Code;
using base::Failure;
using base::Span;
using quantity::Kind;

constexpr double kLargestExponent = 6.0;

struct Function {
  std::string_view name;
  Operation operation;
  std::size_t arguments;
};
constexpr std::array kFunctions{
    Function{"sqrt", Operation::kSqrt, 1}, Function{"sin", Operation::kSin, 1},
    Function{"cos", Operation::kCos, 1},   Function{"tan", Operation::kTan, 1},
    Function{"asin", Operation::kAsin, 1}, Function{"acos", Operation::kAcos, 1},
    Function{"atan", Operation::kAtan, 1}, Function{"abs", Operation::kAbs, 1},
    Function{"min", Operation::kMin, 2},   Function{"max", Operation::kMax, 2},
};

// The kind whose unit is spelled so; a length first, so that " is inch.
std::optional<quantity::Unit> any_unit(std::string_view spelling) {
  if (const auto unit = quantity::find_unit(Kind::kLength, spelling)) return unit;
  for (int k = 0; k < quantity::kKinds; ++k) {
    if (const auto unit = quantity::find_unit(static_cast<Kind>(k), spelling)) return unit;
  }
  return std::nullopt;
}

}  // namespace

std::string_view function_names() {
  return "sqrt, sin, cos, tan, asin, acos, atan, abs, min, max";
}

bool Reading::is_whole_text(Span span) const {
  return piece(span) == quantity::trimmed(text_);
}

void Reading::push(const TypedStep& step) {
  waiting_.push_back(static_cast<std::uint16_t>(steps_.size()));
  steps_.push_back(step);
}

std::uint16_t Reading::pop() {
  const std::uint16_t step = waiting_.back();
  waiting_.pop_back();
  return step;
}

void Reading::unary(Operation operation, Span span, double constant) {
  const std::uint16_t operand = pop();
  push({{operation, operand, 0, constant, span}, std::nullopt, false});
}

void Reading::binary(Operation operation) {
  const std::uint16_t b = pop();
  const std::uint16_t a = pop();
  const Span first = steps_[a].step.span;
  push({{operation, a, b, 0.0, {first.offset, steps_[b].step.span.end() - first.offset}},
        std::nullopt,
        false});
}

void Reading::note(Code code, Span span, std::string accepted, std::string_view subject) {
  if (failure_) return;
  Failure f;
  f.code = code;
  f.subject = subject;
  f.found = piece(span);
  f.accepted = std::move(accepted);
  f.span = span;
  failure_ = std::move(f);
}

bool Reading::known_unit(Span span) {
  unit_ = any_unit(piece(span));
  return unit_.has_value();
}

void Reading::unit(Span span) {
  if (!known_unit(span)) {
    note(Code::kUnitUnknown, span,
         fmt::format("{}, deg; between a number and a name write * or +",
                     quantity::spellings_of(Kind::kLength)),
         "anything here");
  } else if (unit_->offset != 0.0) {
    note(Code::kUnitUnknown, span, "K: a step of 1 degC is 1 K, of 1 degF 5/9 K",
         "a difference of temperature");
  }
}

void Reading::number(Span span, Standing standing) {
  const std::string_view digits = piece(magnitude_);
  const auto unit = std::exchange(unit_, std::nullopt);
  const bool is_fraction = digits.find('/') != std::string_view::npos;
  if (is_fraction && has_two_readings(span, standing, unit.has_value())) note_two_readings(span, standing);

  double value = 0.0;
  if (auto count = quantity::read_count(digits, Kind::kNumber)) {
    value = count->value;
  } else if (!failure_) {
    failure_ = std::move(count.error());
    if (failure_->span) failure_->span->offset += magnitude_.offset;
  }
  push({{Operation::kConstant, 0, 0, value, span}, unit, is_fraction});
}

// Of the fraction just taken: 3/8, 1 3/8 or 1-3/8.
bool Reading::has_two_readings(Span span, Standing standing, bool has_unit) const {
  const std::string_view digits = piece(magnitude_);
  const std::string_view after_whole = digits.substr(digits.find_first_not_of("0123456789"));
  if (after_whole.starts_with('/')) return standing == Standing::kAfterOver;
  const bool has_dash = quantity::minus_at(after_whole) > 0;
  const bool surely_mixed =
      after_whole.starts_with('-') && (is_whole_text(span) || (has_unit && standing == Standing::kFirst));
  return has_dash && !surely_mixed;
}

void Reading::note_two_readings(Span span, Standing standing) {
  const std::string_view digits = piece(magnitude_);
  const std::string_view unit = piece({magnitude_.end(), span.end() - magnitude_.end()});
  const std::size_t slash = digits.find('/');
  const std::size_t whole_end = digits.find_first_not_of("0123456789");
  const std::string_view whole = digits.substr(0, whole_end);
  if (whole_end == slash) {
    note(Code::kTwoReadings, span,
         fmt::format("({}) to divide by the fraction, or {} / {} with blanks to divide twice", piece(span),
                     whole, digits.substr(slash + 1)));
    return;
  }
  const std::string_view fraction = digits.substr(whole_end + quantity::minus_at(digits.substr(whole_end)));
  std::string mixed = fmt::format("{}-{}{}", whole, fraction, unit.empty() ? " in" : unit);
  if (standing != Standing::kFirst) mixed = fmt::format("({})", mixed);
  note(Code::kTwoReadings, span,
       fmt::format("{} for the mixed number, or {} - {}{} with blanks for the difference", mixed, whole,
                   fraction, unit));
}

void Reading::name(Span span) {
  const std::string_view name = piece(span);
  if (name == "pi") {
    return push({{Operation::kConstant, 0, 0, std::numbers::pi, span}, quantity::unit::unity, false});
  }
  const auto known = std::find(names_.begin(), names_.end(), name);
  const auto index = static_cast<std::uint16_t>(known - names_.begin());
  if (known == names_.end()) names_.emplace_back(name);
  push({{Operation::kName, index, 0, 0.0, span}, std::nullopt, false});
}

void Reading::open_call(Span span) {
  const std::string_view text = piece(span);
  calls_.push_back({quantity::trimmed(text.substr(0, text.size() - 1)), waiting_.size()});
}

void Reading::close_call(Span span) {
  const Call call = calls_.back();
  calls_.pop_back();
  const std::size_t given = waiting_.size() - call.waiting_before;
  const auto* function = std::find_if(kFunctions.begin(), kFunctions.end(),
                                      [&](const Function& f) { return f.name == call.name; });
  if (function == kFunctions.end() || function->arguments != given) {
    note(Code::kFormulaSyntax, span,
         fmt::format("{}; min and max take two numbers, the others one", function_names()));
    waiting_.resize(call.waiting_before);
    return push({{Operation::kConstant, 0, 0, 0.0, span}, std::nullopt, false});
  }
  if (given == 2) {
    binary(function->operation);
    steps_.back().step.span = span;
  } else {
    unary(function->operation, span);
  }
}

void Reading::bracket(Span span) {
  steps_[waiting_.back()].step.span = span;
}

void Reading::negate(Span span) {
  unary(Operation::kNegate, span);
}

void Reading::power(Span span) {
  const std::string_view text = piece(span);
  const std::string_view exponent_text = text.substr(text.find_first_of("-0123456789"));
  const TypedStep& of = steps_[waiting_.back()];
  const std::string_view of_text = piece(of.step.span);
  const Span whole{of.step.span.offset, span.end() - of.step.span.offset};
  if (!of_text.starts_with('(')) {
    if (of.is_fraction) {
      note(Code::kTwoReadings, whole,
           fmt::format("({0})^{2}, or {1}^{2}) for the power of the lower number alone", of_text,
                       std::string(of_text).replace(of_text.find('/'), 1, "/("), exponent_text));
    } else if (of.unit && of.unit->symbol != quantity::unit::unity.symbol) {
      note(Code::kTwoReadings, whole,
           fmt::format("({})^{}, or the unit with its power, such as in2 or mm3", of_text, exponent_text));
    }
  }
  const auto exponent = quantity::read_count(exponent_text, Kind::kNumber);
  if (!exponent || std::abs(exponent->value) > kLargestExponent) {
    return note(Code::kFormulaSyntax, span, "a whole exponent from -6 to 6");
  }
  unary(Operation::kPower, whole, exponent->value);
}

}  // namespace sparewright::formula
