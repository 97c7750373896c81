// Which tools bring a feature to its size on a mill. Used inside this room only.
#pragma once

#include <vector>

#include "core/part/feature.hpp"
#include "core/shop/shop.hpp"

namespace sparewright::judge {

// Any one of them does; none where the feature is not made on a mill.
[[nodiscard]] std::vector<shop::ToolKind> mill_finishing_tools(const part::Feature& feature);

}  // namespace sparewright::judge
