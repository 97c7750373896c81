// The thread of a screw, inch or metric, with what its strength is worked out from.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/metric_threads.hpp"
#include "core/handbook/source.hpp"
#include "core/handbook/unified_threads.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

struct ScrewThread {
  std::variant<UnifiedThread, MetricThread> thread;
  std::string name;  // "5/16-18 UNC", "M8x1.25"
  quantity::Diameter major;
  quantity::Length pitch;
  quantity::Area stress_area;  // that of the load tables of every grade
  Source area_source;
  // Inch screws over 100 ksi by FED-STD-H28/2, from the least pitch diameter: about 5 per cent less than the
  // load tables of SAE J429 take (from memory). The larger one decides engagement, the smaller one strength.
  std::optional<quantity::Area> strong_stress_area;
  std::vector<std::string> assumed;  // what was not written, a sentence each

  [[nodiscard]] bool is_metric() const { return std::holds_alternative<MetricThread>(thread); }
};

// Reads 5/16-18, 1/4-20 UNC-2A, #10-24, M8, M10x1.5. Fails as read_unified_thread and read_metric_thread do.
[[nodiscard]] base::Result<ScrewThread> read_screw_thread(std::string_view text);

// The limits that leave the least metal in mesh: the smallest screw in the largest hole.
struct MeshLimits {
  quantity::Diameter screw_major_min;
  quantity::Diameter screw_pitch_min;
  quantity::Diameter hole_minor_max;
  quantity::Diameter hole_pitch_max;
  std::string classes;  // "2A in 2B", "6g in 6H"
  Source source;
};

// Of the class written and its partner, or 2A in 2B; metric always 6g in 6H. Fails with kNotTabled for a
// metric pitch whose limits are not.
[[nodiscard]] base::Result<MeshLimits> mesh_limits(const ScrewThread& thread);

}  // namespace sparewright::handbook
