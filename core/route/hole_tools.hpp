// What drills, reamers and taps say of themselves on any machine. Used inside this room only.
#pragma once

#include <string>

#include "core/route/bench.hpp"

namespace sparewright::route {

// Its diameter as a root of that name: as measured, else as marked.
const ledger::Figure& tool_diameter(Bench& bench, const std::string& name, const shop::Tool& tool);

// What a drill leaves, least to most; empty text where it is not tabled. Figures "<name> diameter", "<name> leaves at
// least", "<name> leaves at most".
[[nodiscard]] std::string drilled_expect(Bench& bench, const std::string& name, const shop::Tool& tool);

// Whether no tool after this one makes the hole larger.
[[nodiscard]] bool is_last_size(const Work& work, const shop::Tool& tool);

// The first tool of that kind; nullptr where there is none.
[[nodiscard]] const shop::Tool* tool_of_kind(const Work& work, shop::ToolKind kind);

}  // namespace sparewright::route
