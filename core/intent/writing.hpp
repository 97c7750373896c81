// The stages that write originals and pairs. Used inside this room only.
#pragma once

#include "core/intent/intent.hpp"

namespace sparewright::intent {

// A dimension as measuring up gives it; none where it is not known.
[[nodiscard]] std::optional<MeasuredUp> measured_up(ledger::Pen& pen, const Original& original);

// What was proposed for it; none where it was not measured.
[[nodiscard]] const Proposals* proposals_for(ledger::Pen& pen, const Original& original);

// The size it was made to: accepted, or else the likeliest one.
[[nodiscard]] std::optional<double> size_made_to_mm(ledger::Pen& pen, const Original& original);

void write_together(ledger::Pen& pen, const Originals& originals);
void write_original(ledger::Pen& pen, const Original& original);
// Of a measured pair of which one is worn: the figures of the stage that say so (intent.hpp).
void write_worn_pair(ledger::Pen& pen, const Pair& pair);
void write_pair(ledger::Pen& pen, const Originals& originals, const Pair& pair);

}  // namespace sparewright::intent
