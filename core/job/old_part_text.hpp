// Reading what was measured on the old part and its mates.
#pragma once

#include "core/job/job.hpp"
#include "core/survey/reading.hpp"
#include "core/text/reading.hpp"

namespace sparewright::job {

// The readings, the touches and the dimensions they are of. A dimension's kind is that of [dimension], else what the way of
// measuring says (pins and holes are diameters), else a length. in: the job text as a whole.
[[nodiscard]] survey::Survey read_survey(const text::TableReader& in, const ShopText& shop);

}  // namespace sparewright::job
