// What the grammar makes of a formula: steps in the order they run.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/place.hpp"
#include "core/base/result.hpp"
#include "core/formula/expression.hpp"

namespace sparewright::formula {

// Where a number stands in its product.
enum class Standing { kFirst, kAfterTimes, kAfterOver };

// Takes the parts of a formula in the order they end in the text, the inner ones first. Spans are into the
// text. After a failure it goes on with dummies, so that the grammar need not care; only the first failure is
// kept.
class Reading {
 public:
  explicit Reading(std::string_view text) : text_(text) {}

  void magnitude(base::Span span) { magnitude_ = span; }
  [[nodiscard]] bool known_unit(base::Span span);  // takes it only where it is one
  void unit(base::Span span);
  void number(base::Span span, Standing standing);  // the magnitude and unit just taken
  void name(base::Span span);
  void open_call(base::Span span);   // "sqrt ("
  void close_call(base::Span span);  // all of it
  void bracket(base::Span span);
  void negate(base::Span span);
  void power(base::Span span);  // "^2", of the value last read
  void binary(Operation operation);

  [[nodiscard]] const std::optional<base::Failure>& failure() const { return failure_; }
  [[nodiscard]] std::vector<std::string> names() { return std::move(names_); }
  [[nodiscard]] std::vector<TypedStep> steps() { return std::move(steps_); }

 private:
  struct Call {
    std::string_view name;
    std::size_t waiting_before = 0;
  };

  [[nodiscard]] std::string_view piece(base::Span span) const {
    return text_.substr(span.offset, span.length);
  }
  [[nodiscard]] bool is_whole_text(base::Span span) const;
  void push(const TypedStep& step);
  std::uint16_t pop();
  void unary(Operation operation, base::Span span, double constant = 0.0);
  void note(base::Code code, base::Span span, std::string accepted, std::string_view subject = "the formula");
  [[nodiscard]] bool has_two_readings(base::Span span, Standing standing, bool has_unit) const;
  void note_two_readings(base::Span span, Standing standing);

  std::string_view text_;
  std::vector<std::string> names_;
  std::vector<TypedStep> steps_;
  std::vector<std::uint16_t> waiting_;  // steps whose value has not been used yet
  std::vector<Call> calls_;             // functions whose arguments are being read
  base::Span magnitude_;
  std::optional<quantity::Unit> unit_;
  std::optional<base::Failure> failure_;
};

// "sqrt, sin, ...": for the accepted line of a message.
[[nodiscard]] std::string_view function_names();

}  // namespace sparewright::formula
