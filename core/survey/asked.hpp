// What the stage "survey" asks the ledger for, put together as a network.
#pragma once

#include <vector>

#include "core/ledger/pen.hpp"
#include "core/survey/network.hpp"
#include "core/survey/survey_work.hpp"

namespace sparewright::survey {

// One entry for each observation, in the same order in all three: the readings, the sizes that trials enclose, what is
// known. Trials that contradict each other are left out.
struct Asked {
  std::vector<SurveyPlan::Equation> equations;
  std::vector<const ledger::Figure*> figures;
  Network network;
};

// Ends the stage where one of the figures is not known. What is known exactly gets kExactPart of the finest other
// observation of its dimensions in the covariance (known.hpp), and no share in the ledger.
[[nodiscard]] Asked ask_for(const SurveyPlan& plan, ledger::Pen& pen);

}  // namespace sparewright::survey
