#include "core/handbook/retaining_rings.hpp"

#include <array>
#include <cmath>
#include <string>

#include <fmt/format.h>

#include "core/handbook/iso286.hpp"
#include "core/handbook/lookup.hpp"
#include "core/handbook/shaft_size.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr RetainingRing kRetainingRings[] = {
#include "generated/core/handbook/retaining_rings.inc"
};

constexpr Length kSameMetricSize = Length::of(0.01, unit::millimetre);
constexpr Length kSameInchSize = Length::of(0.6, unit::thou);

constexpr double kEdgePerDepth = 3.0;
constexpr Source kEdge{"at least three depths of groove between groove and end, DIN 471 and 472", "",
                       Basis::kFromMemory};

bool is_metric(RingKind kind) {
  return kind == RingKind::kExternalMetric || kind == RingKind::kInternalMetric;
}

std::string shown(RingKind kind, Diameter diameter) {
  return to_string(
      ShaftSize{diameter, is_metric(kind) ? quantity::UnitSystem::kMetric : quantity::UnitSystem::kInch});
}

// The sizes on either side of one that has no ring.
std::string neighbours(RingKind kind, Diameter nominal) {
  std::string below;
  for (const RetainingRing& ring : kRetainingRings) {
    if (ring.kind != kind) continue;
    const std::string size = shown(kind, ring.nominal);
    if (ring.nominal > nominal)
      return below.empty() ? fmt::format("{} and larger", size) : fmt::format("{}, {}", below, size);
    below = size;
  }
  return fmt::format("up to {}", below);
}

base::Result<std::optional<GrooveDeviations>> deviations_of(const RetainingRing& ring) {
  if (ring.plus_minus) return GrooveDeviations{-*ring.plus_minus, *ring.plus_minus};
  if (ring.groove_zone.empty()) return std::nullopt;
  const auto zone = iso286_deviations(ring.groove_zone, ring.groove);
  if (!zone) return tl::unexpected(zone.error());
  return GrooveDeviations{zone->lower, zone->upper};
}

}  // namespace

std::string_view name_of(RingKind kind) {
  constexpr std::array<std::string_view, 4> kNames{"external ring of DIN 471", "internal ring of DIN 472",
                                                   "inch basic external ring", "inch basic internal ring"};
  return kNames.at(static_cast<std::size_t>(kind));
}

std::span<const RetainingRing> retaining_rings() {
  return kRetainingRings;
}

base::Result<RingGroove> ring_groove(RingKind kind, Diameter nominal) {
  const Length same = is_metric(kind) ? kSameMetricSize : kSameInchSize;
  for (const RetainingRing& ring : kRetainingRings) {
    if (ring.kind != kind || std::abs(ring.nominal.base() - nominal.base()) > same.base()) continue;
    const auto deviations = deviations_of(ring);
    if (!deviations) return tl::unexpected(deviations.error());
    const Length depth = Length::from_base(std::abs(ring.nominal.base() - ring.groove.base()) / 2.0);
    return RingGroove{ring, depth, *deviations, kEdgePerDepth * depth, kEdge};
  }
  return not_tabled("the " + std::string(name_of(kind)), shown(kind, nominal), neighbours(kind, nominal));
}

base::Result<RingGroove> ring_groove(RingPlace place, std::string_view size) {
  const auto read = read_shaft_size(size);
  if (!read) return tl::unexpected(read.error());
  const bool metric = read->system == quantity::UnitSystem::kMetric;
  const RingKind external = metric ? RingKind::kExternalMetric : RingKind::kExternalInch;
  const RingKind internal = metric ? RingKind::kInternalMetric : RingKind::kInternalInch;
  return ring_groove(place == RingPlace::kOnShaft ? external : internal, read->diameter);
}

}  // namespace sparewright::handbook
