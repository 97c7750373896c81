// What came of measuring up, as rows. Used inside this room only.
#pragma once

#include "app/rows.hpp"
#include "core/base/result.hpp"
#include "core/job/job.hpp"

namespace sparewright::app {

[[nodiscard]] Measured measured_of(const job::Job& job, ledger::Ledger& ledger);

// What is to be measured, and whether it was measured well enough.
void add_plan(ledger::Ledger& ledger, Measured& measured);

// Fails as survey::monte_carlo() does, and with kReadingsDisagree where measuring up came to nothing.
[[nodiscard]] base::Result<Drawn> drawn_of(const job::Job& job, ledger::Ledger& ledger, std::size_t draws);

}  // namespace sparewright::app
