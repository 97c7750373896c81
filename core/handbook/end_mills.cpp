#include "core/handbook/end_mills.hpp"

#include <cmath>

#include "core/handbook/lookup.hpp"
#include "core/quantity/display.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr EndMill kEndMills[] = {
#include "generated/core/handbook/end_mills.inc"
};

}  // namespace

std::span<const EndMill> end_mills() {
  return kEndMills;
}

base::Result<EndMill> end_mill(Diameter diameter) {
  for (const EndMill& one : kEndMills) {
    if (std::abs((one.diameter - diameter).base()) < kSizeSlackMm) return one;
  }
  return not_tabled("the end mill", quantity::three_ways(quantity::across(diameter)),
                    "1/8, 3/16, 1/4, 5/16, 3/8, 1/2, 5/8, 3/4, 1 in");
}

}  // namespace sparewright::handbook
