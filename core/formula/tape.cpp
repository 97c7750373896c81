// Running a tape forwards for the value and backwards for the slopes (reverse mode; named from memory: Griewank and
// Walther, Evaluating Derivatives, 2nd ed., section 3.2).
#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <cstddef>
#include <limits>
#include <memory_resource>
#include <span>
#include <vector>

#include "core/formula/excerpt.hpp"
#include "core/formula/expression.hpp"
#include "core/formula/step.hpp"

namespace sparewright::formula {
namespace {

using base::Code;

// What one step gives, and the slope of the last step by it.
struct Done : Local {
  double towards = 0.0;
};

// A formula of up to so many steps finds room for its numbers on the stack.
constexpr std::size_t kNearSteps = 16;

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
  alignas(Done) std::array<std::byte, kNearSteps * sizeof(Done)>
      near;  // NOLINT(*-member-init): nothing in it is read before it is written
  std::pmr::monotonic_buffer_resource room(near.data(), near.size());
  std::pmr::vector<Done> done(tape_.size(), &room);
  for (std::size_t i = 0; i < tape_.size(); ++i) {
    const Step& step = tape_[i];
    if (step.operation == Operation::kConstant) {
      done[i].value = step.constant;
      continue;
    }
    const double a = step.operation == Operation::kName ? values[step.first] : done[step.first].value;
    const double b = takes_two(step.operation) ? done[step.second].value : 0.0;
    static_cast<Local&>(done[i]) = run(step, a, b);
    const bool finite =
        std::isfinite(done[i].value) && std::isfinite(done[i].by_first) && std::isfinite(done[i].by_second);
    if (!finite) return base::fail(not_finite(step, a, b, typed_));
  }
  find_slopes(tape_, done, slopes);
  const bool finite = std::all_of(slopes.begin(), slopes.end(), [](double s) { return std::isfinite(s); });
  if (!finite) return base::fail(outside_domain({0, typed_.size()}, typed_));
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
