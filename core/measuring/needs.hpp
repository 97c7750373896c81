// Which named dimensions of the old parts the new part hangs on.
#pragma once

#include <string>
#include <vector>

#include "core/measuring/measuring.hpp"

namespace sparewright::measuring {

// One use of a measured dimension.
struct Need {
  std::string dimension;
  std::string feature;
  std::string local;  // "diameter"
  const part::Dimension* by = nullptr;
  bool is_mate = false;  // the feature goes on or round it: its clearance is what has to be met
};

// In the order of the features. What nothing hangs on is not there. References stay good as long as the part does.
[[nodiscard]] std::vector<Need> needs_of(const part::Part& part);

}  // namespace sparewright::measuring
