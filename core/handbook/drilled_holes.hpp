// How large a drilled hole comes out.
#pragma once

#include "core/base/result.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

// Limits of a hole less the size of its drill, machine drilled in a jig or fixture (AND10387).
struct DrilledHoleLimits {
  quantity::Diameter from;  // the range of drills it is for
  quantity::Diameter up_to;
  quantity::Length lower;
  quantity::Length upper;
  Source source;
};

// Drills of 0.0135 to 2 in. Fails with kNotTabled.
[[nodiscard]] base::Result<DrilledHoleLimits> drilled_hole_limits(quantity::Diameter drill);

// How much larger than the drill a hole in steel or cast iron comes out, from memory of the handbook's table
// for 1/16, 1/8, 1/4, 1/2, 3/4 and 1 in; between them linearly. Fails with kNotTabled below 1/16 and above 1
// in.
struct DrillOversize {
  quantity::Length least;  // average least
  quantity::Length mean;
  quantity::Length most;  // average most
  Source source;
};
[[nodiscard]] base::Result<DrillOversize> drill_oversize(quantity::Diameter drill);

}  // namespace sparewright::handbook
