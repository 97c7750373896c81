// Feeds as sources print them, with their spread: drilling, end milling, turning, boring, parting, reaming.
#pragma once

#include "core/base/result.hpp"
#include "core/handbook/spread.hpp"
#include "core/handbook/work.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

using Feed = Spread<quantity::FeedPerTurn>;
using FeedPerTooth = Spread<quantity::Length>;

// Feed per turn of a twist drill of high-speed steel in any metal; the low end is for hard or tough metal.
// A diameter at the end of a range takes the finer one. Fails with kSizeNotPositive.
[[nodiscard]] base::Result<Feed> drill_feed(quantity::Diameter drill);

// Feed per tooth of an end mill. Between the diameters a source prints for one material it is interpolated
// linearly (its Source says derived); above the largest it stays. Fails with kSizeNotPositive, and with
// kNotTabled where no source reaches so small a cutter or has the material.
[[nodiscard]] base::Result<FeedPerTooth> end_mill_feed(const Work& work, ToolMaterial tool,
                                                       quantity::Diameter cutter);

// Feed per turn for kTurningRough, kTurningFinish, kBoring, kParting. Figures for any metal count only where
// the material has none of its own. Fails with kNotTabled, also for the other operations.
[[nodiscard]] base::Result<Feed> turning_feed(const Work& work, Operation operation, ToolMaterial tool);

}  // namespace sparewright::handbook
