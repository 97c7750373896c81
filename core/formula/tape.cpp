// Running a tape forwards for the value and backwards for the slopes (reverse mode; named from memory: Griewank and
// Walther, Evaluating Derivatives, 2nd ed., section 3.2).
#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <cstddef>
#include <span>
#include <vector>

#include "core/formula/excerpt.hpp"
#include "core/formula/expression.hpp"
#include "core/formula/step.hpp"

namespace sparewright::formula {
namespace {

using base::Code;

// What one step gives, and the slope of the last step by it. Nothing in it is set before the step is run.
struct Done {
  double value;
  double by_first;
  double by_second;
  double towards;
};

// A formula of up to so many steps finds room for its numbers on the stack.
constexpr std::size_t kNearSteps = 24;

// A difference with itself is 0 only where a number is finite.
bool is_finite(const Local& l) {
  return (l.value - l.value) + (l.by_first - l.by_first) + (l.by_second - l.by_second) == 0.0;
}

bool are_finite(std::span<const double> numbers) {
  double left = 0.0;
  for (const double number : numbers)
    left += number - number;
  return left == 0.0;
}

bool takes_none(Operation operation) {
  return operation == Operation::kConstant || operation == Operation::kName;
}

base::Failure outside_domain(base::Span span, std::string_view typed) {
  base::Failure f;
  f.code = Code::kOutsideDomain;
  f.subject = excerpt(typed, span);
  f.found = "these values";
  f.span = span;
  return f;
}

// A value or a slope that is not finite is refused where it arises.
base::Failure not_finite(const Step& step, double a, double b, std::string_view typed) {
  const bool by_zero = (step.operation == Operation::kDivide && b == 0.0) ||
                       (step.operation == Operation::kPower && a == 0.0 && step.constant < 0.0);
  base::Failure f = outside_domain(step.span, typed);
  if (by_zero) {
    f.code = Code::kDividesByZero;
    f.found = f.subject;
  }
  return f;
}

// The slope of the last step by each name.
void find_slopes(const std::vector<Step>& tape, std::span<Done> done, std::span<double> slopes) {
  std::fill(slopes.begin(), slopes.end(), 0.0);
  for (Done& each : done)
    each.towards = 0.0;
  done.back().towards = 1.0;
  for (std::size_t i = tape.size(); i-- > 0;) {
    const Step& step = tape[i];
    const Done& local = done[i];
    if (step.operation == Operation::kName) {
      slopes[step.first] += local.towards;
    } else if (!takes_none(step.operation)) {
      done[step.first].towards += local.towards * local.by_first;
      if (takes_two(step.operation)) done[step.second].towards += local.towards * local.by_second;
    }
  }
}

}  // namespace

base::Result<Formula::Value> Formula::at(std::span<const double> values) const {
  Value result{0.0, std::vector<double>(values.size())};
  const auto value = at(values, result.slopes);
  if (!value) return base::fail(value.error());
  result.value = *value;
  return result;
}

base::Result<double> Formula::at(std::span<const double> values, std::span<double> slopes) const {
  assert(values.size() == names_.size() && slopes.size() == names_.size());
  std::array<Done, kNearSteps> near;  // NOLINT(*-member-init): nothing in it is read before it is written
  std::vector<Done> far(tape_.size() > kNearSteps ? tape_.size() : 0);
  const std::span done = far.empty() ? std::span(near).first(tape_.size()) : std::span(far);
  for (std::size_t i = 0; i < tape_.size(); ++i) {
    const Step& step = tape_[i];
    if (takes_none(step.operation)) {
      done[i].value = step.operation == Operation::kName ? values[step.first] : step.constant;
      continue;
    }
    const double a = done[step.first].value;
    const double b = takes_two(step.operation) ? done[step.second].value : 0.0;
    const Local local = run(step, a, b);
    done[i].value = local.value;
    done[i].by_first = local.by_first;
    done[i].by_second = local.by_second;
    if (!is_finite(local)) return base::fail(not_finite(step, a, b, typed_));
  }
  find_slopes(tape_, done, slopes);
  if (!are_finite(values) || !are_finite(slopes))
    return base::fail(outside_domain({0, typed_.size()}, typed_));
  return done.back().value;
}

base::Fingerprint Formula::fingerprint() const {
  base::Hasher h;
  h.add(typed_).add(static_cast<int>(kind_));
  for (const std::string& name : names_)
    h.add(name);
  for (const Step& step : tape_) {
    h.add(static_cast<int>(step.operation)).add(static_cast<std::uint64_t>(step.first));
    h.add(static_cast<std::uint64_t>(step.second)).add(step.constant);
  }
  return h.done();
}

}  // namespace sparewright::formula
