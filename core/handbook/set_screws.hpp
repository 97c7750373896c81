// Socket set screws: inch ASME B18.3, metric ISO 4026 to 4029. From memory: no page that could be read showed
// them.
#pragma once

#include <span>
#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

struct SetScrew {
  std::string_view size;       // "#10", "5/16", "M8"
  quantity::Length key;        // across the flats of the hexagon key
  std::string_view key_name;   // "5/32 in", "4 mm"
  quantity::Diameter cup_max;  // of the cup point
  quantity::Diameter dog_max;  // of the full dog point: what its hole must pass
  Source source;
};

[[nodiscard]] std::span<const SetScrew> set_screws();

// size as in read_screw_size. Fails as that does, or with kNotTabled.
[[nodiscard]] base::Result<SetScrew> set_screw(std::string_view size);

}  // namespace sparewright::handbook
