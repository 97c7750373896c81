// Woodruff keys and their keyseats (ASME B17.2), numbers 202 to 1212.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// The last two figures of the number are eighths of an inch of diameter, those before 32nds of width.
struct WoodruffKey {
  std::string_view number;  // "606", "202.5"
  quantity::Length width;
  quantity::Diameter diameter;  // of the key and of its cutter
  quantity::Length height_max;
  quantity::Length height_min;
  Source source;
};

[[nodiscard]] std::span<const WoodruffKey> woodruff_keys();

// Takes 606 and #606. Fails with kNameUnknown, naming the nearest.
[[nodiscard]] base::Result<WoodruffKey> woodruff_key(std::string_view number);

// Keys whose width is suggested for a shaft, in the order of the table; empty where none is (7/32 in wide
// keys never are).
[[nodiscard]] std::vector<WoodruffKey> woodruff_keys_for(quantity::Diameter shaft);

// Depths by kWoodruffGeometry; every depth may be 0.005 in more and no less (from memory of B17.2).
struct WoodruffKeyseat {
  WoodruffKey key;
  quantity::Diameter shaft;
  quantity::Length arc_height;     // from the crest of the shaft to the edges of the keyseat
  quantity::Length side_depth;     // in the shaft, below the edges at the deepest place
  quantity::Length crest_depth;    // the same below the crest: what is fed down from touching the shaft
  quantity::Length over_back;      // bottom of the keyseat to the opposite side of the shaft
  quantity::Length length;         // of the keyseat at its edges, cut with a cutter of the key's diameter
  quantity::Length hub_depth;      // in the hub, at its side
  quantity::Length hub_over_back;  // bottom of the hub's keyseat to the opposite side of the bore
  quantity::Length deeper;         // tolerance of the depths, + only: over_back may be that much less
  Source depth_source;
  Source tolerance_source;
};

// Fails with kOutsideDomain where the key is as wide as the shaft or the keyseat goes past its middle.
[[nodiscard]] base::Result<WoodruffKeyseat> woodruff_keyseat(const WoodruffKey& key,
                                                             quantity::Diameter shaft);

}  // namespace sparewright::handbook
