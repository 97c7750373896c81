// Thin lines that stand for what is not cut into the solid: threads and knurls (ISO 6410-1 and ISO 13715, from memory: the
// thread's other diameter thin, three quarters of a circle seen from its end). Used inside this room only.
#pragma once

#include "drawing/part_views.hpp"

namespace sparewright::drawing {

// A thread is drawn where its pitch or its size can be read from its name; another has its note alone. Only what is seen:
// an outside thread from the front and from the end it is cut from, a tapped hole from the side it starts on and in a
// section through it, a knurl from the front.
void add_conventions(const part::Part& part, const ledger::Snapshot& figures, PartViews& views);

}  // namespace sparewright::drawing
