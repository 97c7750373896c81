// Sheet and wire gauges: a number to a thickness and back. The same number means another thickness in each
// system.
#pragma once

#include <string>
#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

enum class GaugeSystem {
  kAmericanWire,  // Brown & Sharpe: copper wire, sheet of brass, copper and aluminium; 0000 (written 4/0) to 40
  kManufacturersStandard,  // steel sheet; 3 to 30
};
[[nodiscard]] std::string_view name_of(GaugeSystem system);

struct Gauge {
  std::string number;  // "16", "2/0"
  quantity::Length thickness;
  Source source;
};

// The thickness of a gauge. American wire: 0.005 in x 92^((36 - n) / 39), 4/0 being n = -3 (ASTM B258, from
// memory). Manufacturers' standard: ounces a square foot over 16 x 41.82 lb a square foot and inch (from
// memory). Fails with kNameUnknown, saying which numbers there are.
[[nodiscard]] base::Result<Gauge> gauge_thickness(GaugeSystem system, std::string_view number);

// The gauge nearest to a thickness, and how far the thickness is from it.
struct NearGauge {
  Gauge gauge;
  quantity::Length off;  // measured less gauge
};
// Fails with kSizeNotPositive.
[[nodiscard]] base::Result<NearGauge> nearest_gauge(GaugeSystem system, quantity::Length thickness);

}  // namespace sparewright::handbook
