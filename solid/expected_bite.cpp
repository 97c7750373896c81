#include "solid/expected_bite.hpp"

#include <array>
#include <cmath>

#include "solid/make_solid.hpp"

namespace sparewright::solid {
namespace {

using shape::Effort;

// A tenth of a millimetre cubed: nothing that can be seen or measured, and what edge tolerances add up to.
constexpr double kNothing_mm3 = 1e-3;

bool more_than(Effort effort, Effort& next) {
  switch (effort) {
    case Effort::kQuick:
      next = Effort::kUsual;
      return true;
    case Effort::kUsual:
      next = Effort::kCareful;
      return true;
    case Effort::kCareful:
      next = Effort::kPainstaking;
      return true;
    case Effort::kPainstaking:
      return false;
  }
  return false;
}

}  // namespace

ExpectedBite::ExpectedBite(const shape::Work& before, const shape::Primitive& body)
    : before_(before), body_(body), volume_(metal_within(before, body, effort_)) {}

bool ExpectedBite::agrees_with(double taken_mm3) {
  for (;;) {
    const double small_mm3 = kAgreeShare * volume_.volume_mm3 + kNothing_mm3;
    const bool sure = volume_.error_mm3 <= kSureShare * volume_.volume_mm3 + kNothing_mm3;
    const bool agrees = std::abs(taken_mm3 - volume_.volume_mm3) <= volume_.error_mm3 + small_mm3;
    if (sure && agrees) return true;
    if (!more_than(effort_, effort_)) return agrees;
    volume_ = metal_within(before_, body_, effort_);
  }
}

}  // namespace sparewright::solid
