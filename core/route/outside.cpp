#include "core/route/outside.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sparewright::route {
namespace {

constexpr double kNothing_mm = 1e-6;  // a step shorter than this is none

}  // namespace

Outside::Outside(double from_mm, double to_mm, const ledger::Figure& diameter) {
  if (to_mm - from_mm > kNothing_mm) steps_.push_back({from_mm, to_mm, &diameter});
}

void Outside::turn(double from_mm, double to_mm, const ledger::Figure& diameter) {
  if (!diameter.known()) return;
  const double low = std::min(from_mm, to_mm);
  const double high = std::max(from_mm, to_mm);
  std::vector<Step> turned;
  const auto add = [&](double from, double to, const ledger::Figure* has) {
    if (to - from > kNothing_mm) turned.push_back({from, to, has});
  };
  for (const Step& step : steps_) {
    if (step.diameter->value <= diameter.value) {
      turned.push_back(step);
      continue;
    }
    add(step.from_mm, std::min(step.to_mm, low), step.diameter);
    add(std::max(step.from_mm, low), std::min(step.to_mm, high), &diameter);
    add(std::max(step.from_mm, high), step.to_mm, step.diameter);
  }
  steps_ = std::move(turned);
}

void Outside::cut_off(double at_mm, bool above) {
  std::vector<Step> left;
  for (Step step : steps_) {
    (above ? step.to_mm : step.from_mm) = above ? std::min(step.to_mm, at_mm) : std::max(step.from_mm, at_mm);
    if (step.to_mm - step.from_mm > kNothing_mm) left.push_back(step);
  }
  steps_ = std::move(left);
}

const ledger::Figure* Outside::largest(double from_mm, double to_mm) const {
  const double low = std::min(from_mm, to_mm);
  const double high = std::max(from_mm, to_mm);
  const ledger::Figure* found = nullptr;
  for (const Step& step : steps_) {
    if (step.to_mm <= low + kNothing_mm || step.from_mm >= high - kNothing_mm) continue;
    if (found == nullptr || step.diameter->value > found->value) found = step.diameter;
  }
  return found;
}

double Outside::low_mm() const {
  return steps_.empty() ? std::nan("") : steps_.front().from_mm;
}

double Outside::high_mm() const {
  return steps_.empty() ? std::nan("") : steps_.back().to_mm;
}

}  // namespace sparewright::route
