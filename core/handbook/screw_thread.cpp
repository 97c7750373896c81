#include "core/handbook/screw_thread.hpp"

#include "core/handbook/thread_formulas.hpp"
#include "core/quantity/spelling.hpp"

namespace sparewright::handbook {
namespace {

MeshLimits limits_of(const ExternalThreadLimits& screw, const InternalThreadLimits& hole) {
  return {screw.major.low,
          screw.pitch.low,
          hole.minor.high,
          hole.pitch.high,
          screw.thread_class + " in " + hole.thread_class,
          screw.source};
}

quantity::Area strong_area(const UnifiedThread& thread) {
  const ExternalThreadLimits limits = screw_limits(thread, screw_class(thread).thread_class);
  return quantity::Area::of(strong_unified_stress_area_mm2(limits.pitch.low.in(quantity::unit::millimetre),
                                                           thread.pitch().in(quantity::unit::millimetre)),
                            quantity::unit::square_millimetre);
}

}  // namespace

base::Result<ScrewThread> read_screw_thread(std::string_view text) {
  const std::string_view typed = quantity::trimmed(text);
  if (typed.starts_with('M') || typed.starts_with('m')) {
    const auto metric = read_metric_thread(typed);
    if (!metric) return tl::unexpected(metric.error());
    return ScrewThread{
        *metric,           to_string(*metric), metric->major,  metric->pitch, tensile_stress_area(*metric),
        kMetricStressArea, std::nullopt,       metric->assumed};
  }
  const auto inch = read_unified_thread(typed);
  if (!inch) return tl::unexpected(inch.error());
  return ScrewThread{*inch,
                     to_string(*inch),
                     inch->major,
                     inch->pitch(),
                     tensile_stress_area(*inch),
                     kUnifiedStressArea,
                     strong_area(*inch),
                     inch->assumed};
}

base::Result<MeshLimits> mesh_limits(const ScrewThread& thread) {
  if (const auto* inch = std::get_if<UnifiedThread>(&thread.thread)) {
    return limits_of(screw_limits(*inch, screw_class(*inch).thread_class),
                     hole_limits(*inch, hole_class(*inch).thread_class));
  }
  const auto& metric = std::get<MetricThread>(thread.thread);
  const auto screw = screw_limits_6g(metric);
  if (!screw) return tl::unexpected(screw.error());
  const auto hole = hole_limits_6h(metric);
  if (!hole) return tl::unexpected(hole.error());
  return limits_of(*screw, *hole);
}

}  // namespace sparewright::handbook
