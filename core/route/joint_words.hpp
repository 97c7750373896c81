// How hard things go together, in words, as the checks have worked it out. Used inside this room only.
#pragma once

#include <string>
#include <vector>

#include "core/ledger/pen.hpp"
#include "core/quantity/unit.hpp"

namespace sparewright::route {

// "up to 1800 lbf to push it in, calculated: friction is known to a factor of two"; where no check knows it, "the force is NOT
// KNOWN". bush: the name of the feature.
[[nodiscard]] std::string press_force_words(ledger::Pen& pen, quantity::UnitSystem system,
                                            const std::string& bush);

// "to 12.4 Nm"; for holes that differ "to 12.4 Nm (a, b), to 8.0 Nm (c)". Empty where no check knows any of them: what a
// screw goes into is not told, nor what it is to be tightened to.
[[nodiscard]] std::string torque_words(ledger::Pen& pen, quantity::UnitSystem system,
                                       const std::vector<std::string>& holes);

// The shortest length dealers have that uses the thread there is: "1-1/4 long", "25 long"; empty where no check knows it.
[[nodiscard]] std::string length_to_buy_words(ledger::Pen& pen, quantity::UnitSystem system,
                                              const std::string& hole);

}  // namespace sparewright::route
