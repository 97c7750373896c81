// The size of a screw as the tables of fasteners name it.
#pragma once

#include <string>
#include <string_view>

#include "core/base/result.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

struct ScrewSize {
  std::string name;  // "#10", "1/4", "1", "M8"
  quantity::Diameter nominal;
  std::string assumed;  // what had to be assumed, a sentence; empty where nothing
};

// Reads a size (#10, No. 10, 10, 1/4, 1/4 in, 1-1/8, .250, M8) or takes it out of a thread (5/16-18, 10-24
// UNC-2A, M8x1.25). A whole number of a numbered size is taken as that (10 is #10), 1 as 1 in; `assumed` says
// so. Fails with kNameUnknown.
[[nodiscard]] base::Result<ScrewSize> read_screw_size(std::string_view text);

}  // namespace sparewright::handbook
