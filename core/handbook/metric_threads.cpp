#include "core/handbook/metric_threads.hpp"

#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"
#include "core/handbook/thread_formulas.hpp"
#include "core/quantity/display.hpp"
#include "core/quantity/typed.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

enum class MetricTolerance { kAllowanceG, kMajorExternal, kMinorInternal, kPitchExternal, kPitchInternal };

struct MetricToleranceRow {
  MetricTolerance quantity;
  Length pitch;
  std::optional<Diameter> over;
  std::optional<Diameter> up_to;
  Length tolerance;
  Source source;
};
constexpr MetricToleranceRow kMetricTolerances[] = {
#include "generated/core/handbook/metric_thread_tolerances.inc"
};

// The value in mm, and the source of the last one asked that is not published; where all are, the last one's.
class Grid {
 public:
  explicit Grid(const MetricThread& thread) : thread_(thread) {}

  base::Result<double> mm(MetricTolerance quantity) {
    for (const MetricToleranceRow& row : kMetricTolerances) {
      if (row.quantity != quantity || std::abs(row.pitch.base() - thread_.pitch.base()) > kSizeSlackMm)
        continue;
      if (!in_range(thread_.major, row.over, row.up_to)) continue;
      if (source_.text.empty() || row.source.basis != Basis::kPublished) source_ = row.source;
      return row.tolerance.in(unit::millimetre);
    }
    return not_tabled(
        "tolerance 6g/6H of a metric thread", to_string(thread_),
        "pitches 0.5, 0.7, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5 and 3 mm on the usual diameters over "
        "2.8 up to 45 mm");
  }
  [[nodiscard]] const Source& source() const { return source_; }

 private:
  const MetricThread& thread_;
  Source source_;
};

Diameter mm_diameter(double mm) {
  constexpr int kPlaces = 3;
  return Diameter::of(quantity::rounded(mm, kPlaces), unit::millimetre);
}

DiameterRange mm_range(double low, double high) {
  return {mm_diameter(low), mm_diameter(high)};
}

}  // namespace

BasicThread basic_sizes(const MetricThread& thread) {
  const double major_mm = thread.major.in(unit::millimetre);
  const double pitch_mm = thread.pitch.in(unit::millimetre);
  return {thread.major, Diameter::of(pitch_diameter_mm(major_mm, pitch_mm), unit::millimetre),
          Diameter::of(internal_minor_mm(major_mm, pitch_mm), unit::millimetre), kThreadProfile};
}

base::Result<ExternalThreadLimits> screw_limits_6g(const MetricThread& thread) {
  Grid grid(thread);
  const auto allowance = grid.mm(MetricTolerance::kAllowanceG);
  const auto major_tolerance = grid.mm(MetricTolerance::kMajorExternal);
  const auto pitch_tolerance = grid.mm(MetricTolerance::kPitchExternal);
  for (const auto* one : {&allowance, &major_tolerance, &pitch_tolerance}) {
    if (!*one) return tl::unexpected(one->error());
  }
  const double major = thread.major.in(unit::millimetre) - *allowance;
  const double pitch = basic_sizes(thread).pitch.in(unit::millimetre) - *allowance;

  ExternalThreadLimits limits;
  limits.thread_class = "6g";
  limits.allowance = Length::of(*allowance, unit::millimetre);
  limits.major = mm_range(major - *major_tolerance, major);
  limits.pitch = mm_range(pitch - *pitch_tolerance, pitch);
  limits.flat_root_max = mm_diameter(major - kInternalMinorPerPitch * thread.pitch.in(unit::millimetre));
  limits.source = grid.source();
  return limits;
}

base::Result<InternalThreadLimits> hole_limits_6h(const MetricThread& thread) {
  Grid grid(thread);
  const auto pitch_tolerance = grid.mm(MetricTolerance::kPitchInternal);
  const auto minor_tolerance = grid.mm(MetricTolerance::kMinorInternal);
  for (const auto* one : {&pitch_tolerance, &minor_tolerance}) {
    if (!*one) return tl::unexpected(one->error());
  }
  const BasicThread basic = basic_sizes(thread);
  const double pitch = basic.pitch.in(unit::millimetre);
  const double minor = basic.minor.in(unit::millimetre);

  InternalThreadLimits limits;
  limits.thread_class = "6H";
  limits.major_min = thread.major;
  limits.pitch = mm_range(pitch, pitch + *pitch_tolerance);
  limits.minor = mm_range(minor, minor + *minor_tolerance);
  limits.source = grid.source();
  return limits;
}

quantity::Area tensile_stress_area(const MetricThread& thread) {
  return quantity::Area::of(
      metric_stress_area_mm2(thread.major.in(unit::millimetre), thread.pitch.in(unit::millimetre)),
      unit::square_millimetre);
}

}  // namespace sparewright::handbook
