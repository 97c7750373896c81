// Touches as stages of the ledger.
#pragma once

#include <vector>

#include "core/ledger/ledger.hpp"
#include "core/survey/reading.hpp"

namespace sparewright::survey {

// In the order of their names:
//
// "touch", "tip"                   roots, as far as the forms need them
//   touch/<form>/<n> x             what the readout showed at touch n; shares: what it is good to, its resolution and how
//                                  well the tip finds a face, each touch and axis on its own, and the zero of the axis, shared by all its readings
//   tip/<name>                     its diameter, with one cause: shared by all touches with it
// "touched/<form>"
//   .../x, y, diameter, radius     circle_fit.hpp; the tip's radius taken off inside, put on outside
//   .../at, lean ...               flat_fit.hpp; the surface is half the tip away from its middle
//   .../form error                 most less least of what the touches lie off; NOT KNOWN with no touch to spare
//   .../furthest off               how far the worst touch lies off, either way; its words say which. None with no touch to spare
//   .../arc                        of a circle: what the touches are spread over
//   .../scatter in ...             roots of value 0: what the touches scatter by puts into each result, found from what they
//                                  lie off; none with no touch to spare
//   Where the touches do not fix the form, or the arc cannot be told from a straight line, all are NOT KNOWN and name the
//   touch that is wanted.
//   queries: touches scatter / misread touch; a short arc
// "between/<name>"                 distance, angle (between.hpp)
// "pattern/<name>"                 of holes (pattern_work.hpp)
// The survey must be sound (troubles() in check.hpp).
[[nodiscard]] std::vector<ledger::Stage> touched_stages(const Survey& survey);

// All that counts as readings of dimensions, in the order of the names.
[[nodiscard]] std::vector<ToldReading> told_readings(const Survey& survey);

// The zero an axis of a readout shares, as zero_error_of() has it for jaws: "instrument/mill readout/x axis/zero". It
// cancels in diameters and distances.
[[nodiscard]] std::string axis_zero_cause(std::string_view instrument, std::size_t axis);

// A radius of less than this many standard uncertainties cannot be told from that of a straight line. A choice made here,
// without a source: from there on the first-order doubt means nothing.
inline constexpr double kArcTold = 3.0;

// Touches on an arc are said to be short where the radius is doubted this many times as much as one touch. Four touches
// round a circle make it 0.5. A choice made here, without a source.
inline constexpr double kShortArc = 3.0;

}  // namespace sparewright::survey
