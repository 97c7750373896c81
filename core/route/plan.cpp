#include "core/route/plan.hpp"

#include <fmt/format.h>

namespace sparewright::route {

base::Fingerprint fingerprint(const Setup& setup) {
  base::Hasher h;
  h.add(setup.op).add(setup.name).add(fingerprint(setup.machine)).add(fingerprint(setup.holding.vise));
  h.add(static_cast<int>(setup.holding.sits_on)).add(static_cast<int>(setup.holding.fixed_jaw));
  h.add(setup.holding.parallels.height.base()).add(setup.holding.parallels.thickness.base());
  for (const EdgePickUp& pick_up : {setup.x, setup.y}) {
    h.add(static_cast<int>(pick_up.side)).add(fingerprint(pick_up.edge_finder));
  }
  for (const Work& work : setup.works) {
    h.add(work.feature).add(static_cast<std::uint64_t>(work.tools.size()));
    for (const shop::Tool& tool : work.tools)
      h.add(fingerprint(tool));
  }
  return h.add(setup.done_before).done();
}

std::string setup_path(const Setup& setup) {
  return fmt::format("op {}", setup.op);
}

}  // namespace sparewright::route
