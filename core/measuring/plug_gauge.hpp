// A hole whose limits lie closer together than the shop's instruments can tell: what to try in it while it is still held.
//
// "plug gauge/<hole>", only where no inside instrument of the shop leaves anything of the limits to aim at:
//   .../go               the step that must go in, as the micrometer reads it: the least hole and what that reading leaves open
//   .../will not go      the step that must not: the greatest hole less the same
//   .../comes before     a step under the first: once it goes, so much is left to cut
//   .../step 1, 2, ...   steps between, where there is room: which of them goes tells the size
//   .../tells to         half of what lies between two neighbouring steps: the hole's size is known to that
//   value .../section, a route::ListSection for the sheets; empty figures where the plug could not be measured either
#pragma once

#include <string>

#include "core/part/feature.hpp"

namespace sparewright::measuring {

// A hole that fits or locates: one that a plug gauge may be made for.
[[nodiscard]] bool is_fine_hole(const part::Feature& feature);

[[nodiscard]] std::string plug_gauge_path(std::string_view hole);  // "plug gauge/pivot bore"

}  // namespace sparewright::measuring
