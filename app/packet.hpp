// Everything that is printed, gathered from a settled job. Used inside this room only.
#pragma once

#include "core/job/job.hpp"
#include "core/ledger/ledger.hpp"
#include "sheets/packet.hpp"
#include "solid/shelf.hpp"

namespace sparewright::app {

// The drawing wants the solid of the part; without one the packet says why there is none.
[[nodiscard]] sheets::Packet packet_of(const job::Job& job, ledger::Ledger& ledger, solid::Shelf& solids);

}  // namespace sparewright::app
