// What the stage "survey" does with its Pen. stage.hpp lists the figures it writes.
#pragma once

#include <string>
#include <vector>

#include "core/formula/expression.hpp"
#include "core/ledger/pen.hpp"
#include "core/survey/reading.hpp"
#include "core/survey/slips.hpp"

namespace sparewright::survey {

// What the stage knows without asking.
struct SurveyPlan {
  struct Equation {
    std::string reading;  // its figure is reading/<reading>
    formula::Formula formula;
    AsRead read;  // for the slips of reading it; the value it counts with comes later
  };
  std::vector<Dimension> unknowns;
  std::vector<Equation> readings;
  quantity::UnitSystem system = quantity::UnitSystem::kInch;
};

void write_survey(const SurveyPlan& plan, ledger::Pen& pen);

}  // namespace sparewright::survey
