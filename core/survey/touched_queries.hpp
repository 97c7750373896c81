// What is asked about the touches of one form.
#pragma once

#include <string>

#include "core/ledger/pen.hpp"
#include "core/quantity/unit.hpp"
#include "core/survey/touched_numbers.hpp"
#include "core/survey/touched_turns.hpp"

namespace sparewright::survey {

struct AskedForm {
  std::string name;  // "left hole"
  FormTouched touched;
  quantity::UnitSystem system = quantity::UnitSystem::kInch;
};

// Asks, at most once, where a touch is further off than its doubt allows (once in a thousand, touch_odds.hpp), or all are in
// sum (19 times in 20). Nothing is asked with no touch to spare or with touches that have no doubt. In this order:
//
//   misread touch, serious     a turn of the collar in one coordinate explains it (touched_turns.hpp); where it does in several
//                              touches, all are named
//   misread touch, serious     one touch alone is furthest out, and the others agree with each other or it is out by more than
//                              rough_mm: not where all scatter, as they do in a worn or lobed hole
//   touches scatter, serious   by more than rough_mm: no size comes out of them
//   touches scatter            else: the work is not true, or a touch is misread
void ask_of_touches(ledger::Pen& pen, const AskedForm& about, const TouchedNumbers& found);

// What no form that is called sound is out by: the tolerance grade IT16 of its size, ISO 286-1 (i = 0.45 cbrt(D) + 0.001 D up to
// 500 mm, above that I = 0.004 D + 2.1, in micrometres, IT16 = 1000 of them; from memory). 0.06 in for a hole of 1-1/2. That it
// is this grade is a choice made here: nothing is turned, bored or cast as rough. size_mm: more than 0.
[[nodiscard]] double rough_mm(double size_mm);

}  // namespace sparewright::survey
