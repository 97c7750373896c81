#include "core/survey/ways.hpp"

#include <algorithm>

namespace sparewright::survey {

const WayRow& row_of(Way way) {
  return *std::find_if(kWayRows.begin(), kWayRows.end(), [&](const WayRow& row) { return row.way == way; });
}

}  // namespace sparewright::survey
