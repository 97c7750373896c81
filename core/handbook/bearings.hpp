// Rolling bearings by number, and what their bore and outside may really measure.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/fits.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// A deep-groove ball bearing, metric.
struct Bearing {
  std::string_view number;  // "6204"
  quantity::Diameter bore;
  quantity::Diameter outside;
  quantity::Length width;
  Source source;
};

// 604 to 635, 6000 to 6010, 6200 to 6210, 6300 to 6310.
[[nodiscard]] std::span<const Bearing> bearings();

struct FoundBearing {
  Bearing bearing;
  std::string assumed;  // what was read past: "'2RS' behind the number changes no fit"; empty where nothing
};

// A bearing by its number, suffixes of seals, cage and clearance read past: 6204, 6204-2RS, 62042RS, 608ZZ,
// 6204 C3. Fails with kNameUnknown, naming the nearest.
[[nodiscard]] base::Result<FoundBearing> find_bearing(std::string_view text);

// The limits of a ring of class 0 (normal): of the bore for kHole, of the outside for kShaft, the ring being
// hole or shaft of the fit. Fails with kNotTabled over 180 mm bore, 250 mm outside.
struct RingLimits {
  SizeLimits limits;
  Source source;
};
[[nodiscard]] base::Result<RingLimits> bearing_ring_limits(FitSide side, quantity::Diameter size);

// The bore that the last two digits of a number of four mean: 00, 01, 02, 03 are 10, 12, 15, 17 mm, then five
// times the number, to 96 (480 mm). Source: ISO 15 bore code (from memory). Fails with kOutsideDomain.
[[nodiscard]] base::Result<quantity::Diameter> bore_of_code(int code);

}  // namespace sparewright::handbook
