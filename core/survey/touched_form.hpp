// What the stage "touched/<form>" does with its Pen. touched_stages.hpp lists the figures it writes.
#pragma once

#include <string>
#include <vector>

#include "core/ledger/pen.hpp"
#include "core/survey/slips.hpp"
#include "core/survey/touched.hpp"

namespace sparewright::survey {

// What the stage knows without asking.
struct FormPlan {
  std::string name;
  TouchedForm form = TouchedForm::kCircle;
  TipSide side = TipSide::kInside;
  std::vector<Told> told;
  std::string tip;                                    // its figure
  std::vector<std::vector<std::string>> coordinates;  // figures, for each touch
  quantity::UnitSystem system = quantity::UnitSystem::kInch;
  Condition condition = Condition::kSound;
  std::vector<Turn> turns = {};  // that the instrument counts
};

void write_form(const FormPlan& plan, ledger::Pen& pen);

}  // namespace sparewright::survey
