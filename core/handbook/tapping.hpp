// Tap drills: the percentage of thread a hole leaves, the hole for a percentage, and drills to choose from.
// The formulas percent_of_thread and hole_for_percent_mm are in thread_formulas.hpp.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/drills.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// A range of the percentage of thread; `most` is the smaller hole.
struct ThreadPercent {
  double least = 50.0;
  double most = 85.0;
};

struct TapDrill {
  Drill drill;
  double percent = 0.0;  // of thread, if the hole comes out as large as the drill (kPercentOfThread)
};

// Every drill of the series given that leaves a percentage in the range, smallest drill first.
// major and pitch of the thread must be more than zero.
[[nodiscard]] std::vector<TapDrill> tap_drills(quantity::Diameter major, quantity::Length pitch,
                                               std::span<const DrillSeries> series, ThreadPercent range = {});

// The column of a tap drill chart. Charts print 75 % for aluminium, brass and plastics, 50 % for steel,
// stainless and iron; really their drills leave 65-80 and 43-58 %.
enum class TapChartColumn { kNominal75, kNominal50 };

// The drill charts print for a thread, its percentage computed. Designations as in read_unified_thread and
// read_metric_thread; series, class and hand do not matter. Fails as those do, or with kNotTabled.
struct ChartedTapDrill {
  TapDrill choice;
  Source source;
};
[[nodiscard]] base::Result<ChartedTapDrill> charted_tap_drill(std::string_view thread, TapChartColumn column);

}  // namespace sparewright::handbook
