// A bare number read off an instrument of the other system of units.
#pragma once

#include <optional>

#include "core/ledger/verdict.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::survey {

// A serious query where a repeat was written without a unit and so took the job's, while the instrument is graduated in the
// other: 19.05 off a metric caliper in an inch job. With its unit written it is silent.
[[nodiscard]] std::optional<ledger::Query> unit_asked(const Reading& reading, const Instrument& instrument);

}  // namespace sparewright::survey
