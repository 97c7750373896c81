// The figures of left_aside.hpp, for the stage "survey".
#pragma once

#include <string>
#include <vector>

#include "core/ledger/pen.hpp"
#include "core/quantity/unit.hpp"
#include "core/survey/asked.hpp"
#include "core/survey/left_aside.hpp"

namespace sparewright::survey {

// For every entry, and every dimension that is fixed and hangs on what is left aside (named "a", or "a and b"):
//   survey/without/<readings>/<dimension>    as it comes out without them; NOT KNOWN where nothing else fixes it
//   survey/hangs on/<readings>/<dimension>   the dimension less that
// dimensions: the figures of the dimensions, in their order.
void write_left_aside(const std::vector<LeftAside>& all, const Asked& asked, const MeasuredUp& measured,
                      const std::vector<const ledger::Figure*>& dimensions, ledger::Pen& pen);

// "Without it centres is 6.0031 in, 0.0042 in less." of the dimension that moves by most of its doubts; empty where there is
// not one entry, or none moves.
[[nodiscard]] std::string moves_most(const std::vector<LeftAside>& all, const MeasuredUp& measured,
                                     const std::vector<Dimension>& unknowns, quantity::UnitSystem system);

}  // namespace sparewright::survey
