// Hexagon keys, the bent ones: how long their arms are.
#pragma once

#include <optional>

#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

inline constexpr Source kHexagonKeys{"arms of hexagon keys: ASME B18.3 (inch), ISO 2936 (metric)", "",
                                     Basis::kFromMemory};

struct HexagonKey {
  quantity::Length across;     // flats
  quantity::Length short_arm;  // over the bend
  quantity::Length long_arm;   // of the short series
  Source source;
};

// By the size across flats, 1/16 to 3/4 in and 1.5 to 19 mm; none of other sizes.
[[nodiscard]] std::optional<HexagonKey> hexagon_key(quantity::Length across);

}  // namespace sparewright::handbook
