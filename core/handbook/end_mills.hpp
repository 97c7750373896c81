// End mills: shank, length of the flutes and overall, by diameter.
#pragma once

#include <span>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

struct EndMill {
  quantity::Diameter diameter;
  quantity::Diameter shank;
  quantity::Length overall;
  quantity::Length flute_of_two;   // length of cut with two flutes
  quantity::Length flute_of_four;  // and with four
  Source source;
};

// Regular length, high-speed steel, inch; from memory throughout: check the cutter at hand.
[[nodiscard]] std::span<const EndMill> end_mills();

// The one of a diameter. Fails with kNotTabled.
[[nodiscard]] base::Result<EndMill> end_mill(quantity::Diameter diameter);

}  // namespace sparewright::handbook
