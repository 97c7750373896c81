// Which tools bring a feature to its size where a setup makes it. Used inside this room only.
#pragma once

#include <vector>

#include "core/part/feature.hpp"
#include "core/route/plan.hpp"

namespace sparewright::judge {

// Any one of them does; none where the feature is not made on such a machine.
[[nodiscard]] std::vector<shop::ToolKind> finishing_tools(const route::Setup& setup,
                                                          const part::Feature& feature);

}  // namespace sparewright::judge
