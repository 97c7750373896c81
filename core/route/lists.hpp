// The sheets of lists of a job as stages: what to lay out, to mark out, to measure, to fit, to write down. Each publishes a
// ListSheet as "<stage>/sheet"; their figures lie below the stage:
//
//   mark out/<side>/<feature>/<x, y or z>     height to scribe above the side the work stands on
//   inspect/<feature>/...                     what an instrument must show (touched.hpp)
//   fit/<feature>/least clearance, most clearance   between the new part and the mate as measured; below 0 it is a press fit
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "core/ledger/ledger.hpp"
#include "core/route/route.hpp"

namespace sparewright::route {

// In the order they are used; those before the first setup, those after the last. What to write down before the old part comes
// apart ("as found") is written by core/measuring.
inline constexpr std::array<std::string_view, 3> kListsBefore{"as found", "lay out", "mark out"};
inline constexpr std::array<std::string_view, 3> kListsAfter{"inspect", "fit", "record"};

[[nodiscard]] std::vector<ledger::Stage> list_stages(const Route& route);

[[nodiscard]] std::string list_path(std::string_view list);  // "inspect/sheet"

}  // namespace sparewright::route
