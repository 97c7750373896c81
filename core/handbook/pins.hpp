// Dowel pins and slotted spring pins, and the holes they want. Inch ASME B18.8.2, metric ISO 8734 and 8752.
// Sizes and rules from memory: no page that could be read showed them. Taper pins are with the tapers.
#pragma once

#include <span>
#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/handbook/thread_limits.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// A hardened ground pin of the standard series and the hole it is pressed into.
struct DowelPin {
  std::string_view name;  // "1/4 in", "6 mm"
  quantity::Diameter nominal;
  DiameterRange pin;
  DiameterRange pressed_hole;
  quantity::Length oversize;  // how much larger the pins for worn or mended holes are; zero for metric
  Source source;
  Source limits_source;
};

// Names as shafts are written: "1/4 in", "1/4", "6 mm". Fails as read_shaft_size does, or with kNotTabled.
[[nodiscard]] base::Result<DowelPin> dowel_pin(std::string_view size);

struct SpringPin {
  std::string_view name;
  quantity::Diameter nominal;
  DiameterRange hole;
  Source source;
};
[[nodiscard]] base::Result<SpringPin> spring_pin(std::string_view size);

}  // namespace sparewright::handbook
