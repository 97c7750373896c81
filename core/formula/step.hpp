// One step of a tape at given operands. Used inside this room only.
#pragma once

#include <cmath>
#include <limits>

#include "core/formula/expression.hpp"

namespace sparewright::formula {

// What a step gives, and its slopes by its one or two operands.
struct Local {
  double value = 0.0;
  double by_first = 0.0;
  double by_second = 0.0;
};

// An angle this near to a right angle is one: 90 deg is no binary fraction of a radian.
inline constexpr double kRightAngle_rad = 1e-12;

inline Local tangent(double a) {
  if (std::abs(std::cos(a)) < kRightAngle_rad) return {std::numeric_limits<double>::infinity()};
  const double t = std::tan(a);
  return {t, 1.0 + t * t};
}

// Not finite where the step cannot be done there. Here and not in a file of its own because it is most of what running a
// tape takes.
inline Local run(const Step& step, double a, double b) {
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
      if (step.constant == 2.0)
        return {a * a, 2.0 * a};  // by far the most usual; pow takes ten times as long
      return {std::pow(a, step.constant),
              step.constant == 0.0 ? 0.0 : step.constant * std::pow(a, step.constant - 1.0)};
    case Operation::kSqrt:
      return {std::sqrt(a), 0.5 / std::sqrt(a)};
    case Operation::kSin:
      return {std::sin(a), std::cos(a)};
    case Operation::kCos:
      return {std::cos(a), -std::sin(a)};
    case Operation::kTan:
      return tangent(a);
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

inline bool takes_two(Operation operation) {
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

}  // namespace sparewright::formula
