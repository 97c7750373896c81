// Twist drills by series: number, letter, fractional inch, metric.
#pragma once

#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"
#include "core/quantity/typed.hpp"

namespace sparewright::handbook {

enum class DrillSeries { kNumber, kLetter, kFraction, kMetric };

struct Drill {
  DrillSeries series = DrillSeries::kNumber;
  std::string_view name;  // "#7", "letter F", "27/64", "6.8 mm"
  quantity::Diameter diameter;
  Source source;

  friend bool operator==(const Drill&, const Drill&) = default;
};

// The drills of one series, smallest first. Number 0.0135-0.228 in, letter 0.234-0.413 in, fraction 1/64-1 in
// by 64ths, metric 0.2-25.75 mm (BS 328).
[[nodiscard]] std::span<const Drill> drills(DrillSeries series);

// The drill a designation names. Fails with kNameUnknown (#81).
[[nodiscard]] base::Result<Drill> find_drill(const quantity::Designation& designation);

// The drill a text names: #7, letter F, F, 27/64, 27/64 in, 1 in, 6.8 mm. Decimal inches name no drill, and
// neither does a bare number: 7 may be #7 or 7 mm. Fails with kNameUnknown, naming the nearest known ones.
[[nodiscard]] base::Result<Drill> find_drill(std::string_view text);

// The nearest drills of a series on either side of a size; one that equals it (to a nanometre) stands in
// both.
struct DrillsAround {
  std::optional<Drill> at_or_below;
  std::optional<Drill> at_or_above;
};
[[nodiscard]] DrillsAround drills_around(quantity::Diameter size, DrillSeries series);

// Every drill of the series given from low to high, both included, smallest first; of equal sizes the series
// given first stands first.
[[nodiscard]] std::vector<Drill> drills_between(quantity::Diameter low, quantity::Diameter high,
                                                std::span<const DrillSeries> series);

}  // namespace sparewright::handbook
