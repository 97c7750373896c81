// The sheets of measuring up, gathered from a settled job. Used inside this room only.
#pragma once

#include "app/rows.hpp"
#include "core/job/job.hpp"
#include "core/ledger/ledger.hpp"
#include "sheets/measuring.hpp"

namespace sparewright::app {

[[nodiscard]] sheets::MeasuringPacket measuring_packet(const job::Job& job, ledger::Ledger& ledger,
                                                       const Measured& measured);

}  // namespace sparewright::app
