// Opening the job that was asked about, and the exit status it gives.
#pragma once

#include "app/session.hpp"
#include "cli/commands.hpp"

namespace sparewright::cli {

// The job text and the shop text it names, or the one given instead.
[[nodiscard]] app::Outcome<app::Session> open(const Asked& asked);

// Whether it counts that there is no new part: `check` judges one, the rest does with what there is.
enum class Judged { kWhatThereIs, kNewPart };

// kNotWell where there is any NO, any NOT KNOWN or an open serious query.
[[nodiscard]] int status_of(app::Session& session, Judged judged = Judged::kWhatThereIs);

}  // namespace sparewright::cli
