// Tells what is wrong with the places of features, each at its place in the text. Used inside this room only.
#pragma once

#include <vector>

#include "core/part/feature.hpp"
#include "core/text/reading.hpp"

namespace sparewright::job {

// A place measured from a feature that has none along that axis, and places that are measured from each other.
// tables: those of the features, one each.
void tell_tree_faults(const std::vector<text::TableReader>& tables,
                      const std::vector<part::Feature>& features);

}  // namespace sparewright::job
