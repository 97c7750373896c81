// Cutting speeds as sources print them, with their spread.
#pragma once

#include "core/base/result.hpp"
#include "core/handbook/spread.hpp"
#include "core/handbook/work.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

using CuttingSpeed = Spread<quantity::Speed>;

// Speeds in print for a kind of work, an operation and a tool. Rows for another hardness are left out; rows
// for stainless of any kind count for free-machining stainless only where that has none of its own. Boring
// and parting are rules of thumb from memory (0.8 and 0.5 of the turning speed); nobody prints them. Fails
// with kNotTabled where nothing is in print: nothing is made up.
[[nodiscard]] base::Result<CuttingSpeed> cutting_speed(const Work& work, Operation operation,
                                                       ToolMaterial tool);

}  // namespace sparewright::handbook
