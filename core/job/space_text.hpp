// Reading the room there is for the part. Used inside this room only.
#pragma once

#include "core/judge/space.hpp"
#include "core/text/reading.hpp"

namespace sparewright::job {

// [space] of the job text; an opening that is neither round nor has both its sides is told.
[[nodiscard]] judge::Space read_space(const text::TableReader& job);

}  // namespace sparewright::job
