// What the checks of walls share: how thin is too thin. Used inside this room only.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/judge/judge.hpp"

namespace sparewright::judge {

// Walls thicker than this many limits are only proven to be thicker.
inline constexpr double kOfInterest = 8.0;

// The job's own limit, or 1/16 in: thinner walls bulge, break into burrs or collapse under a drill (common practice).
// Writes "least allowed".
[[nodiscard]] const ledger::Figure& least_wall_allowed(ledger::Pen& pen, const Subject& subject);
[[nodiscard]] std::string least_wall_source(const Subject& subject);

// The shape room names a box's faces by axis; none for the faces of other blanks.
[[nodiscard]] std::optional<part::Face> blank_face(std::string_view name);

}  // namespace sparewright::judge
