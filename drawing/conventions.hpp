// Thin lines that stand for what is not cut into the solid: threads and knurls (ISO 6410-1 and ISO 13444, from memory: the
// thread's other diameter thin, three quarters of a circle seen from its end). Used inside this room only.
#pragma once

#include "drawing/part_views.hpp"

namespace sparewright::drawing {

// A thread is drawn where its pitch or its size can be read from its name; another has its note alone. Only what is seen:
// a tapped hole from the side it starts on and in a section through it; an outside thread from the front and from the right
// end, and a knurl from the front, where the front is no section.
void add_conventions(const part::Part& part, const ledger::Snapshot& figures, PartViews& views);

}  // namespace sparewright::drawing
