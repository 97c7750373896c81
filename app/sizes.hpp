// What the measured dimensions were made to, as rows. Used inside this room only.
#pragma once

#include "app/rows.hpp"
#include "core/job/job.hpp"

namespace sparewright::app {

[[nodiscard]] Sizes sizes_of(const job::Job& job, ledger::Ledger& ledger);

}  // namespace sparewright::app
