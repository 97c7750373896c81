// What is cut into a shaft of a size: its keyseats, and the groove of its retaining ring.
#pragma once

#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/handbook/parallel_keys.hpp"
#include "core/handbook/retaining_rings.hpp"
#include "core/handbook/shaft_size.hpp"
#include "core/handbook/woodruff_keys.hpp"

namespace sparewright::handbook {

struct ShaftCard {
  ShaftSize shaft;
  std::vector<ParallelKeyseat> parallel;  // metric one; inch square, then rectangular
  std::vector<WoodruffKeyseat> woodruff;  // inch: every key suggested for the shaft that fits it
  std::vector<RingGroove> rings;          // the external ring of the size, where there is one
  std::vector<base::Failure> not_tabled;  // why something above is empty
};

// shaft as in read_shaft_size: "30 mm", "1-1/4 in". Fails as that does; what is not tabled for the size stands
// in not_tabled, with what is.
[[nodiscard]] base::Result<ShaftCard> shaft_card(std::string_view shaft);

}  // namespace sparewright::handbook
