// Reading a hole, or the holes of a row or a bolt circle, with what the handbook adds for its screw or its thread.
#pragma once

#include "core/job/dimension_text.hpp"
#include "core/part/blank.hpp"
#include "core/part/feature.hpp"

namespace sparewright::job {

// A counterbored hole with a screw takes what is left out from the handbook: body hole (normal clearance), counterbore
// diameter, and a depth of the greatest head height plus 0.010 in (+0.010/-0.000; common practice). A tapped hole without
// a diameter takes the charted tap drill of its thread. A hole that is tapped beyond a slit or a split is both.
[[nodiscard]] std::vector<part::Hole> read_holes(const text::TableReader& in, part::BlankShape blank,
                                                 const Names& names);

// Finds the slit or split that each hole is tapped beyond, and tells what is none, or does not lie across the hole.
void find_gaps(const std::vector<text::TableReader>& tables, std::vector<part::Feature>& features);

}  // namespace sparewright::job
