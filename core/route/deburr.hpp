// Burrs taken off as a step of its own.
#pragma once

#include <cstddef>

#include "core/route/bench.hpp"

namespace sparewright::route {

// Whether some burrs come off between the works of a setup, before the work of that place in it.
[[nodiscard]] bool deburrs_before(const Setup& setup, std::size_t work);

// Their lines. place: how many works come before; the number of works for what comes last.
void write_deburring(Bench& bench, std::size_t place);

}  // namespace sparewright::route
