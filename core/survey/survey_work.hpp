// What the stage "survey" does with its Pen. stage.hpp lists the figures it writes.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/formula/expression.hpp"
#include "core/ledger/pen.hpp"
#include "core/survey/reading.hpp"
#include "core/survey/slips.hpp"

namespace sparewright::survey {

// What the stage knows without asking.
struct SurveyPlan {
  enum class From { kReading, kTouches, kTrial, kKnown };

  struct Equation {
    std::string reading;  // the name of the observation
    formula::Formula formula;
    AsRead read;  // for the slips of reading it; the value it counts with comes later
    From from = From::kReading;
    std::string figure;          // reading/<reading>, trial/<dimension>, known/<name>; of touches theirs
    std::string of;              // of trials: the dimension
    std::string is;              // of what is known: as typed
    std::optional<Trial> trial;  // of a reading: what was tried did that
  };
  std::vector<Dimension> unknowns;
  std::vector<Equation> readings;
  std::vector<Equation> trials;  // of dimensions that may be enclosed by trials
  std::vector<Equation> known;
  quantity::UnitSystem system = quantity::UnitSystem::kInch;
};

void write_survey(const SurveyPlan& plan, ledger::Pen& pen);

}  // namespace sparewright::survey
