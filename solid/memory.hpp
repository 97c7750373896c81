// How much memory a solid takes.
#pragma once

#include <cstddef>

#include "solid/solid.hpp"

namespace sparewright::solid {

// Bytes of the solid's own topology and geometry: the sizes of the kernel's objects, each counted once, their lists, the
// poles and knots of its curves and surfaces, and kBlock_bytes for each block of memory. Solids of one recipe share what
// a cut has not touched, so several together take less than the sum. Within half and twice what the allocator says.
[[nodiscard]] std::size_t memory_bytes(const Solid& solid);

// What the allocator keeps beside a block and loses by rounding up: glibc's 8 bytes and multiples of 16.
inline constexpr std::size_t kBlock_bytes = 16;

}  // namespace sparewright::solid
