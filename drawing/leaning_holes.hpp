// Views along holes that lean. Used inside this room only.
#pragma once

#include "drawing/part_views.hpp"

namespace sparewright::drawing {

// One for each that is known; holes alike, in a row and leaning the same way, have one for all.
[[nodiscard]] std::vector<LeaningHole> leaning_holes(const part::Part& part, const ledger::Snapshot& figures,
                                                     const shape::Work& work,
                                                     const std::vector<solid::Edge>& edges);

}  // namespace sparewright::drawing
