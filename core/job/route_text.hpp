// Reading the order of work.
#pragma once

#include "core/job/dimension_text.hpp"
#include "core/route/plan.hpp"

namespace sparewright::job {

// The setups in the order of the text; what they name must be in the shop and in the job.
[[nodiscard]] route::Plan read_plan(const text::TableReader& job, const shop::Shop& shop, const Names& names);

}  // namespace sparewright::job
