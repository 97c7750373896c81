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
    : before_(before), body_(body), volume_(metal_within(before, body, effort_)) {
  while (!sure() && more()) {
  }
}

bool ExpectedBite::agrees_with(double taken_mm3) {
  for (;;) {
    const double small_mm3 = kAgreeShare * volume_.volume_mm3 + kNothing_mm3;
    if (std::abs(taken_mm3 - volume_.volume_mm3) <= volume_.error_mm3 + small_mm3) return true;
    if (!more()) return false;
  }
}

bool ExpectedBite::sure() const {
  return volume_.error_mm3 <= kSureShare * volume_.volume_mm3 + kNothing_mm3;
}

// With the next more rays, where there are more.
bool ExpectedBite::more() {
  if (!more_than(effort_, effort_)) return false;
  volume_ = metal_within(before_, body_, effort_);
  return true;
}

}  // namespace sparewright::solid
