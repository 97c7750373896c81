// Spotfaces under hexagon heads and washers.
#pragma once

#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/clearance_holes.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

inline constexpr Source kSpotface{
    "the largest head or washer, wherever the screw stands in its clearance hole; a socket wrench needs more",
    "", Basis::kDerived};

enum class SpotfaceUnder { kHexHead, kWasher };

struct Spotface {
  quantity::Diameter seat;      // across the corners of the head, or over the washer
  quantity::Length play;        // of the screw in its hole, on the diameter
  quantity::Diameter diameter;  // the least: seat and play
  Source seat_source;
  Source rule;
};

// size as in read_screw_size. Fails with kNotTabled where head, washer or hole is not.
[[nodiscard]] base::Result<Spotface> spotface(SpotfaceUnder under, std::string_view size,
                                              ClearanceFit fit = ClearanceFit::kNormal);

}  // namespace sparewright::handbook
