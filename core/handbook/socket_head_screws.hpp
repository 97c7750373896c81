// Socket head cap screws: inch ASME B18.3, metric ISO 4762.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

struct SocketHeadScrew {
  std::string_view size;  // "#10", "5/16", "M8"
  quantity::Diameter body_max;
  quantity::Diameter body_min;
  quantity::Diameter head_max;  // of a plain head
  quantity::Diameter head_min;
  std::optional<quantity::Diameter> knurled_head_max;  // metric
  quantity::Length head_height_max;
  quantity::Length head_height_min;
  quantity::Length key;       // across the flats of the hexagon key
  std::string_view key_name;  // "1/4 in", "6 mm"
  Source source;
};

// #4 to 1 in and M2 to M24, smallest first, inch before metric.
[[nodiscard]] std::span<const SocketHeadScrew> socket_head_screws();

// size as in read_screw_size: #10, 5/16, 5/16-18, M8. Fails as that does, or with kNotTabled.
[[nodiscard]] base::Result<SocketHeadScrew> socket_head_screw(std::string_view size);

}  // namespace sparewright::handbook
