// Readings that bound a size from one side, against the size that the others give.
#pragma once

#include <optional>

#include "core/ledger/figure.hpp"
#include "core/ledger/verdict.hpp"
#include "core/quantity/unit.hpp"
#include "core/survey/survey_work.hpp"

namespace sparewright::survey {

// What to ask of a reading that was set aside. differs: the reading less what the sizes make it.
//   "worn place has more metal/<reading>"   a worn place can have less metal than the sound one says, never more
//   "trial against the readings/<reading>"  something goes, or will not go, that by the sizes found does not, or does
// None where it is within the expanded uncertainty of the difference.
[[nodiscard]] std::optional<ledger::Query> says_too_much(const SurveyPlan::Equation& equation,
                                                         const ledger::Figure& reading,
                                                         const ledger::Figure& differs,
                                                         quantity::UnitSystem system);

}  // namespace sparewright::survey
