// Grooves for retaining rings that spring in from the side of a shaft or bore: DIN 471 and 472 (10 to 50 mm),
// inch basic external (MS16624 type, 1/8 to 2 in) and internal (MS16625 type, 1/4 to 2 in).
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

enum class RingKind { kExternalMetric, kInternalMetric, kExternalInch, kInternalInch };
[[nodiscard]] std::string_view name_of(RingKind kind);  // "external ring of DIN 471"

struct RetainingRing {
  RingKind kind = RingKind::kExternalMetric;
  quantity::Diameter nominal;  // of the shaft or bore
  quantity::Length thickness;  // of the ring
  quantity::Diameter groove;
  std::string_view groove_zone;                // metric: "h11", of ISO 286
  std::optional<quantity::Length> plus_minus;  // inch: on the groove's diameter, where known
  quantity::Length groove_width;               // the least
  std::optional<quantity::Length> width_more;  // the + on it, where known
  std::string_view note;                       // what another source gives; empty where none is known
  Source source;
};

// In the order of RingKind, smallest first.
[[nodiscard]] std::span<const RetainingRing> retaining_rings();

// Limits of the groove's diameter less `groove`.
struct GrooveDeviations {
  quantity::Length lower;
  quantity::Length upper;
};

struct RingGroove {
  RetainingRing ring;
  quantity::Length depth;                      // half the difference of nominal and groove
  std::optional<GrooveDeviations> deviations;  // none where no tolerance is known (inch bores)
  quantity::Length least_edge;                 // of metal left between groove and end of the shaft or bore
  Source edge_source;
};

// The groove for a shaft or bore of that size, to 0.01 mm for metric rings and 0.0006 in for inch ones, whose
// sizes are printed rounded (5/16 as 0.312). The metric deviations are those of the zone at the groove's
// diameter. Fails with kNotTabled, naming the nearest sizes.
[[nodiscard]] base::Result<RingGroove> ring_groove(RingKind kind, quantity::Diameter nominal);

// The same for a size as people write it, "25 mm" or "1 in", on a shaft or in a bore. Fails as read_shaft_size
// does too.
enum class RingPlace { kOnShaft, kInBore };
[[nodiscard]] base::Result<RingGroove> ring_groove(RingPlace place, std::string_view size);

}  // namespace sparewright::handbook
