// What the stage "survey" does with its Pen. stage.hpp lists the figures it writes.
#pragma once

#include <string>
#include <vector>

#include "core/formula/expression.hpp"
#include "core/ledger/pen.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::survey {

// What the stage knows without asking.
struct SurveyPlan {
  struct Equation {
    std::string reading;  // its figure is reading/<reading>
    formula::Formula formula;
    // For the slips of reading it: what it was read off, as typed.
    std::string typed;
    bool is_metric = false;
    std::string instrument_kind;
    double zero_found = 0.0;
    std::string told;  // what touches tell: its figure; left out where that is not known
  };
  std::vector<Dimension> unknowns;
  std::vector<Equation> readings;
  quantity::UnitSystem system = quantity::UnitSystem::kInch;
};

void write_survey(const SurveyPlan& plan, ledger::Pen& pen);

}  // namespace sparewright::survey
