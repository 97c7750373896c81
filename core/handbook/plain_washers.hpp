// Plain washers: inch type A of ASME B18.21.1, metric ISO 7089.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// Narrow is the trade's SAE, wide its USS; numbered sizes have the standard one alone.
enum class WasherSeries { kStandard, kNarrow, kWide, kMetric };
[[nodiscard]] std::string_view name_of(WasherSeries series);  // "type A narrow (SAE)"

struct PlainWasher {
  WasherSeries series = WasherSeries::kStandard;
  std::string_view size;  // "#10", "5/16", "M8"
  quantity::Diameter inside;
  quantity::Diameter outside;
  quantity::Length thickness;
  std::optional<quantity::Length> thickness_max;
  std::optional<quantity::Length> thickness_min;
  Source source;
};

[[nodiscard]] std::span<const PlainWasher> plain_washers();

// The usual washer of a size: standard, narrow or metric. size as in read_screw_size. Fails as that does, or
// with kNotTabled.
[[nodiscard]] base::Result<PlainWasher> plain_washer(std::string_view size);
[[nodiscard]] base::Result<PlainWasher> plain_washer(WasherSeries series, std::string_view size);

}  // namespace sparewright::handbook
