// What the checks of walls share: how thin is too thin. Used inside this room only.
#pragma once

#include <string>

#include "core/judge/judge.hpp"

namespace sparewright::judge {

// Walls thicker than this many limits are only proven to be thicker.
inline constexpr double kOfInterest = 8.0;

// The job's own limit, or 1/16 in: thinner walls bulge, break into burrs or collapse under a drill (common practice).
// Writes "least allowed".
[[nodiscard]] const ledger::Figure& least_wall_allowed(ledger::Pen& pen, const Subject& subject);
[[nodiscard]] std::string least_wall_source(const Subject& subject);

}  // namespace sparewright::judge
