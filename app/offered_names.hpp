// What is offered for a number that is not there. Used inside this room only.
#pragma once

#include <span>
#include <string>
#include <string_view>

namespace sparewright::app {

// "did you mean 'survey/web' or 'original/web'?": the names that end in what was typed, a whole part or several, the measured
// dimension of that name first, then the shortest; else the one nearest in spelling; else where all of them are listed.
[[nodiscard]] std::string offered_names(std::string_view typed, std::span<const std::string> known);

}  // namespace sparewright::app
