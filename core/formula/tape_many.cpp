// Running a tape for many sets of values at once, each step over all of them before the next: the loops are short and
// straight, so that the compiler can make several at a time. The same rules as in tape.cpp.
#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstddef>
#include <span>

#include "core/formula/expression.hpp"
#include "core/formula/step.hpp"

namespace sparewright::formula {
namespace {

// Of one step, for all lanes: its values, and the slopes of the last step by it.
class Lanes {
 public:
  Lanes(Formula::Room& room, std::size_t steps, std::size_t lanes)
      : room_(room.numbers), steps_(steps), lanes_(lanes) {
    room_.resize(2 * steps * lanes);
    std::fill(room_.begin() + static_cast<std::ptrdiff_t>(steps * lanes), room_.end(), 0.0);
  }
  [[nodiscard]] double* values(std::size_t step) { return room_.data() + step * lanes_; }
  [[nodiscard]] double* towards(std::size_t step) { return room_.data() + (steps_ + step) * lanes_; }

 private:
  std::vector<double>& room_;
  std::size_t steps_;
  std::size_t lanes_;
};

bool is_square(const Step& step) {
  return step.operation == Operation::kPower && step.constant == 2.0;
}

// What is usual in measuring; all else goes the slow way, one lane after the other.
void forwards(const Step& step, const double* a, const double* b, double* out, std::size_t lanes) {
  switch (step.operation) {
    case Operation::kAdd:
      for (std::size_t l = 0; l < lanes; ++l)
        out[l] = a[l] + b[l];
      return;
    case Operation::kSubtract:
      for (std::size_t l = 0; l < lanes; ++l)
        out[l] = a[l] - b[l];
      return;
    case Operation::kMultiply:
      for (std::size_t l = 0; l < lanes; ++l)
        out[l] = a[l] * b[l];
      return;
    case Operation::kDivide:
      for (std::size_t l = 0; l < lanes; ++l)
        out[l] = a[l] / b[l];
      return;
    case Operation::kSqrt:
      for (std::size_t l = 0; l < lanes; ++l)
        out[l] = std::sqrt(a[l]);
      return;
    default:
      break;
  }
  if (is_square(step)) {
    for (std::size_t l = 0; l < lanes; ++l)
      out[l] = a[l] * a[l];
    return;
  }
  for (std::size_t l = 0; l < lanes; ++l)
    out[l] = run(step, a[l], b[l]).value;
}

// out: what the step gave.
void backwards(const Step& step, const double* a, const double* b, const double* out, const double* towards,
               double* to_a, double* to_b, std::size_t lanes) {
  switch (step.operation) {
    case Operation::kAdd:
    case Operation::kSubtract: {
      const double sign = step.operation == Operation::kAdd ? 1.0 : -1.0;
      for (std::size_t l = 0; l < lanes; ++l)
        to_a[l] += towards[l];
      for (std::size_t l = 0; l < lanes; ++l)
        to_b[l] += sign * towards[l];
      return;
    }
    case Operation::kMultiply:
      for (std::size_t l = 0; l < lanes; ++l)
        to_a[l] += b[l] * towards[l];
      for (std::size_t l = 0; l < lanes; ++l)
        to_b[l] += a[l] * towards[l];
      return;
    case Operation::kSqrt:
      for (std::size_t l = 0; l < lanes; ++l)
        to_a[l] += 0.5 / out[l] * towards[l];
      return;
    default:
      break;
  }
  if (is_square(step)) {
    for (std::size_t l = 0; l < lanes; ++l)
      to_a[l] += 2.0 * a[l] * towards[l];
    return;
  }
  for (std::size_t l = 0; l < lanes; ++l) {
    const Local local = run(step, a[l], b[l]);
    to_a[l] += local.by_first * towards[l];
    if (takes_two(step.operation)) to_b[l] += local.by_second * towards[l];
  }
}

}  // namespace

void Formula::at_many(std::span<const double> values, std::size_t lanes, Room& room, std::span<double> out,
                      std::span<double> slopes) const {
  assert(values.size() == names_.size() * lanes && slopes.size() == values.size() && out.size() == lanes);
  Lanes all(room, tape_.size(), lanes);
  for (std::size_t i = 0; i < tape_.size(); ++i) {
    const Step& step = tape_[i];
    if (step.operation == Operation::kConstant) {
      std::fill_n(all.values(i), lanes, step.constant);
    } else if (step.operation == Operation::kName) {
      std::copy_n(values.data() + step.first * lanes, lanes, all.values(i));
    } else {
      const double* second = takes_two(step.operation) ? all.values(step.second) : all.values(step.first);
      forwards(step, all.values(step.first), second, all.values(i), lanes);
    }
  }
  std::copy_n(all.values(tape_.size() - 1), lanes, out.data());
  std::fill(slopes.begin(), slopes.end(), 0.0);
  std::fill_n(all.towards(tape_.size() - 1), lanes, 1.0);
  for (std::size_t i = tape_.size(); i-- > 0;) {
    const Step& step = tape_[i];
    if (step.operation == Operation::kConstant) continue;
    const double* towards = all.towards(i);
    if (step.operation == Operation::kName) {
      double* slope = slopes.data() + step.first * lanes;
      for (std::size_t l = 0; l < lanes; ++l)
        slope[l] += towards[l];
      continue;
    }
    const std::size_t second = takes_two(step.operation) ? step.second : step.first;
    backwards(step, all.values(step.first), all.values(second), all.values(i), towards,
              all.towards(step.first), all.towards(second), lanes);
  }
}

}  // namespace sparewright::formula
