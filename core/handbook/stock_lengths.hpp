// Lengths screws are sold in. From memory of ASME B18.3 and ISO 888.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"
#include "core/quantity/unit.hpp"

namespace sparewright::handbook {

inline constexpr Source kStockLengths{
    "standard lengths of screws: inch by 1/16 to 1/4, 1/8 to 1, 1/4 to 3-1/2, 1/2 to 7, 1 to 10 in (ASME "
    "B18.3); metric ISO 888",
    "", Basis::kFromMemory};

// 1/8 to 10 in, or 2 to 200 mm, shortest first. Not every size is sold in every length.
[[nodiscard]] std::vector<quantity::Length> stock_lengths(quantity::UnitSystem system);

// A screw through parts of a thickness (washers with them) into a tapped hole.
struct ScrewLength {
  quantity::Length length;      // under the head, of a screw with a head that stands on top
  quantity::Length engagement;  // what is in the hole: length less thickness, points and chamfers with it
  std::optional<quantity::Length> shorter;  // the next stock length below
  Source source;
};

// The shortest stock length that reaches at least `engagement` into the hole. Fails with kNotTabled where
// none is as long, with kOutsideDomain where that screw would reach deeper than `deepest`, and with
// kSizeNotPositive for a thickness or engagement that is not more than zero.
[[nodiscard]] base::Result<ScrewLength> screw_length(quantity::UnitSystem system, quantity::Length thickness,
                                                     quantity::Length engagement,
                                                     std::optional<quantity::Length> deepest = {});

}  // namespace sparewright::handbook
