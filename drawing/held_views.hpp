// The work as a setup leaves it, seen as it stands on the machine.
#pragma once

#include "core/route/sheet.hpp"
#include "drawing/section.hpp"
#include "drawing/view.hpp"

namespace sparewright::drawing {

// In mm of the machine, lines of this setup marked as cut here.
struct HeldViews {
  View above;       // u to the operator's right and v away, from the picked-up zero
  View from_right;  // u away from the zero, v up from what the parallels stand on
};

// after        the work after this setup
// cuts_before  how many of its cuts were there before
// Fails as edges_of does, and with kSizeNotPositive where the zero, the side it sits on or the parallels are not known.
[[nodiscard]] base::Result<HeldViews> held_views(const route::PlanView& held, const shape::Recipe& after,
                                                 std::size_t cuts_before, const EdgesOf& edges_of);

}  // namespace sparewright::drawing
