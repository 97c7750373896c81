// Reading one hole, with what the handbook adds for its screw or its thread.
#pragma once

#include "core/job/dimension_text.hpp"
#include "core/part/feature.hpp"

namespace sparewright::job {

// A counterbored hole with a screw takes what is left out from the handbook: body hole (normal clearance), counterbore
// diameter, and a depth of the greatest head height plus 0.010 in (+0.010/-0.000; common practice). A tapped hole without
// a diameter takes the charted tap drill of its thread.
[[nodiscard]] part::Hole read_hole(const text::TableReader& in, const Names& names);

}  // namespace sparewright::job
