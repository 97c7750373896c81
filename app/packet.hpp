// Everything that is printed, gathered from a settled job. Used inside this room only.
#pragma once

#include "core/job/job.hpp"
#include "core/ledger/ledger.hpp"
#include "sheets/packet.hpp"

namespace sparewright::app {

[[nodiscard]] sheets::Packet packet_of(const job::Job& job, ledger::Ledger& ledger);

}  // namespace sparewright::app
