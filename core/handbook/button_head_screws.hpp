// Button head socket screws: inch ASME B18.3, metric ISO 7380-1. From memory: no page that could be read
// showed them.
#pragma once

#include <span>
#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

struct ButtonHeadScrew {
  std::string_view size;  // "#10", "5/16", "M8"
  quantity::Diameter head_max;
  quantity::Length head_height_max;
  quantity::Length key;       // across the flats of the hexagon key
  std::string_view key_name;  // "5/32 in", "5 mm"
  Source source;
};

[[nodiscard]] std::span<const ButtonHeadScrew> button_head_screws();

// size as in read_screw_size. Fails as that does, or with kNotTabled.
[[nodiscard]] base::Result<ButtonHeadScrew> button_head_screw(std::string_view size);

}  // namespace sparewright::handbook
