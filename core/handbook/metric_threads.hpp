// ISO metric threads: reading a designation, basic sizes, limits of size 6g and 6H, stress area.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/thread_limits.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

struct MetricThread {
  quantity::Diameter major;
  quantity::Length pitch;
  std::string thread_class;  // "6g", "6H", "4g6g" as written; empty where it was left out
  bool left_hand = false;
  std::vector<std::string> assumed;  // what was not written and how it was taken, a sentence each
};

// Reads M8, M8x1, M8 x 1.25, M10×1.5-6g, M8-6H, M8x1-LH. Without a pitch it is the coarse one (ISO 261), and
// `assumed` says so. Fails with kNameUnknown, or kNotTabled for a size whose coarse pitch is not tabled
// (M13).
[[nodiscard]] base::Result<MetricThread> read_metric_thread(std::string_view text);

// "M8x1.25", "M8x1.25-6g-LH".
[[nodiscard]] std::string to_string(const MetricThread& thread);

[[nodiscard]] BasicThread basic_sizes(const MetricThread& thread);

// Limits of size of class 6g (screw) and 6H (hole) from the printed grid of ISO 965-1 / ASME B1.13M, to 0.001
// mm: pitches 0.5, 0.7, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5 and 3 mm, diameters over 2.8 up to 45 mm, as
// far as the grid was in print. The class written in the thread is not looked at. Fails with kNotTabled for
// any other pitch or diameter.
[[nodiscard]] base::Result<ExternalThreadLimits> screw_limits_6g(const MetricThread& thread);
[[nodiscard]] base::Result<InternalThreadLimits> hole_limits_6h(const MetricThread& thread);

// (pi/4) (d - 0.9382 P)^2. Source: kMetricStressArea in thread_formulas.hpp.
[[nodiscard]] quantity::Area tensile_stress_area(const MetricThread& thread);

}  // namespace sparewright::handbook
