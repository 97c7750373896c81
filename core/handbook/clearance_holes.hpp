// Clearance holes for screws: inch ASME B18.2.8, metric ISO 273.
#pragma once

#include <optional>
#include <string_view>

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// B18.2.8 close, normal, loose; ISO 273 fine, medium, coarse.
enum class ClearanceFit { kClose, kNormal, kLoose };

struct ClearanceHole {
  std::string_view size;  // "#10", "5/16", "M8"
  ClearanceFit fit = ClearanceFit::kNormal;
  quantity::Diameter hole;                     // the least
  std::optional<quantity::Diameter> hole_max;  // where the page showed it (inch, loose)
  std::string_view drill;                      // "letter F", "9/32", "9 mm"
  std::string_view zone;                       // of the hole, metric: "H13"
  std::string_view note;                       // what another standard gives; empty where none is known
  Source source;
};

// size as in read_screw_size: #4 to 1 in, M3 to M24. Fails as that does, or with kNotTabled.
[[nodiscard]] base::Result<ClearanceHole> clearance_hole(std::string_view size, ClearanceFit fit);

}  // namespace sparewright::handbook
