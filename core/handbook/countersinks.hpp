// Flat (countersunk) heads and the countersinks they want: socket screws of ASME B18.3 (82 degrees) and ISO
// 10642 (90 degrees), machine screws of ASME B18.6.3 (82 degrees). From memory; each row agrees with the cone.
#pragma once

#include <cmath>
#include <optional>
#include <span>
#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/clearance_holes.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// Depth of a countersink below the surface, and how far the tool is fed down from touching the edge of the
// hole: (D - hole) / (2 tan(angle/2)), D the diameter at the surface. Source: geometry.
template <class Scalar>
[[nodiscard]] Scalar countersink_depth_mm(const Scalar& diameter_mm, const Scalar& hole_mm,
                                          const Scalar& included_angle_rad) {
  using std::tan;
  return (diameter_mm - hole_mm) / (2.0 * tan(included_angle_rad / 2.0));
}

enum class FlatHeadStyle { kSocket, kMachine };

struct FlatHeadScrew {
  FlatHeadStyle style = FlatHeadStyle::kSocket;
  std::string_view size;     // "#10", "5/16", "M8"
  quantity::Angle angle;     // included
  quantity::Diameter sharp;  // the greatest head, were its edge sharp
  quantity::Length head_height_max;
  std::optional<quantity::Length> key;  // across the flats of the hexagon key; none of a machine screw
  std::string_view key_name;            // "5/32 in"; empty of a machine screw
  Source source;
};

[[nodiscard]] std::span<const FlatHeadScrew> flat_head_screws();

// size as in read_screw_size. Fails as that does, or with kNotTabled.
[[nodiscard]] base::Result<FlatHeadScrew> flat_head_screw(FlatHeadStyle style, std::string_view size);

// The countersink that lets the largest head of a size lie flush; a smaller head lies under the surface.
struct Countersink {
  FlatHeadScrew screw;
  ClearanceHole hole;
  quantity::Diameter diameter;  // at the surface
  quantity::Length feed;        // from touching the edge of the clearance hole
};
[[nodiscard]] base::Result<Countersink> countersink(FlatHeadStyle style, std::string_view size,
                                                    ClearanceFit fit = ClearanceFit::kNormal);

}  // namespace sparewright::handbook
