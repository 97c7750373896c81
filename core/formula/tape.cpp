// Running a tape forwards for the value and backwards for the slopes (reverse mode; Griewank and Walther, Evaluating
// Derivatives, 2nd ed., section 3.2).
#include <cmath>
#include <limits>

#include "core/formula/expression.hpp"

namespace sparewright::formula {
namespace {

using base::Code;

// What one step gives, and its slopes by its one or two operands.
struct Local {
  double value = 0.0;
  double by_first = 0.0;
  double by_second = 0.0;
};

Local run(const Step& step, double a, double b) {
  switch (step.operation) {
    case Operation::kConstant:
      return {step.constant};
    case Operation::kName:
      return {a};
    case Operation::kAdd:
      return {a + b, 1.0, 1.0};
    case Operation::kSubtract:
      return {a - b, 1.0, -1.0};
    case Operation::kMultiply:
      return {a * b, b, a};
    case Operation::kDivide:
      return {a / b, 1.0 / b, -a / (b * b)};
    case Operation::kNegate:
      return {-a, -1.0};
    case Operation::kPower:
      return {std::pow(a, step.constant),
              step.constant == 0.0 ? 0.0 : step.constant * std::pow(a, step.constant - 1.0)};
    case Operation::kSqrt:
      return {std::sqrt(a), 0.5 / std::sqrt(a)};
    case Operation::kSin:
      return {std::sin(a), std::cos(a)};
    case Operation::kCos:
      return {std::cos(a), -std::sin(a)};
    case Operation::kTan:
      return {std::tan(a), 1.0 + std::tan(a) * std::tan(a)};
    case Operation::kAsin:
      return {std::asin(a), 1.0 / std::sqrt(1.0 - a * a)};
    case Operation::kAcos:
      return {std::acos(a), -1.0 / std::sqrt(1.0 - a * a)};
    case Operation::kAtan:
      return {std::atan(a), 1.0 / (1.0 + a * a)};
    case Operation::kAbs:
      return {std::abs(a), a < 0 ? -1.0 : 1.0};
    case Operation::kMin:
      return b < a ? Local{b, 0.0, 1.0} : Local{a, 1.0, 0.0};
    case Operation::kMax:
      return a < b ? Local{b, 0.0, 1.0} : Local{a, 1.0, 0.0};
  }
  return {};
}

bool takes_two(Operation operation) {
  switch (operation) {
    case Operation::kAdd:
    case Operation::kSubtract:
    case Operation::kMultiply:
    case Operation::kDivide:
    case Operation::kMin:
    case Operation::kMax:
      return true;
    default:
      return false;
  }
}

bool takes_none(Operation operation) { return operation == Operation::kConstant || operation == Operation::kName; }

}  // namespace

base::Result<Formula::Value> Formula::at(std::span<const double> values) const {
  std::vector<Local> done(tape_.size());
  for (std::size_t i = 0; i < tape_.size(); ++i) {
    const Step& step = tape_[i];
    double a = 0.0;
    if (step.operation == Operation::kName) {
      a = values[step.first];
    } else if (!takes_none(step.operation)) {
      a = done[step.first].value;
    }
    const double b = takes_two(step.operation) ? done[step.second].value : 0.0;
    done[i] = run(step, a, b);
    // A value or a slope that is not finite (x/0, sqrt at or below 0, asin beyond 1) is refused where it arises.
    if (!std::isfinite(done[i].value) || !std::isfinite(done[i].by_first) || !std::isfinite(done[i].by_second)) {
      base::Failure f;
      f.code = step.operation == Operation::kDivide ? Code::kDividesByZero : Code::kOutsideDomain;
      f.subject = typed_.substr(step.span.offset, step.span.length);
      f.found = f.code == Code::kDividesByZero ? f.subject : "these values";
      f.span = step.span;
      return base::fail(std::move(f));
    }
  }

  std::vector<double> towards(tape_.size(), 0.0);
  Value result;
  result.slopes.assign(names_.size(), 0.0);
  if (tape_.empty()) return result;
  result.value = done.back().value;
  towards.back() = 1.0;
  for (std::size_t i = tape_.size(); i-- > 0;) {
    const Step& step = tape_[i];
    if (step.operation == Operation::kName) {
      result.slopes[step.first] += towards[i];
    } else if (!takes_none(step.operation)) {
      towards[step.first] += towards[i] * done[i].by_first;
      if (takes_two(step.operation)) towards[step.second] += towards[i] * done[i].by_second;
    }
  }
  return result;
}

}  // namespace sparewright::formula
