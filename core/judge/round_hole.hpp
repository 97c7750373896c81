// The metal round a hole, by rays through the finished part. Used inside this room only.
#pragma once

#include <optional>

#include "core/judge/ground.hpp"

namespace sparewright::judge {

// The thinnest metal from the wall of the hole outwards, square to it, halfway along it. Directions within `around_deg` of
// `leave_out` do not count. None where the hole has no metal round it in one of the others, leans or lies round a bar.
[[nodiscard]] std::optional<double> metal_round_mm(ledger::Pen& pen, const part::Part& part,
                                                   const part::Feature& feature, const part::Hole& hole,
                                                   std::optional<part::Face> leave_out = std::nullopt,
                                                   double around_deg = 0.0);

}  // namespace sparewright::judge
