// What is asked about the touches of one form.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/ledger/pen.hpp"
#include "core/quantity/unit.hpp"
#include "core/survey/orthogonal_fit.hpp"

namespace sparewright::survey {

struct AskedForm {
  std::string form;       // "left hole"
  std::string_view kind;  // "circle"
  quantity::UnitSystem system = quantity::UnitSystem::kInch;
};

// Asks, at most once, where a touch is further off than its doubt allows (once in a thousand, the test of adjust.hpp), or all
// are in sum (19 times in 20). doubts: standard uncertainty of each touch along its normal. Nothing is asked with no touch to
// spare or with touches that have no doubt. Where two touches explain it as well, none is named.
void ask_of_touches(ledger::Pen& pen, const AskedForm& about, const OrthogonalFit& fit,
                    const std::vector<double>& doubts);

}  // namespace sparewright::survey
