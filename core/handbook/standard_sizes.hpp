// What standard size is this? The nearest of every series to a measured size.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

enum class SizeSeries {
  kInchFraction,  // 64ths of an inch
  kNumberDrill,
  kLetterDrill,
  kMetricDrill,
  kMetric,  // whole and half millimetres
  kInchReamer,
  kDowelReamer,
  kMetricReamer,
  kBearingBore,
  kBearingOutside,
  kTaperPin,  // large ends
  kPipe,      // outsides
  kThread,    // major diameters of threads that taps are sold for
  kLast,      // one past the last; not a series
};
[[nodiscard]] std::string_view name_of(SizeSeries series);  // "number drill"

struct NearStandardSize {
  SizeSeries series = SizeSeries::kInchFraction;
  std::string name;  // "27/64 in", "#7", "6.8 mm", "6204", "M8x1.25"
  quantity::Length size;
  quantity::Length off;   // measured less standard
  bool possible = false;  // off is no more than the uncertainty
  Source source;
};

// The nearest size of each series, nearest first; of equally near ones in the order of SizeSeries. Of several
// names of one size in a series (bearings of one bore, taps of one diameter) the first. A series whose
// nearest size is more than 5 % and 0.5 mm off is left out. Fails with kSizeNotPositive: the size must be
// more than zero, the uncertainty not less.
[[nodiscard]] base::Result<std::vector<NearStandardSize>> nearest_standard_sizes(
    quantity::Diameter measured, quantity::Length uncertainty = {});

}  // namespace sparewright::handbook
