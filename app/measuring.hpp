// What came of measuring up, as rows. Used inside this room only.
#pragma once

#include "app/rows.hpp"
#include "core/job/job.hpp"

namespace sparewright::app {

[[nodiscard]] Measured measured_of(const job::Job& job, ledger::Ledger& ledger);

}  // namespace sparewright::app
