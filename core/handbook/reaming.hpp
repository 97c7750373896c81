// Reaming: what to leave for the reamer, and its feed. Speeds are in cutting_speeds.hpp.
#pragma once

#include "core/base/result.hpp"
#include "core/handbook/feeds.hpp"
#include "core/handbook/source.hpp"
#include "core/quantity/quantity.hpp"

namespace sparewright::handbook {

struct ReamingStock {
  quantity::Diameter from;  // the range of holes it is for
  quantity::Diameter up_to;
  quantity::Length low;  // on the diameter
  quantity::Length high;
  Source source;
};

// What to leave on the diameter of a hole, 0.09 to 2.5 in. Fails with kNotTabled.
[[nodiscard]] base::Result<ReamingStock> reaming_stock(quantity::Diameter hole);

// Feed per turn of a machine reamer of high-speed steel, any metal. flutes must be 1 or more, else
// kSizeNotPositive.
[[nodiscard]] base::Result<Feed> reaming_feed(int flutes);

}  // namespace sparewright::handbook
