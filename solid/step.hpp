// STEP files: ISO 10303-21, application protocol 214, millimetres.
#pragma once

#include <string>
#include <string_view>

#include "core/base/result.hpp"
#include "solid/solid.hpp"

namespace sparewright::solid {

// The file as bytes. Nothing in it depends on the clock, the user or the machine: the header's date is fixed, author
// and organisation are empty. The same solid made from the same recipe gives the same bytes.
// product  what the reader's program shows as the part's name; ASCII is kept as it is, the rest is written as the
//          standard's \X2\ escapes.
// Fails with kKernel.
[[nodiscard]] base::Result<std::string> write_step(const Solid& solid, std::string_view product);

// Reads bytes back. Fails with kKernel where they are not STEP or hold no solid.
[[nodiscard]] base::Result<Solid> read_step(std::string_view bytes);

}  // namespace sparewright::solid
