// Repeats of one reading that cannot all be true.
#pragma once

#include <optional>

#include "core/ledger/verdict.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::survey {

// A serious query where the repeats of a sound place lie further apart than the instrument explains: one of them is
// misread, and their mean is no size of the part. Where whole turns of the thimble or dial come to what they are apart, one to
// three, it says so. On a worn, bent or broken place they may well differ.
[[nodiscard]] std::optional<ledger::Query> repeats_apart(const Reading& reading, const Instrument& instrument,
                                                         quantity::UnitSystem system);

}  // namespace sparewright::survey
