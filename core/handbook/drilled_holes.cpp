#include "core/handbook/drilled_holes.hpp"

#include <iterator>

#include <fmt/format.h>

#include "core/handbook/lookup.hpp"

namespace sparewright::handbook {
namespace {

using quantity::Diameter;
using quantity::Length;
namespace unit = quantity::unit;

constexpr DrilledHoleLimits kDrilledHoles[] = {
#include "generated/core/handbook/drilled_holes.inc"
};

struct OversizeRow {
  Diameter drill;
  Length least;
  Length mean;
  Length most;
  Source source;
};
constexpr OversizeRow kOversize[] = {
#include "generated/core/handbook/drill_oversize.inc"
};

tl::unexpected<base::Failure> drill_not_tabled(std::string_view subject, Diameter drill,
                                               std::string_view accepted) {
  return not_tabled(subject, fmt::format("{:.4f} in", drill.in(unit::inch)), accepted);
}

}  // namespace

base::Result<DrilledHoleLimits> drilled_hole_limits(Diameter drill) {
  // Ranges are printed 0.0135 to 0.125, 0.126 to 0.250: a drill between two takes the lower one.
  const DrilledHoleLimits* found = nullptr;
  for (const DrilledHoleLimits& row : kDrilledHoles) {
    if (drill.base() >= row.from.base() - kSizeSlackMm) found = &row;
  }
  const auto* last = std::end(kDrilledHoles) - 1;
  if (found != nullptr && drill.base() <= last->up_to.base() + kSizeSlackMm) return *found;
  return drill_not_tabled("the tolerance of a drilled hole", drill, "drills of 0.0135 to 2 in");
}

base::Result<DrillOversize> drill_oversize(Diameter drill) {
  for (const auto* above = std::begin(kOversize) + 1; above != std::end(kOversize); ++above) {
    const auto* below = above - 1;
    if (drill.base() < below->drill.base() - kSizeSlackMm ||
        drill.base() > above->drill.base() + kSizeSlackMm) {
      continue;
    }
    const double share = (drill - below->drill) / (above->drill - below->drill);
    return DrillOversize{below->least + (above->least - below->least) * share,
                         below->mean + (above->mean - below->mean) * share,
                         below->most + (above->most - below->most) * share, below->source};
  }
  return drill_not_tabled("the oversize of a drilled hole", drill, "drills of 1/16 to 1 in");
}

}  // namespace sparewright::handbook
