// Which features a lathe makes here, and their lines.
#pragma once

#include "core/route/lathe_bench.hpp"

namespace sparewright::route {

// Faces and turned forms on the free end, holes on the axis from there, the chucking piece at the other end. Whether a
// hole lies on the axis is not looked at.
[[nodiscard]] bool lathe_works_it_out(const OnLathe& on, const part::Feature& feature);

void write_lathe_works(LatheBench& bench);

}  // namespace sparewright::route
