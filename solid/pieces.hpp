// What a cut that parts the work leaves: its lumps of metal, each a solid of its own.
#pragma once

#include <vector>

#include "solid/solid.hpp"

namespace sparewright::solid {

// The largest first; those of one volume (to kSameVolume_mm3) by their centres of gravity, x before y before z (to
// kSamePlace_mm). One solid where there is one lump. The lumps are not changed, only told apart.
[[nodiscard]] std::vector<Solid> pieces_of(const Solid& solid);

// The solid in a frame of its own: moved so that its left end, front and underside (its bounds) lie at 0.
[[nodiscard]] Solid in_its_own_frame(const Solid& solid);

// Steps that sizes are rounded to before they are put in order, so that the last bits of equal halves do not decide.
inline constexpr double kSameVolume_mm3 = 1e-3;
inline constexpr double kSamePlace_mm = 1e-4;

}  // namespace sparewright::solid
