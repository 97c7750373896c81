#include "core/handbook/thread_lengths.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "core/handbook/inch_size.hpp"
#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Length;
namespace unit = quantity::unit;

constexpr Length inches(double count) {
  return Length::of(count, unit::inch);
}
constexpr Length millimetres(double count) {
  return Length::of(count, unit::millimetre);
}

base::Result<ThreadLength> of(Length wanted, Length length, const Source& source) {
  if (length <= Length{}) {
    return base::fail(base::Code::kSizeNotPositive, fmt::format("{:g} mm", length.in(unit::millimetre)), {},
                      "the length of the screw");
  }
  const Length thread = std::min(wanted, length);
  return ThreadLength{thread, length - thread, source};
}

// From 1/4 in up; a nanometre decides nothing.
bool is_fractional(const ScrewThread& thread) {
  return thread.major.base() >= inches(0.25).base() - kSizeSlackMm;
}

}  // namespace

base::Result<ThreadLength> socket_thread_length(const ScrewThread& thread, Length length) {
  const Length twice = across(thread.major) * 2.0;
  if (thread.is_metric()) return of(twice + millimetres(12), length, kSocketThreadLength);
  if (is_fractional(thread)) return of(twice + inches(0.5), length, kSocketThreadLength);
  if (thread.major < numbered_size(4))
    return not_tabled("the thread length of a socket head cap screw", thread.name, "sizes from #4 up");
  return of(thread.major < numbered_size(6) ? inches(0.75) : inches(0.88), length, kSocketThreadLength);
}

base::Result<ThreadLength> hex_thread_length(const ScrewThread& thread, Length length) {
  const Length twice = across(thread.major) * 2.0;
  if (thread.is_metric())
    return of(twice + millimetres(length > millimetres(125) ? 12 : 6), length, kHexThreadLength);
  if (!is_fractional(thread))
    return not_tabled("the thread length of a hex screw", thread.name, "sizes from 1/4 in up");
  return of(twice + inches(length > inches(6) ? 0.5 : 0.25), length, kHexThreadLength);
}

}  // namespace sparewright::handbook
