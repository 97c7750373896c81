// What the stage "between/<name>" does with its Pen: from one touched form to another.
#pragma once

#include <string>
#include <vector>

#include "core/ledger/pen.hpp"
#include "core/survey/touched.hpp"

namespace sparewright::survey {

struct BetweenForm {
  std::string name;
  TouchedForm form = TouchedForm::kCircle;
  TipSide side = TipSide::kInside;
};

// What can be told: distance and angle of two circles or two lines, distance of a circle and a line or of two planes square
// to one axis (their leans are compared one by one), angle of two other planes. Nothing where the two do not go together.
[[nodiscard]] std::vector<Told> told_between(const BetweenForm& first, const BetweenForm& second);

// Figures distance and angle, by geometry:
//   two circles          middle to middle; the way from the first to the second
//   a circle and a line  square from the line to the middle
//   two lines or planes  square from the first, produced, to where the second stands in the middle of its touches; their
//                        angle: 0 where parallel
void write_between(const BetweenForm& first, const BetweenForm& second, ledger::Pen& pen);

}  // namespace sparewright::survey
