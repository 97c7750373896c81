// The work as it stands after a setup. Used inside this room only.
#pragma once

#include <vector>

#include "core/ledger/ledger.hpp"
#include "core/route/route.hpp"

namespace sparewright::route {

// "work after op 20", one for each setup.
[[nodiscard]] std::vector<ledger::Stage> work_stages(const Route& route);

}  // namespace sparewright::route
