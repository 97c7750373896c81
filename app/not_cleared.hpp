// Why a setup may not be cut yet: what stands on its sheet, so that a sheet taken to the machine alone says so too.
#pragma once

#include <string>
#include <vector>

#include "core/ledger/verdict.hpp"
#include "core/route/plan.hpp"

namespace sparewright::app {

// A line for each NO of the setup and of what is made in it, and for each open serious query; a last one counts what else
// stands against the job. Nothing where nothing does. queries: as job::queries gives them.
[[nodiscard]] std::vector<std::string> not_cleared(const route::Setup& setup,
                                                   const std::vector<ledger::Verdict>& verdicts,
                                                   const std::vector<ledger::Query>& queries);

}  // namespace sparewright::app
