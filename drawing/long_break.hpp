// A long bar drawn shorter: a stretch of it that is the same all along is left out between two waves (ISO 128-3, from
// memory). Used inside this room only.
#pragma once

#include "drawing/part_marks.hpp"
#include "drawing/part_views.hpp"

namespace sparewright::drawing {

// Where the front view is much longer than high and has a long stretch with nothing in it but lines along it, no end of a
// length and no note: that stretch taken out of the front and the top view. A section stays whole.
[[nodiscard]] PartViews with_break(const PartViews& views, const Marks& marks);

}  // namespace sparewright::drawing
